package staunch.envelope;

import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.CirculationMethod;
import staunch.control.MudBelowInflux;
import staunch.earth.TemperatureProfile;
import staunch.fluid.Gas;
import staunch.influx.GasColumn;
import staunch.influx.LowerEnd;
import staunch.influx.MudColumn;
import staunch.units.EquivalentDensity;
import staunch.units.Physics;
import staunch.units.RangeFault;

/** Kick tolerance of a drilled hole for one kick. A workspace for one thread. */
final class ToleranceSolver {
    /** Intervals the open hole is cut into while looking for the worst position, besides every break. */
    static final int DEFAULT_SAMPLES = 10;

    private static final double SAME_DEPTH = 0.01;

    private static final String NO_FRICTION =
            "choke-line friction is neither measured nor computed, so the pressures while circulating are not known";
    private static final String FRICTION = "slow circulation: choke-line friction";

    /** A load equal to the limit holds; sums of pressures to 100 MPa are equal to about 1e-7 Pa. */
    static final double SAME_PRESSURE = 1e-6;

    private final GasColumn column;
    private final GasColumn fineColumn;
    private final MudColumn mud;
    private final MethodOptions options;
    private final Circulation circulation;
    private final int samples;

    /**
     * What circulating adds.
     *
     * @param overbalance above the greater of kick-zone and string pressure, choke-handling allowance included
     * @param chokeLineFriction where the choke line is long; empty where it is needed and not known
     */
    record Circulation(double overbalance, OptionalDouble chokeLineFriction) {}

    ToleranceSolver(
            Gas gas,
            TemperatureProfile temperature,
            MudColumn mud,
            MethodOptions options,
            Circulation circulation,
            int samples) {
        this.column = new GasColumn(gas, temperature);
        this.fineColumn = GasColumn.fine(gas, temperature);
        this.mud = mud;
        this.options = options;
        this.circulation = circulation;
        this.samples = samples;
    }

    /**
     * Limit on bottom less the pressure there of a kick of zero intensity without gas; where circulating alone breaks the
     * formation whatever the kick, how far.
     *
     * @throws Missing where choke-line friction counts and is not known
     */
    double marginWithoutGas(DrilledHole hole) {
        double z = hole.verticalDepth();
        double limit = hole.limit().atBottom();
        if (options.definition() == MethodOptions.ToleranceDefinition.ON_BOTTOM) {
            return limit - mud.hydrostatic(z);
        }
        double margin = limit - circulation.overbalance() - mud.hydrostatic(z);
        if (options.definition() == MethodOptions.ToleranceDefinition.TOP_AT_WEAK_POINT) {
            return margin;
        }
        if (circulation.chokeLineFriction().isEmpty()) {
            throw new Missing(NO_FRICTION, FRICTION);
        }
        double open = limit - chokeFullyOpen(z);
        return open < 0 ? Math.min(open, margin) : margin;
    }

    GasColumn column() {
        return column;
    }

    /** Column that conserves mass to 1e-10 from position to position. */
    GasColumn fineColumn() {
        return fineColumn;
    }

    MudColumn mud() {
        return mud;
    }

    double circulatingPressure(Kick kick) {
        return Math.max(kick.formationPressure(), kick.mudPressure()) + circulation.overbalance();
    }

    LowerEnd mudLine(DrilledHole hole, Kick kick) {
        double pressure = circulatingPressure(kick);
        // Without pipe no kill mud can be led to bottom.
        if (options.method() == CirculationMethod.WAIT_AND_WEIGHT && hole.stringVolume() > 0) {
            double density =
                    EquivalentDensity.of(Math.max(kick.formationPressure(), kick.mudPressure()), hole.verticalDepth());
            return MudBelowInflux.withKillMud(
                    hole.grid(), mud, pressure, new MudBelowInflux.KillMud(density, hole.stringVolume()));
        }
        return MudBelowInflux.original(hole.grid(), mud, pressure);
    }

    /**
     * Tolerance of the hole.
     *
     * @param hole with the bit on bottom
     * @param offBottom the same hole with the bit where it was at shut-in, where that was off bottom
     */
    Tolerance solve(DrilledHole hole, Optional<DrilledHole> offBottom, Kick kick) {
        try {
            return solveInRange(hole, offBottom, kick);
        } catch (RangeFault fault) {
            return Tolerance.NotAssessed.of(fault);
        }
    }

