package staunch.envelope;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.control.FrictionCurve;
import staunch.control.PipeMovement;
import staunch.units.Kind;
import staunch.units.Si;

/** Friction of the section's mud with the bit on bottom: while it is pumped slowly, and while the string is tripped. */
public sealed interface MudFlowOutcome permits MudFlowOutcome.Computed, NotAssessed {
    /**
     * What the mud loses.
     *
     * @param rates losses and equivalent circulating density at each slow circulating rate and at the kill rate, by rising
     *     rate; none where the case gives neither
     * @param trip swab and surge, where the case gives a tripping speed
     */
    record Computed(List<FrictionCurve.Point> rates, Optional<Trip> trip) implements MudFlowOutcome {
        public Computed {
            rates = List.copyOf(rates);
            Objects.requireNonNull(trip, "trip");
        }
    }

    /**
     * Swab and surge of the string at a steady speed, by {@link PipeMovement}. The whole change of pressure is taken at every
     * exposed depth, which is to the safe side above the bit.
     *
     * @param speed mean speed of the pipe, m/s
     * @param end of the string
     * @param swab fall of pressure while pulling out, Pa, positive
     * @param surge rise of pressure while running in, Pa, positive
     * @param pulling exposed depth with the least mud pressure over pore pressure then; empty where either is not known
     * @param running exposed depth with the least strength, margin taken off, over mud pressure then; empty where either is
     *     not known
     */
    record Trip(
            @Si("m/s") double speed,
            PipeMovement.End end,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double swab,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double surge,
            Optional<LeastMargin> pulling,
            Optional<LeastMargin> running) {
        public Trip {
            Objects.requireNonNull(end, "end");
            Objects.requireNonNull(pulling, "pulling");
            Objects.requireNonNull(running, "running");
        }
    }

    /**
     * The exposed depth with the least margin.
     *
     * @param measuredDepth m
     * @param verticalDepth m
     * @param margin Pa; negative where the well flows or the formation breaks
     */
    record LeastMargin(
            @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double margin) {}
}
