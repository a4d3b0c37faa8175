package staunch.earth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import staunch.units.Amount;
import staunch.units.EquivalentDensity;
import staunch.units.InputFault;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Source;
import staunch.units.Wording;

/** Works out {@link EvidenceTransfer}. */
final class EvidenceModel {
    private static final String PORE_PRESSURE = "pore pressure";
    private static final String STRENGTH = "strength";

    /** Points of a profile over half a window: the weighted mean of several pieces of evidence is not straight. */
    private static final int PARTS = 20;

    /** Pressures closer than this are the same, Pa: what the rounding of unit conversions may leave. */
    private static final double SAME = 1;

    private final EvidenceTransfer choice;
    private final OffsetTransfer transfer;
    private final EarthModel predicted;
    private final NormalPressure normal;
    private final Range overburden;
    private final List<OffsetWell> wells;
    private final Set<EvidenceConflict> conflicts = new LinkedHashSet<>();
    private final List<OffsetEvidence.Change> changes = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();
    private DoublePredicate strengthKnownAt = z -> false;

    EvidenceModel(
            EvidenceTransfer choice,
            EarthModel predicted,
            NormalPressure normal,
            Range overburden,
            List<OffsetWell> wells) {
        this.choice = choice;
        this.transfer = choice.transfer();
        this.predicted = predicted;
        this.normal = normal;
        this.overburden = overburden;
        this.wells =
                wells.stream().sorted(Comparator.comparing(OffsetWell::name)).toList();
    }

    /** How strongly evidence draws a prediction at a depth, and where to. */
    private record Pull(double share, Optional<PressureEstimate> estimate) {
        private static final Pull NONE = new Pull(0, Optional.empty());
    }

    EvidenceTransfer.Result build(Set<String> plannedTests) {
        List<OffsetEvidence.Point> points = points();
        Optional<Range> pore = porePressure(points);
        List<OffsetEvidence.Test> tests = tests(pore);
        Optional<Range> strength = strength(pore, tests);
        List<OffsetEvidence.Event> bounds = events(pore);
        List<StrengthTest> planned = compared(bounds, pore, strength, plannedTests);
        List<WeakZone> zones =
                predicted.weakZones().stream().map(z -> tested(z, tests)).toList();
        if (choice.bounds() == BoundUse.COUNTED) {
            CountedBounds counted = counted(pore, bounds);
            strength = counted.strength(strength, this::gridOf);
            pore = counted.porePressure(pore, this::gridOf);
            planned = planned.stream()
                    .map(t -> plannedTests.contains(t.name()) ? counted.test(t) : t)
                    .toList();
            zones = zones.stream().map(counted::zone).toList();
            changes.addAll(counted.changes());
        }
        EarthModel earth = new EarthModel(
                pore, strength, planned, zones, predicted.temperature(), predicted.tops(), predicted.stayOuts());
        OffsetEvidence evidence = new OffsetEvidence(
                choice.porePressure(),
                choice.strength(),
                choice.weakZones(),
                tests,
                points,
                List.copyOf(conflicts),
                changes,
                leftOut,
                List.of(),
                bounds,
                choice.bounds(),
                choice.logs(),
                List.of(),
                shoes());
        return new EvidenceTransfer.Result(earth, evidence);
    }

    /** The strength tests, once bounds are held against the profiles and planned tests against the strength. */
    private List<StrengthTest> compared(
            List<OffsetEvidence.Event> bounds,
            Optional<Range> pore,
            Optional<Range> strength,
            Set<String> plannedTests) {
        bounds.forEach(b -> check(b, pore, strength));
        return predicted.tests().stream()
                .map(t -> plannedTests.contains(t.name()) ? lowered(t, strength) : t)
                .toList();
    }

    private CountedBounds counted(Optional<Range> pore, List<OffsetEvidence.Event> bounds) {
        return new CountedBounds(
                transfer,
                normal,
                z -> stressKnown(pore, z) ? Optional.of(planned(pore).stressAt(z)) : Optional.empty(),
                wells,
                bounds,
                e -> predicted.weakZones().stream()
                        .anyMatch(zone -> e.verticalDepth() >= zone.topVerticalDepth()
                                && e.verticalDepth() <= zone.bottomVerticalDepth()));
    }

