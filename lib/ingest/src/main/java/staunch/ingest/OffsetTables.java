package staunch.ingest;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import staunch.earth.CasingShoe;
import staunch.earth.DrillingEvent;
import staunch.earth.LeakOffMethod;
import staunch.earth.LeakOffPick;
import staunch.earth.OffsetEvidence;
import staunch.earth.PressurePoint;
import staunch.earth.PumpingTest;
import staunch.earth.Quality;
import staunch.earth.Standing;
import staunch.earth.StrengthTest;
import staunch.units.Check;
import staunch.units.EquivalentDensity;
import staunch.units.Fault;
import staunch.units.InputFault;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;
import staunch.units.Source;
import staunch.units.Wording;
import staunch.well.Datum;
import staunch.well.WellPath;

/**
 * Reads what was measured in offset wells from CSV tables of any layout: the user names the columns, their units and what
 * depths are measured from. A file is read whole or refused with all its problems; a row without the value in question is
 * left out and listed.
 */
public final class OffsetTables {
    /** Vertical depths that the records of the evidence take, m. */
    private static final double SHALLOWEST = 1;

    private static final double DEEPEST = 20_000;

    private OffsetTables() {}

    /**
     * Columns of a table of wellbores at sea.
     *
     * @param name of the wellbore
     * @param elevation of the rotary table above mean sea level
     * @param waterDepth below mean sea level
     * @param totalDepth measured depth of the bottom
     * @param greatestInclination of the hole
     * @param verticalTo inclination in radians up to which a wellbore without survey is taken as vertical, 0 to 0.2; at
     *     5° all along, vertical depth is overstated by 0.4 %
     */
    public record SiteColumns(
            TableColumn name,
            TableColumn elevation,
            TableColumn waterDepth,
            TableColumn totalDepth,
            TableColumn greatestInclination,
            @Si("rad") double verticalTo) {
        public SiteColumns {
            Objects.requireNonNull(name, "name");
            Check.within("inclination up to which a wellbore is vertical", verticalTo, 0, 0.2, Measure.ANGLE);
        }
    }

    /**
     * Wellbores at sea by name. Where the inclination is beyond the limit or not given, the site has no path.
     *
     * @throws DataFileFault with all problems of the file
     */
    public static Map<String, OffsetSite> sitesAtSea(Path path, TableFormat format, SiteColumns columns)
            throws DataFileFault {
        List<MappedTable.Needed> needed = List.of(
                text(columns.name()),
                new MappedTable.Needed(columns.elevation(), Measure.LENGTH),
                new MappedTable.Needed(columns.waterDepth(), Measure.LENGTH),
                new MappedTable.Needed(columns.totalDepth(), Measure.DEPTH),
                new MappedTable.Needed(columns.greatestInclination(), Measure.ANGLE));
        Map<String, OffsetSite> sites = new TreeMap<>();
        MappedTable.read(path, format, columns.name(), needed, row -> {
            String name = row.text(columns.name()).orElseThrow();
            double elevation = row.needed(columns.elevation(), Measure.LENGTH);
            double water = row.needed(columns.waterDepth(), Measure.LENGTH);
            Datum datum = new Datum("rotary table", elevation, new Datum.AtSea(water, false));
            OptionalDouble inclination = row.number(columns.greatestInclination(), Measure.ANGLE);
            OptionalDouble bottom = row.number(columns.totalDepth(), Measure.DEPTH);
            boolean vertical =
                    inclination.isPresent() && inclination.getAsDouble() <= columns.verticalTo() && bottom.isPresent();
            Optional<WellPath> hole =
                    vertical ? Optional.of(WellPath.vertical(bottom.getAsDouble())) : Optional.empty();
            OffsetSite site = new OffsetSite(name, datum, hole);
            if (sites.putIfAbsent(name, site) != null) {
                throw row.problem(columns.name(), "names " + name + " twice", "keep one of them");
            }
            return site;
        });
        return sites;
    }

    /**
     * Columns of what a row is called and where its author found it.
     *
     * @param name of the test or point; empty where it is named by its depth
     * @param document it comes from; empty where that is the file itself
     * @param place page or line there
     */
    public record Labels(Optional<TableColumn> name, Optional<TableColumn> document, Optional<TableColumn> place) {
        /** None of them. */
        public static final Labels NONE = new Labels(Optional.empty(), Optional.empty(), Optional.empty());

