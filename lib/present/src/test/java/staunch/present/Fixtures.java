package staunch.present;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import staunch.control.SlowCirculation;
import staunch.design.CaseHeader;
import staunch.design.CasingDesign;
import staunch.design.Comparison;
import staunch.design.InputFile;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.earth.EarthModel;
import staunch.earth.EquivalentZero;
import staunch.earth.FormationTop;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.Standing;
import staunch.earth.StrengthTest;
import staunch.earth.TemperatureProfile;
import staunch.earth.WeakZone;
import staunch.envelope.AnnularLoss;
import staunch.envelope.Assumption;
import staunch.envelope.Criteria;
import staunch.envelope.DepthPoint;
import staunch.envelope.Drilling;
import staunch.envelope.HandCalculation;
import staunch.envelope.InfluxMargin;
import staunch.envelope.IntensityLimit;
import staunch.envelope.IntensityPoint;
import staunch.envelope.Kick;
import staunch.envelope.KickResult;
import staunch.envelope.Maasp;
import staunch.envelope.Masp;
import staunch.envelope.MaspBasis;
import staunch.envelope.MaspCheck;
import staunch.envelope.MethodOptions;
import staunch.envelope.OperationsPlan;
import staunch.envelope.PressureWindow;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SectionOperations;
import staunch.envelope.SectionPlan;
import staunch.envelope.Stage;
import staunch.envelope.SurfaceLimit;
import staunch.envelope.SurfaceTolerance;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;
import staunch.envelope.WeakPoint;
import staunch.envelope.WellEnvelope;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.fluid.MudBase;
import staunch.fluid.RheometerReadings;
import staunch.limit.FlowLine;
import staunch.limit.GasSeparator;
import staunch.limit.PressureEquipment;
import staunch.limit.PressureRating;
import staunch.limit.StackElement;
import staunch.units.EquivalentDensity;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Quantity;
import staunch.units.Source;
import staunch.units.UnitSystem;
import staunch.units.Warning;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.Datum;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/** A made-up well with results written by hand, of every kind that a result can be; the numbers are plausible, not computed. */
public final class Fixtures {
    private static final Source PROGRAMME = new Source("Drilling programme Heron-1 (invented)", "section 4");

    private static final List<SectionOperations> OPERATIONS = computeOperations();

    private Fixtures() {}

    /** The case with a given name of the well. */
    public static WellCase wellCase(String well) {
        return new WellCase(
                new CaseHeader(
                        well,
                        "Exploration well, base design",
                        Optional.of("B"),
                        Optional.of("2026-03-14"),
                        Optional.of("A. Planner"),
                        Optional.of("B. Checker"),
                        Optional.empty(),
                        Optional.of("Invented well: no real field, company or person.")),
                UnitSystem.FIELD,
                new Datum("rotary table", 300, new Datum.OnLand(9)),
                WellPath.of(List.of(
                        new SurveyStation(0, 0, 0),
                        new SurveyStation(1500, 0, 0),
                        new SurveyStation(2200, Math.toRadians(35), 1),
                        new SurveyStation(4400, Math.toRadians(35), 1))),
                earth(),
                List.of(design()),
                equipment(),
                MethodOptions.DEFAULT,
                List.of(new InputFile("case.yaml", "9f2c4f0f6a2b8d1c5e7a3b9d0c1e2f4a5b6c7d8e9f0a1b2c3d4e5f6a7b8c9d0e")),
                List.of(new Warning("temperature", "The geothermal gradient is the regional one, not measured here.")));
    }

    /** The case under its own name. */
    public static WellCase wellCase() {
        return wellCase("Heron-1");
    }

    /** Results of the five sections. */
    public static WellEnvelope envelope() {
        CasingDesign design = design();
        return new WellEnvelope(
                design.name(),
                MethodOptions.DEFAULT,
                List.of(
                        topHole(design.sections().get(0)),
                        unlimited(design.sections().get(1)),
                        holds(design.sections().get(2)),
                        fails(design.sections().get(3)),
                        notAssessed(design.sections().get(4))),
                List.of(new Warning(
                        "pore pressure", "High pore pressure lies within 0.3 ppg of the mud below 11 200 ft.")));
    }

