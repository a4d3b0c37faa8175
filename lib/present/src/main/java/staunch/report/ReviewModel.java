package staunch.report;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.TemplateModelException;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import staunch.chart.ChartImage;
import staunch.chart.Charts;
import staunch.chart.EvidenceCharts;
import staunch.chart.Figure;
import staunch.chart.NotDrawn;
import staunch.chart.OperationCharts;
import staunch.design.CaseHeader;
import staunch.design.CasingDesign;
import staunch.design.Sensitivity;
import staunch.design.WellCase;
import staunch.earth.EquivalentZero;
import staunch.envelope.BullheadingOutcome;
import staunch.envelope.CirculationOutcome;
import staunch.envelope.DepthPoint;
import staunch.envelope.InfluxMargin;
import staunch.envelope.KickOperations;
import staunch.envelope.KickResult;
import staunch.envelope.LubricationOutcome;
import staunch.envelope.Maasp;
import staunch.envelope.Masp;
import staunch.envelope.MigrationOutcome;
import staunch.envelope.MudFlowOutcome;
import staunch.envelope.NotAssessed;
import staunch.envelope.PressureWindow;
import staunch.envelope.RiserOutcome;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SectionOperations;
import staunch.envelope.SectionPlan;
import staunch.envelope.SurfaceGasOutcome;
import staunch.envelope.SurfaceLimit;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;
import staunch.envelope.VolumetricOutcome;
import staunch.envelope.WellEnvelope;
import staunch.fluid.Mud;
import staunch.limit.PressureRating;
import staunch.table.EvidenceTables;
import staunch.table.OperationTables;
import staunch.table.OperationWords;
import staunch.table.ResultTable;
import staunch.table.ResultWords;
import staunch.table.SensitivityTables;
import staunch.table.TableHtml;
import staunch.table.Tables;
import staunch.units.Measure;
import staunch.units.Source;
import staunch.units.UnitSystem;
import staunch.units.Warning;

/** What the template shows, as plain texts, tables and figures; only tables and figures are markup already. */
final class ReviewModel {
    private static final String NONE = "–";
    private static final int ROWS_ALONG = 13;

    /** Rows of a table that is kept whole on one sheet. */
    private static final int WHOLE = 20;

    /** Lines of such a table as text, where sentences are folded: more of them may take most of a sheet. */
    private static final int WHOLE_LINES = 28;

    private static final String HALF = "half";

    private static final double SAME_DEPTH = 0.01;

    /** Symbols of the hand calculation carry their index after a low line. */
    private static final Pattern INDEX = Pattern.compile("\\b(\\p{L})_(\\p{L})\\b", Pattern.UNICODE_CHARACTER_CLASS);

    /** The typeface of the PDF has no lowered figures. */
    private static final Pattern LOW_FIGURE = Pattern.compile("[₀-₉]");

    private final Review review;
    private final WellCase wellCase;
    private final WellEnvelope envelope;
    private final UnitSystem units;
    private final Function<ChartImage, String> drawing;
    private final SharedAssumptions shared;
    private final SharedAssumptions sharedAfter;
    private final boolean paged;
    private int titles;

    /**
     * @param drawing how a chart is set into the page
     * @param paged whether the page is to be cut into sheets with running head and foot; tables whose numbers a chart
     *     shows are left out then
     */
    ReviewModel(Review review, UnitSystem units, Function<ChartImage, String> drawing, boolean paged) {
        this.review = review;
        this.wellCase = review.wellCase();
        this.envelope = review.envelope();
        this.units = units;
        this.drawing = drawing;
        this.paged = paged;
        this.shared = SharedAssumptions.of(
                envelope.sections().stream().map(SectionEnvelope::assumptions).toList());
        this.sharedAfter = SharedAssumptions.of(
                review.operations().stream().map(SectionOperations::assumptions).toList());
    }

