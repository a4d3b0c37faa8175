package staunch.envelope;

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
import staunch.envelope.Kick.Scenario;
import staunch.envelope.MethodOptions.Estimates;
import staunch.envelope.MethodOptions.ToleranceDefinition;

/** One tolerance, and a section with its tolerance at 200 depths. In this package since one tolerance has no public call. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ToleranceBenchmark {
    private static final double ROOM_TEMPERATURE = 350;

    private Question onBottom;
    private Question topAtWeakPoint;
    private Question wholeDisplacement;
    private SectionInput section;

    private record Question(Model model, DrilledHole hole, Kick kick) {
        static Question of(SectionInput input) {
            Model model = Model.of(input, Estimates.HIGH_PORE_LOW_STRENGTH);
            return new Question(
                    model, model.hole(BenchSection.BOTTOM), model.kick(Scenario.DRILLED, BenchSection.BOTTOM));
        }

        Tolerance ask() {
            return model.tolerance(kick, hole);
        }

        double volume() {
            return ((Tolerance.Finite) ask()).volume();
        }
    }

    /** Prepares the questions and checks their answers. */
    @Setup
    public void prepare() {
        onBottom = Question.of(BenchSection.withDefinition(ToleranceDefinition.ON_BOTTOM));
        topAtWeakPoint = Question.of(BenchSection.withDefinition(ToleranceDefinition.TOP_AT_WEAK_POINT));
        wholeDisplacement = Question.of(BenchSection.input());
        section = BenchSection.input();
        double closed = BenchSection.closedFormVolume(ROOM_TEMPERATURE);
        double computed = Question.of(BenchSection.closedForm(ROOM_TEMPERATURE)).volume();
        BenchSection.check(
                Math.abs(computed - closed) < 1e-9 * closed, "closed form " + closed + ", computed " + computed);
        BenchSection.check(
                wholeDisplacement.volume() <= onBottom.volume(), "the whole displacement allows more than its start");
        BenchSection.check(
                topAtWeakPoint.ask() instanceof Tolerance.Finite, "no finite tolerance with the top at the weak point");
        SectionEnvelope envelope = wholeSection();
        BenchSection.check(envelope.alongSection().size() >= 200, "fewer than 200 depths along the section");
        BenchSection.check(
                envelope.drilled().tolerance() instanceof Tolerance.Finite finite
                        && finite.volume() == wholeDisplacement.volume(),
                "the section's tolerance differs from the single one");
    }

    /** Two states only: at shut-in on bottom, and with the top at the weak point. */
    @Benchmark
    public Tolerance[] twoStates() {
        return new Tolerance[] {onBottom.ask(), topAtWeakPoint.ask()};
    }

    /** Every stage from shut-in until the gas is past the weak point. */
    @Benchmark
    public Tolerance wholeDisplacement() {
        return wholeDisplacement.ask();
    }

    /** Everything about a section: tolerance at TD and at 200 depths, drilled and swabbed, curves, MAASP, margins. */
    @Benchmark
    public SectionEnvelope wholeSection() {
        return SectionEvaluator.evaluate(section, n -> {});
    }
}
