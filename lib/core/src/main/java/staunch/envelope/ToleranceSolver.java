package staunch.envelope;

import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.CirculationMethod;
import staunch.control.MudBelowInflux;
import staunch.earth.TemperatureProfile;
import staunch.fluid.Gas;
import staunch.fluid.GasInMud;
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

    private final InfluxFluid bubble;
    private final InfluxFluid fineBubble;
    private final TemperatureProfile temperature;
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
        this.bubble = new InfluxFluid(new GasColumn(gas, temperature));
        this.fineBubble = new InfluxFluid(GasColumn.fine(gas, temperature));
        this.temperature = temperature;
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
        if (options.definition() == MethodOptions.ToleranceDefinition.ON_BOTTOM) {
            return hole.greatestWithoutGas(false) - mud.hydrostatic(z);
        }
        double limit = hole.greatestWithoutGas(true);
        double margin =
                limit - circulation.overbalance() - hole.frictionAbove(hole.measuredDepth(), true) - mud.hydrostatic(z);
        if (options.definition() == MethodOptions.ToleranceDefinition.TOP_AT_WEAK_POINT) {
            return margin;
        }
        if (circulation.chokeLineFriction().isEmpty()) {
            throw new Missing(NO_FRICTION, FRICTION);
        }
        double open = limit - chokeFullyOpen(hole, hole.measuredDepth(), z);
        return open < 0 ? Math.min(open, margin) : margin;
    }

    /** What fills the annulus in an influx of a kick. */
    InfluxFluid fluid(Kick kick) {
        return options.influx() instanceof InfluxForm.Distributed spread
                ? new InfluxFluid(new GasColumn(mixture(kick, spread), temperature))
                : bubble;
    }

    /** The same with a column that conserves mass to 1e-10 from position to position. */
    InfluxFluid fineFluid(Kick kick) {
        return options.influx() instanceof InfluxForm.Distributed spread
                ? new InfluxFluid(GasColumn.fine(mixture(kick, spread), temperature))
                : fineBubble;
    }

    private GasInMud mixture(Kick kick, InfluxForm.Distributed spread) {
        double z = kick.verticalDepth();
        double p = kick.formationPressure();
        // Over the last metre above the influx, where density moves with pressure and temperature.
        double density = mud.isConstant() ? mud.density() : (p - mud.pressure(z, p, z - 1)) / Physics.GRAVITY;
        return GasInMud.of(
                bubble.column().gas(), new GasInMud.Mixing(spread.gasFraction(), density), p, temperature.at(z));
    }

    MudColumn mud() {
        return mud;
    }

    /**
     * Pressure at the influx while circulating. Friction in the annulus, where it counts, comes on top of what the choke
     * holds: the drill-pipe pressure kept by the crew contains it, as it was measured up the open annulus.
     */
    double circulatingPressure(DrilledHole hole, Kick kick) {
        return held(kick) + hole.frictionAbove(hole.measuredDepth(), true);
    }

    /** Pressure that the choke holds at the influx while circulating, friction in the annulus apart. */
    double held(Kick kick) {
        return Math.max(kick.formationPressure(), kick.mudPressure()) + circulation.overbalance();
    }

    /** Pressure along the mud below the gas while circulating. */
    LowerEnd mudLine(DrilledHole hole, Kick kick) {
        LowerEnd atRest = mudAtRest(hole, kick);
        return (measured, vertical) -> atRest.pressure(measured, vertical) + hole.frictionAbove(measured, true);
    }

    private MudBelowInflux mudAtRest(DrilledHole hole, Kick kick) {
        double pressure = held(kick);
        if (killMudFollows(hole)) {
            double density = killDensity(hole, kick);
            return MudBelowInflux.withKillMud(
                    hole.grid(),
                    mud,
                    pressure,
                    new MudBelowInflux.KillMud(density, hole.stringVolume() + hole.volumeBelowInflux()));
        }
        return MudBelowInflux.original(hole.grid(), mud, pressure);
    }

    /** Without pipe no kill mud can be led to bottom. */
    private boolean killMudFollows(DrilledHole hole) {
        return options.method() == CirculationMethod.WAIT_AND_WEIGHT && hole.stringVolume() > 0;
    }

    private static double killDensity(DrilledHole hole, Kick kick) {
        return EquivalentDensity.of(Math.max(kick.formationPressure(), kick.mudPressure()), hole.verticalDepth());
    }

    /**
     * Tolerance of the hole.
     *
     * @param hole with the bit on bottom, down to the influx
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
        double circulating = circulatingPressure(hole, kick);
        double d = hole.measuredDepth();
        double z = hole.verticalDepth();
        boolean whole = options.definition() == MethodOptions.ToleranceDefinition.WHOLE_DISPLACEMENT;
        if (whole && circulation.chokeLineFriction().isEmpty()) {
            return new Tolerance.NotAssessed(NO_FRICTION, FRICTION);
        }

        if (shutIn - hole.greatestWithoutGas(false) > SAME_PRESSURE) {
            return failed(hole, shutIn, Stage.Moment.SHUT_IN);
        }
        if (whole) {
            double highest = Math.max(circulating, chokeFullyOpen(hole, d, z));
            if (highest - hole.greatestWithoutGas(true) > SAME_PRESSURE) {
                return failed(hole, highest, Stage.Moment.START_OF_CIRCULATION);
            }
            if (killMudFollows(hole) && hole.volumeBelowInflux() > 0) {
                Optional<DrilledHole.Broken> broken = hole.brokenBelowInflux(circulating, killDensity(hole, kick));
                if (broken.isPresent()) {
                    return new Tolerance.FailsOnIntensity(
                            broken.get().excess(),
                            broken.get().weakPoint(),
                            new Stage(Stage.Moment.KILL_MUD_BELOW_INFLUX, d, d, hole.onBottom(circulating, true)));
                }
            }
        }

        DrilledHole atShutIn = offBottom.orElse(hole);
        InfluxFluid fluid = fluid(kick);
        GasColumn column = fluid.column();
        if (options.definition() == MethodOptions.ToleranceDefinition.TOP_AT_WEAK_POINT) {
            return topAtWeakPoint(hole, kick, fluid);
        }
        Displacement shut = new Displacement(atShutIn.grid(), atShutIn.limit(), column, samples);
        double least = shut.massAtLowerEnd(d, z, shutIn);
        Stage.Moment moment = offBottom.isPresent() ? Stage.Moment.SHUT_IN_BIT_OFF_BOTTOM : Stage.Moment.SHUT_IN;
        Found found = least == Displacement.UNLIMITED ? null : new Found(shut, least, moment, shutIn, atShutIn);
        if (offBottom.isPresent()) {
            Displacement stripped = new Displacement(hole.grid(), hole.limit(), column, samples);
            found = better(found, stripped, stripped.massAtLowerEnd(d, z, shutIn), Stage.Moment.SHUT_IN, shutIn, hole);
        }
        if (whole) {
            Displacement rising = new Displacement(hole.grid(), hole.limit(true), column, samples);
            double start = rising.massAtLowerEnd(d, z, circulating);
            found = better(found, rising, start, Stage.Moment.START_OF_CIRCULATION, circulating, hole);
            double up = rising.leastMassWhileRising(
                    mudLine(hole, kick), mudAtRest(hole, kick).bends());
            found = better(found, rising, up, Stage.Moment.RISING, circulating, hole);
        }
        if (found == null) {
            return unlimited(fluid, atShutIn, kick);
        }
        return finite(found, fluid, atShutIn, kick);
    }

    private static Tolerance unlimited(InfluxFluid fluid, DrilledHole atShutIn, Kick kick) {
        fluid.column().start(atShutIn.verticalDepth(), kick.formationPressure());
        return new Tolerance.Unlimited(fluid.gasVolume(atShutIn.grid(), atShutIn.fillTop(), atShutIn.measuredDepth()));
    }

    private static Tolerance finite(Found found, InfluxFluid fluid, DrilledHole atShutIn, Kick kick) {
        double d = atShutIn.measuredDepth();
        fluid.column().start(atShutIn.verticalDepth(), kick.formationPressure());
        if (!atShutIn.grid().fits(fluid.column(), d, found.mass)) {
            return unlimited(fluid, atShutIn, kick);
        }
        double top = atShutIn.grid().topOfMass(fluid.column(), d, found.mass);
        return new Tolerance.Finite(
                fluid.gasVolume(atShutIn.grid(), top, d),
                fluid.gasMass(found.mass),
                found.weakPoint,
                new Stage(found.moment, found.top, found.bottom, found.bottomHolePressure));
    }

    /**
     * Pressure at a depth where the choke is fully open and mud flows from there to the choke; zero where friction of the
     * choke line plays no part. With gas between depth and choke the pressure is lower.
     */
    double chokeFullyOpen(DrilledHole hole, double measuredDepth, double verticalDepth) {
        double friction = circulation.chokeLineFriction().orElse(0);
        return friction == 0
                ? 0
                : mud.pressure(0, Physics.ATMOSPHERE + friction, verticalDepth)
                        + hole.frictionAbove(measuredDepth, true);
    }

    private Tolerance failed(DrilledHole hole, double pressure, Stage.Moment moment) {
        boolean moving = moving(moment);
        double d = hole.measuredDepth();
        return new Tolerance.FailsOnIntensity(
                pressure - hole.greatestWithoutGas(moving),
                hole.weakPointWithoutGas(moving),
                new Stage(moment, d, d, hole.onBottom(pressure, moving)));
    }

    static boolean moving(Stage.Moment moment) {
        return moment != Stage.Moment.SHUT_IN && moment != Stage.Moment.SHUT_IN_BIT_OFF_BOTTOM;
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
    private Tolerance topAtWeakPoint(DrilledHole hole, Kick kick, InfluxFluid fluid) {
        FormationLimit limit = hole.limit(true);
        Displacement rising = new Displacement(hole.grid(), limit, fluid.column(), samples);
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
            double atTop = fluid.gasVolume(hole.grid(), rising.foundTop(), rising.foundBottom());
            double volume = atTop * limit.value(s, limit.top(s), limit.topVertical(s)) / kick.formationPressure();
            if (least == null || volume < least.volume()) {
                least = new Tolerance.Finite(
                        volume,
                        fluid.gasMass(mass),
                        limit.weakPoint(s, limit.top(s)),
                        new Stage(
                                Stage.Moment.TOP_AT_WEAK_POINT,
                                rising.foundTop(),
                                rising.foundBottom(),
                                hole.onBottom(circulatingPressure(hole, kick), true)));
            }
        }
        return least == null ? unlimited(fluid, hole, kick) : least;
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
            this.weakPoint = hole.limit(moving(moment)).weakPoint(state.foundSegment(), top);
            boolean touches = moment == Stage.Moment.RISING && Math.abs(top - weakPoint.measuredDepth()) < SAME_DEPTH;
            this.moment = touches ? Stage.Moment.TOP_AT_WEAK_POINT : moment;
            this.bottomHolePressure = hole.onBottom(pressure, moving(moment));
        }
    }
}