    Map<String, Object> root(String css) {
        CasingDesign design = wellCase.design(envelope.design());
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("css", markup(css));
        root.put("paged", paged);
        root.put("companions", List.of());
        root.put("header", header());
        root.put("answer", ResultWords.verdict(envelope.sections()));
        root.put("maspAnswer", ResultWords.maspFailures(envelope.sections(), units));
        root.put("departures", ResultWords.departures(envelope.options(), wellCase.evidence()));
        root.put("marginUnit", units.label(Measure.PRESSURE_DIFFERENCE));
        root.put("maspBasis", envelope.options().maspBasis().title());
        root.put("maaspUnit", units.label(Measure.PRESSURE_GAUGE));
        root.put("schematic", figure(Charts.schematic(wellCase, envelope, units)));
        root.put("wellWindow", figure(Charts.pressureWindow(wellCase, envelope, units)));
        EquivalentZero zero = EquivalentZero.of(envelope.options().equivalentDensityFrom(), wellCase.datum());
        root.put(
                "programme",
                rows(List.of(
                        Tables.casingProgramme(design, units),
                        Tables.holeProgramme(design, units),
                        Tables.criteria(design, units),
                        Tables.strengthTests(wellCase.earth(), zero, units))));
        root.put(
                "evidence",
                wellCase.evidence()
                        .map(e -> rows(EvidenceTables.all(e, zero, units)))
                        .orElse(List.of()));
        root.put(
                "logCharts",
                wellCase.evidence()
                        .map(e -> e.logs().stream()
                                .filter(l -> l.pressure().isPresent())
                                .flatMap(l -> Stream.of(
                                        figure(EvidenceCharts.log(l, units)),
                                        figure(EvidenceCharts.logPressure(e, l, units))))
                                .toList())
                        .orElse(List.of()));
        root.put(
                "pumpingCharts",
                wellCase.evidence()
                        .map(e -> e.pumped().stream()
                                .map(p -> figure(EvidenceCharts.pumpingTest(p.pick(), units)))
                                .toList())
                        .orElse(List.of()));
        root.put("register", table(EvidenceTables.registerInBrief(wellCase.register(), units)));
        root.put(
                "warnings",
                warnings(Stream.concat(wellCase.warnings().stream(), envelope.warnings().stream())
                        .distinct()
                        .toList()));
        root.put("methods", table(Tables.methods(envelope.options(), units)));
        root.put(
                "files",
                wellCase.files().stream()
                        .map(f -> Map.of("path", f.path(), "sha256", f.sha256()))
                        .toList());
        root.put(
                "shared",
                rows(List.of(
                        Tables.assumptions("Assumptions of every section", shared.shared(), units),
                        Tables.assumptions(
                                "Assumptions of the operations in every section", sharedAfter.shared(), units))));
        List<Map<String, Object>> sections = new ArrayList<>();
        for (int i = 0; i < envelope.sections().size(); i++) {
            sections.add(section(envelope.sections().get(i), i + 1));
        }
        root.put("sections", sections);
        root.put(
                "allSources",
                envelope.sections().stream()
                        .flatMap(s -> sources(s).stream())
                        .distinct()
                        .toList());
        root.put(
                "inputs",
                rows(List.of(Tables.sectionInputs(
                        envelope.sections().stream().map(SectionEnvelope::plan).toList(), units))));
        return root;
    }

    private Map<String, Object> header() {
        CaseHeader header = wellCase.header();
        Map<String, Object> block = new LinkedHashMap<>();
        block.put("well", header.well());
        block.put("title", header.title());
        block.put("revision", header.revision().orElse(NONE));
        block.put("date", header.date().orElse(NONE));
        block.put("prepared", header.preparedBy().orElse(NONE));
        block.put("checked", header.checkedBy().orElse(NONE));
        block.put("approved", header.approvedBy().orElse(NONE));
        block.put("notice", header.notice().orElse(""));
        block.put("design", envelope.design());
        block.put("units", units.name());
        block.put("datum", wellCase.datum().name());
        return block;
    }

