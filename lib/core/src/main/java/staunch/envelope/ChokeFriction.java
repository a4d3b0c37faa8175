package staunch.envelope;

import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.ChokeLineLoss;
import staunch.control.LineBore;
import staunch.control.SlowCirculation;
import staunch.fluid.FlowModel;
import staunch.fluid.Mud;
import staunch.limit.FlowLine;
import staunch.units.Fault;

/**
 * Friction of the choke line of a section. It counts where the line is long, that is with the stack on the seabed; a
 * measured loss takes precedence over a computed one.
 *
 * @param pressure Pa; empty where it is needed and neither measured nor computable
 * @param basis what it rests on, or what is missing, in plain words
 */
record ChokeFriction(OptionalDouble pressure, String basis) {
    static ChokeFriction of(SectionInput input) {
        if (!input.datum().stackAtSeabed()) {
            return new ChokeFriction(OptionalDouble.of(0), "not counted for a stack at surface");
        }
        SectionPlan plan = input.plan();
        OptionalDouble killRate = plan.operations().killRate();
        OptionalDouble greatest = plan.slowCirculations().stream()
                .map(SlowCirculation::chokeLineFriction)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .max();
        if (killRate.isEmpty() && greatest.isPresent()) {
            // The crew may choose any of the measured rates.
            return new ChokeFriction(greatest, "the greatest measured loss of the section's slow circulating rates");
        }
        OptionalDouble rate = rate(plan);
        return rate.isEmpty()
                ? new ChokeFriction(OptionalDouble.empty(), "neither measured nor computed")
                : at(input, rate.getAsDouble());
    }

    /** Pump rate of the circulation: the chosen one, or the greatest slow circulating rate. */
    static OptionalDouble rate(SectionPlan plan) {
        return plan.operations().killRate().isPresent()
                ? plan.operations().killRate()
                : plan.slowCirculations().stream()
                        .mapToDouble(SlowCirculation::rate)
                        .max();
    }

    private static ChokeFriction at(SectionInput input, double rate) {
        Optional<ChokeLineLoss.Line> line = line(input);
        if (line.isEmpty()) {
            return new ChokeFriction(OptionalDouble.empty(), "neither measured nor computed");
        }
        try {
            ChokeLineLoss loss = line.get().at(rate);
            return loss instanceof ChokeLineLoss.Known known
                    ? new ChokeFriction(
                            OptionalDouble.of(known.pressure()), known.basis().title() + ", at the kill rate")
                    : new ChokeFriction(OptionalDouble.empty(), "neither measured nor computed");
        } catch (Fault outside) {
            return new ChokeFriction(OptionalDouble.empty(), "not computed: " + outside.getMessage());
        }
    }

    /** What is known of the choke line; empty where its size is not. */
    static Optional<ChokeLineLoss.Line> line(SectionInput input) {
        Optional<FlowLine> known = input.equipment().chokeLine();
        if (known.isEmpty() || input.plan().mud().isEmpty()) {
            return Optional.empty();
        }
        Mud mud = input.plan().mud().get();
        FlowLine line = known.get();
        return Optional.of(new ChokeLineLoss.Line(
                new LineBore(line.length(), line.insideDiameter()),
                input.plan().slowCirculations(),
                mud.density(),
                mud.density(),
                flow(mud)));
    }

    /** Empty without readings that make a model. */
    static Optional<FlowModel> flow(Mud mud) {
        try {
            return mud.rheometer().map(FlowModel::of);
        } catch (Fault unusable) {
            return Optional.empty();
        }
    }
}