    private Tolerance solveInRange(DrilledHole hole, Optional<DrilledHole> offBottom, Kick kick) {
        double shutIn = kick.formationPressure();
        double circulating = circulatingPressure(kick);
        FormationLimit limit = hole.limit();
        double d = hole.measuredDepth();
        double z = hole.verticalDepth();
        boolean whole = options.definition() == MethodOptions.ToleranceDefinition.WHOLE_DISPLACEMENT;
        if (whole && circulation.chokeLineFriction().isEmpty()) {
            return new Tolerance.NotAssessed(NO_FRICTION, FRICTION);
        }

        double most = limit.atBottom();
        if (shutIn - most > SAME_PRESSURE) {
            return failed(hole, shutIn, Stage.Moment.SHUT_IN);
        }
        if (whole) {
            double open = chokeFullyOpen(z);
            double highest = Math.max(circulating, open);
            if (highest - most > SAME_PRESSURE) {
                return failed(hole, highest, Stage.Moment.START_OF_CIRCULATION);
            }
        }

        DrilledHole atShutIn = offBottom.orElse(hole);
        if (options.definition() == MethodOptions.ToleranceDefinition.TOP_AT_WEAK_POINT) {
            return topAtWeakPoint(hole, kick);
        }
        Displacement shut = new Displacement(atShutIn.grid(), atShutIn.limit(), column, samples);
        double least = shut.massAtLowerEnd(d, z, shutIn);
        Stage.Moment moment = offBottom.isPresent() ? Stage.Moment.SHUT_IN_BIT_OFF_BOTTOM : Stage.Moment.SHUT_IN;
        Found found = least == Displacement.UNLIMITED ? null : new Found(shut, least, moment, shutIn, atShutIn);
        Displacement rising = new Displacement(hole.grid(), limit, column, samples);
        if (offBottom.isPresent()) {
            found = better(found, rising, rising.massAtLowerEnd(d, z, shutIn), Stage.Moment.SHUT_IN, shutIn, hole);
        }
        if (whole) {
            double start = rising.massAtLowerEnd(d, z, circulating);
            found = better(found, rising, start, Stage.Moment.START_OF_CIRCULATION, circulating, hole);
            double up = rising.leastMassWhileRising(mudLine(hole, kick));
            found = better(found, rising, up, Stage.Moment.RISING, circulating, hole);
        }
        if (found == null) {
            return new Tolerance.Unlimited(atShutIn.fillVolume());
        }
        return finite(found, atShutIn, d, z, shutIn);
    }

    private Tolerance finite(Found found, DrilledHole atShutIn, double d, double z, double shutIn) {
        column.start(z, shutIn);
        if (!atShutIn.grid().fits(column, d, found.mass)) {
            return new Tolerance.Unlimited(atShutIn.fillVolume());
        }
        double top = atShutIn.grid().topOfMass(column, d, found.mass);
        return new Tolerance.Finite(
                atShutIn.grid().volume(top, d),
                found.mass,
                found.weakPoint,
                new Stage(found.moment, found.top, found.bottom, found.bottomHolePressure));
    }

    /**
     * Pressure at a depth where the choke is fully open and mud stands from there to the choke; zero where friction of the
     * choke line plays no part. With gas between depth and choke the pressure is lower.
     */
    double chokeFullyOpen(double verticalDepth) {
        double friction = circulation.chokeLineFriction().orElse(0);
        return friction == 0 ? 0 : mud.pressure(0, Physics.ATMOSPHERE + friction, verticalDepth);
    }

    private Tolerance failed(DrilledHole hole, double pressure, Stage.Moment moment) {
        FormationLimit limit = hole.limit();
        int last = limit.segments() - 1;
        double d = hole.measuredDepth();
        return new Tolerance.FailsOnIntensity(
                pressure - limit.atBottom(), limit.weakPoint(last, d), new Stage(moment, d, d, pressure));
    }

    private static Found better(
            Found found,
            Displacement displacement,
            double mass,
            Stage.Moment moment,
            double pressure,
            DrilledHole hole) {
        if (mass == Displacement.UNLIMITED || (found != null && mass >= found.mass)) {
            return found;
        }
        return new Found(displacement, mass, moment, pressure, hole);
    }

    /**
     * Top of the gas at each weak point in turn, its geometric volume there brought back to bottom by Boyle's law with the
     * pressure at the top: V = V_top p_top / p_f.
     */
    private Tolerance topAtWeakPoint(DrilledHole hole, Kick kick) {
        FormationLimit limit = hole.limit();
        Displacement rising = new Displacement(hole.grid(), limit, column, samples);
        LowerEnd line = mudLine(hole, kick);
        Tolerance.Finite least = null;
        for (int s = 0; s < limit.segments(); s++) {
            if (!limit.weakPointAtTop(s)) {
                continue;
            }
            double mass = rising.massAtTop(s, limit.top(s), line);
            if (mass == Displacement.UNLIMITED) {
                continue;
            }
            double atTop = hole.grid().volume(rising.foundTop(), rising.foundBottom());
            double volume = atTop * limit.value(s, limit.topVertical(s)) / kick.formationPressure();
            if (least == null || volume < least.volume()) {
                least = new Tolerance.Finite(
                        volume,
                        mass,
                        limit.weakPoint(s, limit.top(s)),
                        new Stage(
                                Stage.Moment.TOP_AT_WEAK_POINT,
                                rising.foundTop(),
                                rising.foundBottom(),
                                circulatingPressure(kick)));
            }
        }
        return least == null ? new Tolerance.Unlimited(hole.fillVolume()) : least;
    }

    /** The tightest state so far, copied out of the workspace. */
    private static final class Found {
        private final double mass;
        private final double top;
        private final double bottom;
        private final WeakPoint weakPoint;
        private final Stage.Moment moment;
        private final double bottomHolePressure;

        Found(Displacement state, double mass, Stage.Moment moment, double pressure, DrilledHole hole) {
            this.mass = mass;
            this.top = state.foundTop();
            this.bottom = state.foundBottom();
            this.weakPoint = hole.limit().weakPoint(state.foundSegment(), top);
            boolean touches = moment == Stage.Moment.RISING && Math.abs(top - weakPoint.measuredDepth()) < SAME_DEPTH;
            this.moment = touches ? Stage.Moment.TOP_AT_WEAK_POINT : moment;
            this.bottomHolePressure = pressure;
        }
    }
}
