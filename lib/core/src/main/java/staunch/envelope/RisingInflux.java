package staunch.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import staunch.influx.AnnulusGrid;
import staunch.influx.GasColumn;
import staunch.influx.LowerEnd;

/**
 * One gas influx of known mass on its way from bottom to the choke with bottom-hole pressure held: the pressure at any
 * depth, mud above the gas, gas, mud line below it.
 */
final class RisingInflux {
    private static final double POSITION_TOLERANCE = 0.05;

    private final DrilledHole hole;
    private final ToleranceSolver solver;
    private final GasColumn column;
    private final Kick kick;
    private final LowerEnd mudLine;
    private final double mass;

    /** @param volume it fills on bottom at shut-in, m³ */
    RisingInflux(ToleranceSolver solver, DrilledHole hole, Kick kick, double volume) {
        this.hole = hole;
        this.solver = solver;
        InfluxFluid fluid = solver.fineFluid(kick);
        this.column = fluid.column();
        this.kick = kick;
        this.mudLine = solver.mudLine(hole, kick);
        column.start(hole.verticalDepth(), kick.formationPressure());
        this.mass = hole.grid()
                .mass(column, fluid.topOfGasVolume(hole.grid(), hole.measuredDepth(), volume), hole.measuredDepth());
    }

    /**
     * Where the gas stands.
     *
     * @param top measured depth of its top
     * @param bottom measured depth of its lower end
     * @param lowerPressure at its lower end, Pa absolute
     */
    record Position(double top, double bottom, double lowerPressure) {}

    /**
     * Shut-in, then positions from bottom until the top of the gas is at the choke, every change of cross-section with
     * either end of the gas among them, refined about the greatest pressure at one depth.
     *
     * @param count of evenly spaced ones
     * @param vertical depth whose greatest pressure is refined
     */
    List<Position> positions(int count, double vertical) {
        AnnulusGrid grid = hole.grid();
        double d = hole.measuredDepth();
        double last =
                fits(grid.top()) ? grid.top() : Root.find("top of the influx at the choke", this::room, grid.top(), d);
        TreeSet<Double> lower = new TreeSet<>();
        for (int i = 0; i <= count; i++) {
            lower.add(last + (d - last) * i / count);
        }
        for (int i = 1; i < grid.pieces(); i++) {
            if (grid.isBreak(i) && grid.measuredDepth(i) > last) {
                lower.add(grid.measuredDepth(i));
            }
        }
        List<Position> all = new ArrayList<>();
        column.start(hole.verticalDepth(), kick.formationPressure());
        all.add(new Position(grid.topOfMass(column, d, mass), d, kick.formationPressure()));
        for (double depth : lower.descendingSet()) {
            all.add(rising(depth, last));
        }
        addTopsAtBreaks(all, last);
        refine(all, vertical, last);
        return all;
    }

    private void addTopsAtBreaks(List<Position> all, double last) {
        AnnulusGrid grid = hole.grid();
        List<Position> found = List.copyOf(all);
        for (int i = 1; i < grid.pieces(); i++) {
            double edge = grid.measuredDepth(i);
            for (int k = 2; k < found.size() && grid.isBreak(i); k++) {
                Position deeper = found.get(k - 1);
                Position higher = found.get(k);
                if (deeper.top > edge && higher.top < edge) {
                    all.add(rising(
                            Root.find(
                                    "position of the influx",
                                    x -> rising(x, last).top - edge,
                                    deeper.bottom,
                                    higher.bottom),
                            last));
                }
            }
        }
    }

    private void refine(List<Position> all, double vertical, double last) {
        double measured = hole.grid().top();
        Position best = all.get(1);
        for (Position p : all) {
            best = pressure(p, measured, vertical) > pressure(best, measured, vertical) ? p : best;
        }
        double step = (hole.measuredDepth() - last) / 50;
        Minimum.search(
                x -> {
                    Position p = rising(x, last);
                    all.add(p);
                    return -pressure(p, measured, vertical);
                },
                Math.max(last, best.bottom - step),
                Math.min(hole.measuredDepth(), best.bottom + step),
                POSITION_TOLERANCE);
    }

    private boolean fits(double lower) {
        return room(lower) >= 0;
    }

    /** Gas that would fill the annulus above a lower end, less the mass there is. */
    private double room(double lower) {
        double z = hole.grid().verticalAt(lower);
        column.start(z, mudLine.pressure(lower, z));
        return hole.grid().mass(column, hole.grid().top(), lower) - mass;
    }

    private Position rising(double lower, double last) {
        double z = hole.grid().verticalAt(lower);
        double pressure = mudLine.pressure(lower, z);
        column.start(z, pressure);
        boolean atChoke = lower <= last + POSITION_TOLERANCE && !hole.grid().fits(column, lower, mass);
        double top = atChoke ? hole.grid().top() : hole.grid().topOfMass(column, lower, mass);
        return new Position(top, lower, pressure);
    }

    /** Pressure at a depth, Pa absolute. */
    double pressure(Position position, double measuredDepth, double vertical) {
        if (measuredDepth > position.bottom) {
            return mudLine.pressure(measuredDepth, vertical);
        }
        column.start(hole.grid().verticalAt(position.bottom), position.lowerPressure);
        if (measuredDepth >= position.top) {
            return column.pressure(vertical);
        }
        double top = hole.grid().verticalAt(position.top);
        // At shut-in, with the pressure of the formation at its lower end, nothing flows.
        boolean moving = position.lowerPressure != kick.formationPressure();
        return solver.mud().pressure(top, column.pressure(top), vertical)
                - hole.frictionAbove(position.top, moving)
                + hole.frictionAbove(measuredDepth, moving);
    }
}