        public Labels {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(document, "document");
            Objects.requireNonNull(place, "place");
        }

        private void addTo(List<MappedTable.Needed> needed) {
            for (Optional<TableColumn> column : List.of(name, document, place)) {
                column.ifPresent(c -> needed.add(text(c)));
            }
        }

        private String name(MappedTable.Row row, String otherwise) {
            return name.flatMap(row::text).orElse(otherwise);
        }

        private Source source(MappedTable.Row row, Source read) {
            Optional<String> named = document.flatMap(row::text);
            if (named.isEmpty()) {
                return read;
            }
            String page = place.flatMap(row::text).map(p -> p + ", ").orElse("");
            return new Source(named.get(), page + "read from " + read.text());
        }
    }

    /**
     * Columns of a table of strength tests.
     *
     * @param well wellbore of the test
     * @param depth of the open hole tested
     * @param pressure of the test
     * @param standing what the test is
     * @param quality what it is worth; rejected tests are left out
     * @param labels of the test
     */
    public record StrengthColumns(
            TableColumn well,
            DepthColumns depth,
            PressureColumns pressure,
            WordColumn<Standing> standing,
            WordColumn<Quality> quality,
            Labels labels) {
        /** Tests named by their depth. */
        public StrengthColumns(
                TableColumn well,
                DepthColumns depth,
                PressureColumns pressure,
                WordColumn<Standing> standing,
                WordColumn<Quality> quality) {
            this(well, depth, pressure, standing, quality, Labels.NONE);
        }

        public StrengthColumns {
            Objects.requireNonNull(labels, "labels");
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(depth, "depth");
            Objects.requireNonNull(pressure, "pressure");
            Objects.requireNonNull(standing, "standing");
            Objects.requireNonNull(quality, "quality");
        }
    }

    /**
     * Leak-off and integrity tests.
     *
     * @param sites wellbores by name
     * @throws DataFileFault with all problems of the file
     */
    public static OffsetRows<StrengthTest> strengthTests(
            Path path, TableFormat format, StrengthColumns columns, Map<String, OffsetSite> sites)
            throws DataFileFault {
        return strengthTests(path, format, columns, sites, RowDoubts.none());
    }

    static OffsetRows<StrengthTest> strengthTests(
            Path path, TableFormat format, StrengthColumns columns, Map<String, OffsetSite> sites, RowDoubts doubts)
            throws DataFileFault {
        List<MappedTable.Needed> needed = new ArrayList<>(List.of(text(columns.well())));
        add(needed, columns.depth());
        add(needed, columns.pressure());
        columns.standing().column().ifPresent(c -> needed.add(text(c)));
        columns.quality().column().ifPresent(c -> needed.add(text(c)));
        columns.labels().addTo(needed);
        return MappedTable.read(path, format, columns.well(), needed, row -> {
            OffsetSite site = site(row, columns.well(), sites);
            leaveOutRejected(row.choice(columns.quality()));
            Standing standing = row.choice(columns.standing());
            OptionalDouble mud = columns.pressure() instanceof PressureColumns.Surface surface
                    ? row.number(surface.mud(), Measure.DENSITY)
                    : OptionalDouble.empty();
            double value = value(row, columns.pressure());
            double depth = verticalDepth(row, columns.depth(), site);
            String name = standing.title() + " at " + Math.round(depth) + " m";
            double atDepth = pressure(row, columns.pressure(), value, depth, site);
            doubts.judge(row, columns.depth(), columns.pressure(), new RowDoubts.Reading(site.name(), depth, atDepth));
            return new StrengthTest(
                    columns.labels().name(row, name),
                    depth,
                    atDepth,
                    standing,
                    mud,
                    columns.labels().source(row, source(row, columns.depth(), columns.pressure())));
        });
    }

    /**
     * Columns of a table of pumping curves: a row for each reading, the rows of a test under one another. A row with a
     * volume was read while pumping, one with a time and no volume with the pump stopped. Depth and mud are the same in all
     * rows of a test.
     *
     * @param well wellbore of the test
     * @param test its name
     * @param depth of the open hole tested
     * @param volume pumped since the start
     * @param time since the pump stopped; empty where that was not recorded
     * @param pressure at the gauge, which stands at the datum, and mud in the hole
     */
    public record PumpingColumns(
            TableColumn well,
            TableColumn test,
            DepthColumns depth,
            TableColumn volume,
            Optional<TableColumn> time,
            PressureColumns.Surface pressure) {
        public PumpingColumns {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(test, "test");
            Objects.requireNonNull(depth, "depth");
            Objects.requireNonNull(volume, "volume");
            Objects.requireNonNull(time, "time");
            Objects.requireNonNull(pressure, "pressure");
        }
    }

