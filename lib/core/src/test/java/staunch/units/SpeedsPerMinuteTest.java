package staunch.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A foot is 0.3048 m and a minute 60 s, by definition. */
class SpeedsPerMinuteTest {
    @Test
    void tripsAreReadPerMinute() {
        double speed = 90 * 0.3048 / 60;
        assertEquals("90 ft/min", UnitSystem.FIELD.perMinute().text(speed, Measure.SPEED));
        assertEquals("27.4 m/min", UnitSystem.METRIC.perMinute().text(speed, Measure.SPEED));
        assertEquals("27.4 m/min", UnitSystem.MIXED.perMinute().text(speed, Measure.SPEED));
        assertEquals(UnitSystem.SI, UnitSystem.SI.perMinute());
        assertEquals("5400 ft/h", UnitSystem.FIELD.text(speed, Measure.SPEED));
    }
}
