package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** However a case is damaged, it is read or its faults are told: nothing else ever comes out of the reader. */
class DamagedCaseLawTest {
    private static final List<String> VALUES = List.of(
            "",
            "~",
            "NaN",
            "-1 m",
            "0 m",
            "0 in",
            "1e308 m",
            "1e-300 sg",
            "9.6 ppg",
            "-40 degC",
            "100 %",
            "5 spm",
            "[]",
            "{}",
            "[a, b]",
            "{a: b}",
            "none",
            "Base",
            "12 1/4 in",
            "*a",
            "&a b",
            "!!int 3",
            "\"",
            "survey.csv",
            "{file: pore.csv}",
            "true",
            "diverter",
            "riserless");

    @TempDir
    private Path directory;

    @ParameterizedTest
    @CsvSource({"case.yaml, 600", "survey.csv, 100", "pore.csv, 100"})
    void isReadOrTellsItsFaults(String file, int times) throws IOException {
        Cases.copy(Cases.BASE, directory);
        List<String> whole = Files.readAllLines(directory.resolve(file));
        Random random = new Random(20_260_301);
        for (int i = 0; i < times; i++) {
            List<String> damaged = new ArrayList<>(whole);
            int blows = 1 + random.nextInt(3);
            for (int k = 0; k < blows; k++) {
                damage(damaged, random);
            }
            String text = String.join("\n", damaged) + "\n";
            Files.writeString(directory.resolve(file), text);
            check(text);
        }
    }

    private void check(String text) {
        try {
            CaseReader.read(directory);
        } catch (CaseFaults faults) {
            assertFalse(faults.faults().isEmpty());
            assertTrue(faults.faults().stream().allMatch(f -> f.line() > 0), faults.getMessage());
        } catch (RuntimeException e) {
            fail("out of the reader came " + e + " for\n" + text, e);
        }
    }

    private static void damage(List<String> lines, Random random) {
        int at = random.nextInt(lines.size());
        String line = lines.get(at);
        switch (random.nextInt(7)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, line);
            case 2 -> Collections.swap(lines, at, random.nextInt(lines.size()));
            case 3 -> lines.set(at, line.replaceAll(":.*", ": " + value(random)));
            case 4 -> lines.set(at, line.replaceFirst("[\\d.]+", String.valueOf(random.nextInt(4000))));
            case 5 -> lines.set(at, line.replaceFirst("[^,{}]*$", value(random)));
            default -> lines.set(at, line.substring(0, random.nextInt(line.length() + 1)));
        }
        if (lines.isEmpty()) {
            lines.add("");
        }
    }

    private static String value(Random random) {
        return Matcher.quoteReplacement(VALUES.get(random.nextInt(VALUES.size())));
    }
}
