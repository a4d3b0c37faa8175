package staunch.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import staunch.units.InputFault;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.RangeFault;

class HandFormulasTest {
    private static final List<CapacityInterval> ANNULUS =
            List.of(new CapacityInterval(0.013, 150), new CapacityInterval(0.024, 4000));

    @Test
    void theTradeConstantIsATenthOfAPercentAboveTheExactOne() {
        double ppgFoot =
                Quantity.of(1, "ppg").si(Measure.DENSITY) * Quantity.of(1, "ft").si(Measure.LENGTH);
        double psi = Quantity.of(1, "psi").si(Measure.PRESSURE_DIFFERENCE);
        assertEquals(0.052, HydrostaticConstant.TRADE_0_052.gradient(ppgFoot) / psi, 1e-15);
        // A gallon is 231 in³ and a foot 12 in.
        assertEquals(12.0 / 231, HydrostaticConstant.EXACT.gradient(ppgFoot) / psi, 1e-15);
    }

    @Property(tries = 100, seed = "1")
    void heightAndVolumeAreInverse(@ForAll @DoubleRange(min = 0, max = 60) double volume) {
        double height = HandFormulas.influxHeight(volume, ANNULUS);
        assertEquals(volume, HandFormulas.influxVolume(height, ANNULUS), 1e-12);
    }

    @Property(tries = 100, seed = "1")
    void anInfluxOfTheLimitingHeightBringsTheWeakPointToItsLimit(
            @ForAll @DoubleRange(min = 0, max = 3000) double weakPoint,
            @ForAll @DoubleRange(min = 2e7, max = 6e7) double limit) {
        HandFormulas.TwoGradients well = new HandFormulas.TwoGradients(4.5e7, 3500, 13_000, 2000);
        double height = well.heightAtLimit(weakPoint, limit);
        if (height >= 0 && height <= 3500 - weakPoint) {
            assertEquals(limit, well.casingPressure(height) + 13_000 * weakPoint, 1e-6 * limit);
        }
    }

    @Property(tries = 100, seed = "1")
    void equivalentAndPressureAreInverse(
            @ForAll @DoubleRange(min = 1, max = 9000) double depth,
            @ForAll @DoubleRange(min = 800, max = 2500) double density) {
        for (HydrostaticConstant k : HydrostaticConstant.values()) {
            double p = HandFormulas.hydrostaticPressure(density, depth, k);
            assertEquals(density, HandFormulas.equivalentDensity(p, depth, k), 1e-9);
            assertEquals(density + 100, HandFormulas.equivalentDensityUnder(p, 100, depth, k), 1e-9);
            assertEquals(p, HandFormulas.formationMaasp(density, 0, depth, k), 1e-6);
            assertEquals(0, HandFormulas.maaspAfterMudChange(p, density, depth, k), 1e-6);
        }
    }

    @Test
    void faultsNameFieldValueAndRange() {
        RangeFault fault = assertThrows(
                RangeFault.class, () -> HandFormulas.hydrostaticPressure(-1, 3000, HydrostaticConstant.EXACT));
        assertEquals("mud density -1 kg/m3 is outside 0 kg/m3 to 5000 kg/m3", fault.getMessage());
        assertThrows(RangeFault.class, () -> HandFormulas.equivalentDensity(1e7, 0, HydrostaticConstant.EXACT));
        assertThrows(
                RangeFault.class, () -> HandFormulas.hydrostaticPressure(Double.NaN, 3000, HydrostaticConstant.EXACT));
        assertThrows(RangeFault.class, () -> HandFormulas.capacity(0.2, 0.3));
        assertThrows(RangeFault.class, () -> HandFormulas.boyleVolume(1, 0, 1e7));
        assertThrows(RangeFault.class, () -> HandFormulas.zeroGainMargin(3000, 2000, 100));
        assertThrows(
                RangeFault.class, () -> new HandFormulas.TwoGradients(4e7, 3000, 1000, 2000).heightAtLimit(2000, 3e7));
        assertThrows(InputFault.class, () -> HandFormulas.influxHeight(1000, ANNULUS));
        assertThrows(InputFault.class, () -> HandFormulas.influxVolume(5000, ANNULUS));
    }
}
