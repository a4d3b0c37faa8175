package staunch.control;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import staunch.reference.ReferenceRow;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Quantity;
import staunch.units.UnitSystem;

/** Worked examples of course notes and handbooks, with the trade constant that they use. */
class HandFormulasReferenceTest {
    private static final HydrostaticConstant TRADE = HydrostaticConstant.TRADE_0_052;

    private static final Map<String, Example> EXAMPLES = new TreeMap<>();

    private record Example(Measure measure, ToDoubleFunction<ReferenceRow> value) {}

    private static void example(String id, Measure measure, ToDoubleFunction<ReferenceRow> value) {
        EXAMPLES.put(id, new Example(measure, value));
    }

    static {
        example("D01-01", Measure.PRESSURE_DIFFERENCE, r -> hydrostatic(density(r, "mud_weight"), depth(r, "tvd")));
        example(
                "D01-02",
                Measure.PRESSURE_DIFFERENCE,
                r -> hydrostatic(TRADE.density(r.si("gradient", Measure.PRESSURE_GRADIENT)), depth(r, "tvd")));
        example(
                "D01-03",
                Measure.PRESSURE_DIFFERENCE,
                r -> HandFormulas.hydrostaticPressure(
                        density(r, "density"), depth(r, "tvd"), HydrostaticConstant.EXACT));
        for (String id : List.of("D01-04", "D01-05", "D01-06")) {
            example(
                    id,
                    Measure.VOLUME,
                    r -> new CapacityInterval(r.si("capacity", Measure.CAPACITY), r.si("length", Measure.LENGTH))
                            .volume());
        }
        example(
                "D01-07",
                Measure.VOLUME,
                r -> r.si("v1", Measure.VOLUME) + r.si("v2", Measure.VOLUME) + r.si("v3", Measure.VOLUME));
        example("D01-08", Measure.CAPACITY, r -> capacity(r, "hole", "pipe"));
        example("D01-09", Measure.CAPACITY, r -> capacity(r, "hole", "pipe"));
        example("D01-10", Measure.CAPACITY, r -> HandFormulas.capacity(r.si("hole", Measure.DIAMETER), 0));
        example("D01-11", Measure.CAPACITY, r -> capacity(r, "hole", "collar"));
        example("D01-12", Measure.EQUIVALENT_DENSITY, r -> equivalent(gauge(r, "pressure"), depth(r, "depth")));
        example("D01-13", Measure.EQUIVALENT_DENSITY, r -> equivalent(gauge(r, "pressure"), depth(r, "tvd")));

        example(
                "D02-01",
                Measure.PRESSURE_GAUGE,
                r -> HandFormulas.maaspAfterMudChange(
                        gauge(r, "leak_off_pressure"),
                        density(r, "mw_now") - density(r, "mw_test"),
                        depth(r, "shoe_tvd"),
                        TRADE));
        for (String id : List.of("D02-02", "D02-05")) {
            example(
                    id,
                    Measure.EQUIVALENT_DENSITY,
                    r -> HandFormulas.equivalentDensityUnder(
                            gauge(r, "leak_off_pressure"), density(r, "mw"), depth(r, "shoe_tvd"), TRADE));
        }
        example(
                "D02-03",
                Measure.PRESSURE_GAUGE,
                r -> HandFormulas.formationMaasp(
                        density(r, "max_allowable_mw"), density(r, "mw"), depth(r, "shoe_tvd"), TRADE));
        example("D02-04", Measure.EQUIVALENT_DENSITY, r -> {
            UnitSystem oneDecimal = UnitSystem.FIELD.with(Measure.EQUIVALENT_DENSITY, "ppg", 1);
            String printed = oneDecimal.number(density(r, "emw_raw"), Measure.EQUIVALENT_DENSITY, RoundingMode.DOWN);
            return oneDecimal.toSi(new BigDecimal(printed).doubleValue(), Measure.EQUIVALENT_DENSITY);
        });
        example(
                "D02-06",
                Measure.EQUIVALENT_DENSITY,
                r -> HandFormulas.equivalentDensityUnder(
                        gauge(r, "differential_limit"), density(r, "formation"), depth(r, "depth"), TRADE));

        example(
                "D09-02",
                Measure.PRESSURE_DIFFERENCE,
                r -> hydrostatic(TRADE.density(r.si("fracture", Measure.PRESSURE_GRADIENT)), depth(r, "depth")));
        example("D09-03", Measure.EQUIVALENT_DENSITY, r -> TRADE.density(r.si("fracture", Measure.PRESSURE_GRADIENT)));

        for (String id : List.of("D04-01", "D04-02", "D04-03")) {
            example(id, Measure.LENGTH, r -> height(volume(r, "gain"), r.si("capacity", Measure.CAPACITY)));
        }
        example(
                "D04-04",
                Measure.LENGTH,
                r -> HandFormulas.influxHeight(
                        volume(r, "gain"), List.of(interval(r, "dc"), upwards(r.si("dp_cap", Measure.CAPACITY)))));
        example(
                "D04-05",
                Measure.PRESSURE_GAUGE,
                r -> new HandFormulas.TwoGradients(
                                gauge(r, "pf"),
                                depth(r, "tvd"),
                                TRADE.gradient(density(r, "mw")),
                                r.si("influx_gradient", Measure.PRESSURE_GRADIENT))
                        .casingPressure(r.si("influx_height", Measure.LENGTH)));
        example("D04-06", Measure.DENSITY, r -> slug(r, "height"));
        example("D04-07", Measure.LENGTH, r -> height(volume(r, "gain"), inverse(r.text("dc_capacity"))));
        example("D04-08", Measure.DENSITY, r -> slug(r, "length"));
        example(
                "D04-09",
                Measure.LENGTH,
                r -> HandFormulas.influxHeight(
                        volume(r, "gain") + pumped(r.text("pump")),
                        List.of(inverseInterval(r.text("dc")), upwards(inverse(r.text("dp"))))));
        example(
                "D04-10",
                Measure.DENSITY,
                r -> new HandFormulas.MixedZone(volume(r, "gain"), volume(r, "pumped"))
                        .influxDensity(slug(r, "mixed_length"), density(r, "mw")));
        example(
                "D04-11",
                Measure.EQUIVALENT_DENSITY,
                r -> HandFormulas.equivalentDensityUnder(gauge(r, "sidpp"), density(r, "mw"), depth(r, "tvd"), TRADE));

        example("D05-01", Measure.DENSITY_DIFFERENCE, r -> margin(r, "shoe_tvd"));
        example("D05-10", Measure.DENSITY_DIFFERENCE, r -> margin(r, "shoe"));
        for (String id : List.of("D05-02", "D05-11")) {
            example(id, Measure.PRESSURE_DIFFERENCE, r -> hydrostatic(density(r, "ktf"), depth(r, "tvd")));
        }
        for (String id : List.of("D05-03", "D05-12")) {
            example(
                    id,
                    Measure.PRESSURE_DIFFERENCE,
                    r -> hydrostatic(density(r, "ktf") + density(r, "mw"), depth(r, "tvd")));
        }
        example("D05-04", Measure.DENSITY_DIFFERENCE, r -> density(r, "formation_emw") - density(r, "mw"));
        example("D05-05", Measure.PRESSURE_DIFFERENCE, r -> hydrostatic(density(r, "formation_emw"), depth(r, "tvd")));
        example(
                "D05-06",
                Measure.PRESSURE_DIFFERENCE,
                r -> hydrostatic(density(r, "lot") - density(r, "kick_margin"), depth(r, "shoe")));
        example(
                "D05-07",
                Measure.LENGTH,
                r -> new HandFormulas.TwoGradients(
                                gauge(r, "pf"),
                                // The row gives the length between shoe and bottom alone: the depth itself cancels.
                                depth(r, "open_hole"),
                                r.si("mud", Measure.PRESSURE_GRADIENT),
                                r.si("gas", Measure.PRESSURE_GRADIENT))
                        .heightAtLimit(0, gauge(r, "p_shoe")));
        example(
                "D05-08",
                Measure.VOLUME,
                r -> HandFormulas.influxVolume(
                        r.si("h", Measure.LENGTH),
                        List.of(new CapacityInterval(
                                HandFormulas.capacity(
                                        r.si("hole", Measure.DIAMETER), first(r.text("collar"), Measure.DIAMETER)),
                                second(r.text("collar"), Measure.LENGTH)))));
        example(
                "D05-09",
                Measure.VOLUME,
                r -> HandFormulas.boyleVolume(
                        r.si("h", Measure.LENGTH) * capacity(r, "hole", "pipe"),
                        gauge(r, "p_shoe") + Physics.ATMOSPHERE,
                        gauge(r, "pf") + Physics.ATMOSPHERE));
        example(
                "D05-13",
                Measure.LENGTH,
                // Measured from the surface pressure: the column below it is lightened by mud less influx gradient.
                r -> new HandFormulas.TwoGradients(
                                0, 0, r.si("mud", Measure.PRESSURE_GRADIENT), r.si("influx", Measure.PRESSURE_GRADIENT))
                        .heightAtLimit(0, gauge(r, "masicp")));
        example(
                "D05-14",
                Measure.VOLUME,
                r -> HandFormulas.influxVolume(
                        r.si("height", Measure.LENGTH),
                        List.of(interval(r, "dc"), upwards(r.si("dp_cap", Measure.CAPACITY)))));
    }

