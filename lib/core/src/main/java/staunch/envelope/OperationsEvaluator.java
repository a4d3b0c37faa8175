package staunch.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import staunch.control.CirculationMethod;
import staunch.envelope.Kick.Scenario;
import staunch.envelope.OperationsPlan.InfluxChoice;
import staunch.limit.FlowLine;
import staunch.units.Fault;
import staunch.units.Warning;

/**
 * Evaluates the time side of one hole section: what happens to an influx at section TD, bit on bottom, when it is circulated
 * out, left to rise, bled, lubricated, pumped back or killed. Methods and estimates are those of {@link SectionEvaluator};
 * what the case lacks makes the result that needs it {@link NotAssessed}, with the field named.
 */
public final class OperationsEvaluator {
    /** Longest choke line that raises no question, as a share of the depth of the stack. */
    private static final double LONG_LINE = 1.5;

    private static final double SAME_LENGTH = 1;
    private static final double SAME_DEPTH = 0.01;

    private final SectionInput input;
    private final SectionPlan plan;
    private final List<Warning> warnings = new ArrayList<>();

    private OperationsEvaluator(SectionInput input) {
        this.input = input;
        this.plan = input.plan();
    }

    /**
     * Evaluates a section.
     *
     * @throws Fault where the input contradicts itself; what is merely missing is reported in the result
     */
    public static SectionOperations evaluate(SectionInput input) {
        return new OperationsEvaluator(input).evaluate();
    }

    /**
     * Highest pressures while the influx of one scenario is circulated out by the method of the study, without the rest of
     * what may be done about it.
     *
     * @throws Fault where the input contradicts itself; what is merely missing is reported in the result
     */
    public static CirculationPeaks peaks(SectionInput input, Scenario scenario) {
        return new OperationsEvaluator(input).peaks(scenario);
    }

    private CirculationPeaks peaks(Scenario scenario) {
        if (plan.drilling() != Drilling.SHUT_IN) {
            return new NotAssessed("not shut in: " + plan.drilling().title(), "");
        }
        try {
            Model model = Model.of(input, input.options().estimates());
            model.needs(scenario);
            Kick kick = model.kick(scenario, plan.bottomDepth());
            Influx influx = influx(scenario, kick, model);
            CirculationOutcome outcome = new InfluxCourse(input, model, kick, influx.volume())
                    .circulation(input.options().method());
            if (outcome instanceof CirculationOutcome.Computed computed) {
                OptionalDouble shoe = computed.peaks().stream()
                        .filter(p -> Math.abs(p.where().measuredDepth() - plan.topDepth()) < SAME_DEPTH)
                        .mapToDouble(CirculationOutcome.Peak::pressure)
                        .max();
                return new CirculationPeaks.Computed(
                        computed.method(),
                        influx.volume(),
                        influx.basis(),
                        computed.schedule().greatestChokePressure().chokePressure(),
                        shoe);
            }
            return (NotAssessed) outcome;
        } catch (Missing missing) {
            return NotAssessed.of(missing);
        } catch (Fault fault) {
            return NotAssessed.of(fault);
        }
    }

    private SectionOperations evaluate() {
        if (plan.drilling() != Drilling.SHUT_IN) {
            NotAssessed not = new NotAssessed("not shut in: " + plan.drilling().title(), "");
            return new SectionOperations(plan.name(), not, not, not, not, List.of(), List.of());
        }
        Model model = Model.of(input, input.options().estimates());
        chokeLine();
        KickOperations drilled = follow(Scenario.DRILLED, model);
        KickOperations swabbed = follow(Scenario.SWABBED, model);
        return new SectionOperations(
                plan.name(),
                drilled,
                swabbed,
                riser(model),
                mudFlow(),
                OperationsAssumptions.of(input),
                List.copyOf(warnings));
    }

