package staunch.bench;

import java.util.List;
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
import org.openjdk.jmh.annotations.Warmup;
import staunch.design.CasingDesign;
import staunch.design.MudRule;
import staunch.design.Progress;
import staunch.design.Sensitivity;
import staunch.design.ShoeSearch;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;
import staunch.envelope.WellEnvelope;

/** Several casing designs of a well, and the search for their shoes, on all cores. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 4, time = 3)
@Fork(1)
public class DesignBenchmark {
    private WellCase wellCase;
    private List<String> names;

    /** Builds the well and checks what is known of it. */
    @Setup
    public void prepare() {
        wellCase = BenchWell.of(4, 4);
        names = wellCase.designs().stream().map(CasingDesign::name).toList();
        boolean right = study().stream()
                .allMatch(e -> e.sections().size() == 5
                        && e.sections().stream()
                                .allMatch(s -> s.alongSection().size() == 200
                                        && !(s.drilled().tolerance() instanceof Tolerance.NotAssessed)));
        boolean shoes = shoes().joint().stream()
                .allMatch(j -> j.design().isPresent()
                        && Study.of(wellCase.withDesign(j.design().get())).evaluate().sections().stream()
                                .allMatch(s -> s.verdict().outcome() == Verdict.Outcome.HOLDS));
        if (!right || !shoes) {
            throw new IllegalStateException("not timed, since the answer is wrong: " + right + " " + shoes);
        }
    }

    /** 4 designs × 5 sections × 2 scenarios × 200 depths, with all curves. */
    @Benchmark
    public List<WellEnvelope> study() {
        return Study.of(wellCase).evaluate(names, Progress.SILENT);
    }

    /** Four strings: each by itself, and all together from either end. */
    @Benchmark
    public ShoeSearch shoes() {
        return Study.of(wellCase).shoes(MudRule.LIGHTEST, Progress.SILENT);
    }

    /** Every input of one section, swings and flips. */
    @Benchmark
    public Sensitivity sensitivity() {
        return Study.of(wellCase).sensitivity("hole 4");
    }
}