    // --- What corresponds to what

    private List<OffsetEvidence.Point> points() {
        List<OffsetEvidence.Point> found = new ArrayList<>();
        for (OffsetWell well : wells) {
            for (PressurePoint point : well.points()) {
                String label = well.name() + ": " + point.name();
                if (point.quality() == Quality.REJECTED) {
                    leftOut.add(label + " is flagged as rejected");
                    continue;
                }
                OptionalDouble z = transfer.matching().matched(well, point.verticalDepth(), normal);
                if (z.isEmpty()) {
                    leftOut.add(label + " has no corresponding depth in the planned well");
                } else if (z.getAsDouble() <= normal.waterLevel()) {
                    leftOut.add(label + " would lie above the water level of the planned well");
                } else {
                    double excess = well.excessOf(point.verticalDepth(), point.pressure());
                    double pressure = normal.at(z.getAsDouble()) + excess;
                    found.add(new OffsetEvidence.Point(well.name(), point, excess, z.getAsDouble(), pressure));
                }
            }
        }
        found.sort(Comparator.comparingDouble(OffsetEvidence.Point::verticalDepth)
                .thenComparing(OffsetEvidence.Point::label)
                .thenComparingDouble(OffsetEvidence.Point::pressure));
        predicted.porePressure().ifPresent(range -> found.forEach(p -> compare(p, range)));
        found.forEach(this::compareWithLogs);
        return found;
    }

    private void compareWithLogs(OffsetEvidence.Point point) {
        for (OffsetWell well : wells) {
            transfer.fromLogs(normal, List.of(well), point.verticalDepth())
                    .filter(log -> log.share() == 1)
                    .ifPresent(log -> {
                        double above = log.pressure().likely() - point.pressure();
                        if (Math.abs(above) > transfer.pressureConflict()) {
                            conflicts.add(new EvidenceConflict(
                                    "log of " + well.name(),
                                    point.label(),
                                    Wording.of(
                                            "the pore pressure from the log, carried over, lies {} "
                                                    + (above > 0 ? "above" : "below") + " the measured pressure",
                                            Amount.of(Math.abs(above), Measure.PRESSURE_DIFFERENCE))));
                        }
                    });
        }
    }

    private List<OffsetEvidence.Shoe> shoes() {
        List<OffsetEvidence.Shoe> found = new ArrayList<>();
        for (OffsetWell well : wells) {
            for (CasingShoe shoe : well.logged().shoes()) {
                found.add(new OffsetEvidence.Shoe(
                        well.name(), shoe, transfer.matching().matched(well, shoe.verticalDepth(), normal)));
            }
        }
        found.sort(Comparator.comparing(OffsetEvidence.Shoe::well)
                .thenComparingDouble(s -> s.shoe().verticalDepth())
                .thenComparing(s -> s.shoe().name()));
        return found;
    }

    private void compare(OffsetEvidence.Point point, Range range) {
        double z = point.verticalDepth();
        boolean above = range.highOrLikely().covers(z)
                && point.pressure()
                        > range.highOrLikely().highestAt(z)
                                + (range.high().isPresent() ? SAME : transfer.pressureConflict());
        boolean below = range.lowOrLikely().covers(z)
                && point.pressure()
                        < range.lowOrLikely().lowestAt(z)
                                - (range.low().isPresent() ? SAME : transfer.pressureConflict());
        if (above || below) {
            conflicts.add(new EvidenceConflict(
                    "predicted pore pressure",
                    point.label(),
                    "the measured pressure, carried over, lies " + (above ? "above" : "below") + " the "
                            + estimate(
                                    above,
                                    above
                                            ? range.high().isPresent()
                                            : range.low().isPresent())));
        }
    }

    private static String estimate(boolean high, boolean given) {
        return given ? (high ? "high" : "low") + " estimate" : "likely estimate";
    }

