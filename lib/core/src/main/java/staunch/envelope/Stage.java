package staunch.envelope;

import java.util.Objects;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Where the influx stands at the moment that governs.
 *
 * @param moment which part of the operation
 * @param gasTop measured depth of the top of the gas, m
 * @param gasBottom measured depth of the lower end of the gas, m
 * @param bottomHolePressure Pa absolute
 */
public record Stage(
        Moment moment,
        @Si(value = "m", kind = Kind.DEPTH) double gasTop,
        @Si(value = "m", kind = Kind.DEPTH) double gasBottom,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double bottomHolePressure) {
    public Stage {
        Objects.requireNonNull(moment, "moment");
    }

    /** Part of the operation. */
    public enum Moment {
        SHUT_IN_BIT_OFF_BOTTOM("shut in with the bit off bottom"),
        SHUT_IN("shut in with the influx on bottom"),
        START_OF_CIRCULATION("start of circulation, influx on bottom"),
        KILL_MUD_BELOW_INFLUX("kill mud between bottom and the depth of the influx"),
        RISING("influx part-way up, its top below the weak point"),
        TOP_AT_WEAK_POINT("top of the influx at the weak point"),
        PAST_WEAK_POINT("influx past the weak point");

        private final String title;

        Moment(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }
}
