package staunch.influx;

import java.util.Objects;
import staunch.units.Amount;
import staunch.units.Check;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;
import staunch.units.Wording;

/**
 * A rise rate in mud at rest that was measured or chosen; the mixture carries the gas along with C₀ = 1.
 *
 * @param name in plain words, without the rate
 * @param rate along hole, m/s, 0 (gas that stays) to 3
 * @param source where the rate comes from
 */
public record FixedRiseRate(String name, @Si("m/s") double rate, Source source) implements SlipLaw {
    public FixedRiseRate {
        Check.text("name of the rise rate", name);
        Check.within("rise rate", rate, 0, 3, Measure.SPEED);
        Objects.requireNonNull(source, "source");
    }

    @Override
    @Si("1")
    public double distributionParameter(SlipConditions conditions) {
        return 1;
    }

    @Override
    @Si("m/s")
    public double driftVelocity(SlipConditions conditions) {
        return rate;
    }

    @Override
    public String description() {
        return wording().text();
    }

    @Override
    public Wording wording() {
        return Wording.of(name + ", {}", new Amount(rate, Measure.SPEED, 4));
    }
}
