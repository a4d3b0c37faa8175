package staunch.earth;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.Source;

/**
 * A leak-off or integrity test as it was pumped: pressure against volume pumped, then pressure against time with the pump
 * stopped.
 *
 * @param name what the report calls it
 * @param pumped while pumping, by volume that does not fall, at least 5 readings
 * @param shutIn with the pump stopped, by time that rises; may be empty
 * @param source where the readings come from
 */
public record PumpingTest(String name, List<Pumped> pumped, List<ShutIn> shutIn, Source source) {
    private static final int LEAST_READINGS = 5;

    public PumpingTest {
        Check.text("name of the pumping test", name);
        pumped = List.copyOf(pumped);
        shutIn = List.copyOf(shutIn);
        Objects.requireNonNull(source, "source");
        if (pumped.size() < LEAST_READINGS) {
            throw new InputFault(
                    "pumping test " + name,
                    "has " + pumped.size() + " readings while pumping",
                    "give at least " + LEAST_READINGS);
        }
        for (int i = 1; i < pumped.size(); i++) {
            if (pumped.get(i).volume() < pumped.get(i - 1).volume()) {
                throw new InputFault(
                        "pumping test " + name, "has a volume that falls at reading " + (i + 1), "sort or mend it");
            }
        }
        for (int i = 1; i < shutIn.size(); i++) {
            if (shutIn.get(i).time() <= shutIn.get(i - 1).time()) {
                throw new InputFault(
                        "pumping test " + name,
                        "has a time with the pump stopped that does not rise at reading " + (i + 1),
                        "sort or mend it");
            }
        }
    }

    /**
     * Reading while pumping.
     *
     * @param volume pumped since the start, m³, 0 to 100
     * @param pressure at the gauge, Pa, 0 to 200 MPa
     */
    public record Pumped(
            @Si("m3") double volume,
            @Si(value = "Pa", kind = Kind.GAUGE) double pressure) {
        public Pumped {
            Check.within("volume pumped", volume, 0, 100, Measure.VOLUME);
            Check.within("pressure while pumping", pressure, 0, 2e8, Measure.PRESSURE_GAUGE);
        }
    }

    /**
     * Reading with the pump stopped.
     *
     * @param time since the pump stopped, s, 0 to 1 000 000
     * @param pressure at the gauge, Pa, 0 to 200 MPa
     */
    public record ShutIn(
            @Si("s") double time,
            @Si(value = "Pa", kind = Kind.GAUGE) double pressure) {
        public ShutIn {
            Check.within("time since the pump stopped", time, 0, 1e6, Measure.TIME);
            Check.within("pressure with the pump stopped", pressure, 0, 2e8, Measure.PRESSURE_GAUGE);
        }
    }

    /** Greatest pressure while pumping. */
    @Si(value = "Pa", kind = Kind.GAUGE)
    public double greatestPressure() {
        return pumped.stream().mapToDouble(Pumped::pressure).max().orElseThrow();
    }

    /** First pressure with the pump stopped; empty where it was not recorded. */
    @Si(value = "Pa", kind = Kind.GAUGE)
    public OptionalDouble shutInPressure() {
        return shutIn.stream().mapToDouble(ShutIn::pressure).findFirst();
    }

    /** By how much the pressure fell from the first to the last reading with the pump stopped; empty below two readings. */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public OptionalDouble shutInFall() {
        return shutIn.size() < 2
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        shutIn.get(0).pressure() - shutIn.get(shutIn.size() - 1).pressure());
    }

    /**
     * Where gauge and formation stood.
     *
     * @param verticalDepth of the open hole tested, below the datum, m, 1 to 20 000
     * @param gaugeDepth of the gauge below the datum, m, −100 to 100; negative above it
     * @param mudDensity of the mud from the gauge down, kg/m³, 500 to 2700
     */
    public record Column(
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "m", kind = Kind.DEPTH) double gaugeDepth,
            @Si("kg/m3") double mudDensity) {
        public Column {
            Check.within("vertical depth of the formation tested", verticalDepth, 1, 20_000, Measure.DEPTH);
            Check.within("depth of the gauge", gaugeDepth, -100, 100, Measure.DEPTH);
            Check.within("density of the mud", mudDensity, 500, 2700, Measure.DENSITY);
        }
    }
}
