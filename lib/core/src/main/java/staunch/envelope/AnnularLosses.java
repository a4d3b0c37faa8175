package staunch.envelope;

import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.FlowingMud;
import staunch.control.Hydraulics;
import staunch.envelope.MethodOptions.AnnularFriction;
import staunch.fluid.FlowModel;
import staunch.fluid.Mud;
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

    static AnnularLosses of(SectionInput input) {
        Optional<AnnularLoss.NotAssessed> missing = missing(input.plan());
        if (missing.isPresent()) {
            return new AnnularLosses(Optional.empty(), missing.get());
        }
        SectionPlan plan = input.plan();
        // Unless the case sets the kill rate the crew may choose any: the greatest loses most, as with the choke line.
        OptionalDouble rate = ChokeFriction.rate(plan);
        if (rate.isEmpty()) {
            return new AnnularLosses(
                    Optional.empty(),
                    new AnnularLoss.NotAssessed(
                            "the section has no slow circulating rate", "section: slow circulation: rate"));
        }
        try {
            FrictionProfile.Flow flow = new FrictionProfile.Flow(mud(plan), rate.getAsDouble());
            Annulus annulus = annulus(input);
            return new AnnularLosses(
                    Optional.of(flow),
                    new AnnularLoss.Computed(
                            rate.getAsDouble(),
                            Hydraulics.annularLoss(annulus, flow.mud(), rate.getAsDouble()),
                            Hydraulics.annularLossAbove(annulus, plan.topDepth(), flow.mud(), rate.getAsDouble()),
                            flow.mud().flow() instanceof FlowModel.HerschelBulkley
                                    ? "Herschel–Bulkley"
                                    : "Bingham plastic",
                            input.options().annularFriction() == AnnularFriction.COUNTED));
        } catch (Fault fault) {
            return new AnnularLosses(
                    Optional.empty(),
                    new AnnularLoss.NotAssessed(
                            fault.wording().text(), "", fault.wording().amounts()));
        }
    }

    /** Why mud cannot be reckoned to flow round the string of a section; empty where it can. */
    static Optional<AnnularLoss.NotAssessed> missing(SectionPlan plan) {
        if (plan.drilling() != Drilling.SHUT_IN) {
            return missing("the section is not shut in", "");
        }
        if (plan.mud().isEmpty()) {
            return missing("the section has no mud", "section: mud");
        }
        if (plan.string().isEmpty()) {
            return missing("the section has no drill string", "section: string");
        }
        if (plan.string().get().isNone()) {
            return missing("no pipe is in the hole to circulate through", "");
        }
        return plan.mud().get().rheometer().isEmpty()
                ? missing("the mud has no rheometer readings", "section: mud: rheometer")
                : Optional.empty();
    }

    private static Optional<AnnularLoss.NotAssessed> missing(String reason, String what) {
        return Optional.of(new AnnularLoss.NotAssessed(reason, what));
    }

    /**
     * The mud of a section of which nothing is {@link #missing}.
     *
     * @throws Fault where its readings make no flow model
     */
    static FlowingMud mud(SectionPlan plan) {
        Mud mud = plan.mud().orElseThrow();
        return new FlowingMud(mud.density(), FlowModel.of(mud.rheometer().orElseThrow()));
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

    /** What flows while circulating, where that is known. */
    Optional<FrictionProfile.Flow> flow() {
        return flow;
    }

    AnnularLoss loss() {
        return loss;
    }
}
