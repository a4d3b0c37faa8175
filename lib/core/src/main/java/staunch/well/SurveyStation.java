package staunch.well;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.Si;

/**
 * One survey station.
 *
 * @param measuredDepth depth along hole below the datum, m, 0 to 20 000
 * @param inclination angle from vertical, rad, 0 to π (above π/2 the hole goes up)
 * @param azimuth angle from north, rad, 0 to 2π
 */
public record SurveyStation(
        @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
        @Si("rad") double inclination,
        @Si("rad") double azimuth) {
    public SurveyStation {
        Check.within("measured depth of the survey station", measuredDepth, 0, 20_000, Measure.DEPTH);
        Check.within("inclination", inclination, 0, Math.PI, Measure.ANGLE);
        Check.within("azimuth", azimuth, 0, 2 * Math.PI, Measure.ANGLE);
    }

    /** In units as written. */
    public static SurveyStation of(Quantity measuredDepth, Quantity inclination, Quantity azimuth) {
        return new SurveyStation(
                measuredDepth.si("measured depth of the survey station", Measure.DEPTH),
                inclination.si("inclination", Measure.ANGLE),
                azimuth.si("azimuth", Measure.ANGLE));
    }
}
