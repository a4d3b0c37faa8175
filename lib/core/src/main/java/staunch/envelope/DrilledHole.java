package staunch.envelope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import staunch.influx.AnnulusGrid;
import staunch.influx.MudColumn;
import staunch.well.Annulus;
import staunch.well.AnnulusGeometry;
import staunch.well.CasingString;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.WellPath;

/**
 * The section drilled to one depth, with the bit at one depth: its annulus, cut for integration, and the formation limit
 * over the open hole.
 */
final class DrilledHole {
    private final AnnulusGrid grid;
    private final FormationLimit limit;
    private final double measuredDepth;
    private final double verticalDepth;
    private final double stringVolume;
    private final double fillVolume;

    private DrilledHole(
            AnnulusGrid grid,
            FormationLimit limit,
            double measuredDepth,
            double verticalDepth,
            double stringVolume,
            double fillVolume) {
        this.grid = grid;
        this.limit = limit;
        this.measuredDepth = measuredDepth;
        this.verticalDepth = verticalDepth;
        this.stringVolume = stringVolume;
        this.fillVolume = fillVolume;
    }

    /** What stays the same for every depth of a section. */
    record Fixed(
            WellPath path,
            List<CasingString> casing,
            List<HoleInterval> hole,
            DrillString string,
            double stackDepth,
            LimitNodes strength,
            double[] temperatureKinks,
            MudColumn mud) {}

    /**
     * @param fixed the section
     * @param measuredDepth to which it is drilled
     * @param bitDepth measured depth of the bit
     */
    static DrilledHole of(Fixed fixed, double measuredDepth, double bitDepth) {
        Annulus annulus = annulus(fixed, measuredDepth, bitDepth);
        AnnulusGrid grid = AnnulusGrid.of(annulus, fixed.path(), keep(fixed, fixed.strength()));
        return new DrilledHole(
                grid,
                FormationLimit.of(grid, fixed.strength(), fixed.mud()),
                measuredDepth,
                fixed.path().verticalDepth(measuredDepth),
                annulus.stringVolume(),
                grid.volume(fixed.hole().get(0).topDepth(), measuredDepth));
    }

    /**
     * The same hole up to surface, by the choke line where the stack is on the seabed, under the limits of casing and
     * equipment instead of the formation's.
     *
     * @param equipment inside limits
     * @param chokeLineArea cross-section of the choke line, m²; not read for a stack at surface
     */
    static DrilledHole toSurface(Fixed fixed, LimitNodes equipment, double chokeLineArea, double measuredDepth) {
        Annulus annulus = annulus(fixed, measuredDepth, measuredDepth);
        double[] keep = keep(fixed, equipment);
        AnnulusGrid grid = fixed.stackDepth() > 0
                ? AnnulusGrid.withChokeLine(annulus, chokeLineArea, fixed.path(), keep)
                : AnnulusGrid.of(annulus, fixed.path(), keep);
        return new DrilledHole(
                grid,
                FormationLimit.of(grid, equipment, fixed.mud()),
                measuredDepth,
                fixed.path().verticalDepth(measuredDepth),
                annulus.stringVolume(),
                grid.volume(grid.top(), measuredDepth));
    }

    private static Annulus annulus(Fixed fixed, double measuredDepth, double bitDepth) {
        List<HoleInterval> open = new ArrayList<>();
        for (HoleInterval interval : fixed.hole()) {
            if (interval.topDepth() < measuredDepth - 1e-6) {
                open.add(new HoleInterval(
                        interval.topDepth(), Math.min(interval.bottomDepth(), measuredDepth), interval.diameter()));
            }
        }
        return Annulus.of(
                new AnnulusGeometry(fixed.casing(), open, fixed.string(), bitDepth, fixed.stackDepth(), measuredDepth));
    }

    private static double[] keep(Fixed fixed, LimitNodes nodes) {
        return DoubleStream.concat(Arrays.stream(nodes.measuredDepths()), Arrays.stream(fixed.temperatureKinks()))
                .toArray();
    }

    AnnulusGrid grid() {
        return grid;
    }

    FormationLimit limit() {
        return limit;
    }

    double measuredDepth() {
        return measuredDepth;
    }

    double verticalDepth() {
        return verticalDepth;
    }

    /** Inside volume of the string down to the bit. */
    double stringVolume() {
        return stringVolume;
    }

    /** Volume an influx may fill at least where nothing limits it: the open hole, or all up to surface. */
    double fillVolume() {
        return fillVolume;
    }
}