    private record PumpingRow(
            String test,
            PumpingTest.Column column,
            Optional<PumpingTest.Pumped> pumped,
            Optional<PumpingTest.ShutIn> shutIn) {}

    /**
     * Pumping curves, with leak-off picked.
     *
     * @param method of the pick
     * @param sites wellbores by name
     * @return one row for each test, at the line of its first reading
     * @throws DataFileFault with all problems of the file
     */
    public static OffsetRows<OffsetEvidence.Pumped> pumpingTests(
            Path path, TableFormat format, PumpingColumns columns, LeakOffMethod method, Map<String, OffsetSite> sites)
            throws DataFileFault {
        return pumpingTests(path, format, columns, method, sites, RowDoubts.none());
    }

    static OffsetRows<OffsetEvidence.Pumped> pumpingTests(
            Path path,
            TableFormat format,
            PumpingColumns columns,
            LeakOffMethod method,
            Map<String, OffsetSite> sites,
            RowDoubts doubts)
            throws DataFileFault {
        List<MappedTable.Needed> needed = new ArrayList<>(List.of(
                text(columns.well()), text(columns.test()), new MappedTable.Needed(columns.volume(), Measure.VOLUME)));
        add(needed, columns.depth());
        add(needed, columns.pressure());
        columns.time().ifPresent(c -> needed.add(new MappedTable.Needed(c, Measure.TIME)));
        OffsetRows<PumpingRow> readings = MappedTable.read(path, format, columns.well(), needed, row -> {
            OffsetSite site = site(row, columns.well(), sites);
            String name = row.text(columns.test())
                    .orElseThrow(() -> row.problem(columns.test(), "is empty", "name the test"));
            double pressure = value(row, columns.pressure());
            double mud = row.needed(columns.pressure().mud(), Measure.DENSITY);
            OptionalDouble volume = row.number(columns.volume(), Measure.VOLUME);
            OptionalDouble time =
                    columns.time().map(c -> row.number(c, Measure.TIME)).orElse(OptionalDouble.empty());
            if (volume.isEmpty() && time.isEmpty()) {
                throw new MappedTable.Skip(columns.volume().heading() + " is not given");
            }
            double depth = verticalDepth(row, columns.depth(), site);
            row.about(columns.pressure().mud());
            PumpingTest.Column column = new PumpingTest.Column(depth, 0, mud);
            if (volume.isPresent()) {
                row.about(columns.volume());
                PumpingTest.Pumped pumped = new PumpingTest.Pumped(volume.getAsDouble(), pressure);
                return new PumpingRow(name, column, Optional.of(pumped), Optional.empty());
            }
            row.about(columns.time().orElseThrow());
            PumpingTest.ShutIn stopped = new PumpingTest.ShutIn(time.getAsDouble(), pressure);
            return new PumpingRow(name, column, Optional.empty(), Optional.of(stopped));
        });
        return picked(readings, columns, method, doubts);
    }

