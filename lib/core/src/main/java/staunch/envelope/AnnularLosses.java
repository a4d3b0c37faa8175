package staunch.envelope;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.FlowingMud;
import staunch.control.Hydraulics;
import staunch.envelope.MethodOptions.AnnularFriction;
import staunch.fluid.FlowModel;
import staunch.fluid.Mud;
import staunch.fluid.RheometerReadings;
import staunch.units.Fault;
import staunch.well.Annulus;
import staunch.well.AnnulusGeometry;

/** Computes the friction in a section's annulus from its rheometer readings and slow circulating rates. */
final class AnnularLosses {
    private final Optional<FrictionProfile.Flow> flow;
    private final AnnularLoss loss;

    private AnnularLosses(Optional<FrictionProfile.Flow> flow, AnnularLoss loss) {
        this.flow = flow;
        this.loss = loss;
    }

    private static AnnularLosses none(String reason, String missing) {
        return new AnnularLosses(Optional.empty(), new AnnularLoss.NotAssessed(reason, missing));
    }

    static AnnularLosses of(SectionInput input) {
        SectionPlan plan = input.plan();
        if (plan.drilling() != Drilling.SHUT_IN) {
            return none("the section is not shut in", "");
        }
        if (plan.mud().isEmpty()) {
            return none("the section has no mud", "section: mud");
        }
        if (plan.string().isEmpty()) {
            return none("the section has no drill string", "section: string");
        }
        if (plan.string().get().isNone()) {
            return none("no pipe is in the hole to circulate through", "");
        }
        Mud mud = plan.mud().get();
        if (mud.rheometer().isEmpty()) {
            return none("the mud has no rheometer readings", "section: mud: rheometer");
        }
        // Unless the case sets the kill rate the crew may choose any: the greatest loses most, as with the choke line.
        OptionalDouble rate = ChokeFriction.rate(plan);
        if (rate.isEmpty()) {
            return none("the section has no slow circulating rate", "section: slow circulation: rate");
        }
        try {
            FlowModel model = flowModel(mud.rheometer().get());
            FrictionProfile.Flow flow =
                    new FrictionProfile.Flow(new FlowingMud(mud.density(), model), rate.getAsDouble());
            Annulus annulus = annulus(input);
            return new AnnularLosses(
                    Optional.of(flow),
                    new AnnularLoss.Computed(
                            rate.getAsDouble(),
                            Hydraulics.annularLoss(annulus, flow.mud(), rate.getAsDouble()),
                            Hydraulics.annularLossAbove(annulus, plan.topDepth(), flow.mud(), rate.getAsDouble()),
                            model instanceof FlowModel.HerschelBulkley ? "Herschel–Bulkley" : "Bingham plastic",
                            input.options().annularFriction() == AnnularFriction.COUNTED));
        } catch (Fault fault) {
            return new AnnularLosses(
                    Optional.empty(),
                    new AnnularLoss.NotAssessed(
                            fault.wording().text(), "", fault.wording().amounts()));
        }
    }

    /** The annulus of a section that has a string, bit on bottom. */
    static Annulus annulus(SectionInput input) {
        SectionPlan plan = input.plan();
        return Annulus.of(new AnnulusGeometry(
                input.casing(),
                plan.hole(),
                plan.string().orElseThrow(),
                plan.bottomDepth(),
                input.datum().stackDepth(),
                plan.bottomDepth()));
    }

    /** Herschel–Bulkley where the slow readings give its yield stress, Bingham plastic from the two fast ones. */
    private static FlowModel flowModel(RheometerReadings readings) {
        Map<Integer, Double> dial = readings.dialReadings();
        return dial.containsKey(3) && dial.containsKey(6)
                ? FlowModel.HerschelBulkley.from(readings)
                : FlowModel.BinghamPlastic.from(readings);
    }

    /** What flows while circulating, where that is known. */
    Optional<FrictionProfile.Flow> flow() {
        return flow;
    }

    AnnularLoss loss() {
        return loss;
    }
}
