package staunch.envelope;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.TemperatureProfile;
import staunch.envelope.Kick.PressureBasis;
import staunch.envelope.Kick.Scenario;
import staunch.envelope.MethodOptions.DrilledPressure;
import staunch.envelope.MethodOptions.Estimates;
import staunch.fluid.Gas;
import staunch.fluid.Mud;
import staunch.influx.GasColumn;
import staunch.influx.MudColumn;
import staunch.limit.FlowLine;
import staunch.units.Physics;
import staunch.well.DrillString;

/** One section with one choice of estimates, ready to be asked for tolerances. A workspace for one thread. */
final class Model {
    private static final double INTENSITY_TOLERANCE = 1e-6;
    private static final double SAME_PRESSURE = 1e-6;

    private final SectionInput input;
    private final SectionPlan plan;
    private final MethodOptions options;
    private final Optional<LimitNodes> strength;
    private final String strengthMissing;
    private final Optional<PressureProfile> pore;
    private final Optional<TemperatureProfile> temperature;
    private final MudAnswer mudAnswer;
    private final Optional<MudColumn> mudColumn;
    private final Optional<Gas> gas;
    private final Optional<ToleranceSolver> solver;

    /** The way to surface is a whole displacement whatever counts as tolerance of the formation. */
    private final Optional<ToleranceSolver> surfaceSolver;

    private final AnnularLosses losses;
    private final Optional<DrilledHole.Fixed> fixed;
    private final boolean underbalanced;

    private Model(SectionInput input, Estimates estimates, WindowCheck window) {
        this.input = input;
        this.plan = input.plan();
        this.options = input.options();
        double margin = plan.criteria()
                .map(Criteria::strengthMargin)
                .orElse(OptionalDouble.empty())
                .orElse(0);
        LimitNodes.Answer answer =
                estimates == options.estimates() ? window.limit() : LimitNodes.of(input, estimates, margin);
        this.strength = answer.nodes();
        this.strengthMissing = answer.missing();
        this.pore = input.earth()
                .porePressure()
                .map(estimates == Estimates.HIGH_PORE_LOW_STRENGTH ? Range::highOrLikely : Range::likely);
        this.temperature = options.gasModel().needsTemperature()
                ? input.earth().temperature()
                : Optional.of(TemperatureProfile.isothermal(300));
        this.gas = options.gasModel().gas(plan.gas());
        this.mudAnswer = mud(input);
        this.mudColumn = mudAnswer.column();
        this.solver = solver(options);
        this.surfaceSolver = solver(options.withDefinition(MethodOptions.ToleranceDefinition.WHOLE_DISPLACEMENT));
        this.losses = AnnularLosses.of(input);
        this.fixed = strength.isPresent() && mudColumn.isPresent() && temperature.isPresent()
                ? plan.string().map(this::fixed)
                : Optional.empty();
        this.underbalanced = window.underbalanced();
    }

    private Optional<ToleranceSolver> solver(MethodOptions with) {
        return gas.isPresent() && temperature.isPresent() && mudColumn.isPresent()
                ? Optional.of(new ToleranceSolver(
                        gas.get(),
                        temperature.get(),
                        mudColumn.get(),
                        with,
                        circulation(input),
                        ToleranceSolver.DEFAULT_SAMPLES))
                : Optional.empty();
    }

    static Model of(SectionInput input, Estimates estimates) {
        return of(input, estimates, WindowCheck.deciding(input));
    }

    /** A model that shares the work of a window check. */
    static Model of(SectionInput input, Estimates estimates, WindowCheck window) {
        return new Model(input, estimates, window);
    }

    /**
     * @param column of the section's mud, where mud and what its model needs are known
     * @param reason why there is none
     * @param missing field of the case that would mend it
     */
    record MudAnswer(Optional<MudColumn> column, String reason, String missing) {}

    static MudAnswer mud(SectionInput input) {
        Optional<Mud> mud = input.plan().mud();
        if (mud.isEmpty()) {
            return new MudAnswer(Optional.empty(), "the section has no mud", "section: mud");
        }
        boolean moves = input.options().mudDensity() == MethodOptions.MudDensityModel.PRESSURE_AND_TEMPERATURE
                && mud.get().expansion().isPresent();
        if (!moves) {
            return new MudAnswer(Optional.of(MudColumn.constant(mud.get())), "", "");
        }
        double deepest = Arrays.stream(input.path().nodesBetween(0, input.plan().bottomDepth()))
                .map(input.path()::verticalDepth)
                .reduce(input.path().verticalDepth(input.plan().bottomDepth()), Math::max);
        Optional<TemperatureProfile> temperature =
                input.earth().temperature().filter(t -> t.covers(0) && t.covers(deepest));
        return temperature.isPresent()
                ? new MudAnswer(Optional.of(MudColumn.expanding(mud.get(), temperature.get())), "", "")
                : new MudAnswer(
                        Optional.empty(),
                        "the mud's density moves with temperature, which is not known from the datum to section TD",
                        "earth: temperature");
    }

