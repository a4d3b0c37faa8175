package staunch.earth;

import java.util.Objects;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;
import staunch.well.Datum;

/**
 * Where equivalent mud weights count from: ρ = (p − p₀) / (g (z − z₀)), and back p = p₀ + ρ g (z − z₀). By definition;
 * one pressure has another equivalent density from each zero.
 *
 * @param name what the depth is called, such as "rotary table" or "mean sea level"
 * @param verticalDepth z₀ below the well's datum, m; negative above it
 * @param pressure p₀ there, Pa absolute: the standard atmosphere, at a mudline under water with the sea's weight
 */
public record EquivalentZero(
        String name,
        @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure) {
    /** Nearer to its zero an equivalent density runs away and tells nothing, m. */
    private static final double LEAST_HEIGHT = 1;

    public EquivalentZero {
        Check.text("zero of equivalent densities", name);
        Check.within("depth of the zero of equivalent densities", verticalDepth, -6000, 20_000, Measure.DEPTH);
        Check.within("pressure at the zero of equivalent densities", pressure, 1e5, 1e8, Measure.PRESSURE_ABSOLUTE);
    }

    /** Which zero is meant. */
    public enum Place {
        DATUM("the well's datum"),
        MEAN_SEA_LEVEL("mean sea level"),
        /** The seabed at sea, ground level on land. */
        MUDLINE("mudline");

        private final String title;

        Place(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /**
     * The zero of a well. From the datum and from mean sea level the atmosphere counts as zero pressure; from the mudline at
     * sea the pressure of the sea above it, on land, where it is ground level, the atmosphere.
     *
     * @throws InputFault from a mudline at sea where the density of the sea is not known
     */
    public static EquivalentZero of(Place place, Datum datum) {
        Objects.requireNonNull(place, "place");
        return switch (place) {
            case DATUM -> new EquivalentZero(datum.name(), 0, Physics.ATMOSPHERE);
            case MEAN_SEA_LEVEL -> new EquivalentZero("mean sea level", datum.elevation(), Physics.ATMOSPHERE);
            case MUDLINE -> mudline(datum);
        };
    }

    private static EquivalentZero mudline(Datum datum) {
        if (datum.place() instanceof Datum.AtSea sea) {
            double density = sea.seaWaterDensity()
                    .orElseThrow(() -> new InputFault(
                            "equivalent density from the mudline",
                            "needs the density of the sea",
                            "give it with the datum, or count from the datum or mean sea level"));
            double pressure = Physics.ATMOSPHERE + density * Physics.GRAVITY * sea.waterDepth();
            return new EquivalentZero("mudline", datum.groundOrSeabedDepth(), pressure);
        }
        return new EquivalentZero("ground level", datum.groundOrSeabedDepth(), Physics.ATMOSPHERE);
    }

    /**
     * The pressure that an equivalent density stands for.
     *
     * @param density equivalent, kg/m³
     * @param depth vertical, below the well's datum, m
     * @return Pa absolute
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double pressure(
            @Si(value = "kg/m3", kind = Kind.EQUIVALENT) double density,
            @Si(value = "m", kind = Kind.DEPTH) double depth) {
        return pressure + density * Physics.GRAVITY * (depth - verticalDepth);
    }

    /**
     * The equivalent density of a pressure; empty less than 1 m below the zero and above it, where there is none.
     *
     * @param absolute pressure, Pa
     * @param depth vertical, below the well's datum, m
     * @return kg/m³
     */
    @Si(value = "kg/m3", kind = Kind.EQUIVALENT)
    public OptionalDouble density(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double absolute, @Si(value = "m", kind = Kind.DEPTH) double depth) {
        double height = depth - verticalDepth;
        return height >= LEAST_HEIGHT
                ? OptionalDouble.of((absolute - pressure) / (Physics.GRAVITY * height))
                : OptionalDouble.empty();
    }
}