    private Map<String, Object> section(SectionEnvelope section, int number) {
        SectionPlan plan = section.plan();
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("id", "section-" + number);
        model.put("name", plan.name());
        model.put("outcome", section.verdict().outcome().name());
        model.put("outcomeTitle", section.verdict().outcome().title());
        model.put("statement", ResultWords.detail(section.verdict(), units));
        model.put("governing", orNone(section.verdict().governing()));
        model.put("depths", depths(plan.topDepth(), plan.bottomDepth()) + " MD");
        model.put("facts", facts(section));
        model.put("drilled", kick(section, section.drilled()));
        model.put("swabbed", kick(section, section.swabbed()));
        model.put("largestIntensity", TableHtml.minus(ResultWords.text(section.largestIntensity(), units)));
        model.put("zeroGain", TableHtml.minus(ResultWords.text(section.zeroGainMargin(), units)));
        model.put("windowVerdict", section.window().verdict().statement(units));
        model.put(
                "formationMaasp",
                (ResultWords.strengthPartlyUnknown(section.maasp()) ? "at most " : "")
                        + pressure(section, Maasp::formation));
        model.put("lowestLimit", (atMost(section) ? "at most " : "") + pressure(section, Maasp::lowest));
        model.put(
                "lowestAt",
                section.maasp().flatMap(Maasp::lowest).map(SurfaceLimit::name).orElse(""));
        model.put("masps", section.masps().stream().map(this::masp).toList());
        model.put("warnings", warnings(section.warnings()));
        Figure window = Charts.pressureWindow(wellCase, section, units);
        List<Figure> figures = section.verdict().outcome() == Verdict.Outcome.NOT_SHUT_IN
                ? List.of(window)
                : List.of(
                        window,
                        Charts.toleranceAlongSection(section, units),
                        Charts.volumeAgainstIntensity(section, units),
                        Charts.maaspAgainstMud(section, units),
                        Charts.marginWhileCirculating(section, units));
        Optional<Sensitivity> sensitivity = review.sensitivity(plan.name());
        sensitivity.ifPresent(s -> model.put("sensitivity", sensitivity(s)));
        if (paged && sensitivity.isPresent()) {
            figures = Stream.concat(figures.stream(), Stream.of(Charts.tornado(sensitivity.get(), units)))
                    .toList();
        }
        model.put(
                "figures",
                figures.stream()
                        .filter(ChartImage.class::isInstance)
                        .map(this::figure)
                        .toList());
        model.put("notDrawn", notDrawn(figures));
        List<ResultTable> limits = new ArrayList<>();
        limits.add(Tables.influxMargins(section, units));
        section.maasp().ifPresent(m -> limits.add(Tables.maasp(m, units)));
        limits.add(Tables.masp(section, units));
        if (!paged) {
            limits.addAll(ratings(section));
        }
        model.put("limits", rows(limits));
        model.put(
                "assumptions",
                rows(List.of(Tables.assumptions("Assumptions", shared.rest(section.assumptions()), units))));
        model.put("sources", sources(section));
        model.put("details", details(section));
        review.operations(plan.name()).ifPresent(o -> model.put("operations", operations(section, o)));
        return model;
    }

    /** On sheets the chart stands among the others. */
    private Map<String, Object> sensitivity(Sensitivity sensitivity) {
        List<Figure> figures = paged ? List.of() : List.of(Charts.tornado(sensitivity, units));
        return Map.of(
                "rows",
                rows(List.of(SensitivityTables.brief(sensitivity, units))),
                "figures",
                figures.stream()
                        .filter(ChartImage.class::isInstance)
                        .map(this::figure)
                        .toList(),
                "notDrawn",
                notDrawn(figures));
    }

