package staunch.envelope;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.Standing;
import staunch.earth.StrengthTest;
import staunch.envelope.MethodOptions.Estimates;
import staunch.influx.GasColumn;
import staunch.influx.MudColumn;
import staunch.limit.PressureRating;
import staunch.limit.StackElement;
import staunch.units.Fault;
import staunch.units.Physics;
import staunch.units.Wording;
import staunch.well.WellPath;

/**
 * Maximum anticipated surface pressure of a section and what it does to every rating.
 *
 * <p>Gas to surface: max over the exposed depths z of [ p_pore(z) less the gas column from z to surface ], the column
 * integrated with its real density; other bases by {@link MaspBasis}. With the stack on the seabed it is stated at the
 * mudline and the column goes on in the choke line. Common practice of casing design; the constant-gradient form is in the
 * reference table (rows D10-01 to D10-03).
 *
 * <p>A component's load is the pressure of that same column at its own depth. A load equal to what it holds fails. An
 * annular preventer of lower rating fails the section only where no sealing ram below it holds: the ram is closed before
 * the load comes (common practice; API Std 53 lets annular preventers be rated below the rams, from memory).
 */
final class MaspCalculator {
    private static final int DEPTHS = 60;
    private static final int POSITIONS = 120;
    private static final int PARTS = 8;
    private static final double DEPTH_TOLERANCE = 0.01;

    /** A test counts as the shoe's where it stands at most so far above or below it, m. */
    private static final double ABOVE_SHOE = 1;

    private static final double BELOW_SHOE = 30;

    private final SectionInput input;
    private final Model model;
    private final WellPath path;
    private final double top;
    private final double bottom;
    private final double referenceDepth;

    MaspCalculator(SectionInput input, Model model) {
        this.input = input;
        this.model = model;
        this.path = input.path();
        this.top = input.plan().topDepth();
        this.bottom = input.plan().bottomDepth();
        this.referenceDepth = path.verticalDepth(input.datum().stackDepth());
    }

    /** By the default basis, and by the chosen one where that is another. */
    List<Masp> all() {
        MaspBasis usual = new MaspBasis.GasToSurface();
        MaspBasis chosen = input.options().maspBasis();
        return Stream.of(usual, chosen).distinct().map(this::masp).toList();
    }

    private Masp masp(MaspBasis basis) {
        try {
            return assessed(basis, load(basis));
        } catch (Missing missing) {
            return notAssessed(basis, new Wording(missing.withField(), List.of()));
        } catch (Fault fault) {
            return notAssessed(basis, fault.wording());
        }
    }

    /** Pressure inside the well by depth, Pa absolute. */
    private interface Inside {
        double at(double measuredDepth, double verticalDepth);
    }

    /** A formation that feeds the column. */
    private record Source(String name, double verticalDepth, double pressure) {}

    private record Load(Source source, Inside inside) {}

    private Load load(MaspBasis basis) {
        if (basis instanceof MaspBasis.KickLimited kick) {
            return circulated(kick.volume());
        }
        if (basis instanceof MaspBasis.MudAndGas mixed) {
            return worstOf(source -> mudAndGas(source, mixed.mudShare()));
        }
        Load full = worstOf(this::gas);
        return basis instanceof MaspBasis.FractureLimited ? lesser(full, fromFracture()) : full;
    }

    private double reference(Load load) {
        return load.inside.at(input.datum().stackDepth(), referenceDepth);
    }

    private Load lesser(Load a, Load b) {
        return reference(a) <= reference(b) ? a : b;
    }

    private Load greater(Load a, Load b) {
        return reference(a) >= reference(b) ? a : b;
    }

    private interface Column {
        Load from(Source source);
    }

    /** The exposed depth whose pore pressure gives most at surface, refined about the greatest sample. */
    private Load worstOf(Column column) {
        PressureProfile pore =
                model.pore().orElseThrow(() -> new Missing("the pore pressure is not known", "earth: pore pressure"));
        double[] depths = exposed(pore);
        int best = 0;
        Load most = null;
        for (int i = 0; i < depths.length; i++) {
            Load load = column.from(source(pore, depths[i]));
            if (most == null || reference(load) > reference(most)) {
                most = load;
                best = i;
            }
        }
        Load[] found = {most};
        Minimum.search(
                depth -> {
                    Load load = column.from(source(pore, depth));
                    found[0] = greater(found[0], load);
                    return -reference(load);
                },
                depths[Math.max(best - 1, 0)],
                depths[Math.min(best + 1, depths.length - 1)],
                DEPTH_TOLERANCE);
        return found[0];
    }

