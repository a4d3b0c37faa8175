package staunch.control;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import staunch.fluid.FlowModel;
import staunch.fluid.RheometerReadings;
import staunch.influx.FlowChannel;
import staunch.influx.MudWeightRule;
import staunch.reference.ReferenceRow;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;
import staunch.units.Quantity;

/** Worked examples of course notes and handbooks, with the trade constant that they use. */
class ControlReferenceTest {
    private static final HydrostaticConstant TRADE = HydrostaticConstant.TRADE_0_052;

    private static final double FOOT = Quantity.of(1, "ft").si(Measure.LENGTH);
    private static final double INCH = Quantity.of(1, "in").si(Measure.DIAMETER);
    private static final double PSI = Quantity.of(1, "psi").si(Measure.PRESSURE_DIFFERENCE);
    private static final double BARREL = Quantity.of(1, "bbl").si(Measure.VOLUME);
    private static final double PPG = Quantity.of(1, "ppg").si(Measure.DENSITY);
    private static final double LBF_PER_100_FT2 = Quantity.of(1, "lbf/100ft2").si(Measure.STRESS);

    /** Listed with their reasons among the values that are not asserted. */
    private static final Set<String> NOT_ASSERTED = Set.of("D03-08", "D03-09", "D03-17", "D08-03", "D11-08", "D12-09");

    /** Values in the unit of the row. */
    private static final Map<String, ToDoubleFunction<ReferenceRow>> EXAMPLES = new TreeMap<>();

    private static void example(String id, Measure measure, ToDoubleFunction<ReferenceRow> si) {
        EXAMPLES.put(id, r -> r.fromSi(si.applyAsDouble(r), measure));
    }

