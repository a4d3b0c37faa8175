package staunch.fluid;

import java.util.Map;
import java.util.TreeMap;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Measure;

/**
 * Dial readings of a six-speed rotational viscometer (API RP 13B-1), by rotor speed in rpm.
 *
 * @param dialReadings reading in dial degrees for each of 600, 300, 200, 100, 6 and 3 rpm that was taken
 */
public record RheometerReadings(Map<Integer, Double> dialReadings) {
    public RheometerReadings {
        dialReadings = Map.copyOf(dialReadings);
        TreeMap<Integer, Double> sorted = new TreeMap<>(dialReadings);
        double previous = 0;
        for (Map.Entry<Integer, Double> e : sorted.entrySet()) {
            Check.within("rheometer speed (rpm)", e.getKey(), 1, 1000, Measure.NUMBER);
            Check.within("rheometer reading at " + e.getKey() + " rpm", e.getValue(), 0, 400, Measure.NUMBER);
            if (e.getValue() < previous) {
                throw new InputFault(
                        "rheometer reading at " + e.getKey() + " rpm",
                        "is lower than the reading at a lower speed",
                        "check the order of the readings");
            }
            previous = e.getValue();
        }
    }
}
