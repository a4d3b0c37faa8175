package staunch.envelope;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/**
 * Any invented section for laws: deviated up to toe-up, with a washout below the shoe and collars on bottom.
 *
 * @param shoe m MD
 * @param length of the open hole, m
 * @param mud kg/m³
 * @param window strength above the mud, kg/m³
 * @param decline of the strength down to 9000 m, kg/m³
 * @param intensity kg/m³
 * @param inclination at the shoe, degrees
 * @param toe inclination at section TD, degrees
 * @param washout of the diameter in the upper third of the hole, m
 */
record AnySection(
        double shoe,
        double length,
        double mud,
        double window,
        double decline,
        double intensity,
        double inclination,
        double toe,
        double washout) {
    private static final double END = 8900;

    /** Any section whose drilled kick the shoe may or may not bear. */
    static Arbitrary<AnySection> any() {
        return Combinators.combine(
                        between(1500, 3500),
                        between(300, 2000),
                        between(1100, 1900),
                        between(20, 400),
                        between(-50, 100),
                        between(0, 120),
                        between(0, 80),
                        between(0, 95))
                .flatAs((shoe, length, mud, window, decline, intensity, inclination, toe) -> between(0, 0.1)
                        .map(washout -> new AnySection(
                                shoe, length, mud, window, decline, intensity, inclination, toe, washout)));
    }

    private static Arbitrary<Double> between(double least, double greatest) {
        return Arbitraries.doubles().between(least, greatest).ofScale(3);
    }

    double bottom() {
        return shoe + length;
    }

    AnySection vertical() {
        return new AnySection(shoe, length, mud, window, decline, intensity, 0, 0, washout);
    }

    List<SurveyStation> stations() {
        List<SurveyStation> list = new ArrayList<>();
        list.add(new SurveyStation(0, 0, 0));
        list.add(new SurveyStation(0.4 * shoe, 0, 0));
        list.add(new SurveyStation(0.9 * shoe, Math.toRadians(inclination), 0));
        list.add(new SurveyStation(shoe + 0.4 * length, Math.toRadians(inclination), 0));
        list.add(new SurveyStation(shoe + 0.8 * length, Math.toRadians(toe), 0));
        list.add(new SurveyStation(END, Math.toRadians(toe), 0));
        return list;
    }

    HoleInterval[] hole() {
        double third = shoe + length / 3;
        return new HoleInterval[] {
            new HoleInterval(shoe, third, Wells.HOLE + washout), new HoleInterval(third, bottom(), Wells.HOLE)
        };
    }

    StringComponent[] string() {
        return new StringComponent[] {
            new StringComponent("collars", 150, 0.165, 0.07), new StringComponent("drill pipe", 10, Wells.PIPE, 0.1086)
        };
    }

    Wells wells() {
        return Wells.standard()
                .depths(shoe, bottom())
                .path(WellPath.of(stations()))
                .mud(mud)
                .pore(1030)
                .intensity(intensity)
                .strength(0, mud + window, 9000, mud + window - decline)
                .hole(hole())
                .string(string());
    }

    /** How much a tolerance allows: nothing where the formation breaks without gas, no end where there is no limit. */
    static double allowed(Tolerance tolerance) {
        if (tolerance instanceof Tolerance.Finite finite) {
            return finite.volume();
        }
        if (tolerance instanceof Tolerance.Unlimited) {
            return Double.POSITIVE_INFINITY;
        }
        if (tolerance instanceof Tolerance.FailsOnIntensity) {
            return 0;
        }
        throw new AssertionError(tolerance);
    }
}
