package staunch.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import staunch.control.KillSheet;
import staunch.envelope.BullheadingOutcome;
import staunch.envelope.CirculationOutcome;
import staunch.envelope.HandPressure;
import staunch.envelope.KickOperations;
import staunch.envelope.KillSheetOutcome;
import staunch.envelope.LubricationOutcome;
import staunch.envelope.MigrationOutcome;
import staunch.envelope.MudFlowOutcome;
import staunch.envelope.NotAssessed;
import staunch.envelope.RiserOutcome;
import staunch.envelope.SectionOperations;
import staunch.envelope.SurfaceGasOutcome;
import staunch.envelope.VolumetricOutcome;
import staunch.report.ResultHtml.Parts;
import staunch.table.OperationTables;
import staunch.table.OperationWords;
import staunch.table.ResultTable;
import staunch.units.UnitSystem;

/** Cards of the operations on a shut-in well. */
final class OperationCards {
    private OperationCards() {}

    static Optional<Parts> parts(Object result, UnitSystem units) {
        if (result instanceof SectionOperations operations) {
            return Optional.of(section(operations, units));
        }
        if (result instanceof KickOperations.Followed followed) {
            return Optional.of(kick(followed, units));
        }
        if (result instanceof CirculationOutcome.Computed circulation) {
            return Optional.of(new Parts(
                    "Circulating out, " + OperationWords.method(circulation.method()),
                    Map.of("outcome", OperationWords.circulation(circulation, units)),
                    List.of(OperationTables.circulationPeaks(circulation, units))));
        }
        if (result instanceof MigrationOutcome.Computed migration) {
            return Optional.of(new Parts(
                    "Closed in",
                    Map.of("can wait", OperationWords.wait(migration, units)),
                    List.of(OperationTables.timeToLimit(migration, units))));
        }
        if (result instanceof VolumetricOutcome.Computed volumetric) {
            return Optional.of(new Parts(
                    "Volumetric method",
                    Map.of("outcome", OperationWords.volumetric(volumetric, units)),
                    List.of(OperationTables.volumetric(volumetric.table(), units))));
        }
        if (result instanceof LubricationOutcome.Computed lubrication) {
            return Optional.of(new Parts(
                    "Lubricate and bleed",
                    Map.of("outcome", OperationWords.lubrication(lubrication, units)),
                    List.of(OperationTables.lubricateAndBleed(lubrication.table(), units))));
        }
        if (result instanceof BullheadingOutcome.Computed bullheading) {
            return Optional.of(new Parts(
                    "Bullheading",
                    Map.of("outcome", OperationWords.bullheading(bullheading, units)),
                    List.of(OperationTables.bullheading(bullheading, units))));
        }
        if (result instanceof KillSheetOutcome.Computed computed) {
            return Optional.of(sheet(computed.sheet(), units));
        }
        if (result instanceof KillSheet sheet) {
            return Optional.of(sheet(sheet, units));
        }
        if (result instanceof SurfaceGasOutcome.Computed gas) {
            return Optional.of(new Parts(
                    "Gas at surface",
                    Map.of("outcome", OperationWords.gasAtSurface(gas, units)),
                    List.of(OperationTables.gasAtSurface(gas, units))));
        }
        if (result instanceof RiserOutcome.Computed riser) {
            return Optional.of(new Parts(
                    "Without the riser",
                    Map.of("outcome", OperationWords.riser(riser, units)),
                    List.of(OperationTables.riser(riser, units))));
        }
        if (result instanceof MudFlowOutcome.Computed flow) {
            return Optional.of(new Parts(
                    "Friction of the mud",
                    Map.of("outcome", OperationWords.mudFlow(flow, units)),
                    OperationTables.mudFlow(flow, units)));
        }
        if (result instanceof HandPressure hand) {
            ResultTable steps = OperationTables.byHand(hand, units);
            return Optional.of(new Parts(steps.name(), Map.of("answer", steps.caption()), List.of(steps)));
        }
        return result instanceof NotAssessed not
                ? Optional.of(new Parts("Not assessed", Map.of("answer", not.summary(units)), List.of()))
                : Optional.empty();
    }

    private static Parts section(SectionOperations operations, UnitSystem units) {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("drilled kick can wait", OperationWords.wait(operations.drilled(), units));
        lines.put("swabbed kick can wait", OperationWords.wait(operations.swabbed(), units));
        operations.warnings().forEach(w -> lines.put("warning, " + w.subject(), w.text(units)));
        return new Parts(
                "After an influx, " + operations.section(), lines, List.of(OperationTables.answers(operations, units)));
    }

    private static Parts kick(KickOperations.Followed followed, UnitSystem units) {
        Map<String, String> lines = new LinkedHashMap<>();
        OperationWords.answers(followed, units).forEach(a -> lines.put(a.question(), a.words()));
        return new Parts("After the " + followed.kick().scenario().title(), lines, List.of());
    }

    private static Parts sheet(KillSheet sheet, UnitSystem units) {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("notice", KillSheet.NOTICE);
        sheet.warnings().forEach(w -> lines.put("warning, " + w.subject(), w.text(units)));
        return new Parts(
                "Kill sheet",
                lines,
                List.of(
                        OperationTables.killSheetAnswers(sheet, units),
                        OperationTables.killSheetWeakPoint(sheet, units),
                        OperationTables.killSheetVolumes(sheet, units)));
    }
}