    @TestFactory
    Stream<DynamicTest> workedExamples() {
        return ReferenceTable.read("well/well-control-cases.csv").tests(r -> true, r -> {
            Example example = EXAMPLES.get(r.id());
            r.checkSi(example.value().applyAsDouble(r), example.measure());
        });
    }

    private static double density(ReferenceRow row, String input) {
        return row.si(input, Measure.DENSITY);
    }

    private static double depth(ReferenceRow row, String input) {
        return row.si(input, Measure.DEPTH);
    }

    private static double gauge(ReferenceRow row, String input) {
        return row.si(input, Measure.PRESSURE_GAUGE);
    }

    private static double volume(ReferenceRow row, String input) {
        return row.si(input, Measure.VOLUME);
    }

    private static double hydrostatic(double density, double depth) {
        return HandFormulas.hydrostaticPressure(density, depth, TRADE);
    }

    private static double equivalent(double pressure, double depth) {
        return HandFormulas.equivalentDensity(pressure, depth, TRADE);
    }

    private static double capacity(ReferenceRow row, String hole, String pipe) {
        return HandFormulas.capacity(row.si(hole, Measure.DIAMETER), row.si(pipe, Measure.DIAMETER));
    }

    private static double margin(ReferenceRow row, String shoe) {
        return HandFormulas.zeroGainMargin(
                depth(row, shoe), depth(row, "tvd"), density(row, "max_mw") - density(row, "mw"));
    }

