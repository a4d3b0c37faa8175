package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.design.Comparison;
import staunch.design.MudRule;
import staunch.design.Progress;
import staunch.design.SectionOutcome;
import staunch.design.ShoeSearch;
import staunch.design.ShoeStretch;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.Tolerance;

/** A case written in metric units is the same well as in field units: comparison and shoe search tell the same. */
class UnitsOfInputLawTest {
    /** Field unit to metric unit and factor, exact by definition (NIST SP 811, appendix B). */
    private static final Map<String, Metric> METRIC = Map.of(
            "ft", new Metric("m", "0.3048"),
            "in", new Metric("mm", "25.4"),
            "bbl", new Metric("m3", "0.158987294928"),
            "psi", new Metric("kPa", "6.894757293168361"),
            "ppg", new Metric("kg/m3", "119.8264273167"));

    private static final Pattern QUANTITY =
            Pattern.compile("(?<![\\w.])((?:\\d+ )?\\d+/\\d+|\\d+(?:\\.\\d+)?) (ft|in|bbl|psi|ppg)(?![\\w/])");

    private record Metric(String unit, String factor) {}

    @TempDir
    Path directory;

    private static String metric(String yaml) {
        return QUANTITY.matcher(yaml).replaceAll(m -> {
            Metric to = METRIC.get(m.group(2));
            return Matcher.quoteReplacement(
                    number(m.group(1)).multiply(new BigDecimal(to.factor())).toPlainString() + " " + to.unit());
        });
    }

    private static BigDecimal number(String text) {
        BigDecimal sum = BigDecimal.ZERO;
        for (String part : text.split(" ")) {
            String[] fraction = part.split("/");
            BigDecimal value = new BigDecimal(fraction[0]);
            sum = sum.add(
                    fraction.length == 1 ? value : value.divide(new BigDecimal(fraction[1]), MathContext.DECIMAL64));
        }
        return sum;
    }

    private static double volume(Tolerance tolerance) {
        return tolerance instanceof Tolerance.Finite finite ? finite.volume() : -1;
    }

    private static void same(double a, double b, double within, String what) {
        assertEquals(a, b, within * Math.max(1e-3, Math.abs(a)), what);
    }

    @Test
    void theUnitsOfTheCaseDoNotMatter() throws IOException, CaseFaults {
        Path field = Cases.ROOT.resolve("data/quillmarsh-1");
        Cases.copy(field, directory);
        String yaml = Files.readString(field.resolve("case.yaml"));
        assertTrue(QUANTITY.matcher(yaml).results().count() > 150);
        Files.writeString(directory.resolve("case.yaml"), metric(yaml));
        WellCase a = CaseReader.read(field);
        WellCase b = CaseReader.read(directory);
        List<String> names = List.of("Base", "Early liner");
        Comparison first = Study.of(a).compare(names);
        Comparison second = Study.of(b).compare(names);
        for (int i = 0; i < first.sections().size(); i++) {
            for (int k = 0; k < names.size(); k++) {
                SectionOutcome x = first.sections().get(i).outcomes().get(k);
                SectionOutcome y = second.sections().get(i).outcomes().get(k);
                assertEquals(x.verdict().outcome(), y.verdict().outcome());
                same(x.bottomDepth(), y.bottomDepth(), 1e-12, "section TD");
                same(volume(x.drilled().tolerance()), volume(y.drilled().tolerance()), 1e-6, "drilled");
                same(volume(x.swabbed().tolerance()), volume(y.swabbed().tolerance()), 1e-6, "swabbed");
                same(x.leastShoeMargin().orElse(0), y.leastShoeMargin().orElse(0), 1e-4, "shoe margin");
            }
            for (int k = 0; k < first.sections().get(i).pairs().size(); k++) {
                assertEquals(
                        first.sections().get(i).pairs().get(k).relation(),
                        second.sections().get(i).pairs().get(k).relation());
            }
        }
        for (int k = 0; k < names.size(); k++) {
            same(first.steel().get(k).mass(), second.steel().get(k).mass(), 1e-9, "steel");
        }
        ShoeSearch up = Study.of(a).withDesign("Early liner").shoes(MudRule.LIGHTEST, Progress.SILENT);
        ShoeSearch low = Study.of(b).withDesign("Early liner").shoes(MudRule.LIGHTEST, Progress.SILENT);
        for (int i = 0; i < up.windows().size(); i++) {
            List<ShoeStretch> x = up.windows().get(i).stretches();
            List<ShoeStretch> y = low.windows().get(i).stretches();
            assertEquals(x.size(), y.size());
            for (int k = 0; k < x.size(); k++) {
                assertEquals(x.get(k).allowed(), y.get(k).allowed());
                assertEquals(x.get(k).from(), y.get(k).from(), 0.05);
                assertEquals(x.get(k).to(), y.get(k).to(), 0.05);
            }
        }
    }
}
