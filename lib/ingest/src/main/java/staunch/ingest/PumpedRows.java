package staunch.ingest;

import java.util.ArrayList;
import java.util.List;
import staunch.earth.LeakOffMethod;
import staunch.earth.LeakOffPick;
import staunch.earth.OffsetEvidence;
import staunch.earth.PumpingTest;
import staunch.earth.StrengthTest;
import staunch.units.Measure;

/** Pumping curves of offset wells as a run record holds them: every reading, and how leak-off is read. */
final class PumpedRows {
    static final String TESTS = "pumping_tests";
    private static final String TWO_LINES = "two_lines";
    private static final double DEEPEST = 20_000;

    private static final Block PUMPED = Block.of(
            "offset_pumped",
            Key.of("volume", new Form.Amount(Measure.VOLUME, 0, 100), "Pumped since the start.")
                    .must(),
            gauge());

    private static final Block SHUT_IN = Block.of(
            "offset_shut_in",
            Key.of("time", new Form.Amount(Measure.TIME, 0, 1e6), "Since the pump stopped.")
                    .must(),
            gauge());

    static final Block TEST = Block.of(
            "offset_pumping_test",
            text("name").must(),
            text("well").must(),
            text("called").must(),
            Key.of("tvd", new Form.Amount(Measure.DEPTH, 1, DEEPEST), "Vertical depth below the datum of its well.")
                    .must(),
            Key.of("mud", new Form.Amount(Measure.DENSITY, 500, 2700), "Mud from the gauge down.")
                    .must(),
            Key.of("gauge", new Form.Amount(Measure.DEPTH, -100, 100), "Depth of the gauge below that datum.")
                    .must(),
            Key.of("leak_off", new Form.Word(List.of("departure", TWO_LINES)), "How leak-off is read.")
                    .must(),
            text("source").must(),
            text("place"),
            Key.of("pumped", new Form.Rows(PUMPED, true, false, ""), "Readings while pumping.")
                    .must(),
            Key.of("shut_in", new Form.Rows(SHUT_IN, false, false, ""), "Readings with the pump stopped."));

    private PumpedRows() {}

    private static Key text(String name) {
        return Key.of(name, new Form.Text(), "As the table has it.");
    }

    private static Key gauge() {
        return Key.of("pressure", new Form.Amount(Measure.PRESSURE_GAUGE, 0, 2e8), "At the gauge.")
                .must();
    }

    /** Readings of ten digits, as the numbers of the case itself, and leak-off as read from these. */
    static OffsetEvidence.Pumped rounded(OffsetEvidence.Pumped pumped) {
        PumpingTest test = pumped.pick().test();
        PumpingTest rounded = new PumpingTest(
                test.name(),
                test.pumped().stream()
                        .map(r ->
                                new PumpingTest.Pumped(FixedDigits.round(r.volume()), FixedDigits.round(r.pressure())))
                        .toList(),
                test.shutIn().stream()
                        .map(r -> new PumpingTest.ShutIn(FixedDigits.round(r.time()), FixedDigits.round(r.pressure())))
                        .toList(),
                test.source());
        PumpingTest.Column column = pumped.column();
        return new OffsetEvidence.Pumped(
                pumped.well(),
                LeakOffPick.of(rounded, pumped.pick().method()),
                new PumpingTest.Column(
                        FixedDigits.round(column.verticalDepth()),
                        FixedDigits.round(column.gaugeDepth()),
                        FixedDigits.round(column.mudDensity())));
    }

    /** The strength test that a curve gives. */
    static StrengthTest test(OffsetEvidence.Pumped pumped) {
        return EvidenceRows.rounded(pumped.pick().strengthTest(pumped.column()));
    }

    static Item.Mapping row(Place place, OffsetEvidence.Pumped pumped) {
        PumpingTest test = pumped.pick().test();
        PumpingTest.Column column = pumped.column();
        List<Item.Entry> cells = new ArrayList<>(List.of(
                EvidenceRows.cell(place, "well", pumped.well()),
                EvidenceRows.cell(place, "called", test.name()),
                EvidenceRows.cell(place, "tvd", CanonicalCase.si(column.verticalDepth(), Measure.DEPTH)),
                EvidenceRows.cell(place, "mud", CanonicalCase.si(column.mudDensity(), Measure.DENSITY)),
                EvidenceRows.cell(place, "gauge", CanonicalCase.si(column.gaugeDepth(), Measure.DEPTH)),
                EvidenceRows.cell(
                        place,
                        "leak_off",
                        pumped.pick().method() instanceof LeakOffMethod.TwoLines ? TWO_LINES : "departure")));
        EvidenceRows.source(cells, place, test.source());
        cells.add(readings(
                place,
                "pumped",
                test.pumped().stream()
                        .map(r -> reading(place, "volume", CanonicalCase.si(r.volume(), Measure.VOLUME), r.pressure()))
                        .toList()));
        if (!test.shutIn().isEmpty()) {
            cells.add(readings(
                    place,
                    "shut_in",
                    test.shutIn().stream()
                            .map(r -> reading(place, "time", CanonicalCase.si(r.time(), Measure.TIME), r.pressure()))
                            .toList()));
        }
        return new Item.Mapping(place, cells);
    }

    private static Item.Entry readings(Place place, String key, List<Item> rows) {
        return new Item.Entry(key, place, new Item.Sequence(place, rows));
    }

    private static Item reading(Place place, String key, String at, double pressure) {
        return new Item.Mapping(
                place,
                List.of(
                        EvidenceRows.cell(place, key, at),
                        EvidenceRows.cell(place, "pressure", CanonicalCase.si(pressure, Measure.PRESSURE_GAUGE))));
    }

    /** The curves that a recorded case holds. */
    static List<OffsetEvidence.Pumped> of(Fields evidence) {
        List<OffsetEvidence.Pumped> found = new ArrayList<>();
        for (Fields f : evidence.rows(TESTS)) {
            PumpingTest test = new PumpingTest(
                    f.needText("called"),
                    f.rows("pumped").stream()
                            .map(r -> new PumpingTest.Pumped(r.needAmount("volume"), r.needAmount("pressure")))
                            .toList(),
                    f.rows("shut_in").stream()
                            .map(r -> new PumpingTest.ShutIn(r.needAmount("time"), r.needAmount("pressure")))
                            .toList(),
                    EvidenceRows.source(f));
            LeakOffMethod method = f.needText("leak_off").equals(TWO_LINES)
                    ? LeakOffMethod.TwoLines.DEFAULT
                    : LeakOffMethod.Departure.DEFAULT;
            found.add(new OffsetEvidence.Pumped(
                    f.needText("well"),
                    LeakOffPick.of(test, method),
                    new PumpingTest.Column(f.needAmount("tvd"), f.needAmount("gauge"), f.needAmount("mud"))));
        }
        return found;
    }
}
