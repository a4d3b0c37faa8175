package staunch.report;

import java.io.IOException;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import staunch.chart.ChartImage;
import staunch.chart.Figure;
import staunch.chart.OperationCharts;
import staunch.control.KillSheet;
import staunch.control.PressureSchedule;
import staunch.design.CaseHeader;
import staunch.table.OperationTables;
import staunch.table.ResultTable;
import staunch.units.Measure;
import staunch.units.UnitSystem;
import staunch.units.Warning;

/**
 * A kill sheet on two A4 sheets, as a page and as PDF: numbers on the first, the pressure schedule on the second. It is a
 * planning sheet and says so on both. Equal results give equal bytes.
 */
public final class KillSheetPage {
    private static final String NONE = "–";
    private static final int LINES = 18;
    private static final int MOST_WARNINGS = 5;
    private static final int FIGURE_WIDTH = 500;

    private final Subject subject;
    private final KillSheet sheet;
    private final UnitSystem units;

    private KillSheetPage(Subject subject, KillSheet sheet, UnitSystem units) {
        this.subject = subject;
        this.sheet = sheet;
        this.units = units;
    }

    /**
     * What a sheet is about.
     *
     * @param header title block of the case
     * @param design name of the casing design
     * @param section name of the hole section
     * @param datum what depths count from
     * @param basis what the readings at shut-in are: of a planned kick, or seen
     * @param fileName name of the sheet's files, without ending
     */
    public record Subject(
            CaseHeader header, String design, String section, String datum, String basis, String fileName) {
        /** The same of a section whose name is like no other's. */
        public Subject(CaseHeader header, String design, String section, String datum, String basis) {
            this(header, design, section, datum, basis, fileName(section, List.of()));
        }

        /**
         * Name for the files of a section's sheet: letters and figures of its name. Of sections told apart by other signs
         * alone, the later ones get a number.
         *
         * @param section name of the hole section
         * @param sections names of all hole sections of the casing design, in order
         */
        static String fileName(String section, List<String> sections) {
            Set<String> taken = new HashSet<>();
            for (String other : sections) {
                String name = free(other, taken);
                if (other.equals(section)) {
                    return name;
                }
                taken.add(name);
            }
            return free(section, taken);
        }

        private static String free(String section, Set<String> taken) {
            String letters = section.toLowerCase(Locale.ROOT)
                    .replaceAll("[^a-z0-9]+", "-")
                    .replaceAll("^-|-$", "");
            String name = "kill-sheet-" + (letters.isEmpty() ? Integer.toHexString(section.hashCode()) : letters);
            String free = name;
            for (int i = 2; taken.contains(free); i++) {
                free = name + "-no-" + i;
            }
            return free;
        }
    }

    /**
     * Writes the page. It appears whole or not at all.
     *
     * @return the file
     * @throws IOException where it cannot be written
     */
    public static Path write(Subject subject, KillSheet sheet, UnitSystem units, Path directory) throws IOException {
        byte[] page = html(subject, sheet, units).getBytes(StandardCharsets.UTF_8);
        return WholeFile.write(directory.resolve(subject.fileName() + ".html"), out -> out.write(page));
    }

    /**
     * Writes the PDF. It appears whole or not at all.
     *
     * @return the file
     * @throws IOException where it cannot be written
     */
    public static Path writePdf(Subject subject, KillSheet sheet, UnitSystem units, Path directory) throws IOException {
        byte[] pdf = pdf(subject, sheet, units);
        return WholeFile.write(directory.resolve(subject.fileName() + ".pdf"), out -> out.write(pdf));
    }

    /** The page as text: it needs nothing beside it. */
    public static String html(Subject subject, KillSheet sheet, UnitSystem units) {
        return new KillSheetPage(subject, sheet, units)
                .fill(Pages.resource("killsheet-screen.css"), ChartImage::inlineSvg);
    }

    /** The PDF itself. */
    public static byte[] pdf(Subject subject, KillSheet sheet, UnitSystem units) throws IOException {
        String page = new KillSheetPage(subject, sheet, units)
                .fill(Sheets.fontFaces() + Pages.resource("killsheet-paper.css"), c -> c.svg(FIGURE_WIDTH));
        return Sheets.pdf(
                page,
                "Kill sheet for planning: " + subject.header().well() + ", " + subject.section(),
                subject.header().preparedBy());
    }