    private List<OffsetEvidence.Test> tests(Optional<Range> pore) {
        List<OffsetEvidence.Test> found = new ArrayList<>();
        for (OffsetWell well : wells) {
            for (StrengthTest test : well.tests()) {
                String label = well.name() + ": " + test.name();
                OptionalDouble z = transfer.matching().matched(well, test.verticalDepth(), normal);
                if (z.isEmpty()) {
                    leftOut.add(label + " has no corresponding depth in the planned well");
                } else if (!stressKnown(pore, z.getAsDouble())) {
                    leftOut.add(
                            label + " corresponds to a depth without overburden or pore pressure in the planned well");
                } else {
                    double ratio = well.ratioOf(test.verticalDepth(), test.pressure());
                    PressureEstimate strength = transfer.carried(well, test, planned(pore), z.getAsDouble());
                    found.add(new OffsetEvidence.Test(
                            well.name(),
                            test,
                            ratio,
                            z.getAsDouble(),
                            strength.likely(),
                            strength.low(),
                            strength.high()));
                }
            }
        }
        found.sort(Comparator.comparingDouble(OffsetEvidence.Test::verticalDepth)
                .thenComparing(OffsetEvidence.Test::label)
                .thenComparingDouble(OffsetEvidence.Test::strength));
        predicted
                .strength()
                .ifPresent(
                        range -> found.stream().filter(t -> zoneOf(t).isEmpty()).forEach(t -> compare(t, range)));
        return found;
    }

    private void compare(OffsetEvidence.Test test, Range range) {
        double z = test.verticalDepth();
        boolean bound = test.test().standing() == Standing.INTEGRITY_TEST;
        boolean above = range.highOrLikely().covers(z)
                && test.strength() > range.highOrLikely().highestAt(z) + SAME;
        boolean below = !bound
                && range.lowOrLikely().covers(z)
                && test.strength() < range.lowOrLikely().lowestAt(z) - SAME;
        if (above || below) {
            conflicts.add(new EvidenceConflict(
                    "predicted strength",
                    test.label(),
                    (bound
                                    ? "the rock held more than"
                                    : "the leak-off, carried over, lies " + (above ? "above" : "below"))
                            + " the "
                            + estimate(
                                    above,
                                    above
                                            ? range.high().isPresent()
                                            : range.low().isPresent())));
        }
    }

    private PlannedWell planned(Optional<Range> pore) {
        return new PlannedWell(normal, overburden, pore.orElseThrow().likely());
    }

    private boolean stressKnown(Optional<Range> pore, double z) {
        return overburden.likely().covers(z)
                && pore.isPresent()
                && pore.get().likely().covers(z)
                && z >= normal.datum().groundOrSeabedDepth();
    }

    private Optional<WeakZone> zoneOf(OffsetEvidence.Test test) {
        return predicted.weakZones().stream()
                .filter(zone -> test.verticalDepth() >= zone.topVerticalDepth()
                        && test.verticalDepth() <= zone.bottomVerticalDepth())
                .findFirst();
    }

    // --- Profiles

    private Optional<Range> porePressure(List<OffsetEvidence.Point> points) {
        double[] matched =
                points.stream().mapToDouble(OffsetEvidence.Point::verticalDepth).toArray();
        MeasuredPressures measured = new MeasuredPressures(transfer, normal, wells);
        for (double z : matched) {
            if (measured.at(z, true) instanceof PressureTransfer.Estimated e) {
                conflicts.addAll(e.conflicts());
            }
        }
        TreeSet<Double> logged = logDepths();
        Optional<Range> made =
                switch (choice.porePressure()) {
                    case PREDICTED -> predicted.porePressure();
                    case ADJUSTED -> {
                        Range withLogs = adjusted(PORE_PRESSURE, predicted.porePressure(), logged, this::pullOfLogs);
                        yield Optional.of(adjusted(
                                PORE_PRESSURE, Optional.of(withLogs), gridOf(matched), z -> pull(z, measured)));
                    }
                    case TRANSFERRED -> {
                        TreeSet<Double> depths = grid(matched);
                        depths.addAll(logged);
                        List<PressureTransfer> outcomes = depths.stream()
                                .filter(z -> z > normal.waterLevel())
                                .map(z -> withLogs(z, measured))
                                .toList();
                        List<PressureTransfer> known = trimmed(outcomes, PressureTransfer.Estimated.class::isInstance);
                        yield known.isEmpty()
                                ? Optional.empty()
                                : Optional.of(sourced(PressureTransfer.profile(known), Optional.empty()));
                    }
                };
        made.ifPresent(range -> note(PORE_PRESSURE, predicted.porePressure(), range, matched));
        return made;
    }
    // --- Pore pressures from logs

