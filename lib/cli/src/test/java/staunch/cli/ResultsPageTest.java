package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import staunch.units.Measure;
import staunch.units.Si;

/** The list of keys in {@code docs/results.md} is what the records say, with the words of their Javadoc. */
class ResultsPageTest {
    private static final Path ROOT = Path.of(System.getProperty("staunch.root"));
    private static final String MARK = "<!-- What follows is generated from the records and their Javadoc. -->\n";

    private final Set<Class<?>> records = new LinkedHashSet<>();
    private final Set<Class<?>> choices = new LinkedHashSet<>();
    private final Set<Class<?>> enums = new LinkedHashSet<>();
    private final Deque<Class<?>> waiting = new ArrayDeque<>();

    @Test
    void thePageListsEveryKey() throws IOException {
        Path page = ROOT.resolve("docs/results.md");
        String text = Files.readString(page);
        String expected = text.substring(0, text.indexOf(MARK) + MARK.length()) + generated();
        Path fresh = Path.of("target", "results.md").toAbsolutePath();
        Files.writeString(fresh, expected);
        assertTrue(expected.equals(text), "docs/results.md is out of date: copy " + fresh + " over it");
    }

    private String generated() throws IOException {
        RecordJavadoc javadoc = RecordJavadoc.of(
                List.of(ROOT.resolve("lib/core/src/main/java"), ROOT.resolve("lib/cli/src/main/java")));
        reach(MachineResults.class);
        reach(MachineComparison.class);
        reach(MachineShoes.class);
        reach(MachineSensitivity.class);
        reach(MachineRerun.class);
        while (!waiting.isEmpty()) {
            for (RecordComponent component : waiting.poll().getRecordComponents()) {
                if (!RecordJson.LEFT_OUT.contains(component.getType())) {
                    reach(component.getGenericType());
                }
            }
        }
        StringBuilder text = new StringBuilder();
        for (Class<?> record : records) {
            text.append("\n### ").append(title(record)).append("\n\n");
            text.append(required(javadoc.sentence(record), record.getName())).append("\n\n");
            text.append("| key | value | meaning |\n|---|---|---|\n");
            RecordJson.variant(record).ifPresent(v -> text.append("| `outcome` | text | always `" + v + "` |\n"));
            for (RecordComponent component : record.getRecordComponents()) {
                if (RecordJson.LEFT_OUT.contains(component.getType())) {
                    continue;
                }
                String meaning = javadoc.component(record, component.getName());
                text.append("| `").append(key(component)).append("` | ");
                text.append(value(component.getGenericType())).append(" | ");
                text.append(required(meaning, record.getName() + "." + component.getName())
                        .replace("|", "\\|"));
                text.append(" |\n");
            }
        }
        text.append("\n## Choices\n\nA value of a choice is one of its variants; the key `outcome` tells which.\n\n");
        text.append("| choice | what it is | variants |\n|---|---|---|\n");
        for (Class<?> choice : choices) {
            List<String> variants = Arrays.stream(choice.getPermittedSubclasses())
                    .map(v -> "[`" + RecordJson.variant(v).orElseThrow() + "`](#" + anchor(v) + ")")
                    .toList();
            text.append("| <a id=\"")
                    .append(anchor(choice))
                    .append("\"></a>")
                    .append(title(choice))
                    .append(" | ");
            text.append(required(javadoc.sentence(choice), choice.getName())).append(" | ");
            text.append(String.join(", ", variants)).append(" |\n");
        }
        text.append("\n## Constants\n\n| type | what it is | values |\n|---|---|---|\n");
        for (Class<?> type : enums) {
            List<String> names = Arrays.stream(type.getEnumConstants())
                    .map(c -> "`" + c + "`")
                    .toList();
            text.append("| <a id=\"")
                    .append(anchor(type))
                    .append("\"></a>")
                    .append(title(type))
                    .append(" | ");
            text.append(required(javadoc.sentence(type), type.getName())).append(" | ");
            text.append(String.join(", ", names)).append(" |\n");
        }
        return text.toString();
    }

    private static String required(String text, String what) {
        assertNotEquals("", text, "Javadoc of " + what);
        return text;
    }

    private void reach(Type type) {
        if (type instanceof ParameterizedType generic) {
            Arrays.stream(generic.getActualTypeArguments()).forEach(this::reach);
        } else if (type instanceof Class<?> c && c.isRecord()) {
            if (records.add(c)) {
                waiting.add(c);
            }
        } else if (type instanceof Class<?> c && c.isEnum()) {
            enums.add(c);
        } else if (type instanceof Class<?> c && c.isSealed()) {
            if (choices.add(c)) {
                Arrays.stream(c.getPermittedSubclasses()).forEach(this::reach);
            }
        }
    }

    private static String key(RecordComponent component) {
        Si declaration = component.getAnnotation(Si.class);
        if (declaration != null) {
            return component.getName() + Measure.of(declaration).jsonSuffix();
        }
        return component.getType() == double.class || component.getType() == OptionalDouble.class
                ? component.getName() + "…"
                : component.getName();
    }

    private static String value(Type type) {
        if (type instanceof ParameterizedType generic) {
            Type[] of = generic.getActualTypeArguments();
            if (generic.getRawType() == Optional.class) {
                return value(of[0]) + " or null";
            }
            return generic.getRawType() == Map.class
                    ? "object of " + value(of[1]) + " by " + value(of[0])
                    : "list of " + value(of[0]);
        }
        Class<?> c = (Class<?>) type;
        if (c == OptionalDouble.class) {
            return "number or null";
        }
        if (c == double[].class) {
            return "list of numbers";
        }
        if (c == double.class || c == Double.class) {
            return "number";
        }
        if (c == int.class || c == Integer.class) {
            return "whole number";
        }
        if (c == boolean.class || c == Boolean.class) {
            return "true or false";
        }
        return c == String.class ? "text" : "[" + title(c) + "](#" + anchor(c) + ")";
    }

    /** A nested record goes by its own name and that of the record around it. */
    private static String title(Class<?> type) {
        return type.getDeclaringClass() == null
                ? type.getSimpleName()
                : type.getDeclaringClass().getSimpleName() + "." + type.getSimpleName();
    }

    /** As Markdown renderers name the anchor of a heading. */
    private static String anchor(Class<?> type) {
        return title(type).toLowerCase(java.util.Locale.ROOT).replace(".", "");
    }
}