    private DrilledHole.Fixed fixed(DrillString string) {
        double[] kinks = Arrays.stream(temperature.orElseThrow().depths())
                .flatMap(z -> DoubleStream.of(input.path().measuredDepthsAt(z, 0, plan.bottomDepth())))
                .toArray();
        return new DrilledHole.Fixed(
                input.path(),
                input.casing(),
                plan.hole(),
                string,
                input.datum().stackDepth(),
                strength.orElseThrow(),
                kinks,
                mudColumn.orElseThrow(),
                frictionCounts() ? losses.flow() : Optional.empty());
    }

    private boolean frictionCounts() {
        return options.annularFriction() == MethodOptions.AnnularFriction.COUNTED
                && options.definition() != MethodOptions.ToleranceDefinition.ON_BOTTOM;
    }

    AnnularLoss annularLoss() {
        return losses.loss();
    }

    private static ToleranceSolver.Circulation circulation(SectionInput input) {
        SectionPlan plan = input.plan();
        double overbalance = plan.circulatingOverbalance().orElse(0)
                + plan.chokeHandlingAllowance().orElse(0);
        return new ToleranceSolver.Circulation(
                overbalance, ChokeFriction.of(input).pressure());
    }

    Optional<LimitNodes> strength() {
        return strength;
    }

    Optional<MudColumn> mudColumn() {
        return mudColumn;
    }

    Optional<Gas> gas() {
        return gas;
    }

    Optional<TemperatureProfile> temperature() {
        return temperature;
    }

    /**
     * A new column of the section's gas, with the weight that the gas model gives it.
     *
     * @throws Missing where gas or temperature are not known
     */
    GasColumn gasColumn() {
        if (gas.isEmpty()) {
            throw new Missing("the gas of the influx is not known", "section: gas");
        }
        if (temperature.isEmpty()) {
            throw new Missing("the temperature of the well is not known", "earth: temperature");
        }
        return new GasColumn(gas.get(), temperature.get());
    }

    /** @throws Missing where there is no mud, or its model lacks something */
    MudColumn requireMud() {
        return mudColumn.orElseThrow(() -> new Missing(mudAnswer.reason(), mudAnswer.missing()));
    }

    Optional<PressureProfile> pore() {
        return pore;
    }

    /** Whether the strength at the shoe is known. */
    boolean shoeKnown() {
        return strength.map(s -> s.known(0)).orElse(false);
    }

    /** Depths whose strength is not known, in plain words; empty where all is. */
    String unknownStrength() {
        return strength.map(LimitNodes::unknown).orElse("");
    }

    /**
     * Checks that the case holds what a scenario needs.
     *
     * @throws Missing naming the first field that is lacking
     */
    void needs(Scenario scenario) {
        requireMud();
        if (plan.string().isEmpty()) {
            throw new Missing("the section has no drill string", "section: string");
        }
        if (gas.isEmpty()) {
            throw new Missing("the gas of the influx is not known", "section: gas");
        }
        if (temperature.isEmpty()) {
            throw new Missing("the temperature of the well is not known", "earth: temperature");
        }
        if (strength.isEmpty()) {
            throw new Missing("no strength basis", strengthMissing);
        }
        if (scenario == Scenario.DRILLED) {
            DrilledPressure basis = options.drilledPressure();
            if (basis.needsIntensity() && intensity().isEmpty()) {
                throw new Missing("no kick intensity is set", "criteria: kick intensity");
            }
            if (basis.needsPorePressure() && pore.isEmpty()) {
                throw new Missing("the pore pressure is not known", "earth: pore pressure");
            }
        }
        if (frictionCounts() && losses.loss() instanceof AnnularLoss.NotAssessed not) {
            throw new Missing("annular friction is to be counted, but " + not.reason(), not.missing());
        }
        if (underbalanced) {
            throw new Missing("underbalanced: the mud is lighter than the likely pore pressure", "");
        }
    }

    private OptionalDouble intensity() {
        return plan.criteria().map(Criteria::kickIntensity).orElse(OptionalDouble.empty());
    }

