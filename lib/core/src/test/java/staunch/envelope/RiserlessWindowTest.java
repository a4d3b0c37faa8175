package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import staunch.units.Physics;
import staunch.well.Datum;
import staunch.well.HoleInterval;

class RiserlessWindowTest {
    /** Elevation 25 m, water 310 m: the seabed lies at 335 m. */
    private static final Datum SUBSEA = new Datum("rotary table", 25, new Datum.AtSea(310, true));

    private static List<PressureWindow.Point> points(Drilling drilling) {
        SectionInput input = Wells.standard()
                .datum(SUBSEA)
                .mud(1050)
                .depths(412, 1000)
                .hole(new HoleInterval(412, 1000, 0.66))
                .input();
        SectionPlan p = input.plan();
        SectionPlan plan = new SectionPlan(
                p.name(),
                drilling,
                p.hole(),
                p.bitDiameter(),
                p.mud(),
                p.string(),
                p.bitOffBottom(),
                p.gas(),
                p.slowCirculations(),
                p.pumpOutput(),
                p.activeVolume(),
                p.detectableGain(),
                p.circulatingOverbalance(),
                p.chokeHandlingAllowance(),
                p.criteria());
        return new WindowCheck(new SectionInput(
                        input.datum(),
                        input.path(),
                        input.earth(),
                        input.casing(),
                        input.equipment(),
                        plan,
                        input.options()))
                .points();
    }

    @Test
    void withoutRiserTheMudStandsBelowTheSea() {
        for (PressureWindow.Point point : points(Drilling.RISERLESS)) {
            double expected = Physics.ATMOSPHERE
                    + 9.80665 * (1025 * 310 + 1050 * (point.verticalDepth() - SUBSEA.elevation() - 310));
            assertEquals(expected, point.mudPressure().getAsDouble(), 1e-9 * expected);
        }
    }

    @Test
    void withRiserTheMudStandsToTheDatum() {
        for (PressureWindow.Point point : points(Drilling.SHUT_IN)) {
            double expected = Physics.ATMOSPHERE + 9.80665 * 1050 * point.verticalDepth();
            assertEquals(expected, point.mudPressure().getAsDouble(), 1e-9 * expected);
        }
    }
}
