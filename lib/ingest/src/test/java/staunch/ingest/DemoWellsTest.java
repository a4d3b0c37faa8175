package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.earth.LeakOffPick;
import staunch.earth.OffsetEvidence;
import staunch.earth.StrengthTest;
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
    void theOffsetLeakOffLetsTheLandSectionHold() throws CaseFaults {
        WellCase well = CaseReader.read(LAND, List.of(LAND.resolve("offset-drop")));
        assertEquals(Outcome.HOLDS, outcome(well, "Base", "8 1/2 in"));
        assertEquals(Outcome.HOLDS, outcome(well, "Base", "12 1/4 in"));
        assertEquals(
                List.of("pore pressure", "pore pressure", "weak zone Burdock sand"),
                well.evidence().orElseThrow().changes().stream()
                        .map(OffsetEvidence.Change::subject)
                        .toList());
        OffsetEvidence.Event loss = well.evidence().orElseThrow().events().get(0);
        assertEquals("Seepage in the Burdock sand", loss.event().name());
        // 9400 ft lies 38/72 into the sand of the offset well, so 38/72 into that of the planned well.
        assertEquals((9380 + 70 * 38.0 / 72) * 0.3048, loss.verticalDepth(), 1e-6);
        // The integrity test is a bound: it moves nothing and agrees with the prediction.
        assertEquals(CaseReader.read(LAND).earth().strength(), well.earth().strength());
    }

    @Test
    void theOffsetDropLetsTheSubseaSectionFail() throws CaseFaults {
        WellCase well = CaseReader.read(SUBSEA, List.of(SUBSEA.resolve("offset-drop")));
        assertEquals(Outcome.FAILS, outcome(well, "Base", "12 1/4 in"));
        OffsetEvidence evidence = well.evidence().orElseThrow();
        assertEquals(3, evidence.tests().size());
        // The invented curve bends at 540 l and 107 bar; its readings lie 50 l and 10 bar apart.
        LeakOffPick.Picked pick = assertInstanceOf(
                LeakOffPick.Picked.class, evidence.pumped().get(0).pick());
        assertEquals(0.525, pick.volume(), 0.026);
        assertEquals(104e5, pick.pressure(), 6e5);
        assertEquals(6, pick.test().shutIn().size());
        assertEquals("pumping-curves.csv, lines 3 to 25", pick.test().source().text());
        assertEquals(2, evidence.points().size());
        assertEquals(2, evidence.conflicts().size());
        assertTrue(well.files().stream().anyMatch(f -> f.path().equals("offset-drop/leak-off.csv")));
        StrengthTest planned = well.earth().tests().get(1);
        assertEquals(1937.93, planned.verticalDepth(), 0.01);
        assertEquals(
                "Invented programme, lowered to offset evidence",
                planned.source().document());
    }

    @Test
    void eachTableOfTheSubseaDropAloneLetsTheSectionFail() throws Exception {
        for (String table : List.of("leak-off.csv", "formation-pressure.csv")) {
            Path drop = Files.createDirectory(directory.resolve(table.replace(".csv", "")));
            Files.copy(SUBSEA.resolve("offset-drop").resolve(table), drop.resolve(table));
            WellCase well = CaseReader.read(SUBSEA, List.of(drop));
            assertEquals(Outcome.FAILS, outcome(well, "Base", "12 1/4 in"), table);
        }
    }

    @Test
    void aDropIsRefusedWhereTheCaseDoesNotKnowIt() throws Exception {
        Path drop = Files.createDirectory(directory.resolve("late"));
        Files.writeString(drop.resolve("leak-offs.csv"), "well\n");
        Files.writeString(drop.resolve("SOURCE.md"), "notes");
        CaseFaults unknown = assertThrows(CaseFaults.class, () -> CaseReader.read(SUBSEA, List.of(drop)));
        assertEquals(
                "late/leak-offs.csv: is no table that offset_evidence knows; its tables are leak-off.csv,"
                        + " pumping-curves.csv, casing.csv, formation-pressure.csv: rename the file or add how it is to be read",
                unknown.faults().get(0).text());
        Files.writeString(
                Files.createDirectory(directory.resolve("other")).resolve("leak-off.csv"),
                "well;name;tvd [m];kind;pressure [sg];source;place\nWrenskerry 9;LOT;1922;LOT;1,645;Report;page 1\n");
        CaseFaults well =
                assertThrows(CaseFaults.class, () -> CaseReader.read(SUBSEA, List.of(directory.resolve("other"))));
        assertEquals(
                "other/leak-off.csv:2: well: names the unknown well \"Wrenskerry 9\"; add it to the wells, or check its"
                        + " spelling; known are Wrenskerry 1",
                well.faults().get(0).text());
        assertThrows(CaseFaults.class, () -> CaseReader.read(SUBSEA, List.of(directory.resolve("nowhere"))));
        assertThrows(CaseFaults.class, () -> CaseReader.read(Cases.BASE, List.of(drop)));
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
