package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.units.Amount;
import staunch.units.Fault;
import staunch.units.Kind;
import staunch.units.Si;
import staunch.units.UnitSystem;
import staunch.units.Wording;

/** Answer to "how much gas may come in": one of five outcomes, never a bare number. */
public sealed interface Tolerance {
    /** In plain words, without numbers. */
    String summary();

    /**
     * The well holds any influx up to this volume.
     *
     * @param volume geometric volume of the annulus that it fills at shut-in, at bottom-hole conditions, m³
     * @param mass of the gas, kg
     * @param weakPoint that breaks first beyond it
     * @param stage at which it would break
     */
    record Finite(@Si("m3") double volume, @Si("kg") double mass, WeakPoint weakPoint, Stage stage)
            implements Tolerance {
        public Finite {
            Objects.requireNonNull(weakPoint, "weakPoint");
            Objects.requireNonNull(stage, "stage");
        }

        @Override
        public String summary() {
            return "limited at " + weakPoint.name() + ", " + stage.moment().title();
        }
    }

    /**
     * No influx in the open hole breaks the formation.
     *
     * @param atLeast volume of the open-hole annulus, m³
     */
    record Unlimited(@Si("m3") double atLeast) implements Tolerance {
        @Override
        public String summary() {
            return "no limit: the influx may fill the open hole";
        }
    }

    /**
     * The formation breaks with no gas in the well at all.
     *
     * @param shortfall pressure by which the limit is exceeded, Pa
     * @param weakPoint where
     * @param stage at which
     */
    record FailsOnIntensity(
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double shortfall, WeakPoint weakPoint, Stage stage)
            implements Tolerance {
        public FailsOnIntensity {
            Objects.requireNonNull(weakPoint, "weakPoint");
            Objects.requireNonNull(stage, "stage");
        }

        @Override
        public String summary() {
            return "no tolerance left: fails on intensity alone at " + weakPoint.name();
        }
    }

    /**
     * The case lacks what the calculation needs, or a model is out of its range.
     *
     * @param reason one sentence, in SI units
     * @param missing field of the case that would mend it; empty where none would
     * @param amounts quantities the reason names, in their order
     */
    record NotAssessed(String reason, String missing, List<Amount> amounts) implements Tolerance {
        public NotAssessed {
            Objects.requireNonNull(reason, "reason");
            Objects.requireNonNull(missing, "missing");
            amounts = List.copyOf(amounts);
        }

        /** A reason that names no quantity. */
        public NotAssessed(String reason, String missing) {
            this(reason, missing, List.of());
        }

        static NotAssessed of(Fault fault) {
            Wording wording = fault.wording();
            return new NotAssessed(wording.text(), "", wording.amounts());
        }

        /** The reason in the given units. */
        public String reason(UnitSystem units) {
            return new Wording(reason, amounts).in(units);
        }

        @Override
        public String summary() {
            return "not assessed: " + reason;
        }
    }

    /**
     * The section is drilled without the means to shut in, so it has no tolerance.
     *
     * @param drilling how it is drilled
     */
    record NotShutIn(Drilling drilling) implements Tolerance {
        public NotShutIn {
            Objects.requireNonNull(drilling, "drilling");
        }

        @Override
        public String summary() {
            return "not shut in: " + drilling.title();
        }
    }
}
