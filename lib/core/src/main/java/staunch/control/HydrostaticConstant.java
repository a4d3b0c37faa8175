package staunch.control;

import staunch.units.Physics;
import staunch.units.Si;

/** How a hand calculation turns density and vertical depth into pressure: p = k ρ z. */
public enum HydrostaticConstant {
    /** k = g = 9.80665 m/s², the standard acceleration of gravity. */
    EXACT("exact, g 9.80665 m/s²", Physics.GRAVITY),

    /** k of 0.052 psi per foot and pound per gallon, the rounding of the trade: 0.1 % above the exact 0.0519481. */
    TRADE_0_052("trade rounding 0.052 psi/(ft ppg)", 0.052 * Foot.PSI / (Foot.LENGTH * Foot.POUND_PER_GALLON));

    /** Units of the trade, exact by definition (NIST SP 811, appendix B). */
    private static final class Foot {
        private static final double LENGTH = 0.3048;
        private static final double POUND = 0.45359237;
        private static final double INCH = 0.0254;
        private static final double PSI = POUND * Physics.GRAVITY / (INCH * INCH);
        private static final double POUND_PER_GALLON = POUND / (231 * INCH * INCH * INCH);
    }

    private final String title;
    private final double factor;

    HydrostaticConstant(String title, double factor) {
        this.title = title;
        this.factor = factor;
    }

    /** In plain words. */
    public String title() {
        return title;
    }

    /** Pressure gradient of a density: k ρ. */
    @Si("Pa/m")
    public double gradient(@Si("kg/m3") double density) {
        return factor * density;
    }

    /** Density of a pressure gradient: G / k. */
    @Si("kg/m3")
    public double density(@Si("Pa/m") double gradient) {
        return gradient / factor;
    }
}
