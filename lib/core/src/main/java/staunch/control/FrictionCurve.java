package staunch.control;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.well.Annulus;
import staunch.well.WellPath;

/**
 * Friction of a well against the pump rate, by {@link Hydraulics}.
 *
 * @param points by rising rate
 */
public record FrictionCurve(List<Point> points) {
    public FrictionCurve {
        points = List.copyOf(points);
    }

    /**
     * Losses at a rate.
     *
     * @param rate m³/s
     * @param annulus loss from the bit to the top of the annulus, Pa
     * @param string loss inside the string, without the bit, Pa
     * @param chokeLine loss in the choke line, Pa, where the well has one
     * @param equivalentDensity equivalent circulating density at the bottom of the annulus, its own friction alone, kg/m³
     */
    public record Point(
            @Si("m3/s") double rate,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double annulus,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double string,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble chokeLine,
            @Si(value = "kg/m3", kind = Kind.EQUIVALENT) double equivalentDensity) {
        public Point {
            Objects.requireNonNull(chokeLine, "chokeLine");
        }
    }

    /**
     * What the mud flows through.
     *
     * @param path of the hole
     * @param annulus with the string in it
     * @param chokeLine of a subsea stack; empty where none counts
     */
    public record Well(WellPath path, Annulus annulus, Optional<LineBore> chokeLine) {
        public Well {
            Objects.requireNonNull(path, "path");
            Objects.requireNonNull(annulus, "annulus");
            Objects.requireNonNull(chokeLine, "chokeLine");
        }
    }

    /**
     * Friction at even steps up to a rate.
     *
     * @param well that the mud flows through
     * @param mud that flows
     * @param highest rate, m³/s, 1e-5 to 0.5
     * @param steps 1 to 1000
     * @throws staunch.units.Fault where a component of the string is plugged or the friction law does not reach
     */
    public static FrictionCurve of(Well well, FlowingMud mud, @Si("m3/s") double highest, int steps) {
        Check.within("highest flow rate", highest, 1e-5, 0.5, Measure.FLOW_RATE);
        Check.within("steps of the friction curve", steps, 1, 1000, Measure.NUMBER);
        double bottom = well.path().verticalDepth(well.annulus().bottom());
        List<Point> points = new ArrayList<>();
        for (int i = 1; i <= steps; i++) {
            double rate = highest * i / steps;
            double annulus = Hydraulics.annularLoss(well.annulus(), mud, rate);
            points.add(new Point(
                    rate,
                    annulus,
                    Hydraulics.stringLoss(well.annulus().string(), mud, rate),
                    well.chokeLine().isPresent()
                            ? OptionalDouble.of(
                                    Hydraulics.lineLoss(well.chokeLine().get(), mud, rate))
                            : OptionalDouble.empty(),
                    Hydraulics.equivalentCirculatingDensity(mud.density(), annulus, bottom)));
        }
        return new FrictionCurve(points);
    }
}
