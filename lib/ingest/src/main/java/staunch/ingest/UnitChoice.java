package staunch.ingest;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import staunch.units.Measure;
import staunch.units.UnitFault;
import staunch.units.UnitSystem;

/** The units a case wants its results shown in. */
final class UnitChoice {
    private static final List<UnitSystem> GIVEN =
            List.of(UnitSystem.FIELD, UnitSystem.METRIC, UnitSystem.MIXED, UnitSystem.SI);

    /** Measures that follow a key; those that cannot hold the unit (psia for a difference) keep the base's. */
    private static final Map<String, List<Measure>> MEASURES = new TreeMap<>(Map.ofEntries(
            Map.entry("depth", List.of(Measure.DEPTH)),
            Map.entry("length", List.of(Measure.LENGTH)),
            Map.entry("diameter", List.of(Measure.DIAMETER)),
            Map.entry(
                    "pressure",
                    List.of(Measure.PRESSURE_ABSOLUTE, Measure.PRESSURE_GAUGE, Measure.PRESSURE_DIFFERENCE)),
            Map.entry("density", List.of(Measure.DENSITY, Measure.EQUIVALENT_DENSITY, Measure.DENSITY_DIFFERENCE)),
            Map.entry("volume", List.of(Measure.VOLUME)),
            Map.entry("capacity", List.of(Measure.CAPACITY)),
            Map.entry("flow_rate", List.of(Measure.FLOW_RATE)),
            Map.entry("gas_rate", List.of(Measure.GAS_RATE)),
            Map.entry("temperature", List.of(Measure.TEMPERATURE, Measure.TEMPERATURE_DIFFERENCE)),
            Map.entry("pressure_gradient", List.of(Measure.PRESSURE_GRADIENT)),
            Map.entry("mass", List.of(Measure.MASS)),
            Map.entry("weight_per_length", List.of(Measure.LINEAR_MASS)),
            Map.entry("stress", List.of(Measure.STRESS)),
            Map.entry("curvature", List.of(Measure.CURVATURE)),
            Map.entry("speed", List.of(Measure.SPEED)),
            Map.entry("time", List.of(Measure.TIME))));

    private UnitChoice() {}

    static Optional<UnitSystem> of(Item item, Validator validator) {
        if (item instanceof Item.Scalar scalar) {
            return UnitSystem.named(scalar.text());
        }
        if (!(item instanceof Item.Mapping mapping)) {
            return Optional.empty();
        }
        Fields fields = new Fields(mapping, CaseKeys.UNITS, validator);
        return fields.text("base").flatMap(UnitSystem::named).map(base -> with(base, fields));
    }

    private static UnitSystem with(UnitSystem base, Fields fields) {
        UnitSystem units = base;
        for (Map.Entry<String, List<Measure>> choice : MEASURES.entrySet()) {
            Optional<String> symbol = fields.text(choice.getKey());
            if (symbol.isPresent()) {
                for (Measure measure : choice.getValue()) {
                    units = with(units, base, measure, symbol.get());
                }
            }
        }
        return units.equals(base) ? base : units.renamed(base.name() + ", changed by the case");
    }

    private static UnitSystem with(UnitSystem units, UnitSystem base, Measure measure, String symbol) {
        try {
            UnitSystem shown = units.with(measure, symbol, 0);
            return shown.with(measure, symbol, decimals(shown, base, measure));
        } catch (UnitFault otherKind) {
            // Recorded by the validator where the unit fits none of the key's measures.
            return units;
        }
    }

    /** Decimals of a given system that shows the unit, or as fine as the base shows the measure. */
    private static int decimals(UnitSystem shown, UnitSystem base, Measure measure) {
        for (UnitSystem given : GIVEN) {
            if (given.symbol(measure).equals(shown.symbol(measure))) {
                return given.decimals(measure);
            }
        }
        double size = Math.abs(shown.toSi(1, measure) - shown.toSi(0, measure));
        double baseSize = Math.abs(base.toSi(1, measure) - base.toSi(0, measure));
        return (int) Math.max(0, Math.min(9, base.decimals(measure) + Math.round(Math.log10(size / baseSize))));
    }
}
