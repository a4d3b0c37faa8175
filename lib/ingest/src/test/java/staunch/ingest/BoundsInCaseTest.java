package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.design.RunRecord;
import staunch.design.WellCase;
import staunch.earth.BoundUse;
import staunch.earth.OffsetEvidence;
import staunch.earth.PressureProfile;

/** Losses that count, in the land demonstration case with a heavier loss than its own. */
class BoundsInCaseTest {
    private static final Path LAND = Cases.ROOT.resolve("data/quillmarsh-1");
    private static final String ECD = "pressure: {column: \"ecd [ppg]\", unit: ppg, kind: equivalent, below: datum}";

    @TempDir
    private Path directory;

    private CaseInput read(String name, String bounds, String unit, String density) throws IOException, CaseFaults {
        Path home = Files.createDirectories(directory.resolve(name));
        Path drop = Files.createDirectories(home.resolve("drop"));
        try (Stream<Path> files = Files.list(LAND)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.write(home.resolve(file.getFileName()), Files.readAllBytes(file));
            }
        }
        String text = Files.readString(home.resolve("case.yaml"));
        assertTrue(text.contains(ECD) && !text.contains("bounds:"), "the demonstration case lists its bounds");
        Files.writeString(
                home.resolve("case.yaml"),
                text.replace(ECD, ECD.replace("unit: ppg", "unit: " + unit))
                        .replace("offset_evidence:\n", "offset_evidence:\n" + bounds));
        Files.writeString(
                drop.resolve("losses.csv"),
                "well,name,tvd [ft],ecd [ppg],source,place\nQuillmarsh South 3,Losses,8600," + density + ",,\n");
        return CaseInput.read(home, List.of(drop));
    }

    private static PressureProfile strength(WellCase well) {
        return well.earth().strength().orElseThrow().likely();
    }

    @Test
    void aLossCountsByChoiceOnlyAndSaysSo() throws Exception {
        WellCase listed = read("default", "", "ppg", "13.0").wellCase();
        assertEquals(
                listed.earth(),
                read("listed", "  bounds: listed\n", "ppg", "13.0").wellCase().earth());
        WellCase counted = read("counted", "  bounds: counted\n", "ppg", "13.0").wellCase();
        OffsetEvidence evidence = counted.evidence().orElseThrow();
        assertEquals(BoundUse.COUNTED, evidence.boundUse());
        double z = evidence.events().get(0).verticalDepth();
        double bound = evidence.events().get(0).bound();
        assertTrue(strength(listed).lowestAt(z) > bound + 1e5);
        assertEquals(bound, strength(counted).lowestAt(z), 100);
        assertTrue(evidence.changes().stream().anyMatch(c -> c.subject().equals("strength, by bounds")));
        assertTrue(counted.earth()
                .strength()
                .orElseThrow()
                .source()
                .orElseThrow()
                .text()
                .contains("lowered to losses of Quillmarsh South 3"));
    }

    @Test
    void theUnitOfALossDoesNotMatter() throws Exception {
        // 13 ppg are 13 · 0.45359237 kg / 3.785411784 l.
        WellCase one = read("ppg", "  bounds: counted\n", "ppg", "13.0").wellCase();
        WellCase other = read("sg", "  bounds: counted\n", "sg", String.valueOf(13 * 0.45359237 / 3.785411784))
                .wellCase();
        double[] here = strength(one).pressures();
        double[] there = strength(other).pressures();
        assertEquals(here.length, there.length);
        for (int i = 0; i < here.length; i++) {
            assertEquals(here[i], there[i], 1, "to the rounding of recorded digits");
        }
    }

    @Test
    void theChoiceIsOnRecordAndARecordedCaseIsTheSame() throws Exception {
        CaseInput input = read("counted", "  bounds: counted\n", "ppg", "13.0");
        RunRecord record = Runs.record(input, "Base");
        WellCase rebuilt = RecordedCase.of(record);
        assertEquals(input.wellCase().earth().strength(), rebuilt.earth().strength());
        assertEquals(Optional.of(BoundUse.COUNTED), rebuilt.evidence().map(OffsetEvidence::boundUse));
        assertNotEquals(
                record.inputs(),
                Runs.record(read("listed", "", "ppg", "13.0"), "Base").inputs());
    }
}