    private String fill(String css, Function<ChartImage, String> drawing) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("css", ReviewModel.markup(Pages.resource("killsheet.css") + css));
        root.put("notice", KillSheet.NOTICE);
        root.put("header", header());
        root.put("answers", answers());
        root.put("answer", answer());
        root.put(
                "left",
                tables(Stream.of(
                        OperationTables.killSheetInput(sheet, units), OperationTables.killSheetAnswers(sheet, units))));
        root.put(
                "right",
                tables(Stream.concat(
                        Stream.of(
                                OperationTables.killSheetWeakPoint(sheet, units),
                                OperationTables.killSheetWeighting(sheet, units)),
                        OperationTables.killSheetChokeLine(sheet, units).stream())));
        root.put("surface", sheet.input().subsea().isEmpty());
        root.put("volumes", table(OperationTables.killSheetVolumes(sheet, units)));
        root.put(
                "schedule", table(OperationTables.pressureSchedule(sheet, units).thinned(LINES)));
        Figure figure = OperationCharts.pressureSchedule(subject.section(), sheet, units);
        root.put(
                "figure",
                figure instanceof ChartImage image
                        ? ReviewModel.markup(drawing.apply(image))
                        : ReviewModel.markup(figure.html()));
        List<Warning> warnings = sheet.warnings();
        root.put(
                "warnings",
                warnings.stream()
                        .limit(MOST_WARNINGS)
                        .map(w -> Map.of("subject", w.subject(), "text", w.text(units)))
                        .toList());
        root.put("moreWarnings", Math.max(0, warnings.size() - MOST_WARNINGS));
        return Pages.fill("killsheet.ftl", root);
    }

    private Map<String, Object> header() {
        CaseHeader header = subject.header();
        Map<String, Object> block = new LinkedHashMap<>();
        block.put("well", header.well());
        block.put("section", subject.section());
        block.put("design", subject.design());
        block.put("datum", subject.datum());
        block.put("basis", subject.basis());
        block.put("revision", header.revision().orElse(NONE));
        block.put("date", header.date().orElse(NONE));
        block.put("prepared", header.preparedBy().orElse(NONE));
        block.put("checked", header.checkedBy().orElse(NONE));
        block.put("approved", header.approvedBy().orElse(NONE));
        block.put("notice", header.notice().orElse(""));
        block.put("units", units.name());
        return block;
    }

    private List<Map<String, String>> answers() {
        List<PressureSchedule.Step> steps = sheet.schedule().steps();
        PressureSchedule.Step last = steps.get(steps.size() - 1);
        return List.of(
                Map.of("name", "Kill mud", "value", units.text(sheet.killDensity(), Measure.DENSITY)),
                Map.of(
                        "name",
                        "Initial circulating pressure",
                        "value",
                        units.text(sheet.initialCirculatingPressure(), Measure.PRESSURE_GAUGE)),
                Map.of(
                        "name",
                        "Final circulating pressure",
                        "value",
                        units.text(sheet.finalCirculatingPressure(), Measure.PRESSURE_GAUGE)),
                Map.of("name", "Strokes to the bit", "value", String.valueOf(Math.round(last.strokes()))),
                Map.of(
                        "name",
                        "MAASP, mud of shut-in",
                        "value",
                        units.text(sheet.weakPoint().maasp(), Measure.PRESSURE_GAUGE, RoundingMode.FLOOR)));
    }

    private String answer() {
        KillSheet.WeakPointCheck check = sheet.weakPoint();
        String margin = units.text(Math.abs(check.margin()), Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR);
        String name = sheet.input().weakPoint().name();
        return check.holdsKillMud()
                ? name + " holds kill mud to surface with " + margin + " to spare."
                : name + " does not hold kill mud to surface: "
                        + units.text(-check.margin(), Measure.PRESSURE_DIFFERENCE, RoundingMode.CEILING)
                        + " too much. The well cannot be killed this way.";
    }

    private static List<Map<String, Object>> tables(Stream<ResultTable> tables) {
        return tables.map(KillSheetPage::table).toList();
    }

    private static Map<String, Object> table(ResultTable table) {
        return Map.of("name", table.name(), "caption", table.caption(), "html", ReviewModel.markup(table.html()));
    }
}
