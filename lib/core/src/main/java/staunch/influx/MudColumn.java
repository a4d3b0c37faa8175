package staunch.influx;

import staunch.earth.TemperatureProfile;
import staunch.fluid.Mud;
import staunch.fluid.MudExpansion;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * Static pressure in a continuous column of mud.
 *
 * <p>Constant density: p₂ = p₁ + ρ g (z₂ − z₁). With compressibility c and thermal expansion α (constant coefficients),
 * dp/dz = g ρ₀ exp(c (p − p₀) − α (T − T₀)) has the closed form
 * exp(−c p₂) = exp(−c p₁) − c g ρ₀ exp(−c p₀) ∫ exp(−α (T − T₀)) dz; the integral is exact on each straight stretch of
 * the temperature profile.
 */
public final class MudColumn {
    private final double density;
    private final MudExpansion expansion;
    private final double[] kinkDepth;
    private final double[] kinkTemperature;

    private MudColumn(double density, MudExpansion expansion, double[] kinkDepth, double[] kinkTemperature) {
        this.density = density;
        this.expansion = expansion;
        this.kinkDepth = kinkDepth;
        this.kinkTemperature = kinkTemperature;
    }

    /** Column of constant density, kg/m³. */
    public static MudColumn constant(@Si("kg/m3") double density) {
        return new MudColumn(Check.within("mud density", density, 500, 3000, Measure.DENSITY), null, null, null);
    }

    /** Column of a mud at its stated density, whatever expansion the case gives. */
    public static MudColumn constant(Mud mud) {
        return constant(mud.density());
    }

    /** Column whose density moves with pressure and temperature where the mud says how; constant otherwise. */
    public static MudColumn expanding(Mud mud, TemperatureProfile temperature) {
        return mud.expansion()
                .map(e -> new MudColumn(mud.density(), e, temperature.depths(), temperature.temperatures()))
                .orElseGet(() -> constant(mud));
    }

    /** Stated density. */
    @Si("kg/m3")
    public double density() {
        return density;
    }

    /** Whether the density is the same at every depth. */
    public boolean isConstant() {
        return expansion == null;
    }

    /**
     * Pressure at one vertical depth from that at another.
     *
     * @param from vertical depth where the pressure is known, m
     * @param pressure there, Pa absolute
     * @param to vertical depth asked for, m; above or below
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double pressure(
            @Si(value = "m", kind = Kind.DEPTH) double from,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "m", kind = Kind.DEPTH) double to) {
        if (expansion == null) {
            return pressure + density * Physics.GRAVITY * (to - from);
        }
        double weight = Physics.GRAVITY * density * thermalIntegral(from, to);
        double c = expansion.compressibility();
        if (c == 0) {
            return pressure + weight;
        }
        double excess = pressure - expansion.referencePressure();
        // -log1p form keeps all digits: c·Δp is small.
        return pressure - Math.log1p(-c * weight * Math.exp(c * excess)) / c;
    }

    /** Pressure at a depth below a free surface at the datum. */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double hydrostatic(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        return pressure(0, Physics.ATMOSPHERE, verticalDepth);
    }

    /** Signed integral of exp(−α (T − T₀)) over depth. */
    private double thermalIntegral(double from, double to) {
        if (to < from) {
            return -thermalIntegral(to, from);
        }
        double alpha = expansion.thermalExpansion();
        if (alpha == 0 || from == to) {
            return to - from;
        }
        if (kinkDepth.length == 1) {
            return (to - from) * Math.exp(-alpha * (kinkTemperature[0] - expansion.referenceTemperature()));
        }
        Check.within("depth asked of the temperature profile", from, kinkDepth[0], last(), Measure.DEPTH);
        Check.within("depth asked of the temperature profile", to, kinkDepth[0], last(), Measure.DEPTH);
        double sum = 0;
        for (int i = 0; i + 1 < kinkDepth.length; i++) {
            double a = Math.max(from, kinkDepth[i]);
            double b = Math.min(to, kinkDepth[i + 1]);
            if (b > a) {
                double slope = (kinkTemperature[i + 1] - kinkTemperature[i]) / (kinkDepth[i + 1] - kinkDepth[i]);
                double atA = Math.exp(
                        -alpha * (kinkTemperature[i] + slope * (a - kinkDepth[i]) - expansion.referenceTemperature()));
                double x = -alpha * slope * (b - a);
                // (exp(x) − 1)/x with its limit 1 at x = 0.
                sum += atA * (b - a) * (x == 0 ? 1 : Math.expm1(x) / x);
            }
        }
        return sum;
    }

    private double last() {
        return kinkDepth[kinkDepth.length - 1];
    }
}