    private static OffsetRows<OffsetEvidence.Pumped> picked(
            OffsetRows<PumpingRow> readings, PumpingColumns columns, LeakOffMethod method, RowDoubts doubts)
            throws DataFileFault {
        Map<List<String>, List<OffsetRows.Row<PumpingRow>>> tests = new LinkedHashMap<>();
        for (OffsetRows.Row<PumpingRow> row : readings.rows()) {
            tests.computeIfAbsent(List.of(row.well(), row.value().test()), k -> new ArrayList<>())
                    .add(row);
        }
        List<OffsetRows.Row<OffsetEvidence.Pumped>> picks = new ArrayList<>();
        List<DataFileFault.Problem> problems = new ArrayList<>();
        tests.forEach((key, rows) -> {
            OffsetRows.Row<PumpingRow> first = rows.get(0);
            PumpingTest.Column column = first.value().column();
            try {
                for (OffsetRows.Row<PumpingRow> row : rows) {
                    if (!row.value().column().equals(column)) {
                        throw new InputFault(
                                "pumping test " + key.get(1),
                                "has another depth or mud in line " + row.line(),
                                "give one of each, or part the tests by name");
                    }
                }
                PumpingTest test = new PumpingTest(
                        key.get(1),
                        rows.stream()
                                .map(r -> r.value().pumped())
                                .flatMap(Optional::stream)
                                .toList(),
                        rows.stream()
                                .map(r -> r.value().shutIn())
                                .flatMap(Optional::stream)
                                .toList(),
                        new Source(
                                readings.file(),
                                "lines " + first.line() + " to "
                                        + rows.get(rows.size() - 1).line()));
                OffsetEvidence.Pumped pumped = new OffsetEvidence.Pumped(key.get(0), pick(test, method, rows), column);
                Optional<Wording> doubt = doubts.judge(
                        test.name(),
                        columns.depth(),
                        columns.pressure(),
                        pumped.pick().pressure(),
                        new RowDoubts.Reading(
                                key.get(0),
                                column.verticalDepth(),
                                pumped.pick().atFormation(column)));
                doubt.ifPresent(d -> problems.add(new DataFileFault.Problem(
                        readings.file(),
                        first.line(),
                        columns.pressure().column().heading(),
                        d,
                        MappedTable.plain(""))));
                List<OffsetRows.Written> cells =
                        rows.stream().flatMap(r -> r.cells().stream()).toList();
                picks.add(new OffsetRows.Row<>(key.get(0), pumped, first.line(), cells));
            } catch (Fault e) {
                problems.add(new DataFileFault.Problem(
                        readings.file(), first.line(), "", e.wording(), MappedTable.plain("")));
            }
        });
        if (!problems.isEmpty()) {
            throw new DataFileFault(problems);
        }
        return new OffsetRows<>(readings.file(), picks, readings.leftOut());
    }

    /** A misreading can make a curve that no method reads: then it is named. */
    private static LeakOffPick pick(PumpingTest test, LeakOffMethod method, List<OffsetRows.Row<PumpingRow>> rows) {
        try {
            return LeakOffPick.of(test, method);
        } catch (InputFault e) {
            List<OffsetRows.Row<PumpingRow>> pumped =
                    rows.stream().filter(r -> r.value().pumped().isPresent()).toList();
            List<Spikes.Apart> apart = Spikes.apartWhilePumping(test.pumped());
            if (apart.isEmpty()) {
                throw e;
            }
            throw new InputFault(
                    "pumping test " + test.name(),
                    "has readings that stand apart from those beside them, in line "
                            + apart.stream()
                                    .map(a ->
                                            String.valueOf(pumped.get(a.index()).line()))
                                    .collect(Collectors.joining(", line "))
                            + ", and cannot be read with them",
                    "take out those rows if they are misreadings");
        }
    }

    /**
     * Columns of a table of formation pressures.
     *
     * @param well wellbore of the point
     * @param depth of the point
     * @param pressure measured
     * @param quality what it is worth; rejected points are left out
     * @param labels of the point
     */
    public record PointColumns(
            TableColumn well,
            DepthColumns depth,
            PressureColumns pressure,
            WordColumn<Quality> quality,
            Labels labels) {
        /** Points named by their depth. */
        public PointColumns(
                TableColumn well, DepthColumns depth, PressureColumns pressure, WordColumn<Quality> quality) {
            this(well, depth, pressure, quality, Labels.NONE);
        }

        public PointColumns {
            Objects.requireNonNull(labels, "labels");
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(depth, "depth");
            Objects.requireNonNull(pressure, "pressure");
            Objects.requireNonNull(quality, "quality");
        }
    }

    /**
     * Formation pressures.
     *
     * @param sites wellbores by name
     * @throws DataFileFault with all problems of the file
     */
    public static OffsetRows<PressurePoint> pressurePoints(
            Path path, TableFormat format, PointColumns columns, Map<String, OffsetSite> sites) throws DataFileFault {
        return pressurePoints(path, format, columns, sites, RowDoubts.none());
    }

