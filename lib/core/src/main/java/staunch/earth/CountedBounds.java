package staunch.earth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import staunch.units.EquivalentDensity;
import staunch.units.Source;

/** Moves profiles, planned tests and weak zones by losses and kicks, as {@link EvidenceTransfer} states. */
final class CountedBounds {
    /** Pressures closer than this are the same, Pa. */
    private static final double SAME = 1;

    private final OffsetTransfer transfer;
    private final NormalPressure normal;
    private final DoubleFunction<Optional<StressState>> stress;
    private final Map<String, OffsetWell> wells;
    private final List<OffsetEvidence.Change> changes = new ArrayList<>();
    private final List<OffsetEvidence.Event> losses;
    private final List<OffsetEvidence.Event> inZones;
    private final List<OffsetEvidence.Event> kicks;

    /**
     * Bounds of all wells.
     *
     * @param stress of the planned well; empty where it is not known
     * @param zoned whether a loss was met in a named weak zone
     */
    CountedBounds(
            OffsetTransfer transfer,
            NormalPressure normal,
            DoubleFunction<Optional<StressState>> stress,
            List<OffsetWell> wells,
            List<OffsetEvidence.Event> events,
            Predicate<OffsetEvidence.Event> zoned) {
        this.transfer = transfer;
        this.normal = normal;
        this.stress = stress;
        this.wells = wells.stream().collect(Collectors.toMap(OffsetWell::name, Function.identity(), (a, b) -> a));
        List<OffsetEvidence.Event> lost = of(events, DrillingEvent.Type.LOSS);
        this.losses = lost.stream().filter(zoned.negate()).toList();
        this.inZones = lost.stream().filter(zoned).toList();
        this.kicks = of(events, DrillingEvent.Type.KICK);
    }

    private static List<OffsetEvidence.Event> of(List<OffsetEvidence.Event> events, DrillingEvent.Type type) {
        return events.stream().filter(e -> e.event().type() == type).toList();
    }

    List<OffsetEvidence.Change> changes() {
        return changes;
    }

    private interface Move {
        double apply(double z, double pressure);
    }

    /** Strength that no loss within the window speaks against: F − s max(0, F − b), the least over the losses. */
    private double lowered(double z, double pressure) {
        double least = pressure;
        for (OffsetEvidence.Event loss : losses) {
            double share = share(loss, z);
            Optional<StressState> here = share > 0 ? stress.apply(z) : Optional.empty();
            if (here.isPresent()) {
                OffsetWell well = wells.get(loss.well());
                double ratio =
                        well.ratioOf(loss.event().verticalDepth(), loss.event().pressure());
                double bound = here.get().strengthAt(ratio);
                least = Math.min(least, pressure - share * Math.max(0, pressure - bound));
            }
        }
        return least;
    }

    /** Pore pressure that no kick within the window speaks against: P + s max(0, b − P), the greatest over the kicks. */
    private double raised(double z, double pressure) {
        double greatest = pressure;
        for (OffsetEvidence.Event kick : kicks) {
            double share = z > normal.waterLevel() ? share(kick, z) : 0;
            if (share > 0) {
                double excess = kick.bound() - normal.at(kick.verticalDepth());
                double bound = normal.at(z) + excess;
                greatest = Math.max(greatest, pressure + share * Math.max(0, bound - pressure));
            }
        }
        return greatest;
    }

    private double share(OffsetEvidence.Event event, double z) {
        return transfer.nearness(wells.get(event.well()), event.event().verticalDepth(), normal, z);
    }

    Optional<Range> strength(Optional<Range> range, Function<double[], TreeSet<Double>> grid) {
        return range.map(r -> losses.isEmpty()
                ? r
                : sourced(
                        new Range(
                                moved("strength", r.likely(), grid.apply(depths(losses)), losses, this::lowered),
                                r.low()
                                        .map(p -> moved(
                                                "low strength", p, grid.apply(depths(losses)), losses, this::lowered)),
                                r.high()),
                        r,
                        ", lowered to losses of ",
                        losses));
    }

