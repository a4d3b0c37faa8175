package staunch.ingest;

import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.HydrostaticConstant;
import staunch.control.KillSheetInput;
import staunch.control.StringFriction;
import staunch.envelope.OperationsPlan;
import staunch.influx.FixedRiseRate;
import staunch.influx.MigrationBracket;
import staunch.ingest.Values.Bad;
import staunch.ingest.Values.Good;
import staunch.units.Source;

/** Builds what a section says about the handling of an influx. */
final class OperationsBuilder {
    private final Fields operations;
    private final OptionalDouble pumpOutput;
    private final FaultLog log;

    OperationsBuilder(Fields operations, OptionalDouble pumpOutput, FaultLog log) {
        this.operations = operations;
        this.pumpOutput = pumpOutput;
        this.log = log;
    }

    OperationsPlan build() {
        Optional<Fields> mud = operations.nested("kill_mud");
        Optional<Fields> well = operations.nested("closed_well");
        Optional<Fields> volumetric = operations.nested("volumetric");
        Optional<Fields> lubrication = operations.nested("lubrication");
        Optional<Fields> bullheading = operations.nested("bullheading");
        return new OperationsPlan(
                influx(),
                rate("kill_rate", operations, pumpOutput, log),
                operations.amount("surface_lines"),
                new OperationsPlan.KillMud(amount(mud, "step"), amount(mud, "overbalance"), amount(mud, "material")),
                operations.nested("kill_sheet").map(OperationsBuilder::sheet),
                operations.count("start_up_steps").stream().boxed().findFirst(),
                new OperationsPlan.Yielding(
                        amount(well, "mud_compressibility"),
                        amount(well, "hole_compliance"),
                        amount(well, "filtrate_loss"),
                        well.flatMap(f -> f.flag("float_in_string"))),
                operations.nested("migration").flatMap(this::migration),
                new OperationsPlan.Volumetric(amount(volumetric, "safety"), amount(volumetric, "working")),
                new OperationsPlan.Lubrication(
                        amount(lubrication, "density"),
                        amount(lubrication, "largest_step"),
                        amount(lubrication, "left")),
                new OperationsPlan.Bullhead(
                        bullheading.map(f -> rate("rate", f, pumpOutput, log)).orElse(OptionalDouble.empty()),
                        amount(bullheading, "injection_above")),
                operations.amount("tripping_speed"));
    }

    private OperationsPlan.InfluxChoice influx() {
        OptionalDouble volume = operations.amount("influx_volume");
        if (operations.has("influx") && operations.has("influx_volume")) {
            log.add(
                    operations.place("influx_volume"),
                    operations.written("influx_volume"),
                    "stands beside influx, which chooses a volume already",
                    "leave one of them out");
        }
        if (volume.isPresent()) {
            return new OperationsPlan.InfluxChoice.Given(volume.getAsDouble());
        }
        return operations.text("influx").filter(CaseKeys.TOLERANCE::equals).isPresent()
                ? new OperationsPlan.InfluxChoice.AtTolerance()
                : new OperationsPlan.InfluxChoice.RequiredOrDetectable();
    }

    private static KillSheetInput.Options sheet(Fields f) {
        KillSheetInput.Options usual = KillSheetInput.Options.DEFAULT;
        return new KillSheetInput.Options(
                f.choice("constant", HydrostaticConstant.class).orElse(usual.constant()),
                f.choice("friction", StringFriction.class).orElse(usual.friction()),
                f.count("lines").orElse(usual.lines()));
    }

    private Optional<MigrationBracket> migration(Fields f) {
        return log.attempt(f.place(), () -> {
            double slow = f.needAmount("slow");
            double medium = f.needAmount("medium");
            double fast = f.needAmount("fast");
            if (slow > medium || medium > fast) {
                log.add(f.place("medium"), f.written("medium"), "does not lie between slow and fast", "sort them");
                throw new FaultLog.Incomplete();
            }
            return new MigrationBracket(rise("slow", f), rise("medium", f), rise("fast", f));
        });
    }

    private static FixedRiseRate rise(String key, Fields f) {
        return new FixedRiseRate(key, f.needAmount(key), new Source(f.needText("source"), ""));
    }

    private static OptionalDouble amount(Optional<Fields> f, String key) {
        return f.map(x -> x.amount(key)).orElse(OptionalDouble.empty());
    }

    /** A pump rate, which may count strokes; empty where it is not given or has a fault. */
    static OptionalDouble rate(String key, Fields f, OptionalDouble pumpOutput, FaultLog log) {
        if (!f.has(key) || f.written(key).isBlank()) {
            return OptionalDouble.empty();
        }
        Values.Reading<Double> rate = Values.pumpRate(f.written(key), pumpOutput);
        if (rate instanceof Bad<Double> bad) {
            log.add(f.place(key), f.written(key), bad.problem(), bad.hint());
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(((Good<Double>) rate).value());
    }
}
