package staunch.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.units.UnitSystem;

/** Strength at one depth of the planned well, as offset wells let it be expected. */
public sealed interface StrengthTransfer {
    /** Below the datum of the planned well. */
    @Si(value = "m", kind = Kind.DEPTH)
    double verticalDepth();

    /**
     * A test of an offset well and what it counts for.
     *
     * @param well name of the offset well
     * @param test as recorded, depth below the datum of its own well
     * @param belowMudline depth of the test below mudline or ground, m
     * @param stressRatio (F − P) / (S − P) in its own well
     * @param weight share of the estimate, the weights of all leak-offs together 1; 0 for a bound
     */
    record Contribution(
            String well,
            StrengthTest test,
            @Si(value = "m", kind = Kind.LENGTH) double belowMudline,
            @Si("1") double stressRatio,
            @Si("1") double weight) {
        public Contribution {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(test, "test");
        }

        String label() {
            return well + ": " + test.name();
        }
    }

    /**
     * Leak-off tests lie within the window.
     *
     * @param strength weighted mean, and the least and greatest of the tests; with one test the three are equal and the
     *     spread is unknown, not nil
     * @param leakOffs tests that the estimate rests on
     * @param bounds integrity tests within the window, which only say that the rock of their own well held as much
     * @param conflicts between any of them
     */
    record Estimated(
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            PressureEstimate strength,
            List<Contribution> leakOffs,
            List<Contribution> bounds,
            List<EvidenceConflict> conflicts)
            implements StrengthTransfer {
        public Estimated {
            Objects.requireNonNull(strength, "strength");
            leakOffs = List.copyOf(leakOffs);
            bounds = List.copyOf(bounds);
            conflicts = List.copyOf(conflicts);
        }
    }

    /**
     * Integrity tests alone lie within the window: the strength is at least about as high.
     *
     * @param lowest least of the bounds, Pa absolute: what every one of the wells held
     * @param highest greatest of the bounds, Pa absolute
     * @param bounds the tests
     */
    record BoundOnly(
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double lowest,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double highest,
            List<Contribution> bounds)
            implements StrengthTransfer {
        public BoundOnly {
            bounds = List.copyOf(bounds);
        }
    }

    /** No test lies within the window: not assessed. */
    record NoEvidence(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth) implements StrengthTransfer {}

    /**
     * Profile of strength through estimates, for the earth model of the planned well. It is linear between the depths
     * that were asked, so they have to lie close enough for it.
     *
     * @param downwards at least one, by increasing depth
     * @throws InputFault where a depth has no estimate
     */
    static Range profile(List<StrengthTransfer> downwards) {
        List<PressureEstimate> strengths = new ArrayList<>();
        for (StrengthTransfer at : downwards) {
            if (!(at instanceof Estimated estimated)) {
                throw new InputFault(
                        "strength at " + UnitSystem.SI.precise(at.verticalDepth(), Measure.DEPTH),
                        "has no leak-off test of an offset well near it",
                        "leave the depth out or widen the window");
            }
            strengths.add(estimated.strength());
        }
        double[] z =
                downwards.stream().mapToDouble(StrengthTransfer::verticalDepth).toArray();
        return OffsetTransfer.range(z, strengths);
    }
}
