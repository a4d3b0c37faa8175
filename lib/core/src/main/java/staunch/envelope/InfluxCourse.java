package staunch.envelope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import staunch.control.Bullheading;
import staunch.control.ChokeLineLoss;
import staunch.control.Circulation;
import staunch.control.CirculationMethod;
import staunch.control.CirculationPlan;
import staunch.control.CirculationSchedule;
import staunch.control.ClosedWell;
import staunch.control.ClosestLimit;
import staunch.control.FlowingMud;
import staunch.control.GasVent;
import staunch.control.Hydraulics;
import staunch.control.KillFormulas;
import staunch.control.KillSheet;
import staunch.control.KillSheetInput;
import staunch.control.LubricateAndBleed;
import staunch.control.Migration;
import staunch.control.MigrationCurve;
import staunch.control.MigrationPoint;
import staunch.control.PressureLimit;
import staunch.control.SlowCirculation;
import staunch.control.VolumetricMethod;
import staunch.envelope.KickOperations.ShutIn;
import staunch.envelope.KickOperations.WatchedDepth;
import staunch.fluid.FixedGradientGas;
import staunch.fluid.FlowModel;
import staunch.fluid.Gas;
import staunch.fluid.Mud;
import staunch.fluid.MudExpansion;
import staunch.influx.AnnulusGrid;
import staunch.influx.DriftFlux;
import staunch.influx.FixedRiseRate;
import staunch.influx.GasColumn;
import staunch.influx.MigrationBracket;
import staunch.influx.MudColumn;
import staunch.influx.MudWeightRule;
import staunch.influx.SlipLaw;
import staunch.limit.FlowLine;
import staunch.limit.GasSeparator;
import staunch.limit.PressureRating;
import staunch.units.EquivalentDensity;
import staunch.units.Fault;
import staunch.units.Physics;
import staunch.well.Annulus;
import staunch.well.AnnulusGeometry;
import staunch.well.StringGeometry;

/** One influx on the bottom of a section, ready to be asked what may be done about it. */
final class InfluxCourse {
    /** 0.1 ppg, kg/m³. */
    static final double TRADE_STEP = 0.1 * 0.45359237 / (231 * 0.0254 * 0.0254 * 0.0254);

    /** Density of the weighting material where the case gives none, kg/m³. */
    static final double BARITE = 4200;

    private static final int START_UP_STEPS = 4;
    /** Gas that ends lubricate and bleed where the case gives none, m³. */
    static final double GAS_LEFT = 0.1;

    private static final double LARGEST_STEP = 50;

    /** Shear rate at which the mud resists the rise of gas: 3 rpm of the rheometer, 1/s. */
    private static final double RISE_SHEAR_RATE = 5.11;

    /** A viscosity for laws that do not ask for one, Pa·s. */
    private static final double NOT_READ = 1e-3;

    private static final double SAME_RATE = 1e-6;

    /** Share by which gas rates of both methods differ where only rounding tells them apart: then it is the driller's. */
    private static final double SAME_GAS_RATE = 1e-6;

    private static final int SHOWN_STEPS = 60;
    private static final double SAME_TOP = 1e-3;

    /** Temperature of the gas in the vent line, K. */
    static final double VENT_TEMPERATURE = 288.15;

    private final SectionInput input;
    private final SectionPlan plan;
    private final OperationsPlan operations;
    private final Kick kick;
    private final double volume;
    private final MudColumn mud;
    private final Mud sectionMud;
    private final Model model;
    private final Annulus annulus;
    private final OperationLimits limits;
    private final Optional<SurfaceLimit> weakest;
    private final List<WatchedDepth> watched;
    private final ShutIn shutIn;

