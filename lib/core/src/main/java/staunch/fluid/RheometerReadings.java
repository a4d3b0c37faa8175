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
    /** 1 lbf/100 ft², Pa; exact by definition of its units. */
    static final double POUND_PER_HUNDRED_SQUARE_FEET = FieldUnits.PSI / 14_400;

    /** Shear stress of one degree with the standard bob and spring, Pa: 1.066 lbf/100 ft². */
    static final double STRESS_PER_DEGREE = 1.066 * POUND_PER_HUNDRED_SQUARE_FEET;

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

    /** Shear rate at the wall of the standard bob, 1/s: 1.703 1/s for 1 rpm, 511 1/s at 300 rpm. */
    static double shearRate(int rotorSpeed) {
        return 511.0 / 300 * rotorSpeed;
    }

    /**
     * Reading at a rotor speed, degrees.
     *
     * @throws InputFault where none was taken
     */
    double at(int rotorSpeed) {
        Double reading = dialReadings.get(rotorSpeed);
        if (reading == null) {
            throw new InputFault(
                    "rheometer reading at " + rotorSpeed + " rpm",
                    "is missing",
                    "give it, or choose another flow model");
        }
        return reading;
    }
}
