package staunch.envelope;

import staunch.influx.LowerEnd;
import staunch.influx.MudColumn;
import staunch.units.Physics;

/**
 * Pressure at the lower end of the rising gas with bottom-hole pressure held constant. Driller's method: original mud all
 * the way down. Wait-and-weight: the mud that was in the string at shut-in leads, and kill mud follows it once the
 * pumped volume exceeds the string's.
 */
final class MudLine implements LowerEnd {
    private final DrilledHole hole;
    private final MudColumn mud;
    private final double bottomHolePressure;
    private final boolean killMudFollows;
    private final double killDensity;

    private MudLine(
            DrilledHole hole, MudColumn mud, double bottomHolePressure, boolean killMudFollows, double killDensity) {
        this.hole = hole;
        this.mud = mud;
        this.bottomHolePressure = bottomHolePressure;
        this.killMudFollows = killMudFollows;
        this.killDensity = killDensity;
    }

    static MudLine originalMud(DrilledHole hole, MudColumn mud, double bottomHolePressure) {
        return new MudLine(hole, mud, bottomHolePressure, false, 0);
    }

    /**
     * @param formationPressure that the kill mud just balances
     */
    static MudLine killMudFollowing(
            DrilledHole hole, MudColumn mud, double bottomHolePressure, double formationPressure) {
        return new MudLine(
                hole,
                mud,
                bottomHolePressure,
                true,
                DrilledHole.equivalentDensity(formationPressure, hole.verticalDepth()));
    }

    @Override
    public double pressure(double measuredDepth, double verticalDepth) {
        if (killMudFollows) {
            double killVolume = hole.grid().volume(measuredDepth, hole.measuredDepth()) - hole.stringVolume();
            if (killVolume > 0) {
                double front = hole.grid().topOfVolume(hole.measuredDepth(), killVolume);
                double zFront = hole.grid().verticalAt(front);
                double atFront = bottomHolePressure - killDensity * Physics.GRAVITY * (hole.verticalDepth() - zFront);
                return mud.pressure(zFront, atFront, verticalDepth);
            }
        }
        return mud.pressure(hole.verticalDepth(), bottomHolePressure, verticalDepth);
    }
}
