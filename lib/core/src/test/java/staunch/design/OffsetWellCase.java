package staunch.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import staunch.earth.EarthModel;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.Standing;
import staunch.earth.StrengthTest;
import staunch.envelope.Drilling;
import staunch.envelope.MethodOptions;
import staunch.envelope.SectionPlan;
import staunch.fluid.Mud;
import staunch.units.Physics;
import staunch.units.Source;
import staunch.units.UnitSystem;
import staunch.well.CasingString;
import staunch.well.Datum;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.WellPath;

/**
 * A case built from one well of the open data. Each row of the casing table drills a hole from the shoe of the string
 * before it; the leak-off value reported with that string is the strength at the top of this hole. Below the last row,
 * hole down to total depth counts where it is more than 30 m.
 */
final class OffsetWellCase {
    /** New hole shorter than this is a rat hole or a rounding of depths, m. */
    private static final double SHORTEST_NEW_HOLE = 1;

    private static final double SHORTEST_UNREPORTED_HOLE = 30;

    /** Depths are reported in whole metres, so exposure is taken 1 m farther either way. */
    private static final double RECORDING = 1;

    /**
     * A drilled stretch.
     *
     * @param shoeRow row of the string above; empty for the first
     * @param bottom m MD
     * @param hole diameter, inches
     * @param leakOff g/cm³ at the shoe above, where reported
     * @param mudWeight heaviest reading in the stretch, g/cm³
     */
    record Stretch(
            String name,
            Optional<OffsetWell.Row> shoeRow,
            double top,
            double bottom,
            double hole,
            OptionalDouble leakOff,
            Optional<OffsetWell.Reading> mudWeight) {}

    private final OffsetWell well;
    private final List<Stretch> stretches = new ArrayList<>();
    private final List<String> unused = new ArrayList<>();
    private final Optional<DrillString> string;
    private final double end;
    private final WellPath path;

    /**
     * @param string in every hole; empty for the assumed one of each hole size
     */
    OffsetWellCase(OffsetWell well, Optional<DrillString> string) {
        this.well = well;
        this.string = string;
        stretch();
        this.end =
                Math.max(well.totalDepth(), stretches.get(stretches.size() - 1).bottom());
        this.path = AssumedForOffsetWells.path(well, end);
    }

    OffsetWell well() {
        return well;
    }

    List<Stretch> stretches() {
        return stretches;
    }

    WellPath path() {
        return path;
    }

    /** Leak-off values below which no new hole is reported. */
    List<String> unused() {
        return unused;
    }

    private double seabed() {
        return well.kellyBushing() + well.waterDepth();
    }

    private void stretch() {
        OffsetWell.Row above = null;
        double drilled = seabed();
        for (OffsetWell.Row row : well.rows()) {
            double hole = row.hole()
                    .orElseGet(() -> AssumedForOffsetWells.holeFor(row.casing().orElseThrow()));
            if (row.drilledTo() - drilled > SHORTEST_NEW_HOLE) {
                add(above, row.drilledTo(), hole);
                drilled = row.drilledTo();
            } else {
                noteUnused(above);
            }
            above = row.cased() ? row : null;
        }
        if (above != null && well.totalDepth() - drilled > SHORTEST_UNREPORTED_HOLE) {
            add(
                    above,
                    well.totalDepth(),
                    AssumedForOffsetWells.bitThrough(above.casing().orElseThrow()));
        } else {
            noteUnused(above);
        }
    }

    private void noteUnused(OffsetWell.Row row) {
        if (row != null && row.leakOff().isPresent()) {
            unused.add(String.format(
                    Locale.ROOT,
                    "%s: %.2f g/cm3 at %.0f m, no new hole reported below",
                    well.name(),
                    row.leakOff().getAsDouble(),
                    row.casingDepth()));
        }
    }

    private void add(OffsetWell.Row above, double bottom, double hole) {
        double top = above == null ? seabed() : above.casingDepth();
        String below = above == null
                ? "below the seabed"
                : String.format(
                        Locale.ROOT,
                        "below the %s in shoe at %.0f m",
                        above.casing().getAsDouble(),
                        above.casingDepth());
        stretches.add(new Stretch(
                String.format(Locale.ROOT, "%s in hole %s", hole, below),
                Optional.ofNullable(above),
                top,
                bottom,
                hole,
                above == null ? OptionalDouble.empty() : above.leakOff(),
                heaviest(top, bottom)));
    }

    /** The heaviest mud is the one the shoe had to carry, and leaves the least room: the safe reading of several. */
    private Optional<OffsetWell.Reading> heaviest(double top, double bottom) {
        return well.mud().stream()
                .filter(r -> r.depth() > top && r.depth() <= bottom && !AssumedForOffsetWells.misprint(r.weight()))
                .max(Comparator.comparingDouble(OffsetWell.Reading::weight));
    }

    WellCase build() {
        List<CasingString> strings = new ArrayList<>();
        double carryingShoe = 0;
        for (OffsetWell.Row row : well.rows()) {
            if (row.cased()) {
                double wellhead = well.floater() ? seabed() : 0;
                double top = row.liner() ? AssumedForOffsetWells.linerTop(carryingShoe) : wellhead;
                strings.add(AssumedForOffsetWells.casing(
                        String.format(
                                Locale.ROOT,
                                "%s in %s at %.0f m",
                                row.casing().getAsDouble(),
                                row.liner() ? "liner" : "casing",
                                row.casingDepth()),
                        row.casing().getAsDouble(),
                        top,
                        row.casingDepth()));
                carryingShoe = row.casingDepth();
            }
        }
        List<SectionPlan> plans = stretches.stream().map(this::plan).toList();
        return new WellCase(
                new CaseHeader(
                        well.name(),
                        "open data with assumed string, survey, pore pressure and rules",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("contains data under NLOD made available by the Norwegian Petroleum Directorate")),
                UnitSystem.METRIC,
                new Datum("kelly bushing", well.kellyBushing(), new Datum.AtSea(well.waterDepth(), well.floater())),
                path,
                earth(),
                List.of(new CasingDesign("as drilled", strings, plans)),
                AssumedForOffsetWells.equipment(well),
                coarse(),
                List.of(),
                List.of());
    }

