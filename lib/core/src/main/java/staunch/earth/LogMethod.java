package staunch.earth;

import java.util.Objects;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Measure;
import staunch.units.Si;

/** How pore pressure is read from a log of shale. */
public sealed interface LogMethod {
    /** The curve that it reads. */
    LogProperty property();

    /** In plain words. */
    String title();

    /**
     * Eaton's equations, see {@link PorePressureMethod}.
     *
     * @param method which of them
     * @param exponent n, 0.3 to 6; empty for that of the paper
     * @param calibrated whether n is that of the formation pressures measured in the well, where there are any; the exponent
     *     otherwise
     */
    record Eaton(PorePressureMethod method, @Si("1") OptionalDouble exponent, boolean calibrated) implements LogMethod {
        public Eaton {
            Objects.requireNonNull(method, "method");
            if (method == PorePressureMethod.EATON_DRILLING_EXPONENT) {
                throw new InputFault("method", "reads no curve of a log", "choose resistivity or sonic");
            }
            exponent.ifPresent(n -> Check.within("exponent of Eaton's equation", n, 0.3, 6, Measure.NUMBER));
        }

        @Override
        public LogProperty property() {
            return method == PorePressureMethod.EATON_SONIC ? LogProperty.SLOWNESS : LogProperty.RESISTIVITY;
        }

        @Override
        public String title() {
            return "Eaton, " + property().title();
        }

        double exponentWithoutPoints() {
            return exponent.orElse(method.exponent());
        }
    }

    /**
     * Equivalent depth, see {@link PorePressureMethod#byEquivalentDepth}.
     *
     * @param property curve that it reads
     */
    record EquivalentDepth(LogProperty property) implements LogMethod {
        public EquivalentDepth {
            Objects.requireNonNull(property, "property");
        }

        @Override
        public String title() {
            return "equivalent depth, " + property.title();
        }
    }
}