    InfluxCourse(SectionInput input, Model model, Kick kick, double volume) {
        this.input = input;
        this.plan = input.plan();
        this.operations = plan.operations();
        this.kick = kick;
        this.volume = volume;
        this.model = model;
        this.sectionMud = plan.mud().orElseThrow();
        this.mud = model.mudColumn().orElseThrow();
        this.annulus = Annulus.of(new AnnulusGeometry(
                input.casing(),
                plan.hole(),
                plan.string().orElseThrow(),
                plan.bottomDepth(),
                input.datum().stackDepth(),
                plan.bottomDepth()));
        this.limits = new OperationLimits(input, model);
        this.weakest = new MaaspCalculator(input, model.strength(), model.mudColumn())
                .atSectionMud()
                .flatMap(Maasp::formation);
        this.watched = OperationLimits.watched(input, weakest);
        this.shutIn = closed();
    }

    ShutIn shutIn() {
        return shutIn;
    }

    List<WatchedDepth> watched() {
        return watched;
    }

    private ShutIn closed() {
        AnnulusGrid grid = AnnulusGrid.of(annulus, input.path(), kinks());
        GasColumn column = gasColumn();
        column.start(kick.verticalDepth(), kick.formationPressure());
        double top = grid.topOfVolume(grid.bottom(), volume);
        double z = grid.verticalAt(top);
        double stack = input.path().verticalDepth(annulus.top());
        double atStack = mud.pressure(z, column.pressure(z), stack);
        double casing = lineFluid().pressure(stack, atStack, 0) - Physics.ATMOSPHERE;
        return new ShutIn(kick.formationPressure() - kick.mudPressure(), casing, top);
    }

    /** Conserves the mass to 1e-10 on the way. */
    private GasColumn gasColumn() {
        return GasColumn.fine(model.gas().orElseThrow(), model.temperature().orElseThrow());
    }

    private double[] kinks() {
        return Arrays.stream(model.temperature().orElseThrow().depths())
                .flatMap(z -> DoubleStream.of(input.path().measuredDepthsAt(z, 0, plan.bottomDepth())))
                .toArray();
    }

    private Optional<FlowLine> chokeLine() {
        return input.datum().stackAtSeabed() ? input.equipment().chokeLine() : Optional.empty();
    }

    private OptionalDouble lineDensity() {
        return chokeLine().map(FlowLine::fluidDensity).orElse(OptionalDouble.empty());
    }

    private MudColumn lineFluid() {
        return lineDensity().isPresent() ? MudColumn.constant(lineDensity().getAsDouble()) : mud;
    }

    /** Runs a calculation; what it lacks or where a model is out of its range becomes the reason. */
    private static <T> T assessed(Supplier<T> calculation, Function<NotAssessed, T> otherwise) {
        try {
            return calculation.get();
        } catch (Missing missing) {
            return otherwise.apply(NotAssessed.of(missing));
        } catch (Fault fault) {
            return otherwise.apply(NotAssessed.of(fault));
        }
    }

    // Circulation

    CirculationOutcome circulation(CirculationMethod method) {
        return assessed(() -> circulated(method), n -> n);
    }

    private CirculationOutcome circulated(CirculationMethod method) {
        if (annulus.stringVolume() == 0) {
            throw new Missing("no pipe in the hole: the influx cannot be circulated out", "section: string");
        }
        double rate = killRate();
        double friction = chokeLineFriction();
        double held = Math.max(kick.formationPressure(), kick.mudPressure())
                + plan.circulatingOverbalance().orElse(0)
                + plan.chokeHandlingAllowance().orElse(0);
        AnnulusGrid grid = gridToSurface();
        double[] depths =
                watched.stream().mapToDouble(WatchedDepth::measuredDepth).toArray();
        CirculationSchedule schedule = Circulation.run(new CirculationPlan(
                grid,
                gasColumn(),
                mud,
                method,
                new CirculationPlan.Pressures(kick.formationPressure(), held, friction),
                volume,
                annulus.stringVolume(),
                new CirculationPlan.Pump(rate, plan.pumpOutput()),
                depths,
                limits.lines(),
                annularLoss(rate),
                CirculationPlan.USUAL_STEPS));
        List<CirculationOutcome.Peak> peaks = IntStream.range(0, depths.length)
                .mapToObj(i -> new CirculationOutcome.Peak(
                        watched.get(i),
                        schedule.greatestWatched().get(i).watched()[i],
                        schedule.greatestWatched().get(i)))
                .toList();
        List<HandPressure> byHand = method == CirculationMethod.DRILLERS
                ? new HandTopOfGas(input, annulus, model, density()).of(schedule, watched)
                : List.of();
        return new CirculationOutcome.Computed(method, rate, friction, held, schedule, peaks, byHand);
    }