    /** After an influx: answers, then the charts and tables of the drilled kick, or of the swabbed where that is none. */
    private Map<String, Object> operations(SectionEnvelope section, SectionOperations operations) {
        Map<String, Object> model = new LinkedHashMap<>();
        Optional<KickOperations.Followed> followed = shown(operations);
        if (followed.isEmpty()) {
            model.put("notAssessed", ((NotAssessed) operations.swabbed()).summary(units));
            return model;
        }
        KickOperations.Followed kick = followed.get();
        model.put("notAssessed", "");
        model.put("waitDrilled", OperationWords.wait(operations.drilled(), units));
        model.put("waitSwabbed", OperationWords.wait(operations.swabbed(), units));
        model.put("answers", rows(List.of(OperationTables.answers(operations, units))));
        model.put("shown", kick.kick().scenario().title() + ", " + OperationWords.influx(kick, units));
        List<Figure> figures = operationFigures(section, kick);
        model.put(
                "figures",
                figures.stream()
                        .filter(ChartImage.class::isInstance)
                        .map(this::figure)
                        .toList());
        model.put("notDrawn", notDrawn(figures));
        model.put(
                "assumptions",
                rows(List.of(Tables.assumptions(
                        "Assumptions of the operations", sharedAfter.rest(operations.assumptions()), units))));
        model.put("warnings", warnings(operations.warnings()));
        String file = review.subject(section.plan().name(), kick, units).fileName() + ".html";
        model.put("killSheet", Review.killSheet(kick).isPresent() ? file : "");
        return model;
    }

    /** What stands behind the answers of a section: for who wants to check a number, not for who wants the answer. */
    private List<Map<String, Object>> details(SectionEnvelope section) {
        List<Map<String, Object>> details = new ArrayList<>();
        boolean shutIn = section.verdict().outcome() != Verdict.Outcome.NOT_SHUT_IN;
        List<ResultTable> tolerance = new ArrayList<>();
        if (shutIn) {
            tolerance.add(Tables.influxes(section, units));
        }
        Optional<String> nowhere = nowhereAssessed(section);
        if (!paged) {
            if (nowhere.isEmpty()) {
                tolerance.add(Tables.toleranceAlongSection(section, units).thinned(ROWS_ALONG));
            }
            tolerance.add(Tables.volumeAgainstIntensity(section, units).thinned(ROWS_ALONG));
            tolerance.add(Tables.maaspAgainstMud(section, units).thinned(ROWS_ALONG));
            tolerance.add(Tables.pressureWindow(section, units).thinned(ROWS_ALONG));
        }
        if (paged) {
            details.add(detail("Ratings", "", rows(ratings(section))));
        }
        details.add(detail(
                "Kick tolerance, MAASP and pressure window in numbers",
                nowhere.map(r -> "Tolerance is not assessed at any depth of the section: " + r + ".")
                        .orElse(""),
                rows(tolerance)));
        review.operations(section.plan().name())
                .filter(o -> shutIn)
                .flatMap(o -> shown(o).map(k -> behind(o, k)))
                .ifPresent(t -> details.add(detail("After an influx, step by step", "", rows(t))));
        details.add(detail("Hand calculation beside the full answer", "", paired(hands(section))));
        List<ResultTable> inputs = new ArrayList<>();
        if (!paged) {
            inputs.add(Tables.sectionInputs(section.plan(), units));
        }
        inputs.add(Tables.openHole(section.plan(), units));
        inputs.add(Tables.drillString(section.plan(), units));
        details.add(detail("Inputs", "", rows(inputs)));
        details.removeIf(d -> ((List<?>) d.get("rows")).isEmpty());
        return details;
    }

    private List<ResultTable> ratings(SectionEnvelope section) {
        return section.masps().stream().map(m -> Tables.maspChecks(m, units)).toList();
    }

    private static Map<String, Object> detail(String title, String note, List<List<Map<String, Object>>> rows) {
        return Map.of("title", title, "note", note, "rows", rows);
    }

    /** The course whose charts and tables are shown: the drilled kick, or the swabbed where that is none. */
    private static Optional<KickOperations.Followed> shown(SectionOperations operations) {
        return Stream.of(operations.drilled(), operations.swabbed())
                .filter(KickOperations.Followed.class::isInstance)
                .map(KickOperations.Followed.class::cast)
                .findFirst();
    }