    Optional<Range> porePressure(Optional<Range> range, Function<double[], TreeSet<Double>> grid) {
        return range.map(r -> kicks.isEmpty()
                ? r
                : sourced(
                        new Range(
                                moved("pore pressure", r.likely(), grid.apply(depths(kicks)), kicks, this::raised),
                                r.low(),
                                r.high()
                                        .map(p -> moved(
                                                "high pore pressure",
                                                p,
                                                grid.apply(depths(kicks)),
                                                kicks,
                                                this::raised))),
                        r,
                        ", raised to kicks of ",
                        kicks));
    }

    private static double[] depths(List<OffsetEvidence.Event> events) {
        return events.stream()
                .mapToDouble(OffsetEvidence.Event::verticalDepth)
                .distinct()
                .toArray();
    }

    private static Range sourced(Range made, Range before, String how, List<OffsetEvidence.Event> events) {
        if (made.equals(before)) {
            return before;
        }
        String names = events.stream()
                .map(OffsetEvidence.Event::well)
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
        Source source = before.source()
                .map(s -> new Source(s.document() + how + names, s.place()))
                .orElse(new Source("prediction" + how + names, ""));
        return new Range(made.likely(), made.low(), made.high(), Optional.of(source));
    }

    private PressureProfile moved(
            String what, PressureProfile profile, TreeSet<Double> grid, List<OffsetEvidence.Event> events, Move move) {
        TreeSet<Double> depths = new TreeSet<>(grid);
        Arrays.stream(profile.depths()).forEach(depths::add);
        depths.removeIf(z -> !profile.covers(z));
        List<double[]> rows = new ArrayList<>();
        for (double z : depths) {
            if (z != depths.first()) {
                rows.add(new double[] {z, move.apply(Math.nextDown(z), profile.above(z))});
            }
            double below = move.apply(z, profile.below(z));
            boolean step = rows.isEmpty() || Math.abs(rows.get(rows.size() - 1)[1] - below) > SAME;
            if (z == depths.first() || z != depths.last() && step) {
                rows.add(new double[] {z, below});
            }
        }
        boolean changed = depths.stream()
                .anyMatch(z -> Math.abs(move.apply(z, profile.below(z)) - profile.below(z)) > SAME
                        || Math.abs(move.apply(Math.nextDown(z), profile.above(z)) - profile.above(z)) > SAME);
        if (!changed) {
            return profile;
        }
        PressureProfile made = PressureProfile.of(
                rows.stream().mapToDouble(r -> r[0]).toArray(),
                rows.stream().mapToDouble(r -> r[1]).toArray());
        for (double z : Arrays.stream(depths(events)).filter(profile::covers).toArray()) {
            change(what, z, profile.lowestAt(z), made.lowestAt(z));
        }
        return made;
    }

    private boolean change(String what, double z, double before, double after) {
        boolean changed = Math.abs(after - before) > SAME;
        if (changed) {
            changes.add(new OffsetEvidence.Change(what + ", by bounds", z, before, after));
        }
        return changed;
    }

    /** A planned test that no loss speaks against. */
    StrengthTest test(StrengthTest test) {
        double z = test.verticalDepth();
        double pressure = lowered(z, test.pressure());
        return change("planned test " + test.name(), z, test.pressure(), pressure)
                ? new StrengthTest(
                        test.name(),
                        z,
                        pressure,
                        test.standing(),
                        test.testMudDensity(),
                        new Source(
                                test.source().document() + ", lowered to losses",
                                test.source().place()))
                : test;
    }

    /** A weak zone no stronger than the losses met in it. */
    WeakZone zone(WeakZone zone) {
        return inZones.stream()
                .filter(e ->
                        e.verticalDepth() >= zone.topVerticalDepth() && e.verticalDepth() <= zone.bottomVerticalDepth())
                .min(Comparator.comparingDouble(e -> EquivalentDensity.of(e.bound(), e.verticalDepth())))
                .filter(e -> change(
                        "weak zone " + zone.name(),
                        e.verticalDepth(),
                        EquivalentDensity.pressure(zone.strength(), e.verticalDepth()),
                        Math.min(e.bound(), EquivalentDensity.pressure(zone.strength(), e.verticalDepth()))))
                .map(e -> new WeakZone(
                        zone.name(),
                        zone.topVerticalDepth(),
                        zone.bottomVerticalDepth(),
                        EquivalentDensity.of(e.bound(), e.verticalDepth()),
                        e.event().source()))
                .orElse(zone);
    }
}
