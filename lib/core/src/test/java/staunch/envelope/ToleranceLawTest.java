package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import staunch.envelope.MethodOptions.GasModel;
import staunch.units.Physics;

class ToleranceLawTest {
    static MethodOptions ideal() {
        return MethodOptions.DEFAULT.withGasModel(GasModel.IDEAL);
    }

    @Test
    void equalsTheClosedFormOfAnIdealIsothermalGasInAUniformVerticalAnnulus() {
        double t = 350;
        Tolerance tolerance = Wells.standard().isothermal(t).options(ideal()).drilled();
        double g = Physics.GRAVITY;
        double k = g * 0.65 * Physics.MOLAR_MASS_AIR / (Physics.GAS_CONSTANT * t);
        double area = Math.PI / 4 * (Wells.HOLE * Wells.HOLE - Wells.PIPE * Wells.PIPE);
        double pf = Wells.pressure(Wells.MUD + 60, Wells.BOTTOM);
        double limit = Wells.pressure(1860, Wells.SHOE);
        // Lower end s below the shoe: limit exp(k s) = pf − ρ g (L − s); Newton on a convex function.
        double length = Wells.BOTTOM - Wells.SHOE;
        double s = 0;
        for (int i = 0; i < 50; i++) {
            double f = limit * Math.exp(k * s) - pf + Wells.MUD * g * (length - s);
            s -= f / (k * limit * Math.exp(k * s) - Wells.MUD * g);
        }
        double mass = area * limit * Math.expm1(k * s) / g;
        double height = -Math.log1p(-mass * g / (area * pf)) / k;
        Tolerance.Finite finite = (Tolerance.Finite) tolerance;
        assertEquals(mass, finite.mass(), 1e-9 * mass);
        assertEquals(area * height, finite.volume(), 1e-9 * area * height);
        assertEquals(Stage.Moment.TOP_AT_WEAK_POINT, finite.stage().moment());
    }
}
