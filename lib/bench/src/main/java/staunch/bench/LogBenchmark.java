package staunch.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import staunch.ingest.DataFileFault;
import staunch.ingest.LasFile;
import staunch.ingest.LasReader;

/** A log of 100 MB in LAS 2.0: ten curves, a row for each line. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 5)
@Fork(value = 1, jvmArgs = "-Xmx512m")
public class LogBenchmark {
    private static final int CURVES = 10;
    private static final long SIZE = 100_000_000;

    private Path log;

    /** Writes the log and checks that the last value of its first and of its last curve is read. */
    @Setup
    public void prepare() throws IOException, DataFileFault {
        log = Files.createTempFile("staunch", ".las");
        int row = 0;
        try (BufferedWriter out = Files.newBufferedWriter(log, StandardCharsets.US_ASCII)) {
            out.write("~V\nVERS. 2.0:\nWRAP. NO:\n~W\nSTRT.M 0:\nSTOP.M 0:\nSTEP.M 0:\nNULL. -999.25:\n~C\nDEPT.M :\n");
            for (int c = 1; c < CURVES; c++) {
                out.write("C" + c + ". :\n");
            }
            out.write("~A\n");
            for (long written = 0; written < SIZE; row++) {
                StringBuilder line = new StringBuilder().append(row / 10.0);
                for (int c = 1; c < CURVES; c++) {
                    line.append("  ").append(value(row, c));
                }
                out.append(line.append('\n'));
                written += line.length();
            }
        }
        LasFile las = reading();
        double last = las.curve("DEPT").number(las.rows() - 1).orElseThrow();
        double lastOfAll = las.curve("C" + (CURVES - 1)).number(las.rows() - 1).orElseThrow();
        boolean right = Files.size(log) >= SIZE
                && las.rows() == row
                && last == (row - 1) / 10.0
                && lastOfAll == value(row - 1, CURVES - 1);
        if (!right) {
            throw new IllegalStateException("not timed, since " + las.rows() + " rows to " + last + " were read");
        }
    }

    private static double value(int row, int curve) {
        return (row * 31L + curve * 17L) % 100_000 / 100.0;
    }

    /** Takes the log away. */
    @TearDown
    public void remove() throws IOException {
        Files.delete(log);
    }

    /** The log from its file. */
    @Benchmark
    public LasFile reading() throws DataFileFault {
        return LasReader.read(log);
    }
}
