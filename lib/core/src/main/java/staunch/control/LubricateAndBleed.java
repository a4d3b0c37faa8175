package staunch.control;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.rootfinder.BrentSolver;
import staunch.influx.AnnulusGrid;
import staunch.influx.GasColumn;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * Lubricate and bleed: gas has reached the top of the annulus; mud is pumped in on top, falls through it, and gas is bled
 * until bottom-hole pressure is back where it was. Pumping compresses the gas without loss of mass, mud being rigid, so that
 * pressures are upper bounds; every step pumps as much as keeps bottom-hole pressure within the window, at most the volume
 * given. Own derivation from the static columns; the hand formula is {@link MigrationFormulas#pressureOfVolume}.
 */
public final class LubricateAndBleed {
    private static final int MOST_STEPS = 2000;
    private static final double VOLUME_TOLERANCE = 1e-10;
    private static final double PRESSURE_TOLERANCE = 1e-4;

    private final Plan plan;
    private final AnnulusGrid grid;
    private final GasColumn column;
    private final double bottomVertical;
    private final double topVertical;
    private final double topAtRest;
    private final double start;
    private final double held;
    private double pumped;
    private double mass;

    private LubricateAndBleed(Plan plan) {
        ClosedWell well = plan.well();
        this.plan = plan;
        this.grid = AnnulusGrid.of(well.annulus(), well.path(), new double[0]);
        this.column = new GasColumn(well.gas(), well.temperature());
        this.bottomVertical = grid.verticalAt(grid.bottom());
        this.topVertical = grid.verticalDepth(0);
        this.topAtRest = well.atTopAtRest();
        this.start = plan.level();
        this.held = plan.bottomHole();
        this.mass = massAt(held, start);
    }

    /**
     * What is done.
     *
     * @param well with its mud; its influx does not count; its limits are held against every step before bleeding
     * @param level measured depth of the lower end of the gas, m: gas stands from there to the top of the annulus
     * @param bottomHole pressure to hold, Pa absolute
     * @param window that bottom-hole pressure may rise by while pumping, Pa, 1e4 to 2e7
     * @param mud that is lubricated in
     */
    public record Plan(
            ClosedWell well,
            @Si(value = "m", kind = Kind.DEPTH) double level,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double bottomHole,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double window,
            Lubricant mud) {
        public Plan {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(mud, "mud");
            Check.within(
                    "lower end of the gas",
                    level,
                    well.annulus().top() + 1e-3,
                    well.annulus().bottom(),
                    Measure.DEPTH);
            Check.within("bottom-hole pressure to hold", bottomHole, 1e5, 4e8, Measure.PRESSURE_ABSOLUTE);
            Check.within("window of the bottom-hole pressure", window, 1e4, 2e7, Measure.PRESSURE_DIFFERENCE);
        }
    }

    /**
     * Mud that is pumped in on top.
     *
     * @param density kg/m³, 500 to 3000
     * @param largestStep most that is pumped before bleeding, m³, 1e-3 to 50
     * @param left gas volume that ends the operation, m³, 1e-3 to 50
     */
    public record Lubricant(
            @Si("kg/m3") double density,
            @Si("m3") double largestStep,
            @Si("m3") double left) {
        public Lubricant {
            Check.within("density of the lubricated mud", density, 500, 3000, Measure.DENSITY);
            Check.within("largest step of lubrication", largestStep, 1e-3, 50, Measure.VOLUME);
            Check.within("gas volume that may be left", left, 1e-3, 50, Measure.VOLUME);
        }
    }

    /**
     * A line of the table.
     *
     * @param pumped in this step, m³
     * @param totalPumped m³
     * @param afterPumping casing pressure before bleeding, Pa gauge
     * @param bottomHolePeak bottom-hole pressure before bleeding, Pa absolute
     * @param afterBleeding casing pressure to bleed down to, Pa gauge
     * @param gasVolume left, m³
     * @param gasMass left, kg
     */
    public record Step(
            @Si("m3") double pumped,
            @Si("m3") double totalPumped,
            @Si(value = "Pa", kind = Kind.GAUGE) double afterPumping,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double bottomHolePeak,
            @Si(value = "Pa", kind = Kind.GAUGE) double afterBleeding,
            @Si("m3") double gasVolume,
            @Si("kg") double gasMass) {}

    /** Why the operation ends. */
    public enum Ending {
        GAS_OUT("no more gas than allowed is left"),
        BALANCED("the casing pressure is bled to zero: the mud balances the well"),
        TOO_MANY_STEPS("the window is too small to get the gas out");

        private final String title;

        Ending(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /**
     * The table.
     *
     * @param startPressure casing pressure before the first step, Pa gauge
     * @param steps in order
     * @param ending why it ends
     * @param closest limit of the well that comes closest while pumping; empty where the well has none or no step is made
     */
    public record Table(
            @Si(value = "Pa", kind = Kind.GAUGE) double startPressure,
            List<Step> steps,
            Ending ending,
            Optional<ClosestLimit> closest) {
        public Table {
            steps = List.copyOf(steps);
            Objects.requireNonNull(ending, "ending");
            Objects.requireNonNull(closest, "closest");
        }
    }

    /**
     * Works the table out.
     *
     * @throws staunch.units.Fault where the gas model does not reach
     */
    public static Table run(Plan plan) {
        return new LubricateAndBleed(plan).run();
    }

    private Table run() {
        double startPressure = gauge();
        List<Step> steps = new ArrayList<>();
        Ending ending = Ending.TOO_MANY_STEPS;
        Optional<ClosestLimit> closest = Optional.empty();
        while (steps.size() < MOST_STEPS) {
            double room = grid.volume(grid.top(), level(pumped));
            if (room <= plan.mud().left()) {
                ending = Ending.GAS_OUT;
                break;
            }
            double most =
                    Math.min(plan.mud().largestStep(), room - 0.5 * plan.mud().left());
            double volume = roomLeft(most) >= 0
                    ? most
                    : new BrentSolver(1e-15, VOLUME_TOLERANCE, 0).findRoot(this::roomLeft, 0, most);
            double peak = pressureAfter(volume);
            double after = gauge();
            pumped += volume;
            closest = Stream.concat(closest.stream(), margins(peak))
                    .min(Comparator.comparingDouble(ClosestLimit::margin));
            mass = massAt(held, level(pumped));
            double bled = gauge();
            steps.add(new Step(
                    volume, pumped, after, peak, Math.max(0, bled), grid.volume(grid.top(), level(pumped)), mass));
            if (bled <= 0) {
                ending = Ending.BALANCED;
                break;
            }
        }
        return new Table(startPressure, steps, ending, closest);
    }

    /** What every limit leaves in the state of the column. */
    private Stream<ClosestLimit> margins(double bottomHole) {
        return plan.well().limits().stream()
                .map(limit -> new ClosestLimit(
                        limit.name(),
                        limit.measuredDepth(),
                        limit.pressure() - pressureAt(limit.measuredDepth(), bottomHole)));
    }

    private double pressureAt(double depth, double bottomHole) {
        double z = grid.verticalAt(depth);
        if (depth <= level(pumped)) {
            return column.pressure(z);
        }
        double below = plan.well().mud().density();
        double zStart = grid.verticalAt(start);
        return bottomHole
                - Physics.GRAVITY
                        * (depth >= start
                                ? below * (bottomVertical - z)
                                : below * (bottomVertical - zStart) + plan.mud().density() * (zStart - z));
    }

    private double level(double volume) {
        return grid.topOfVolume(start, volume);
    }

    /** Mass of gas above a level; leaves the column of that state. */
    private double massAt(double bottomHole, double level) {
        double zStart = grid.verticalAt(start);
        double z = grid.verticalAt(level);
        double pressure = bottomHole
                - Physics.GRAVITY
                        * (plan.well().mud().density() * (bottomVertical - zStart)
                                + plan.mud().density() * (zStart - z));
        column.start(z, Math.max(pressure, Physics.ATMOSPHERE));
        return grid.mass(column, grid.top(), level);
    }

    private double gauge() {
        return column.pressure(topVertical) - topAtRest;
    }

    /** Gas that the room left by a volume pumped would hold at the top of the window, beyond what is there. */
    private double roomLeft(double volume) {
        return massAt(held + plan.window(), level(pumped + volume)) - mass;
    }

    /** Bottom-hole pressure after a volume within the window was pumped in on the gas; leaves the column of that state. */
    private double pressureAfter(double volume) {
        double level = level(pumped + volume);
        double top = held + plan.window();
        double found = massAt(top, level) <= mass
                ? top
                : massAt(held, level) >= mass
                        ? held
                        : new BrentSolver(1e-15, PRESSURE_TOLERANCE, 0)
                                .findRoot(p -> massAt(p, level) - mass, held, top);
        massAt(found, level);
        return found;
    }
}
