package staunch.envelope;

import java.util.List;
import java.util.OptionalDouble;
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
import staunch.control.Circulation;
import staunch.control.CirculationMethod;
import staunch.control.CirculationPlan;
import staunch.control.CirculationPoint;
import staunch.control.CirculationSchedule;
import staunch.control.ClosedWell;
import staunch.control.KillSheet;
import staunch.control.KillSheetInput;
import staunch.control.Migration;
import staunch.control.MigrationCurve;
import staunch.control.PressureLimit;
import staunch.envelope.Kick.Scenario;
import staunch.influx.GasColumn;
import staunch.influx.MigrationBracket;
import staunch.units.Physics;
import staunch.well.Annulus;
import staunch.well.AnnulusGeometry;

/** An influx in time: circulated out, left to rise, its kill sheet, and everything a section is asked about it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class OperationsBenchmark {
    private static final int STEPS = 500;
    private static final double VOLUME = 3;

    private SectionInput section;
    private CirculationPlan plan;
    private ClosedWell closed;
    private KillSheetInput sheet;

    /** Prepares the questions and checks their answers. */
    @Setup
    public void prepare() {
        section = BenchSection.ready();
        Model model = Model.of(section, section.options().estimates());
        Kick kick = model.kick(Scenario.DRILLED, BenchSection.BOTTOM);
        DrilledHole hole = model.hole(BenchSection.BOTTOM);
        plan = new CirculationPlan(
                hole.grid(),
                new GasColumn(model.gas().orElseThrow(), model.temperature().orElseThrow()),
                model.mudColumn().orElseThrow(),
                CirculationMethod.DRILLERS,
                new CirculationPlan.Pressures(kick.formationPressure(), kick.formationPressure(), 0),
                VOLUME,
                hole.stringVolume(),
                new CirculationPlan.Pump(0.008, OptionalDouble.of(0.012)),
                new double[] {0, BenchSection.SHOE},
                new OperationLimits(section, model).lines(),
                d -> 0,
                STEPS);
        Annulus annulus = Annulus.of(new AnnulusGeometry(
                section.casing(),
                section.plan().hole(),
                section.plan().string().orElseThrow(),
                BenchSection.BOTTOM,
                0,
                BenchSection.BOTTOM));
        closed = new ClosedWell(
                section.path(),
                annulus,
                model.gas().orElseThrow(),
                model.temperature().orElseThrow(),
                new ClosedWell.WellMud(BenchSection.MUD, 0.05, BenchSection.MUD),
                new ClosedWell.Influx(kick.formationPressure(), VOLUME),
                new ClosedWell.Yielding(4.5e-10, 1.5e-10, false, 0),
                List.of(
                        new PressureLimit(
                                "shoe",
                                BenchSection.SHOE,
                                BenchSection.pressure(BenchSection.STRENGTH, BenchSection.SHOE)),
                        new PressureLimit("casing", 0, 52e6 + Physics.ATMOSPHERE),
                        new PressureLimit("BOP stack", 0, 69e6 + Physics.ATMOSPHERE)));
        KickOperations.Followed course =
                (KickOperations.Followed) OperationsEvaluator.evaluate(section).drilled();
        sheet = ((KillSheetOutcome.Computed) course.killSheet()).sheet().input();
        check(course);
    }

    private void check(KickOperations.Followed course) {
        CirculationSchedule schedule = circulation();
        BenchSection.check(schedule.points().size() > 2 * STEPS, "fewer than 500 steps of each circulation");
        CirculationPoint last = schedule.points().get(schedule.points().size() - 1);
        BenchSection.check(Math.abs(last.chokePressure()) < 1, "the killed well shows pressure at the choke");
        double shutIn = schedule.points().get(0).chokePressure();
        BenchSection.check(
                Math.abs(shutIn - migration().points().get(0).surfacePressure()) < 1,
                "circulation and migration begin at different pressures");
        BenchSection.check(migration().ending() == MigrationCurve.Ending.TOP, "the gas does not come to surface");
        BenchSection.check(killSheet().killDensity() > BenchSection.MUD, "the kill mud is no heavier");
        BenchSection.check(
                course.migration() instanceof MigrationOutcome.Computed
                        && course.lubrication() instanceof LubricationOutcome.Computed
                        && course.bullheading() instanceof BullheadingOutcome.Computed,
                "an operation of the section is not assessed");
    }

    /** A full schedule by driller's method, 500 steps of each circulation, with the closest limit at every step. */
    @Benchmark
    public CirculationSchedule circulation() {
        return Circulation.run(plan);
    }

    /** A migration to surface at the medium rate in a well that yields, three limits watched. */
    @Benchmark
    public MigrationCurve migration() {
        return Migration.run(closed, MigrationBracket.PUBLISHED.medium());
    }

    /** A kill sheet. */
    @Benchmark
    public KillSheet killSheet() {
        return KillSheet.of(sheet);
    }

    /** Everything about drilled and swabbed kick: two circulations, six migrations, and the rest. */
    @Benchmark
    public SectionOperations wholeSection() {
        return OperationsEvaluator.evaluate(section);
    }
}