    static {
        example("D03-01", Measure.PRESSURE_GAUGE, r -> gauge(r, "sidpp") + hydrostatic(r));
        for (String id : List.of("D03-02", "D03-05", "D03-11")) {
            example(
                    id,
                    Measure.EQUIVALENT_DENSITY,
                    r -> HandFormulas.equivalentDensityUnder(
                            gauge(r, "sidpp"), density(r, "mw"), r.si("tvd", Measure.DEPTH), TRADE));
        }
        for (String id : List.of("D03-03", "D03-04")) {
            example(id, Measure.DENSITY, r -> KillFormulas.roundedUp(density(r, "kmw_raw"), 0.1 * PPG));
        }
        example(
                "D03-06",
                Measure.PRESSURE_GAUGE,
                r -> KillFormulas.initialCirculatingPressure(gauge(r, "scr_pressure"), gauge(r, "sidpp")));
        example("D03-07", Measure.PRESSURE_GAUGE, r -> last(r, "scr_pressure", "mw", "kmw_unrounded"));
        example("D03-10", Measure.PRESSURE_GAUGE, r -> last(r, "loss", "mean_string_mw", "kmw"));
        example(
                "D03-12",
                Measure.PRESSURE_GAUGE,
                r -> KillFormulas.initialCirculatingPressure(gauge(r, "kill_rate_pressure"), gauge(r, "sidpp")));
        example("D03-13", Measure.PRESSURE_GAUGE, r -> last(r, "kill_rate_pressure", "mw", "kmw"));
        example("D03-14", Measure.VOLUME, r -> volume(r, "dp") + volume(r, "hwdp") + volume(r, "dc"));
        EXAMPLES.put("D03-15", r -> r.number("volume") / r.number("pump"));
        example("D03-16", Measure.VOLUME, r -> volume(r, "dc_oh") + volume(r, "dp_oh") + volume(r, "dp_csg"));
        example("D06-01", Measure.PRESSURE_GAUGE, r -> kick(r).greatestSurfacePressure());
        example("D06-02", Measure.VOLUME, r -> kick(r).greatestGain());
        example(
                "D06-03",
                Measure.PRESSURE_DIFFERENCE,
                r -> MigrationFormulas.pressureOfVolume(
                        density(r, "mw"), r.si("gain", Measure.VOLUME), capacity(r), TRADE));
        example(
                "D06-04",
                Measure.PRESSURE_DIFFERENCE,
                r -> MigrationFormulas.pressureOfVolume(
                        TRADE.density(r.si("mud", Measure.PRESSURE_GRADIENT)),
                        r.si("gain", Measure.VOLUME),
                        capacity(r),
                        TRADE));
        example(
                "D06-05",
                Measure.PRESSURE_DIFFERENCE,
                r -> KillFormulas.lossToGasCutMud(density(r, "uncut"), density(r, "cut")));

        example(
                "D07-01",
                Measure.SPEED,
                r -> MigrationFormulas.apparentRiseRate(
                        new MigrationFormulas.PressureRise(gauge(r, "p2") - gauge(r, "p1"), r.si("dt", Measure.TIME)),
                        density(r, "mw"),
                        TRADE));
        EXAMPLES.put("D07-02", r -> new MudWeightRule().riseRate(density(r, "mw")) / FOOT);
        example("D07-03", Measure.SPEED, r -> new MudWeightRule().riseRate(density(r, "mw")));
        example(
                "D07-04",
                Measure.VOLUME,
                r -> HandFormulas.boyleVolume(r.si("v1", Measure.VOLUME), absolute(r, "p1"), absolute(r, "p2")));
        example(
                "D07-05",
                Measure.VOLUME,
                r -> MigrationFormulas.volumeOfPressure(
                        gauge(r, "working_pressure"), density(r, "mw"), capacity(r), TRADE));
        EXAMPLES.put(
                "D07-06", r -> MigrationFormulas.pressureOfVolume(density(r, "mw"), BARREL, capacity(r), TRADE) / PSI);
        example(
                "D07-07",
                Measure.PRESSURE_DIFFERENCE,
                r -> MigrationFormulas.pressureOfVolume(
                        density(r, "kmw"), r.si("lubricated", Measure.VOLUME), capacity(r), TRADE));
        EXAMPLES.put(
                "D07-08",
                r -> new MigrationFormulas.Compliance(
                                r.si("kick", Measure.VOLUME),
                                r.number("kick_compressibility") * 1e-6,
                                r.si("mud_and_hole", Measure.VOLUME),
                                r.number("compressibility") * 1e-6)
                        .shareOfRigidRise());
        example("D07-09", Measure.VOLUME, r -> state(r, "1").volumeIn(state(r, "2"), r.si("v1", Measure.VOLUME)));

        example(
                "D08-01",
                Measure.PRESSURE_GAUGE,
                r -> SubseaFormulas.casingPressureOnChoke(gauge(r, "sicp"), gauge(r, "clpl")));
        example(
                "D08-02",
                Measure.PRESSURE_DIFFERENCE,
                r -> SubseaFormulas.stepOfStartUp(gauge(r, "clpl"), (int) r.number("steps")));
        example(
                "D08-04",
                Measure.PRESSURE_DIFFERENCE,
                r -> SubseaFormulas.lossAfterMudChange(gauge(r, "clpl"), density(r, "mw1"), density(r, "mw2")));
        example("D08-05", Measure.PRESSURE_DIFFERENCE, r -> sea(r).lossOnDisconnect(density(r, "mw"), TRADE));
        example(
                "D08-06",
                Measure.DENSITY,
                r -> sea(r).heaviestMud(
                                Quantity.parse(r.text("conductor").replace(" RKB", ""))
                                        .si(Measure.DEPTH),
                                r.si("fracture", Measure.PRESSURE_GRADIENT),
                                TRADE));

        example("D11-01", Measure.VOLUME, r -> pipe(r).volume(stands(r), false));
        example("D11-03", Measure.VOLUME, r -> pipe(r).volume(stands(r), true));
        for (String id : List.of("D11-02", "D11-04")) {
            example(
                    id,
                    Measure.PRESSURE_DIFFERENCE,
                    r -> pipe(r).pressureLost(
                                    density(r, "mw"),
                                    r.si("displaced", Measure.VOLUME),
                                    r.has("pipe_capacity"),
                                    TRADE));
        }
        example(
                "D11-05",
                Measure.DENSITY_DIFFERENCE,
                r -> TripFormulas.tripMarginForYieldPoint(
                        r.number("yp") * LBF_PER_100_FT2,
                        r.si("hole", Measure.DIAMETER) - r.si("pipe", Measure.DIAMETER),
                        TRADE));
        example(
                "D11-06",
                Measure.LENGTH,
                r -> pipe(r).lengthToBalance(gauge(r, "overbalance"), density(r, "mw"), false, TRADE));
        EXAMPLES.put(
                "D11-07",
                r -> FlowModel.PowerLaw.from(
                                new RheometerReadings(Map.of(600, r.number("theta600"), 300, r.number("theta300"))))
                        .flowIndex());
        example(
                "D11-09",
                Measure.SPEED,
                r -> movement(r, PipeMovement.End.PLUGGED).meanVelocity(channel(r, "hole", "pipe"), 0));
        EXAMPLES.put("D11-10", r -> PipeMovement.PEAK * r.number("velocity"));
        example("D11-11", Measure.PRESSURE_DIFFERENCE, r -> {
            FlowChannel annulus = channel(r, "hole", "pipe");
            FlowModel mud = new FlowModel.PowerLaw(r.number("K") * LBF_PER_100_FT2, r.number("n"));
            double stress = Friction.wallStress(annulus, mud, r.si("vm", Measure.SPEED));
            return 4 * stress / annulus.hydraulicDiameter() * r.si("length", Measure.LENGTH);
        });
        example(
                "D11-12",
                Measure.SPEED,
                r -> movement(r, PipeMovement.End.OPEN)
                        .meanVelocity(channel(r, "hole", "od"), r.si("id", Measure.DIAMETER)));
        example(
                "D11-13",
                Measure.DENSITY_DIFFERENCE,
                r -> TripFormulas.tripMargin(
                        gauge(r, "margin_needed"), gauge(r, "margin_present"), r.si("tvd", Measure.DEPTH), TRADE));

        example("D12-01", Measure.SPEED, r -> velocity(r, "pipe"));
        EXAMPLES.put("D12-03", r -> velocity(r, "pipe") / FOOT);
        EXAMPLES.put("D12-06", r -> velocity(r, "collar") / FOOT);
        example("D12-02", Measure.PRESSURE_DIFFERENCE, r -> simpleLoss(r, velocityBySource(r)));
        example("D12-10", Measure.PRESSURE_DIFFERENCE, r -> simpleLoss(r, r.si("velocity", Measure.SPEED)));
        EXAMPLES.put("D12-04", r -> reynolds(r, channel(r, "hole", "pipe")));
        EXAMPLES.put("D12-07", r -> reynolds(r, channel(r, "hole", "collar")));
        example("D12-05", Measure.PRESSURE_DIFFERENCE, r -> blasiusLoss(r, channel(r, "hole", "pipe")));
        example("D12-08", Measure.PRESSURE_DIFFERENCE, r -> blasiusLoss(r, channel(r, "hole", "collar")));
    }

