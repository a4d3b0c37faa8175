package staunch.earth;

import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/** Where the normal trend of a log comes from. */
public sealed interface TrendChoice {
    /**
     * Fitted to the readings of an interval in which the pore pressure is known to be normal. It is carried down from there,
     * not up.
     *
     * @param from vertical depth of its top below the datum of the well, m
     * @param to of its bottom, m
     */
    record Fitted(
            @Si(value = "m", kind = Kind.DEPTH) double from,
            @Si(value = "m", kind = Kind.DEPTH) double to) implements TrendChoice {
        public Fitted {
            Check.within("top of the normal trend", from, 0, 20_000, Measure.DEPTH);
            Check.within("bottom of the normal trend", to, 0, 20_000, Measure.DEPTH);
            if (to <= from) {
                throw new InputFault("normal trend", "ends above its top", "exchange its depths");
            }
        }
    }

    /**
     * Stated: y = y₀ exp(∓ h / λ), with h the depth below mudline or ground; slowness falls, resistivity rises.
     *
     * @param atGround y₀, s/m or Ω m
     * @param length λ, m, 100 to 100 000
     * @param scatter standard deviation of readings about it, as a share, 0 to 0.5
     */
    record Given(
            @Si("1") double atGround,
            @Si(value = "m", kind = Kind.LENGTH) double length,
            @Si("1") double scatter) implements TrendChoice {
        public Given {
            Check.within("length of the normal trend", length, 100, 100_000, Measure.LENGTH);
            Check.within("scatter about the normal trend", scatter, 0, 0.5, Measure.NUMBER);
        }
    }
}