    private static double slug(ReferenceRow row, String length) {
        return HandFormulas.influxDensity(
                density(row, "mw"), gauge(row, "sicp") - gauge(row, "sidpp"), row.si(length, Measure.LENGTH), TRADE);
    }

    private static double height(double volume, double capacity) {
        return HandFormulas.influxHeight(volume, List.of(upwards(capacity)));
    }

    private static CapacityInterval upwards(double capacity) {
        return new CapacityInterval(capacity, 10_000);
    }

    private static CapacityInterval interval(ReferenceRow row, String input) {
        return new CapacityInterval(second(row.text(input), Measure.CAPACITY), first(row.text(input), Measure.LENGTH));
    }

    private static CapacityInterval inverseInterval(String text) {
        return new CapacityInterval(inverse(text.split(",")[1]), first(text, Measure.LENGTH));
    }

    /** "28.6 ft/bbl" as a capacity. */
    private static double inverse(String feetPerBarrel) {
        return 1
                / Double.parseDouble(feetPerBarrel.replace("ft/bbl", "").strip())
                * Quantity.of(1, "bbl/ft").si(Measure.CAPACITY);
    }

    /** "8.5 bbl/min,3 min" as a volume. */
    private static double pumped(String text) {
        return first(text, Measure.FLOW_RATE) * second(text, Measure.TIME);
    }

    private static double first(String text, Measure measure) {
        return Quantity.parse(text.split(",")[0]).si(measure);
    }

    private static double second(String text, Measure measure) {
        return Quantity.parse(text.split(",")[1]).si(measure);
    }
}
