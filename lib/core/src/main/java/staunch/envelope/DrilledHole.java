package staunch.envelope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import staunch.influx.AnnulusGrid;
import staunch.influx.MudColumn;
import staunch.units.Physics;
import staunch.well.Annulus;
import staunch.well.AnnulusGeometry;
import staunch.well.CasingString;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.WellPath;

/**
 * The section drilled to one depth, with the bit and the influx each at one depth: its annulus down to the influx, cut for
 * integration, and the limit over it, at rest and while mud flows. What lies below the influx is filled with mud, so that
 * it counts only in the greatest pressure that a line of mud may have.
 */
final class DrilledHole {
    private static final double SAME_DEPTH = 1e-6;

    private final AnnulusGrid whole;
    private final AnnulusGrid grid;
    private final MudColumn mud;
    private final FrictionProfile friction;
    private final FormationLimit limit;
    private final FormationLimit flowing;
    private final FormationLimit wholeLimit;
    private final FormationLimit wholeFlowing;
    private final double stringVolume;
    private final double fillTop;

    private DrilledHole(Fixed fixed, AnnulusGrid whole, LimitNodes nodes, Annulus annulus, double influx) {
        boolean onBottom = whole.bottom() - influx < SAME_DEPTH;
        this.whole = whole;
        this.grid = onBottom ? whole : whole.above(influx);
        this.mud = fixed.mud();
        this.friction = fixed.flow().map(f -> FrictionProfile.of(annulus, f)).orElse(FrictionProfile.NONE);
        this.limit = FormationLimit.of(grid, nodes, mud, FrictionProfile.NONE);
        this.flowing = friction == FrictionProfile.NONE ? limit : FormationLimit.of(grid, nodes, mud, friction);
        this.wholeLimit = onBottom ? limit : FormationLimit.of(whole, nodes, mud, FrictionProfile.NONE);
        this.wholeFlowing = onBottom
                ? flowing
                : friction == FrictionProfile.NONE ? wholeLimit : FormationLimit.of(whole, nodes, mud, friction);
        this.stringVolume = annulus.stringVolume();
        this.fillTop = Math.max(nodes.top(), grid.top());
    }

    /**
     * What stays the same for every depth of a section.
     *
     * @param flow of the mud while circulating, where its friction counts
     */
    record Fixed(
            WellPath path,
            List<CasingString> casing,
            List<HoleInterval> hole,
            DrillString string,
            double stackDepth,
            LimitNodes strength,
            double[] temperatureKinks,
            MudColumn mud,
            Optional<FrictionProfile.Flow> flow) {}

    /**
     * Measured depths.
     *
     * @param drilledTo bottom of the hole
     * @param bit at or above it
     * @param influx at or above it, in the open hole
     */
    record Depths(double drilledTo, double bit, double influx) {}

    static DrilledHole of(Fixed fixed, Depths depths) {
        Annulus annulus = annulus(fixed, depths);
        AnnulusGrid grid = AnnulusGrid.of(annulus, fixed.path(), keep(fixed, fixed.strength(), depths));
        return new DrilledHole(fixed, grid, fixed.strength(), annulus, depths.influx());
    }

    /**
     * The same hole up to surface, by the choke line where the stack is on the seabed, under the limits of casing and
     * equipment instead of the formation's.
     *
     * @param equipment inside limits
     * @param chokeLineArea cross-section of the choke line, m²; not read for a stack at surface
     */
    static DrilledHole toSurface(Fixed fixed, LimitNodes equipment, double chokeLineArea, Depths depths) {
        Annulus annulus = annulus(fixed, depths);
        double[] keep = keep(fixed, equipment, depths);
        AnnulusGrid grid = fixed.stackDepth() > 0
                ? AnnulusGrid.withChokeLine(annulus, chokeLineArea, fixed.path(), keep)
                : AnnulusGrid.of(annulus, fixed.path(), keep);
        return new DrilledHole(fixed, grid, equipment, annulus, depths.influx());
    }

    private static Annulus annulus(Fixed fixed, Depths depths) {
        List<HoleInterval> open = new ArrayList<>();
        for (HoleInterval interval : fixed.hole()) {
            if (interval.topDepth() < depths.drilledTo() - SAME_DEPTH) {
                open.add(new HoleInterval(
                        interval.topDepth(),
                        Math.min(interval.bottomDepth(), depths.drilledTo()),
                        interval.diameter()));
            }
        }
        return Annulus.of(new AnnulusGeometry(
                fixed.casing(), open, fixed.string(), depths.bit(), fixed.stackDepth(), depths.drilledTo()));
    }

