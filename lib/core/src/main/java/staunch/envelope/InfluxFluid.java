package staunch.envelope;

import staunch.fluid.GasInMud;
import staunch.influx.AnnulusGrid;
import staunch.influx.GasColumn;
import staunch.units.ConvergenceFault;

/**
 * What fills the annulus between the ends of an influx: gas alone, or gas spread in mud. Masses of the displacement are
 * those of what fills it; volumes and masses of the answer are those of the gas, read with the column begun.
 */
final class InfluxFluid {
    private static final double VOLUME_TOLERANCE = 1e-11;
    private static final int MOST_STEPS = 60;

    private final GasColumn column;
    private final double mudPerGas;
    private final double mudDensity;

    InfluxFluid(GasColumn column) {
        this.column = column;
        boolean mixed = column.gas() instanceof GasInMud;
        this.mudPerGas = mixed ? ((GasInMud) column.gas()).mudPerGas() : 0;
        this.mudDensity = mixed ? ((GasInMud) column.gas()).mudDensity() : 1;
    }

    GasColumn column() {
        return column;
    }

    /** Gas in a mass of what fills the annulus. */
    double gasMass(double mass) {
        return mass / (1 + mudPerGas);
    }

    /** Volume of the gas between two measured depths: all of it less the mud between. */
    double gasVolume(AnnulusGrid grid, double top, double bottom) {
        double whole = grid.volume(top, bottom);
        return mudPerGas == 0 ? whole : whole - mudPerGas * gasMass(grid.mass(column, top, bottom)) / mudDensity;
    }

    /**
     * Measured depth of the top of a volume of gas. Newton's method on the whole volume, whose derivative is the gas
     * fraction at the top.
     *
     * @throws staunch.units.RangeFault where it does not fit
     */
    double topOfGasVolume(AnnulusGrid grid, double bottom, double volume) {
        if (mudPerGas == 0) {
            return grid.topOfVolume(bottom, volume);
        }
        double whole = volume;
        for (int k = 0; k < MOST_STEPS; k++) {
            double top = grid.topOfVolume(bottom, whole);
            double error = gasVolume(grid, top, bottom) - volume;
            if (Math.abs(error) <= VOLUME_TOLERANCE * volume) {
                return top;
            }
            double density = column.density(grid.verticalAt(top));
            double mud = density * mudPerGas / (1 + mudPerGas) / mudDensity;
            whole -= error / (1 - mud);
        }
        throw new ConvergenceFault("top of the influx", "a gas volume of " + volume + " m³ is not met");
    }
}
