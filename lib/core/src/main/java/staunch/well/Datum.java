package staunch.well;

import java.util.Objects;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.Si;

/**
 * The zero of all depths of a well and where ground, sea and seabed lie below it.
 *
 * @param name what the depths are measured from, such as "rotary table"
 * @param elevation height of the datum above mean sea level, m
 * @param place land or sea
 */
public record Datum(
        String name, @Si(value = "m", kind = Kind.LENGTH) double elevation, Place place) {
    public Datum {
        Check.text("name of the datum", name);
        Check.within("elevation of the datum above mean sea level", elevation, -450, 6000, Measure.LENGTH);
        Objects.requireNonNull(place, "place");
    }

    /** Where the wellhead stands. */
    public sealed interface Place permits OnLand, AtSea {}

    /**
     * A land well.
     *
     * @param groundDepth depth of the ground level below the datum, m
     */
    public record OnLand(@Si(value = "m", kind = Kind.DEPTH) double groundDepth) implements Place {
        public OnLand {
            Check.within("depth of the ground level below the datum", groundDepth, 0, 50, Measure.DEPTH);
        }
    }

    /**
     * A well at sea.
     *
     * @param waterDepth mean sea level to seabed, m
     * @param stackAtSeabed whether the BOP stack sits on the seabed (floater) rather than at surface
     * @param seaWaterDensity kg/m³, where known
     */
    public record AtSea(
            @Si(value = "m", kind = Kind.LENGTH) double waterDepth,
            boolean stackAtSeabed,
            @Si("kg/m3") OptionalDouble seaWaterDensity)
            implements Place {
        public AtSea {
            Check.within("water depth", waterDepth, 1, 4000, Measure.LENGTH);
            seaWaterDensity.ifPresent(v -> Check.within("density of the sea", v, 990, 1080, Measure.DENSITY));
        }

        /** A well in a sea of unknown density. */
        public AtSea(@Si(value = "m", kind = Kind.LENGTH) double waterDepth, boolean stackAtSeabed) {
            this(waterDepth, stackAtSeabed, OptionalDouble.empty());
        }
    }

    /** Depth of the ground or the seabed below the datum: where the earth begins. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double groundOrSeabedDepth() {
        return place instanceof OnLand land ? land.groundDepth() : elevation + ((AtSea) place).waterDepth();
    }

    /** Whether the BOP stack sits on the seabed. */
    public boolean stackAtSeabed() {
        return place instanceof AtSea sea && sea.stackAtSeabed();
    }

    /** Depth of the BOP stack below the datum: seabed for a subsea stack, ground or zero height otherwise taken as zero. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double stackDepth() {
        return stackAtSeabed() ? groundOrSeabedDepth() : 0.0;
    }

    /** Datum of a land well, in units as written. */
    public static Datum onLand(String name, Quantity elevation, Quantity groundDepth) {
        return new Datum(
                name,
                elevation.si("elevation of the datum above mean sea level", Measure.LENGTH),
                new OnLand(groundDepth.si("depth of the ground level below the datum", Measure.DEPTH)));
    }
}