    /** Friction in the annulus, where the methods count it. */
    private DoubleUnaryOperator annularLoss(double rate) {
        if (input.options().annularFriction() == MethodOptions.AnnularFriction.NEGLECTED) {
            return d -> 0;
        }
        FlowingMud flowing = new FlowingMud(density(), neededFlow("the friction of the annulus is not known"));
        return FrictionProfile.of(annulus, new FrictionProfile.Flow(flowing, rate))::above;
    }

    private AnnulusGrid gridToSurface() {
        double[] keep = DoubleStream.concat(
                        DoubleStream.of(kinks()),
                        DoubleStream.concat(
                                watched.stream().mapToDouble(WatchedDepth::measuredDepth),
                                limits.lines().stream().flatMapToDouble(l -> DoubleStream.of(l.measuredDepth()))))
                .toArray();
        if (!input.datum().stackAtSeabed()) {
            return AnnulusGrid.of(annulus, input.path(), keep);
        }
        double diameter = neededChokeLine().insideDiameter();
        return AnnulusGrid.withChokeLine(annulus, Math.PI / 4 * diameter * diameter, input.path(), keep);
    }

    private FlowLine neededChokeLine() {
        return chokeLine()
                .orElseThrow(
                        () -> new Missing("the choke line of the subsea stack is not known", "equipment: choke line"));
    }

    private double killRate() {
        return ChokeFriction.rate(plan)
                .orElseThrow(() -> new Missing(
                        "the pump rate is not known", "section: slow circulation rate, or operations: kill rate"));
    }

    private double chokeLineFriction() {
        if (input.datum().stackAtSeabed()) {
            neededChokeLine();
        }
        ChokeFriction friction = ChokeFriction.of(input);
        return friction.pressure()
                .orElseThrow(() -> new Missing(
                        "choke-line friction is " + friction.basis()
                                + ", so the pressures while circulating are not known",
                        "section: slow circulation: choke-line friction, or mud: rheometer readings"));
    }

    private FlowModel neededFlow(String what) {
        return ChokeFriction.flow(sectionMud).orElseThrow(() -> new Missing(what, "mud: rheometer readings"));
    }

    // Gas at surface

    SurfaceGasOutcome surfaceGas(CirculationOutcome drillers, CirculationOutcome weighted) {
        return assessed(() -> gasAtSurface(drillers, weighted), n -> n);
    }

    private SurfaceGasOutcome gasAtSurface(CirculationOutcome drillers, CirculationOutcome weighted) {
        if (sectionMud.base().dissolvesGas()) {
            throw new Missing("gas dissolves in this mud, and how much is not modelled: the rate would be a guess", "");
        }
        if (drillers instanceof NotAssessed not) {
            return not;
        }
        CirculationOutcome.Computed greater = (CirculationOutcome.Computed) drillers;
        if (weighted instanceof CirculationOutcome.Computed other
                && peakRate(other) > peakRate(greater) * (1 + SAME_GAS_RATE)) {
            greater = other;
        }
        double rate = peakRate(greater);
        return new SurfaceGasOutcome.Computed(
                greater.method(), rate, greater.schedule().greatestGasRate(), separator(rate));
    }

    private static double peakRate(CirculationOutcome.Computed circulation) {
        return circulation.schedule().greatestGasRate().gasRate();
    }

    private SurfaceGasOutcome.SeparatorOutcome separator(double rate) {
        return assessed(() -> loaded(rate), n -> n);
    }

