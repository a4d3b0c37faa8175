package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A log of 200 MB is read in a program of its own that has 512 MB. */
class LargeLogIT {
    private static final int CURVES = 10;
    private static final long SIZE = 200_000_000;

    @TempDir
    private Path folder;

    /** Value of a curve in a row: what is written can be told again without keeping it. */
    private static double value(int row, int curve) {
        return (row * 31L + curve * 17L) % 100_000 / 100.0;
    }

    private static int write(Path file) throws IOException {
        int row = 0;
        long written = 0;
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.US_ASCII)) {
            out.write("~V\nVERS. 2.0:\nWRAP. NO:\n~W\nSTRT.M 0:\nSTOP.M 0:\nSTEP.M 0:\nNULL. -999.25:\n~C\nDEPT.M :\n");
            for (int c = 1; c < CURVES; c++) {
                out.write("C" + c + ". :\n");
            }
            out.write("~A\n");
            StringBuilder line = new StringBuilder();
            while (written < SIZE) {
                line.setLength(0);
                line.append(row / 10.0);
                for (int c = 1; c < CURVES; c++) {
                    line.append("  ").append(value(row, c));
                }
                line.append('\n');
                out.append(line);
                written += line.length();
                row++;
            }
        }
        return row;
    }

    @Test
    void aLogOf200MegabytesNeedsLessThan512() throws Exception {
        Path log = folder.resolve("large.las");
        int rows = write(log);
        assertTrue(Files.size(log) >= SIZE);
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(
                        java.toString(),
                        "-Xmx512m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Reading.class.getName(),
                        log.toString())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertTrue(process.waitFor(5, TimeUnit.MINUTES));
        String text = Files.readString(said);
        assertEquals(0, process.exitValue(), text);
        int last = rows - 1;
        assertEquals(rows + " " + last / 10.0 + " " + value(last, CURVES - 1), text.strip());
    }

    /** The program that reads it. */
    static final class Reading {
        private Reading() {}

        public static void main(String[] arguments) throws DataFileFault {
            LasFile las = LasReader.read(Path.of(arguments[0]));
            int last = las.rows() - 1;
            System.out.println(las.rows() + " "
                    + las.curve("DEPT").number(last).orElseThrow() + " "
                    + las.curve("C" + (CURVES - 1)).number(last).orElseThrow());
        }
    }
}