    /** A line that cannot be, or hardly, for the depth of the stack. */
    private void chokeLine() {
        double stack = input.datum().stackDepth();
        double length = input.equipment().chokeLine().map(FlowLine::length).orElse(stack);
        if (stack > 0 && length < stack - SAME_LENGTH) {
            warnings.add(new Warning(
                    "choke line", "it is shorter than the way from the stack to surface: its friction is too low."));
        }
        if (stack > 0 && length > LONG_LINE * stack) {
            warnings.add(new Warning(
                    "choke line",
                    "it is more than half longer than the way from the stack to surface: friction counts its length, the gas"
                            + " is followed along the way alone."));
        }
    }

    private RiserOutcome riser(Model model) {
        try {
            return RiserCheck.of(input, model);
        } catch (Fault fault) {
            return NotAssessed.of(fault);
        }
    }

    private MudFlowOutcome mudFlow() {
        try {
            return MudFlow.of(input);
        } catch (Fault fault) {
            return NotAssessed.of(fault);
        }
    }

    private KickOperations follow(Scenario scenario, Model model) {
        try {
            model.needs(scenario);
            Kick kick = model.kick(scenario, plan.bottomDepth());
            if (kick.measuredDepth() < plan.bottomDepth()) {
                return new NotAssessed(
                        "only an influx on bottom is followed, and the case places it above section TD", "");
            }
            Influx influx = influx(scenario, kick, model);
            InfluxCourse course = new InfluxCourse(input, model, kick, influx.volume());
            CirculationOutcome drillers = course.circulation(CirculationMethod.DRILLERS);
            CirculationOutcome weighted = course.circulation(CirculationMethod.WAIT_AND_WEIGHT);
            VolumetricOutcome volumetric = course.volumetric();
            return new KickOperations.Followed(
                    kick,
                    influx.volume(),
                    influx.basis(),
                    course.shutIn(),
                    course.watched(),
                    drillers,
                    weighted,
                    course.migration(),
                    volumetric,
                    course.lubrication(volumetric),
                    course.bullheading(),
                    course.killSheet(),
                    course.surfaceGas(drillers, weighted));
        } catch (Missing missing) {
            return NotAssessed.of(missing);
        } catch (Fault fault) {
            return NotAssessed.of(fault);
        }
    }

    private record Influx(double volume, String basis) {}

    private Influx influx(Scenario scenario, Kick kick, Model model) {
        InfluxChoice choice = plan.operations().influx();
        if (choice instanceof InfluxChoice.Given given) {
            return new Influx(given.volume(), "as given");
        }
        if (choice instanceof InfluxChoice.AtTolerance) {
            return new Influx(tolerance(kick, model), "kick tolerance");
        }
        double required = plan.criteria()
                .map(c -> scenario == Scenario.DRILLED ? c.drilledTolerance() : c.swabbedTolerance())
                .map(v -> v.orElse(0))
                .orElse(0.0);
        if (required > 0) {
            return new Influx(required, "required tolerance");
        }
        double detectable = plan.detectableGain().orElse(0);
        if (detectable > 0) {
            return new Influx(detectable, "detectable gain");
        }
        throw new Missing(
                "no influx volume to follow: the criteria set none and the detectable gain is not known",
                "criteria: required tolerance, or section: detectable gain, or operations: influx");
    }

    /** The lesser of what the formation holds and what can be circulated to surface. */
    private double tolerance(Kick kick, Model model) {
        double volume = Double.POSITIVE_INFINITY;
        for (Tolerance tolerance : List.of(
                model.tolerance(kick, model.hole(plan.bottomDepth())),
                model.circulatedToSurface(kick, plan.bottomDepth()).tolerance())) {
            if (tolerance instanceof Tolerance.FailsOnIntensity fails) {
                throw new Missing("no influx to follow: " + fails.summary(), "");
            }
            if (tolerance instanceof Tolerance.Finite finite) {
                volume = Math.min(volume, finite.volume());
            }
        }
        if (Double.isInfinite(volume)) {
            throw new Missing(
                    "no influx to follow: the kick tolerance has no finite value", "operations: influx as a volume");
        }
        return volume;
    }
}
