package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Whatever is done to a file, it is read in order or refused with one message. */
class LasReaderLawTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "las");
    private static final List<String> FILES = List.of(
            "sample.las",
            "sample_3.0.las",
            "sample_3.0_tab_dlm.las",
            "sample_wrapped.las",
            "null_policy_runon.las",
            "encodings_utf16le.las",
            "data_characters.las",
            "Curve-Param_Error_2_MS.LAS");
    private static final byte[] NASTY = "~~..::,,\"\"|{}[]-+eE#\t\r\n 0\0\377".getBytes(LasText.WESTERN);

    @Property(tries = 1000, seed = "1")
    void damagedFilesAreReadInOrderOrRefused(
            @ForAll @IntRange(min = 0, max = 7) int file,
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 30) int hits)
            throws IOException {
        Random random = new Random(seed);
        byte[] bytes = Files.readAllBytes(FOLDER.resolve(FILES.get(file)));
        for (int i = 0; i < hits; i++) {
            bytes[random.nextInt(bytes.length)] = NASTY[random.nextInt(NASTY.length)];
        }
        int length = random.nextInt(4) == 0 ? random.nextInt(bytes.length) : bytes.length;
        Path damaged = Files.createTempFile("damaged", ".las");
        try {
            Files.write(damaged, Arrays.copyOf(bytes, length));
            LasFile las = LasReader.read(damaged);
            for (LasCurve curve : las.curves()) {
                assertEquals(las.rows(), curve.rows());
                for (int row = 0; row < curve.rows(); row++) {
                    assertFalse(curve.number(row).isPresent()
                            && !Double.isFinite(curve.number(row).getAsDouble()));
                }
            }
        } catch (DataFileFault fault) {
            assertEquals(1, fault.problems().size());
            String message = fault.getMessage();
            assertTrue(message.startsWith(damaged.getFileName().toString()), message);
            assertFalse(message.chars().anyMatch(Character::isISOControl), message);
        } finally {
            Files.delete(damaged);
        }
    }
}
