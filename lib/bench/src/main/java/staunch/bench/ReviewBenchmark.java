package staunch.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;
import staunch.envelope.WellEnvelope;
import staunch.ingest.CaseFaults;
import staunch.ingest.CaseReader;

/** Everything that a review of a well computes, and the reading of its case. Run from the root of the project. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ReviewBenchmark {
    /** Directory of the case. */
    @Param("data/quillmarsh-1")
    public String directory;

    private WellCase wellCase;

    /** Reads the case and checks what the demo well is known to show. */
    @Setup
    public void prepare() throws CaseFaults {
        wellCase = reading();
        WellEnvelope envelope = computing();
        List<Verdict.Outcome> outcomes =
                envelope.sections().stream().map(s -> s.verdict().outcome()).toList();
        List<Verdict.Outcome> known = List.of(
                Verdict.Outcome.NOT_SHUT_IN,
                Verdict.Outcome.HOLDS,
                Verdict.Outcome.FAILS,
                Verdict.Outcome.NOT_ASSESSED);
        boolean finite = envelope.sections().get(1).drilled().tolerance() instanceof Tolerance.Finite;
        if (!outcomes.equals(known) || !finite) {
            throw new IllegalStateException("not timed, since the answer is wrong: " + outcomes);
        }
    }

    /** The case from its files. */
    @Benchmark
    public WellCase reading() throws CaseFaults {
        return CaseReader.read(Path.of(directory));
    }

    /** Every section of the base design. */
    @Benchmark
    public WellEnvelope computing() {
        return Study.of(wellCase).evaluate();
    }
}
