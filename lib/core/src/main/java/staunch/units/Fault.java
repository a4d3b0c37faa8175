package staunch.units;

import java.util.List;

/**
 * Bad input, a value outside a stated range, or a calculation that did not converge. Each fault keeps its parts, so
 * that a caller can show them in the user's units with {@link #text(UnitSystem)}; {@link #getMessage()} speaks SI.
 */
public abstract sealed class Fault extends RuntimeException
        permits InputFault, RangeFault, UnitFault, ConvergenceFault {
    private static final long serialVersionUID = 1L;

    Fault(String message) {
        super(message);
    }

    /** What the fault is about, in the words of the input. */
    public abstract String field();

    /** The message with the quantities it names. */
    public Wording wording() {
        return new Wording(getMessage(), List.of());
    }

    /** The whole sentence, numbers in the units of the given system. */
    public abstract String text(UnitSystem units);
}
