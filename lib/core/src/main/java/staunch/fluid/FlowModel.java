package staunch.fluid;

import java.util.List;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * How the shear stress of a mud grows with shear rate. Parameters are taken from six-speed readings as API RP 13D (2006)
 * and RP 13B-1 do (from memory): a shear rate of 1.703 1/s for 1 rpm and a stress of 1.066 lbf/100 ft² (0.510 Pa) for
 * 1 degree; the plastic viscosity and yield point of the field take 1 degree as 1 lbf/100 ft².
 */
public sealed interface FlowModel permits FlowModel.BinghamPlastic, FlowModel.PowerLaw, FlowModel.HerschelBulkley {
    /**
     * Shear stress, Pa.
     *
     * @param shearRate 0 or more, 1/s
     * @throws RangeFault where it is negative
     */
    @Si(value = "Pa", kind = Kind.STRESS)
    double shearStress(@Si("1/s") double shearRate);

    /**
     * The richest model that the readings make: Herschel–Bulkley where those at 3 and 6 rpm give its yield stress, Bingham
     * plastic from the two fast ones else.
     *
     * @throws staunch.units.InputFault where the readings do not rise
     */
    static FlowModel of(RheometerReadings readings) {
        return readings.dialReadings().keySet().containsAll(List.of(3, 6))
                ? HerschelBulkley.from(readings)
                : BinghamPlastic.from(readings);
    }

    private static double checkRate(double shearRate) {
        return Check.atLeast("shear rate", shearRate, 0, Measure.FREQUENCY);
    }

    /**
     * τ = τ₀ + μ γ.
     *
     * @param plasticViscosity μ, Pa s, 0 to 1
     * @param yieldPoint τ₀, Pa, 0 to 100
     */
    record BinghamPlastic(
            @Si("Pa.s") double plasticViscosity,
            @Si(value = "Pa", kind = Kind.STRESS) double yieldPoint) implements FlowModel {
        public BinghamPlastic {
            Check.within("plastic viscosity", plasticViscosity, 0, 1, Measure.VISCOSITY);
            Check.within("yield point", yieldPoint, 0, 100, Measure.STRESS);
        }

        /**
         * PV = θ600 − θ300 in cP, YP = θ300 − PV in lbf/100 ft².
         *
         * @throws InputFault where a reading is missing
         * @throws RangeFault where the readings give a negative yield point
         */
        public static BinghamPlastic from(RheometerReadings readings) {
            double fast = readings.at(600);
            double slow = readings.at(300);
            return new BinghamPlastic(
                    (fast - slow) * 1e-3, (2 * slow - fast) * RheometerReadings.POUND_PER_HUNDRED_SQUARE_FEET);
        }

        @Override
        @Si(value = "Pa", kind = Kind.STRESS)
        public double shearStress(@Si("1/s") double shearRate) {
            return yieldPoint + plasticViscosity * checkRate(shearRate);
        }
    }

    /**
     * τ = K γⁿ.
     *
     * @param consistency K, given as the apparent viscosity at a shear rate of 1 1/s, Pa s, 0 to 100
     * @param flowIndex n, above 0 and up to 2
     */
    record PowerLaw(@Si("Pa.s") double consistency, @Si("1") double flowIndex) implements FlowModel {
        public PowerLaw {
            Check.within("consistency", consistency, 0, 100, Measure.VISCOSITY);
            Check.within("flow index", flowIndex, Double.MIN_NORMAL, 2, Measure.NUMBER);
        }

        /**
         * n = log2(θ600/θ300), K = τ300/511ⁿ.
         *
         * @throws InputFault where a reading is missing or zero
         */
        public static PowerLaw from(RheometerReadings readings) {
            HerschelBulkley fit = HerschelBulkley.fit(readings, 0);
            return new PowerLaw(fit.consistency, fit.flowIndex);
        }

        @Override
        @Si(value = "Pa", kind = Kind.STRESS)
        public double shearStress(@Si("1/s") double shearRate) {
            return consistency * Math.pow(checkRate(shearRate), flowIndex);
        }
    }

    /**
     * τ = τ₀ + K γⁿ.
     *
     * @param yieldStress τ₀, Pa, 0 to 100
     * @param consistency K, given as the apparent viscosity at a shear rate of 1 1/s of the part above the yield stress,
     *     Pa s, 0 to 100
     * @param flowIndex n, above 0 and up to 2
     */
    record HerschelBulkley(
            @Si(value = "Pa", kind = Kind.STRESS) double yieldStress,
            @Si("Pa.s") double consistency,
            @Si("1") double flowIndex)
            implements FlowModel {
        public HerschelBulkley {
            Check.within("yield stress", yieldStress, 0, 100, Measure.STRESS);
            Check.within("consistency", consistency, 0, 100, Measure.VISCOSITY);
            Check.within("flow index", flowIndex, Double.MIN_NORMAL, 2, Measure.NUMBER);
        }

        /**
         * θy = 2 θ3 − θ6, n = log2((θ600 − θy)/(θ300 − θy)), K = (τ300 − τy)/511ⁿ.
         *
         * @throws InputFault where a reading is missing, or the readings do not rise above the yield stress
         */
        public static HerschelBulkley from(RheometerReadings readings) {
            return fit(readings, Math.max(0, 2 * readings.at(3) - readings.at(6)));
        }

        private static HerschelBulkley fit(RheometerReadings readings, double yieldDegrees) {
            double fast = readings.at(600) - yieldDegrees;
            double slow = readings.at(300) - yieldDegrees;
            if (!(slow > 0 && fast > slow)) {
                throw new InputFault(
                        "rheometer readings at 300 and 600 rpm",
                        "do not rise, or stay below the yield stress",
                        "check the readings");
            }
            double n = Math.log(fast / slow) / Math.log(2);
            double consistency =
                    slow * RheometerReadings.STRESS_PER_DEGREE / Math.pow(RheometerReadings.shearRate(300), n);
            return new HerschelBulkley(yieldDegrees * RheometerReadings.STRESS_PER_DEGREE, consistency, n);
        }

        @Override
        @Si(value = "Pa", kind = Kind.STRESS)
        public double shearStress(@Si("1/s") double shearRate) {
            return yieldStress + consistency * Math.pow(checkRate(shearRate), flowIndex);
        }
    }
}
