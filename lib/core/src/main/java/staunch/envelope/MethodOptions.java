package staunch.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import staunch.control.CirculationMethod;
import staunch.earth.EquivalentZero;
import staunch.fluid.DeviationFactor;
import staunch.fluid.FixedGradientGas;
import staunch.fluid.Gas;
import staunch.fluid.GasComposition;
import staunch.fluid.IdealGas;
import staunch.fluid.PseudoCriticalCorrelation;
import staunch.fluid.RealGas;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * The choices of method on which the trade differs. Each is shown in every result; {@link #DEFAULT} holds the defaults.
 *
 * @param definition what counts as kick tolerance
 * @param drilledPressure how the formation pressure of a drilled kick is set
 * @param weakPoint which depths may break
 * @param estimates which end of the ranges of pore pressure and strength decides
 * @param gasModel how the gas behaves
 * @param method of circulating out
 * @param mudDensity constant or moving with pressure and temperature
 * @param maspBasis how the maximum anticipated surface pressure is found
 * @param equivalentDensityFrom where the equivalent mud weights of results count from
 * @param influx how its gas stands in the annulus
 * @param annularFriction whether friction in the annulus loads the formation while circulating
 * @param seawaterCredit whether the sea outside counts as back-up of a subsea wellhead and BOP
 * @param depthStep greatest distance between depths at which tolerance along the section is computed, m
 * @param depthCount least number of such depths
 */
public record MethodOptions(
        ToleranceDefinition definition,
        DrilledPressure drilledPressure,
        WeakPointChoice weakPoint,
        Estimates estimates,
        GasModel gasModel,
        CirculationMethod method,
        MudDensityModel mudDensity,
        MaspBasis maspBasis,
        EquivalentZero.Place equivalentDensityFrom,
        InfluxForm influx,
        AnnularFriction annularFriction,
        boolean seawaterCredit,
        @Si(value = "m", kind = Kind.LENGTH) double depthStep,
        int depthCount) {
    /** The stated defaults. */
    public static final MethodOptions DEFAULT = new MethodOptions(
            ToleranceDefinition.WHOLE_DISPLACEMENT,
            DrilledPressure.GREATER_OF_INTENSITY_AND_PORE_PRESSURE,
            WeakPointChoice.ALL_EXPOSED_DEPTHS,
            Estimates.HIGH_PORE_LOW_STRENGTH,
            GasModel.DRANCHUK_ABOU_KASSEM,
            CirculationMethod.DRILLERS,
            MudDensityModel.CONSTANT,
            new MaspBasis.GasToSurface(),
            EquivalentZero.Place.DATUM,
            new InfluxForm.SingleBubble(),
            AnnularFriction.NEGLECTED,
            false,
            30.0,
            200);

    public MethodOptions {
        Objects.requireNonNull(definition, "definition");
        Objects.requireNonNull(drilledPressure, "drilledPressure");
        Objects.requireNonNull(weakPoint, "weakPoint");
        Objects.requireNonNull(estimates, "estimates");
        Objects.requireNonNull(gasModel, "gasModel");
        Objects.requireNonNull(method, "method");
        Objects.requireNonNull(mudDensity, "mudDensity");
        Objects.requireNonNull(maspBasis, "maspBasis");
        Objects.requireNonNull(equivalentDensityFrom, "equivalentDensityFrom");
        Objects.requireNonNull(influx, "influx");
        Objects.requireNonNull(annularFriction, "annularFriction");
        Check.within("depth step", depthStep, 0.1, 1000, Measure.LENGTH);
        Check.within("number of depths", depthCount, 1, 10_000, Measure.NUMBER);
    }

    /** The same choices with another definition of kick tolerance. */
    public MethodOptions withDefinition(ToleranceDefinition other) {
        return with(choices -> choices.definition = other);
    }

    /** The same choices with another basis of the drilled kick. */
    public MethodOptions withDrilledPressure(DrilledPressure other) {
        return with(choices -> choices.drilledPressure = other);
    }

    /** The same choices with another choice of weak points. */
    public MethodOptions withWeakPoint(WeakPointChoice other) {
        return with(choices -> choices.weakPoint = other);
    }

    /** The same choices with another end of the ranges. */
    public MethodOptions withEstimates(Estimates other) {
        return with(choices -> choices.estimates = other);
    }

    /** The same choices with another gas model. */
    public MethodOptions withGasModel(GasModel other) {
        return with(choices -> choices.gasModel = other);
    }

    /** The same choices with another method of circulating out. */
    public MethodOptions withMethod(CirculationMethod other) {
        return with(choices -> choices.method = other);
    }

    /** The same choices with another model of the mud density. */
    public MethodOptions withMudDensity(MudDensityModel other) {
        return with(choices -> choices.mudDensity = other);
    }

    /** The same choices with another basis of the maximum anticipated surface pressure. */
    public MethodOptions withMaspBasis(MaspBasis other) {
        return with(choices -> choices.maspBasis = other);
    }

    /** The same choices with equivalent mud weights of results counted from elsewhere. */
    public MethodOptions withEquivalentDensityFrom(EquivalentZero.Place other) {
        return with(choices -> choices.equivalentDensityFrom = other);
    }

    /** The same choices with another form of the influx. */
    public MethodOptions withInflux(InfluxForm other) {
        return with(choices -> choices.influx = other);
    }

    /** The same choices with friction in the annulus counted or not. */
    public MethodOptions withAnnularFriction(AnnularFriction other) {
        return with(choices -> choices.annularFriction = other);
    }

    /** The same choices with the sea outside a subsea wellhead and BOP counted or not. */
    public MethodOptions withSeawaterCredit(boolean counted) {
        return with(choices -> choices.seawaterCredit = counted);
    }

    /** The same choices with other depths along the section. */
    public MethodOptions withDepths(@Si(value = "m", kind = Kind.LENGTH) double step, int count) {
        return with(choices -> {
            choices.depthStep = step;
            choices.depthCount = count;
        });
    }

    private MethodOptions with(Consumer<Choices> change) {
        Choices choices = new Choices(this);
        change.accept(choices);
        return choices.options();
    }

    /** The choices while one of them is changed. */
    private static final class Choices {
        private ToleranceDefinition definition;
        private DrilledPressure drilledPressure;
        private WeakPointChoice weakPoint;
        private Estimates estimates;
        private GasModel gasModel;
        private CirculationMethod method;
        private MudDensityModel mudDensity;
        private MaspBasis maspBasis;
        private EquivalentZero.Place equivalentDensityFrom;
        private InfluxForm influx;
        private AnnularFriction annularFriction;
        private boolean seawaterCredit;
        private double depthStep;
        private int depthCount;

        Choices(MethodOptions from) {
            this.definition = from.definition;
            this.drilledPressure = from.drilledPressure;
            this.weakPoint = from.weakPoint;
            this.estimates = from.estimates;
            this.gasModel = from.gasModel;
            this.method = from.method;
            this.mudDensity = from.mudDensity;
            this.maspBasis = from.maspBasis;
            this.equivalentDensityFrom = from.equivalentDensityFrom;
            this.influx = from.influx;
            this.annularFriction = from.annularFriction;
            this.seawaterCredit = from.seawaterCredit;
            this.depthStep = from.depthStep;
            this.depthCount = from.depthCount;
        }

        MethodOptions options() {
            return new MethodOptions(
                    definition,
                    drilledPressure,
                    weakPoint,
                    estimates,
                    gasModel,
                    method,
                    mudDensity,
                    maspBasis,
                    equivalentDensityFrom,
                    influx,
                    annularFriction,
                    seawaterCredit,
                    depthStep,
                    depthCount);
        }
    }

    /** Choices other than the defaults that bear on the answers, in plain words; empty where all are the defaults. */
    public List<String> departures() {
        List<String> list = new ArrayList<>();
        departure(list, "kick tolerance", definition, DEFAULT.definition, definition.title());
        departure(list, "drilled kick", drilledPressure, DEFAULT.drilledPressure, drilledPressure.title());
        departure(list, "weak point", weakPoint, DEFAULT.weakPoint, weakPoint.title());
        departure(list, "estimates", estimates, DEFAULT.estimates, estimates.title());
        departure(list, "gas", gasModel, DEFAULT.gasModel, gasModel.title());
        departure(list, "circulation", method, DEFAULT.method, method.title());
        departure(list, "mud density", mudDensity, DEFAULT.mudDensity, mudDensity.title());
        departure(list, "MASP", maspBasis, DEFAULT.maspBasis, maspBasis.title());
        departure(
                list,
                "equivalent mud weights",
                equivalentDensityFrom,
                DEFAULT.equivalentDensityFrom,
                "from " + equivalentDensityFrom.title());
        departure(list, "influx", influx, DEFAULT.influx, influx.title());
        departure(list, "annular friction", annularFriction, DEFAULT.annularFriction, annularFriction.title());
        departure(list, "sea outside the stack", seawaterCredit, DEFAULT.seawaterCredit, "counts as back-up");
        return list;
    }

    private static void departure(List<String> list, String subject, Object chosen, Object usual, String title) {
        if (!chosen.equals(usual)) {
            list.add(subject + ": " + title);
        }
    }

    /** What counts as kick tolerance. */
    public enum ToleranceDefinition {
        WHOLE_DISPLACEMENT("holds at every stage from shut-in until the gas is past the weak point"),
        ON_BOTTOM("holds at shut-in with the influx on bottom only"),
        TOP_AT_WEAK_POINT(
                "holds with the top of the influx at the weak point only, brought back to bottom by Boyle's law");

        private final String title;

        ToleranceDefinition(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /** How the formation pressure of a drilled kick is set. */
    public enum DrilledPressure {
        GREATER_OF_INTENSITY_AND_PORE_PRESSURE("greater of mud plus intensity and pore pressure"),
        INTENSITY_ONLY("mud plus intensity"),
        PORE_PRESSURE_ONLY("pore pressure"),
        INTENSITY_ABOVE_PORE_PRESSURE("pore pressure plus intensity");

        private final String title;

        DrilledPressure(String title) {
            this.title = title;
        }

        boolean needsIntensity() {
            return this != PORE_PRESSURE_ONLY;
        }

        boolean needsPorePressure() {
            return this != INTENSITY_ONLY;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /** Which depths may break. */
    public enum WeakPointChoice {
        ALL_EXPOSED_DEPTHS("all exposed depths"),
        SHOE_ONLY("casing shoe only");

        private final String title;

        WeakPointChoice(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /** Which end of the ranges decides. */
    public enum Estimates {
        HIGH_PORE_LOW_STRENGTH("high pore pressure with low strength"),
        LIKELY("likely pore pressure with likely strength");

        private final String title;

        Estimates(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /** How the gas behaves. */
    public enum GasModel {
        DRANCHUK_ABOU_KASSEM("real gas, Dranchuk–Abou-Kassem with Sutton pseudo-criticals"),
        HALL_YARBOROUGH("real gas, Hall–Yarborough with Sutton pseudo-criticals"),
        IDEAL("ideal gas"),
        FIXED_GRADIENT("fixed gas gradient of 0.1 psi/ft (2.26 kPa/m) with Boyle's law");

        private final String title;

        /** Gradient of the hand formula's gas, Pa/m: 0.1 psi/ft, common practice. */
        private static final double HAND_GRADIENT = 0.1 * 6894.757293168 / 0.3048;

        GasModel(String title) {
            this.title = title;
        }

        boolean needsTemperature() {
            return this != FIXED_GRADIENT;
        }

        /** The gas of an influx by this model; empty where it needs the composition and that is not known. */
        Optional<Gas> gas(Optional<GasComposition> composition) {
            return switch (this) {
                case DRANCHUK_ABOU_KASSEM ->
                    composition.map(c ->
                            RealGas.of(c, PseudoCriticalCorrelation.SUTTON_1985, DeviationFactor.DRANCHUK_ABOU_KASSEM));
                case HALL_YARBOROUGH ->
                    composition.map(
                            c -> RealGas.of(c, PseudoCriticalCorrelation.SUTTON_1985, DeviationFactor.HALL_YARBOROUGH));
                case IDEAL -> composition.map(IdealGas::of);
                case FIXED_GRADIENT -> Optional.of(FixedGradientGas.ofGradient(HAND_GRADIENT));
            };
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /** Whether mud density moves with pressure and temperature. */
    public enum MudDensityModel {
        CONSTANT("constant at its stated value"),
        PRESSURE_AND_TEMPERATURE(
                "moving with pressure and temperature where the case gives compressibility and expansion");

        private final String title;

        MudDensityModel(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /** Whether friction in the annulus loads the formation while circulating. */
    public enum AnnularFriction {
        NEGLECTED("neglected, with a warning where it exceeds 50 psi (3.4 bar)"),
        COUNTED(
                "counted: the drill-pipe pressure schedule holds it on bottom, so that each depth bears the friction above it");

        private final String title;

        AnnularFriction(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }
}