    private List<ResultTable> behind(SectionOperations operations, KickOperations.Followed kick) {
        List<ResultTable> tables = new ArrayList<>();
        if (kick.migration() instanceof MigrationOutcome.Computed migration) {
            tables.add(OperationTables.timeToLimit(migration, units));
        }
        tables.add(OperationTables.circulationPeaks(kick.circulations(), units));
        if (kick.surfaceGas() instanceof SurfaceGasOutcome.Computed gas) {
            tables.add(OperationTables.gasAtSurface(gas, units));
        }
        if (kick.volumetric() instanceof VolumetricOutcome.Computed volumetric) {
            tables.add(OperationTables.volumetric(volumetric.table(), units).thinned(ROWS_ALONG));
        }
        if (kick.lubrication() instanceof LubricationOutcome.Computed lubrication) {
            tables.add(OperationTables.lubricateAndBleed(lubrication.table(), units)
                    .thinned(ROWS_ALONG));
        }
        if (kick.bullheading() instanceof BullheadingOutcome.Computed bullheading) {
            tables.add(OperationTables.bullheading(bullheading, units));
        }
        if (operations.riser() instanceof RiserOutcome.Computed riser) {
            tables.add(OperationTables.riser(riser, units));
        }
        if (operations.mudFlow() instanceof MudFlowOutcome.Computed flow) {
            tables.addAll(OperationTables.mudFlow(flow, units));
        }
        if (kick.drillers() instanceof CirculationOutcome.Computed drillers) {
            drillers.byHand().forEach(h -> tables.add(OperationTables.byHand(h, units)));
        }
        return tables;
    }

    private List<Figure> operationFigures(SectionEnvelope section, KickOperations.Followed kick) {
        String name = section.plan().name();
        List<CirculationOutcome.Computed> runs = kick.circulations();
        List<Figure> figures = new ArrayList<>();
        if (kick.migration() instanceof MigrationOutcome.Computed migration) {
            figures.add(OperationCharts.migration(name, migration, units));
        }
        if (runs.isEmpty()) {
            String reason = ((NotAssessed) kick.drillers()).summary(units);
            figures.add(new NotDrawn("Choke and shoe pressure while circulating out, " + name, reason));
            return figures;
        }
        figures.add(OperationCharts.chokePressure(name, runs, units));
        for (int i = 0; i < kick.watched().size(); i++) {
            double depth = kick.watched().get(i).measuredDepth();
            if (Math.abs(depth - section.plan().topDepth()) < SAME_DEPTH) {
                figures.add(OperationCharts.watchedPressure(name, runs, i, limitAt(section, depth), units));
            }
        }
        if (!paged) {
            figures.add(OperationCharts.closestLimit(name, runs.get(0), units));
        }
        return figures;
    }