    /**
     * Depths at which a profile follows the logs: those of their readings, and beyond the ends of a stretch of readings those
     * over which their share falls to nothing.
     */
    private TreeSet<Double> logDepths() {
        TreeSet<Double> depths = new TreeSet<>();
        if (choice.logs() == LogUse.COMPARED) {
            return depths;
        }
        for (OffsetWell well : wells) {
            double[] matched = well.logged().log().stream()
                    .flatMap(log -> log.rows().stream())
                    .map(row -> transfer.matching().matched(well, row.verticalDepth(), normal))
                    .filter(OptionalDouble::isPresent)
                    .mapToDouble(OptionalDouble::getAsDouble)
                    .sorted()
                    .toArray();
            for (int i = 0; i < matched.length; i++) {
                depths.add(matched[i]);
                boolean first = i == 0 || matched[i] - matched[i - 1] > transfer.window();
                boolean last = i == matched.length - 1 || matched[i + 1] - matched[i] > transfer.window();
                for (int k = 0; k <= PARTS; k++) {
                    double away = transfer.window() * k / PARTS;
                    if (first) {
                        depths.add(matched[i] - away);
                    }
                    if (last) {
                        depths.add(matched[i] + away);
                    }
                }
            }
        }
        if (!depths.isEmpty()) {
            for (double z : transfer.matching().boundaries()) {
                depths.add(Math.nextDown(z));
                depths.add(z);
            }
        }
        return depths;
    }

    private Pull pullOfLogs(double z) {
        return z <= normal.waterLevel()
                ? Pull.NONE
                : transfer.fromLogs(normal, wells, z)
                        .map(log -> new Pull(log.share(), Optional.of(log.pressure())))
                        .orElse(Pull.NONE);
    }

    /** Measured pressures by their nearness, logs for the rest; where only one of them is there, that one. */
    private PressureTransfer withLogs(double z, MeasuredPressures points) {
        PressureTransfer measured = points.at(z, false);
        Pull logs = choice.logs() == LogUse.COMPARED ? Pull.NONE : pullOfLogs(z);
        if (logs.estimate().isEmpty()) {
            return measured;
        }
        PressureEstimate log = logs.estimate().get();
        if (!(measured instanceof PressureTransfer.Estimated e)) {
            return new PressureTransfer.Estimated(z, log, List.of(), List.of());
        }
        double share = pull(z, points).share();
        double likely = log.likely() + share * (e.pressure().likely() - log.likely());
        double below = Math.max(
                (1 - share) * (log.likely() - log.low()),
                share * (e.pressure().likely() - e.pressure().low()));
        double above = Math.max(
                (1 - share) * (log.high() - log.likely()),
                share * (e.pressure().high() - e.pressure().likely()));
        return new PressureTransfer.Estimated(
                z, new PressureEstimate(likely - below, likely, likely + above), e.points(), e.conflicts());
    }

    private Pull pull(double z, MeasuredPressures measured) {
        double share = measured.nearness(z);
        return share > 0
                        && z > normal.waterLevel()
                        && measured.at(z, false) instanceof PressureTransfer.Estimated estimated
                ? new Pull(share, Optional.of(estimated.pressure()))
                : Pull.NONE;
    }

