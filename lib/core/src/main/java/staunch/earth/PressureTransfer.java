package staunch.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.UnitSystem;

/** Pore pressure at one depth of the planned well, as offset wells let it be expected. */
public sealed interface PressureTransfer {
    /** Below the datum of the planned well. */
    @Si(value = "m", kind = Kind.DEPTH)
    double verticalDepth();

    /**
     * A pressure of an offset well and what it counts for.
     *
     * @param well name of the offset well
     * @param point as recorded, depth below the datum of its own well
     * @param belowMudline depth of the point below mudline or ground, m
     * @param excess over the hydrostatic pressure of its own well, Pa; negative where depleted
     * @param weight share of the estimate, all together 1
     */
    record Contribution(
            String well,
            PressurePoint point,
            @Si(value = "m", kind = Kind.LENGTH) double belowMudline,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double excess,
            @Si("1") double weight) {
        public Contribution {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(point, "point");
        }

        String label() {
            return well + ": " + point.name();
        }
    }

    /**
     * Points lie within the window.
     *
     * @param pressure weighted mean, and the least and greatest of the points; with one point the three are equal and the
     *     spread is unknown, not nil
     * @param points that the estimate rests on
     * @param conflicts between any of them
     */
    record Estimated(
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            PressureEstimate pressure,
            List<Contribution> points,
            List<EvidenceConflict> conflicts)
            implements PressureTransfer {
        public Estimated {
            Objects.requireNonNull(pressure, "pressure");
            points = List.copyOf(points);
            conflicts = List.copyOf(conflicts);
        }
    }

    /** No point lies within the window: not assessed. */
    record NoEvidence(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) implements PressureTransfer {}

    /**
     * Profile of pore pressure through estimates, linear between the depths that were asked.
     *
     * @param downwards at least one, by increasing depth
     * @throws InputFault where a depth has no estimate
     */
    static Range profile(List<PressureTransfer> downwards) {
        List<PressureEstimate> pressures = new ArrayList<>();
        for (PressureTransfer at : downwards) {
            if (!(at instanceof Estimated estimated)) {
                throw new InputFault(
                        "pore pressure at " + UnitSystem.SI.precise(at.verticalDepth(), Measure.DEPTH),
                        "has no measured pressure of an offset well near it",
                        "leave the depth out or widen the window");
            }
            pressures.add(estimated.pressure());
        }
        double[] z =
                downwards.stream().mapToDouble(PressureTransfer::verticalDepth).toArray();
        return OffsetTransfer.range(z, pressures);
    }
}