    /** The kick with the section drilled to a depth. */
    Kick kick(Scenario scenario, double drilledTo) {
        double measuredDepth = plan.influxDepth(drilledTo);
        double z = input.path().verticalDepth(measuredDepth);
        double mud = mudColumn.orElseThrow().hydrostatic(z);
        if (scenario == Scenario.SWABBED) {
            return new Kick(scenario, measuredDepth, z, mud, mud, PressureBasis.MUD_PRESSURE);
        }
        double added = intensity().orElse(0) * Physics.GRAVITY * z;
        DrilledPressure basis = options.drilledPressure();
        double fromPore = basis.needsPorePressure() ? pore.orElseThrow().highestAt(z) : 0;
        Kick kick =
                switch (basis) {
                    case INTENSITY_ONLY ->
                        new Kick(scenario, measuredDepth, z, mud + added, mud, PressureBasis.MUD_PLUS_INTENSITY);
                    case PORE_PRESSURE_ONLY ->
                        new Kick(scenario, measuredDepth, z, fromPore, mud, PressureBasis.PORE_PRESSURE);
                    case INTENSITY_ABOVE_PORE_PRESSURE ->
                        new Kick(
                                scenario,
                                measuredDepth,
                                z,
                                fromPore + added,
                                mud,
                                PressureBasis.PORE_PRESSURE_PLUS_INTENSITY);
                    case GREATER_OF_INTENSITY_AND_PORE_PRESSURE ->
                        fromPore > mud + added
                                ? new Kick(scenario, measuredDepth, z, fromPore, mud, PressureBasis.PORE_PRESSURE)
                                : new Kick(
                                        scenario, measuredDepth, z, mud + added, mud, PressureBasis.MUD_PLUS_INTENSITY);
                };
        if (mud - kick.formationPressure() > SAME_PRESSURE) {
            throw new Missing(
                    "no influx: the mud exceeds the formation pressure, which is the " + basis.title() + " by choice",
                    "");
        }
        return kick;
    }

    Kick kickOfIntensity(double drilledTo, double intensity) {
        double measuredDepth = plan.influxDepth(drilledTo);
        double z = input.path().verticalDepth(measuredDepth);
        double mud = mudColumn.orElseThrow().hydrostatic(z);
        return new Kick(
                Scenario.DRILLED,
                measuredDepth,
                z,
                mud + intensity * Physics.GRAVITY * z,
                mud,
                PressureBasis.MUD_PLUS_INTENSITY);
    }

    /** The section drilled to a depth with the bit on bottom. */
    DrilledHole hole(double drilledTo) {
        return DrilledHole.of(fixed.orElseThrow(), depths(drilledTo, drilledTo));
    }

    private DrilledHole.Depths depths(double drilledTo, double bit) {
        return new DrilledHole.Depths(drilledTo, bit, plan.influxDepth(drilledTo));
    }

    private Optional<DrilledHole> offBottom(double drilledTo) {
        double bit = Math.max(drilledTo - plan.bitOffBottom(), 0);
        return plan.bitOffBottom() > 0 && !plan.string().orElseThrow().isNone()
                ? Optional.of(DrilledHole.of(fixed.orElseThrow(), depths(drilledTo, bit)))
                : Optional.empty();
    }

    Tolerance tolerance(Kick kick, DrilledHole hole) {
        if (!LimitNodes.isKnown(hole.greatestWithoutGas(false))) {
            return new Tolerance.NotAssessed(
                    "no strength is known down to this depth", "earth: strength or a strength test at the shoe");
        }
        Tolerance tolerance = solver.orElseThrow().solve(hole, offBottom(hole.drilledTo()), kick);
        return tolerance instanceof Tolerance.Unlimited && !shoeKnown()
                ? new Tolerance.NotAssessed(
                        "the depths of known strength set no limit, and the strength at the shoe is not known",
                        "earth: strength or a strength test at the shoe")
                : tolerance;
    }

    /** Largest influx that can be circulated to surface within the limits of casing and equipment. */
    SurfaceTolerance circulatedToSurface(Kick kick, double drilledTo) {
        Optional<FlowLine> line = input.equipment().chokeLine();
        List<EquipmentLimits.Component> components = new EquipmentLimits(input).components();
        List<String> leftOut = components.stream()
                .filter(c -> c.notAssessed().isPresent())
                .map(c -> c.name() + ": " + c.notAssessed().get())
                .toList();
        if (components.size() == leftOut.size()) {
            return new SurfaceTolerance(
                    new Tolerance.NotAssessed("no limit of casing or equipment is known", "equipment"), leftOut);
        }
        if (input.datum().stackAtSeabed() && line.isEmpty()) {
            return new SurfaceTolerance(
                    new Tolerance.NotAssessed(
                            "the choke line of the subsea stack is not known", "equipment: choke line"),
                    leftOut);
        }
        DrilledHole hole = toSurface(components, drilledTo);
        return new SurfaceTolerance(surfaceSolver.orElseThrow().solve(hole, Optional.empty(), kick), leftOut);
    }

