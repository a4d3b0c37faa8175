package staunch.cli;

import java.io.File;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import staunch.kernel.NotebookParameter;
import staunch.kernel.ParameterWriter;
import staunch.units.Fault;
import staunch.units.Quantity;

/**
 * Values of parameters as a person writes them: a quantity keeps its unit and must be able to stand where the parameter's
 * own did, a number must be one, text needs no quotes, several texts are parted like the folders of a path.
 */
final class UnitParameters implements ParameterWriter {
    /** A call of a unit helper, such as {@code ppg(10.4)} or {@code quantity("13 3/8 in")}. */
    private static final Pattern HELPER = Pattern.compile("\\w+\\(.*\\)");

    private static final ParameterWriter JAVA = ParameterWriter.java();

    @Override
    public String expression(NotebookParameter parameter, String text) {
        // The end of the last line tells several texts from one that holds the separator.
        String given = parameter.type().equals("String[]") ? text : text.strip();
        boolean untyped = parameter.type().equals("var");
        if (parameter.type().equals("Quantity")
                || (untyped && HELPER.matcher(parameter.value()).matches())) {
            return quantity(parameter, given);
        }
        if (untyped && parameter.value().startsWith("\"")) {
            return JAVA.expression(new NotebookParameter(parameter.name(), "String", parameter.value()), text);
        }
        if (parameter.type().equals("String[]")) {
            return texts(given);
        }
        switch (parameter.type()) {
            case "double" -> number(parameter, () -> Double.parseDouble(given), "a number");
            case "int" -> number(parameter, () -> Integer.parseInt(given), "a whole number");
            case "boolean" -> {
                if (!given.equals("true") && !given.equals("false")) {
                    throw new IllegalArgumentException(
                            "parameter " + parameter.name() + " takes true or false, not \"" + given + "\"");
                }
            }
            default -> {
                return JAVA.expression(parameter, text);
            }
        }
        return given;
    }

    /** Several texts: a line each, or parted as the system parts the folders of a path. */
    private static String texts(String given) {
        return Stream.of(given.split(given.contains("\n") ? "\n" : Pattern.quote(File.pathSeparator)))
                .map(String::strip)
                .filter(t -> !t.isEmpty())
                .map(t -> JAVA.expression(new NotebookParameter("text", "String", ""), t))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    private static void number(NotebookParameter parameter, Runnable parse, String what) {
        try {
            parse.run();
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "parameter %s takes %s, not a text or a unit", parameter.name(), what),
                    e);
        }
    }

    private static String quantity(NotebookParameter parameter, String given) {
        try {
            Quantity.parse("parameter " + parameter.name(), given);
        } catch (Fault fault) {
            throw new IllegalArgumentException(fault.getMessage(), fault);
        }
        return "quantity(\"" + given + "\")";
    }
}
