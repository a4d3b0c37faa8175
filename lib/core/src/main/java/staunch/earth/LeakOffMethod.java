package staunch.earth;

import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/** How leak-off is picked from the curve of a pumping test. */
public sealed interface LeakOffMethod permits LeakOffMethod.Departure, LeakOffMethod.TwoLines {
    /**
     * Departure from the straight build-up, the default. A straight line is fitted by least squares to the readings between
     * two shares of the greatest pressure. Leak-off is the last reading that lies no more than the tolerance below the line,
     * after which every reading up to the greatest pressure lies farther below. Common practice in reading such curves; the
     * shares and the tolerance are choices.
     *
     * @param from share of the greatest pressure at which the straight part begins, 0 to 0.9
     * @param to share at which it ends, above from, to 1
     * @param tolerance Pa, 1 kPa to 5 MPa
     */
    record Departure(
            @Si("1") double from,
            @Si("1") double to,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double tolerance) implements LeakOffMethod {
        /** Straight from 20 % to 60 % of the greatest pressure; 100 kPa, about 15 psi. */
        public static final Departure DEFAULT = new Departure(0.2, 0.6, 1e5);

        public Departure {
            Check.within("begin of the straight build-up", from, 0, 0.9, Measure.NUMBER);
            Check.within("end of the straight build-up", to, 0, 1, Measure.NUMBER);
            Check.within("tolerance of the departure", tolerance, 1e3, 5e6, Measure.PRESSURE_DIFFERENCE);
            if (to <= from) {
                throw new InputFault("straight build-up", "ends where it begins", "give its end above its begin");
            }
        }
    }

    /**
     * Where two straight lines meet: of all ways to part the readings, from the begin of the straight build-up to the
     * greatest pressure, into two runs of at least three, the one whose two least-squares lines leave the smallest sum of
     * squares. Leak-off is the intersection. It lies at or above a departure, and tells less where the curve bends slowly.
     *
     * @param from share of the greatest pressure at which the straight part begins, 0 to 0.9
     * @param bend least ratio by which the second line has to be less steep, 0.02 to 0.9: 0.2 for a fifth
     */
    record TwoLines(@Si("1") double from, @Si("1") double bend) implements LeakOffMethod {
        /** Straight from 20 % of the greatest pressure; the second line less steep by a fifth. */
        public static final TwoLines DEFAULT = new TwoLines(0.2, 0.2);

        public TwoLines {
            Check.within("begin of the straight build-up", from, 0, 0.9, Measure.NUMBER);
            Check.within("bend between the two lines", bend, 0.02, 0.9, Measure.NUMBER);
        }
    }
}
