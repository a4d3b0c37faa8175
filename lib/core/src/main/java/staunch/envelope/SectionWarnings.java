package staunch.envelope;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.earth.Standing;
import staunch.earth.TemperatureProfile;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.influx.MudColumn;
import staunch.units.Amount;
import staunch.units.EquivalentDensity;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Warning;
import staunch.units.Wording;

/** Finds what is legal but suspicious in a section, and effects that were neglected. */
final class SectionWarnings {
    /** 0.1 ppg, the shift of equivalent density worth a word. */
    private static final double EQUIVALENT_SHIFT = 12;

    /** 50 psi, the loss worth a word. */
    private static final double NEGLIGIBLE_LOSS = 50 * 6894.757293168;

    private final SectionInput input;
    private final SectionPlan plan;
    private final Model model;

    SectionWarnings(SectionInput input, Model model) {
        this.input = input;
        this.plan = input.plan();
        this.model = model;
    }

    void addTo(List<Warning> warnings) {
        overbalance(warnings);
        annularFriction(warnings);
        influx(warnings);
        mudDensity(warnings);
        oilBasedMud(warnings);
        pipe(warnings);
        strength(warnings);
        hydrogenSulphide(warnings);
        porePressure(warnings);
    }

    private void overbalance(List<Warning> warnings) {
        if (plan.circulatingOverbalance().isEmpty()) {
            warnings.add(new Warning(
                    "circulating overbalance", "the case sets none: zero is taken, which no choke operator can hold."));
        }
        if (plan.chokeHandlingAllowance().isEmpty()) {
            warnings.add(new Warning("choke-handling allowance", "the case sets none: zero is taken."));
        }
    }

    private void influx(List<Warning> warnings) {
        if (input.options().influx() instanceof InfluxForm.Distributed) {
            warnings.add(new Warning(
                    "influx",
                    "the tolerance counts on gas that stays spread evenly in the mud, by choice of method; in most holes a single"
                            + " bubble of the same gas loads the formation more."));
        }
    }

    private void annularFriction(List<Warning> warnings) {
        if (model.annularLoss() instanceof AnnularLoss.Computed loss
                && !loss.counted()
                && loss.aboveBit() > NEGLIGIBLE_LOSS) {
            warnings.add(new Warning(
                    "annular friction",
                    SectionAssumptions.loss(loss)
                            .within(
                                    "neglected, though at the greatest slow circulating rate it is ",
                                    ". Held with the drill-pipe pressure it loads bottom and weak point.")));
        }
    }

    private void mudDensity(List<Warning> warnings) {
        Optional<Mud> mud = plan.mud();
        Optional<TemperatureProfile> temperature = input.earth().temperature();
        boolean constant = model.mudColumn().map(MudColumn::isConstant).orElse(false);
        if (!constant
                || mud.isEmpty()
                || temperature.isEmpty()
                || mud.get().expansion().isEmpty()) {
            return;
        }
        double z = input.path().verticalDepth(plan.bottomDepth());
        if (!temperature.get().covers(z) || !temperature.get().covers(0)) {
            return;
        }
        double stated = mud.get().density();
        double moved = EquivalentDensity.of(
                MudColumn.expanding(mud.get(), temperature.get()).hydrostatic(z), z);
        if (Math.abs(moved - stated) > EQUIVALENT_SHIFT) {
            warnings.add(new Warning(
                    "mud density",
                    Wording.of(
                            "pressure and temperature would move the equivalent density at section TD by more than {} "
                                    + (moved > stated ? "upwards" : "downwards")
                                    + "; the constant stated density was used.",
                            Amount.of(EQUIVALENT_SHIFT, Measure.DENSITY_DIFFERENCE))));
        }
    }

    private void oilBasedMud(List<Warning> warnings) {
        if (plan.mud().isPresent() && plan.mud().get().base().dissolvesGas()) {
            warnings.add(new Warning(
                    "oil-based mud",
                    "gas dissolves in this mud: the tolerance is a free-gas estimate, which bounds neither the detection of"
                            + " the kick nor gas in the riser; both are not assessed."));
        }
    }

    private void pipe(List<Warning> warnings) {
        if (plan.string().isPresent() && plan.string().get().isNone()) {
            warnings.add(new Warning(
                    "drill string",
                    "no pipe in the hole: the influx can only rise by itself or be pushed back; the displacement is taken with"
                            + " bottom-hole pressure held constant."));
        }
    }

    private void strength(List<Warning> warnings) {
        boolean testAtShoe = input.earth().tests().stream()
                .anyMatch(t -> t.standing() != Standing.PREDICTED
                        && t.verticalDepth() >= input.path().verticalDepth(plan.topDepth()) - 1
                        && t.verticalDepth() <= input.path().verticalDepth(plan.topDepth()) + 30);
        if (!testAtShoe && model.strength().isPresent()) {
            warnings.add(new Warning("strength at the shoe", "no leak-off or integrity test: the prediction is used."));
        }
        if (plan.criteria()
                .map(Criteria::strengthMargin)
                .orElse(OptionalDouble.empty())
                .isEmpty()) {
            warnings.add(new Warning("strength margin", "the criteria set none: zero is taken."));
        }
        if (input.options().weakPoint() == MethodOptions.WeakPointChoice.SHOE_ONLY) {
            warnings.add(new Warning("weak point", "only the shoe is looked at, by choice of method."));
        }
    }

    private void hydrogenSulphide(List<Warning> warnings) {
        boolean sour = plan.gas().map(GasComposition::hydrogenSulphide).orElse(0.0) > 0;
        boolean undeclared = input.casing().stream()
                .flatMap(c -> c.intervals().stream())
                .anyMatch(i -> i.grade().isEmpty());
        if (sour && undeclared) {
            warnings.add(new Warning(
                    "hydrogen sulphide",
                    "the gas is sour and a casing grade is not declared: check the steel for sour service."));
        }
    }

    private void porePressure(List<Warning> warnings) {
        double mudPressure = model.mudColumn()
                .map(m -> m.hydrostatic(input.path().verticalDepth(plan.bottomDepth())))
                .orElse(Physics.ATMOSPHERE);
        boolean above = model.pore()
                .filter(p -> p.covers(input.path().verticalDepth(plan.bottomDepth())))
                .map(p -> p.highestAt(input.path().verticalDepth(plan.bottomDepth())) > mudPressure)
                .orElse(false);
        if (above) {
            warnings.add(new Warning(
                    "pore pressure",
                    "at section TD it exceeds the static mud pressure in the estimate that decides: the drilled kick is computed"
                            + " from it where it is the greater."));
        }
    }
}