    @TestFactory
    Stream<DynamicTest> workedExamples() {
        return ReferenceTable.read("control/well-control-cases.csv")
                .tests(
                        r -> !NOT_ASSERTED.contains(r.id()),
                        r -> r.check(EXAMPLES.get(r.id()).applyAsDouble(r)));
    }

    @TestFactory
    Stream<DynamicTest> mudGradient() {
        return ReferenceTable.read("control/slip-velocity.csv")
                .tests(
                        r -> r.quantity().equals("mud gradient"),
                        r -> r.checkSi(TRADE.gradient(density(r, "mud weight")), Measure.PRESSURE_GRADIENT));
    }

    private static double gauge(ReferenceRow row, String input) {
        return row.si(input, Measure.PRESSURE_GAUGE);
    }

    private static double absolute(ReferenceRow row, String input) {
        return row.si(input, Measure.PRESSURE_ABSOLUTE);
    }

    private static double density(ReferenceRow row, String input) {
        return row.si(input, Measure.DENSITY);
    }

    private static double capacity(ReferenceRow row) {
        return row.si("capacity", Measure.CAPACITY);
    }

    private static double hydrostatic(ReferenceRow row) {
        return HandFormulas.hydrostaticPressure(density(row, "mw"), row.si("tvd", Measure.DEPTH), TRADE);
    }

