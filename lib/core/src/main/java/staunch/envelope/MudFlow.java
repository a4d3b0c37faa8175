package staunch.envelope;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import staunch.control.FlowingMud;
import staunch.control.FrictionCurve;
import staunch.control.LineBore;
import staunch.control.PipeMovement;
import staunch.control.SlowCirculation;
import staunch.well.Annulus;

/** Friction of the section's mud while it is pumped slowly and while the string is tripped. */
final class MudFlow {
    private final SectionInput input;

    private MudFlow(SectionInput input) {
        this.input = input;
    }

    /** @throws staunch.units.Fault where the friction law does not reach */
    static MudFlowOutcome of(SectionInput input) {
        Optional<AnnularLoss.NotAssessed> missing = AnnularLosses.missing(input.plan());
        if (missing.isPresent()) {
            AnnularLoss.NotAssessed not = missing.get();
            return new NotAssessed(not.reason(), not.missing(), not.amounts());
        }
        boolean tripped = input.plan().operations().trippingSpeed().isPresent();
        if (ChokeFriction.rate(input.plan()).isEmpty() && !tripped) {
            return new NotAssessed(
                    "the section has neither a slow circulating rate nor a tripping speed",
                    "section: slow circulation: rate");
        }
        return new MudFlow(input).at(AnnularLosses.mud(input.plan()), AnnularLosses.annulus(input));
    }

    private MudFlowOutcome at(FlowingMud mud, Annulus annulus) {
        SectionPlan plan = input.plan();
        Optional<LineBore> line = input.datum().stackAtSeabed()
                ? input.equipment().chokeLine().map(l -> new LineBore(l.length(), l.insideDiameter()))
                : Optional.empty();
        FrictionCurve.Well well = new FrictionCurve.Well(input.path(), annulus, line);
        List<FrictionCurve.Point> rates = DoubleStream.concat(
                        plan.slowCirculations().stream().mapToDouble(SlowCirculation::rate),
                        plan.operations().killRate().stream())
                .distinct()
                .sorted()
                .mapToObj(rate -> last(FrictionCurve.of(well, mud, rate, 1).points()))
                .toList();
        OptionalDouble speed = plan.operations().trippingSpeed();
        return new MudFlowOutcome.Computed(
                rates, speed.isPresent() ? Optional.of(trip(mud, annulus, speed.getAsDouble())) : Optional.empty());
    }

    private static FrictionCurve.Point last(List<FrictionCurve.Point> points) {
        return points.get(points.size() - 1);
    }

    private MudFlowOutcome.Trip trip(FlowingMud mud, Annulus annulus, double speed) {
        boolean closed = input.plan().operations().yielding().floatInString().orElse(true);
        PipeMovement.End end = closed ? PipeMovement.End.PLUGGED : PipeMovement.End.OPEN;
        double swab =
                -PipeMovement.of(speed, PipeMovement.Direction.PULLING_OUT, end).pressureChange(annulus, mud);
        double surge =
                PipeMovement.of(speed, PipeMovement.Direction.RUNNING_IN, end).pressureChange(annulus, mud);
        PressureWindow window = new WindowCheck(input).check(new ArrayList<>());
        return new MudFlowOutcome.Trip(
                speed,
                end,
                swab,
                surge,
                least(
                        window,
                        p -> p.mudPressure().getAsDouble()
                                - swab
                                - p.porePressureHigh().getAsDouble(),
                        p -> p.porePressureHigh().isPresent()),
                least(
                        window,
                        p -> p.limit().getAsDouble() - p.mudPressure().getAsDouble() - surge,
                        p -> p.limit().isPresent()));
    }

    /** Empty unless every exposed depth is known: a least margin over some of them would read as one over all. */
    private static Optional<MudFlowOutcome.LeastMargin> least(
            PressureWindow window,
            Function<PressureWindow.Point, Double> margin,
            Function<PressureWindow.Point, Boolean> known) {
        boolean all = !window.points().isEmpty()
                && window.points().stream().allMatch(p -> p.mudPressure().isPresent() && known.apply(p));
        return all
                ? window.points().stream()
                        .map(p -> new MudFlowOutcome.LeastMargin(p.measuredDepth(), p.verticalDepth(), margin.apply(p)))
                        .min(Comparator.comparingDouble(MudFlowOutcome.LeastMargin::margin))
                : Optional.empty();
    }
}