    /** The design beside another that lacks the last section and is otherwise equal; its name is that of a column. */
    public static Comparison comparison() {
        WellCase one = wellCase();
        CasingDesign base = one.designs().get(0);
        CasingDesign other = new CasingDesign(
                "Section",
                base.strings(),
                base.sections().subList(0, base.sections().size() - 1));
        WellCase both = new WellCase(
                one.header(),
                one.units(),
                one.datum(),
                one.path(),
                one.earth(),
                List.of(base, other),
                one.equipment(),
                one.options(),
                one.files(),
                one.warnings());
        WellEnvelope envelope = envelope();
        WellEnvelope shorter = new WellEnvelope(
                other.name(), envelope.options(), envelope.sections().subList(0, 4), envelope.warnings());
        return Comparison.of(both, List.of(envelope, shorter));
    }

    /** What follows after an influx into each of the five sections, computed for the case. */
    public static List<SectionOperations> operations() {
        return OPERATIONS;
    }

    private static List<SectionOperations> computeOperations() {
        OperationsPlan plan = OperationsPlan.NONE
                .withSurfaceLines(Quantity.of(10, "bbl"))
                .withVolumetric(new OperationsPlan.Volumetric(OptionalDouble.of(psi(150)), OptionalDouble.of(psi(100))))
                .withBullheading(new OperationsPlan.Bullhead(OptionalDouble.empty(), OptionalDouble.of(psi(300))));
        WellCase one = wellCase();
        CasingDesign design = design();
        for (SectionPlan section : design.sections()) {
            design = design.withSection(section.name(), section.withOperations(plan));
        }
        return Study.of(new WellCase(
                        one.header(),
                        one.units(),
                        one.datum(),
                        one.path(),
                        one.earth(),
                        List.of(design),
                        one.equipment()
                                .with(
                                        Optional.of(new PressureRating("mud pump", psi(5000), Optional.empty())),
                                        Optional.of(new GasSeparator(
                                                "separator",
                                                OptionalDouble.of(ft(10)),
                                                OptionalDouble.of(ft(180)),
                                                OptionalDouble.of(in(8)),
                                                OptionalDouble.empty(),
                                                Optional.empty()))),
                        one.options(),
                        one.files(),
                        one.warnings()))
                .operations();
    }

    /** The section with a finite tolerance that holds. */
    public static SectionEnvelope holding() {
        return envelope().sections().get(2);
    }

    /** The section that fails. */
    public static SectionEnvelope failing() {
        return envelope().sections().get(3);
    }

    /** The section that is drilled on a diverter. */
    public static SectionEnvelope notShutIn() {
        return envelope().sections().get(0);
    }

    /** The section whose influx may fill the open hole. */
    public static SectionEnvelope unlimited() {
        return envelope().sections().get(1);
    }

    /** The section that lacks a strength. */
    public static SectionEnvelope notAssessed() {
        return envelope().sections().get(4);
    }

    private static double ft(double v) {
        return v * 0.3048;
    }

    private static double ppg(double v) {
        return Quantity.of(v, "ppg").si(Measure.DENSITY);
    }

    private static double bbl(double v) {
        return Quantity.of(v, "bbl").si(Measure.VOLUME);
    }

    private static double psi(double v) {
        return Quantity.of(v, "psi").si(Measure.PRESSURE_DIFFERENCE);
    }

    private static double in(double v) {
        return v * 0.0254;
    }

    private static double emw(double ppg, double tvd) {
        return EquivalentDensity.pressure(ppg(ppg), tvd);
    }

    private static EarthModel earth() {
        double[] depths = {0, ft(3000), ft(7000), ft(13500)};
        return new EarthModel(
                Optional.of(Range.of(profile(depths, 8.5, 8.6, 8.9, 12.2))),
                Optional.of(Range.of(profile(depths, 12.0, 13.0, 14.6, 16.2))),
                List.of(
                        new StrengthTest(
                                "LOT at 13 3/8 in shoe",
                                ft(3000),
                                emw(13.1, ft(3000)),
                                Standing.LEAK_OFF,
                                OptionalDouble.of(ppg(9.2)),
                                PROGRAMME),
                        new StrengthTest(
                                "FIT at 9 5/8 in shoe",
                                ft(8200),
                                emw(14.4, ft(8200)),
                                Standing.INTEGRITY_TEST,
                                OptionalDouble.of(ppg(10.4)),
                                PROGRAMME)),
                List.of(new WeakZone("depleted sand", ft(9700), ft(9850), ppg(13.6), PROGRAMME)),
                Optional.of(TemperatureProfile.geothermal(new TemperatureProfile.Point(9, 288), 0.03, ft(15000))),
                List.of(new FormationTop("Shale A", ft(2500)), new FormationTop("Sand B", ft(9700))));
    }

