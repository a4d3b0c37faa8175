package staunch.ingest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import staunch.units.Amount;
import staunch.units.Measure;
import staunch.units.UnitSystem;
import staunch.units.Warning;
import staunch.units.Wording;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/** Builds the path of the hole, which must reach the deepest section of any design. */
final class SurveyBuilder {
    /** A survey that ends this little above TD is carried on straight, m: the bit is always ahead of the tool. */
    private static final double REACH = 50;

    /** Difference from a given vertical depth that is told, m. */
    private static final double DIFFERENCE_TOLD = 1;

    private final Fields root;
    private final UnitSystem units;
    private final FaultLog log;
    private final List<Warning> warnings;

    SurveyBuilder(Fields root, UnitSystem units, FaultLog log, List<Warning> warnings) {
        this.root = root;
        this.units = units;
        this.log = log;
        this.warnings = warnings;
    }

    Optional<WellPath> build(List<DesignBuilder.Built> designs) {
        return root.nested("survey")
                .flatMap(f -> log.attempt(f.place(), () -> path(f)).flatMap(p -> reaching(f, p, designs)));
    }

    /** The path as far as it is surveyed. */
    WellPath path(Fields f) {
        if (f.has("vertical_to")) {
            return WellPath.vertical(f.needAmount("vertical_to"));
        }
        List<Fields> rows = f.has("file") ? f.table("file") : f.rows("stations");
        if (rows.isEmpty()) {
            throw new FaultLog.Incomplete();
        }
        checkOrder(rows);
        List<SurveyStation> stations = new ArrayList<>();
        for (Fields r : rows) {
            log.attempt(
                            r.place(),
                            () -> new SurveyStation(
                                    r.needAmount("md"), r.needAmount("inclination"), r.needAmount("azimuth")))
                    .ifPresent(stations::add);
        }
        if (stations.size() < rows.size()) {
            throw new FaultLog.Incomplete();
        }
        WellPath path = WellPath.of(stations);
        compare(rows, path);
        if (path.tieInAssumed()) {
            warnings.add(new Warning(
                    "survey",
                    Wording.of(
                            "its first station lies at {}: the hole above it is taken to leave the datum vertically.",
                            Amount.of(stations.get(0).measuredDepth(), Measure.DEPTH))));
        }
        return path;
    }

    private void checkOrder(List<Fields> rows) {
        boolean wrong = false;
        double last = Double.NEGATIVE_INFINITY;
        String lastText = "";
        for (Fields r : rows) {
            double md = r.needAmount("md");
            if (md <= last) {
                log.add(
                        r.place("md"),
                        r.written("md"),
                        md == last
                                ? r.written("md") + " is given again"
                                : r.written("md") + " stands after " + lastText,
                        md == last ? "keep one of the stations" : "sort the stations downwards");
                wrong = true;
            }
            if (r.amount("tvd").isPresent() && r.amount("tvd").getAsDouble() > md + 0.005) {
                log.add(
                        r.place("tvd"),
                        r.written("tvd"),
                        r.written("tvd") + " of vertical depth is more than " + r.written("md") + " of measured depth",
                        "the columns may be swapped");
                wrong = true;
            }
            last = md;
            lastText = r.written("md");
        }
        if (wrong) {
            throw new FaultLog.Incomplete();
        }
    }

    private void compare(List<Fields> rows, WellPath path) {
        rows.stream()
                .filter(r -> r.amount("tvd").isPresent())
                .max(Comparator.comparingDouble(r -> difference(r, path)))
                .filter(r -> difference(r, path) > DIFFERENCE_TOLD)
                .ifPresent(r -> warnings.add(new Warning(
                        "survey",
                        Wording.of(
                                "its vertical depth at {} is {}, by minimum curvature it is {}, which was used.",
                                Amount.of(r.needAmount("md"), Measure.DEPTH),
                                exact(r.needAmount("tvd")),
                                exact(path.verticalDepth(r.needAmount("md")))))));
    }

    private static double difference(Fields r, WellPath path) {
        return Math.abs(path.verticalDepth(r.needAmount("md")) - r.needAmount("tvd"));
    }

    private Optional<WellPath> reaching(Fields f, WellPath path, List<DesignBuilder.Built> designs) {
        double deepest = designs.stream()
                .flatMap(d -> d.sections().stream())
                .mapToDouble(s -> s.value().bottomDepth())
                .max()
                .orElse(0);
        if (deepest <= path.end()) {
            return Optional.of(path);
        }
        if (deepest - path.end() > REACH) {
            log.add(
                    f.place(),
                    "",
                    "ends at " + text(path.end()) + ", more than " + units.precise(REACH, Measure.LENGTH)
                            + " above the deepest section TD of " + text(deepest),
                    "carry the survey or the plan on to TD");
            return Optional.empty();
        }
        warnings.add(new Warning(
                "survey",
                Wording.of(
                        "it ends at {}, above the deepest section TD of {}: the hole is taken to go on straight.",
                        exact(path.end()),
                        exact(deepest))));
        return Optional.of(path.extendedTo(deepest));
    }

    /** To tell depths apart that differ by little. */
    private static Amount exact(double depth) {
        return new Amount(depth, Measure.DEPTH, 6);
    }

    private String text(double depth) {
        return units.precise(depth, Measure.DEPTH);
    }
}
