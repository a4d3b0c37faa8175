package staunch.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.units.Physics;
import staunch.units.RangeFault;

class RockEstimatesTest {
    private static final RockEstimates.Sediment SEDIMENT = new RockEstimates.Sediment(0.6, 2000, 2650, 1030);

    @Property(tries = 100, seed = "1")
    void theFractureGradientLiesBetweenPorePressureAndOverburden(
            @ForAll @DoubleRange(min = 9500, max = 24_000) double pore,
            @ForAll @DoubleRange(min = 0.05, max = 0.5) double ratio) {
        double gradient = RockEstimates.eatonFractureGradient(24_000, pore, ratio);
        assertTrue(gradient >= pore && gradient <= 24_000 + 1e-9);
    }

    @Property(tries = 100, seed = "1")
    void overburdenGrowsByTheLocalDensity(@ForAll @DoubleRange(min = 10, max = 8000) double depth) {
        double h = 0.5;
        double slope = (SEDIMENT.overburden(depth + h) - SEDIMENT.overburden(depth - h)) / (2 * h);
        double porosity = 0.6 * Math.exp(-depth / 2000);
        double density = (1 - porosity) * 2650 + porosity * 1030;
        // Central difference: error of order (h / λ)², below 1e-7.
        assertEquals(Physics.GRAVITY * density, slope, 1e-6 * slope);
    }

    @Test
    void faultsOutsideTheirRange() {
        assertThrows(RangeFault.class, () -> RockEstimates.eatonFractureGradient(24_000, 25_000, 0.4));
        assertThrows(RangeFault.class, () -> RockEstimates.gardnerDensity(800));
        assertThrows(RangeFault.class, () -> RockEstimates.traugottMeanDensity(-1));
        assertThrows(RangeFault.class, () -> SEDIMENT.overburden(Double.NaN));
        assertThrows(RangeFault.class, () -> new RockEstimates.Sediment(1.2, 2000, 2650, 1030));
    }
}