    private static PressureProfile profile(double[] depths, double... ppg) {
        double[] pressures = new double[depths.length];
        for (int i = 0; i < depths.length; i++) {
            pressures[i] = emw(ppg[i], depths[i]);
        }
        return PressureProfile.of(depths, pressures);
    }

    private static PressureEquipment equipment() {
        return new PressureEquipment(
                Optional.of(new PressureRating(
                        "wellhead, section B",
                        Quantity.of(5000, "psi").si(Measure.PRESSURE_GAUGE),
                        Optional.of(PROGRAMME))),
                Optional.of(new PressureRating(
                        "choke manifold", Quantity.of(10000, "psi").si(Measure.PRESSURE_GAUGE), Optional.empty())),
                Optional.of(new FlowLine("choke line", 20, in(3.0625), Optional.empty(), OptionalDouble.empty())),
                Optional.empty(),
                Optional.empty(),
                List.of(
                        element("pipe ram", StackElement.Type.PIPE_RAM, 10000),
                        element("blind shear ram", StackElement.Type.BLIND_SHEAR_RAM, 10000),
                        element("annular", StackElement.Type.ANNULAR, 5000)));
    }

    private static StackElement element(String name, StackElement.Type type, double psi) {
        return new StackElement(
                name,
                type,
                Optional.of(
                        new PressureRating(name, Quantity.of(psi, "psi").si(Measure.PRESSURE_GAUGE), Optional.empty())),
                OptionalDouble.of(in(13.625)),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static CasingDesign design() {
        return new CasingDesign(
                "base design",
                List.of(
                        casing("30 in conductor", 0, 400, 30, 28, "X-52", 0.7, 1600),
                        casing("20 in casing", 0, 1200, 20, 19, "K-55", 0.7, 2110),
                        casing("13 3/8 in casing", 0, 3000, 13.375, 12.415, "N-80", 0.8, 5020),
                        casing("9 5/8 in casing", 0, 8600, 9.625, 8.681, "P-110", 0.8, 9440),
                        casing("7 in liner", 8300, 11800, 7, 6.184, "P-110", 0.8, 11220)),
                List.of(
                        plan("26 in hole", Drilling.DIVERTER, 400, 1200, 26, 8.8, false),
                        plan("17 1/2 in hole", Drilling.SHUT_IN, 1200, 3000, 17.5, 9.2, true),
                        plan("12 1/4 in hole", Drilling.SHUT_IN, 3000, 8600, 12.25, 10.4, true),
                        plan("8 1/2 in hole", Drilling.SHUT_IN, 8600, 11800, 8.5, 12.3, true),
                        plan("6 in hole", Drilling.SHUT_IN, 11800, 14400, 6, 12.6, true)));
    }

    private static CasingString casing(
            String name, double top, double bottom, double od, double id, String grade, double share, double burst) {
        double split = (top + bottom) / 2;
        List<CasingInterval> intervals = name.startsWith("9 5/8")
                ? List.of(
                        interval(top, split, od, id, grade, burst),
                        interval(split, bottom, od, id + 0.1, "N-80", burst * 0.8))
                : List.of(interval(top, bottom, od, id, grade, burst));
        return new CasingString(
                name,
                intervals,
                OptionalDouble.of(ft(top)),
                OptionalDouble.of(ppg(9.0)),
                OptionalDouble.of(ppg(8.4)),
                OptionalDouble.of(share),
                OptionalDouble.of(psi(3000)),
                top > 0 ? OptionalDouble.of(psi(6000)) : OptionalDouble.empty());
    }

    private static CasingInterval interval(
            double top, double bottom, double od, double id, String grade, double burst) {
        return new CasingInterval(
                ft(top),
                ft(bottom),
                in(od),
                in(id),
                Optional.of(grade),
                OptionalDouble.empty(),
                OptionalDouble.of(psi(burst)),
                OptionalDouble.empty(),
                0);
    }

    private static SectionPlan plan(
            String name, Drilling drilling, double top, double bottom, double size, double mud, boolean criteria) {
        return new SectionPlan(
                name,
                drilling,
                List.of(new HoleInterval(ft(top), ft(bottom), in(size))),
                in(size),
                Optional.of(new Mud(
                        "KCl polymer",
                        ppg(mud),
                        MudBase.WATER,
                        Optional.of(new RheometerReadings(Map.of(600, 62.0, 300, 38.0, 3, 6.0))),
                        Optional.empty())),
                Optional.of(string(size)),
                0,
                Optional.of(GasComposition.sweet(0.65)),
                List.of(new SlowCirculation(
                        Quantity.of(120, "gpm").si(Measure.FLOW_RATE),
                        OptionalDouble.of(psi(420)),
                        OptionalDouble.empty())),
                OptionalDouble.of(bbl(0.1)),
                OptionalDouble.of(bbl(900)),
                OptionalDouble.of(bbl(10)),
                OptionalDouble.of(psi(100)),
                OptionalDouble.empty(),
                criteria
                        ? Optional.of(new Criteria(
                                "Heron kick criteria",
                                "Heron drilling team (invented)",
                                new Source("Common practice", "for the demonstration only"),
                                OptionalDouble.of(bbl(size > 10 ? 50 : 25)),
                                OptionalDouble.of(bbl(size > 10 ? 50 : 25)),
                                OptionalDouble.of(ppg(0.5)),
                                OptionalDouble.of(psi(50)),
                                OptionalDouble.of(ppg(0.2)),
                                OptionalDouble.empty()))
                        : Optional.empty());
    }

    private static DrillString string(double hole) {
        return hole < 8
                ? new DrillString(List.of(
                        new StringComponent("4 3/4 in collars", ft(300), in(4.75), in(2.25)),
                        new StringComponent("3 1/2 in drill pipe", ft(100), in(3.5), in(2.764))))
                : new DrillString(List.of(
                        new StringComponent("6 1/2 in collars", ft(300), in(6.5), in(2.8125)),
                        new StringComponent("5 in heavyweight", ft(600), in(5), in(3)),
                        new StringComponent("5 in drill pipe", ft(100), in(5), in(4.276))));
    }

    /** Vertical depth, feet, of a measured depth, feet: vertical to 5000 ft, then 30 degrees. */
    private static double vertical(double md) {
        return md <= 5000 ? md : 5000 + (md - 5000) * 0.8660254;
    }

    private static double pore(double tvdFt) {
        return tvdFt < 7000 ? 8.6 + 0.3 * tvdFt / 7000 : 8.9 + 3.3 * (tvdFt - 7000) / 6500;
    }

    private static double strength(double tvdFt) {
        double predicted = 12.0 + 4.2 * Math.pow(tvdFt / 13500, 0.8);
        return tvdFt > 9700 && tvdFt < 9850 ? 13.6 : predicted;
    }

    private static PressureWindow window(SectionPlan plan, double mud, boolean strengthKnown, Verdict verdict) {
        List<PressureWindow.Point> points = new ArrayList<>();
        double top = plan.topDepth() / 0.3048;
        double bottom = plan.bottomDepth() / 0.3048;
        for (int i = 0; i <= 120; i++) {
            double md = top + (bottom - top) * i / 120;
            double tvd = vertical(md);
            double z = ft(tvd);
            points.add(new PressureWindow.Point(
                    ft(md),
                    z,
                    OptionalDouble.of(emw(pore(tvd), z)),
                    OptionalDouble.of(emw(pore(tvd) + 0.35, z)),
                    OptionalDouble.of(emw(mud, z)),
                    strengthKnown ? OptionalDouble.of(emw(strength(tvd) + 0.4, z)) : OptionalDouble.empty(),
                    strengthKnown ? OptionalDouble.of(emw(strength(tvd), z)) : OptionalDouble.empty(),
                    strengthKnown ? OptionalDouble.of(emw(strength(tvd), z) - psi(50)) : OptionalDouble.empty()));
        }
        return new PressureWindow(points, verdict, new EquivalentZero("rotary table", 0, Physics.ATMOSPHERE));
    }

    private static WeakPoint weakPoint(String name, double md, double ppg) {
        double z = ft(vertical(md));
        return new WeakPoint(
                name, ft(md), z, emw(ppg, z), emw(ppg, z) - psi(50), "formation integrity test (lower bound)");
    }

    private static Stage stage(Stage.Moment moment, double top, double bottom, double bhp) {
        return new Stage(moment, ft(top), ft(bottom), bhp);
    }

    private static Tolerance finite(double bbl, WeakPoint point, Stage.Moment moment) {
        double top = point.measuredDepth() / 0.3048;
        return new Tolerance.Finite(bbl(bbl), bbl * 31, point, stage(moment, top, top + 900, emw(11, 3000)));
    }

    private static List<DepthPoint> along(
            SectionPlan plan, DoubleFunction<Tolerance> drilled, DoubleFunction<Tolerance> swabbed) {
        List<DepthPoint> points = new ArrayList<>();
        double top = plan.topDepth() / 0.3048;
        double bottom = plan.bottomDepth() / 0.3048;
        for (int i = 0; i <= 200; i++) {
            double share = i / 200.0;
            double md = top + (bottom - top) * share;
            points.add(new DepthPoint(
                    ft(md),
                    ft(vertical(md)),
                    drilled.apply(share),
                    swabbed.apply(share),
                    OptionalDouble.of(psi(1600 - 100 * share)),
                    OptionalDouble.of(psi(600 - 900 * share))));
        }
        return points;
    }

    private static Maasp maasp(WeakPoint shoe, double mud, double casing) {
        double shoeFt = shoe.verticalDepth() / 0.3048;
        double limit = EquivalentDensity.of(shoe.limit(), shoe.verticalDepth()) / ppg(1);
        SurfaceLimit formation = component(
                "shoe",
                SurfaceLimit.Type.FORMATION,
                0.05195 * (limit - mud) * shoeFt,
                shoe.measuredDepth(),
                shoe.verticalDepth());
        SurfaceLimit open = component(
                "open hole at 9 100 ft",
                SurfaceLimit.Type.FORMATION,
                0.05195 * (limit + 0.15 - mud) * (shoeFt + 500),
                shoe.measuredDepth() + 150,
                shoe.verticalDepth() + 150);
        List<SurfaceLimit> components = List.of(
                formation,
                open,
                component("9 5/8 in casing, 0 to 4 300 ft", SurfaceLimit.Type.CASING, casing - 300 * (mud - 9), 0, 0),
                component("wellhead, section B", SurfaceLimit.Type.WELLHEAD, 5000, 0, 0),
                component("annular", SurfaceLimit.Type.BOP, 5000, 0, 0),
                new SurfaceLimit(
                        "choke line",
                        SurfaceLimit.Type.CHOKE_LINE,
                        OptionalDouble.empty(),
                        0,
                        0,
                        Optional.of("no rating in the case (equipment.choke-line.rating)")));
        return new Maasp(ppg(mud), components, Optional.of(formation), Optional.of(formation), true);
    }

    private static SurfaceLimit component(String name, SurfaceLimit.Type type, double psi, double md, double tvd) {
        return new SurfaceLimit(name, type, OptionalDouble.of(psi(psi)), md, tvd, Optional.empty());
    }

    private static List<Maasp> sweep(WeakPoint shoe, double mud, double casing) {
        List<Maasp> maasps = new ArrayList<>();
        for (int i = 0; i <= 20; i++) {
            maasps.add(maasp(shoe, mud - 1 + 0.1 * i, casing));
        }
        return maasps;
    }

    private static InfluxMargin margin(
            SectionPlan plan, Kick.Scenario scenario, double bbl, double least, WeakPoint at) {
        double top = plan.topDepth() / 0.3048;
        double bottom = plan.bottomDepth() / 0.3048;
        List<InfluxMargin.Point> path = new ArrayList<>();
        for (int i = 0; i <= 80; i++) {
            double share = i / 80.0;
            double gasTop = bottom - 350 - (bottom - 350 - top * 0.4) * share;
            double reached = Math.min(1, (bottom - gasTop) / (bottom - top));
            double shoe = gasTop > top ? least + 420 * (1 - reached) : least + (top - gasTop) * 0.12;
            path.add(new InfluxMargin.Point(
                    ft(gasTop),
                    ft(gasTop + 350 + 250 * share),
                    at.limit() - psi(shoe),
                    psi(shoe),
                    psi(shoe - 15 * (1 - share))));
        }
        return new InfluxMargin(
                scenario,
                bbl(bbl),
                "required tolerance",
                psi(least),
                psi(least),
                at,
                stage(Stage.Moment.TOP_AT_WEAK_POINT, top, top + 700, emw(12, 3000)),
                path);
    }

    private static KickResult kick(
            SectionPlan plan, Kick.Scenario scenario, Tolerance tolerance, Tolerance likely, Verdict verdict) {
        boolean drilled = scenario == Kick.Scenario.DRILLED;
        double mud = plan.mud().orElseThrow().density();
        double z = ft(vertical(plan.bottomDepth() / 0.3048));
        double mudPressure = EquivalentDensity.pressure(mud, z);
        boolean asked = !(tolerance instanceof Tolerance.NotShutIn);
        return new KickResult(
                scenario,
                asked
                        ? Optional.of(new Kick(
                                scenario,
                                plan.bottomDepth(),
                                z,
                                drilled ? EquivalentDensity.pressure(mud + ppg(0.5), z) : mudPressure,
                                mudPressure,
                                drilled ? Kick.PressureBasis.MUD_PLUS_INTENSITY : Kick.PressureBasis.MUD_PRESSURE))
                        : Optional.empty(),
                tolerance,
                new SurfaceTolerance(
                        tolerance instanceof Tolerance.NotShutIn ? tolerance : new Tolerance.Unlimited(120), List.of()),
                likely,
                plan.criteria()
                        .map(c -> drilled ? c.drilledTolerance() : c.swabbedTolerance())
                        .orElse(OptionalDouble.empty()),
                verdict,
                tolerance instanceof Tolerance.Finite finite ? Optional.of(hand(finite)) : Optional.empty());
    }

    private static HandCalculation hand(Tolerance.Finite full) {
        return new HandCalculation(
                List.of(
                        new HandCalculation.Step(
                                "Pressure at the weak point at its limit",
                                "p_w = strength − margin",
                                List.of(
                                        new HandCalculation.Term(
                                                "strength", full.weakPoint().strength(), Measure.PRESSURE_ABSOLUTE),
                                        new HandCalculation.Term("margin", psi(50), Measure.PRESSURE_DIFFERENCE)),
                                full.weakPoint().limit(),
                                Measure.PRESSURE_ABSOLUTE),
                        new HandCalculation.Step(
                                "Height of gas with its top at the weak point",
                                "h = (p_w − p_f + ρ g (z_b − z_w)) / (g (ρ − ρ_g))",
                                List.of(
                                        new HandCalculation.Term("p_f", emw(12.8, 3000), Measure.PRESSURE_ABSOLUTE),
                                        new HandCalculation.Term("ρ", ppg(12.3), Measure.DENSITY),
                                        new HandCalculation.Term("ρ_g", ppg(1.9), Measure.DENSITY)),
                                ft(780),
                                Measure.LENGTH),
                        new HandCalculation.Step(
                                "Volume there",
                                "V_w = c h",
                                List.of(new HandCalculation.Term("c", 0.0239, Measure.CAPACITY)),
                                full.volume() * 1.31,
                                Measure.VOLUME),
                        new HandCalculation.Step(
                                "Brought back to bottom by Boyle's law",
                                "V = V_w p_w / p_f",
                                List.of(),
                                full.volume() * 0.94,
                                Measure.VOLUME)),
                full.volume() * 0.94,
                full.volume(),
                "The hand formula leaves out the deviation factor and the temperature of the gas; here that makes it 6 % low.");
    }

    private static List<Assumption> assumptions() {
        return List.of(
                new Assumption("circulating overbalance", "100 psi held above the kick-zone pressure", "case"),
                new Assumption("annular friction", "not counted", "default"),
                new Assumption("choke-handling allowance", "none given: zero", "default"));
    }

    private static SectionEnvelope section(
            SectionPlan plan,
            Verdict verdict,
            KickResult drilled,
            KickResult swabbed,
            PressureWindow window,
            List<DepthPoint> along,
            List<IntensityPoint> curve,
            Optional<WeakPoint> shoe,
            List<InfluxMargin> margins,
            List<Warning> warnings) {
        double mud = plan.mud().orElseThrow().density() / ppg(1);
        return new SectionEnvelope(
                plan,
                OptionalDouble.of(ft(vertical(plan.topDepth() / 0.3048))),
                OptionalDouble.of(ft(vertical(plan.bottomDepth() / 0.3048))),
                verdict,
                drilled,
                swabbed,
                window,
                along,
                curve,
                shoe.<IntensityLimit>map(s -> new IntensityLimit.Largest(bbl(25), ppg(0.42), s))
                        .orElse(new IntensityLimit.NotAssessed("the tolerance is not assessed")),
                shoe.<IntensityLimit>map(s -> new IntensityLimit.Largest(0, ppg(1.13), s))
                        .orElse(new IntensityLimit.NotAssessed("the tolerance is not assessed")),
                shoe.map(s -> maasp(s, mud, 6400)),
                shoe.map(s -> sweep(s, mud, 6400)).orElse(List.of()),
                shoe.map(s -> List.of(masp())).orElse(List.of()),
                margins,
                new AnnularLoss.NotAssessed(
                        "the section has no slow circulating rate", "section: slow circulation: rate"),
                assumptions(),
                warnings);
    }

    private static Masp masp() {
        return new Masp(
                new MaspBasis.GasToSurface(),
                OptionalDouble.of(psi(5180.4)),
                "surface",
                0,
                "pore pressure",
                OptionalDouble.of(ft(9000)),
                OptionalDouble.of(psi(6100)),
                Optional.empty(),
                List.of(
                        new MaspCheck(
                                "wellhead",
                                SurfaceLimit.Type.WELLHEAD,
                                0,
                                0,
                                OptionalDouble.of(psi(5180.4)),
                                OptionalDouble.of(psi(5000)),
                                OptionalDouble.of(psi(-180.4)),
                                Verdict.Outcome.FAILS,
                                Optional.empty()),
                        new MaspCheck(
                                "BOP stack",
                                SurfaceLimit.Type.BOP,
                                0,
                                0,
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                Verdict.Outcome.NOT_ASSESSED,
                                Optional.of("its rating is not known"))),
                new Verdict(Verdict.Outcome.FAILS, "reaches what wellhead holds; BOP stack not assessed", "wellhead"));
    }

    private static SectionEnvelope topHole(SectionPlan plan) {
        Tolerance none = new Tolerance.NotShutIn(Drilling.DIVERTER);
        Verdict verdict = new Verdict(Verdict.Outcome.NOT_SHUT_IN, "not shut in: drilled on a diverter", "");
        return section(
                plan,
                verdict,
                kick(plan, Kick.Scenario.DRILLED, none, none, verdict),
                kick(plan, Kick.Scenario.SWABBED, none, none, verdict),
                window(
                        plan,
                        8.8,
                        true,
                        new Verdict(
                                Verdict.Outcome.HOLDS, "the mud lies within the window at every exposed depth", "")),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of());
    }

    private static SectionEnvelope unlimited(SectionPlan plan) {
        WeakPoint shoe = weakPoint("20 in shoe", 1200, 12.6);
        Tolerance none = new Tolerance.Unlimited(bbl(391.27));
        Verdict verdict = new Verdict(Verdict.Outcome.HOLDS, "holds (formation only): no limit", "none");
        List<IntensityPoint> curve = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            curve.add(new IntensityPoint(ppg(0.05 * i), none));
        }
        return section(
                plan,
                verdict,
                kick(plan, Kick.Scenario.DRILLED, none, none, verdict),
                kick(plan, Kick.Scenario.SWABBED, none, none, verdict),
                window(
                        plan,
                        9.2,
                        true,
                        new Verdict(
                                Verdict.Outcome.HOLDS, "the mud lies within the window at every exposed depth", "")),
                along(plan, s -> new Tolerance.Unlimited(bbl(391 * s)), s -> new Tolerance.Unlimited(bbl(391 * s))),
                curve,
                Optional.of(shoe),
                List.of(),
                List.of());
    }

    private static SectionEnvelope holds(SectionPlan plan) {
        WeakPoint shoe = weakPoint("13 3/8 in shoe", 3000, 13.1);
        Verdict verdict = new Verdict(
                Verdict.Outcome.HOLDS, "holds (formation only)", "13 3/8 in shoe, top of the influx at the weak point");
        List<IntensityPoint> curve = new ArrayList<>();
        for (int i = 0; i <= 60; i++) {
            double intensity = 0.05 * i;
            Tolerance t = intensity < 0.2
                    ? new Tolerance.Unlimited(bbl(760))
                    : intensity > 2.2
                            ? new Tolerance.FailsOnIntensity(
                                    psi(300 * (intensity - 2.2)),
                                    shoe,
                                    stage(Stage.Moment.SHUT_IN, 8600, 8600, emw(12, 3000)))
                            : finite(30 / intensity * (1 - intensity / 2.2), shoe, Stage.Moment.TOP_AT_WEAK_POINT);
            curve.add(new IntensityPoint(ppg(intensity), t));
        }
        return section(
                plan,
                verdict,
                kick(
                        plan,
                        Kick.Scenario.DRILLED,
                        finite(58.27, shoe, Stage.Moment.TOP_AT_WEAK_POINT),
                        finite(81.0, shoe, Stage.Moment.TOP_AT_WEAK_POINT),
                        verdict),
                kick(
                        plan,
                        Kick.Scenario.SWABBED,
                        finite(141.9, shoe, Stage.Moment.TOP_AT_WEAK_POINT),
                        new Tolerance.Unlimited(bbl(760)),
                        verdict),
                window(
                        plan,
                        10.4,
                        true,
                        new Verdict(
                                Verdict.Outcome.HOLDS, "the mud lies within the window at every exposed depth", "")),
                along(
                        plan,
                        s -> s < 0.25
                                ? new Tolerance.Unlimited(bbl(500 * s))
                                : finite(58.27 + 160 * (1 - s), shoe, Stage.Moment.TOP_AT_WEAK_POINT),
                        s -> s < 0.4
                                ? new Tolerance.Unlimited(bbl(500 * s))
                                : finite(141.9 + 210 * (1 - s), shoe, Stage.Moment.TOP_AT_WEAK_POINT)),
                curve,
                Optional.of(shoe),
                List.of(
                        margin(plan, Kick.Scenario.DRILLED, 50, 46.4, shoe),
                        margin(plan, Kick.Scenario.SWABBED, 50, 310, shoe)),
                List.of(new Warning(
                        "mud",
                        "Pressure and temperature would move the equivalent density at section TD by 0.12 ppg.")));
    }

    private static SectionEnvelope fails(SectionPlan plan) {
        WeakPoint sand = weakPoint("depleted sand", 10430, 13.6);
        Verdict verdict = new Verdict(
                Verdict.Outcome.FAILS,
                "fails: drilled tolerance 14.9 bbl below the required 25 bbl",
                "depleted sand, influx part-way up, its top below the weak point");
        Verdict holds = new Verdict(Verdict.Outcome.HOLDS, "holds (formation only)", "depleted sand");
        List<IntensityPoint> curve = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            double intensity = 0.05 * i;
            Tolerance t = intensity > 0.95
                    ? new Tolerance.FailsOnIntensity(
                            psi(500 * (intensity - 0.9)),
                            sand,
                            stage(Stage.Moment.SHUT_IN, 11800, 11800, emw(13, 3300)))
                    : finite(32 * (1 - intensity / 1.0), sand, Stage.Moment.RISING);
            curve.add(new IntensityPoint(ppg(intensity), t));
        }
        return section(
                plan,
                verdict,
                kick(
                        plan,
                        Kick.Scenario.DRILLED,
                        finite(14.97, sand, Stage.Moment.RISING),
                        finite(27.4, sand, Stage.Moment.RISING),
                        verdict),
                kick(
                        plan,
                        Kick.Scenario.SWABBED,
                        finite(31.6, sand, Stage.Moment.RISING),
                        finite(49.0, sand, Stage.Moment.RISING),
                        holds),
                window(
                        plan,
                        12.3,
                        true,
                        new Verdict(
                                Verdict.Outcome.HOLDS,
                                "the mud lies within the window at every exposed depth",
                                "depleted sand")),
                along(
                        plan,
                        s -> s > 0.97
                                ? new Tolerance.FailsOnIntensity(
                                        psi(38), sand, stage(Stage.Moment.SHUT_IN, 11800, 11800, emw(13, 3300)))
                                : s < 0.35
                                        ? finite(
                                                60 - 40 * s,
                                                weakPoint("9 5/8 in shoe", 8600, 14.4),
                                                Stage.Moment.TOP_AT_WEAK_POINT)
                                        : finite(27 - 12 * s, sand, Stage.Moment.RISING),
                        s -> s > 0.3 && s < 0.36
                                ? new Tolerance.NotAssessed("the gas correlation is outside its range", "")
                                : finite(70 - 38 * s, sand, Stage.Moment.RISING)),
                curve,
                Optional.of(sand),
                List.of(
                        margin(plan, Kick.Scenario.DRILLED, 25, -84.2, sand),
                        margin(plan, Kick.Scenario.SWABBED, 25, 61, sand)),
                List.of(
                        new Warning(
                                "pore pressure",
                                "High pore pressure exceeds the mud less its trip margin at 11 350 ft."),
                        new Warning("annular friction", "The neglected loss is 72 psi at the slow rate.")));
    }

    private static SectionEnvelope notAssessed(SectionPlan plan) {
        Tolerance none = new Tolerance.NotAssessed("there is no strength below the 7 in shoe", "earth.strength");
        Verdict verdict = new Verdict(Verdict.Outcome.NOT_ASSESSED, "not assessed: no strength basis", "");
        return section(
                plan,
                verdict,
                kick(plan, Kick.Scenario.DRILLED, none, none, verdict),
                kick(plan, Kick.Scenario.SWABBED, none, none, verdict),
                window(
                        plan,
                        12.6,
                        false,
                        new Verdict(Verdict.Outcome.NOT_ASSESSED, "not assessed: no strength basis", "")),
                along(plan, s -> none, s -> none),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of());
    }
}