    private Optional<Range> strength(Optional<Range> pore, List<OffsetEvidence.Test> tests) {
        Set<String> inZones = tests.stream()
                .filter(t -> zoneOf(t).isPresent())
                .map(OffsetEvidence.Test::label)
                .collect(Collectors.toSet());
        List<OffsetWell> outside = wells.stream().map(w -> without(w, inZones)).toList();
        double[] matched = tests.stream()
                .filter(t -> zoneOf(t).isEmpty())
                .filter(t -> t.test().standing() != Standing.INTEGRITY_TEST)
                .mapToDouble(OffsetEvidence.Test::verticalDepth)
                .toArray();
        DoubleFunction<StrengthTransfer> at = z -> stressKnown(pore, z)
                ? transfer.strength(planned(pore), outside, new double[] {z}).get(0)
                : new StrengthTransfer.NoEvidence(z);
        for (double z : matched) {
            if (at.apply(z) instanceof StrengthTransfer.Estimated e) {
                conflicts.addAll(e.conflicts());
            }
        }
        Optional<Range> made =
                switch (choice.strength()) {
                    case PREDICTED -> predicted.strength();
                    case ADJUSTED ->
                        Optional.of(
                                adjusted(STRENGTH, predicted.strength(), gridOf(matched), z -> pull(z, at, outside)));
                    case TRANSFERRED -> {
                        List<StrengthTransfer> outcomes =
                                grid(matched).stream().map(at::apply).toList();
                        List<StrengthTransfer> known = trimmed(outcomes, StrengthTransfer.Estimated.class::isInstance);
                        yield known.isEmpty()
                                ? Optional.empty()
                                : Optional.of(sourced(StrengthTransfer.profile(known), Optional.empty()));
                    }
                };
        made.ifPresent(range -> note(STRENGTH, predicted.strength(), range, matched));
        strengthKnownAt = z -> pull(z, at, outside).share() > 0;
        return made;
    }

    /** The stress is asked only where a test is near: by the seabed the pore pressure may equal the overburden. */
    private Pull pull(double z, DoubleFunction<StrengthTransfer> at, List<OffsetWell> outside) {
        double share = 0;
        for (OffsetWell well : outside) {
            for (StrengthTest test : well.tests()) {
                if (test.standing() != Standing.INTEGRITY_TEST) {
                    share = Math.max(share, transfer.nearness(well, test.verticalDepth(), normal, z));
                }
            }
        }
        return share > 0 && at.apply(z) instanceof StrengthTransfer.Estimated estimated
                ? new Pull(share, Optional.of(estimated.strength()))
                : Pull.NONE;
    }

    private static OffsetWell without(OffsetWell well, Set<String> labels) {
        List<StrengthTest> kept = well.tests().stream()
                .filter(t -> !labels.contains(well.name() + ": " + t.name()))
                .toList();
        return well.withTests(kept);
    }

    private TreeSet<Double> grid(double[] matched) {
        TreeSet<Double> grid = new TreeSet<>();
        for (double z : matched) {
            for (int k = -PARTS; k <= PARTS; k++) {
                grid.add(z + transfer.window() * k / PARTS);
            }
        }
        for (double z : transfer.matching().boundaries()) {
            grid.add(Math.nextDown(z));
            grid.add(z);
        }
        return grid;
    }

    private static <T> List<T> trimmed(List<T> outcomes, Predicate<T> known) {
        int first = 0;
        int last = outcomes.size();
        while (first < last && !known.test(outcomes.get(first))) {
            first++;
        }
        while (last > first && !known.test(outcomes.get(last - 1))) {
            last--;
        }
        return outcomes.subList(first, last);
    }

    private TreeSet<Double> gridOf(double[] matched) {
        return matched.length == 0 ? new TreeSet<>() : grid(matched);
    }

