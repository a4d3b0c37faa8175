package staunch.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.SlowCirculation;
import staunch.earth.EarthModel;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.TemperatureProfile;
import staunch.earth.WeakZone;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.fluid.MudBase;
import staunch.fluid.RheometerReadings;
import staunch.limit.FlowLine;
import staunch.limit.PressureEquipment;
import staunch.limit.PressureRating;
import staunch.limit.StackElement;
import staunch.units.Physics;
import staunch.units.Source;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.Datum;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.WellPath;

/** Invented sections for tests, changed by copies. Depths in m, densities in kg/m³. */
final class Wells {
    static final double SHOE = 3000;
    static final double BOTTOM = 4500;
    static final double MUD = 1560;
    static final double HOLE = 0.2159;
    static final double PIPE = 0.127;

    private WellPath path = WellPath.vertical(9000);
    private double shoe = SHOE;
    private double bottom = BOTTOM;
    private double mud = MUD;
    private double intensity = 60;
    private double[] strengthDepths = {0, 9000};
    private double[] strengthDensities = {1860, 1860};
    private double porePressureDensity = 1400;
    private PressureProfile pores;
    private OptionalDouble highPorePressureDensity = OptionalDouble.empty();
    private List<HoleInterval> hole;
    private DrillString string = new DrillString(List.of(new StringComponent("drill pipe", 10, PIPE, 0.1086)));
    private MethodOptions options = MethodOptions.DEFAULT;
    private double overbalance;
    private double bitOffBottom;
    private OptionalDouble influxDepth = OptionalDouble.empty();
    private TemperatureProfile temperature =
            TemperatureProfile.geothermal(new TemperatureProfile.Point(0, 288.15), 0.03, 9000);
    private List<WeakZone> zones = List.of();
    private GasComposition gas = GasComposition.sweet(0.65);
    private double required = 4;
    private double strengthMargin;
    private double burst = 65e6;
    private boolean swabbedCriterion = true;
    private PressureEquipment equipment = PressureEquipment.NONE;
    private List<SlowCirculation> slow = List.of();
    private OptionalDouble pumpOutput = OptionalDouble.empty();
    private Optional<RheometerReadings> rheometer = Optional.empty();
    private OperationsPlan operations = OperationsPlan.NONE;
    private Datum datum = new Datum("rotary table", 10, new Datum.OnLand(8));

    static Wells standard() {
        return new Wells();
    }

    Wells path(WellPath p) {
        path = p;
        return this;
    }

    Wells depths(double shoeDepth, double bottomDepth) {
        shoe = shoeDepth;
        bottom = bottomDepth;
        return this;
    }

    Wells mud(double density) {
        mud = density;
        return this;
    }

    Wells intensity(double density) {
        intensity = density;
        return this;
    }

    Wells pore(double density) {
        porePressureDensity = density;
        return this;
    }

    /** Pore pressure as depths and densities in turn. */
    Wells pores(double... depthsAndDensities) {
        int n = depthsAndDensities.length / 2;
        double[] depths = new double[n];
        double[] densities = new double[n];
        for (int i = 0; i < n; i++) {
            depths[i] = depthsAndDensities[2 * i];
            densities[i] = depthsAndDensities[2 * i + 1];
        }
        pores = profile(depths, densities);
        return this;
    }

    Wells highPore(double density) {
        highPorePressureDensity = OptionalDouble.of(density);
        return this;
    }

    Wells strength(double... depthsAndDensities) {
        int n = depthsAndDensities.length / 2;
        strengthDepths = new double[n];
        strengthDensities = new double[n];
        for (int i = 0; i < n; i++) {
            strengthDepths[i] = depthsAndDensities[2 * i];
            strengthDensities[i] = depthsAndDensities[2 * i + 1];
        }
        return this;
    }

    Wells hole(HoleInterval... intervals) {
        hole = List.of(intervals);
        return this;
    }

    Wells string(StringComponent... components) {
        string = new DrillString(List.of(components));
        return this;
    }

    Wells options(MethodOptions o) {
        options = o;
        return this;
    }

    Wells overbalance(double pressure) {
        overbalance = pressure;
        return this;
    }

    Wells bitOffBottom(double distance) {
        bitOffBottom = distance;
        return this;
    }

    Wells influxDepth(double measuredDepth) {
        influxDepth = OptionalDouble.of(measuredDepth);
        return this;
    }

    /** Rheometer readings and one slow circulating rate, so that friction in the annulus is known. */
    Wells flowing(double rate) {
        rheometer = Optional.of(new RheometerReadings(Map.of(600, 62.0, 300, 41.0, 6, 8.0, 3, 6.0)));
        slow = List.of(new SlowCirculation(rate, OptionalDouble.empty(), OptionalDouble.empty()));
        return this;
    }

    Wells isothermal(double kelvin) {
        temperature = TemperatureProfile.isothermal(kelvin);
        return this;
    }

    Wells temperature(TemperatureProfile profile) {
        temperature = profile;
        return this;
    }

    Wells zone(String name, double top, double base, double density) {
        List<WeakZone> more = new ArrayList<>(zones);
        more.add(new WeakZone(name, top, base, density, new Source("invented", "")));
        zones = more;
        return this;
    }

    Wells required(double volume) {
        required = volume;
        return this;
    }

