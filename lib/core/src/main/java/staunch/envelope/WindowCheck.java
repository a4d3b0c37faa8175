package staunch.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import staunch.earth.EquivalentZero;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.envelope.MethodOptions.Estimates;
import staunch.influx.MudColumn;
import staunch.units.Physics;
import staunch.units.Warning;
import staunch.well.Datum;

/** Checks pore pressure plus trip margin ≤ mud ≤ strength less margin and surge margin at every exposed depth. */
final class WindowCheck {
    private static final int DEPTHS = 60;
    private static final String PORE_PRESSURE = "pore pressure";
    private static final String STRENGTH = "formation strength";

    private final SectionInput input;
    private final SectionPlan plan;
    private final double tripMargin;
    private final double surgeMargin;
    private final Model.MudAnswer mudAnswer;
    private final Optional<MudColumn> mud;
    private final LimitNodes.Answer limit;
    private final Optional<LimitNodes> low;
    private final boolean forDisplay;
    private final Optional<PressureProfile> poreLikely;
    private final Optional<PressureProfile> poreHigh;
    private List<PressureWindow.Point> points;

    /** The check with everything that is shown of it. */
    WindowCheck(SectionInput input) {
        this(input, true);
    }

    /** The check alone: its points are without the likely strength, which decides nothing. */
    static WindowCheck deciding(SectionInput input) {
        return new WindowCheck(input, false);
    }

    private WindowCheck(SectionInput input, boolean forDisplay) {
        this.input = input;
        this.forDisplay = forDisplay;
        this.plan = input.plan();
        double margin = plan.criteria()
                .map(Criteria::strengthMargin)
                .orElse(OptionalDouble.empty())
                .orElse(0);
        this.tripMargin = plan.criteria()
                .map(Criteria::tripMargin)
                .orElse(OptionalDouble.empty())
                .orElse(0);
        this.surgeMargin = plan.criteria()
                .map(Criteria::surgeMargin)
                .orElse(OptionalDouble.empty())
                .orElse(0);
        this.mudAnswer = Model.mud(input);
        this.mud = mudAnswer.column();
        Estimates deciding = input.options().estimates();
        this.limit = LimitNodes.of(input, deciding, margin);
        this.low = limit.nodes();
        this.poreLikely = input.earth().porePressure().map(Range::likely);
        this.poreHigh =
                input.earth().porePressure().map(deciding == Estimates.LIKELY ? Range::likely : Range::highOrLikely);
    }

    /** Limit of the formation by the estimates that decide. */
    LimitNodes.Answer limit() {
        return limit;
    }

    List<PressureWindow.Point> points() {
        if (points == null) {
            points = found();
        }
        return points;
    }

    private List<PressureWindow.Point> found() {
        Optional<LimitNodes> likely =
                forDisplay ? LimitNodes.of(input, Estimates.LIKELY, 0).nodes() : Optional.empty();
        TreeSet<Double> depths = new TreeSet<>();
        for (int i = 0; i <= DEPTHS; i++) {
            depths.add(plan.topDepth() + (plan.bottomDepth() - plan.topDepth()) * i / DEPTHS);
        }
        low.ifPresent(nodes -> addAll(depths, nodes.measuredDepths()));
        poreLikely.ifPresent(p -> addVertical(depths, p));
        poreHigh.ifPresent(p -> addVertical(depths, p));
        List<PressureWindow.Point> all = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (double depth : depths) {
            if (depth - last > 1e-6) {
                all.add(point(depth, likely));
                last = depth;
            }
        }
        return all;
    }

    private static void addAll(TreeSet<Double> depths, double[] more) {
        for (double d : more) {
            depths.add(d);
        }
    }

    private void addVertical(TreeSet<Double> depths, PressureProfile profile) {
        for (double z : profile.depths()) {
            addAll(depths, input.path().measuredDepthsAt(z, plan.topDepth(), plan.bottomDepth()));
        }
    }

    private PressureWindow.Point point(double depth, Optional<LimitNodes> likely) {
        double z = input.path().verticalDepth(depth);
        OptionalDouble limit = strengthAt(low, depth, z);
        double margin = low.map(LimitNodes::margin).orElse(0.0);
        return new PressureWindow.Point(
                depth,
                z,
                poreAt(poreLikely, depth, z),
                poreAt(poreHigh, depth, z),
                mud.isPresent() ? OptionalDouble.of(mudPressure(mud.get(), z)) : OptionalDouble.empty(),
                strengthAt(likely, depth, z),
                limit.isPresent() ? OptionalDouble.of(limit.getAsDouble() + margin) : limit,
                limit);
    }