    private static double last(ReferenceRow row, String pressure, String mud, String kill) {
        return KillFormulas.finalCirculatingPressure(gauge(row, pressure), density(row, mud), density(row, kill));
    }

    /** "0.01776 bbl/ft,9925 ft" as a volume. */
    private static double volume(ReferenceRow row, String input) {
        String[] parts = row.text(input).split(",");
        return new CapacityInterval(
                        Quantity.parse(parts[0]).si(Measure.CAPACITY),
                        Quantity.parse(parts[1]).si(Measure.LENGTH))
                .volume();
    }

    private static KillFormulas.GasKick kick(ReferenceRow row) {
        return new KillFormulas.GasKick(
                gauge(row, "pf"), row.si("gain", Measure.VOLUME), density(row, "kmw"), capacity(row));
    }

    private static MigrationFormulas.GasState state(ReferenceRow row, String number) {
        return new MigrationFormulas.GasState(
                absolute(row, "p" + number), row.si("t" + number, Measure.TEMPERATURE), row.number("z" + number));
    }

    private static SubseaFormulas.Sea sea(ReferenceRow row) {
        return new SubseaFormulas.Sea(
                row.si("air_gap", Measure.LENGTH),
                row.si("water", Measure.LENGTH),
                row.si("seawater", Measure.PRESSURE_GRADIENT));
    }

    private static TripFormulas.PulledPipe pipe(ReferenceRow row) {
        return new TripFormulas.PulledPipe(
                row.si("displacement", Measure.CAPACITY),
                row.has("pipe_capacity") ? row.si("pipe_capacity", Measure.CAPACITY) : 0,
                row.has("casing") ? row.si("casing", Measure.CAPACITY) : 1);
    }

    private static double stands(ReferenceRow row) {
        return row.number("stands") * row.si("stand", Measure.LENGTH);
    }

    private static PipeMovement movement(ReferenceRow row, PipeMovement.End end) {
        return PipeMovement.of(row.si("pipe_speed", Measure.SPEED), PipeMovement.Direction.RUNNING_IN, end);
    }

    private static FlowChannel channel(ReferenceRow row, String bore, String pipe) {
        return new FlowChannel(row.number(bore) * INCH, row.number(pipe) * INCH);
    }

    private static double velocity(ReferenceRow row, String pipe) {
        return channel(row, "hole", pipe).velocity(row.si("rate", Measure.FLOW_RATE));
    }

    /** The source rounds the factor of its field units, 24.51, to 24.5 and carries the velocity on unrounded. */
    private static double velocityBySource(ReferenceRow row) {
        return velocity(row, "pipe") * 24.5 / (231.0 / 12 * 4 / Math.PI);
    }

    private static double simpleLoss(ReferenceRow row, double velocity) {
        return FrictionFormulas.simpleTurbulentGradient(channel(row, "hole", "pipe"), density(row, "mw"), velocity)
                * row.si("length", Measure.LENGTH);
    }

    private static double reynolds(ReferenceRow row, FlowChannel annulus) {
        FlowModel.PowerLaw mud = new FlowModel.PowerLaw(row.number("K") * 1e-3, row.number("n"));
        return FrictionFormulas.equivalentPipeReynoldsNumber(
                annulus, mud, density(row, "density"), row.number("v") * FOOT);
    }

    private static double blasiusLoss(ReferenceRow row, FlowChannel annulus) {
        return FrictionFormulas.blasiusGradient(
                        annulus, row.number("re"), density(row, "density"), row.number("v") * FOOT)
                * row.si("length", Measure.LENGTH);
    }
}
