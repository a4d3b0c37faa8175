package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.units.Amount;
import staunch.units.Kind;
import staunch.units.Si;

/** Friction in the annulus with the bit on bottom at section TD, whether or not the tolerances count it. */
public sealed interface AnnularLoss {
    /**
     * The loss by {@link staunch.control.Hydraulics} at the kill rate, or else the greatest slow circulating rate of the section.
     *
     * @param rate of the pump, m³/s
     * @param aboveBit between the bit and the top of the annulus, Pa
     * @param aboveShoe between the shoe above the open hole and the top of the annulus, Pa
     * @param flowModel of the mud, in plain words
     * @param counted whether the tolerances count it
     */
    record Computed(
            @Si("m3/s") double rate,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double aboveBit,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double aboveShoe,
            String flowModel,
            boolean counted)
            implements AnnularLoss {
        public Computed {
            Objects.requireNonNull(flowModel, "flowModel");
        }
    }

    /**
     * The case lacks what the loss is computed from.
     *
     * @param reason one sentence, in SI units
     * @param missing field of the case that would mend it; empty where none would
     * @param amounts quantities the reason names, in their order
     */
    record NotAssessed(String reason, String missing, List<Amount> amounts) implements AnnularLoss {
        public NotAssessed {
            Objects.requireNonNull(reason, "reason");
            Objects.requireNonNull(missing, "missing");
            amounts = List.copyOf(amounts);
        }

        /** A reason that names no quantity. */
        public NotAssessed(String reason, String missing) {
            this(reason, missing, List.of());
        }
    }
}