    private static double[] keep(Fixed fixed, LimitNodes nodes, Depths depths) {
        return DoubleStream.concat(
                        DoubleStream.of(depths.influx()),
                        DoubleStream.concat(
                                Arrays.stream(nodes.measuredDepths()), Arrays.stream(fixed.temperatureKinks())))
                .toArray();
    }

    /** Annulus down to the influx. */
    AnnulusGrid grid() {
        return grid;
    }

    /** Limit down to the influx with the well at rest. */
    FormationLimit limit() {
        return limit;
    }

    /** Limit down to the influx while mud flows. */
    FormationLimit limit(boolean moving) {
        return moving ? flowing : limit;
    }

    /** Friction of the flowing mud above a measured depth; zero where it is neglected. */
    double frictionAbove(double depth, boolean moving) {
        return moving ? friction.above(depth) : 0;
    }

    /** Measured depth of the bottom of the hole. */
    double drilledTo() {
        return whole.bottom();
    }

    /** Measured depth of the influx, the lower end of the gas at shut-in. */
    double measuredDepth() {
        return grid.bottom();
    }

    /** Vertical depth of the influx. */
    double verticalDepth() {
        return grid.verticalDepth(grid.pieces());
    }

    /** Inside volume of the string down to the bit. */
    double stringVolume() {
        return stringVolume;
    }

    /** Volume of the annulus from the influx down to the bottom of the hole. */
    double volumeBelowInflux() {
        return grid == whole ? 0 : whole.volume(grid.bottom(), whole.bottom());
    }

    /** Measured depth up to which an influx may fill the annulus at least where nothing limits it: shoe or surface. */
    double fillTop() {
        return fillTop;
    }

    /** Pressure on bottom where mud stands, or flows, between there and the influx at a pressure. */
    double onBottom(double atInflux, boolean moving) {
        if (grid == whole) {
            return atInflux;
        }
        double atRest = atInflux - frictionAbove(grid.bottom(), moving);
        return mud.pressure(verticalDepth(), atRest, whole.verticalDepth(whole.pieces()))
                + frictionAbove(whole.bottom(), moving);
    }

    /** Greatest pressure that a line of mud through the whole hole may have at the influx. */
    double greatestWithoutGas(boolean moving) {
        double bottom = (moving ? wholeFlowing : wholeLimit).atBottom();
        if (grid == whole) {
            return bottom;
        }
        double atRest = bottom - frictionAbove(whole.bottom(), moving);
        return mud.pressure(whole.verticalDepth(whole.pieces()), atRest, verticalDepth())
                + frictionAbove(grid.bottom(), moving);
    }

    /**
     * The depth below the influx that a mud of another density there breaks first.
     *
     * @param atInflux pressure of the flowing mud at the influx
     * @param density of the mud below it, kg/m³
     * @return empty where all of them hold
     */
    Optional<Broken> brokenBelowInflux(double atInflux, double density) {
        Broken worst = null;
        for (int s = 0; s < wholeFlowing.segments(); s++) {
            for (boolean top : new boolean[] {true, false}) {
                double depth = top ? wholeFlowing.top(s) : wholeFlowing.bottom(s);
                if (depth < grid.bottom()) {
                    continue;
                }
                double z = top ? wholeFlowing.topVertical(s) : wholeFlowing.bottomVertical(s);
                double pressure = atInflux
                        + density * Physics.GRAVITY * (z - verticalDepth())
                        + friction.above(depth)
                        - friction.above(grid.bottom());
                double excess = pressure - wholeFlowing.ownLimit(s, z);
                if (excess > ToleranceSolver.SAME_PRESSURE && (worst == null || excess > worst.excess)) {
                    worst = new Broken(excess, wholeFlowing.ownPoint(s, depth));
                }
            }
        }
        return Optional.ofNullable(worst);
    }

    /**
     * A depth that breaks.
     *
     * @param excess over the limit, Pa
     */
    record Broken(double excess, WeakPoint weakPoint) {}

    /** The weak point that sets {@link #greatestWithoutGas}. */
    WeakPoint weakPointWithoutGas(boolean moving) {
        FormationLimit of = moving ? wholeFlowing : wholeLimit;
        return of.weakPoint(of.segments() - 1, whole.bottom());
    }
}