    private double[] exposed(PressureProfile pore) {
        TreeSet<Double> depths = new TreeSet<>();
        for (int i = 0; i <= DEPTHS; i++) {
            depths.add(top + (bottom - top) * i / DEPTHS);
        }
        for (double z : pore.depths()) {
            for (double depth : path.measuredDepthsAt(z, top, bottom)) {
                depths.add(depth);
            }
        }
        return depths.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** At the shoe only what lies below it counts: the rest is cased off. */
    private Source source(PressureProfile pore, double depth) {
        double z = path.verticalDepth(depth);
        if (!pore.covers(z)) {
            throw new Missing("the pore pressure is not known over the whole open hole", "earth: pore pressure");
        }
        return new Source("pore pressure", z, depth == top ? pore.below(z) : pore.highestAt(z));
    }

    private GasColumn column() {
        return model.gasColumn();
    }

    private Load gas(Source source) {
        GasColumn column = column();
        column.start(source.verticalDepth, source.pressure);
        return new Load(source, (depth, z) -> column.pressure(z));
    }

    private Load mudAndGas(Source source, double mudShare) {
        MudColumn mud = model.requireMud();
        double boundary = source.verticalDepth - mudShare * (source.verticalDepth - referenceDepth);
        double there = mud.pressure(source.verticalDepth, source.pressure, boundary);
        if (there <= Physics.ATMOSPHERE) {
            return new Load(source, (depth, z) -> open(mud.pressure(source.verticalDepth, source.pressure, z)));
        }
        GasColumn column = column();
        column.start(boundary, there);
        return new Load(
                source, (depth, z) -> open(z <= boundary ? column.pressure(z) : mud.pressure(boundary, there, z)));
    }

    /** Where the mud holds the formation the well stands open at the atmosphere. */
    private static double open(double pressure) {
        return Math.max(pressure, Physics.ATMOSPHERE);
    }

    /**
     * A leak-off test at the shoe is the fracture pressure; an integrity test bounds it from below only, so that the
     * prediction counts where it is higher, by its high estimate: a strong formation makes the greater load.
     */
    private Load fromFracture() {
        double z = path.verticalDepth(top);
        List<StrengthTest> tests = input.earth().tests().stream()
                .filter(t -> t.verticalDepth() >= z - ABOVE_SHOE && t.verticalDepth() <= z + BELOW_SHOE)
                .toList();
        Optional<Load> leakOff = tests.stream()
                .filter(t -> t.standing() == Standing.LEAK_OFF || t.standing() == Standing.EXTENDED_LEAK_OFF)
                .map(t -> gas(new Source(t.standing().title() + " at the shoe", t.verticalDepth(), t.pressure())))
                .reduce(this::greater);
        if (leakOff.isPresent()) {
            return leakOff.get();
        }
        Optional<PressureProfile> predicted = input.earth()
                .strength()
                .map(input.options().estimates() == Estimates.LIKELY ? Range::likely : Range::highOrLikely)
                .filter(p -> p.covers(z));
        if (predicted.isEmpty()) {
            throw new Missing(
                    tests.isEmpty()
                            ? "no fracture pressure is known at the shoe"
                            : "an integrity test bounds the fracture pressure at the shoe from below only",
                    "earth: strength or a leak-off test at the shoe");
        }
        Load prediction = gas(new Source(
                "fracture pressure predicted at the shoe", z, predicted.get().highestAt(z)));
        return tests.stream()
                .map(t -> gas(new Source(t.standing().title() + " at the shoe", t.verticalDepth(), t.pressure())))
                .reduce(prediction, this::greater);
    }

    /** Greatest pressure at each depth over every position of the drilled kick's gas up to where its top is at the choke. */
    private Load circulated(double volume) {
        model.needs(Kick.Scenario.DRILLED);
        Kick kick = model.kick(Kick.Scenario.DRILLED, bottom);
        RisingInflux influx = model.rising(kick, volume);
        List<RisingInflux.Position> positions = influx.positions(POSITIONS, referenceDepth);
        Source source = new Source("drilled kick, formation pressure", kick.verticalDepth(), kick.formationPressure());
        return new Load(
                source,
                (depth, z) -> positions.stream()
                        .mapToDouble(p -> influx.pressure(p, depth, z))
                        .max()
                        .orElseThrow());
    }

    private Masp assessed(MaspBasis basis, Load load) {
        double pressure = reference(load) - Physics.ATMOSPHERE;
        List<MaspCheck> checks = new EquipmentLimits(input)
                .componentsByElement().stream().map(c -> check(c, load.inside)).toList();
        return new Masp(
                basis,
                OptionalDouble.of(pressure),
                place(),
                referenceDepth,
                load.source.name,
                OptionalDouble.of(load.source.verticalDepth),
                OptionalDouble.of(load.source.pressure),
                Optional.empty(),
                checks,
                verdict(checks));
    }

    private String place() {
        return input.datum().stackAtSeabed() ? "mudline" : "surface";
    }

    private Masp notAssessed(MaspBasis basis, Wording reason) {
        return new Masp(
                basis,
                OptionalDouble.empty(),
                place(),
                referenceDepth,
                "",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(reason.text()),
                List.of(),
                new Verdict(Verdict.Outcome.NOT_ASSESSED, "not assessed: " + reason.text(), "", reason.amounts()));
    }

    /** Between two points of a stretch what it holds is straight in vertical depth. */
    private MaspCheck check(EquipmentLimits.Component component, Inside inside) {
        if (component.notAssessed().isPresent()) {
            return new MaspCheck(
                    component.name(),
                    component.type(),
                    component.measuredDepth(),
                    path.verticalDepth(component.measuredDepth()),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Verdict.Outcome.NOT_ASSESSED,
                    component.notAssessed());
        }
        EquipmentLimits.Point least = null;
        double leastMargin = Double.POSITIVE_INFINITY;
        for (EquipmentLimits.Point point : between(component.points())) {
            double margin = point.pressure() - inside.at(point.measuredDepth(), point.verticalDepth());
            if (margin < leastMargin) {
                leastMargin = margin;
                least = point;
            }
        }
        return new MaspCheck(
                component.name(),
                component.type(),
                least.measuredDepth(),
                least.verticalDepth(),
                OptionalDouble.of(least.pressure() - leastMargin - Physics.ATMOSPHERE),
                OptionalDouble.of(least.pressure() - Physics.ATMOSPHERE),
                OptionalDouble.of(leastMargin),
                leastMargin > ToleranceSolver.SAME_PRESSURE ? Verdict.Outcome.HOLDS : Verdict.Outcome.FAILS,
                Optional.empty());
    }

    private List<EquipmentLimits.Point> between(List<EquipmentLimits.Point> points) {
        List<EquipmentLimits.Point> all = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            EquipmentLimits.Point to = points.get(i);
            if (i > 0) {
                EquipmentLimits.Point from = points.get(i - 1);
                double span = to.verticalDepth() - from.verticalDepth();
                for (int k = 1; k < PARTS && span != 0; k++) {
                    double depth = from.measuredDepth() + (to.measuredDepth() - from.measuredDepth()) * k / PARTS;
                    double z = path.verticalDepth(depth);
                    double share = (z - from.verticalDepth()) / span;
                    all.add(new EquipmentLimits.Point(
                            depth, z, from.pressure() + share * (to.pressure() - from.pressure())));
                }
            }
            all.add(to);
        }
        return all;
    }

