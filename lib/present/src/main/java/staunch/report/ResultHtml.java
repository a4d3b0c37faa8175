package staunch.report;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import staunch.design.Comparison;
import staunch.design.Rerun;
import staunch.design.SectionChange;
import staunch.design.Sensitivity;
import staunch.design.ShoeSearch;
import staunch.design.StudyTable;
import staunch.earth.EquivalentZero;
import staunch.earth.LeakOffPick;
import staunch.earth.OffsetEvidence;
import staunch.envelope.Assumption;
import staunch.envelope.HandCalculation;
import staunch.envelope.InfluxMargin;
import staunch.envelope.IntensityLimit;
import staunch.envelope.Kick;
import staunch.envelope.KickResult;
import staunch.envelope.Maasp;
import staunch.envelope.Masp;
import staunch.envelope.MethodOptions;
import staunch.envelope.PressureWindow;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.Stage;
import staunch.envelope.SurfaceTolerance;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;
import staunch.envelope.WeakPoint;
import staunch.envelope.WellEnvelope;
import staunch.table.EvidenceTables;
import staunch.table.RerunTables;
import staunch.table.RerunWords;
import staunch.table.ResultTable;
import staunch.table.ResultWords;
import staunch.table.SensitivityTables;
import staunch.table.ShoeTables;
import staunch.table.TableHtml;
import staunch.table.Tables;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Quantity;
import staunch.units.UnitSystem;
import staunch.units.Warning;

/**
 * Results as small cards for a notebook: the same content as HTML and as plain text. The HTML carries its own styles, so
 * that a page that strips style sheets still shows it well, and takes its colours from the page around it.
 */
public final class ResultHtml {
    private static final int ROWS = 20;

    private ResultHtml() {}

    /**
     * A result to look at.
     *
     * @param html fragment for a page
     * @param text the same in words
     * @param tables what it shows, each whole: names and values first, where it has such
     */
    public record Card(String html, String text, List<ResultTable> tables) {
        public Card {
            tables = List.copyOf(tables);
        }
    }

    /** Card of a result; empty where the object is none that this library computes or tabulates. */
    public static Optional<Card> card(Object result, UnitSystem units) {
        return parts(result, units).map(ResultHtml::card);
    }

    /** A card before it is written: title, lines of name and value, tables. */
    record Parts(String title, Map<String, String> lines, List<ResultTable> tables) {}

    /** Evidence does not know the well's datum: equivalent densities count from it, whatever it is called. */
    private static Parts evidence(OffsetEvidence evidence, UnitSystem units) {
        EquivalentZero zero = new EquivalentZero("the well's datum", 0, Physics.ATMOSPHERE);
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("pore pressure", evidence.porePressure().title());
        lines.put("strength", evidence.strength().title());
        lines.put("weak zones", evidence.weakZones() ? "as tested" : "as given");
        lines.put("losses and kicks", evidence.boundUse().title());
        return new Parts("Offset evidence", lines, EvidenceTables.all(evidence, zero, units));
    }

    private static Parts pick(LeakOffPick pick, UnitSystem units) {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put(pick.standing().title(), units.text(pick.pressure(), Measure.PRESSURE_GAUGE, RoundingMode.FLOOR));
        pick.flags()
                .forEach(f ->
                        lines.put("check: " + f.name().toLowerCase(Locale.ROOT).replace('_', ' '), f.title()));
        return new Parts("Pumping test " + pick.test().name(), lines, List.of(EvidenceTables.pumpingTest(pick, units)));
    }

    private static Optional<Parts> parts(Object result, UnitSystem units) {
        if (result instanceof WellEnvelope envelope) {
            return Optional.of(well(envelope, units));
        }
        if (result instanceof SectionEnvelope section) {
            return Optional.of(section(section, units));
        }
        if (result instanceof KickResult kick) {
            return Optional.of(kick(kick, units));
        }
        if (result instanceof Tolerance tolerance) {
            return Optional.of(new Parts(
                    "Kick tolerance " + ResultWords.headline(tolerance, units),
                    Map.of("outcome", ResultWords.outcome(tolerance, units)),
                    List.of()));
        }
        if (result instanceof OffsetEvidence evidence) {
            return Optional.of(evidence(evidence, units));
        }
        if (result instanceof LeakOffPick pick) {
            return Optional.of(pick(pick, units));
        }
        if (result instanceof SurfaceTolerance surface) {
            return Optional.of(new Parts(
                    "Influx circulated to surface: " + ResultWords.headline(surface, units),
                    Map.of("outcome", ResultWords.outcome(surface, units)),
                    List.of()));
        }
        if (result instanceof Maasp maasp) {
            return Optional.of(maasp(maasp, units));
        }
        if (result instanceof Masp masp) {
            return Optional.of(masp(masp, units));
        }
        if (result instanceof HandCalculation hand) {
            ResultTable steps = Tables.handCalculation(hand, units);
            return Optional.of(new Parts("Hand calculation", Map.of("answer", steps.caption()), List.of(steps)));
        }
        if (result instanceof InfluxMargin margin) {
            return Optional.of(margin(margin, units));
        }
        if (result instanceof Rerun rerun) {
            return Optional.of(rerun(rerun, units));
        }
        if (result instanceof SectionChange section) {
            return Optional.of(change(section, units));
        }
        if (result instanceof ResultTable table) {
            return Optional.of(new Parts(table.name(), Map.of(), List.of(table)));
        }
        return OperationCards.parts(result, units)
                .or(() -> smallParts(result, units))
                .or(() -> designParts(result, units));
    }

