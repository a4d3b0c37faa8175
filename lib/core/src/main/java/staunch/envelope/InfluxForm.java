package staunch.envelope;

import staunch.units.Check;
import staunch.units.Measure;
import staunch.units.Si;

/** How the gas of an influx stands in the annulus. */
public sealed interface InfluxForm {
    /** In plain words. */
    String title();

    /** One bubble that fills the annulus. */
    record SingleBubble() implements InfluxForm {
        @Override
        public String title() {
            return "single continuous bubble";
        }
    }

    /**
     * Gas spread evenly in mud, both rising together; volumes of the influx are those of its gas.
     *
     * @param gasFraction part of the annulus that gas fills at the influx at shut-in, 0.05 to 1
     */
    record Distributed(@Si("1") double gasFraction) implements InfluxForm {
        public Distributed {
            Check.within("gas fraction of a distributed influx", gasFraction, 0.05, 1, Measure.NUMBER);
        }

        @Override
        public String title() {
            return "distributed: gas spread evenly in mud at a named fraction, no slip; volumes are those of the gas";
        }
    }
}
