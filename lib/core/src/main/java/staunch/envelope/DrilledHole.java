package staunch.envelope;

import java.util.ArrayList;
import java.util.List;
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
 * The section drilled to one depth, with the bit at one depth: its annulus, cut for integration, and the formation limit
 * over the open hole.
 */
final class DrilledHole {
    private final AnnulusGrid grid;
    private final FormationLimit limit;
    private final double measuredDepth;
    private final double verticalDepth;
    private final double stringVolume;
    private final double openHoleVolume;

    private DrilledHole(
            AnnulusGrid grid,
            FormationLimit limit,
            double measuredDepth,
            double verticalDepth,
            double stringVolume,
            double openHoleVolume) {
        this.grid = grid;
        this.limit = limit;
        this.measuredDepth = measuredDepth;
        this.verticalDepth = verticalDepth;
        this.stringVolume = stringVolume;
        this.openHoleVolume = openHoleVolume;
    }

    /** What stays the same for every depth of a section. */
    record Fixed(
            WellPath path,
            List<CasingString> casing,
            List<HoleInterval> hole,
            DrillString string,
            double stackDepth,
            StrengthNodes strength,
            double[] temperatureKinks,
            MudColumn mud) {}

    /**
     * @param fixed the section
     * @param measuredDepth to which it is drilled
     * @param bitDepth measured depth of the bit
     */
    static DrilledHole of(Fixed fixed, double measuredDepth, double bitDepth) {
        double shoe = fixed.hole().get(0).topDepth();
        List<HoleInterval> open = new ArrayList<>();
        for (HoleInterval interval : fixed.hole()) {
            if (interval.topDepth() < measuredDepth - 1e-6) {
                open.add(new HoleInterval(
                        interval.topDepth(), Math.min(interval.bottomDepth(), measuredDepth), interval.diameter()));
            }
        }
        Annulus annulus = Annulus.of(
                new AnnulusGeometry(fixed.casing(), open, fixed.string(), bitDepth, fixed.stackDepth(), measuredDepth));
        double[] strengthDepths = fixed.strength().measuredDepths();
        double[] keep = new double[strengthDepths.length + fixed.temperatureKinks().length];
        System.arraycopy(strengthDepths, 0, keep, 0, strengthDepths.length);
        System.arraycopy(fixed.temperatureKinks(), 0, keep, strengthDepths.length, fixed.temperatureKinks().length);
        AnnulusGrid grid = AnnulusGrid.of(annulus, fixed.path(), keep);
        return new DrilledHole(
                grid,
                FormationLimit.of(grid, fixed.strength(), fixed.mud()),
                measuredDepth,
                fixed.path().verticalDepth(measuredDepth),
                annulus.stringVolume(),
                grid.volume(shoe, measuredDepth));
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

    double openHoleVolume() {
        return openHoleVolume;
    }

    /** Equivalent density of an absolute pressure at a vertical depth, from the datum. */
    static double equivalentDensity(double pressure, double verticalDepth) {
        return (pressure - Physics.ATMOSPHERE) / (Physics.GRAVITY * verticalDepth);
    }
}