    /** Static pressure of the mud; without a riser it stands below the sea, whose pressure rests on it at the seabed. */
    private double mudPressure(MudColumn column, double z) {
        if (plan.drilling() == Drilling.RISERLESS && input.datum().place() instanceof Datum.AtSea sea) {
            double atSeabed = Physics.ATMOSPHERE
                    + EquipmentLimits.seawaterDensity(input.datum()) * Physics.GRAVITY * sea.waterDepth();
            return column.pressure(input.datum().groundOrSeabedDepth(), atSeabed, z);
        }
        return column.hydrostatic(z);
    }

    /** At a step the higher pressure; at the shoe only what lies below it, since the rest is cased off. */
    private OptionalDouble poreAt(Optional<PressureProfile> profile, double depth, double z) {
        return profile.filter(p -> p.covers(z)).stream()
                .mapToDouble(p -> depth == plan.topDepth() ? p.below(z) : p.highestAt(z))
                .findFirst();
    }

    private static OptionalDouble strengthAt(Optional<LimitNodes> nodes, double depth, double z) {
        return nodes.filter(n -> n.knownAt(depth, z)).stream()
                .mapToDouble(n -> n.limitAt(depth, z))
                .findFirst();
    }

    /** Whether the mud is lighter than the likely pore pressure at any exposed depth. */
    boolean underbalanced() {
        return points().stream()
                .anyMatch(p -> p.mudPressure().isPresent()
                        && exceeds(p.porePressureLikely(), p.mudPressure().getAsDouble()));
    }

    /** Equal pressures, which differ by rounding only, hold. */
    private static boolean exceeds(OptionalDouble pressure, double bound) {
        return pressure.isPresent() && pressure.getAsDouble() - bound > ToleranceSolver.SAME_PRESSURE;
    }

    PressureWindow check(List<Warning> warnings) {
        return new PressureWindow(
                points(), verdict(warnings), EquivalentZero.of(input.options().equivalentDensityFrom(), input.datum()));
    }

    Verdict verdict(List<Warning> warnings) {
        if (mud.isEmpty()) {
            return notAssessed(mudAnswer.reason() + " (missing: " + mudAnswer.missing() + ")");
        }
        boolean heavy = false;
        boolean surges = false;
        boolean light = false;
        boolean likelyAbove = false;
        boolean highAbove = false;
        boolean allKnown = low.map(nodes -> nodes.unknown().isEmpty()).orElse(false);
        for (PressureWindow.Point p : points()) {
            double mudPressure = p.mudPressure().orElseThrow();
            allKnown &= p.limit().isPresent() && p.porePressureHigh().isPresent();
            if (p.limit().isPresent()) {
                double surge = surgeMargin * Physics.GRAVITY * p.verticalDepth();
                heavy |= exceeds(p.mudPressure(), p.limit().getAsDouble());
                surges |= exceeds(p.mudPressure(), p.limit().getAsDouble() - surge);
            }
            highAbove |= exceeds(p.porePressureHigh(), mudPressure);
            light |= exceeds(p.porePressureHigh(), mudPressure - tripMargin * Physics.GRAVITY * p.verticalDepth());
            likelyAbove |= exceeds(p.porePressureLikely(), mudPressure);
        }
        if (highAbove) {
            warnings.add(new Warning(
                    "mud density",
                    "the high estimate of pore pressure exceeds the static mud pressure at an exposed depth: the well may flow"
                            + " with the pumps off."));
        }
        if (heavy) {
            return new Verdict(
                    Verdict.Outcome.FAILS, "mud pressure exceeds the formation strength less its margin", STRENGTH);
        }
        if (likelyAbove) {
            return new Verdict(
                    Verdict.Outcome.NOT_ASSESSED,
                    "not assessed: underbalanced: the mud is lighter than the likely pore pressure",
                    PORE_PRESSURE);
        }
        if (light) {
            return new Verdict(
                    Verdict.Outcome.FAILS,
                    tripMargin > 0
                            ? "mud pressure is below pore pressure plus trip margin"
                            : "mud pressure is below pore pressure",
                    PORE_PRESSURE);
        }
        if (surges) {
            return new Verdict(
                    Verdict.Outcome.FAILS,
                    "mud pressure plus surge margin exceeds the formation strength less its margin",
                    STRENGTH);
        }
        if (!allKnown) {
            return notAssessed("pore pressure or strength is not known over the whole open hole");
        }
        return new Verdict(Verdict.Outcome.HOLDS, "mud lies within the pressure window", "");
    }

    private static Verdict notAssessed(String reason) {
        return new Verdict(Verdict.Outcome.NOT_ASSESSED, "not assessed: " + reason, "");
    }
}