    private Range adjusted(
            String what, Optional<Range> prediction, TreeSet<Double> evidence, DoubleFunction<Pull> pull) {
        Range range = prediction.orElseThrow(() -> new InputFault(
                what, "has no prediction that offset evidence could adjust", "give one, or use the evidence alone"));
        if (evidence.isEmpty()) {
            return range;
        }
        TreeSet<Double> depths = new TreeSet<>(evidence);
        for (Optional<PressureProfile> p : List.of(Optional.of(range.likely()), range.low(), range.high())) {
            p.ifPresent(profile -> Arrays.stream(profile.depths()).forEach(depths::add));
        }
        depths.removeIf(z -> !range.likely().covers(z)
                || !range.lowOrLikely().covers(z)
                || !range.highOrLikely().covers(z));
        Points points = new Points(range);
        for (double z : depths) {
            boolean first = z == depths.first();
            if (!first) {
                points.add(z, pull.apply(Math.nextDown(z)), true);
            }
            if (first || z != depths.last()) {
                points.add(z, pull.apply(z), false);
            }
        }
        return sourced(points.range(), source(what));
    }

    /** Collects the points of an adjusted profile; two at one depth where there is a step. */
    private static final class Points {
        private final Range prediction;
        private final List<double[]> rows = new ArrayList<>();
        private boolean spread;

        Points(Range prediction) {
            this.prediction = prediction;
            this.spread = prediction.low().isPresent() || prediction.high().isPresent();
        }

        void add(double z, Pull pull, boolean upperSide) {
            double likely = at(prediction.likely(), z, upperSide);
            double below = likely - at(prediction.lowOrLikely(), z, upperSide);
            double above = at(prediction.highOrLikely(), z, upperSide) - likely;
            if (pull.estimate().isPresent()) {
                PressureEstimate e = pull.estimate().get();
                likely += pull.share() * (e.likely() - likely);
                below = Math.max(below, pull.share() * (e.likely() - e.low()));
                above = Math.max(above, pull.share() * (e.high() - e.likely()));
                spread |= e.high() - e.low() > SAME;
            }
            double[] row = {z, likely - below, likely, likely + above};
            boolean same = !upperSide && !rows.isEmpty() && sameAsLast(row);
            if (!same) {
                rows.add(row);
            }
        }

        private boolean sameAsLast(double[] row) {
            double[] last = rows.get(rows.size() - 1);
            for (int i = 0; i < row.length; i++) {
                if (Math.abs(row[i] - last[i]) > (i == 0 ? 0 : SAME)) {
                    return false;
                }
            }
            return true;
        }

        private static double at(PressureProfile profile, double z, boolean upperSide) {
            return upperSide ? profile.above(z) : profile.below(z);
        }

        private PressureProfile column(int i) {
            return PressureProfile.of(
                    rows.stream().mapToDouble(r -> r[0]).toArray(),
                    rows.stream().mapToDouble(r -> r[i]).toArray());
        }

        Range range() {
            return new Range(
                    column(2),
                    spread ? Optional.of(column(1)) : Optional.empty(),
                    spread ? Optional.of(column(3)) : Optional.empty());
        }
    }

    /** Of the prediction, which may have been adjusted to logs already. */
    private Optional<Source> source(String what) {
        return (what.equals(STRENGTH) ? predicted.strength() : predicted.porePressure()).flatMap(Range::source);
    }

    private Range sourced(Range range, Optional<Source> prediction) {
        String names = wells.stream()
                .filter(w -> !w.tests().isEmpty()
                        || !w.points().isEmpty()
                        || choice.logs() == LogUse.ESTIMATE && w.logged().log().isPresent())
                .map(OffsetWell::name)
                .collect(Collectors.joining(", "));
        String evidence = "offset evidence of " + names;
        Source source = prediction
                .map(s -> new Source(s.document() + ", adjusted to " + evidence, s.place()))
                .orElse(new Source(evidence, ""));
        return new Range(range.likely(), range.low(), range.high(), Optional.of(source));
    }

    private void note(String what, Optional<Range> before, Range after, double[] matched) {
        if (before.isEmpty()) {
            return;
        }
        for (double z : Arrays.stream(matched).distinct().toArray()) {
            if (before.get().likely().covers(z) && after.likely().covers(z)) {
                double old = before.get().likely().lowestAt(z);
                double now = after.likely().lowestAt(z);
                if (Math.abs(now - old) > SAME) {
                    changes.add(new OffsetEvidence.Change(what, z, old, now));
                }
            }
        }
    }