    static OffsetRows<PressurePoint> pressurePoints(
            Path path, TableFormat format, PointColumns columns, Map<String, OffsetSite> sites, RowDoubts doubts)
            throws DataFileFault {
        List<MappedTable.Needed> needed = new ArrayList<>(List.of(text(columns.well())));
        add(needed, columns.depth());
        add(needed, columns.pressure());
        columns.quality().column().ifPresent(c -> needed.add(text(c)));
        columns.labels().addTo(needed);
        return MappedTable.read(path, format, columns.well(), needed, row -> {
            OffsetSite site = site(row, columns.well(), sites);
            Quality quality = row.choice(columns.quality());
            leaveOutRejected(quality);
            double value = value(row, columns.pressure());
            double depth = verticalDepth(row, columns.depth(), site);
            double atDepth = pressure(row, columns.pressure(), value, depth, site);
            doubts.judge(row, columns.depth(), columns.pressure(), new RowDoubts.Reading(site.name(), depth, atDepth));
            return new PressurePoint(
                    columns.labels().name(row, "pressure at " + Math.round(depth) + " m"),
                    depth,
                    atDepth,
                    quality,
                    columns.labels().source(row, source(row, columns.depth(), columns.pressure())));
        });
    }

    /**
     * Columns of a table of losses, of kicks, or of muds that drilled without one.
     *
     * @param well wellbore
     * @param depth of the formation
     * @param pressure of the mud on it: losses with the equivalent circulating density where circulating, kicks with the
     *     shut-in drill-pipe pressure where it was read
     * @param labels of the event
     */
    public record EventColumns(TableColumn well, DepthColumns depth, PressureColumns pressure, Labels labels) {
        public EventColumns {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(depth, "depth");
            Objects.requireNonNull(pressure, "pressure");
            Objects.requireNonNull(labels, "labels");
        }
    }

    /**
     * Losses, kicks, or muds that drilled without one.
     *
     * @param type what all rows are
     * @param sites wellbores by name
     * @throws DataFileFault with all problems of the file
     */
    public static OffsetRows<DrillingEvent> events(
            Path path, TableFormat format, EventColumns columns, DrillingEvent.Type type, Map<String, OffsetSite> sites)
            throws DataFileFault {
        return events(path, format, columns, type, sites, RowDoubts.none());
    }

    static OffsetRows<DrillingEvent> events(
            Path path,
            TableFormat format,
            EventColumns columns,
            DrillingEvent.Type type,
            Map<String, OffsetSite> sites,
            RowDoubts doubts)
            throws DataFileFault {
        List<MappedTable.Needed> needed = new ArrayList<>(List.of(text(columns.well())));
        add(needed, columns.depth());
        add(needed, columns.pressure());
        columns.labels().addTo(needed);
        return MappedTable.read(path, format, columns.well(), needed, row -> {
            OffsetSite site = site(row, columns.well(), sites);
            double value = value(row, columns.pressure());
            double depth = verticalDepth(row, columns.depth(), site);
            double atDepth = pressure(row, columns.pressure(), value, depth, site);
            doubts.judge(row, columns.depth(), columns.pressure(), new RowDoubts.Reading(site.name(), depth, atDepth));
            return new DrillingEvent(
                    columns.labels().name(row, type.title() + " at " + Math.round(depth) + " m"),
                    type,
                    depth,
                    atDepth,
                    columns.labels().source(row, source(row, columns.depth(), columns.pressure())));
        });
    }

    /**
     * Columns of a table of mud weights.
     *
     * @param well wellbore
     * @param depth at which it was in use
     * @param density of the mud
     * @param type of the mud
     */
    public record MudColumns(TableColumn well, DepthColumns depth, TableColumn density, TableColumn type) {
        public MudColumns {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(depth, "depth");
            Objects.requireNonNull(density, "density");
            Objects.requireNonNull(type, "type");
        }
    }

    /**
     * Mud weights.
     *
     * @param sites wellbores by name
     * @throws DataFileFault with all problems of the file
     */
    public static OffsetRows<MudRecord> mudWeights(
            Path path, TableFormat format, MudColumns columns, Map<String, OffsetSite> sites) throws DataFileFault {
        List<MappedTable.Needed> needed = new ArrayList<>(List.of(
                text(columns.well()),
                text(columns.type()),
                new MappedTable.Needed(columns.density(), Measure.DENSITY)));
        add(needed, columns.depth());
        return MappedTable.read(path, format, columns.well(), needed, row -> {
            OffsetSite site = site(row, columns.well(), sites);
            double density = row.needed(columns.density(), Measure.DENSITY);
            double depth = verticalDepth(row, columns.depth(), site);
            return new MudRecord(
                    depth,
                    density,
                    row.text(columns.type()).orElse(""),
                    row.source(columns.depth().depth(), columns.density()));
        });
    }

