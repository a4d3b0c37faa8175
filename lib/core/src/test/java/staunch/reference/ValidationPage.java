package staunch.reference;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The page of validation, written from what the reference tests of a run compared. Equal results give equal bytes. */
final class ValidationPage {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    /** A longer table shows only its rows nearest to their tolerance. */
    private static final int MOST_ROWS = 300;

    private static final int NEAREST_ROWS = 25;

    /** A row that no test asserts, and why. */
    private record NotAsserted(String id, String table, String reason) {}

    private final Map<String, List<CSVRecord>> checks = new TreeMap<>();
    private final Map<String, List<NotAsserted>> notAsserted = new TreeMap<>();
    private final Map<String, Set<String>> idsOfFiles = new TreeMap<>();

    private ValidationPage() {}

    /**
     * Reads the reports of a run and the reference files they stand for.
     *
     * @param reports folder of the reports
     * @param resources folder of the reference files
     */
    static ValidationPage read(Path reports, Path resources) throws IOException {
        ValidationPage page = new ValidationPage();
        for (Path file : csvFiles(reports)) {
            for (CSVRecord r : records(file)) {
                page.checks
                        .computeIfAbsent(r.get("table"), t -> new ArrayList<>())
                        .add(r);
            }
        }
        for (Path file : csvFiles(resources)) {
            String name = resources.relativize(file).toString().replace('\\', '/');
            if (name.equals("not-asserted.csv")) {
                for (CSVRecord r : records(file)) {
                    page.notAsserted
                            .computeIfAbsent(r.get("file"), t -> new ArrayList<>())
                            .add(new NotAsserted(r.get("id"), r.get("file"), r.get("reason")));
                }
            } else {
                Set<String> ids = new TreeSet<>();
                for (CSVRecord r : records(file)) {
                    if (r.isMapped("id")) {
                        ids.add(r.get("id"));
                    }
                }
                page.idsOfFiles.put(name, ids);
            }
        }
        return page;
    }

