package staunch.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import staunch.earth.EquivalentZero;
import staunch.earth.Range;
import staunch.fluid.Gas;
import staunch.units.Amount;
import staunch.units.Measure;
import staunch.units.Physics;
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
        list.add(new Assumption("influx", "single continuous bubble", "default"));
        list.add(new Assumption("circulation", options.method().title(), BY_METHOD));
        list.add(new Assumption("mud density", options.mudDensity().title(), BY_METHOD));
        list.add(new Assumption(
                "hydrostatics",
                "exact, g = " + Physics.GRAVITY + " m/s²; equivalent densities from the "
                        + EquivalentZero.of(options.equivalentDensityFrom(), input.datum())
                                .name(),
                options.equivalentDensityFrom() == EquivalentZero.Place.DATUM ? "default" : BY_METHOD));
        list.add(new Assumption("annular friction", "neglected", "default"));
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

    private static void addSource(List<Assumption> list, String subject, Optional<Range> range) {
        range.flatMap(Range::source)
                .ifPresent(s -> list.add(new Assumption(subject, "as given by the case", s.text())));
    }
}
