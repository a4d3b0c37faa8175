package staunch.earth;

import java.util.Objects;

/**
 * What the planned well gives to a transfer: its datum and water depth, and its own overburden and pore pressure.
 *
 * @param normal hydrostatic pressure and datum
 * @param overburden by vertical depth below its datum
 * @param porePressure by vertical depth below its datum
 */
public record PlannedWell(NormalPressure normal, Range overburden, PressureProfile porePressure) {
    public PlannedWell {
        Objects.requireNonNull(normal, "normal");
        Objects.requireNonNull(overburden, "overburden");
        Objects.requireNonNull(porePressure, "porePressure");
    }

    /** A well whose overburden has no spread. */
    public PlannedWell(NormalPressure normal, PressureProfile overburden, PressureProfile porePressure) {
        this(normal, Range.of(overburden), porePressure);
    }

    StressState stressAt(double verticalDepth) {
        return stress(overburden.likely(), verticalDepth);
    }

    /** The same with the low or the high overburden. */
    StressState stressAt(double verticalDepth, boolean high) {
        return stress(high ? overburden.highOrLikely() : overburden.lowOrLikely(), verticalDepth);
    }

    private StressState stress(PressureProfile weight, double verticalDepth) {
        return new StressState(weight.lowestAt(verticalDepth), porePressure.highestAt(verticalDepth));
    }
}