    private static Optional<Parts> designParts(Object result, UnitSystem units) {
        if (result instanceof ShoeSearch search) {
            Map<String, String> lines = new LinkedHashMap<>();
            search.joint().forEach(j -> lines.put(j.direction().title(), j.statement()));
            return Optional.of(new Parts(
                    "Shoe depths of " + search.design(),
                    lines,
                    List.of(
                            ShoeTables.shallowest(search, units),
                            ShoeTables.stretches(search, units),
                            ShoeTables.joint(search, units))));
        }
        if (result instanceof Comparison comparison) {
            return Optional.of(new Parts(
                    "Designs compared: " + String.join(", ", comparison.designs()),
                    Map.of("not dominated by another as a whole", String.join(", ", comparison.undominated())),
                    List.of(
                            Tables.comparisonSideBySide(comparison, units),
                            Tables.dominance(comparison, units),
                            Tables.comparedMaasp(comparison, units),
                            Tables.steel(comparison, units))));
        }
        if (result instanceof Sensitivity sensitivity) {
            return Optional.of(new Parts(
                    "Sensitivity of " + sensitivity.section(),
                    Map.of("verdict", sensitivity.base().verdict().statement(units)),
                    List.of(SensitivityTables.swings(sensitivity, units))));
        }
        if (result instanceof StudyTable study) {
            return Optional.of(new Parts("Study", Map.of(), List.of(Tables.study(study, units))));
        }
        return Optional.empty();
    }

    private static Optional<Parts> smallParts(Object result, UnitSystem units) {
        if (result instanceof IntensityLimit limit) {
            return Optional.of(
                    new Parts(intensityTitle(limit), Map.of("largest", ResultWords.text(limit, units)), List.of()));
        }
        if (result instanceof Verdict verdict) {
            return Optional.of(verdict(verdict, units));
        }
        if (result instanceof WeakPoint point) {
            return Optional.of(weakPoint(point, units));
        }
        if (result instanceof Stage stage) {
            return Optional.of(stage(stage, units));
        }
        if (result instanceof Kick kick) {
            return Optional.of(influx(kick, units));
        }
        if (result instanceof PressureWindow window) {
            return Optional.of(new Parts(
                    "Pressure window", Map.of("verdict", window.verdict().statement(units)), List.of()));
        }
        if (result instanceof MethodOptions options) {
            return Optional.of(new Parts("Methods", Map.of(), List.of(Tables.methods(options, units))));
        }
        if (result instanceof Assumption assumption) {
            return Optional.of(new Parts(
                    "Assumption: " + assumption.subject(),
                    lines("assumed", assumption.text(units), "origin", assumption.origin()),
                    List.of()));
        }
        if (result instanceof Warning warning) {
            return Optional.of(
                    new Parts("Warning: " + warning.subject(), Map.of("seen", warning.text(units)), List.of()));
        }
        if (result instanceof Quantity quantity) {
            return Optional.of(new Parts(quantity.text(), Map.of(), List.of()));
        }
        return Optional.empty();
    }

    private static Parts rerun(Rerun rerun, UnitSystem units) {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("answer", RerunWords.answer(rerun));
        rerun.flips()
                .forEach(s -> lines.put(
                        RerunWords.name(s), (RerunWords.turnedBy(s) + " " + RerunWords.verdictNow(s)).strip()));
        if (!rerun.notAttributed().isEmpty()) {
            lines.put("not attributed", rerun.notAttributed());
        }
        if (!rerun.notCompared().isEmpty()) {
            lines.put("not compared", rerun.notCompared());
        }
        List<ResultTable> tables = new ArrayList<>();
        tables.add(RerunTables.sections(rerun, units));
        if (!rerun.causes().isEmpty()) {
            tables.add(RerunTables.causes(rerun, units));
        }
        return new Parts("What changed on " + rerun.well(), lines, tables);
    }