    /** The defaults with fewer depths along a section: forty, or one each 100 m. */
    private static MethodOptions coarse() {
        return MethodOptions.DEFAULT.withDepths(100, 40);
    }

    private SectionPlan plan(Stretch stretch) {
        List<HoleInterval> hole = new ArrayList<>();
        double from = stretch.top();
        if (stretch.shoeRow().isPresent()) {
            OffsetWell.Row row = stretch.shoeRow().get();
            if (row.drilledTo() > row.casingDepth() && row.hole().isPresent()) {
                double ratHole = Math.min(row.drilledTo(), stretch.bottom());
                hole.add(interval(from, ratHole, row.hole().getAsDouble()));
                from = ratHole;
            }
        }
        if (stretch.bottom() > from) {
            hole.add(interval(from, stretch.bottom(), stretch.hole()));
        }
        return new SectionPlan(
                stretch.name(),
                drilling(stretch),
                hole,
                stretch.hole() * AssumedForOffsetWells.INCH,
                stretch.mudWeight()
                        .map(r -> new Mud(
                                r.type().isBlank() ? "mud" : r.type(),
                                1000 * r.weight(),
                                AssumedForOffsetWells.base(r.type()),
                                Optional.empty(),
                                Optional.empty())),
                Optional.of(string.orElseGet(() -> AssumedForOffsetWells.string(stretch.hole()))),
                0,
                Optional.of(AssumedForOffsetWells.gas()),
                AssumedForOffsetWells.slowCirculation(well),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(AssumedForOffsetWells.CIRCULATING_OVERBALANCE),
                OptionalDouble.of(0),
                Optional.of(AssumedForOffsetWells.criteria()));
    }

    /**
     * Shut-in capable below every string but the conductor; below that where a leak-off value shows that it was tested.
     * Otherwise riserless from a floater and on a diverter from a fixed rig, as is usual.
     */
    private Drilling drilling(Stretch stretch) {
        boolean conductor =
                stretch.shoeRow().map(r -> r.type().equals("CONDUCTOR")).orElse(true);
        if (!conductor || stretch.leakOff().isPresent()) {
            return Drilling.SHUT_IN;
        }
        return well.floater() || stretch.shoeRow().isEmpty() ? Drilling.RISERLESS : Drilling.DIVERTER;
    }

    private static HoleInterval interval(double top, double bottom, double inches) {
        return new HoleInterval(top, bottom, inches * AssumedForOffsetWells.INCH);
    }

    static double pressure(double density, double verticalDepth) {
        return Physics.ATMOSPHERE + density * Physics.GRAVITY * verticalDepth;
    }

    private EarthModel earth() {
        List<StrengthTest> tests = new ArrayList<>();
        for (OffsetWell.Row row : well.rows()) {
            if (row.cased() && row.leakOff().isPresent()) {
                double z = path.verticalDepth(row.casingDepth());
                tests.add(new StrengthTest(
                        String.format(Locale.ROOT, "leak-off at %.0f m", row.casingDepth()),
                        z,
                        pressure(1000 * row.leakOff().getAsDouble(), z),
                        Standing.LEAK_OFF,
                        OptionalDouble.empty(),
                        new Source("open data, ncs-casing-lot.csv", well.name())));
            }
        }
        return new EarthModel(
                Optional.of(Range.of(porePressure())),
                Optional.empty(),
                tests,
                List.of(),
                Optional.of(AssumedForOffsetWells.temperature(well, path.verticalDepth(end))),
                List.of());
    }

    /** See {@link AssumedForOffsetWells#OVERBALANCE}. */
    private PressureProfile porePressure() {
        TreeSet<Double> ends = new TreeSet<>();
        double bottom = end + 50;
        ends.add(seabed());
        ends.add(bottom);
        for (Stretch s : stretches) {
            ends.add(Math.max(s.top() - RECORDING, seabed()));
            ends.add(s.bottom() + RECORDING);
        }
        List<Double> edges = new ArrayList<>(ends);
        int n = edges.size() - 1;
        double[] depths = new double[2 * n];
        double[] pressures = new double[2 * n];
        for (int i = 0; i < n; i++) {
            double middle = 0.5 * (edges.get(i) + edges.get(i + 1));
            OptionalDouble lightest = stretches.stream()
                    .filter(s -> s.top() - RECORDING <= middle && middle <= s.bottom() + RECORDING)
                    .flatMap(s -> s.mudWeight().stream())
                    .mapToDouble(r -> 1000 * r.weight() - AssumedForOffsetWells.OVERBALANCE)
                    .min();
            for (int k = 0; k < 2; k++) {
                double z = path.verticalDepth(edges.get(i + k));
                double sea = AssumedForOffsetWells.SEAWATER * Physics.GRAVITY * (z - well.kellyBushing());
                double mud = lightest.orElse(0) * Physics.GRAVITY * z;
                depths[2 * i + k] = z;
                pressures[2 * i + k] = Physics.ATMOSPHERE + Math.max(sea, mud);
            }
        }
        return PressureProfile.of(depths, pressures);
    }
}
