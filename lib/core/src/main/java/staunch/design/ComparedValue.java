package staunch.design;

import java.util.OptionalDouble;
import staunch.envelope.CirculationPeaks;
import staunch.envelope.KickResult;
import staunch.envelope.Maasp;
import staunch.envelope.SurfaceLimit;
import staunch.envelope.SurfaceTolerance;
import staunch.envelope.Tolerance;

/**
 * What casing designs are held against each other in. A further limit joins as a further constant; dominance, tables and
 * machine output follow.
 */
public enum ComparedValue {
    /** Drilled kick: the lesser of what the formation holds and what can be circulated to surface. */
    DRILLED_TOLERANCE("tolerance of the drilled kick", false) {
        @Override
        Pair of(SectionOutcome first, SectionOutcome second) {
            return tolerances(first.drilled(), second.drilled());
        }
    },
    /** Swabbed kick: the lesser of what the formation holds and what can be circulated to surface. */
    SWABBED_TOLERANCE("tolerance of the swabbed kick", false) {
        @Override
        Pair of(SectionOutcome first, SectionOutcome second) {
            return tolerances(first.swabbed(), second.swabbed());
        }
    },
    /** Formation MAASP at the section's mud density. */
    FORMATION_MAASP("formation MAASP", false) {
        @Override
        Pair of(SectionOutcome first, SectionOutcome second) {
            return new Pair(maasp(first), maasp(second));
        }
    },
    /** Least margin at the shoe while the influx is circulated out. */
    SHOE_MARGIN("least shoe margin", true) {
        @Override
        Pair of(SectionOutcome first, SectionOutcome second) {
            return new Pair(first.leastShoeMargin(), second.leastShoeMargin());
        }
    },
    /** Highest choke pressure while the drilled influx is circulated out; less is better. */
    PEAK_CHOKE_PRESSURE("peak choke pressure", true) {
        @Override
        Pair of(SectionOutcome first, SectionOutcome second) {
            return new Pair(choke(first), choke(second));
        }
    },
    /** Weight of steel of the whole design; less is better. Compared in total only. */
    STEEL("weight of steel", false),
    /** Cost of steel of the whole design; less is better. Compared in total only, where prices are of one currency. */
    COST("cost of steel", true);

    private final String title;
    private final boolean mayLack;

    ComparedValue(String title, boolean mayLack) {
        this.title = title;
        this.mayLack = mayLack;
    }

    /** In plain words. */
    public String title() {
        return title;
    }

    /** Whether two designs that both lack it are compared without it. */
    boolean mayLack() {
        return mayLack;
    }

    /** Values of two designs in one section, the greater the better; empty at both where it is no matter of a section. */
    Pair of(SectionOutcome first, SectionOutcome second) {
        return new Pair(OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Whether it belongs to a section rather than to a whole design. */
    boolean ofSection() {
        return this != STEEL && this != COST;
    }

    /** One value of both designs, the greater the better. */
    record Pair(OptionalDouble first, OptionalDouble second) {
        /** Relative difference below which two values are the same: what the searches for them may leave. */
        private static final double SAME = 1e-6;

        boolean known() {
            return first.isPresent() && second.isPresent();
        }

        boolean lacking() {
            return first.isEmpty() && second.isEmpty();
        }

        int sign() {
            double a = first.getAsDouble();
            double b = second.getAsDouble();
            boolean finite = Double.isFinite(a) && Double.isFinite(b);
            boolean same = finite && Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
            return same ? 0 : Double.compare(a, b);
        }
    }

    private static OptionalDouble maasp(SectionOutcome outcome) {
        return outcome.maasp()
                .flatMap(Maasp::formation)
                .map(SurfaceLimit::pressure)
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble choke(SectionOutcome outcome) {
        return outcome.peaks() instanceof CirculationPeaks.Computed computed
                ? OptionalDouble.of(-computed.chokePressure())
                : OptionalDouble.empty();
    }

    private static Pair tolerances(KickResult first, KickResult second) {
        boolean complete = first.circulatedToSurface().complete();
        if (complete != second.circulatedToSurface().complete()) {
            return new Pair(OptionalDouble.empty(), OptionalDouble.empty());
        }
        return new Pair(rank(first, complete), rank(second, complete));
    }

    private static OptionalDouble rank(KickResult kick, boolean toSurface) {
        OptionalDouble formation = rank(kick.tolerance());
        SurfaceTolerance surface = kick.circulatedToSurface();
        if (!toSurface || formation.isEmpty()) {
            return formation;
        }
        return OptionalDouble.of(
                Math.min(formation.getAsDouble(), rank(surface.tolerance()).orElse(Double.POSITIVE_INFINITY)));
    }

    /** Order of tolerances: no limit above any volume, any volume above none, the lesser shortfall above the greater. */
    private static OptionalDouble rank(Tolerance tolerance) {
        if (tolerance instanceof Tolerance.Finite finite) {
            return OptionalDouble.of(finite.volume());
        }
        if (tolerance instanceof Tolerance.FailsOnIntensity fails) {
            return OptionalDouble.of(-fails.shortfall());
        }
        return tolerance instanceof Tolerance.Unlimited
                ? OptionalDouble.of(Double.POSITIVE_INFINITY)
                : OptionalDouble.empty();
    }
}
