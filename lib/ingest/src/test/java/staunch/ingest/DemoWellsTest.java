package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict.Outcome;

/** The invented wells show what they are there to show. */
class DemoWellsTest {
    private static final Path LAND = Cases.ROOT.resolve("data/quillmarsh-1");
    private static final Path SUBSEA = Cases.ROOT.resolve("data/wrenskerry-2");

    @TempDir
    private Path directory;

    private static Map<String, SectionEnvelope> sections(WellCase well, String design) {
        return Study.of(well).withDesign(design).evaluate().sections().stream()
                .collect(Collectors.toMap(s -> s.plan().name(), s -> s));
    }

    private static Outcome outcome(Map<String, SectionEnvelope> sections, String section) {
        return sections.get(section).verdict().outcome();
    }

    private static Outcome outcome(WellCase well, String design, String section) {
        return outcome(sections(well, design), section);
    }

    @Test
    void theLandWellHoldsFailsAndIsPartlyUnknown() throws CaseFaults {
        WellCase well = CaseReader.read(LAND);
        Map<String, SectionEnvelope> base = sections(well, "Base");
        assertEquals(Outcome.NOT_SHUT_IN, outcome(base, "17 1/2 in"));
        assertEquals(Outcome.HOLDS, outcome(base, "12 1/4 in"));
        assertEquals(Outcome.FAILS, outcome(base, "8 1/2 in"));
        assertEquals(Outcome.NOT_ASSESSED, outcome(base, "6 in"));
        assertEquals(Outcome.HOLDS, outcome(well, "Early liner", "8 1/2 in"));
        Tolerance atTheSand = base.get("8 1/2 in").drilled().tolerance();
        assertEquals(
                "Burdock sand",
                assertInstanceOf(Tolerance.Finite.class, atTheSand).weakPoint().name());
    }

    @Test
    void theSubseaWellHoldsIsUnlimitedAndNotAssessed() throws CaseFaults {
        WellCase well = CaseReader.read(SUBSEA);
        Map<String, SectionEnvelope> base = sections(well, "Base");
        assertEquals(Outcome.NOT_SHUT_IN, outcome(base, "26 in"));
        assertEquals(Outcome.NOT_ASSESSED, outcome(base, "17 1/2 in"));
        assertEquals(Outcome.HOLDS, outcome(base, "12 1/4 in"));
        assertInstanceOf(
                Tolerance.Unlimited.class, base.get("8 1/2 in").drilled().tolerance());
        assertEquals(Outcome.HOLDS, outcome(well, "Deep 13 3/8 in", "12 1/4 in"));
    }

    @Test
    void theOffsetLeakOffLetsTheLandSectionHold() throws Exception {
        assertTrue(Files.readString(LAND.resolve("offset-drop/leak-off.csv")).contains(",9410,leak_off,14.75,"));
        WellCase well = Cases.copy(LAND, directory)
                .with("strength: 14.25 ppg", "strength: 14.75 ppg")
                .read();
        assertEquals(Outcome.HOLDS, outcome(well, "Base", "8 1/2 in"));
    }

    @Test
    void theOffsetLeakOffLetsTheSubseaSectionFail() throws Exception {
        assertTrue(Files.readString(SUBSEA.resolve("offset-drop/leak-off.csv")).contains(",1938,leak_off,1.645,"));
        WellCase well = Cases.copy(SUBSEA, directory)
                .with("strength-tests.csv", "1995,leak_off,1.70", "1995,leak_off,1.645")
                .read();
        assertEquals(Outcome.FAILS, outcome(well, "Base", "12 1/4 in"));
    }

    @Test
    void theOffsetPressureLetsTheSubseaSectionFail() throws Exception {
        assertTrue(Files.readString(SUBSEA.resolve("offset-drop/formation-pressure.csv"))
                .contains(",2905,425.5,"));
        WellCase well = Cases.copy(SUBSEA, directory)
                .with("pore-pressure.csv", "3100,430,444,458\n", "2905,390,402,425.5\n3100,430,444,458\n")
                .read();
        assertEquals(Outcome.FAILS, outcome(well, "Base", "12 1/4 in"));
    }

    @Test
    void theSmallCaseOfTheReferenceIsWhole() throws Exception {
        String page = Files.readString(Cases.ROOT.resolve("docs/case-file.md"));
        int begin = page.indexOf("```yaml\n") + 8;
        Files.writeString(directory.resolve("case.yaml"), page.substring(begin, page.indexOf("```", begin)));
        WellCase well = CaseReader.read(directory);
        assertTrue(well.warnings().isEmpty(), well.warnings().toString());
        assertEquals(Outcome.HOLDS, outcome(well, "Base", "8 1/2 in"));
    }
}
