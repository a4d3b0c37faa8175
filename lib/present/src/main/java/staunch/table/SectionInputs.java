package staunch.table;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import staunch.control.SlowCirculation;
import staunch.envelope.OperationsPlan;
import staunch.envelope.SectionPlan;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.fluid.MudExpansion;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** What the case says about a section, line by line. */
final class SectionInputs {
    private static final String NOT_GIVEN = "not given";

    private SectionInputs() {}

    record Item(String name, String value) {}

    static List<Item> of(SectionPlan plan, UnitSystem units) {
        List<Item> items = new ArrayList<>();
        items.add(new Item("Drilled", plan.drilling().title()));
        items.add(new Item("Hole size", units.text(plan.bitDiameter(), Measure.DIAMETER)));
        items.add(new Item("Mud", plan.mud().map(m -> mud(m, units)).orElse(NOT_GIVEN)));
        plan.mud().flatMap(Mud::rheometer).ifPresent(r -> {
            List<String> readings = new ArrayList<>();
            new TreeMap<>(r.dialReadings())
                    .descendingMap()
                    .forEach((speed, dial) -> readings.add(
                            units.number(dial, Measure.NUMBER).replaceAll("\\.0+$", "") + " at " + speed + " rpm"));
            items.add(new Item("Rheometer dial", String.join(", ", readings)));
        });
        plan.mud().flatMap(Mud::expansion).ifPresent(e -> items.add(new Item("Mud expansion", expansion(e, units))));
        items.add(new Item("Influx gas", plan.gas().map(SectionInputs::gas).orElse(NOT_GIVEN)));
        items.add(new Item("Bit above bottom at the influx", units.text(plan.bitOffBottom(), Measure.LENGTH)));
        items.add(
                plan.influxDepth().isPresent()
                        ? item("Influx depth, MD", plan.influxDepth(), Measure.DEPTH, units)
                        : new Item("Influx depth", "section TD"));
        items.add(item("Detectable gain", plan.detectableGain(), Measure.VOLUME, units));
        items.add(item("Active volume", plan.activeVolume(), Measure.VOLUME, units));
        items.add(item("Circulating overbalance", plan.circulatingOverbalance(), Measure.PRESSURE_DIFFERENCE, units));
        items.add(item("Choke-handling allowance", plan.chokeHandlingAllowance(), Measure.PRESSURE_DIFFERENCE, units));
        operations(plan.operations(), items, units);
        for (SlowCirculation slow : plan.slowCirculations()) {
            items.add(new Item("Slow circulation at " + units.text(slow.rate(), Measure.FLOW_RATE), slow(slow, units)));
        }
        return items;
    }

    /** What the case says of operations; what it leaves to a default stands among the assumptions. */
    private static void operations(OperationsPlan plan, List<Item> items, UnitSystem units) {
        given("Kill rate", plan.killRate(), Measure.FLOW_RATE, items, units);
        given("Tripping speed", plan.trippingSpeed(), Measure.SPEED, items, units.perMinute());
        given("Surface lines", plan.surfaceLineVolume(), Measure.VOLUME, items, units);
        given("Kill mud rounded up to", plan.killMud().step(), Measure.DENSITY_DIFFERENCE, items, units);
        given("Kill mud beyond balance", plan.killMud().overbalance(), Measure.DENSITY_DIFFERENCE, items, units);
        given("Weighting material", plan.killMud().material(), Measure.DENSITY, items, units);
        OperationsPlan.Yielding yielding = plan.yielding();
        given("Mud compressibility", yielding.mudCompressibility(), Measure.COMPRESSIBILITY, items, units);
        given("Hole compliance", yielding.holeCompliance(), Measure.COMPRESSIBILITY, items, units);
        given("Filtrate loss", yielding.filtrateLoss(), Measure.FLOW_RATE, items, units);
        yielding.floatInString().ifPresent(f -> items.add(new Item("Float in the string", f ? "yes" : "no")));
        given("Volumetric method, safety", plan.volumetric().safety(), Measure.PRESSURE_DIFFERENCE, items, units);
        given("Volumetric method, window", plan.volumetric().working(), Measure.PRESSURE_DIFFERENCE, items, units);
        given(
                "Bullheading, injection above formation pressure",
                plan.bullheading().injectionAbove(),
                Measure.PRESSURE_DIFFERENCE,
                items,
                units);
    }

    private static void given(String name, OptionalDouble value, Measure measure, List<Item> items, UnitSystem units) {
        value.ifPresent(v -> items.add(new Item(
                name, measure == Measure.COMPRESSIBILITY ? units.precise(v, measure) : units.text(v, measure))));
    }

    private static Item item(String name, OptionalDouble value, Measure measure, UnitSystem units) {
        return new Item(name, value.isPresent() ? units.text(value.getAsDouble(), measure) : NOT_GIVEN);
    }

    private static String mud(Mud mud, UnitSystem units) {
        String base =
                switch (mud.base()) {
                    case WATER -> "water based";
                    case OIL -> "oil based";
                    case SYNTHETIC -> "synthetic based";
                };
        return mud.name() + ", " + units.text(mud.density(), Measure.DENSITY) + ", " + base;
    }

    private static String expansion(MudExpansion e, UnitSystem units) {
        return "compressibility " + units.precise(e.compressibility(), Measure.COMPRESSIBILITY)
                + ", thermal expansion " + units.precise(e.thermalExpansion(), Measure.THERMAL_EXPANSION)
                + ", density stated at " + units.text(e.referencePressure(), Measure.PRESSURE_ABSOLUTE)
                + " and " + units.text(e.referenceTemperature(), Measure.TEMPERATURE);
    }

    private static String gas(GasComposition gas) {
        return "gravity " + UnitSystem.SI.precise(gas.gravity(), Measure.NUMBER)
                + ", H2S " + percent(gas.hydrogenSulphide())
                + ", CO2 " + percent(gas.carbonDioxide())
                + ", N2 " + percent(gas.nitrogen());
    }

    private static String percent(double fraction) {
        return UnitSystem.SI.precise(100 * fraction, Measure.NUMBER) + " %";
    }

    private static String slow(SlowCirculation slow, UnitSystem units) {
        String pump = slow.pumpPressure().isPresent()
                ? "pump " + units.text(slow.pumpPressure().getAsDouble(), Measure.PRESSURE_GAUGE)
                : "pump pressure not measured";
        String choke = slow.chokeLineFriction().isPresent()
                ? "choke-line loss " + units.text(slow.chokeLineFriction().getAsDouble(), Measure.PRESSURE_DIFFERENCE)
                : "choke-line loss not measured";
        return pump + ", " + choke;
    }
}
