package staunch.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.earth.EquivalentZero;
import staunch.earth.Range;
import staunch.fluid.Gas;
import staunch.units.Amount;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.UnitSystem;
import staunch.units.Wording;
import staunch.well.CasingString;
import staunch.well.Datum;

/** Lists the choices and defaults a section's results rest on. */
final class SectionAssumptions {
    private static final String BY_METHOD = "method option";

    private SectionAssumptions() {}

    /** What the pressure window of a section that is not shut in rests on. */
    static List<Assumption> notShutIn(SectionInput input) {
        if (input.plan().drilling() != Drilling.RISERLESS) {
            return List.of();
        }
        Wording column = Wording.of(
                "sea water of {} down to the seabed, the section's mud below it",
                Amount.of(EquipmentLimits.seawaterDensity(input.datum()), Measure.DENSITY));
        boolean given = input.datum().place() instanceof Datum.AtSea sea
                && sea.seaWaterDensity().isPresent();
        return List.of(new Assumption("mud column", column.text(), given ? "case" : "default", column.amounts()));
    }

    static List<Assumption> of(SectionInput input, Model model) {
        MethodOptions options = input.options();
        SectionPlan plan = input.plan();
        List<Assumption> list = new ArrayList<>();
        list.add(new Assumption("kick tolerance", options.definition().title(), BY_METHOD));
        list.add(new Assumption(
                "volume", "geometric annulus volume the influx fills on bottom at shut-in", "definition"));
        list.add(new Assumption(
                "drilled kick",
                "formation pressure is the " + options.drilledPressure().title(),
                BY_METHOD));
        list.add(new Assumption(
                "swabbed kick",
                "formation pressure equals the static mud pressure; bit on bottom after stripping",
                "definition"));
        list.add(new Assumption("weak point", options.weakPoint().title(), BY_METHOD));
        list.add(new Assumption("estimates", options.estimates().title(), BY_METHOD));
        list.add(new Assumption(
                "gas",
                model.gas().map(Gas::description).orElse(options.gasModel().title()),
                BY_METHOD));
        list.add(new Assumption("influx", influx(options.influx()), BY_METHOD));
        list.add(new Assumption("circulation", options.method().title(), BY_METHOD));
        list.add(new Assumption("mud density", options.mudDensity().title(), BY_METHOD));
        list.add(new Assumption(
                "hydrostatics",
                "exact, g = " + Physics.GRAVITY + " m/s²; equivalent densities from the "
                        + EquivalentZero.of(options.equivalentDensityFrom(), input.datum())
                                .name(),
                options.equivalentDensityFrom() == EquivalentZero.Place.DATUM ? "default" : BY_METHOD));
        list.add(assumption("annular friction", friction(options, model.annularLoss()), BY_METHOD));
        list.add(assumption(
                "bit at shut-in",
                plan.bitOffBottom() > 0
                        ? Wording.of(
                                "{} off bottom, then stripped to it", Amount.of(plan.bitOffBottom(), Measure.LENGTH))
                        : Wording.of("on bottom"),
                "case"));
        list.add(
                plan.influxDepth().isPresent()
                        ? assumption(
                                "influx depth",
                                Wording.of(
                                        "{} MD; the bottom of the hole while that is shallower",
                                        Amount.of(plan.influxDepth().getAsDouble(), Measure.DEPTH)),
                                "case")
                        : new Assumption("influx depth", "bottom of the hole", "default"));
        list.add(amount("circulating overbalance", plan.circulatingOverbalance()));
        list.add(amount("choke-handling allowance", plan.chokeHandlingAllowance()));
        list.add(amount(
                "strength margin", plan.criteria().map(Criteria::strengthMargin).orElse(OptionalDouble.empty())));
        if (input.datum().stackAtSeabed()) {
            list.add(new Assumption(
                    "choke-line friction", ChokeFriction.of(input).basis(), "case"));
            list.add(new Assumption(
                    "sea outside wellhead and BOP",
                    options.seawaterCredit() ? "counts as back-up" : "does not count as back-up",
                    BY_METHOD));
        }
        backUp(list, input.casing());
        list.add(new Assumption("MASP", options.maspBasis().title(), BY_METHOD));
        addSource(list, "pore pressure", input.earth().porePressure());
        addSource(list, "predicted strength", input.earth().strength());
        Optional<Criteria> criteria = plan.criteria();
        criteria.ifPresent(c -> list.add(new Assumption(
                "criteria", c.name() + ", owner " + c.owner(), c.source().text())));
        return list;
    }

    private static void backUp(List<Assumption> list, List<CasingString> casing) {
        List<String> specified = casing.stream()
                .filter(s -> s.backUp().isPresent())
                .map(CasingString::name)
                .toList();
        if (!specified.isEmpty()) {
            list.add(new Assumption("back-up of " + String.join(", ", specified), "as the case specifies it", "case"));
        }
        if (specified.size() < casing.size()) {
            list.add(new Assumption(
                    specified.isEmpty() ? "casing back-up" : "back-up of the other casing",
                    "the lower of low pore pressure and mix-water column; none where either is not known",
                    "default"));
        }
    }

    private static Assumption assumption(String subject, Wording wording, String origin) {
        return new Assumption(subject, wording.text(), origin, wording.amounts());
    }

    private static String influx(InfluxForm influx) {
        return influx instanceof InfluxForm.Distributed spread
                ? influx.title() + "; gas fraction "
                        + UnitSystem.SI.precise(spread.gasFraction(), Measure.NUMBER)
                        + " at the influx at shut-in"
                : influx.title();
    }

    private static Assumption amount(String subject, OptionalDouble pressure) {
        return pressure.isPresent()
                ? assumption(
                        subject,
                        Wording.of("{}", Amount.of(pressure.getAsDouble(), Measure.PRESSURE_DIFFERENCE)),
                        "case")
                : new Assumption(subject, "zero, as none is set", "default");
    }

    private static Wording friction(MethodOptions options, AnnularLoss loss) {
        String title = options.annularFriction().title();
        if (loss instanceof AnnularLoss.Computed computed) {
            return loss(computed).within(title + "; at the greatest slow circulating rate, ", "");
        }
        AnnularLoss.NotAssessed not = (AnnularLoss.NotAssessed) loss;
        return new Wording(not.reason(), not.amounts())
                .within(
                        title + "; its size is not assessed: ",
                        not.missing().isEmpty() ? "" : " (missing: " + not.missing() + ")");
    }

    /** The loss with where and at which rate. */
    static Wording loss(AnnularLoss.Computed loss) {
        return Wording.of(
                "{} above the bit at section TD, of it {} above the shoe, at {} (" + loss.flowModel() + ")",
                Amount.of(loss.aboveBit(), Measure.PRESSURE_DIFFERENCE),
                Amount.of(loss.aboveShoe(), Measure.PRESSURE_DIFFERENCE),
                Amount.of(loss.rate(), Measure.FLOW_RATE));
    }

    private static void addSource(List<Assumption> list, String subject, Optional<Range> range) {
        range.flatMap(Range::source)
                .ifPresent(s -> list.add(new Assumption(subject, "as given by the case", s.text())));
    }
}