    private SurfaceGasOutcome.SeparatorOutcome loaded(double rate) {
        GasSeparator separator = input.equipment()
                .gasSeparator()
                .orElseThrow(() -> new Missing("the separator is not known", "equipment: gas separator"));
        Gas gas = model.gas().orElseThrow();
        if (gas instanceof FixedGradientGas) {
            throw new Missing("the gas of the hand formula has no density at surface", "methods: gas model");
        }
        double height = separatorField(separator.mudLegHeight(), "mud leg height");
        GasVent.Line line = new GasVent.Line(
                separatorField(separator.ventLineLength(), "vent line length"),
                separatorField(separator.ventLineDiameter(), "vent line diameter"));
        double legDensity = separator.mudLegDensity().orElse(density());
        return new SurfaceGasOutcome.Separator(
                GasVent.backPressure(line, gas, rate, VENT_TEMPERATURE),
                GasVent.handBackPressure(line, rate),
                Physics.GRAVITY * legDensity * height,
                legDensity,
                separator.gasCapacity());
    }

    private static double separatorField(OptionalDouble value, String field) {
        return value.orElseThrow(() ->
                new Missing("the " + field + " of the separator is not known", "equipment: gas separator: " + field));
    }

    // The closed well

    MigrationOutcome migration() {
        return assessed(this::migrated, n -> n);
    }

    private MigrationOutcome migrated() {
        MigrationBracket bracket = operations.migration().orElse(MigrationBracket.PUBLISHED);
        double viscosity = viscosity(bracket.laws());
        ClosedWell bare = closedWell(viscosity, yielding(true), List.of());
        List<PressureLimit> points = new ArrayList<>(limits.points(watched, bare));
        OptionalDouble maasp = weakest.map(SurfaceLimit::pressure).orElse(OptionalDouble.empty());
        boolean maaspWatched = maasp.isPresent() && maasp.getAsDouble() > 0;
        if (maaspWatched) {
            points.add(ClosedWell.surfaceLimit("formation MAASP", maasp.getAsDouble(), bare));
        }
        ClosedWell well = bare.watching(points);
        return new MigrationOutcome.Computed(
                Migration.bracket(well, bracket).curves().stream()
                        .map(c -> course(c, maaspWatched))
                        .toList(),
                Migration.bracket(well.rigid(), bracket).curves().stream()
                        .map(c -> course(c, maaspWatched))
                        .toList(),
                Migration.shareOfRigidRise(bare),
                maasp);
    }

    private MigrationOutcome.Course course(MigrationCurve curve, boolean maaspWatched) {
        List<MigrationCurve.LimitTime> all = curve.limits();
        int end = maaspWatched ? all.size() - 1 : all.size();
        Map<String, MigrationOutcome.FirstReached> first = new LinkedHashMap<>();
        for (MigrationCurve.LimitTime limit : all.subList(watched.size(), end)) {
            MigrationOutcome.FirstReached reached = new MigrationOutcome.FirstReached(
                    limit.limit().name(),
                    limit.limit().measuredDepth(),
                    limit.reached().map(this::atWatched));
            first.merge(reached.name(), reached, InfluxCourse::earlier);
        }
        Optional<MigrationOutcome.MaaspShown> maasp = maaspWatched
                ? all.get(end)
                        .reached()
                        .map(p -> new MigrationOutcome.MaaspShown(
                                p.time(), p.upperEnd() < weakest.orElseThrow().measuredDepth()))
                : Optional.empty();
        return new MigrationOutcome.Course(
                curve.law().description(),
                curve.law().wording().amounts(),
                curve.ending(),
                shown(curve.points()),
                List.copyOf(first.values()),
                maasp);
    }

    /**
     * Points close enough for a curve: both ends, those at which the top of the gas is at a watched depth, and between them
     * one where the gas has risen by a sixtieth of the hole. Depths of limits add many more, which only the search needs.
     */
    private List<MigrationPoint> shown(List<MigrationPoint> points) {
        double step = (annulus.bottom() - annulus.top()) / SHOWN_STEPS;
        List<MigrationPoint> kept = new ArrayList<>();
        double last = Double.POSITIVE_INFINITY;
        for (int i = 0; i < points.size(); i++) {
            MigrationPoint p = points.get(i);
            boolean atDepth = watched.stream().anyMatch(w -> Math.abs(p.upperEnd() - w.measuredDepth()) < SAME_TOP);
            if (atDepth || i == points.size() - 1 || last - p.lowerEnd() >= step) {
                kept.add(atWatched(p));
                last = p.lowerEnd();
            }
        }
        return kept;
    }