    private static List<Path> csvFiles(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
        }
    }

    private static List<CSVRecord> records(Path file) throws IOException {
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, FORMAT)) {
            return parser.getRecords();
        }
    }

    /** Rows of the reference files that are neither asserted by a test nor listed with a reason. */
    List<String> forgottenRows() {
        List<String> forgotten = new ArrayList<>();
        idsOfFiles.forEach((file, ids) -> {
            Set<String> known = assertedIds(file);
            listedAsNotAsserted(file).forEach(n -> known.add(n.id()));
            ids.stream().filter(id -> !known.contains(id)).forEach(id -> forgotten.add(file + " " + id));
        });
        return forgotten;
    }

    /** Rows that are listed as not asserted although a test asserts them, or that no file has. */
    List<String> wronglyListedRows() {
        List<String> wrong = new ArrayList<>();
        notAsserted.forEach((file, rows) -> {
            Set<String> asserted = assertedIds(file);
            Set<String> known = idsOfFiles.getOrDefault(file, Set.of());
            for (NotAsserted n : rows) {
                if (asserted.contains(n.id()) || (!known.isEmpty() && !known.contains(n.id()))) {
                    wrong.add(file + " " + n.id());
                }
            }
        });
        return wrong;
    }

    private Set<String> assertedIds(String file) {
        return checks.getOrDefault(file, List.of()).stream()
                .map(r -> r.get("id"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private List<NotAsserted> listedAsNotAsserted(String file) {
        return notAsserted.getOrDefault(file, List.of());
    }

    /** The page in Markdown. */
    String text() {
        StringBuilder page = new StringBuilder();
        page.append("# Validation\n\n")
                .append(
                        "Written from the reference tests by `ValidationPageIT`; do not edit it. Each row compares a value")
                .append(" that the library computes with one published outside this project, or computed with a named")
                .append(
                        " program outside it. Tolerances are absolute, in the unit of the row; the letter names what they")
                .append(" rest on, the number the source.\n\n");
        page.append("| file | rows asserted | rows not asserted | comparisons | largest share of tolerance |\n");
        page.append("|---|--:|--:|--:|--:|\n");
        int asserted = 0;
        int left = 0;
        int comparisons = 0;
        Set<String> files = new TreeSet<>(checks.keySet());
        files.addAll(notAsserted.keySet());
        for (String file : files) {
            List<CSVRecord> rows = checks.getOrDefault(file, List.of());
            int ids = assertedIds(file).size();
            double share = rows.stream()
                    .mapToDouble(ValidationPage::shareOfTolerance)
                    .max()
                    .orElse(0);
            page.append("| [").append(file).append("](#").append(anchor(file)).append(") | ");
            page.append(ids).append(" | ");
            page.append(listedAsNotAsserted(file).size()).append(" | ");
            page.append(rows.size()).append(" | ");
            page.append(decimals(share, 2)).append(" |\n");
            asserted += ids;
            left += listedAsNotAsserted(file).size();
            comparisons += rows.size();
        }
        page.append("| **all** | ").append(asserted).append(" | ").append(left).append(" (");
        page.append(decimals(100.0 * left / Math.max(1, asserted + left), 1)).append(" %) | ");
        page.append(comparisons).append(" | |\n");
        for (String file : files) {
            section(page, file);
        }
        return page.toString();
    }

    private void section(StringBuilder page, String file) {
        page.append("\n## ").append(file).append("\n");
        List<CSVRecord> rows = checks.getOrDefault(file, List.of());
        if (!rows.isEmpty()) {
            List<CSVRecord> shown = rows;
            if (rows.size() > MOST_ROWS) {
                shown = rows.stream()
                        .sorted(Comparator.comparingDouble(ValidationPage::shareOfTolerance)
                                .reversed())
                        .limit(NEAREST_ROWS)
                        .toList();
                page.append("\nThe ")
                        .append(NEAREST_ROWS)
                        .append(" of ")
                        .append(rows.size())
                        .append(" comparisons nearest to their tolerance.\n");
            }
            List<String> reasons = distinct(shown, "reason");
            List<String> sources = distinct(shown, "source");
            page.append("\nTolerances:\n\n");
            for (String reason : reasons) {
                page.append("- **")
                        .append(letter(reasons.indexOf(reason)))
                        .append("**: ")
                        .append(cell(reason))
                        .append("\n");
            }
            page.append("\nSources:\n\n");
            for (String source : sources) {
                page.append(sources.indexOf(source) + 1)
                        .append(". ")
                        .append(cell(source))
                        .append("\n");
            }
            page.append(
                    "\n| id | inputs | quantity | unit | published | computed | difference | tolerance | source |\n");
            page.append("|---|---|---|---|--:|--:|--:|--:|--:|\n");
            for (CSVRecord r : shown) {
                double tolerance = number(r, "tolerance");
                int places = places(tolerance);
                String model = r.get("model");
                page.append("| ").append(cell(r.get("id"))).append(" | ");
                page.append(cell(r.get("inputs"))).append(" | ");
                page.append(cell(r.get("quantity") + (model.isEmpty() ? "" : ", " + model)))
                        .append(" | ");
                page.append(cell(r.get("unit"))).append(" | ");
                page.append(plain(number(r, "published"))).append(" | ");
                page.append(decimals(number(r, "computed"), places)).append(" | ");
                page.append(decimals(number(r, "difference"), places)).append(" | ");
                page.append(significant(tolerance))
                        .append(" ")
                        .append(letter(reasons.indexOf(r.get("reason"))))
                        .append(" | ");
                page.append(sources.indexOf(r.get("source")) + 1).append(" |\n");
            }
        }
        List<NotAsserted> others = listedAsNotAsserted(file);
        if (!others.isEmpty()) {
            page.append("\nNot asserted:\n\n");
            others.stream()
                    .collect(Collectors.groupingBy(NotAsserted::reason, TreeMap::new, Collectors.toList()))
                    .forEach((reason, group) -> page.append("- ")
                            .append(group.stream().map(NotAsserted::id).collect(Collectors.joining(", ")))
                            .append(": ")
                            .append(cell(reason))
                            .append("\n"));
        }
    }

    private static List<String> distinct(List<CSVRecord> rows, String column) {
        return rows.stream().map(r -> r.get(column)).distinct().toList();
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }

    /** To three digits, so that rounding errors of the machine do not reorder rows. */
    private static double shareOfTolerance(CSVRecord row) {
        double difference = Math.abs(number(row, "difference"));
        double share = difference == 0 ? 0 : difference / number(row, "tolerance");
        return Math.rint(share * 1000) / 1000;
    }

    /** Places that show a hundredth of the tolerance: what lies below may differ between machines. */
    private static int places(double tolerance) {
        return tolerance == 0 ? 6 : Math.max(0, 2 - (int) Math.floor(Math.log10(tolerance)));
    }

    /** Rounded in two steps, so that a value halfway between two prints falls to the same side on every machine. */
    private static String decimals(double value, int places) {
        BigDecimal rounded = new BigDecimal(value)
                .setScale(places + 4, RoundingMode.HALF_EVEN)
                .setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    private static String significant(double value) {
        return plain(new BigDecimal(value)
                .round(new MathContext(3, RoundingMode.HALF_EVEN))
                .doubleValue());
    }

    private static String plain(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal number = BigDecimal.valueOf(value).stripTrailingZeros();
        return Math.abs(value) < 1e-4 ? number.toString() : number.toPlainString();
    }

    private static String letter(int index) {
        return index < 26 ? String.valueOf((char) ('a' + index)) : letter(index / 26 - 1) + letter(index % 26);
    }

    private static String cell(String text) {
        return text.replace("|", "\\|").replace("*", "\\*").replace("<", "&lt;").replaceAll("\\s+", " ");
    }

    private static String anchor(String heading) {
        return heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9 _-]", "").replace(' ', '-');
    }
}