    private Verdict verdict(List<MaspCheck> checks) {
        Set<String> relieved = annularsAboveARamThatHolds(checks);
        List<MaspCheck> failed = checks.stream()
                .filter(c -> c.outcome() == Verdict.Outcome.FAILS)
                .filter(c -> !relieved.contains(c.name()))
                .sorted(Comparator.comparingDouble(c -> c.margin().orElseThrow()))
                .toList();
        List<String> open = checks.stream()
                .filter(c -> c.outcome() == Verdict.Outcome.NOT_ASSESSED)
                .map(MaspCheck::name)
                .distinct()
                .toList();
        String notAssessed = open.isEmpty() ? "" : "; " + String.join(", ", open) + " not assessed";
        if (!failed.isEmpty()) {
            String names = String.join(
                    ", ", failed.stream().map(MaspCheck::name).distinct().toList());
            return new Verdict(
                    Verdict.Outcome.FAILS,
                    "reaches what " + names + (failed.size() == 1 ? " holds" : " hold") + notAssessed,
                    failed.get(0).name());
        }
        String least = checks.stream()
                .filter(c -> c.margin().isPresent() && !relieved.contains(c.name()))
                .min(Comparator.comparingDouble(c -> c.margin().getAsDouble()))
                .map(MaspCheck::name)
                .orElse("");
        if (!open.isEmpty()) {
            return new Verdict(
                    Verdict.Outcome.NOT_ASSESSED,
                    (least.isEmpty() ? "no rating is known" : "holds where the rating is known") + notAssessed,
                    least);
        }
        String above = relieved.isEmpty()
                ? ""
                : " with a ram closed; more than " + String.join(", ", relieved)
                        + (relieved.size() == 1 ? " holds" : " hold");
        return new Verdict(Verdict.Outcome.HOLDS, "holds" + above, least);
    }

    /** A ram closed below an annular preventer takes the load off it. */
    private Set<String> annularsAboveARamThatHolds(List<MaspCheck> checks) {
        Map<String, Verdict.Outcome> outcomes =
                checks.stream().collect(Collectors.toMap(MaspCheck::name, MaspCheck::outcome, (a, b) -> a));
        Set<String> relieved = new TreeSet<>();
        boolean ramHolds = false;
        for (StackElement element : input.equipment().stack()) {
            String name = element.rating().map(PressureRating::equipment).orElse(element.name());
            Verdict.Outcome outcome = outcomes.get(name);
            if (element.type() != StackElement.Type.ANNULAR) {
                ramHolds |= element.type().seals() && outcome == Verdict.Outcome.HOLDS;
            } else if (ramHolds && outcome == Verdict.Outcome.FAILS) {
                relieved.add(name);
            }
        }
        return relieved;
    }
}
