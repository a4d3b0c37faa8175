package staunch.ingest;

import java.util.ArrayList;
import java.util.List;
import staunch.earth.DrillingEvent;
import staunch.earth.Quality;
import staunch.earth.Standing;
import staunch.units.Measure;

/**
 * The keys of a case as run records hold it: those of case files, but for the evidence of offset wells, of which a record
 * holds the rows themselves in the place of how their tables are written.
 */
final class RecordKeys {
    private static final double DEEPEST = 20_000;

    static final Block TEST = Block.of(
            "offset_test",
            text("name").must(),
            text("well").must(),
            text("called").must(),
            depth().must(),
            Key.of("standing", new Form.Choice(Standing.class), "What the figure is worth.")
                    .must(),
            pressure().must(),
            Key.of("test_mud", new Form.Amount(Measure.DENSITY, 0, 1e5), "Mud in the hole during the test."),
            text("source").must(),
            text("place"));

    static final Block POINT = Block.of(
            "offset_pressure",
            text("name").must(),
            text("well").must(),
            text("called").must(),
            depth().must(),
            pressure().must(),
            Key.of("quality", new Form.Choice(Quality.class), "What it is worth.")
                    .must(),
            text("source").must(),
            text("place"));

    static final Block EVENT = Block.of(
            "offset_event",
            text("name").must(),
            text("well").must(),
            text("called").must(),
            Key.of("type", new Form.Choice(DrillingEvent.Type.class), "What was seen.")
                    .must(),
            depth().must(),
            pressure().must(),
            text("source").must(),
            text("place"));

    static final Block SHOE = Block.of(
            "offset_shoe",
            text("name").must(),
            text("well").must(),
            text("called").must(),
            Key.of("tvd", new Form.Amount(Measure.DEPTH, 0, DEEPEST), "Vertical depth below the datum of its well.")
                    .must(),
            Key.of("outside_diameter", new Form.Amount(Measure.DIAMETER, 0.05, 2), "Outside diameter."),
            text("source").must(),
            text("place"));

    static final Block LOG_BLOCK = Block.of(
            "offset_log_block",
            Key.of("tvd", new Form.Amount(Measure.DEPTH, 0, DEEPEST), "Vertical depth of its middle below the datum.")
                    .must(),
            Key.of("density", new Form.Amount(Measure.DENSITY, 1200, 3300), "Mean bulk density."),
            Key.of("slowness", new Form.Amount(Measure.SLOWNESS, 1e-4, 1e-3), "Mean sonic slowness of shale."),
            Key.of("resistivity", new Form.Amount(Measure.RESISTIVITY, 0.01, 1e5), "Mean resistivity of shale."));

    static final Block LOG = Block.of(
            "offset_log_read",
            text("name").must(),
            text("well").must(),
            text("source").must(),
            text("place"),
            Key.of("blocks", new Form.Rows(LOG_BLOCK, true, false, ""), "Means over blocks of vertical depth.")
                    .must());

    static final Block EVIDENCE = evidence();

    static final Block CASE = new Block(
            CaseKeys.CASE.name(),
            CaseKeys.CASE.keys().stream()
                    .map(k -> k.name().equals("offset_evidence")
                            ? new Key(k.name(), new Form.Nested(EVIDENCE, true), k.needed(), k.meaning(), k.without())
                            : k)
                    .toList(),
            CaseKeys.CASE.alternatives());

    private RecordKeys() {}

    private static Block evidence() {
        List<Key> keys = new ArrayList<>(CaseKeys.OFFSET_EVIDENCE.keys());
        keys.removeIf(k -> k.name().equals("tables") || k.name().equals(LogBuilder.LOGS));
        keys.add(rows(EvidenceRows.TESTS, TEST));
        keys.add(rows(EvidenceRows.POINTS, POINT));
        keys.add(rows(EvidenceRows.EVENTS, EVENT));
        keys.add(rows(EvidenceRows.SHOES, SHOE));
        keys.add(rows(EvidenceRows.LOGS, LOG));
        keys.add(rows(PumpedRows.TESTS, PumpedRows.TEST));
        return new Block("offset_evidence", keys, CaseKeys.OFFSET_EVIDENCE.alternatives());
    }

    private static Key rows(String name, Block block) {
        return Key.of(name, new Form.Rows(block, true, false, ""), "Rows of tables of offset wells.");
    }

    private static Key text(String name) {
        return Key.of(name, new Form.Text(), "As the table has it.");
    }

    private static Key depth() {
        return Key.of("tvd", new Form.Amount(Measure.DEPTH, 1, DEEPEST), "Vertical depth below the datum of its well.");
    }

    private static Key pressure() {
        return Key.of("pressure", new Form.Amount(Measure.PRESSURE_ABSOLUTE, 1e5, 4e8), "Pressure at that depth.");
    }
}
