package staunch.control;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import staunch.influx.AnnulusGrid;
import staunch.influx.GasColumn;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * Whether an influx on bottom can be pumped back into its formation: pressures in the annulus while kill mud is pumped in from
 * above, with the pressure at which the formation takes it held at the bottom (own derivation from static columns; gas that
 * is taken leaves at the bottom, and slips no way up). Friction of the annulus loads the points above: it is shared in
 * proportion to measured depth, and adds to the static pressure there. Friction of the line between pump and annulus is not
 * counted here: who knows the line adds it to the pump pressure. The highest surface pressure stands at the start, when
 * the lightest column is in the well.
 */
public final class Bullheading {
    private static final int STAGES = 100;

    private Bullheading() {}

    /**
     * What is pumped.
     *
     * @param well shut in; of its influx only the volume counts
     * @param injectionPressure at which the formation takes fluid at the bottom, Pa absolute, at least its formation pressure
     * @param killDensity of the mud pumped, kg/m³, 500 to 3000
     * @param friction of the annulus at the rate pumped, Pa, 0 to 1e8
     * @param pumpLimit greatest pump pressure, Pa gauge, above zero to 2e8
     */
    public record Plan(
            ClosedWell well,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double injectionPressure,
            @Si("kg/m3") double killDensity,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double friction,
            @Si(value = "Pa", kind = Kind.GAUGE) double pumpLimit) {
        public Plan {
            Objects.requireNonNull(well, "well");
            Check.within(
                    "injection pressure",
                    injectionPressure,
                    well.influx().formationPressure(),
                    4e8,
                    Measure.PRESSURE_ABSOLUTE);
            Check.within("kill mud density", killDensity, 500, 3000, Measure.DENSITY);
            Check.within("friction of the annulus", friction, 0, 1e8, Measure.PRESSURE_DIFFERENCE);
            Check.within("greatest pump pressure", pumpLimit, 1, 2e8, Measure.PRESSURE_GAUGE);
        }
    }

    /**
     * A moment.
     *
     * @param pumped m³
     * @param pumpPressure Pa gauge; negative where the column falls by itself
     * @param watched pressures at the limits of the well, in their order, Pa absolute
     */
    public record Stage(
            @Si("m3") double pumped,
            @Si(value = "Pa", kind = Kind.GAUGE) double pumpPressure,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double[] watched) {
        public Stage {
            watched = watched.clone();
        }

        @Override
        @Si(value = "Pa", kind = Kind.ABSOLUTE)
        public double[] watched() {
            return watched.clone();
        }
    }

    /**
     * Greatest load on a limit.
     *
     * @param limit what is watched
     * @param load greatest pressure there, Pa absolute
     * @param pumped when it occurs, m³
     */
    public record Load(
            PressureLimit limit,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double load,
            @Si("m3") double pumped) {
        /** What it holds beyond the load; negative where it does not hold. */
        @Si(value = "Pa", kind = Kind.DIFFERENCE)
        public double margin() {
            return limit.pressure() - load;
        }
    }

    /**
     * The outcome.
     *
     * @param stages from the start until the influx is in the formation
     * @param pump greatest pump pressure against the pump's limit, at the top of the annulus
     * @param loads on the limits of the well
     */
    public record Outcome(List<Stage> stages, Load pump, List<Load> loads) {
        public Outcome {
            stages = List.copyOf(stages);
            Objects.requireNonNull(pump, "pump");
            loads = List.copyOf(loads);
        }

        /** Load with the least margin, the pump's among them. */
        public Load governing() {
            List<Load> all = new ArrayList<>(loads);
            all.add(pump);
            return all.stream().min(Comparator.comparingDouble(Load::margin)).orElseThrow();
        }

        /** Whether every limit holds; one that is met exactly does not. */
        public boolean feasible() {
            return governing().margin() > 0;
        }
    }

    /**
     * Works the stages out.
     *
     * @throws staunch.units.Fault where the gas model does not reach
     */
    public static Outcome run(Plan plan) {
        ClosedWell well = plan.well();
        double[] keep =
                well.limits().stream().mapToDouble(PressureLimit::measuredDepth).toArray();
        AnnulusGrid grid = AnnulusGrid.of(well.annulus(), well.path(), keep);
        GasColumn column = new GasColumn(well.gas(), well.temperature());
        column.start(grid.verticalAt(grid.bottom()), well.influx().formationPressure());
        double mass =
                grid.mass(column, grid.topOfVolume(grid.bottom(), well.influx().volume()), grid.bottom());
        column.start(grid.verticalAt(grid.bottom()), plan.injectionPressure());
        double top = grid.topOfMass(column, grid.bottom(), mass);
        double gas = grid.volume(top, grid.bottom());
        double compressed = well.influx().volume() - gas;
        List<Stage> stages = new ArrayList<>();
        for (int i = 0; i <= STAGES; i++) {
            double taken = gas * i / STAGES;
            stages.add(stage(plan, grid, column, compressed + taken, gas - taken));
        }
        PressureLimit pump = new PressureLimit("pump", well.annulus().top(), plan.pumpLimit() + well.atTopAtRest());
        List<Load> loads = new ArrayList<>();
        for (int k = 0; k < well.limits().size(); k++) {
            int limit = k;
            Stage worst = stages.stream()
                    .max(Comparator.comparingDouble(s -> s.watched[limit]))
                    .orElseThrow();
            loads.add(new Load(well.limits().get(k), worst.watched[k], worst.pumped()));
        }
        Stage worst = stages.stream()
                .max(Comparator.comparingDouble(Stage::pumpPressure))
                .orElseThrow();
        return new Outcome(stages, new Load(pump, worst.pumpPressure() + well.atTopAtRest(), worst.pumped()), loads);
    }

    private static Stage stage(Plan plan, AnnulusGrid grid, GasColumn column, double pumped, double gas) {
        double gasTop = grid.topOfVolume(grid.bottom(), gas);
        double room = grid.volume(grid.top(), gasTop);
        double killBottom = pumped >= room ? gasTop : grid.topOfVolume(gasTop, room - pumped);
        double[] watched = plan.well().limits().stream()
                .mapToDouble(l -> pressure(plan, grid, column, gasTop, killBottom, l.measuredDepth()))
                .toArray();
        double atTop = pressure(plan, grid, column, gasTop, killBottom, grid.top());
        return new Stage(pumped, atTop - plan.well().atTopAtRest(), watched);
    }

    private static double pressure(
            Plan plan, AnnulusGrid grid, GasColumn column, double gasTop, double killBottom, double depth) {
        double share = (grid.bottom() - depth) / (grid.bottom() - grid.top());
        double friction = plan.friction() * share;
        double z = grid.verticalAt(depth);
        if (depth >= gasTop) {
            return column.pressure(z) + friction;
        }
        double zGas = grid.verticalAt(gasTop);
        double zKill = grid.verticalAt(killBottom);
        double mud = plan.well().mud().density() * (zGas - (depth >= killBottom ? z : zKill));
        double kill = depth >= killBottom ? 0 : plan.killDensity() * (zKill - z);
        return column.pressure(zGas) - Physics.GRAVITY * (mud + kill) + friction;
    }
}
