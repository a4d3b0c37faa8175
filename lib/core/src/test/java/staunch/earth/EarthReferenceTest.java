package staunch.earth;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import staunch.control.HydrostaticConstant;
import staunch.reference.ReferenceRow;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;
import staunch.units.Quantity;

class EarthReferenceTest {
    private static final Map<String, Example> BY_QUANTITY = new TreeMap<>();

    private record Example(Measure measure, ToDoubleFunction<ReferenceRow> value) {}

    static {
        put("fracture gradient", Measure.PRESSURE_GRADIENT, EarthReferenceTest::eaton);
        put("fracture gradient (Eaton)", Measure.PRESSURE_GRADIENT, EarthReferenceTest::eaton);
        // The source goes on with its gradient rounded to 0.92 psi/ft and the trade constant.
        put("maximum mud density", Measure.EQUIVALENT_DENSITY, r -> {
            double foot = Quantity.of(1, "psi/ft").si(Measure.PRESSURE_GRADIENT);
            return HydrostaticConstant.TRADE_0_052.density(Math.rint(eaton(r) / foot * 100) / 100 * foot);
        });
        put(
                "hydrostatic gradient",
                Measure.PRESSURE_GRADIENT,
                r -> HydrostaticConstant.EXACT.gradient(found(r, "([0-9.]+ (lb/gal|kg/m3))", Measure.DENSITY)));
        put(
                "formation temperature",
                Measure.TEMPERATURE,
                r -> TemperatureProfile.geothermal(
                                new TemperatureProfile.Point(
                                        0, found(r, "mudline ([0-9.]+ degC)", Measure.TEMPERATURE)),
                                found(r, "gradient ([0-9.]+ degC/km)", Measure.TEMPERATURE_GRADIENT),
                                10_000)
                        .at(found(r, "depth ([0-9.]+ m)", Measure.DEPTH)));
        put(
                "overburden stress increment",
                Measure.PRESSURE_DIFFERENCE,
                r -> new RockEstimates.Sediment(
                                first(r, "phi0 ([0-9.]+)"),
                                1 / first(r, "decay ([0-9.]+)"),
                                r.si("grain", Measure.DENSITY),
                                r.si("fluid", Measure.DENSITY))
                        .overburden(r.si("depth below mudline", Measure.LENGTH)));
        put(
                "bulk density (Gardner)",
                Measure.DENSITY,
                r -> RockEstimates.gardnerDensity(r.si("P-wave velocity", Measure.SPEED)));
        put(
                "average sediment density (Traugott)",
                Measure.DENSITY,
                r -> RockEstimates.traugottMeanDensity(r.si("depth below mudline", Measure.LENGTH)));
    }

    private static void put(String quantity, Measure measure, ToDoubleFunction<ReferenceRow> value) {
        BY_QUANTITY.put(quantity, new Example(measure, value));
    }

    @TestFactory
    Stream<DynamicTest> rockAndGradients() {
        return ReferenceTable.read("earth/rock-and-gradients.csv")
                .tests(r -> !r.id().equals("RG008") && !r.id().equals("RG010"), r -> {
                    Example example = BY_QUANTITY.get(r.quantity());
                    r.checkSi(example.value().applyAsDouble(r), example.measure());
                });
    }

    private static double eaton(ReferenceRow row) {
        double pore = row.has("P/D")
                ? row.si("P/D", Measure.PRESSURE_GRADIENT)
                : HydrostaticConstant.TRADE_0_052.gradient(row.si("pore", Measure.DENSITY));
        return RockEstimates.eatonFractureGradient(
                row.si("S/D", Measure.PRESSURE_GRADIENT), pore, row.number("Poisson ratio"));
    }

    private static double found(ReferenceRow row, String pattern, Measure measure) {
        return Quantity.parse(match(row, pattern)).si(measure);
    }

    private static double first(ReferenceRow row, String pattern) {
        return Double.parseDouble(match(row, pattern));
    }

    private static String match(ReferenceRow row, String pattern) {
        Matcher m = Pattern.compile(pattern).matcher(row.inputs().replace("=", " "));
        if (!m.find()) {
            throw new IllegalArgumentException(row.inputs());
        }
        return m.group(1);
    }
}
