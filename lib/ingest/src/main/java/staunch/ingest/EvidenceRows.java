package staunch.ingest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import staunch.design.InputLine;
import staunch.earth.CasingShoe;
import staunch.earth.DrillingEvent;
import staunch.earth.OffsetEvidence;
import staunch.earth.PressurePoint;
import staunch.earth.Quality;
import staunch.earth.Standing;
import staunch.earth.StrengthTest;
import staunch.earth.WellLog;
import staunch.units.Measure;
import staunch.units.Source;

/**
 * What tables of offset wells said, by well.
 *
 * @param tests strength tests, depths below the datum of their own well
 * @param points formation pressures, likewise
 * @param events losses, kicks and muds seen, likewise
 * @param shoes casing shoes, likewise
 * @param logs curves of logs in blocks, likewise
 * @param pumped pumping curves with what was read from them; their tests are not among the others
 * @param files which rows came from which file
 */
record EvidenceRows(
        Map<String, List<StrengthTest>> tests,
        Map<String, List<PressurePoint>> points,
        Map<String, List<DrillingEvent>> events,
        Map<String, List<CasingShoe>> shoes,
        Map<String, List<WellLog>> logs,
        List<OffsetEvidence.Pumped> pumped,
        List<InputLine> files) {
    static final String TESTS = "strength_tests";
    static final String POINTS = "formation_pressures";
    static final String EVENTS = "events";
    static final String SHOES = "casing_shoes";
    static final String LOGS = "log_readings";
    static final EvidenceRows NONE =
            new EvidenceRows(Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), List.of(), List.of());

    /** Numbers of ten digits, as those of the case itself. */
    static StrengthTest rounded(StrengthTest test) {
        return new StrengthTest(
                test.name(),
                FixedDigits.round(test.verticalDepth()),
                FixedDigits.round(test.pressure()),
                test.standing(),
                test.testMudDensity().isPresent()
                        ? OptionalDouble.of(
                                FixedDigits.round(test.testMudDensity().getAsDouble()))
                        : OptionalDouble.empty(),
                test.source());
    }

    static PressurePoint rounded(PressurePoint point) {
        return new PressurePoint(
                point.name(),
                FixedDigits.round(point.verticalDepth()),
                FixedDigits.round(point.pressure()),
                point.quality(),
                point.source());
    }

    static DrillingEvent rounded(DrillingEvent event) {
        return new DrillingEvent(
                event.name(),
                event.type(),
                FixedDigits.round(event.verticalDepth()),
                FixedDigits.round(event.pressure()),
                event.source());
    }

    static CasingShoe rounded(CasingShoe shoe) {
        return new CasingShoe(
                shoe.name(),
                FixedDigits.round(shoe.verticalDepth()),
                shoe.outsideDiameter().isPresent()
                        ? OptionalDouble.of(
                                FixedDigits.round(shoe.outsideDiameter().getAsDouble()))
                        : OptionalDouble.empty(),
                shoe.source());
    }

    /** The rows as keys of a case, each under a name of its own, sorted. */
    List<Item.Entry> entries(Place place) {
        List<Item.Entry> entries = new ArrayList<>();
        List<Item.Mapping> rows = new ArrayList<>();
        tests.forEach((well, all) -> all.forEach(t -> rows.add(row(place, well, t))));
        add(entries, TESTS, rows, place);
        rows.clear();
        points.forEach((well, all) -> all.forEach(p -> rows.add(row(place, well, p))));
        add(entries, POINTS, rows, place);
        rows.clear();
        events.forEach((well, all) -> all.forEach(e -> rows.add(row(place, well, e))));
        add(entries, EVENTS, rows, place);
        rows.clear();
        shoes.forEach((well, all) -> all.forEach(s -> rows.add(row(place, well, s))));
        add(entries, SHOES, rows, place);
        addLogs(entries, place);
        rows.clear();
        pumped.forEach(p -> rows.add(PumpedRows.row(place, p)));
        add(entries, PumpedRows.TESTS, rows, place);
        return entries;
    }

    private void addLogs(List<Item.Entry> entries, Place place) {
        List<Item> named = new ArrayList<>();
        new TreeMap<>(logs).forEach((well, all) -> {
            for (int i = 0; i < all.size(); i++) {
                List<Item.Entry> cells = new ArrayList<>();
                cells.add(cell(place, "name", i == 0 ? well : well + " (" + (i + 1) + ")"));
                cells.add(cell(place, "well", well));
                cells.add(cell(place, "source", all.get(i).source().document()));
                List<Item> blocks = new ArrayList<>();
                all.get(i).blocks().forEach(b -> blocks.add(row(place, b)));
                cells.add(new Item.Entry("blocks", place, new Item.Sequence(place, blocks)));
                named.add(new Item.Mapping(place, cells));
            }
        });
        if (!named.isEmpty()) {
            entries.add(new Item.Entry(LOGS, place, new Item.Sequence(place, named)));
        }
    }

    private static Item.Mapping row(Place place, WellLog.Block block) {
        List<Item.Entry> cells = new ArrayList<>();
        cells.add(cell(place, "tvd", CanonicalCase.si(block.verticalDepth(), Measure.DEPTH)));
        block.density().ifPresent(d -> cells.add(cell(place, "density", CanonicalCase.si(d, Measure.DENSITY))));
        block.slowness().ifPresent(y -> cells.add(cell(place, "slowness", CanonicalCase.si(y, Measure.SLOWNESS))));
        block.resistivity()
                .ifPresent(y -> cells.add(cell(place, "resistivity", CanonicalCase.si(y, Measure.RESISTIVITY))));
        return new Item.Mapping(place, cells);
    }

    private static void add(List<Item.Entry> entries, String key, List<Item.Mapping> rows, Place place) {
        rows.sort(Comparator.comparing(RecordText::sortingLine));
        Set<String> names = new HashSet<>();
        List<Item> named = new ArrayList<>();
        for (Item.Mapping row : rows) {
            String name =
                    row.text("well").orElseThrow() + ": " + row.text("called").orElseThrow();
            String unique = name;
            for (int i = 2; !names.add(unique); i++) {
                unique = name + " (" + i + ")";
            }
            List<Item.Entry> cells = new ArrayList<>();
            cells.add(cell(place, "name", unique));
            cells.addAll(row.entries());
            named.add(new Item.Mapping(place, cells));
        }
        if (!named.isEmpty()) {
            entries.add(new Item.Entry(key, place, new Item.Sequence(place, named)));
        }
    }

    private static Item.Mapping row(Place place, String well, StrengthTest test) {
        List<Item.Entry> cells = new ArrayList<>(List.of(
                cell(place, "well", well),
                cell(place, "called", test.name()),
                cell(place, "tvd", CanonicalCase.si(test.verticalDepth(), Measure.DEPTH)),
                cell(place, "standing", Form.Choice.name(test.standing())),
                cell(place, "pressure", CanonicalCase.si(test.pressure(), Measure.PRESSURE_ABSOLUTE))));
        test.testMudDensity()
                .ifPresent(mud -> cells.add(cell(place, "test_mud", CanonicalCase.si(mud, Measure.DENSITY))));
        source(cells, place, test.source());
        return new Item.Mapping(place, cells);
    }

    private static Item.Mapping row(Place place, String well, PressurePoint point) {
        List<Item.Entry> cells = new ArrayList<>(List.of(
                cell(place, "well", well),
                cell(place, "called", point.name()),
                cell(place, "tvd", CanonicalCase.si(point.verticalDepth(), Measure.DEPTH)),
                cell(place, "pressure", CanonicalCase.si(point.pressure(), Measure.PRESSURE_ABSOLUTE)),
                cell(place, "quality", Form.Choice.name(point.quality()))));
        source(cells, place, point.source());
        return new Item.Mapping(place, cells);
    }

    private static Item.Mapping row(Place place, String well, DrillingEvent event) {
        List<Item.Entry> cells = new ArrayList<>(List.of(
                cell(place, "well", well),
                cell(place, "called", event.name()),
                cell(place, "type", Form.Choice.name(event.type())),
                cell(place, "tvd", CanonicalCase.si(event.verticalDepth(), Measure.DEPTH)),
                cell(place, "pressure", CanonicalCase.si(event.pressure(), Measure.PRESSURE_ABSOLUTE))));
        source(cells, place, event.source());
        return new Item.Mapping(place, cells);
    }

    private static Item.Mapping row(Place place, String well, CasingShoe shoe) {
        List<Item.Entry> cells = new ArrayList<>(List.of(
                cell(place, "well", well),
                cell(place, "called", shoe.name()),
                cell(place, "tvd", CanonicalCase.si(shoe.verticalDepth(), Measure.DEPTH))));
        shoe.outsideDiameter()
                .ifPresent(d -> cells.add(cell(place, "outside_diameter", CanonicalCase.si(d, Measure.DIAMETER))));
        source(cells, place, shoe.source());
        return new Item.Mapping(place, cells);
    }

    static void source(List<Item.Entry> cells, Place place, Source source) {
        cells.add(cell(place, "source", source.document()));
        if (!source.place().isBlank()) {
            cells.add(cell(place, "place", source.place()));
        }
    }

    static Item.Entry cell(Place place, String key, String text) {
        return new Item.Entry(key, place, new Item.Scalar(place, text));
    }

    /** The same with the strength tests of these names, that pumping curves gave, as strength tests. */
    EvidenceRows asTests(Set<String> names) {
        Map<String, List<StrengthTest>> all = new HashMap<>();
        tests.forEach((well, some) -> all.put(well, new ArrayList<>(some)));
        List<OffsetEvidence.Pumped> kept = new ArrayList<>();
        for (OffsetEvidence.Pumped one : pumped) {
            if (names.contains(one.well() + ": " + one.pick().test().name())) {
                all.computeIfAbsent(one.well(), w -> new ArrayList<>()).add(PumpedRows.test(one));
            } else {
                kept.add(one);
            }
        }
        return new EvidenceRows(all, points, events, shoes, logs, kept, files);
    }

    /** The rows that a recorded case holds. */
    static EvidenceRows of(Fields evidence) {
        Map<String, List<StrengthTest>> tests = new HashMap<>();
        for (Fields f : evidence.rows(TESTS)) {
            tests.computeIfAbsent(f.needText("well"), w -> new ArrayList<>())
                    .add(new StrengthTest(
                            f.needText("called"),
                            f.needAmount("tvd"),
                            f.needAmount("pressure"),
                            f.needChoice("standing", Standing.class),
                            f.amount("test_mud"),
                            source(f)));
        }
        Map<String, List<PressurePoint>> points = new HashMap<>();
        for (Fields f : evidence.rows(POINTS)) {
            points.computeIfAbsent(f.needText("well"), w -> new ArrayList<>())
                    .add(new PressurePoint(
                            f.needText("called"),
                            f.needAmount("tvd"),
                            f.needAmount("pressure"),
                            f.needChoice("quality", Quality.class),
                            source(f)));
        }
        Map<String, List<DrillingEvent>> events = new HashMap<>();
        for (Fields f : evidence.rows(EVENTS)) {
            events.computeIfAbsent(f.needText("well"), w -> new ArrayList<>())
                    .add(new DrillingEvent(
                            f.needText("called"),
                            f.needChoice("type", DrillingEvent.Type.class),
                            f.needAmount("tvd"),
                            f.needAmount("pressure"),
                            source(f)));
        }
        Map<String, List<CasingShoe>> shoes = new HashMap<>();
        for (Fields f : evidence.rows(SHOES)) {
            shoes.computeIfAbsent(f.needText("well"), w -> new ArrayList<>())
                    .add(new CasingShoe(
                            f.needText("called"), f.needAmount("tvd"), f.amount("outside_diameter"), source(f)));
        }
        Map<String, List<WellLog>> logs = new HashMap<>();
        for (Fields f : evidence.rows(LOGS)) {
            List<WellLog.Block> blocks = f.rows("blocks").stream()
                    .map(b -> new WellLog.Block(
                            b.needAmount("tvd"), b.amount("density"), b.amount("slowness"), b.amount("resistivity")))
                    .toList();
            logs.computeIfAbsent(f.needText("well"), w -> new ArrayList<>()).add(new WellLog(blocks, source(f)));
        }
        return new EvidenceRows(tests, points, events, shoes, logs, PumpedRows.of(evidence), List.of());
    }

    static Source source(Fields f) {
        return new Source(f.needText("source"), f.text("place").orElse(""));
    }
}