    private static OptionalDouble limitAt(SectionEnvelope section, double depth) {
        return section.window().points().stream()
                .filter(p -> Math.abs(p.measuredDepth() - depth) < SAME_DEPTH)
                .map(PressureWindow.Point::limit)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    /** Titles of the charts that have no data, together where the reason is the same. */
    private static List<Map<String, String>> notDrawn(List<Figure> figures) {
        Map<String, List<String>> titles = new LinkedHashMap<>();
        for (Figure figure : figures) {
            if (figure instanceof NotDrawn not) {
                titles.computeIfAbsent(not.reason(), r -> new ArrayList<>()).add(not.title());
            }
        }
        return titles.entrySet().stream()
                .map(e -> Map.of("titles", String.join("; ", e.getValue()), "reason", e.getKey()))
                .toList();
    }

    /** The one reason for which no depth of the section has a tolerance; a table would only repeat it. */
    private Optional<String> nowhereAssessed(SectionEnvelope section) {
        Set<String> reasons = new LinkedHashSet<>();
        for (DepthPoint point : section.alongSection()) {
            for (Tolerance tolerance : List.of(point.drilled(), point.swabbed())) {
                if (!(tolerance instanceof Tolerance.NotAssessed not)) {
                    return Optional.empty();
                }
                reasons.add(not.reason(units));
            }
        }
        return reasons.size() == 1 ? reasons.stream().findFirst() : Optional.empty();
    }

    private Map<String, Object> masp(Masp masp) {
        return Map.of(
                "basis", ResultWords.basis(masp.basis(), units),
                "pressure",
                        masp.pressure().isPresent()
                                ? units.number(
                                        masp.pressure().getAsDouble(), Measure.PRESSURE_GAUGE, RoundingMode.CEILING)
                                : NONE,
                "at", masp.at(),
                "full", ResultWords.masp(Optional.of(masp), units),
                "outcome", masp.verdict().outcome().name(),
                "outcomeTitle", masp.verdict().outcome().title(),
                "statement", ResultWords.detail(masp.verdict(), units));
    }

    private Map<String, Object> kick(SectionEnvelope section, KickResult kick) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("headline", ResultWords.formation(section, kick, units));
        model.put("note", ResultWords.note(kick.tolerance(), units));
        model.put("toSurface", ResultWords.headline(kick.circulatedToSurface(), units));
        model.put("toSurfaceFull", ResultWords.full(kick.circulatedToSurface(), units));
        model.put("full", ResultWords.full(kick.tolerance(), units));
        model.put("likely", ResultWords.brief(kick.likelyTolerance(), units));
        model.put("verdict", kick.verdict().statement(units));
        model.put(
                "requiredText",
                kick.required().isPresent()
                        ? "required " + units.text(kick.required().getAsDouble(), Measure.VOLUME, RoundingMode.CEILING)
                        : "no criterion");
        model.put(
                "margin",
                ResultWords.margin(section, kick.scenario())
                        .map(InfluxMargin::least)
                        .map(m -> units.number(m, Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR))
                        .map(m -> m.replace('-', '−'))
                        .orElse(NONE));
        return model;
    }

    private List<Map<String, Object>> hands(SectionEnvelope section) {
        List<Map<String, Object>> hands = new ArrayList<>();
        for (KickResult kick : List.of(section.drilled(), section.swabbed())) {
            kick.hand().ifPresent(hand -> {
                Map<String, Object> model = table(Tables.handCalculation(hand, units));
                model.put("name", "Hand calculation, " + kick.scenario().title());
                hands.add(model);
            });
        }
        return hands;
    }

    private static String withIndices(String html) {
        String letters = INDEX.matcher(html).replaceAll("$1<sub>$2</sub>");
        return LOW_FIGURE.matcher(letters).replaceAll(m -> "<sub>" + (m.group().charAt(0) - '₀') + "</sub>");
    }

    private String facts(SectionEnvelope section) {
        SectionPlan plan = section.plan();
        String mud = plan.mud()
                .map(Mud::density)
                .map(d -> "mud " + units.text(d, Measure.DENSITY))
                .orElse("mud not given");
        return units.text(plan.bitDiameter(), Measure.DIAMETER)
                + " hole, "
                + depths(plan.topDepth(), plan.bottomDepth())
                + " MD, "
                + (section.shoeVerticalDepth().isPresent()
                                && section.bottomVerticalDepth().isPresent()
                        ? depths(
                                        section.shoeVerticalDepth().getAsDouble(),
                                        section.bottomVerticalDepth().getAsDouble())
                                + " TVD, "
                        : "")
                + mud
                + ", "
                + plan.drilling().title();
    }

    private String depths(double from, double to) {
        return units.number(from, Measure.DEPTH) + " to " + units.text(to, Measure.DEPTH);
    }

    private String pressure(SectionEnvelope section, Function<Maasp, Optional<SurfaceLimit>> which) {
        OptionalDouble pressure =
                section.maasp().flatMap(which).map(SurfaceLimit::pressure).orElse(OptionalDouble.empty());
        return pressure.isPresent()
                ? units.number(pressure.getAsDouble(), Measure.PRESSURE_GAUGE, RoundingMode.FLOOR)
                : NONE;
    }

    private static boolean atMost(SectionEnvelope section) {
        return section.maasp().filter(m -> m.lowest().isPresent() && m.atMost()).isPresent();
    }

