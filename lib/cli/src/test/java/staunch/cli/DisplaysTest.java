package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import staunch.chart.Charts;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.WellEnvelope;
import staunch.kernel.DisplayRegistry;
import staunch.kernel.MimeBundle;
import staunch.table.Tables;
import staunch.units.InputFault;
import staunch.units.Quantity;
import staunch.units.UnitSystem;

class DisplaysTest {
    private static final WellCase CASE = InventedWell.wellCase();
    private static final WellEnvelope ENVELOPE = Study.of(CASE).evaluate();
    private static final SectionEnvelope SECTION = ENVELOPE.sections().get(1);

    private final DisplayRegistry displays = Displays.in(UnitSystem.FIELD);

    /** One of each kind of record that the results and the case hold, with what it is. */
    private static Map<Class<?>, Record> everyRecord() {
        Map<Class<?>, Record> found = new LinkedHashMap<>();
        collect(CASE, found);
        collect(ENVELOPE, found);
        Study.of(CASE).operations().forEach(o -> collect(o, found));
        return found;
    }

    private static void collect(Object value, Map<Class<?>, Record> found) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(v -> collect(v, found));
        } else if (value instanceof Collection<?> list) {
            list.forEach(v -> collect(v, found));
        } else if (value instanceof Record record) {
            found.putIfAbsent(record.getClass(), record);
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                collect(Components.value(component, record), found);
            }
        }
    }

    @TestFactory
    Stream<DynamicTest> everyResultHasACardInHtmlAndInText() {
        return everyRecord().entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(e.getKey().getSimpleName(), () -> {
                    MimeBundle bundle = displays.render(e.getValue());
                    assertFalse(bundle.plain().isBlank());
                    assertTrue(bundle.data().get(MimeBundle.HTML).startsWith("<"));
                    assertFalse(bundle.plain().contains("Optional"), bundle.plain());
                    assertFalse(bundle.plain().contains(e.getKey().getSimpleName() + "["), bundle.plain());
                }));
    }

    @Test
    void aCellMayChooseTheUnitsOfOneCard() {
        MimeBundle bundle = displays.render(Cells.card(SECTION.drilled(), UnitSystem.METRIC));
        assertTrue(bundle.plain().contains("m³"), bundle.plain());
        assertFalse(bundle.plain().contains("bbl"), bundle.plain());
        assertThrows(InputFault.class, () -> Cells.card("text", UnitSystem.METRIC));
    }

    @Test
    void aCardShowsNumbersInTheChosenUnits() {
        String field = displays.render(CASE.datum()).plain();
        assertTrue(field.contains("elevation") && field.contains("32.8084 ft"), field);
        String metric = Displays.in(UnitSystem.METRIC).render(CASE.datum()).plain();
        assertTrue(metric.contains("10 m"), metric);
    }

    @Test
    void anEnvelopeShowsItsSectionSummary() {
        MimeBundle bundle = displays.render(ENVELOPE);
        for (SectionEnvelope section : ENVELOPE.sections()) {
            assertTrue(bundle.plain().contains(section.plan().name()), bundle.plain());
            assertTrue(
                    bundle.data().get(MimeBundle.HTML).contains(section.plan().name()));
        }
    }

    @Test
    void aChartIsAnImageInHtmlAndInPngWithItsTextAlternative() {
        var chart = Charts.toleranceAlongSection(SECTION, UnitSystem.FIELD);
        MimeBundle bundle = displays.render(chart);
        assertTrue(bundle.data().get(MimeBundle.HTML).startsWith("<img"));
        assertTrue(bundle.data().get("image/png").startsWith("iVBORw0KGgo"));
        assertTrue(bundle.plain().contains(chart.altText()));
    }

    @Test
    void tablesOfTheLibraryAndOfTheUserHaveBothForms() {
        var table = Tables.toleranceAlongSection(SECTION, UnitSystem.FIELD);
        List<MimeBundle> both = new ArrayList<>();
        both.add(displays.render(table));
        both.add(displays.render(table.table()));
        for (MimeBundle bundle : both) {
            assertTrue(bundle.data().get(MimeBundle.HTML).startsWith("<table"));
            assertTrue(bundle.plain().contains("more rows"), bundle.plain());
        }
    }

    @Test
    void aQuantityReadsAsItWasWritten() {
        assertEquals("9.6 ppg", displays.render(Quantity.parse("9.6 ppg")).plain());
    }

    @Test
    void textFromTheUserIsEscaped() {
        record Named(String name) {}
        String html = displays.render(new Named("<b>&")).data().get(MimeBundle.HTML);
        assertTrue(html.contains("&lt;b&gt;&amp;"), html);
    }
}
