package staunch.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.limit.FlowLine;
import staunch.limit.GasSeparator;
import staunch.limit.PressureEquipment;
import staunch.limit.PressureRating;
import staunch.limit.StackElement;
import staunch.units.Source;

/** Builds the pressure equipment of a case. */
final class EquipmentBuilder {
    private final Fields equipment;
    private final FaultLog log;

    EquipmentBuilder(Fields equipment, FaultLog log) {
        this.equipment = equipment;
        this.log = log;
    }

    PressureEquipment build() {
        List<StackElement> stack = new ArrayList<>();
        for (Fields f : equipment.rows("stack")) {
            log.attempt(f.place(), () -> element(f)).ifPresent(stack::add);
        }
        return new PressureEquipment(
                rated("wellhead"),
                rated("choke_manifold"),
                line("choke_line"),
                line("kill_line"),
                line("riser"),
                stack,
                rated("mud_pump"),
                separator());
    }

    private Optional<GasSeparator> separator() {
        return equipment
                .nested("gas_separator")
                .flatMap(f -> log.attempt(
                        f.place(),
                        () -> new GasSeparator(
                                f.needText("name"),
                                f.amount("mud_leg"),
                                f.amount("vent_length"),
                                f.amount("vent_diameter"),
                                f.amount("gas_capacity"),
                                f.amount("mud_leg_fluid"),
                                f.text("source").map(s -> new Source(s, "")))));
    }

    private Optional<PressureRating> rated(String key) {
        return equipment
                .nested(key)
                .flatMap(f -> log.attempt(f.place(), () -> rating(f).orElseThrow(FaultLog.Incomplete::new)));
    }

    private static Optional<PressureRating> rating(Fields f) {
        OptionalDouble rating = f.amount("rating");
        Optional<Source> source = f.text("source").map(s -> new Source(s, ""));
        return rating.isEmpty()
                ? Optional.empty()
                : Optional.of(new PressureRating(f.needText("name"), rating.getAsDouble(), source));
    }

    private Optional<FlowLine> line(String key) {
        return equipment
                .nested(key)
                .flatMap(f -> log.attempt(
                        f.place(),
                        () -> new FlowLine(
                                f.needText("name"),
                                f.needAmount("length"),
                                f.needAmount("inside_diameter"),
                                rating(f),
                                f.amount("fluid"))));
    }

    private StackElement element(Fields f) {
        OptionalDouble smallest = f.amount("smallest_pipe");
        OptionalDouble largest = f.amount("largest_pipe");
        if (smallest.isPresent() && largest.isPresent() && smallest.getAsDouble() > largest.getAsDouble()) {
            log.add(
                    f.place("smallest_pipe"),
                    f.written("smallest_pipe"),
                    f.written("smallest_pipe") + " is more than the largest pipe of " + f.written("largest_pipe"),
                    "swap them");
        }
        return new StackElement(
                f.needText("name"),
                f.needChoice("type", StackElement.Type.class),
                rating(f),
                f.amount("bore"),
                smallest,
                largest);
    }
}