    private static MigrationOutcome.FirstReached earlier(
            MigrationOutcome.FirstReached a, MigrationOutcome.FirstReached b) {
        return b.moment().isPresent()
                        && (a.moment().isEmpty()
                                || b.moment().get().time() < a.moment().get().time())
                ? b
                : a;
    }

    /** The point with the pressures of the watched depths alone, which stand first. */
    private MigrationPoint atWatched(MigrationPoint p) {
        return new MigrationPoint(
                p.time(),
                p.lowerEnd(),
                p.upperEnd(),
                p.surfacePressure(),
                p.bottomHolePressure(),
                p.gasVolume(),
                Arrays.copyOf(p.watched(), watched.size()));
    }

    private double viscosity(List<SlipLaw> laws) {
        boolean read = laws.stream()
                .anyMatch(l -> !(l instanceof FixedRiseRate || l instanceof MudWeightRule || l instanceof DriftFlux));
        return read
                ? neededFlow("the slip law asks for the viscosity of the mud").shearStress(RISE_SHEAR_RATE)
                        / RISE_SHEAR_RATE
                : NOT_READ;
    }

    private ClosedWell.Yielding yielding(boolean withFiltrate) {
        OperationsPlan.Yielding given = operations.yielding();
        return new ClosedWell.Yielding(
                given.mudCompressibility()
                        .orElse(sectionMud
                                .expansion()
                                .map(MudExpansion::compressibility)
                                .orElse(0.0)),
                given.holeCompliance().orElse(0),
                !given.floatInString().orElse(true),
                withFiltrate ? given.filtrateLoss().orElse(0) : 0);
    }

    /** The closed well's mud has one density: the stated one, or where it moves what weighs the same at section TD. */
    private double density() {
        return mud.isConstant() ? mud.density() : EquivalentDensity.of(kick.mudPressure(), kick.verticalDepth());
    }

    private ClosedWell closedWell(double viscosity, ClosedWell.Yielding yielding, List<PressureLimit> points) {
        return new ClosedWell(
                input.path(),
                annulus,
                model.gas().orElseThrow(),
                model.temperature().orElseThrow(),
                new ClosedWell.WellMud(density(), viscosity, lineDensity().orElse(density())),
                new ClosedWell.Influx(kick.formationPressure(), volume),
                yielding,
                points);
    }

    /** A closed well that loses no filtrate, watched at every limit. */
    private ClosedWell tightWell(SlipLaw law) {
        ClosedWell bare = closedWell(viscosity(List.of(law)), yielding(false), List.of());
        return bare.watching(limits.points(watched, bare));
    }

    VolumetricOutcome volumetric() {
        return assessed(this::bled, n -> n);
    }

    private VolumetricOutcome bled() {
        double safety = needed(operations.volumetric().safety(), "volumetric: safety margin");
        double working = needed(operations.volumetric().working(), "volumetric: working pressure");
        SlipLaw law = operations.migration().orElse(MigrationBracket.PUBLISHED).medium();
        ClosedWell well = tightWell(law);
        VolumetricMethod.Table table = VolumetricMethod.run(new VolumetricMethod.Plan(well, law, safety, working));
        double lowest = kick.formationPressure() + safety;
        return new VolumetricOutcome.Computed(
                law.description(),
                law.wording().amounts(),
                lowest,
                lowest + working,
                new VolumetricMethod.Table(
                        table.steps().stream()
                                .map(s -> new VolumetricMethod.Step(
                                        s.action(), atWatched(s.end()), s.bled(), s.totalBled()))
                                .toList(),
                        table.points().stream().map(this::atWatched).toList(),
                        table.ending(),
                        table.shortfall()),
                closest(well.limits(), table.points()));
    }