    private List<String> sources(SectionEnvelope section) {
        Set<String> sources = new LinkedHashSet<>();
        double top = section.shoeVerticalDepth().orElse(Double.POSITIVE_INFINITY);
        double bottom = section.bottomVerticalDepth().orElse(Double.NEGATIVE_INFINITY);
        section.plan()
                .criteria()
                .ifPresent(c -> sources.add("Criteria: " + c.source().text()));
        wellCase.earth().tests().stream()
                .filter(t -> t.verticalDepth() >= top - 20 && t.verticalDepth() <= bottom)
                .forEach(t -> sources.add(t.name() + ": " + t.source().text()));
        wellCase.earth().weakZones().stream()
                .filter(z -> z.topVerticalDepth() <= bottom && z.bottomVerticalDepth() >= top)
                .forEach(z ->
                        sources.add("Weak zone " + z.name() + ": " + z.source().text()));
        wellCase.equipment().wellhead().ifPresent(r -> rating(r, sources));
        wellCase.equipment().chokeManifold().ifPresent(r -> rating(r, sources));
        wellCase.equipment().stack().forEach(e -> e.rating().ifPresent(r -> rating(r, sources)));
        return List.copyOf(sources);
    }

    private static void rating(PressureRating rating, Set<String> sources) {
        rating.source().map(Source::text).ifPresent(s -> sources.add("Rating of " + rating.equipment() + ": " + s));
    }

    private List<Map<String, String>> warnings(List<Warning> warnings) {
        return warnings.stream()
                .map(w -> Map.of("subject", w.subject(), "text", w.text(units)))
                .toList();
    }

    /** Tables that have rows, in rows of one, or of two where both take half a sheet. */
    private List<List<Map<String, Object>>> rows(List<ResultTable> tables) {
        return paired(
                tables.stream().filter(t -> t.rowCount() > 0).map(this::table).toList());
    }

    private static List<List<Map<String, Object>>> paired(List<Map<String, Object>> tables) {
        List<List<Map<String, Object>>> rows = new ArrayList<>();
        Map<String, Object> alone = null;
        for (Map<String, Object> table : tables) {
            if (!table.get("shape").equals(HALF)) {
                rows.add(List.of(table));
                alone = null;
            } else if (alone == null) {
                rows.add(List.of(table));
                alone = table;
            } else {
                rows.set(rows.size() - 1, List.of(alone, table));
                alone = null;
            }
        }
        return rows;
    }

    /** How a table is set on sheets: beside another, whole, or going on over the end of a sheet. */
    private static String shape(ResultTable table) {
        if (table.rowCount() > WHOLE || table.text().lines().count() > WHOLE_LINES) {
            return "long";
        }
        return table.isNarrow() ? HALF : "short";
    }

    private Map<String, Object> table(ResultTable table) {
        Map<String, Object> model = new LinkedHashMap<>();
        String id = "table-" + ++titles;
        model.put("id", id);
        model.put("name", table.name());
        model.put("caption", table.caption());
        model.put("empty", table.rowCount() == 0);
        model.put("shape", shape(table));
        String html = named(table.html(), id);
        model.put("html", markup(table.hasColumn("Formula") ? withIndices(html) : html));
        return model;
    }

    /** The heading above a table is its name for those who hear the page. */
    private static String named(String html, String id) {
        return html.replaceFirst("<table ", "<table aria-labelledby=\"" + id + "\" ");
    }

    private Map<String, Object> figure(Figure figure) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("title", figure.title());
        if (figure instanceof ChartImage image) {
            model.put("drawn", true);
            model.put("html", markup(drawing.apply(image)));
        } else {
            model.put("drawn", false);
            model.put("reason", ((NotDrawn) figure).reason());
        }
        return model;
    }

    private static String orNone(String text) {
        return text.isEmpty() ? NONE : text;
    }

    static Object markup(String html) {
        try {
            return HTMLOutputFormat.INSTANCE.fromMarkup(html);
        } catch (TemplateModelException e) {
            throw new IllegalStateException(e);
        }
    }
}