    private DrilledHole toSurface(List<EquipmentLimits.Component> components, double drilledTo) {
        double area = input.equipment()
                .chokeLine()
                .map(l -> Math.PI / 4 * l.insideDiameter() * l.insideDiameter())
                .orElse(0.0);
        return DrilledHole.toSurface(
                fixed.orElseThrow(), LimitNodes.of(input, components), area, depths(drilledTo, drilledTo));
    }

    /**
     * An influx on its way to the choke, whatever holds it.
     *
     * @param volume it fills on bottom at shut-in, m³
     * @throws Missing where a subsea stack has no choke line
     */
    RisingInflux rising(Kick kick, double volume) {
        if (input.datum().stackAtSeabed() && input.equipment().chokeLine().isEmpty()) {
            throw new Missing("the choke line of the subsea stack is not known", "equipment: choke line");
        }
        return new RisingInflux(surfaceSolver.orElseThrow(), toSurface(List.of(), plan.bottomDepth()), kick, volume);
    }

    InfluxMargin margin(Kick kick, DrilledHole hole, double volume, String basis) {
        return MarginSolver.solve(solver.orElseThrow(), hole, kick, volume, basis);
    }

    double shoeMargin(Kick kick, DrilledHole hole, double volume) {
        return MarginSolver.atShoe(solver.orElseThrow(), hole, kick, volume);
    }

    HandCalculation hand(Kick kick, DrilledHole hole, Tolerance.Finite full) {
        double t = temperature.orElseThrow().at(kick.verticalDepth());
        boolean atRest = options.definition() == MethodOptions.ToleranceDefinition.ON_BOTTOM;
        return HandWorking.of(
                hole,
                kick,
                full,
                new HandWorking.Basis(
                        options.definition(),
                        plan.mud().orElseThrow().density(),
                        gas.orElseThrow().columnDensity(kick.formationPressure(), t),
                        atRest ? kick.formationPressure() : solver.orElseThrow().held(kick),
                        simplified()));
    }

    private String simplified() {
        String bit = plan.bitOffBottom() > 0 ? "The state with the bit off bottom at shut-in is left out." : "";
        boolean spread = options.influx() instanceof InfluxForm.Distributed;
        return (bit + (spread ? " The gas is taken as a single bubble." : "")).trim();
    }

    /**
     * Intensity at which the mud line just touches the limit; negative where even the mud is too heavy.
     *
     * @throws Missing where choke-line friction counts and is not known
     */
    double zeroGainIntensity(DrilledHole hole) {
        return solver.orElseThrow().marginWithoutGas(hole) / (Physics.GRAVITY * hole.verticalDepth());
    }

    /** Where a mud line of rising pressure breaks the formation first. */
    WeakPoint weakPointWithoutGas(DrilledHole hole) {
        return hole.weakPointWithoutGas(options.definition() != MethodOptions.ToleranceDefinition.ON_BOTTOM);
    }

    IntensityLimit largestIntensity(DrilledHole hole, double volume) {
        double low = 0;
        if (!holds(hole, low, volume)) {
            return new IntensityLimit.NeverHeld(volume);
        }
        double high = zeroGainIntensity(hole);
        while (high - low > INTENSITY_TOLERANCE) {
            double middle = 0.5 * (low + high);
            if (holds(hole, middle, volume)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        Tolerance beyond = tolerance(kickOfIntensity(hole.drilledTo(), high), hole);
        WeakPoint weak = beyond instanceof Tolerance.Finite finite ? finite.weakPoint() : weakPointWithoutGas(hole);
        return new IntensityLimit.Largest(volume, low, weak);
    }

    private boolean holds(DrilledHole hole, double intensity, double volume) {
        Tolerance tolerance = tolerance(kickOfIntensity(hole.drilledTo(), intensity), hole);
        if (tolerance instanceof Tolerance.NotAssessed not) {
            throw new Missing(not.reason(), not.missing());
        }
        return tolerance instanceof Tolerance.Unlimited
                || tolerance instanceof Tolerance.Finite finite && finite.volume() >= volume;
    }
}
