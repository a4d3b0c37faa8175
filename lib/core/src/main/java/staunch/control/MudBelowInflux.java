package staunch.control;

import java.util.Arrays;
import staunch.influx.AnnulusGrid;
import staunch.influx.LowerEnd;
import staunch.influx.MudColumn;
import staunch.units.Kind;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * The mud below an influx on its way up with bottom-hole pressure held. Driller's method: original mud all the way down.
 * Wait-and-weight: the mud that was in the string at shut-in leads, and kill mud follows it once the pumped volume exceeds
 * the string's.
 */
public final class MudBelowInflux implements LowerEnd {
    private final AnnulusGrid grid;
    private final MudColumn mud;
    private final double bottomVertical;
    private final double bottomHolePressure;
    private final boolean killMudFollows;
    private final double killDensity;
    private final double stringVolume;

    private MudBelowInflux(
            AnnulusGrid grid,
            MudColumn mud,
            double bottomHolePressure,
            boolean killMudFollows,
            double killDensity,
            double stringVolume) {
        this.grid = grid;
        this.mud = mud;
        this.bottomVertical = grid.verticalDepth(grid.pieces());
        this.bottomHolePressure = bottomHolePressure;
        this.killMudFollows = killMudFollows;
        this.killDensity = killDensity;
        this.stringVolume = stringVolume;
    }

    /**
     * Original mud below the influx.
     *
     * @param grid annulus down to the bottom of the hole
     * @param mud in the well
     * @param bottomHolePressure held, Pa absolute
     */
    public static MudBelowInflux original(
            AnnulusGrid grid, MudColumn mud, @Si(value = "Pa", kind = Kind.ABSOLUTE) double bottomHolePressure) {
        return new MudBelowInflux(grid, mud, bottomHolePressure, false, 0, 0);
    }

    /**
     * Original mud of the string's volume below the influx, kill mud below that.
     *
     * @param grid annulus down to the bottom of the hole
     * @param mud in the well at shut-in
     * @param bottomHolePressure held, Pa absolute
     * @param kill what follows
     */
    public static MudBelowInflux withKillMud(
            AnnulusGrid grid,
            MudColumn mud,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double bottomHolePressure,
            KillMud kill) {
        return new MudBelowInflux(grid, mud, bottomHolePressure, true, kill.density(), kill.stringVolume());
    }

    /**
     * Kill mud on its way.
     *
     * @param density kg/m³
     * @param stringVolume inside volume of the string, which it must fill before it reaches the annulus, m³
     */
    public record KillMud(
            @Si("kg/m3") double density, @Si("m3") double stringVolume) {}

    /**
     * Measured depths of the lower end of the influx at which its pressure bends: where kill mud turns the bit, and where
     * its front passes a change of cross-section. None without kill mud.
     */
    @Si(value = "m", kind = Kind.DEPTH)
    public double[] bends() {
        double[] found = new double[grid.pieces() + 1];
        double room = grid.volume(grid.top(), grid.bottom());
        int n = 0;
        for (int i = grid.pieces(); killMudFollows && i > 0; i--) {
            double pumped = stringVolume + grid.volume(grid.measuredDepth(i), grid.bottom());
            if ((i == grid.pieces() || grid.isBreak(i)) && pumped > 0 && pumped < room) {
                found[n++] = grid.topOfVolume(grid.bottom(), pumped);
            }
        }
        return Arrays.copyOf(found, n);
    }

    @Override
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double pressure(
            @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        if (killMudFollows) {
            double killVolume = grid.volume(measuredDepth, grid.bottom()) - stringVolume;
            if (killVolume > 0) {
                double front = grid.topOfVolume(grid.bottom(), killVolume);
                double zFront = grid.verticalAt(front);
                double atFront = bottomHolePressure - killDensity * Physics.GRAVITY * (bottomVertical - zFront);
                return mud.pressure(zFront, atFront, verticalDepth);
            }
        }
        return mud.pressure(bottomVertical, bottomHolePressure, verticalDepth);
    }
}