    private Optional<ClosestLimit> closest(List<PressureLimit> of, List<MigrationPoint> points) {
        return IntStream.range(watched.size(), of.size())
                .mapToObj(k -> new ClosestLimit(
                        of.get(k).name(),
                        of.get(k).measuredDepth(),
                        of.get(k).pressure()
                                - points.stream()
                                        .mapToDouble(p -> p.watched(k))
                                        .max()
                                        .orElseThrow()))
                .min(Comparator.comparingDouble(ClosestLimit::margin));
    }

    private static double needed(OptionalDouble value, String field) {
        return value.orElseThrow(() -> new Missing(field + " is not set", "operations: " + field));
    }

    LubricationOutcome lubrication(VolumetricOutcome before) {
        return assessed(() -> lubricated(before), n -> n);
    }

    private LubricationOutcome lubricated(VolumetricOutcome before) {
        if (before instanceof NotAssessed not) {
            return not;
        }
        VolumetricOutcome.Computed volumetric = (VolumetricOutcome.Computed) before;
        VolumetricMethod.Table table = volumetric.table();
        if (table.ending() != MigrationCurve.Ending.TOP) {
            throw new Missing(
                    "the gas does not come to the top of the annulus: "
                            + table.ending().title(),
                    "");
        }
        SlipLaw law = operations.migration().orElse(MigrationBracket.PUBLISHED).medium();
        OperationsPlan.Lubrication given = operations.lubrication();
        ClosedWell bare = closedWell(viscosity(List.of(law)), yielding(false), List.of());
        LubricateAndBleed.Plan with = new LubricateAndBleed.Plan(
                bare.watching(limits.points(List.of(), bare)),
                table.end().lowerEnd(),
                // Gas is bled to the bottom of the window first, so that pumping stays inside it.
                Math.min(table.end().bottomHolePressure(), volumetric.lowest()),
                needed(operations.volumetric().working(), "volumetric: working pressure"),
                new LubricateAndBleed.Lubricant(
                        given.density().orElse(density()),
                        given.largestStep().orElse(LARGEST_STEP),
                        given.left().orElse(GAS_LEFT)));
        return new LubricationOutcome.Computed(with.level(), with.bottomHole(), LubricateAndBleed.run(with));
    }

    BullheadingOutcome bullheading() {
        return assessed(this::pumpedBack, n -> n);
    }

    private BullheadingOutcome pumpedBack() {
        double above = needed(
                operations.bullheading().injectionAbove(), "bullheading: injection pressure above the formation's");
        double pumpLimit = input.equipment()
                .mudPump()
                .map(PressureRating::pressure)
                .orElseThrow(() -> new Missing("the rating of the pump is not known", "equipment: mud pump rating"));
        double rate = operations.bullheading().rate().orElseGet(this::killRate);
        FlowModel flow = neededFlow("the friction of the annulus is not known");
        double friction = Hydraulics.annularLoss(annulus, new FlowingMud(density(), flow), rate);
        ClosedWell bare = closedWell(NOT_READ, ClosedWell.Yielding.RIGID, List.of());
        double injection = kick.formationPressure() + above;
        Bullheading.Outcome outcome = Bullheading.run(new Bullheading.Plan(
                bare.watching(limits.points(watched, bare)), injection, killDensity(), friction, pumpLimit));
        double line = lineFriction(rate);
        Set<String> behindLine = limits.aboveStack(annulus.top());
        Map<String, Bullheading.Load> loads = new LinkedHashMap<>();
        for (Bullheading.Load load :
                outcome.loads().subList(watched.size(), outcome.loads().size())) {
            String name = load.limit().name();
            loads.merge(
                    name,
                    behindLine.contains(name) ? more(load, line) : load,
                    (a, b) -> b.margin() < a.margin() ? b : a);
        }
        return new BullheadingOutcome.Computed(
                rate,
                friction,
                injection,
                killDensity(),
                outcome.stages().stream()
                        .map(s -> new Bullheading.Stage(
                                s.pumped(), s.pumpPressure(), Arrays.copyOf(s.watched(), watched.size())))
                        .toList(),
                line,
                more(outcome.pump(), line),
                List.copyOf(loads.values()));
    }

