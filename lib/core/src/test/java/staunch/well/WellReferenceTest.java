package staunch.well;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import staunch.reference.ReferenceRow;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;

/** Minimum curvature against published surveys. Lengths are in the unit of the source: the formulas hold for any. */
class WellReferenceTest {
    private static final Predicate<ReferenceRow> MINIMUM_CURVATURE =
            r -> r.method().startsWith("minimum curvature") || r.method().startsWith("2/b");

    /** Printed doglegs that the printed angles of their own stations contradict by ten times their rounding. */
    private static final Set<String> DOGLEGS_OFF =
            Set.of("MD 2248.73 dls_published_per_30", "MD 2267 dls_published_per_30");

    @TestFactory
    Stream<DynamicTest> surveyCases() {
        return ReferenceTable.read("well/survey-cases.csv").tests(MINIMUM_CURVATURE, WellReferenceTest::check);
    }

    private static void check(ReferenceRow row) {
        String inputs = row.inputs();
        if (inputs.startsWith("dogleg=")) {
            row.check(ratioFactor(row.number("dogleg")));
            return;
        }
        Survey survey = inputs.startsWith("file ") ? file(inputs) : Survey.parse(inputs);
        row.check(survey.value(row.quantity()));
    }

    /** Ratio factor of the usual form, 2/β tan(β/2), from an arc in the path: height over the chord of its tangents. */
    private static double ratioFactor(double dogleg) {
        WellPath path = WellPath.of(List.of(new SurveyStation(0, 0, 0), new SurveyStation(1, dogleg, 0)));
        return path.verticalDepth(1) / (0.5 * (1 + Math.cos(dogleg)));
    }

    private static Survey file(String inputs) {
        Matcher m = Pattern.compile("file (\\S+), station MD (\\S+) \\(.*").matcher(inputs);
        if (!m.matches()) {
            throw new IllegalArgumentException(inputs);
        }
        return new Survey(path(ReferenceTable.records("well/" + m.group(1))), 0, Double.parseDouble(m.group(2)));
    }

    private static WellPath path(List<Map<String, String>> records) {
        List<SurveyStation> stations = new ArrayList<>();
        for (Map<String, String> r : records) {
            stations.add(station(number(r, "md"), number(r, "inclination_deg"), number(r, "azimuth_deg")));
        }
        return WellPath.of(stations);
    }

    private static double number(Map<String, String> record, String column) {
        return Double.parseDouble(record.get(column));
    }

    private static SurveyStation station(double md, double inclination, double azimuth) {
        return new SurveyStation(md, Math.toRadians(inclination), Math.toRadians(azimuth));
    }

    private record Survey(WellPath path, double from, double to) {
        private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

        /** "MD 3500 ft,I 15,A 20 -> …", "stations (MD m,I,A): 0,0,75; …" or "name: [(0, 0, 0), …]". */
        static Survey parse(String text) {
            String numbers = text.startsWith("MD ") ? text : text.substring(text.indexOf(':') + 1);
            List<Double> found = new ArrayList<>();
            Matcher m = NUMBER.matcher(numbers.replace("->", ";"));
            while (m.find()) {
                found.add(Double.parseDouble(m.group()));
            }
            List<SurveyStation> stations = new ArrayList<>();
            for (int i = 0; i < found.size(); i += 3) {
                stations.add(station(found.get(i), found.get(i + 1), found.get(i + 2)));
            }
            double from = stations.get(0).measuredDepth();
            return new Survey(
                    WellPath.of(stations),
                    from,
                    stations.get(stations.size() - 1).measuredDepth());
        }

        double value(String quantity) {
            String[] words = quantity.split(" at MD ");
            double at = words.length == 2 ? Double.parseDouble(words[1]) : to;
            return switch (words[0]) {
                case "north" -> path.north(at) - path.north(from);
                case "east" -> path.east(at) - path.east(from);
                case "TVD", "TVD increment" -> path.verticalDepth(at) - path.verticalDepth(from);
                case "dogleg severity per 100" -> 100 * Math.toDegrees(path.doglegSeverity(0.5 * (from + to)));
                default -> throw new IllegalArgumentException(quantity);
            };
        }
    }

    @TestFactory
    Stream<DynamicTest> longSurveyInFeet() {
        return longSurvey("well/survey-long-colorado.csv", "ft", 100);
    }

    @TestFactory
    Stream<DynamicTest> longSurveyInMetres() {
        return longSurvey("well/survey-long-metric.csv", "m", 30);
    }