    private static Parts change(SectionChange section, UnitSystem units) {
        Map<String, String> lines = new LinkedHashMap<>();
        if (section.flips()) {
            lines.put("verdict flips", RerunWords.flip(section));
            lines.put("because", RerunWords.turnedBy(section));
            lines.put("verdict", RerunWords.verdictNow(section));
        } else {
            lines.put("verdict", section.changed() ? "does not flip" : "nothing changed");
        }
        List<ResultTable> tables = new ArrayList<>(List.of(RerunTables.values(section, units)));
        ResultTable operations = RerunTables.operations(section, units);
        if (operations.rowCount() > 0) {
            tables.add(operations);
        }
        return new Parts(RerunWords.name(section), lines, tables);
    }

    private static Parts well(WellEnvelope envelope, UnitSystem units) {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("verdict", ResultWords.verdict(envelope.sections()));
        envelope.warnings().forEach(w -> lines.put("warning, " + w.subject(), w.text(units)));
        return new Parts("Envelope of " + envelope.design(), lines, List.of(Tables.verdicts(envelope, units)));
    }

    private static Parts section(SectionEnvelope section, UnitSystem units) {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("verdict", section.verdict().statement(units));
        if (!section.verdict().governing().isEmpty()) {
            lines.put("governing limit", section.verdict().governing());
        }
        lines.put("drilled kick", ResultWords.full(section.drilled().tolerance(), units));
        lines.put("swabbed kick", ResultWords.full(section.swabbed().tolerance(), units));
        lines.put("drilled kick, to surface", ResultWords.full(section.drilled().circulatedToSurface(), units));
        lines.put("swabbed kick, to surface", ResultWords.full(section.swabbed().circulatedToSurface(), units));
        lines.put("formation MAASP", ResultWords.formationMaasp(section.maasp(), units));
        lines.put("lowest surface limit", ResultWords.lowestSurfaceLimit(section.maasp(), units));
        section.masps()
                .forEach(m -> lines.put(
                        "MASP, " + ResultWords.basis(m.basis(), units), ResultWords.masp(Optional.of(m), units)));
        lines.put("intensity for the required volume", ResultWords.text(section.largestIntensity(), units));
        lines.put("zero-gain margin", ResultWords.text(section.zeroGainMargin(), units));
        lines.put("pressure window", section.window().verdict().statement(units));
        section.warnings().forEach(w -> lines.put("warning, " + w.subject(), w.text(units)));
        return new Parts(section.plan().name(), lines, List.of());
    }

    private static Parts kick(KickResult kick, UnitSystem units) {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("outcome", ResultWords.outcome(kick.tolerance(), units));
        lines.put("to surface", ResultWords.full(kick.circulatedToSurface(), units));
        kick.required().ifPresent(v -> lines.put("required", units.text(v, Measure.VOLUME)));
        lines.put("verdict", kick.verdict().statement(units));
        lines.put("with likely estimates", ResultWords.brief(kick.likelyTolerance(), units));
        kick.kick().ifPresent(k -> lines.putAll(influx(k, units).lines()));
        return new Parts(
                "Tolerance of the " + kick.scenario().title() + ": " + ResultWords.headline(kick.tolerance(), units),
                lines,
                kick.hand().map(h -> Tables.handCalculation(h, units)).stream().toList());
    }

    private static Parts influx(Kick kick, UnitSystem units) {
        return new Parts(
                "Influx of the " + kick.scenario().title(),
                lines(
                        "depth",
                        units.text(kick.measuredDepth(), Measure.DEPTH) + " MD, "
                                + units.text(kick.verticalDepth(), Measure.DEPTH) + " TVD",
                        "formation pressure",
                        units.text(kick.formationPressure(), Measure.PRESSURE_ABSOLUTE) + ", set by "
                                + kick.governedBy().title(),
                        "mud pressure",
                        units.text(kick.mudPressure(), Measure.PRESSURE_ABSOLUTE)),
                List.of());
    }

    private static Parts maasp(Maasp maasp, UnitSystem units) {
        return new Parts(
                "MAASP with mud of " + units.text(maasp.mudDensity(), Measure.DENSITY),
                lines(
                        "formation MAASP",
                        ResultWords.formationMaasp(Optional.of(maasp), units),
                        "lowest surface limit",
                        ResultWords.lowestSurfaceLimit(Optional.of(maasp), units)),
                List.of(Tables.maasp(maasp, units)));
    }

