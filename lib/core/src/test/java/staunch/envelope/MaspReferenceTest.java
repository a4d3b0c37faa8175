package staunch.envelope;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import staunch.control.HydrostaticConstant;
import staunch.earth.TemperatureProfile;
import staunch.fluid.FixedGradientGas;
import staunch.influx.GasColumn;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;
import staunch.units.Physics;

/** The steps of the published gas-to-surface pressure: formation pressure, gas column, what is left at surface. */
class MaspReferenceTest {
    @TestFactory
    Stream<DynamicTest> gasToSurface() {
        return ReferenceTable.read("envelope/masp.csv").tests(r -> !r.id().equals("D10-04"), r -> {
            switch (r.id()) {
                case "D10-01" -> {
                    double density = r.si("mw", Measure.DENSITY) + r.si("safety", Measure.DENSITY);
                    double gradient = HydrostaticConstant.TRADE_0_052.gradient(density);
                    r.checkSi(gradient * r.si("depth", Measure.DEPTH), Measure.PRESSURE_DIFFERENCE);
                }
                case "D10-02" -> {
                    double bottom = 70e6;
                    r.checkSi(
                            bottom
                                    - atSurface(
                                            bottom,
                                            r.si("gas", Measure.PRESSURE_GRADIENT),
                                            r.si("depth", Measure.DEPTH)),
                            Measure.PRESSURE_DIFFERENCE);
                }
                default -> {
                    // The column of the row before: 0.12 psi/ft over 12 000 ft.
                    double depth = 12_000 * 0.3048;
                    double gradient = r.si("gas_column", Measure.PRESSURE_DIFFERENCE) / depth;
                    double bottom = Physics.ATMOSPHERE + r.si("fp", Measure.PRESSURE_DIFFERENCE);
                    r.checkSi(atSurface(bottom, gradient, depth) - Physics.ATMOSPHERE, Measure.PRESSURE_DIFFERENCE);
                }
            }
        });
    }

    private static double atSurface(double bottom, double gradient, double depth) {
        GasColumn column = new GasColumn(FixedGradientGas.ofGradient(gradient), TemperatureProfile.isothermal(350));
        column.start(depth, bottom);
        return column.pressure(0);
    }
}