    private static Stream<DynamicTest> longSurvey(String file, String unit, int perLength) {
        List<Map<String, String>> records = ReferenceTable.records(file);
        WellPath path = path(records);
        List<Map<String, String>> rows = new ArrayList<>();
        for (Map<String, String> r : records) {
            for (String quantity : List.of("tvd", "north", "east")) {
                rows.add(row(r, quantity, quantity + "_published", unit));
                rows.add(row(r, quantity, quantity + "_recomputed", unit));
            }
            rows.add(row(r, "dls", "dls_published_per_" + perLength, "deg"));
        }
        return ReferenceTable.of(file, rows).tests(r -> !DOGLEGS_OFF.contains(r.id()), r -> {
            double md = r.number("md");
            switch (r.quantity()) {
                case "tvd" -> checkPosition(r, path.verticalDepth(md));
                case "north" -> checkPosition(r, path.north(md));
                case "east" -> checkPosition(r, path.east(md));
                default -> checkDogleg(r, path, perLength);
            }
        });
    }

    private static Map<String, String> row(Map<String, String> r, String quantity, String column, String unit) {
        Map<String, String> row = new TreeMap<>();
        row.put("id", "MD " + r.get("md") + " " + column);
        row.put("inputs", "md=" + r.get("md"));
        row.put("quantity", quantity);
        row.put("value", r.get(column));
        row.put("unit", unit);
        row.put("tolerance", "-");
        row.put("method", "minimum curvature");
        row.put("source", "column " + column);
        return row;
    }

    private static void checkPosition(ReferenceRow row, double computed) {
        boolean shortDepth =
                row.number("md") != Math.rint(row.number("md")) && row.unit().equals("ft");
        if (row.source().endsWith("recomputed") && shortDepth) {
            row.check(computed, 0.05, "the measured depth of this station is printed to 0.1 ft: half a digit of it");
        } else if (row.source().endsWith("recomputed")) {
            row.check(computed, 6e-5, "half of the last digit given, and rounding");
        } else {
            row.check(
                    computed,
                    0.05,
                    "positions were summed from angles with more digits than the 0.01 deg printed: half a digit moves the"
                            + " end of the well by more than this");
        }
    }

    private static void checkDogleg(ReferenceRow row, WellPath path, int perLength) {
        double md = row.number("md");
        List<SurveyStation> stations = path.stations();
        int i = 0;
        while (stations.get(i).measuredDepth() < md) {
            i++;
        }
        if (i == 0) {
            row.check(0, 0, "the first station has no arc above it");
            return;
        }
        double above = stations.get(i - 1).measuredDepth();
        double severity = Math.toDegrees(path.doglegSeverity(0.5 * (above + md))) * perLength;
        // Inclination and azimuth of both ends, each within half of 0.01 deg.
        double angles = 2 * 0.005 * Math.sqrt(2) * perLength / (md - above);
        row.check(severity, 0.005 + angles, "half of the last digit of severity and of the four angles");
    }

    @TestFactory
    Stream<DynamicTest> capacities() {
        return ReferenceTable.read("well/annular-capacities.csv")
                .tests(r -> !r.quantity().equals("inside diameter"), r -> {
                    double area = area(r);
                    double foot = 0.3048;
                    switch (r.unit()) {
                        case "ft/ft3" -> r.check(foot * foot / area);
                        case "ft3/ft" -> r.check(area / (foot * foot));
                        case "gal/ft" -> r.check(area * foot / (231 * Math.pow(0.0254, 3)));
                        default -> r.checkSi(area, Measure.CAPACITY);
                    }
                });
    }

    /** Area through the annulus of a hole and one pipe; the inside and the steel of the pipe likewise. */
    private static double area(ReferenceRow row) {
        String text = row.inputs().startsWith("constant") ? row.quantity() : row.inputs();
        Matcher m = Pattern.compile("(OD|ID|hole|pipe)[ =]([0-9.]+)").matcher(text.replace("pipe OD", "pipe"));
        Map<String, Double> inches = new TreeMap<>();
        while (m.find()) {
            inches.put(m.group(1), Double.parseDouble(m.group(2)) * 0.0254);
        }
        if (row.quantity().startsWith("annular capacity")) {
            double hole = inches.containsKey("hole") ? inches.get("hole") : inches.get("ID");
            return annulus(hole, inches.get("pipe"), 0.01).areaAt(500);
        }
        double inside = inches.get("ID");
        double outside = inches.getOrDefault("pipe", inside + 0.02);
        double capacity = annulus(1, outside, inside).stringVolume() / 1000;
        if (row.quantity().startsWith("internal capacity")) {
            return capacity;
        }
        return annulus(1, 0.05, 0).areaAt(500)
                + Math.PI / 4 * 0.05 * 0.05
                - annulus(1, outside, inside).areaAt(500)
                - capacity;
    }

    private static Annulus annulus(double hole, double outside, double inside) {
        return Annulus.of(new AnnulusGeometry(
                List.of(),
                List.of(new HoleInterval(0, 1000, hole)),
                new DrillString(List.of(new StringComponent("pipe", 1000, outside, inside))),
                1000,
                0,
                1000));
    }
}
