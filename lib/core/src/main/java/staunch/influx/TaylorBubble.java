package staunch.influx;

import staunch.units.InputFault;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.units.Si;
import staunch.units.Source;

/**
 * A long bubble that fills the channel, where neither viscosity nor surface tension holds it back. v_d = Fr √(g D Δρ/ρ)
 * times the factor of inclination √cos θ (1 + sin θ)^1.2 (A.R. Hasan and C.S. Kabir, SPE Production Engineering, 1988).
 *
 * <p>Range: Eötvös number Δρ g D²/σ of at least 70, taken with the surface tension of clean water (0.0728 N/m) which no
 * mud exceeds; inverse viscosity number √(D³ g Δρ ρ)/μ of at least 300 (both limits after G.B. Wallis, "One-dimensional
 * Two-phase Flow", 1969); inclination up to 75°, the steepest that the reference values of this library reach; the
 * authors exclude near-horizontal holes without giving a number. Constants, factor and limits are from memory. The
 * distribution parameter is that of turbulent flow, 1.2 (D.J. Nicklin, J.O. Wilkes and J.F. Davidson, Transactions of the
 * Institution of Chemical Engineers 40, 1962).
 *
 * <p>Outside the range each law throws a {@link RangeFault}.
 */
public enum TaylorBubble implements SlipLaw {
    /** Round bore: v = 0.345 √(g D Δρ/ρ). */
    PIPE(
            "Taylor bubble in a bore",
            source("R.M. Davies and G.I. Taylor 1950; D.T. Dumitrescu 1943; Nicklin et al. 1962")) {
        @Override
        double vertical(SlipConditions c) {
            if (c.channel().isAnnulus()) {
                throw new InputFault(
                        "flow channel",
                        "has pipe in it, but the law is for a bore alone",
                        "choose a Taylor bubble for an annulus");
            }
            return FROUDE * speed(c, c.channel().boreDiameter());
        }
    },
    /** Annulus: v = (0.345 + 0.1 d/D) √(g D Δρ/ρ); the form for a bore where d = 0. */
    ANNULUS_HASAN_KABIR(
            "Taylor bubble in an annulus, Hasan and Kabir",
            source("A.R. Hasan and C.S. Kabir, International Journal of Multiphase Flow 18 (1992) 279")) {
        @Override
        double vertical(SlipConditions c) {
            double bore = c.channel().boreDiameter();
            return (FROUDE + 0.1 * c.channel().pipeDiameter() / bore) * speed(c, bore);
        }
    },
    /** Annulus: v = 0.345 √(g (D + d) Δρ/ρ), D + d being the wetted perimeter over π. */
    ANNULUS_SADATOMI(
            "Taylor bubble in an annulus, Sadatomi, Sato and Saruwatari",
            source("M. Sadatomi, Y. Sato and S. Saruwatari, International Journal of Multiphase Flow 8 (1982) 641")) {
        @Override
        double vertical(SlipConditions c) {
            return FROUDE * speed(c, c.channel().boreDiameter() + c.channel().pipeDiameter());
        }
    };

    private static final double FROUDE = 0.345;
    private static final double WATER_SURFACE_TENSION = 0.0728;
    private static final double LOWEST_EOTVOS = 70;
    private static final double LOWEST_INVERSE_VISCOSITY = 300;
    private static final double STEEPEST = Math.toRadians(75);

    private final String description;
    private final Source source;

    TaylorBubble(String description, Source source) {
        this.description = description;
        this.source = source;
    }

    private static Source source(String document) {
        return new Source(document, "constants from memory");
    }

    abstract double vertical(SlipConditions conditions);

    @Override
    @Si("1")
    public double distributionParameter(SlipConditions conditions) {
        return 1.2;
    }

    @Override
    @Si("m/s")
    public double driftVelocity(SlipConditions conditions) {
        checkRange(conditions);
        return vertical(conditions) * inclinationFactor(conditions.inclination());
    }

    /**
     * Factor of inclination on the rise of a Taylor bubble: √cos θ (1 + sin θ)^1.2.
     *
     * @param inclination from vertical, rad, 0 to 75°
     * @throws RangeFault beyond 75°
     */
    @Si("1")
    public static double inclinationFactor(@Si("rad") double inclination) {
        if (!(inclination >= 0 && inclination <= STEEPEST * (1 + 1e-12))) {
            throw new RangeFault(
                    "inclination of the Taylor bubble",
                    inclination,
                    0,
                    STEEPEST,
                    Measure.ANGLE,
                    "give a measured rise rate for a hole so near to horizontal");
        }
        return Math.sqrt(Math.cos(inclination)) * Math.pow(1 + Math.sin(inclination), 1.2);
    }

    private static double speed(SlipConditions c, double length) {
        return Math.sqrt(Physics.GRAVITY * length * c.lift() / c.mudDensity());
    }

    private static void checkRange(SlipConditions c) {
        double d = c.channel().boreDiameter();
        atLeast(
                "Eötvös number of the Taylor bubble",
                c.lift() * Physics.GRAVITY * d * d / WATER_SURFACE_TENSION,
                LOWEST_EOTVOS,
                "surface tension would slow the bubble");
        atLeast(
                "inverse viscosity number of the Taylor bubble",
                Math.sqrt(d * d * d * Physics.GRAVITY * c.lift() * c.mudDensity()) / c.mudViscosity(),
                LOWEST_INVERSE_VISCOSITY,
                "the mud is too viscous for this law; give a measured rise rate");
    }

    private static void atLeast(String field, double value, double lowest, String advice) {
        if (!(value >= lowest)) {
            throw new RangeFault(field, value, lowest, Double.POSITIVE_INFINITY, Measure.NUMBER, advice);
        }
    }

    @Override
    public String description() {
        return description;
    }

    @Override
    public Source source() {
        return source;
    }
}
