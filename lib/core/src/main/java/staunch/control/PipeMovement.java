package staunch.control;

import java.util.Objects;
import staunch.influx.FlowChannel;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.well.Annulus;
import staunch.well.StringComponent;
import staunch.well.StringGeometry;

/**
 * A string that moves steadily through mud at rest, and the swab or surge it causes (J.A. Burkhardt, Journal of Petroleum
 * Technology, 1961; form and constants as in N.J. Lapeyrouse, "Formulas and Calculations for Drilling, Production and
 * Workover", surge and swab, method 1). The mud is driven past the pipe with V = p (c + r) V_pipe: r from what the pipe
 * displaces, c the mud that clings to it, p the peak of a stand's speed over its mean. The pressure is that of {@link
 * Friction} at that velocity, summed over the annulus; the inertia of the mud and the breaking of its gel are not counted.
 *
 * @param speed mean speed of the pipe, m/s, 0.001 to 10
 * @param direction running in or pulling out
 * @param end open or plugged
 * @param clinging constant c, 0 to 0.5 ({@link #CLINGING} is the usual one)
 * @param peak ratio p, 1 to 3 ({@link #PEAK} is the usual one)
 */
public record PipeMovement(
        @Si("m/s") double speed,
        Direction direction,
        End end,
        @Si("1") double clinging,
        @Si("1") double peak) {
    /** Clinging constant of the hand method. */
    public static final double CLINGING = 0.45;

    /** Peak over mean speed of the hand method. */
    public static final double PEAK = 1.5;

    public PipeMovement {
        Check.within("speed of the pipe", speed, 1e-3, 10, Measure.SPEED);
        Objects.requireNonNull(direction, "direction");
        Objects.requireNonNull(end, "end");
        Check.within("clinging constant", clinging, 0, 0.5, Measure.NUMBER);
        Check.within("peak over mean speed of the pipe", peak, 1, 3, Measure.NUMBER);
    }

    /** Movement with the usual clinging constant and peak. */
    public static PipeMovement of(@Si("m/s") double speed, Direction direction, End end) {
        return new PipeMovement(speed, direction, end, CLINGING, PEAK);
    }

    /** Which way the pipe moves. */
    public enum Direction {
        /** Surge: pressure rises below. */
        RUNNING_IN("running in", 1),
        /** Swab: pressure falls below. */
        PULLING_OUT("pulling out", -1);

        private final String title;
        private final int sign;

        Direction(String title, int sign) {
            this.title = title;
            this.sign = sign;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /** End of the pipe. */
    public enum End {
        /** Plugged, or with a float that holds: r = d²/(D² − d²). */
        PLUGGED("plugged") {
            @Override
            double displaced(FlowChannel channel, double insideDiameter) {
                return square(channel.pipeDiameter())
                        / (square(channel.boreDiameter()) - square(channel.pipeDiameter()));
            }
        },
        /** Open, levels inside and outside equal: r = (d² − d_i²)/(D² − d² + d_i²). */
        OPEN("open") {
            @Override
            double displaced(FlowChannel channel, double insideDiameter) {
                double steel = square(channel.pipeDiameter()) - square(insideDiameter);
                return steel / (square(channel.boreDiameter()) - steel);
            }
        };

        private final String title;

        End(String title) {
            this.title = title;
        }

        abstract double displaced(FlowChannel channel, double insideDiameter);

        private static double square(double x) {
            return x * x;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /**
     * Mean velocity of the mud past the pipe: (c + r) V_pipe.
     *
     * @param insideDiameter of the pipe, m, 0 to its outside diameter; it counts for an open end alone
     */
    @Si("m/s")
    public double meanVelocity(FlowChannel channel, @Si(value = "m", kind = Kind.DIAMETER) double insideDiameter) {
        Check.within("inside diameter of the pipe", insideDiameter, 0, channel.pipeDiameter(), Measure.DIAMETER);
        return (clinging + end.displaced(channel, insideDiameter)) * speed;
    }

    /** Greatest velocity of the mud past the pipe: p times the mean. */
    @Si("m/s")
    public double peakVelocity(FlowChannel channel, @Si(value = "m", kind = Kind.DIAMETER) double insideDiameter) {
        return peak * meanVelocity(channel, insideDiameter);
    }

    /**
     * Change of pressure at the bit and below it: positive while running in, negative while pulling out.
     *
     * @throws staunch.units.Fault where there is no pipe in the annulus
     */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public double pressureChange(Annulus annulus, FlowingMud mud) {
        StringGeometry string = annulus.string();
        Check.within("number of string components in the hole", string.count(), 1, 10_000, Measure.NUMBER);
        double loss = 0;
        for (int i = 0; i < annulus.count(); i++) {
            if (annulus.pipeDiameter(i) > 0) {
                FlowChannel channel = Hydraulics.channel(annulus, i);
                double middle = 0.5 * (annulus.top(i) + annulus.bottom(i));
                double velocity =
                        peakVelocity(channel, componentAt(string, middle).insideDiameter());
                loss += (annulus.bottom(i) - annulus.top(i))
                        * Friction.at(channel, mud, velocity).gradient();
            }
        }
        return direction.sign * loss;
    }

    private static StringComponent componentAt(StringGeometry string, double measuredDepth) {
        int i = 0;
        while (i < string.count() - 1 && string.bottom(i) < measuredDepth) {
            i++;
        }
        return string.component(i);
    }

    /**
     * Clinging constant of a Newtonian fluid in laminar flow, exact: with α = d/D, the mean velocity that the moving pipe
     * drags along is (α² − 2 α² ln α − 1)/(2 (1 − α²) ln α) of its speed (Burkhardt 1961). Towards 0.5 in a narrow gap.
     */
    @Si("1")
    public static double laminarClinging(FlowChannel channel) {
        double alpha = channel.pipeDiameter() / channel.boreDiameter();
        Check.within("pipe over bore", alpha, 0.01, 0.99, Measure.NUMBER);
        double square = alpha * alpha;
        double log = Math.log(alpha);
        return (square - 2 * square * log - 1) / (2 * (1 - square) * log);
    }
}