    /**
     * Columns of a table of casing programmes, depths measured below the datum.
     *
     * @param well wellbore
     * @param type of the string
     * @param outsideDiameter of the string
     * @param shoe measured depth of its shoe
     * @param holeDiameter of the hole drilled for it
     * @param holeDepth measured depth of that hole
     */
    public record CasingColumns(
            TableColumn well,
            TableColumn type,
            TableColumn outsideDiameter,
            TableColumn shoe,
            TableColumn holeDiameter,
            TableColumn holeDepth) {
        public CasingColumns {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(type, "type");
            Objects.requireNonNull(outsideDiameter, "outsideDiameter");
            Objects.requireNonNull(shoe, "shoe");
            Objects.requireNonNull(holeDiameter, "holeDiameter");
            Objects.requireNonNull(holeDepth, "holeDepth");
        }
    }

    /**
     * Casing programmes.
     *
     * @param sites wellbores by name
     * @throws DataFileFault with all problems of the file
     */
    public static OffsetRows<CasingRecord> casings(
            Path path, TableFormat format, CasingColumns columns, Map<String, OffsetSite> sites) throws DataFileFault {
        List<MappedTable.Needed> needed = List.of(
                text(columns.well()),
                text(columns.type()),
                new MappedTable.Needed(columns.outsideDiameter(), Measure.DIAMETER),
                new MappedTable.Needed(columns.shoe(), Measure.DEPTH),
                new MappedTable.Needed(columns.holeDiameter(), Measure.DIAMETER),
                new MappedTable.Needed(columns.holeDepth(), Measure.DEPTH));
        return MappedTable.read(path, format, columns.well(), needed, row -> {
            site(row, columns.well(), sites);
            OptionalDouble diameter = row.number(columns.outsideDiameter(), Measure.DIAMETER);
            OptionalDouble holeDiameter = row.number(columns.holeDiameter(), Measure.DIAMETER);
            OptionalDouble holeDepth = row.number(columns.holeDepth(), Measure.DEPTH);
            return new CasingRecord(
                    row.text(columns.type()).orElse(""),
                    diameter,
                    row.needed(columns.shoe(), Measure.DEPTH),
                    holeDiameter,
                    holeDepth,
                    row.source(columns.shoe()));
        });
    }

    /**
     * Columns of a table of casing shoes.
     *
     * @param well wellbore
     * @param depth of the shoe
     * @param outsideDiameter of the string; rows without one are open hole and are left out; empty where no column tells
     * @param labels of the string
     */
    public record ShoeColumns(
            TableColumn well, DepthColumns depth, Optional<TableColumn> outsideDiameter, Labels labels) {
        public ShoeColumns {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(depth, "depth");
            Objects.requireNonNull(outsideDiameter, "outsideDiameter");
            Objects.requireNonNull(labels, "labels");
        }
    }

    /**
     * Casing shoes at vertical depths.
     *
     * @param sites wellbores by name
     * @throws DataFileFault with all problems of the file
     */
    public static OffsetRows<CasingShoe> shoes(
            Path path, TableFormat format, ShoeColumns columns, Map<String, OffsetSite> sites) throws DataFileFault {
        List<MappedTable.Needed> needed = new ArrayList<>(List.of(text(columns.well())));
        add(needed, columns.depth());
        columns.outsideDiameter().ifPresent(c -> needed.add(new MappedTable.Needed(c, Measure.DIAMETER)));
        columns.labels().addTo(needed);
        return MappedTable.read(path, format, columns.well(), needed, row -> {
            OffsetSite site = site(row, columns.well(), sites);
            OptionalDouble diameter = columns.outsideDiameter()
                    .map(c -> row.number(c, Measure.DIAMETER))
                    .orElse(OptionalDouble.empty());
            if (columns.outsideDiameter().isPresent() && diameter.isEmpty()) {
                throw new MappedTable.Skip("has no outside diameter: no casing");
            }
            diameter.ifPresent(d -> Check.within("outside diameter of the casing", d, 0.05, 2, Measure.DIAMETER));
            double depth = verticalDepth(row, columns.depth(), site);
            return new CasingShoe(
                    columns.labels().name(row, "shoe at " + Math.round(depth) + " m"),
                    depth,
                    diameter,
                    columns.labels().source(row, row.source(columns.depth().depth())));
        });
    }

    private static MappedTable.Needed text(TableColumn column) {
        return new MappedTable.Needed(column, null);
    }

    private static void add(List<MappedTable.Needed> needed, DepthColumns depth) {
        needed.add(new MappedTable.Needed(depth.depth(), Measure.DEPTH));
        depth.level().column().ifPresent(c -> needed.add(text(c)));
    }