    // --- Losses, kicks and muds

    private List<OffsetEvidence.Event> events(Optional<Range> pore) {
        List<OffsetEvidence.Event> found = new ArrayList<>();
        for (OffsetWell well : wells) {
            for (DrillingEvent event : well.events()) {
                String label = well.name() + ": " + event.name();
                OptionalDouble z = transfer.matching().matched(well, event.verticalDepth(), normal);
                boolean loss = event.type() == DrillingEvent.Type.LOSS;
                if (z.isEmpty()) {
                    leftOut.add(label + " has no corresponding depth in the planned well");
                } else if (loss && !stressKnown(pore, z.getAsDouble())) {
                    leftOut.add(
                            label + " corresponds to a depth without overburden or pore pressure in the planned well");
                } else if (loss && !well.knowsStressAt(event.verticalDepth())) {
                    leftOut.add(label + " lies where the overburden or pore pressure of its own well is not given");
                } else if (z.getAsDouble() <= normal.waterLevel()) {
                    leftOut.add(label + " would lie above the water level of the planned well");
                } else {
                    bound(well, event, z.getAsDouble(), pore)
                            .ifPresentOrElse(
                                    found::add,
                                    () -> leftOut.add(
                                            label
                                                    + " lies below the pore pressure or far above the overburden of its own well"));
                }
            }
        }
        found.sort(Comparator.comparingDouble(OffsetEvidence.Event::verticalDepth)
                .thenComparing(OffsetEvidence.Event::label)
                .thenComparingDouble(OffsetEvidence.Event::bound));
        return found;
    }

    private Optional<OffsetEvidence.Event> bound(OffsetWell well, DrillingEvent event, double z, Optional<Range> pore) {
        double bound;
        if (event.type() == DrillingEvent.Type.LOSS) {
            try {
                double ratio = well.ratioOf(event.verticalDepth(), event.pressure());
                bound = planned(pore).stressAt(z).strengthAt(ratio);
            } catch (RangeFault beyondBelief) {
                return Optional.empty();
            }
        } else {
            bound = normal.at(z) + well.excessOf(event.verticalDepth(), event.pressure());
        }
        return Optional.of(new OffsetEvidence.Event(well.name(), event, z, bound));
    }

    /** Lists what the profiles of the planned well and other evidence say against a bound; none of them gives way. */
    private void check(OffsetEvidence.Event event, Optional<Range> pore, Optional<Range> strength) {
        double z = event.verticalDepth();
        switch (event.event().type()) {
            case LOSS ->
                strength.map(Range::likely)
                        .filter(p -> p.covers(z) && strengthHere(p, z) > event.bound() + SAME)
                        .ifPresent(p -> conflicts.add(new EvidenceConflict(
                                STRENGTH, event.label(), "mud was lost at less than the likely strength here")));
            case KICK ->
                pore.map(Range::likely)
                        .filter(p -> p.covers(z) && p.highestAt(z) < event.bound() - SAME)
                        .ifPresent(p -> conflicts.add(new EvidenceConflict(
                                PORE_PRESSURE,
                                event.label(),
                                "the formation flowed against more than the likely pore pressure here")));
            case MUD ->
                pore.map(Range::likely)
                        .filter(p -> p.covers(z) && p.lowestAt(z) > event.bound() + transfer.pressureConflict())
                        .ifPresent(p -> conflicts.add(new EvidenceConflict(
                                PORE_PRESSURE,
                                event.label(),
                                "was drilled without a kick by a mud well below the likely pore pressure here")));
        }
        for (OffsetWell well : wells) {
            if (event.event().type() == DrillingEvent.Type.LOSS) {
                well.tests().forEach(t -> checkLoss(event, well, t));
            } else if (event.event().type() == DrillingEvent.Type.KICK) {
                well.points().stream()
                        .filter(p -> p.quality() != Quality.REJECTED)
                        .forEach(p -> checkKick(event, well, p));
            }
        }
    }

