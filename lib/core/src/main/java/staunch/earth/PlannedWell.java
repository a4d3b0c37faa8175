package staunch.earth;

import java.util.Objects;

/**
 * What the planned well gives to a transfer: its datum and water depth, and its own overburden and pore pressure.
 *
 * @param normal hydrostatic pressure and datum
 * @param overburden by vertical depth below its datum
 * @param porePressure by vertical depth below its datum
 */
public record PlannedWell(NormalPressure normal, PressureProfile overburden, PressureProfile porePressure) {
    public PlannedWell {
        Objects.requireNonNull(normal, "normal");
        Objects.requireNonNull(overburden, "overburden");
        Objects.requireNonNull(porePressure, "porePressure");
    }

    StressState stressAt(double verticalDepth) {
        return new StressState(overburden.lowestAt(verticalDepth), porePressure.highestAt(verticalDepth));
    }
}