    private static void add(List<MappedTable.Needed> needed, PressureColumns pressure) {
        if (pressure instanceof PressureColumns.Equivalent e) {
            needed.add(new MappedTable.Needed(e.column(), Measure.EQUIVALENT_DENSITY));
        } else if (pressure instanceof PressureColumns.Downhole d) {
            needed.add(new MappedTable.Needed(d.column(), Measure.PRESSURE_ABSOLUTE));
        } else if (pressure instanceof PressureColumns.Surface s) {
            needed.add(new MappedTable.Needed(s.pressure(), Measure.PRESSURE_GAUGE));
            needed.add(new MappedTable.Needed(s.mud(), Measure.DENSITY));
        }
    }

    private static OffsetSite site(MappedTable.Row row, TableColumn well, Map<String, OffsetSite> sites) {
        String name = row.text(well).orElseThrow();
        OffsetSite site = sites.get(name);
        if (site == null) {
            throw row.problem(
                    well,
                    "names the unknown well \"" + name + "\"",
                    Words.nearestOfNumber(name, sites.keySet())
                            .map(near -> "did you mean \"" + near + "\"?")
                            .orElse("add it to the wells, or check its spelling; known are "
                                    + String.join(", ", new TreeSet<>(sites.keySet()))));
        }
        return site;
    }

    private static void leaveOutRejected(Quality quality) {
        if (quality == Quality.REJECTED) {
            throw new MappedTable.Skip("is flagged as rejected");
        }
    }

    private static double verticalDepth(MappedTable.Row row, DepthColumns columns, OffsetSite site) {
        double depth = row.needed(columns.depth(), Measure.DEPTH);
        DepthColumns.Level level = row.choice(columns.level());
        row.about(columns.depth());
        if (columns.kind() == DepthColumns.Kind.VERTICAL) {
            return Check.within(
                    "vertical depth below the datum", depth + site.depthOf(level), SHALLOWEST, DEEPEST, Measure.DEPTH);
        }
        if (level != DepthColumns.Level.DATUM) {
            throw row.problem(
                    columns.depth(),
                    "is a measured depth below " + level.title(),
                    "give measured depths below the well's datum, or vertical ones");
        }
        WellPath path = site.path().orElseThrow(() -> new MappedTable.Skip("has a measured depth, but no survey"));
        return Check.within(
                "vertical depth below the datum", path.verticalDepth(depth), SHALLOWEST, DEEPEST, Measure.DEPTH);
    }

    private static double value(MappedTable.Row row, PressureColumns pressure) {
        if (pressure instanceof PressureColumns.Equivalent e) {
            return row.needed(e.column(), Measure.EQUIVALENT_DENSITY);
        }
        if (pressure instanceof PressureColumns.Downhole d) {
            return row.needed(d.column(), Measure.PRESSURE_ABSOLUTE);
        }
        TableColumn column = pressure.column();
        double gauge = row.needed(column, Measure.PRESSURE_GAUGE);
        if (gauge < 0) {
            throw row.problem(
                    column,
                    row.cited(column) + " is negative",
                    "give the pressure of the gauge, or leave the cell empty");
        }
        return gauge;
    }

    private static double pressure(
            MappedTable.Row row, PressureColumns columns, double value, double depth, OffsetSite site) {
        row.about(columns.column());
        if (columns instanceof PressureColumns.Equivalent e) {
            return EquivalentDensity.pressure(value, depth - site.depthOf(e.below()));
        }
        if (columns instanceof PressureColumns.Downhole) {
            return value;
        }
        double mud = row.needed(((PressureColumns.Surface) columns).mud(), Measure.DENSITY);
        Check.within("density of the mud", mud, 500, 2700, Measure.DENSITY);
        row.about(columns.column());
        return Physics.ATMOSPHERE + value + mud * Physics.GRAVITY * depth;
    }

    private static Source source(MappedTable.Row row, DepthColumns depth, PressureColumns pressure) {
        if (pressure instanceof PressureColumns.Equivalent e) {
            return row.source(depth.depth(), e.column());
        }
        if (pressure instanceof PressureColumns.Downhole d) {
            return row.source(depth.depth(), d.column());
        }
        PressureColumns.Surface surface = (PressureColumns.Surface) pressure;
        return row.source(depth.depth(), surface.pressure(), surface.mud());
    }
}
