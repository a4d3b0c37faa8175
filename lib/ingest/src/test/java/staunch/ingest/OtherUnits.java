package staunch.ingest;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Writes a case anew in other units. Factors from NIST SP 811, appendix B: foot 0.3048 m, inch 25.4 mm, pound
 * 0.45359237 kg, US gallon 3.785411784 l, barrel 42 gallons, psi 6894.757293168 Pa.
 */
final class OtherUnits {
    private static final BigDecimal PPG =
            new BigDecimal("0.45359237").divide(new BigDecimal("0.003785411784"), MathContext.DECIMAL64);
    private static final Map<String, String> UNIT = Map.of(
            "ft", "m", "in", "mm", "psi", "bar", "ppg", "kg/m3", "bbl", "l", "lb/ft", "kg/m", "degF/100ft", "degC/km");
    private static final Map<String, BigDecimal> FACTOR = Map.of(
            "ft", new BigDecimal("0.3048"),
            "in", new BigDecimal("25.4"),
            "psi", new BigDecimal("0.06894757293168"),
            "ppg", PPG,
            "bbl", new BigDecimal("158.987294928"),
            "lb/ft", new BigDecimal("0.45359237").divide(new BigDecimal("0.3048"), MathContext.DECIMAL64),
            "degF/100ft",
                    new BigDecimal(1000)
                            .divide(new BigDecimal("1.8").multiply(new BigDecimal("30.48")), MathContext.DECIMAL64));
    private static final Pattern VALUE = Pattern.compile(
            "(?<!name)(: |\\{)(?:(\\d+)[ -])?(?:(\\d+)/(\\d+)|(\\d+(?:\\.\\d+)?)) (ft|in|psi|ppg|bbl|lb/ft|degF/100ft)(?=[,}\\r\\n])");
    private static final Pattern HEADING = Pattern.compile("(\\w+) \\[(\\w+)]");

    private OtherUnits() {}

    /** Copies a case written in field units and writes it in metric ones. */
    static void metric(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String text = Files.readString(file);
                String name = file.getFileName().toString();
                Files.writeString(
                        to.resolve(name),
                        name.endsWith(".yaml") ? yaml(text) : name.endsWith(".csv") ? csv(text) : text);
            }
        }
    }

    private static String yaml(String text) {
        return VALUE.matcher(text).replaceAll(m -> {
            BigDecimal number = m.group(5) != null
                    ? new BigDecimal(m.group(5))
                    : new BigDecimal(m.group(3)).divide(new BigDecimal(m.group(4)), MathContext.DECIMAL64);
            BigDecimal whole = m.group(2) == null ? number : number.add(new BigDecimal(m.group(2)));
            return Matcher.quoteReplacement(m.group(1) + other(whole, m.group(6)) + " " + UNIT.get(m.group(6)));
        });
    }

    private static String other(BigDecimal value, String unit) {
        return value.multiply(FACTOR.get(unit)).round(MathContext.DECIMAL64).toPlainString();
    }

    private static String csv(String text) {
        List<String> lines = new ArrayList<>();
        List<String> units = List.of();
        for (String line : text.lines().toList()) {
            if (line.startsWith("#")) {
                lines.add(line);
            } else if (units.isEmpty()) {
                units = Stream.of(line.split(","))
                        .map(HEADING::matcher)
                        .map(m -> m.find() && UNIT.containsKey(m.group(2)) ? m.group(2) : "none")
                        .toList();
                lines.add(HEADING.matcher(line)
                        .replaceAll(m -> m.group(1) + " [" + UNIT.getOrDefault(m.group(2), m.group(2)) + "]"));
            } else {
                String[] cells = line.split(",", -1);
                for (int i = 0; i < cells.length; i++) {
                    if (FACTOR.containsKey(units.get(i)) && !cells[i].isEmpty()) {
                        cells[i] = other(new BigDecimal(cells[i]), units.get(i));
                    }
                }
                lines.add(String.join(",", cells));
            }
        }
        return String.join("\n", lines) + "\n";
    }
}