    /** Friction of the line that a subsea well is bullheaded through, of the kill mud that is pumped. */
    private double lineFriction(double rate) {
        if (!input.datum().stackAtSeabed()) {
            return 0;
        }
        ChokeLineLoss.Line line = ChokeFriction.line(input)
                .orElseThrow(() -> new Missing(
                        "the line that is pumped through is not known", "equipment: choke line: inside diameter"));
        ChokeLineLoss loss = line.flowing(killDensity()).at(rate);
        if (loss instanceof ChokeLineLoss.Known known) {
            return known.pressure();
        }
        throw new Missing(
                "the friction of the line that is pumped through is not known",
                ((ChokeLineLoss.NotAssessed) loss).missing());
    }

    private static Bullheading.Load more(Bullheading.Load load, double friction) {
        return new Bullheading.Load(load.limit(), load.load() + friction, load.pumped());
    }

    // Kill sheet

    private double killDensity() {
        OperationsPlan.KillMud given = operations.killMud();
        double balancing = EquivalentDensity.of(kick.formationPressure(), kick.verticalDepth())
                + given.overbalance().orElse(0);
        return KillFormulas.roundedUp(balancing, given.step().orElse(TRADE_STEP));
    }

    KillSheetOutcome killSheet() {
        return assessed(this::sheet, n -> n);
    }

    private KillSheetOutcome sheet() {
        double output = plan.pumpOutput()
                .orElseThrow(() -> new Missing("the output of a pump stroke is not known", "section: pump output"));
        double rate = killRate();
        SlowCirculation slow = plan.slowCirculations().stream()
                .filter(s -> Math.abs(s.rate() / rate - 1) <= SAME_RATE)
                .filter(s -> s.pumpPressure().isPresent())
                .findFirst()
                .orElseThrow(() -> new Missing(
                        "the slow circulating pressure at the kill rate is not known",
                        "section: slow circulation: pump pressure"));
        SurfaceLimit weak = weakest.orElseThrow();
        double weakPressure = model.strength()
                .orElseThrow()
                .limitAt(weak.measuredDepth(), input.path().verticalDepth(weak.measuredDepth()));
        OperationsPlan.KillMud given = operations.killMud();
        return new KillSheetOutcome.Computed(KillSheet.of(new KillSheetInput(
                input.path(),
                annulus,
                density(),
                new KillSheetInput.ShutIn(shutIn.drillPipePressure(), Math.max(0, shutIn.casingPressure()), volume),
                new KillSheetInput.Pump(output, operations.surfaceLineVolume().orElse(0), slow),
                new KillSheetInput.OpenHoleLimit(weak.name(), weak.measuredDepth(), weakPressure),
                new KillSheetInput.KillMud(
                        given.step().orElse(TRADE_STEP),
                        given.overbalance().orElse(0),
                        plan.activeVolume().orElse(0) + annulus.stringVolume() + annulus.volume(),
                        given.material().orElse(BARITE)),
                subsea(),
                operations.killSheet().orElse(KillSheetInput.Options.DEFAULT))));
    }

    private Optional<KillSheetInput.Subsea> subsea() {
        if (!input.datum().stackAtSeabed()) {
            return Optional.empty();
        }
        neededChokeLine();
        ChokeLineLoss.Line line = ChokeFriction.line(input).orElseThrow();
        FlowLine riser =
                input.equipment().riser().orElseThrow(() -> new Missing("the riser is not known", "equipment: riser"));
        double bore = Math.PI / 4 * riser.insideDiameter() * riser.insideDiameter();
        return Optional.of(new KillSheetInput.Subsea(
                line,
                lineDensity(),
                bore * riser.length() - pipeInRiser(),
                operations.startUpSteps().orElse(START_UP_STEPS)));
    }

    /** Volume of the string, steel and bore, between datum and stack. */
    private double pipeInRiser() {
        StringGeometry string = annulus.string();
        double pipe = 0;
        for (int i = 0; i < string.count() && string.top(i) < annulus.top(); i++) {
            double outside = string.component(i).outsideDiameter();
            pipe += Math.PI / 4 * outside * outside * (Math.min(string.bottom(i), annulus.top()) - string.top(i));
        }
        return pipe;
    }
}
