package staunch.influx;

import java.util.List;
import java.util.Objects;
import staunch.units.Source;

/**
 * Rise of gas in a closed well, bracketed: evidence is thin and spreads over a factor of ten, so that a time to a limit is
 * asked of all three and the earliest counts.
 *
 * @param slow law of the slow end
 * @param medium law in between
 * @param fast law of the fast end
 */
public record MigrationBracket(SlipLaw slow, SlipLaw medium, SlipLaw fast) {
    private static final double FOOT = 0.3048;

    /**
     * Slow: 500 ft/h (0.042 m/s), about what shut-in pressures of field wells suggest and what the rule by mud weight
     * gives at 12 ppg (510 ft/h). Medium: 1000 ft/h (0.085 m/s), the usual rule of thumb (from memory). Fast: 100 ft/min
     * (0.51 m/s), experiments with gas in mud (from memory of the numbers).
     */
    public static final MigrationBracket PUBLISHED = new MigrationBracket(
            new FixedRiseRate(
                    "slow",
                    500 * FOOT / 3600,
                    new Source(
                            "worked examples of gas migration in course notes", "510 ft/h at 12 ppg; 616 ft/h seen")),
            new FixedRiseRate(
                    "medium", 1000 * FOOT / 3600, new Source("rule of thumb of well-control courses", "from memory")),
            new FixedRiseRate(
                    "fast",
                    100 * FOOT / 60,
                    new Source(
                            "A.B. Johnson and D.B. White, Gas-Rise Velocities During Kicks, SPE Drilling Engineering,"
                                    + " 1991; A.B. Johnson and S. Cooper, 1993",
                            "about 100 ft/min, from memory")));

    public MigrationBracket {
        Objects.requireNonNull(slow, "slow");
        Objects.requireNonNull(medium, "medium");
        Objects.requireNonNull(fast, "fast");
    }

    /** The three laws, slow first. */
    public List<SlipLaw> laws() {
        return List.of(slow, medium, fast);
    }
}
