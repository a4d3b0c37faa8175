package staunch.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import staunch.units.Fault;
import staunch.units.InputFault;
import staunch.units.RangeFault;

/** Outside its range a correlation gives a fault that names what, the value, the range and what to know; never a number. */
class FluidRangeTest {
    private static final RealGas GAS = RealGas.of(GasComposition.sweet(0.65));
    private static final DeviationFactor DAK = DeviationFactor.DRANCHUK_ABOU_KASSEM;
    private static final DeviationFactor HY = DeviationFactor.HALL_YARBOROUGH;

    @Test
    void deviationFactorHoldsInItsRangeOnly() {
        for (double ppr : new double[] {-1e-9, 30.0001, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(RangeFault.class, () -> DAK.z(ppr, 2));
        }
        for (double tpr : new double[] {1.0499, 3.0001, 0, -2, Double.NaN}) {
            assertThrows(RangeFault.class, () -> DAK.z(1, tpr));
        }
        assertThrows(RangeFault.class, () -> HY.z(24.001, 2));
        assertThrows(RangeFault.class, () -> HY.z(1, 1.149));
        assertTrue(DAK.z(30, 1.05) > 3);
        assertTrue(HY.z(24, 1.15) > 2);
    }

    @Test
    void gasNamesItsRangeInPressureAndTemperature() {
        double tooCold = GAS.lowestTemperature() - 0.01;
        RangeFault cold = assertThrows(RangeFault.class, () -> GAS.density(1e7, tooCold));
        assertEquals("gas temperature", cold.field());
        assertEquals(tooCold, cold.value());
        assertEquals(GAS.lowestTemperature(), cold.lowest());
        assertTrue(cold.getMessage().contains("Dranchuk"), cold::getMessage);
        RangeFault high = assertThrows(RangeFault.class, () -> GAS.density(1.5e8, 400));
        assertEquals("gas pressure", high.field());
        assertThrows(RangeFault.class, () -> GAS.density(Double.NaN, 400));
        assertThrows(RangeFault.class, () -> GAS.density(1e7, Double.NaN));
        assertEquals(0, GAS.density(0, 400));
        assertTrue(GAS.density(GAS.highestPressure(), GAS.highestTemperature()) > 0);
        assertTrue(GAS.density(GAS.highestPressure(), GAS.lowestTemperature()) > 0);
    }

    @Test
    void lowPressureIsTheOneExceptionAndIsNamed() {
        assertEquals(0.2 * GAS.critical().pressure(), GAS.lowestPublishedPressure());
        assertTrue(GAS.deviationFactor(GAS.lowestPublishedPressure() / 100, 300) > 0.999);
    }

    @Test
    void gravityOutsideACorrelationIsAFault() {
        GasComposition light = GasComposition.sweet(0.56);
        RangeFault fault = assertThrows(RangeFault.class, () -> RealGas.of(light));
        assertTrue(fault.getMessage().contains("Sutton"), fault::getMessage);
        assertThrows(RangeFault.class, () -> PseudoCriticalCorrelation.STANDING_1977.of(GasComposition.sweet(0.8)));
        assertThrows(
                RangeFault.class,
                () -> PseudoCriticalCorrelation.PIPER_MCCAIN_CORREDOR_1993.of(GasComposition.sweet(0.6)));
    }

    @Test
    void sourGasOutsideTheCorrectionIsAFault() {
        PseudoCriticalCorrelation sutton = PseudoCriticalCorrelation.SUTTON_1985;
        assertThrows(RangeFault.class, () -> sutton.of(new GasComposition(1.2, 0.75, 0, 0)));
        assertThrows(RangeFault.class, () -> sutton.of(new GasComposition(1.2, 0, 0.55, 0)));
        // The gravity contradicts the fractions: what is left for the hydrocarbons would be lighter than methane.
        assertThrows(RangeFault.class, () -> sutton.of(new GasComposition(0.6, 0.2, 0.1, 0)));
        assertThrows(InputFault.class, () -> sutton.of(new GasComposition(0.97, 0, 0, 1)));
    }

    @Test
    void nothingLeftForHydrocarbonsIsAFaultNotANumber() {
        assertThrows(
                Fault.class, () -> PseudoCriticalCorrelation.SUTTON_1985.of(new GasComposition(1.3, 0.5, 0.4, 0.1)));
    }

    @Test
    void viscosityHoldsInItsRangeOnly() {
        assertThrows(RangeFault.class, () -> GAS.viscosity(1e7, 300));
        assertThrows(RangeFault.class, () -> GAS.viscosity(6e7, 350));
        assertTrue(GAS.viscosity(1e7, 350) > 1e-5);
    }

    @Test
    void otherGasesRefuseWhatIsNoPressureOrTemperature() {
        IdealGas ideal = new IdealGas(0.02);
        for (Gas gas : List.of(ideal, new FixedGradientGas(200))) {
            assertThrows(RangeFault.class, () -> gas.density(-1, 300));
            assertThrows(RangeFault.class, () -> gas.density(Double.NaN, 300));
        }
        assertThrows(RangeFault.class, () -> ideal.density(1e5, 0));
        assertThrows(RangeFault.class, () -> ideal.density(1e5, Double.NaN));
    }

    @Test
    void liquidsHoldInTheirRangeOnly() {
        assertThrows(RangeFault.class, () -> PureWater.density(1.01e8, 300));
        assertThrows(RangeFault.class, () -> PureWater.density(1e5, 380), "steam");
        assertThrows(RangeFault.class, () -> PureWater.density(1e7, 273));
        assertThrows(RangeFault.class, () -> PureWater.density(1e7, Double.NaN));
        assertThrows(RangeFault.class, () -> new Seawater(35).density(1.01325e5, 314));
        assertThrows(RangeFault.class, () -> new Seawater(43));
        assertThrows(RangeFault.class, () -> new SodiumChlorideBrine(0.27));
        assertThrows(RangeFault.class, () -> MudLiquid.DIESEL.density(1e7, 500));
    }

    @Test
    void mudKeepsItsStatedDensityUnlessItHasALaw() {
        Mud plain = Mud.waterBased("plain", 1200);
        assertEquals(1200, plain.densityAt(5e7, 400));
        MudExpansion law = new MudExpansion(4e-10, 5e-4, 1e5, 290);
        Mud moving = new Mud("moving", 1200, MudBase.WATER, Optional.empty(), Optional.of(law));
        assertEquals(1200 * Math.exp(4e-10 * (5e7 - 1e5) - 5e-4 * 110), moving.densityAt(5e7, 400), 1e-9);
    }

    @Test
    void volumesMustAddUp() {
        InputFault fault = assertThrows(InputFault.class, () -> new MudVolumes(0.7, 0.2, 0.2));
        assertTrue(fault.getMessage().contains("instead of 1"), fault::getMessage);
    }

    @Test
    void estimateFollowsThePartsItIsMadeFrom() {
        MudVolumes volumes = new MudVolumes(0.6, 0.2, 0.2);
        MudVolumes.State surface = new MudVolumes.State(1.1e5, 290);
        MudVolumes.State deep = new MudVolumes.State(8e7, 420);
        MudExpansionEstimate estimate = MudExpansionEstimate.of(volumes, surface, surface, deep);
        // Oil-based mud: between water (4e-10 1/Pa) and oil (6e-10 1/Pa), less the share of the solids.
        assertEquals(4e-10, estimate.expansion().compressibility(), 1e-10);
        assertEquals(5e-4, estimate.expansion().thermalExpansion(), 1.5e-4);
        assertTrue(estimate.largestMisfit() < 0.01, () -> "misfit " + estimate.largestMisfit());
        assertTrue(estimate.basis().contains("estimated"));
        assertThrows(InputFault.class, () -> MudExpansionEstimate.of(volumes, surface, deep, surface));
    }
}
