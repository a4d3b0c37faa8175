package staunch.limit;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Everything above the casing that must hold pressure; empty where the case does not say.
 *
 * @param wellhead rating of the weakest wellhead section in use
 * @param chokeManifold rating of choke manifold and surface line
 * @param chokeLine from the stack to surface
 * @param killLine from the stack to surface
 * @param riser from a subsea stack to surface
 * @param stack elements from the bottom up
 * @param mudPump rating of the pump and its lines, as the relief valve is set
 * @param gasSeparator behind the choke manifold
 */
public record PressureEquipment(
        Optional<PressureRating> wellhead,
        Optional<PressureRating> chokeManifold,
        Optional<FlowLine> chokeLine,
        Optional<FlowLine> killLine,
        Optional<FlowLine> riser,
        List<StackElement> stack,
        Optional<PressureRating> mudPump,
        Optional<GasSeparator> gasSeparator) {
    /** Nothing known. */
    public static final PressureEquipment NONE = new PressureEquipment(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());

    public PressureEquipment {
        Objects.requireNonNull(wellhead, "wellhead");
        Objects.requireNonNull(chokeManifold, "chokeManifold");
        Objects.requireNonNull(chokeLine, "chokeLine");
        Objects.requireNonNull(killLine, "killLine");
        Objects.requireNonNull(riser, "riser");
        stack = List.copyOf(stack);
        Objects.requireNonNull(mudPump, "mudPump");
        Objects.requireNonNull(gasSeparator, "gasSeparator");
    }

    /** Equipment whose pump and separator are not known. */
    public PressureEquipment(
            Optional<PressureRating> wellhead,
            Optional<PressureRating> chokeManifold,
            Optional<FlowLine> chokeLine,
            Optional<FlowLine> killLine,
            Optional<FlowLine> riser,
            List<StackElement> stack) {
        this(wellhead, chokeManifold, chokeLine, killLine, riser, stack, Optional.empty(), Optional.empty());
    }

    /** The same equipment with the pump and the separator of the rig. */
    public PressureEquipment with(Optional<PressureRating> pump, Optional<GasSeparator> separator) {
        return new PressureEquipment(wellhead, chokeManifold, chokeLine, killLine, riser, stack, pump, separator);
    }
}
