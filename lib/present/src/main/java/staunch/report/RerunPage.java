package staunch.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import staunch.chart.ChartImage;
import staunch.chart.Charts;
import staunch.chart.Figure;
import staunch.design.Rerun;
import staunch.design.RunRecord;
import staunch.design.SectionChange;
import staunch.design.SectionQuantity;
import staunch.design.WellCase;
import staunch.table.RerunTables;
import staunch.table.RerunWords;
import staunch.table.ResultTable;
import staunch.units.UnitSystem;

/**
 * What changed between two runs as one HTML page that needs nothing beside it. Equal results give equal bytes; the only
 * date in it is the case's own.
 */
public final class RerunPage {
    /** Name of the page in its directory. */
    public static final String FILE_NAME = "rerun.html";

    private RerunPage() {}

    /**
     * Writes the page. It appears whole or not at all.
     *
     * @param wellCase the later case
     * @param before record of the earlier run
     * @param rerun what changed since
     * @param units to show
     * @param directory made where it does not exist
     * @return the page's file
     * @throws IOException where it cannot be written
     */
    public static Path write(WellCase wellCase, RunRecord before, Rerun rerun, UnitSystem units, Path directory)
            throws IOException {
        byte[] page = html(wellCase, before, rerun, units).getBytes(StandardCharsets.UTF_8);
        return WholeFile.write(directory.resolve(FILE_NAME), out -> out.write(page));
    }

    /** The page as text. */
    public static String html(WellCase wellCase, RunRecord before, Rerun rerun, UnitSystem units) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("css", ReviewModel.markup(Pages.resource("page.css")));
        root.put("well", rerun.well());
        root.put("title", wellCase.header().title());
        root.put("revision", wellCase.header().revision().orElse(""));
        root.put("date", wellCase.header().date().orElse(""));
        root.put("notice", wellCase.header().notice().orElse(""));
        root.put("units", units.name());
        root.put("library", before.library());
        root.put("answer", RerunWords.answer(rerun));
        root.put("notAttributed", rerun.notAttributed());
        root.put("notCompared", rerun.notCompared());
        root.put("sections", table(RerunTables.sections(rerun, units)));
        root.put("causes", rerun.causes().isEmpty() ? List.of() : List.of(table(RerunTables.causes(rerun, units))));
        List<Map<String, Object>> changed = new ArrayList<>();
        rerun.sections().stream().filter(SectionChange::changed).forEach(s -> changed.add(section(s, units)));
        root.put("changed", changed);
        root.put("toJudge", RerunWords.toJudge(wellCase, units));
        root.put("filesBefore", files(before.files()));
        root.put("filesAfter", files(wellCase.files()));
        return Pages.fill("rerun.ftl", root);
    }

    private static List<Map<String, String>> files(List<staunch.design.InputFile> files) {
        return files.stream()
                .map(f -> Map.of("path", f.path(), "sha256", f.sha256()))
                .toList();
    }

    private static Map<String, Object> section(SectionChange section, UnitSystem units) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("name", RerunWords.name(section));
        model.put(
                "outcome",
                section.after().map(r -> r.verdict().outcome().name()).orElse("NOT_ASSESSED"));
        model.put("verdict", section.flips() ? RerunWords.flip(section) : "");
        model.put("turned", RerunWords.turnedBy(section));
        model.put("now", RerunWords.verdictNow(section));
        List<Map<String, Object>> figures = new ArrayList<>();
        List<Map<String, Object>> tables = new ArrayList<>();
        for (SectionQuantity quantity : RerunWords.told(section, units)) {
            figures.add(figure(Charts.attribution(section, quantity, units)));
            tables.add(table(RerunTables.attribution(section, quantity, units)));
        }
        tables.add(table(RerunTables.values(section, units)));
        ResultTable operations = RerunTables.operations(section, units);
        if (operations.rowCount() > 0) {
            tables.add(table(operations));
        }
        model.put("figures", figures);
        model.put("tables", tables);
        return model;
    }

    private static Map<String, Object> figure(Figure figure) {
        String html = figure instanceof ChartImage image ? image.inlineSvg() : figure.html();
        return Map.of("title", figure.title(), "html", ReviewModel.markup(html));
    }

    private static Map<String, Object> table(ResultTable table) {
        return Map.of("name", table.name(), "caption", table.caption(), "html", ReviewModel.markup(table.html()));
    }
}
