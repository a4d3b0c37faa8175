package staunch.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.influx.MigrationBracket;
import staunch.influx.SlipLaw;
import staunch.units.Amount;
import staunch.units.Measure;
import staunch.units.Wording;

/** Lists the choices and defaults that the operations of a section rest on. */
final class OperationsAssumptions {
    private static final String CASE = "case";
    private static final String DEFAULT = "default";

    private OperationsAssumptions() {}

    static List<Assumption> of(SectionInput input) {
        SectionPlan plan = input.plan();
        OperationsPlan operations = plan.operations();
        List<Assumption> list = new ArrayList<>();
        list.add(new Assumption(
                "influx",
                "single continuous bubble at section TD, bit on bottom; gas in solution and spread of the gas are not counted",
                DEFAULT));
        list.add(new Assumption(
                "circulation",
                "bottom-hole pressure held at the greater of formation and string pressure, plus the case's overbalance and"
                        + " choke-handling allowance; mud incompressible, no slip",
                DEFAULT));
        list.add(new Assumption(
                "annular friction", input.options().annularFriction().title(), "method option"));
        if (!(input.options().influx() instanceof InfluxForm.SingleBubble)) {
            list.add(new Assumption(
                    "tolerance beside the operations",
                    "takes the influx as " + input.options().influx().title()
                            + "; the operations follow a single bubble of the same volume",
                    "method option"));
        }
        list.add(
                operations.killRate().isPresent()
                        ? new Assumption("kill rate", "as given", CASE)
                        : new Assumption("kill rate", "the greatest of the section's slow circulating rates", DEFAULT));
        if (!input.datum().stackAtSeabed()) {
            list.add(new Assumption("choke-line friction", "not counted for a stack at surface", DEFAULT));
        }
        list.add(
                operations.surfaceLineVolume().isPresent()
                        ? new Assumption("surface lines", "counted in the strokes of the kill sheet", CASE)
                        : new Assumption(
                                "surface lines", "not known: strokes count from the top of the string", DEFAULT));
        killMud(plan, list);
        Wording vent = Wording.of(
                "gas leaves by the vent at {}; the mud leg holds ",
                new Amount(InfluxCourse.VENT_TEMPERATURE, Measure.TEMPERATURE, 4));
        list.add(new Assumption(
                "separator",
                vent.text()
                        + (input.equipment()
                                        .gasSeparator()
                                        .flatMap(g -> present(g.mudLegDensity()))
                                        .isPresent()
                                ? "the fluid of the case"
                                : "the section's mud"),
                DEFAULT,
                vent.amounts()));
        if (input.datum().stackAtSeabed()) {
            list.add(new Assumption(
                    "choke-line friction",
                    "that of mud all the way: gas in the line takes less, and the choke then shows up to that much more",
                    DEFAULT));
            list.add(new Assumption(
                    "bullheading",
                    "pumped through one line as long and wide as the choke line; its friction adds to the pump pressure and to"
                            + " the load on what stands above the stack",
                    DEFAULT));
            Wording sea = Wording.of(
                    "sea of {} stands on the well where it parts; lines hold the section's mud unless the case says otherwise",
                    Amount.of(EquipmentLimits.seawaterDensity(input.datum()), Measure.DENSITY));
            list.add(new Assumption("riser", sea.text(), DEFAULT, sea.amounts()));
        }
        if (operations.trippingSpeed().isPresent()) {
            list.add(new Assumption(
                    "swab and surge",
                    "bit on bottom at a steady speed, clinging constant 0.45, peak of a stand 1.5 times its mean; the whole"
                            + " change taken at every exposed depth; no inertia, no gel, no friction in a riser",
                    "Burkhardt 1961"));
        }
        closedWell(plan, list);
        return list;
    }

    private static Optional<Double> present(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private static void killMud(SectionPlan plan, List<Assumption> list) {
        OperationsPlan.KillMud mud = plan.operations().killMud();
        if (mud.step().isEmpty()) {
            Wording step = Wording.of(
                    "rounded up to steps of {}", Amount.of(InfluxCourse.TRADE_STEP, Measure.DENSITY_DIFFERENCE));
            list.add(new Assumption("kill mud density", step.text(), DEFAULT, step.amounts()));
        }
        if (mud.overbalance().isEmpty()) {
            list.add(new Assumption("kill mud overbalance", "none beyond rounding", DEFAULT));
        }
        if (mud.material().isEmpty()) {
            Wording barite = Wording.of("barite of {}", Amount.of(InfluxCourse.BARITE, Measure.DENSITY));
            list.add(new Assumption(
                    "weighting material",
                    barite.text(),
                    "API Spec 13A asks for at least that; from memory",
                    barite.amounts()));
        }
        if (plan.activeVolume().isEmpty()) {
            list.add(new Assumption(
                    "volume to weight up",
                    "string and annulus alone: the volume of the pits is not known (missing: section: active volume)",
                    DEFAULT));
        }
    }

    private static void closedWell(SectionPlan plan, List<Assumption> list) {
        OperationsPlan operations = plan.operations();
        MigrationBracket bracket = operations.migration().orElse(MigrationBracket.PUBLISHED);
        for (SlipLaw law : bracket.laws()) {
            list.add(new Assumption(
                    "migration",
                    law.description(),
                    law.source().text(),
                    law.wording().amounts()));
        }
        OperationsPlan.Yielding yielding = operations.yielding();
        boolean mudGives = yielding.mudCompressibility().isPresent()
                || plan.mud().flatMap(m -> m.expansion()).isPresent();
        if (!mudGives) {
            list.add(new Assumption(
                    "mud compressibility", "none: pressures in the closed well are upper bounds", DEFAULT));
        }
        if (yielding.holeCompliance().isEmpty()) {
            list.add(new Assumption(
                    "elasticity of hole and casing", "none: pressures in the closed well are upper bounds", DEFAULT));
        }
        if (yielding.filtrateLoss().isEmpty()) {
            list.add(new Assumption("filtrate loss", "none", DEFAULT));
        } else {
            list.add(new Assumption("filtrate loss", "counted in the migration, not in the volumetric method", CASE));
        }
        if (yielding.floatInString().isEmpty()) {
            list.add(new Assumption("string", "closed off by a float, which makes the well stiffer", DEFAULT));
        }
        if (operations.lubrication().left().isEmpty()) {
            Wording end = Wording.of("ends when {} of gas is left", Amount.of(InfluxCourse.GAS_LEFT, Measure.VOLUME));
            list.add(new Assumption("lubricate and bleed", end.text(), DEFAULT, end.amounts()));
        }
    }
}
