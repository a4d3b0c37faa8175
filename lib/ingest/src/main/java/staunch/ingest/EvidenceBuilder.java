package staunch.ingest;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import staunch.design.InputLine;
import staunch.design.InputValue;
import staunch.earth.BoundUse;
import staunch.earth.CasingShoe;
import staunch.earth.DensityLog;
import staunch.earth.DepthMatching;
import staunch.earth.DrillingEvent;
import staunch.earth.EarthModel;
import staunch.earth.EvidenceDoubt;
import staunch.earth.EvidenceTransfer;
import staunch.earth.EvidenceUse;
import staunch.earth.FormationTop;
import staunch.earth.LeakOffMethod;
import staunch.earth.LeakOffPick;
import staunch.earth.LogPressure;
import staunch.earth.LogUse;
import staunch.earth.NormalPressure;
import staunch.earth.OffsetEvidence;
import staunch.earth.OffsetTransfer;
import staunch.earth.OffsetWell;
import staunch.earth.Overburden;
import staunch.earth.PressurePoint;
import staunch.earth.Quality;
import staunch.earth.Range;
import staunch.earth.RockEstimates;
import staunch.earth.Standing;
import staunch.earth.StrengthTest;
import staunch.earth.WellLog;
import staunch.units.Amount;
import staunch.units.Measure;
import staunch.units.Source;
import staunch.units.UnitSystem;
import staunch.units.Warning;
import staunch.units.Wording;
import staunch.well.Datum;
import staunch.well.WellPath;

/** Reads the offset wells of a case and of the drops handed in with it, and puts what they say into its rock. */
final class EvidenceBuilder {
    private static final String FORMATION_TOPS = "formation_tops";
    private static final String CASING = "casing_programme";
    /** Farthest that a leak-off test may stand from the nearest shoe of its well unremarked, m: judgement. */
    private static final double BELOW_SHOE = 50;

    private static final Map<String, DrillingEvent.Type> EVENTS = Map.of(
            "losses", DrillingEvent.Type.LOSS,
            "kicks", DrillingEvent.Type.KICK,
            "mud_weights", DrillingEvent.Type.MUD);
    /**
     * Depth below ground to which the overburden of an offset well is laid out, m: the same whatever was measured in it, so
     * that a further row does not move the points of the profile.
     */
    private static final double DEEP = 9000;

    private static final int MOST_ROWS = 2000;
    private static final double RATIO_CONFLICT = 0.1;
    private static final double PRESSURE_CONFLICT = 2e6;

    private static final Spikes.Asked<StrengthTest> TESTS =
            new Spikes.Asked<>(StrengthTest::verticalDepth, StrengthTest::pressure, StrengthTest::name);
    private static final Spikes.Asked<OffsetEvidence.Pumped> PUMPED = new Spikes.Asked<>(
            p -> p.column().verticalDepth(),
            p -> p.pick().atFormation(p.column()),
            p -> p.pick().test().name());
    private static final Spikes.Asked<PressurePoint> POINTS =
            new Spikes.Asked<>(PressurePoint::verticalDepth, PressurePoint::pressure, PressurePoint::name);
    private static final Spikes.Asked<DrillingEvent> MET =
            new Spikes.Asked<>(DrillingEvent::verticalDepth, DrillingEvent::pressure, DrillingEvent::name);

    private final Fields block;
    private final Placed<Datum> datum;
    private final CaseDirectory directory;
    private final List<Drop> drops;
    private final UnitSystem units;
    private final FaultLog log;
    private final List<Warning> warnings;
    private final List<InputValue> register;
    private final Map<String, List<StrengthTest>> tests = new HashMap<>();
    private final Map<String, List<PressurePoint>> points = new HashMap<>();
    private final List<InputLine> files = new ArrayList<>();
    private final List<OffsetEvidence.Pumped> pumped = new ArrayList<>();
    private final Map<String, List<DrillingEvent>> events = new HashMap<>();
    private final Map<String, List<CasingShoe>> shoes = new HashMap<>();
    private final LogBuilder logs;
    private final List<OffsetEvidence.Log> shownLogs = new ArrayList<>();