    Wells noSwabbedCriterion() {
        swabbedCriterion = false;
        return this;
    }

    Wells burst(double rating) {
        burst = rating;
        return this;
    }

    Wells equipment(PressureEquipment e) {
        equipment = e;
        return this;
    }

    Wells datum(Datum d) {
        datum = d;
        return this;
    }

    Wells chokeLineFriction(double loss) {
        slow = List.of(new SlowCirculation(0.01, OptionalDouble.empty(), OptionalDouble.of(loss)));
        return this;
    }

    /** A pump of 12 l a stroke that was run slowly at 8 l/s against 4 MPa; a mud whose readings were taken. */
    Wells ready(OperationsPlan plan) {
        slow = List.of(new SlowCirculation(0.008, OptionalDouble.of(4e6), OptionalDouble.empty()));
        pumpOutput = OptionalDouble.of(0.012);
        rheometer = Optional.of(new RheometerReadings(Map.of(600, 68.0, 300, 42.0, 6, 8.0, 3, 7.0)));
        operations = plan;
        return this;
    }

    /** A stack at surface, everything rated alike. */
    static PressureEquipment rated(double pressure) {
        return rated(pressure, pressure, 0, 0.0762);
    }

    /** Stack and choke line of one rating, the manifold of another. */
    static PressureEquipment rated(double stack, double manifold, double lineLength, double lineDiameter) {
        PressureRating rating = new PressureRating("stack", stack, Optional.empty());
        return new PressureEquipment(
                Optional.of(rating),
                Optional.of(new PressureRating("manifold", manifold, Optional.empty())),
                Optional.of(new FlowLine(
                        "choke line", lineLength, lineDiameter, Optional.of(rating), OptionalDouble.empty())),
                Optional.empty(),
                Optional.empty(),
                List.of(new StackElement(
                        "blind shear ram",
                        StackElement.Type.BLIND_SHEAR_RAM,
                        Optional.of(rating),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty())));
    }

    double heldAbove() {
        return overbalance;
    }

    TemperatureProfile temperature() {
        return temperature;
    }

    static double pressure(double density, double depth) {
        return Physics.ATMOSPHERE + density * Physics.GRAVITY * depth;
    }

    static PressureProfile profile(double[] depths, double[] densities) {
        double[] p = new double[depths.length];
        for (int i = 0; i < p.length; i++) {
            p[i] = pressure(densities[i], depths[i]);
        }
        return PressureProfile.of(depths, p);
    }

    private static PressureProfile ofDensity(double density) {
        return profile(new double[] {0, 9000}, new double[] {density, density});
    }

    SectionInput input() {
        CasingString casing = new CasingString(
                "9 5/8 in casing",
                List.of(new CasingInterval(
                        datum.stackDepth(),
                        shoe,
                        0.24448,
                        0.22049,
                        Optional.of("P110"),
                        OptionalDouble.of(758e6),
                        OptionalDouble.of(burst),
                        OptionalDouble.empty(),
                        0)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(0.8),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        List<HoleInterval> open = hole == null ? List.of(new HoleInterval(shoe, bottom, HOLE)) : hole;
        Criteria criteria = new Criteria(
                "invented rules",
                "tests",
                new Source("invented", ""),
                OptionalDouble.of(required),
                swabbedCriterion ? OptionalDouble.of(required) : OptionalDouble.empty(),
                OptionalDouble.of(intensity),
                OptionalDouble.of(strengthMargin),
                OptionalDouble.of(0),
                OptionalDouble.empty());
        SectionPlan plan = new SectionPlan(
                "8 1/2 in",
                Drilling.SHUT_IN,
                open,
                HOLE,
                Optional.of(new Mud("mud", mud, MudBase.WATER, rheometer, Optional.empty())),
                Optional.of(string),
                bitOffBottom,
                influxDepth,
                Optional.of(gas),
                slow,
                pumpOutput,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(overbalance),
                OptionalDouble.of(0),
                Optional.of(criteria),
                operations);
        EarthModel earth = new EarthModel(
                Optional.of(new Range(
                        pores == null ? ofDensity(porePressureDensity) : pores,
                        Optional.empty(),
                        highPorePressureDensity.isPresent()
                                ? Optional.of(ofDensity(highPorePressureDensity.getAsDouble()))
                                : Optional.empty())),
                Optional.of(Range.of(profile(strengthDepths, strengthDensities))),
                List.of(),
                zones,
                Optional.of(temperature),
                List.of());
        return new SectionInput(datum, path, earth, List.of(casing), equipment, plan, options);
    }

    Model model() {
        return Model.of(input(), options.estimates());
    }

    /** Tolerance of the drilled kick at section TD. */
    Tolerance drilled() {
        Model model = model();
        model.needs(Kick.Scenario.DRILLED);
        return model.tolerance(model.kick(Kick.Scenario.DRILLED, bottom), model.hole(bottom));
    }

    Tolerance swabbed() {
        Model model = model();
        model.needs(Kick.Scenario.SWABBED);
        return model.tolerance(model.kick(Kick.Scenario.SWABBED, bottom), model.hole(bottom));
    }

    SectionEnvelope evaluate() {
        return SectionEvaluator.evaluate(input(), n -> {});
    }
}
