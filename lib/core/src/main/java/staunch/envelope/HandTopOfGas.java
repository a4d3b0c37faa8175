package staunch.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import staunch.control.CirculationPoint;
import staunch.control.CirculationSchedule;
import staunch.control.TopOfGas;
import staunch.earth.TemperatureProfile;
import staunch.envelope.KickOperations.WatchedDepth;
import staunch.fluid.Gas;
import staunch.units.Measure;
import staunch.well.Annulus;

/** Works the pressure at the top of the gas by hand, where the schedule has a moment with the top at a watched depth. */
final class HandTopOfGas {
    private static final double SAME_DEPTH = 1e-3;

    private final SectionInput input;
    private final Annulus annulus;
    private final Gas gas;
    private final TemperatureProfile temperature;
    private final double mudDensity;

    HandTopOfGas(SectionInput input, Annulus annulus, Model model, double mudDensity) {
        this.input = input;
        this.annulus = annulus;
        this.gas = model.gas().orElseThrow();
        this.temperature = model.temperature().orElseThrow();
        this.mudDensity = mudDensity;
    }

    /** Every watched depth that the top of the gas passes after shut-in, upwards. */
    List<HandPressure> of(CirculationSchedule schedule, List<WatchedDepth> watched) {
        List<HandPressure> list = new ArrayList<>();
        for (int i = watched.size() - 1; i >= 0; i--) {
            int k = i;
            WatchedDepth where = watched.get(i);
            firstWithTopAt(schedule, where.measuredDepth())
                    .ifPresent(p -> list.add(worked(where, schedule.points().get(0), p, p.watched()[k])));
        }
        return list;
    }

    private static Optional<CirculationPoint> firstWithTopAt(CirculationSchedule schedule, double depth) {
        return schedule.points().stream()
                .skip(1)
                .filter(p -> p.gasTop().isPresent() && Math.abs(p.gasTop().getAsDouble() - depth) < SAME_DEPTH)
                .findFirst();
    }

    private HandPressure worked(
            WatchedDepth where, CirculationPoint shutIn, CirculationPoint there, double schedulePressure) {
        double bottom = input.plan().bottomDepth();
        double zBottom = input.path().verticalDepth(bottom);
        double top = shutIn.gasTop().getAsDouble();
        double height = zBottom - input.path().verticalDepth(top);
        double areaOnBottom = shutIn.gasVolume() / (bottom - top);
        double area = annulus.areaAt(where.measuredDepth());
        double held = there.bottomHolePressure();
        double z = where.verticalDepth();
        double density = gas.columnDensity(held, temperature.at(zBottom));
        // zT of a gas is p over density but for a constant.
        double onBottom = held / gas.density(held, temperature.at(zBottom));
        double atTop = schedulePressure / gas.density(schedulePressure, temperature.at(z));
        TopOfGas.Influx influx = new TopOfGas.Influx(height, density, areaOnBottom / area);
        TopOfGas hand = new TopOfGas(held, mudDensity, zBottom - z, influx, atTop / onBottom);
        return new HandPressure(
                where.name(),
                List.of(
                        new HandCalculation.Step(
                                "What mud and gas leave of the bottom-hole pressure",
                                "B = p_b − ρ_m g (D − X) − ρ_g g h_b A_b/A_x",
                                List.of(
                                        term("p_b", held, Measure.PRESSURE_ABSOLUTE),
                                        term("ρ_m", mudDensity, Measure.DENSITY),
                                        term("D − X", zBottom - z, Measure.LENGTH),
                                        term("ρ_g", density, Measure.DENSITY),
                                        term("h_b", height, Measure.LENGTH),
                                        term("A_b/A_x", influx.areaRatio(), Measure.NUMBER)),
                                hand.left(),
                                Measure.PRESSURE_DIFFERENCE),
                        new HandCalculation.Step(
                                "Pressure at the top of the gas",
                                "p_x = B/2 + √(B²/4 + ρ_m g p_b r h_b A_b/A_x)",
                                List.of(
                                        term("B", hand.left(), Measure.PRESSURE_DIFFERENCE),
                                        term("r", hand.expansion(), Measure.NUMBER)),
                                hand.pressure(),
                                Measure.PRESSURE_ABSOLUTE)),
                hand.pressure(),
                schedulePressure,
                difference(hand.pressure(), schedulePressure));
    }

    private static String difference(double hand, double schedule) {
        return (hand > schedule ? "The hand answer is the higher" : "The hand answer is the lower")
                + ": it keeps the weight of the gas as it was on bottom, takes deviation factor and temperature at its top"
                + " alone, one cross-section, and a vertical hole.";
    }

    private static HandCalculation.Term term(String symbol, double value, Measure measure) {
        return new HandCalculation.Term(symbol, value, measure);
    }
}