    private static Parts masp(Masp masp, UnitSystem units) {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("basis", masp.basis().title());
        lines.put("set by", masp.notAssessed().isPresent() ? masp.verdict().statement(units) : masp.from());
        masp.formationPressure()
                .ifPresent(p -> lines.put(
                        "formation pressure",
                        units.text(p, Measure.PRESSURE_ABSOLUTE, RoundingMode.CEILING) + " at "
                                + units.text(masp.fromVerticalDepth().orElseThrow(), Measure.DEPTH) + " TVD"));
        lines.put("ratings", masp.verdict().statement(units));
        return new Parts(
                "MASP, " + ResultWords.basis(masp.basis(), units) + ": " + ResultWords.masp(Optional.of(masp), units),
                lines,
                masp.checks().isEmpty() ? List.of() : List.of(Tables.maspChecks(masp, units)));
    }

    private static Parts margin(InfluxMargin margin, UnitSystem units) {
        return new Parts(
                "Margin while circulating out, " + margin.scenario().title(),
                lines(
                        "influx",
                        units.text(margin.volume(), Measure.VOLUME) + ", " + margin.volumeBasis(),
                        "least margin",
                        units.text(margin.least(), Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR) + " at "
                                + ResultWords.text(margin.weakPoint(), units) + ", "
                                + margin.stage().moment().title(),
                        "least margin at the shoe",
                        units.text(margin.leastAtShoe(), Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR)),
                List.of());
    }

    private static String intensityTitle(IntensityLimit limit) {
        boolean zeroGain = limit instanceof IntensityLimit.Largest largest && largest.volume() == 0;
        return zeroGain ? "Zero-gain margin" : "Kick intensity for the required volume";
    }

    private static Parts verdict(Verdict verdict, UnitSystem units) {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put("statement", verdict.statement(units));
        if (!verdict.governing().isEmpty()) {
            lines.put("governing limit", verdict.governing());
        }
        return new Parts("Verdict: " + verdict.outcome().title(), lines, List.of());
    }

    private static Parts weakPoint(WeakPoint point, UnitSystem units) {
        return new Parts(
                "Weak point: " + ResultWords.text(point, units),
                lines(
                        "strength",
                        units.text(point.strength(), Measure.PRESSURE_ABSOLUTE, RoundingMode.FLOOR) + ", "
                                + point.basis(),
                        "limit",
                        units.text(point.limit(), Measure.PRESSURE_ABSOLUTE, RoundingMode.FLOOR)),
                List.of());
    }

    private static Parts stage(Stage stage, UnitSystem units) {
        return new Parts(
                "Stage: " + stage.moment().title(),
                lines(
                        "gas",
                        "from " + units.text(stage.gasTop(), Measure.DEPTH) + " to "
                                + units.text(stage.gasBottom(), Measure.DEPTH) + " MD",
                        "bottom-hole pressure",
                        units.text(stage.bottomHolePressure(), Measure.PRESSURE_ABSOLUTE)),
                List.of());
    }

    static Map<String, String> lines(String... namesAndValues) {
        Map<String, String> lines = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            lines.put(namesAndValues[i], namesAndValues[i + 1]);
        }
        return lines;
    }

    private static Card card(Parts parts) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("title", parts.title());
        model.put(
                "lines",
                parts.lines().entrySet().stream()
                        .map(e -> Map.of("name", e.getKey(), "value", TableHtml.minus(e.getValue())))
                        .toList());
        List<Map<String, Object>> tables = new ArrayList<>();
        parts.tables().forEach(t -> tables.add(Map.of("html", ReviewModel.markup(t.htmlToFit(ROWS)))));
        model.put("tables", tables);
        List<ResultTable> shown = new ArrayList<>();
        if (!parts.lines().isEmpty()) {
            shown.add(ResultTable.of(parts.title(), parts.lines()));
        }
        shown.addAll(parts.tables());
        return new Card(Pages.fill("card.ftl", model), text(parts), shown);
    }

    private static String text(Parts parts) {
        int width =
                parts.lines().keySet().stream().mapToInt(String::length).max().orElse(0);
        String lines = parts.lines().entrySet().stream()
                .map(e -> "  " + e.getKey() + " ".repeat(width - e.getKey().length()) + "  " + e.getValue() + "\n")
                .collect(Collectors.joining());
        String tables = parts.tables().stream().map(t -> t.text(ROWS)).collect(Collectors.joining("\n"));
        return (parts.title() + "\n" + lines + tables).stripTrailing();
    }
}