    /** What is known of each well besides the tables, to hold their readings against. */
    private final Map<String, OffsetWell> surroundings = new HashMap<>();

    private final Duplicates duplicates = new Duplicates();

    EvidenceBuilder(
            Fields block,
            Placed<Datum> datum,
            CaseDirectory directory,
            List<Drop> drops,
            UnitSystem units,
            FaultLog log,
            List<Warning> warnings,
            List<InputValue> register) {
        this.register = register;
        this.block = block;
        this.datum = datum;
        this.directory = directory;
        this.drops = drops;
        this.units = units;
        this.log = log;
        this.warnings = warnings;
        this.logs = new LogBuilder(log, warnings, register, files);
    }

    /** An offset well before its tests and points are known. */
    private record Known(
            OffsetSite site, double distance, Optional<Range> porePressure, Fields fields, List<FormationTop> tops) {}

    /**
     * The rock with the evidence in it; empty where a fault is in the log.
     *
     * @param predicted rock of the case
     * @param plannedTests names of the tests still to be made
     * @param path of the planned well
     */
    Optional<EvidenceTransfer.Result> build(EarthModel predicted, Set<String> plannedTests, WellPath path) {
        Map<String, Known> known = wells();
        Map<String, OffsetSite> sites = known.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().site()));
        if (block.knows(EvidenceRows.TESTS)) {
            log.attempt(block.place(), () -> EvidenceRows.of(block)).ifPresent(recorded -> {
                tests.putAll(recorded.tests());
                points.putAll(recorded.points());
                events.putAll(recorded.events());
                shoes.putAll(recorded.shoes());
                logs.recorded(recorded.logs());
                pumped.addAll(recorded.pumped());
            });
        } else {
            read(known, sites);
        }
        if (!log.isEmpty()) {
            return Optional.empty();
        }
        return log.attempt(block.place(), () -> {
            List<OffsetWell> offsets = new ArrayList<>();
            known.forEach((name, well) ->
                    log.attempt(well.fields().place(), () -> offset(well)).ifPresent(offsets::add));
            if (offsets.size() < known.size()) {
                throw new FaultLog.Incomplete();
            }
            NormalPressure normal = new NormalPressure(datum.value(), block.needAmount("water_density"));
            double deepest = deepest(predicted, path);
            Range overburden =
                    overburden(datum.value(), block.needNested("sediment")).withoutLog(deepest);
            EvidenceTransfer transfer = new EvidenceTransfer(
                    transfer(predicted, known),
                    block.choice("pore_pressure", EvidenceUse.class).orElse(EvidenceUse.PREDICTED),
                    block.choice("strength", EvidenceUse.class).orElse(EvidenceUse.PREDICTED),
                    block.text("weak_zones").filter("tested"::equals).isPresent(),
                    block.choice("log_pressures", LogUse.class).orElse(LogUse.COMPARED),
                    block.choice("bounds", BoundUse.class).orElse(BoundUse.LISTED));
            EvidenceTransfer.Result result = transfer.apply(predicted, normal, overburden, offsets, plannedTests);
            return new EvidenceTransfer.Result(result.earth(), result.evidence().with(pumped, shownLogs));
        });
    }

    /** Every row that was read, by well, with the files they came from. */
    EvidenceRows rows() {
        return new EvidenceRows(tests, points, events, shoes, logs.logs(), pumped, files);
    }

    private OffsetTransfer transfer(EarthModel predicted, Map<String, Known> known) {
        DepthMatching matching = new DepthMatching.BelowMudline();
        if (block.text("matching").filter(FORMATION_TOPS::equals).isPresent()) {
            Map<String, List<FormationTop>> tops = new HashMap<>();
            known.forEach((name, well) -> tops.put(name, well.tops()));
            matching = new DepthMatching.FormationTops(predicted.tops(), tops);
        }
        return new OffsetTransfer(
                matching,
                block.needAmount("window"),
                block.needAmount("half_distance"),
                block.amount("ratio_conflict").orElse(RATIO_CONFLICT),
                block.amount("pressure_conflict").orElse(PRESSURE_CONFLICT));
    }

    /** Deepest vertical depth at which the stress of the planned well may be asked. */
    private double deepest(EarthModel predicted, WellPath path) {
        double deepest = Math.max(path.verticalDepth(path.end()), datum.value().groundOrSeabedDepth() + 1);
        for (Optional<Range> range : List.of(predicted.porePressure(), predicted.strength())) {
            deepest = Math.max(deepest, range.map(r -> r.likely().bottom()).orElse(0.0));
        }
        return deepest;
    }

    // --- Wells

    private Map<String, Known> wells() {
        Map<String, Known> known = new TreeMap<>();
        for (Fields f : block.rows("wells")) {
            log.attempt(f.place(), () -> well(f)).ifPresent(well -> {
                if (known.put(well.site().name(), well) != null) {
                    log.add(f.place("name"), well.site().name(), "is given twice", "join the two");
                }
            });
        }
        return known;
    }

    private Known well(Fields f) {
        String name = f.needText("name");
        Datum.Place place = f.has("ground_level")
                ? new Datum.OnLand(f.needAmount("ground_level"))
                : new Datum.AtSea(
                        f.needAmount("water_depth"), false, datum.fields().amount("sea_water_density"));
        Datum zero = new Datum("datum of " + name, f.needAmount("elevation"), place);
        List<Warning> found = new ArrayList<>();
        Optional<WellPath> path = f.nested("survey").map(s -> new SurveyBuilder(f, units, log, found).path(s));
        found.forEach(
                w -> warnings.add(new Warning("offset well " + name + ", " + w.subject(), w.text(), w.amounts())));
        EarthBuilder earth = new EarthBuilder(f, zero, path, units, log);
        Optional<Range> pore = earth.porePressure();
        if (pore.isEmpty() && f.has("pore_pressure")) {
            throw new FaultLog.Incomplete();
        }
        return new Known(new OffsetSite(name, zero, path), f.needAmount("distance"), pore, f, earth.tops());
    }

    private OffsetWell offset(Known well) {
        String name = well.site().name();
        List<StrengthTest> ownTests = new ArrayList<>(tests.getOrDefault(name, List.of()));
        pumped.stream().filter(p -> p.well().equals(name)).map(PumpedRows::test).forEach(ownTests::add);
        List<DrillingEvent> ownEvents = events.getOrDefault(name, List.of());
        List<PressurePoint> ownPoints = points.getOrDefault(name, List.of());
        List<CasingShoe> ownShoes = shoes.getOrDefault(name, List.of());
        ownTests.forEach(t -> farFromShoe(name, t, ownShoes));
        double deepest = Stream.concat(
                        ownTests.stream().map(StrengthTest::verticalDepth),
                        ownEvents.stream().map(DrillingEvent::verticalDepth))
                .reduce(well.site().datum().groundOrSeabedDepth() + DEEP, Math::max);
        NormalPressure normal = new NormalPressure(well.site().datum(), block.needAmount("water_density"));
        Optional<WellLog> curves = logs.of(name);
        Optional<DensityLog> density = logs.density(well.fields(), curves);
        Range overburden = overburden(well, density, deepest);
        Optional<LogPressure> pressure = logs.pressure(well.fields(), curves, normal, overburden, ownPoints);
        boolean common = density.isEmpty() && !well.fields().has("sediment");
        OffsetWell offset = new OffsetWell(
                name,
                well.distance(),
                normal,
                overburden,
                logs.porePressure(well.fields(), well.porePressure(), pressure, normal),
                ownTests,
                ownPoints,
                ownEvents,
                new OffsetWell.Logged(common, pressure, ownShoes));
        beyondLog(well, offset);
        curves.ifPresent(c -> shownLogs.add(logs.shown(well.fields(), c, density, offset)));
        return offset;
    }

    /** A test of a well without a profile has no pore pressure below the end of the log. */
    private void beyondLog(Known well, OffsetWell offset) {
        List<String> beyond = offset.tests().stream()
                .filter(t -> !offset.porePressure().likely().covers(t.verticalDepth()))
                .map(StrengthTest::name)
                .toList();
        if (well.porePressure().isEmpty() && !beyond.isEmpty()) {
            log.add(
                    well.fields().place("pore_pressure_from"),
                    well.fields().written("pore_pressure_from"),
                    "tells no pore pressure at " + String.join(", ", beyond) + ", beyond the log of " + offset.name(),
                    "give pore_pressure too, which counts beyond the log");
            throw new FaultLog.Incomplete();
        }
    }

    private Range overburden(Known well, Optional<DensityLog> density, double deepest) {
        Fields sediment = well.fields().nested("sediment").orElseGet(() -> block.needNested("sediment"));
        Overburden law = overburden(well.site().datum(), sediment);
        return density.map(d -> law.along(d, deepest)).orElseGet(() -> law.withoutLog(deepest));
    }

    /** What readings are held against; hydrostatic pressure where the pore pressure comes from readings itself. */
    private OffsetWell surroundings(Known well) {
        NormalPressure normal = new NormalPressure(well.site().datum(), block.needAmount("water_density"));
        double ground = well.site().datum().groundOrSeabedDepth();
        Optional<DensityLog> density =
                logs.density(well.fields(), logs.of(well.site().name()));
        return new OffsetWell(
                well.site().name(),
                well.distance(),
                normal,
                overburden(well, density, ground + DEEP).likely(),
                well.porePressure()
                        .map(Range::likely)
                        .orElseGet(() -> normal.profile(Math.max(normal.waterLevel(), ground), ground + DEEP)),
                List.of(),
                List.of(),
                List.of());
    }

    private void farFromShoe(String well, StrengthTest test, List<CasingShoe> ownShoes) {
        Optional<CasingShoe> nearest = ownShoes.stream()
                .min(Comparator.comparingDouble((CasingShoe s) -> Math.abs(s.verticalDepth() - test.verticalDepth()))
                        .thenComparingDouble(CasingShoe::verticalDepth));
        nearest.filter(s -> Math.abs(s.verticalDepth() - test.verticalDepth()) > BELOW_SHOE)
                .ifPresent(s -> warnings.add(new Warning(
                        well + ": " + test.name(),
                        Wording.of(
                                "stands at {}, but the nearest shoe of the well, that of " + s.name()
                                        + ", at {}: a test is made just below a shoe. Check depth, datum and well.",
                                Amount.of(test.verticalDepth(), Measure.DEPTH),
                                Amount.of(s.verticalDepth(), Measure.DEPTH)))));
    }

    private Overburden overburden(Datum where, Fields sediment) {
        OptionalDouble sea = datum.fields().amount("sea_water_density");
        if (where.place() instanceof Datum.AtSea && sea.isEmpty()) {
            log.add(
                    datum.fields().place("sea_water_density"),
                    "",
                    "is missing",
                    "overburden at sea needs the density of the sea");
            throw new FaultLog.Incomplete();
        }
        return new Overburden(where, sea.orElse(SEA_ON_LAND), shallow(sediment));
    }

    /** Has no meaning on land, where no sea weighs on the ground. */
    private static final double SEA_ON_LAND = 1025;

    private Overburden.Shallow shallow(Fields f) {
        if (f.has("mean_density")) {
            return new Overburden.MeanDensity(
                    f.needAmount("mean_density"), f.amount("uncertainty").orElse(0));
        }
        for (String key : List.of("decay_length", "grain_density")) {
            if (!f.has(key)) {
                log.add(f.place(key), "", "is missing", "surface_porosity needs it");
            }
        }
        return new Overburden.Compacting(
                new RockEstimates.Sediment(
                        f.needAmount("surface_porosity"),
                        f.needAmount("decay_length"),
                        f.needAmount("grain_density"),
                        block.needAmount("water_density")),
                f.amount("uncertainty").orElse(0));
    }

    // --- Tables

    private void read(Map<String, Known> known, Map<String, OffsetSite> sites) {
        Set<String> taken = new HashSet<>();
        block.rows(LogBuilder.LOGS).forEach(f -> files(f, taken, (path, shown) -> logs.read(f, path, shown, sites)));
        known.forEach((name, well) -> log.attempt(well.fields().place(), () -> surroundings(well))
                .ifPresent(around -> surroundings.put(name, around)));
        block.rows("tables").forEach(f -> files(f, taken, (path, shown) -> read(f, path, shown, sites)));
        for (Drop drop : drops) {
            checkTaken(drop, taken);
        }
    }

    /** Finds the files of a layout, in the case directory and in the drops. */
    private void files(Fields f, Set<String> taken, BiConsumer<Path, String> reader) {
        if (!f.has("file") && !f.has("drop")) {
            log.add(f.place(), "", "names neither file nor drop", "give one of them, or both");
        }
        f.mapping()
                .get("file")
                .filter(Item.Scalar.class::isInstance)
                .map(Item.Scalar.class::cast)
                .ifPresent(name -> log.attempt(name.place(), () -> directory.data(name))
                        .ifPresent(path -> reader.accept(path, directory.relative(name))));
        f.text("drop").ifPresent(name -> {
            if (!name.equals(Path.of(name.replace('\\', '/')).getFileName().toString())) {
                log.add(
                        f.place("drop"),
                        name,
                        "\"" + name + "\" is not the name of a file",
                        "give the name alone, as it stands in the folder");
            }
            for (Drop drop : drops) {
                Path path = drop.files().get(name);
                if (path != null) {
                    taken.add(drop.shown(name));
                    log.attempt(f.place("drop"), () -> {
                                directory.keep(path, drop.shown(name), f.place("drop"));
                                return path;
                            })
                            .ifPresent(p -> reader.accept(p, drop.shown(name)));
                }
            }
        });
    }

    private void checkTaken(Drop drop, Set<String> taken) {
        String known = Stream.of("tables", LogBuilder.LOGS)
                .flatMap(key -> block.rows(key).stream())
                .map(f -> f.text("drop"))
                .flatMap(Optional::stream)
                .distinct()
                .collect(Collectors.joining(", "));
        if (drop.files().isEmpty() && log.isEmpty()) {
            log.add(new Place(drop.name(), 0, ""), "", "holds no data", "the tables of the case are " + known);
        }
        for (String file : drop.files().keySet()) {
            if (!taken.contains(drop.shown(file))) {
                log.add(
                        new Place(drop.shown(file), 0, ""),
                        "",
                        "is no table that offset_evidence knows",
                        "its tables are " + known + ": rename the file or add how it is to be read");
            }
        }
    }

    private void read(Fields f, Path path, String shown, Map<String, OffsetSite> sites) {
        log.attempt(f.place(), () -> {
            try {
                String holds = f.needText("holds");
                String recorded = EVENTS.containsKey(holds)
                        ? EvidenceRows.EVENTS
                        : holds.equals(CASING)
                                ? EvidenceRows.SHOES
                                : holds.equals("pumping_curves") ? PumpedRows.TESTS : holds;
                files.add(new InputLine("offset_evidence." + recorded, shown));
                if (!holds.equals(CASING) && !f.has("pressure")) {
                    log.add(f.place("pressure"), "", "is missing", "a table of " + holds + " needs it");
                    throw new FaultLog.Incomplete();
                }
                switch (holds) {
                    case CASING:
                        return keep(
                                OffsetTables.shoes(path, format(f), shoeColumns(f), sites),
                                shown,
                                s -> shoes.computeIfAbsent(s.well(), n -> new ArrayList<>())
                                        .add(EvidenceRows.rounded(s.value())),
                                CasingShoe::source);
                    case EvidenceRows.TESTS:
                        RowDoubts testDoubts = new RowDoubts(surroundings, EvidenceDoubt.Reading.STRENGTH);
                        OffsetRows<StrengthTest> read =
                                OffsetTables.strengthTests(path, format(f), strengthColumns(f), sites, testDoubts);
                        warnings.addAll(testDoubts.warnings(shown));
                        warnings.addAll(Spikes.of(shown, read, t -> t.standing().title(), TESTS));
                        return keep(
                                duplicates.without(
                                        shown, read, t -> t.standing().title(), TESTS, warnings),
                                shown,
                                t -> keepTest(t.well(), t.value()),
                                StrengthTest::source);
                    case "losses", "kicks", "mud_weights":
                        RowDoubts eventDoubts = new RowDoubts(surroundings, EvidenceDoubt.Reading.MUD);
                        OffsetRows<DrillingEvent> met = OffsetTables.events(
                                path, format(f), eventColumns(f), EVENTS.get(holds), sites, eventDoubts);
                        warnings.addAll(eventDoubts.warnings(shown));
                        warnings.addAll(Spikes.of(shown, met, e -> "", MET));
                        return keep(
                                duplicates.without(shown, met, e -> e.type().title(), MET, warnings),
                                shown,
                                e -> events.computeIfAbsent(e.well(), n -> new ArrayList<>())
                                        .add(EvidenceRows.rounded(e.value())),
                                DrillingEvent::source);
                    case "pumping_curves":
                        RowDoubts curveDoubts = new RowDoubts(surroundings, EvidenceDoubt.Reading.STRENGTH);
                        OffsetRows<OffsetEvidence.Pumped> curves = OffsetTables.pumpingTests(
                                path, format(f), pumpingColumns(f), leakOff(f), sites, curveDoubts);
                        warnings.addAll(curveDoubts.warnings(shown));
                        return keepPumped(
                                duplicates.without(
                                        shown, curves, p -> p.pick().standing().title(), PUMPED, warnings),
                                shown);
                    default:
                        RowDoubts pointDoubts = new RowDoubts(surroundings, EvidenceDoubt.Reading.FORMATION_PRESSURE);
                        OffsetRows<PressurePoint> measured =
                                OffsetTables.pressurePoints(path, format(f), pointColumns(f), sites, pointDoubts);
                        warnings.addAll(pointDoubts.warnings(shown));
                        warnings.addAll(Spikes.of(shown, measured, p -> "", POINTS));
                        return keep(
                                duplicates.without(shown, measured, p -> EvidenceRows.POINTS, POINTS, warnings),
                                shown,
                                p -> points.computeIfAbsent(p.well(), n -> new ArrayList<>())
                                        .add(EvidenceRows.rounded(p.value())),
                                PressurePoint::source);
                }
            } catch (DataFileFault e) {
                log.add(shown, e);
                throw new FaultLog.Incomplete();
            }
        });
    }

    private <T> boolean keep(
            OffsetRows<T> rows, String shown, Consumer<OffsetRows.Row<T>> into, Function<T, Source> source) {
        if (rows.rows().size() > MOST_ROWS) {
            log.add(
                    new Place(shown, 0, ""),
                    "",
                    "holds " + rows.rows().size() + " readings, more than " + MOST_ROWS,
                    "thin it out: each is weighed against every other");
            throw new FaultLog.Incomplete();
        }
        for (OffsetRows.Row<T> row : rows.rows()) {
            into.accept(row);
            for (OffsetRows.Written cell : row.cells()) {
                String key = "offset_evidence.tables[" + row.well() + "]." + cell.column();
                register.add(
                        new InputValue(key, cell.text(), shown, row.line(), Optional.of(source.apply(row.value()))));
            }
        }
        for (OffsetRows.LeftOut row : rows.leftOut()) {
            warnings.add(new Warning(
                    shown, row.reason().within("line " + row.line() + " of " + row.well() + " is left out: ", ".")));
        }
        if (rows.rows().isEmpty() && rows.leftOut().isEmpty()) {
            warnings.add(new Warning(shown, "holds no rows below its heading: nothing of it counts."));
        }
        return true;
    }

    private boolean keepPumped(OffsetRows<OffsetEvidence.Pumped> rows, String shown) {
        return keep(
                rows,
                shown,
                row -> {
                    OffsetEvidence.Pumped read = PumpedRows.rounded(row.value());
                    warnings.addAll(
                            Spikes.ofPumping(shown, row.well(), read.pick().test()));
                    for (LeakOffPick.Flag flag : read.pick().flags()) {
                        warnings.add(new Warning(
                                row.well() + ": " + read.pick().test().name(), flag.title() + "."));
                    }
                    pumped.add(read);
                },
                p -> p.pick().test().source());
    }

    private void keepTest(String well, StrengthTest test) {
        tests.computeIfAbsent(well, n -> new ArrayList<>()).add(EvidenceRows.rounded(test));
    }

    private OffsetTables.ShoeColumns shoeColumns(Fields f) {
        return new OffsetTables.ShoeColumns(
                TableColumn.text(f.needText("well_column")),
                depth(f.needNested("depth")),
                f.nested("outside_diameter").map(EvidenceBuilder::column),
                labels(f));
    }

    private OffsetTables.EventColumns eventColumns(Fields f) {
        return new OffsetTables.EventColumns(
                TableColumn.text(f.needText("well_column")),
                depth(f.needNested("depth")),
                pressure(f.needNested("pressure")),
                labels(f));
    }

    private OffsetTables.PumpingColumns pumpingColumns(Fields f) {
        for (String key : List.of("volume", "name_column")) {
            if (!f.has(key)) {
                log.add(f.place(key), "", "is missing", "a table of pumping curves needs it");
            }
        }
        if (!(pressure(f.needNested("pressure")) instanceof PressureColumns.Surface surface)) {
            log.add(
                    f.needNested("pressure").place("kind"),
                    f.needNested("pressure").written("kind"),
                    "is not surface",
                    "pumping curves are read at the gauge: give the mud too");
            throw new FaultLog.Incomplete();
        }
        return new OffsetTables.PumpingColumns(
                TableColumn.text(f.needText("well_column")),
                TableColumn.text(f.needText("name_column")),
                depth(f.needNested("depth")),
                column(f.needNested("volume")),
                f.nested("time").map(EvidenceBuilder::column),
                surface);
    }

    static TableColumn column(Fields f) {
        return new TableColumn(f.needText("column"), f.needText("unit"));
    }

    private static LeakOffMethod leakOff(Fields f) {
        return f.text("leak_off").filter("two_lines"::equals).isPresent()
                ? LeakOffMethod.TwoLines.DEFAULT
                : LeakOffMethod.Departure.DEFAULT;
    }

    private static TableFormat format(Fields f) {
        char delimiter =
                switch (f.text("delimiter").orElse("comma")) {
                    case "semicolon" -> ';';
                    case "tab" -> '\t';
                    default -> ',';
                };
        return new TableFormat(
                delimiter,
                f.text("decimal_mark").filter("comma"::equals).isPresent()
                        ? TableFormat.DecimalMark.COMMA
                        : TableFormat.DecimalMark.POINT,
                f.text("missing")
                        .map(t -> Arrays.stream(t.strip().split("\\s+")).collect(Collectors.toSet()))
                        .orElse(Set.of()),
                f.count("lines_of_units").orElse(0),
                f.text("bad_rows").filter("leave_out"::equals).isPresent()
                        ? TableFormat.BadRows.LEAVE_OUT
                        : TableFormat.BadRows.REFUSE_FILE,
                f.text("sheet"));
    }

    private OffsetTables.StrengthColumns strengthColumns(Fields f) {
        return new OffsetTables.StrengthColumns(
                TableColumn.text(f.needText("well_column")),
                depth(f.needNested("depth")),
                pressure(f.needNested("pressure")),
                words(
                        f,
                        "standing",
                        Optional.empty(),
                        r -> r.needChoice("means", Standing.class),
                        k -> f.choice(k, Standing.class)),
                quality(f),
                labels(f));
    }

    private OffsetTables.PointColumns pointColumns(Fields f) {
        return new OffsetTables.PointColumns(
                TableColumn.text(f.needText("well_column")),
                depth(f.needNested("depth")),
                pressure(f.needNested("pressure")),
                quality(f),
                labels(f));
    }

    private WordColumn<Quality> quality(Fields f) {
        return words(
                f,
                "quality",
                Optional.of(Quality.GOOD),
                r -> r.needChoice("means", Quality.class),
                k -> f.choice(k, Quality.class));
    }

    /** A choice for all rows, or a column with its words. */
    private <T> WordColumn<T> words(
            Fields f,
            String key,
            Optional<T> otherwise,
            Function<Fields, T> meaning,
            Function<String, Optional<T>> always) {
        Optional<String> column = f.text(key + "_column");
        Optional<T> fixed = always.apply(key);
        if (column.isPresent() == fixed.isPresent() && (column.isPresent() || otherwise.isEmpty())) {
            log.add(
                    f.place(key),
                    "",
                    column.isPresent() ? "stands beside " + key + "_column" : "is missing",
                    "give either " + key + " or " + key + "_column with " + key + "_words");
            throw new FaultLog.Incomplete();
        }
        if (column.isEmpty()) {
            return WordColumn.always(fixed.or(() -> otherwise).orElseThrow());
        }
        Map<String, T> meanings = new HashMap<>();
        for (Fields r : f.rows(key + "_words")) {
            meanings.put(r.needText("word"), meaning.apply(r));
        }
        if (meanings.isEmpty()) {
            log.add(f.place(key + "_words"), "", "is missing", "say what the words of " + column.get() + " stand for");
            throw new FaultLog.Incomplete();
        }
        return WordColumn.of(column.get(), meanings);
    }

    /** Depth curve of a log, which has one level. */
    static DepthColumns logDepth(Fields f, FaultLog log) {
        if (f.has("below_column")) {
            log.add(f.place("below_column"), f.written("below_column"), "is no column of a log", "state below");
            throw new FaultLog.Incomplete();
        }
        if (!LogUnits.holds(f.needText("unit"), Measure.DEPTH)) {
            throw new FaultLog.Incomplete();
        }
        return new DepthColumns(
                column(f),
                DepthColumns.Kind.valueOf(f.needText("kind").toUpperCase(Locale.ROOT)),
                WordColumn.always(f.text("below").map(EvidenceBuilder::level).orElse(DepthColumns.Level.DATUM)));
    }

    private DepthColumns depth(Fields f) {
        return new DepthColumns(
                new TableColumn(f.needText("column"), f.needText("unit")),
                DepthColumns.Kind.valueOf(f.needText("kind").toUpperCase(Locale.ROOT)),
                words(
                        f,
                        "below",
                        Optional.of(DepthColumns.Level.DATUM),
                        r -> level(r.needText("means")),
                        k -> f.text(k).map(EvidenceBuilder::level)));
    }

    private static DepthColumns.Level level(String word) {
        return DepthColumns.Level.valueOf(word.toUpperCase(Locale.ROOT));
    }

    private PressureColumns pressure(Fields f) {
        TableColumn column = new TableColumn(f.needText("column"), f.needText("unit"));
        switch (f.needText("kind")) {
            case "equivalent":
                return new PressureColumns.Equivalent(
                        column, f.text("below").map(EvidenceBuilder::level).orElse(DepthColumns.Level.DATUM));
            case "downhole":
                return new PressureColumns.Downhole(column);
            default:
                for (String key : List.of("mud_column", "mud_unit")) {
                    if (!f.has(key)) {
                        log.add(f.place(key), "", "is missing", "a surface pressure needs the mud in the hole");
                    }
                }
                return new PressureColumns.Surface(
                        column, new TableColumn(f.needText("mud_column"), f.needText("mud_unit")));
        }
    }

    private static OffsetTables.Labels labels(Fields f) {
        return new OffsetTables.Labels(
                f.text("name_column").map(TableColumn::text),
                f.text("source_column").map(TableColumn::text),
                f.text("place_column").map(TableColumn::text));
    }
}
