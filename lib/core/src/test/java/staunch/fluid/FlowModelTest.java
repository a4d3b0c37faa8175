package staunch.fluid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.api.Test;
import staunch.units.InputFault;
import staunch.units.RangeFault;

class FlowModelTest {
    private static final double LBF_PER_100_FT2 = 0.45359237 * 9.80665 / (100 * 0.3048 * 0.3048);
    private static final RheometerReadings READINGS =
            new RheometerReadings(Map.of(600, 65.0, 300, 39.0, 200, 30.0, 100, 20.0, 6, 6.0, 3, 5.0));

    @Test
    void plasticViscosityAndYieldPointOfTheField() {
        FlowModel.BinghamPlastic bingham = FlowModel.BinghamPlastic.from(READINGS);
        assertEquals(0.026, bingham.plasticViscosity(), 1e-12);
        assertEquals(13 * LBF_PER_100_FT2, bingham.yieldPoint(), 1e-9);
        assertEquals(bingham.yieldPoint() + 2.6, bingham.shearStress(100), 1e-9);
    }

    @Test
    void modelsPassThroughTheReadingsTheyAreMadeFrom() {
        double degree = 1.066 * LBF_PER_100_FT2;
        for (FlowModel model :
                new FlowModel[] {FlowModel.PowerLaw.from(READINGS), FlowModel.HerschelBulkley.from(READINGS)}) {
            assertEquals(39 * degree, model.shearStress(511), 1e-9);
            assertEquals(65 * degree, model.shearStress(1022), 1e-9);
        }
        FlowModel.HerschelBulkley yielding = FlowModel.HerschelBulkley.from(READINGS);
        assertEquals(4 * degree, yielding.yieldStress(), 1e-9);
        assertEquals(yielding.yieldStress(), yielding.shearStress(0), 1e-12);
        assertEquals(Math.log(61.0 / 35) / Math.log(2), yielding.flowIndex(), 1e-12);
    }

    @Test
    void missingOrUnusableReadingsAreFaults() {
        RheometerReadings few = new RheometerReadings(Map.of(600, 65.0));
        assertThrows(InputFault.class, () -> FlowModel.BinghamPlastic.from(few));
        RheometerReadings flat = new RheometerReadings(Map.of(600, 30.0, 300, 30.0, 6, 6.0, 3, 5.0));
        assertThrows(InputFault.class, () -> FlowModel.PowerLaw.from(flat));
        RheometerReadings thickening = new RheometerReadings(Map.of(600, 65.0, 300, 20.0));
        assertThrows(RangeFault.class, () -> FlowModel.BinghamPlastic.from(thickening));
        assertThrows(RangeFault.class, () -> FlowModel.PowerLaw.from(READINGS).shearStress(-1));
    }
}