    /** Strength of the profile, lowered by a weak zone. */
    private double strengthHere(PressureProfile likely, double z) {
        double here = likely.lowestAt(z);
        for (WeakZone zone : predicted.weakZones()) {
            if (z >= zone.topVerticalDepth() && z <= zone.bottomVerticalDepth()) {
                here = Math.min(here, EquivalentDensity.pressure(zone.strength(), z));
            }
        }
        return here;
    }

    private void checkLoss(OffsetEvidence.Event event, OffsetWell well, StrengthTest test) {
        OffsetWell own = wells.stream()
                .filter(w -> w.name().equals(event.well()))
                .findFirst()
                .orElseThrow();
        double lost = own.ratioOf(event.event().verticalDepth(), event.event().pressure());
        boolean near = transfer.nearness(well, test.verticalDepth(), normal, event.verticalDepth()) > 0;
        if (near && well.ratioOf(test.verticalDepth(), test.pressure()) > lost + transfer.ratioConflict()) {
            conflicts.add(new EvidenceConflict(
                    event.label(),
                    well.name() + ": " + test.name(),
                    "mud was lost at a lower stress ratio than the test held"));
        }
    }

    private void checkKick(OffsetEvidence.Event event, OffsetWell well, PressurePoint point) {
        double excess = well.excessOf(point.verticalDepth(), point.pressure());
        double flowed = event.bound() - normal.at(event.verticalDepth());
        boolean near = transfer.nearness(well, point.verticalDepth(), normal, event.verticalDepth()) > 0;
        if (near && excess < flowed - transfer.pressureConflict()) {
            conflicts.add(new EvidenceConflict(
                    event.label(),
                    well.name() + ": " + point.name(),
                    "the formation flowed against more than the pressure measured near it"));
        }
    }

    // --- Planned tests and weak zones

    private StrengthTest lowered(StrengthTest test, Optional<Range> strength) {
        double z = test.verticalDepth();
        if (choice.strength() == EvidenceUse.PREDICTED
                || strength.isEmpty()
                || !strength.get().likely().covers(z)
                || !strengthKnownAt.test(z)) {
            return test;
        }
        double expected = strength.get().likely().lowestAt(z);
        if (expected >= test.pressure() - SAME) {
            return test;
        }
        changes.add(new OffsetEvidence.Change("planned test " + test.name(), z, test.pressure(), expected));
        return new StrengthTest(
                test.name(),
                z,
                expected,
                test.standing(),
                test.testMudDensity(),
                new Source(
                        test.source().document() + ", lowered to offset evidence",
                        test.source().place()));
    }

    private WeakZone tested(WeakZone zone, List<OffsetEvidence.Test> tests) {
        Optional<OffsetEvidence.Test> lowest = tests.stream()
                .filter(t -> t.test().standing() != Standing.INTEGRITY_TEST)
                .filter(t -> zoneOf(t).filter(zone::equals).isPresent())
                .min(Comparator.comparingDouble(t -> EquivalentDensity.of(t.strength(), t.verticalDepth())));
        if (lowest.isEmpty()) {
            return zone;
        }
        OffsetEvidence.Test test = lowest.get();
        double z = test.verticalDepth();
        double estimate = EquivalentDensity.pressure(zone.strength(), z);
        if (Math.abs(estimate - test.strength()) > SAME) {
            conflicts.add(new EvidenceConflict(
                    "weak zone " + zone.name(),
                    test.label(),
                    "the leak-off, carried over, lies " + (test.strength() > estimate ? "above" : "below")
                            + " the estimate of the zone"));
        }
        if (!choice.weakZones()) {
            return zone;
        }
        changes.add(new OffsetEvidence.Change("weak zone " + zone.name(), z, estimate, test.strength()));
        return new WeakZone(
                zone.name(),
                zone.topVerticalDepth(),
                zone.bottomVerticalDepth(),
                EquivalentDensity.of(test.strength(), z),
                new Source(
                        test.label() + ", " + test.test().source().document(),
                        test.test().source().place()));
    }
}
