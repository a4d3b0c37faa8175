package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import staunch.design.InputLine;
import staunch.design.RunRecord;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.earth.EarthModel;
import staunch.earth.OffsetEvidence;
import staunch.envelope.SectionEnvelope;

/** What must hold of every run record. */
class RunRecordLawTest {
    @TempDir
    private Path directory;

    @ParameterizedTest
    @ValueSource(strings = {"quillmarsh-1", "wrenskerry-2"})
    void aRecordReadBackIsTheSameToTheByte(String well) throws Exception {
        RunRecord record = Runs.record(Cases.ROOT.resolve("data").resolve(well), "Base");
        String text = RecordFile.text(record);
        Path file = directory.resolve("record.txt");
        Files.writeString(file, text);
        RunRecord read = RecordFile.read(file);
        assertEquals(record, read);
        assertEquals(text, RecordFile.text(read));
        assertEquals(
                text, RecordFile.text(Runs.record(Cases.ROOT.resolve("data").resolve(well), "Base")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"quillmarsh-1", "wrenskerry-2"})
    void theCaseOfARecordIsTheCaseItself(String well) throws Exception {
        CaseInput input = CaseInput.read(Cases.ROOT.resolve("data").resolve(well));
        WellCase rebuilt = RecordedCase.of(Runs.record(input, "Base"));
        List<SectionEnvelope> read = Study.of(input.wellCase()).evaluate().sections();
        List<SectionEnvelope> again = Study.of(rebuilt).evaluate().sections();
        for (int i = 0; i < read.size(); i++) {
            assertEquals(read.get(i).drilled(), again.get(i).drilled(), "to the last digit");
            assertEquals(read.get(i).swabbed(), again.get(i).swabbed());
            assertEquals(read.get(i).alongSection(), again.get(i).alongSection());
            assertEquals(read.get(i).maasp(), again.get(i).maasp());
            assertEquals(read.get(i).margins(), again.get(i).margins());
            assertEquals(read.get(i).verdict(), again.get(i).verdict());
            assertEquals(read.get(i).warnings(), again.get(i).warnings());
        }
        assertEquals(input.wellCase().files(), rebuilt.files());
        assertEquals(input.wellCase().header(), rebuilt.header());
        assertEquals(input.wellCase().warnings(), rebuilt.warnings());
    }

    @ParameterizedTest
    @ValueSource(strings = {"quillmarsh-1", "wrenskerry-2"})
    void offsetDataAreInTheRecordToo(String well) throws Exception {
        Path path = Cases.ROOT.resolve("data").resolve(well);
        CaseInput input = CaseInput.read(path, List.of(path.resolve("offset-drop")));
        RunRecord record = Runs.record(input, "Base");
        WellCase rebuilt = RecordedCase.of(record);
        EarthModel earth = input.wellCase().earth();
        assertEquals(earth.porePressure(), rebuilt.earth().porePressure());
        assertEquals(earth.strength(), rebuilt.earth().strength());
        assertEquals(Set.copyOf(earth.tests()), Set.copyOf(rebuilt.earth().tests()));
        assertEquals(Set.copyOf(earth.weakZones()), Set.copyOf(rebuilt.earth().weakZones()));
        OffsetEvidence evidence = input.wellCase().evidence().orElseThrow();
        OffsetEvidence recorded = rebuilt.evidence().orElseThrow();
        assertEquals(evidence.tests(), recorded.tests());
        assertEquals(evidence.points(), recorded.points());
        assertEquals(evidence.events(), recorded.events());
        assertEquals(Set.copyOf(evidence.changes()), Set.copyOf(recorded.changes()));
        assertTrue(record.files().stream().anyMatch(f -> f.path().equals("offset-drop/leak-off.csv")));
        assertTrue(
                record.tables().contains(new InputLine("offset_evidence.strength_tests", "offset-drop/leak-off.csv")));
        assertEquals(
                record.results(),
                RunRecord.results(
                        Study.of(rebuilt).withDesign("Base").evaluate(),
                        Study.of(rebuilt).withDesign("Base").operations()));
    }

    @Test
    void unitsOfTheInputDoNotMatter() throws Exception {
        Path field = Cases.ROOT.resolve("data/quillmarsh-1");
        OtherUnits.metric(field, directory);
        String yaml = Files.readString(directory.resolve("case.yaml"));
        assertTrue(yaml.contains("shoe: 1066.8") && !yaml.contains("density: 13.0 ppg"), yaml);
        RunRecord inField = Runs.record(field, "Base");
        RunRecord inMetric = Runs.record(directory, "Base");
        assertEquals(inField.inputs(), inMetric.inputs());
        assertEquals(inField.results(), inMetric.results());
        assertNotEquals(inField.files(), inMetric.files(), "the files themselves are others");
    }

    @Test
    void theOrderOfTestsAndZonesDoesNotMatter() throws Exception {
        Path subsea = Cases.ROOT.resolve("data/wrenskerry-2");
        RunRecord before = Runs.record(subsea, "Base");
        Cases.copy(subsea, directory);
        Path tests = directory.resolve("strength-tests.csv");
        List<String> lines = Files.readAllLines(tests);
        Collections.swap(lines, 2, 4);
        Files.write(tests, lines);
        RunRecord after = Runs.record(directory, "Base");
        assertEquals(before.inputs(), after.inputs());
        assertEquals(before.results(), after.results());
    }

    @Test
    void theOrderOfOffsetWellsDoesNotMatter() throws Exception {
        Path land = Cases.ROOT.resolve("data/quillmarsh-1");
        String wells = "  wells:\n";
        String north = """
                    - name: Quillmarsh North 2
                      distance: 2400 m
                      elevation: 188 m
                      ground_level: 7 m
                      survey: {vertical_to: 3600 m}
                      pore_pressure:
                        points: [{tvd: 50 m, likely: 0.9 sg}, {tvd: 3600 m, likely: 1.4 sg}]
                      tops: [{formation: Sorrel clay, tvd: 7 m}, {formation: Tansy sandstone, tvd: 3280 m}]
                """;
        Path before = Files.createDirectory(directory.resolve("before"));
        Cases.copy(land, before).with(wells, wells + north);
        Path after = Files.createDirectory(directory.resolve("after"));
        Cases.copy(land, after).with("  tables:\n    - holds", north + "  tables:\n    - holds");
        RunRecord first = Runs.record(before, "Base");
        RunRecord last = Runs.record(after, "Base");
        assertTrue(RecordFile.text(first).contains("Quillmarsh North 2"), "both wells are on record");
        assertEquals(first.inputs(), last.inputs());
        assertEquals(first.results(), last.results());
    }

    @Test
    void numbersHaveTenDigitsAndTheirUnit() throws Exception {
        RunRecord record = Runs.record(Cases.ROOT.resolve("data/quillmarsh-1"), "Base");
        List<InputLine> inputs = record.inputs();
        assertTrue(inputs.contains(new InputLine("casing_strings[13 3/8 in casing].shoe", "1066.8 m")));
        // 13.0 ppg: 13 × 0.45359237 kg / 0.003785411784 m³ (NIST SP 811).
        assertTrue(inputs.contains(new InputLine("sections[8 1/2 in].mud.density", "1557.743555 kg/m3")));
        assertTrue(
                inputs.contains(new InputLine("options.gas_model", "dranchuk_abou_kassem")),
                "a default is written out");
        assertTrue(record.tables().contains(new InputLine("earth.strength.points", "strength.csv")));
        assertTrue(record.files().stream().anyMatch(f -> f.path().equals("strength.csv")));
    }

    @Test
    void textOfAnyKindComesBack() {
        for (String text : List.of("a | b", "\\", " x ", "line\nline\r", "\u0007\u2028", "[x] = y]", "=", "Ä 9⅝")) {
            String line = RecordText.escaped(text);
            assertEquals(text, RecordText.plain(line));
            assertTrue(line.equals(line.strip()) && line.lines().count() == 1 && !line.contains("|"), line);
        }
    }
}
