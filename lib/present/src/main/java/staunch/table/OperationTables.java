package staunch.table;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_EVEN;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.Bullheading;
import staunch.control.CirculationPoint;
import staunch.control.ClosestLimit;
import staunch.control.FrictionCurve;
import staunch.control.KillSheet;
import staunch.control.KillSheetInput;
import staunch.control.LubricateAndBleed;
import staunch.control.MigrationPoint;
import staunch.control.PressureSchedule;
import staunch.control.SlowCirculation;
import staunch.control.VolumetricMethod;
import staunch.envelope.BullheadingOutcome;
import staunch.envelope.CirculationOutcome;
import staunch.envelope.HandCalculation;
import staunch.envelope.HandPressure;
import staunch.envelope.KickOperations.WatchedDepth;
import staunch.envelope.MigrationOutcome;
import staunch.envelope.MudFlowOutcome;
import staunch.envelope.NotAssessed;
import staunch.envelope.RiserOutcome;
import staunch.envelope.SectionOperations;
import staunch.envelope.SurfaceGasOutcome;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.UnitSystem;

/**
 * Operations on a shut-in well as tables in chosen units: circulating out, waiting, the volumetric method, lubricate and
 * bleed, bullheading, the kill sheet. Loads are rounded up, limits, margins and waiting times down.
 */
public final class OperationTables {
    private OperationTables() {}

    /** What comes of each kick, question by question: one column for the drilled kick, one for the swabbed. */
    public static ResultTable answers(SectionOperations operations, UnitSystem units) {
        List<OperationWords.Answer> drilled = OperationWords.answers(operations.drilled(), units);
        List<OperationWords.Answer> swabbed = OperationWords.answers(operations.swabbed(), units);
        record Row(String question, String drilled, String swabbed) {}
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < drilled.size(); i++) {
            rows.add(new Row(
                    drilled.get(i).question(),
                    drilled.get(i).words(),
                    swabbed.get(i).words()));
        }
        if (operations.riser() instanceof RiserOutcome.Computed riser) {
            String words = OperationWords.riser(riser, units);
            rows.add(new Row("Without the riser", words, words));
        }
        String flow = OperationWords.mudFlow(operations.mudFlow(), units);
        rows.add(new Row("Pumped slowly and tripped", flow, flow));
        return new Rows<>(rows, units)
                .text("Question", Row::question)
                .text("Drilled kick", Row::drilled)
                .text("Swabbed kick", Row::swabbed)
                .table("After an influx", "Loads rounded up; limits, margins and waiting times down.");
    }

    /** What the operations of a section rest on. */
    public static ResultTable assumptions(SectionOperations operations, UnitSystem units) {
        return Tables.assumptions("Assumptions of the operations", operations.assumptions(), units);
    }

    /**
     * A circulation from its first stroke to its last.
     *
     * @param circulation to show
     * @param watched the watched depths, in their order
     * @param units to show
     */
    public static ResultTable circulation(
            CirculationOutcome.Computed circulation, List<WatchedDepth> watched, UnitSystem units) {
        Rows<CirculationPoint> rows = new Rows<>(circulation.schedule().points(), units.with(Measure.NUMBER, "1", 0))
                .text("Phase", p -> p.phase().title())
                .number("Pumped", Measure.VOLUME, HALF_EVEN, CirculationPoint::pumped)
                .number("Time", Measure.TIME, HALF_EVEN, CirculationPoint::time)
                .optional("Strokes", Measure.NUMBER, HALF_EVEN, CirculationPoint::strokes)
                .optional("Top of gas MD", Measure.DEPTH, HALF_EVEN, CirculationPoint::gasTop)
                .optional("Lower end of gas MD", Measure.DEPTH, HALF_EVEN, CirculationPoint::gasBottom)
                .number("Choke", Measure.PRESSURE_GAUGE, CEILING, CirculationPoint::chokePressure);
        for (int i = 0; i < watched.size(); i++) {
            int k = i;
            rows.number(watched.get(i).name(), Measure.PRESSURE_ABSOLUTE, CEILING, p -> p.watched()[k]);
        }
        return rows.number("Bottom hole", Measure.PRESSURE_ABSOLUTE, HALF_EVEN, CirculationPoint::bottomHolePressure)
                .number("Pit gain", Measure.VOLUME, CEILING, CirculationPoint::gasVolume)
                .number("Gas rate", Measure.GAS_RATE, CEILING, CirculationPoint::gasRate)
                .optional(
                        "Least margin",
                        Measure.PRESSURE_DIFFERENCE,
                        FLOOR,
                        p -> value(p.closest().map(ClosestLimit::margin)))
                .optionalText("Closest limit", p -> p.closest().map(ClosestLimit::name))
                .table(
                        "Circulating out, " + OperationWords.method(circulation.method()),
                        "Volume, time and strokes count from the start of each circulation. Pressures, gain and gas rate"
                                + " rounded up, margins down.");
    }

    /** The highest pressures of a circulation, with where the gas is then. */
    public static ResultTable circulationPeaks(CirculationOutcome.Computed circulation, UnitSystem units) {
        return circulationPeaks(List.of(circulation), units);
    }

    /** The highest pressures of each circulation, with where the gas is then. */
    public static ResultTable circulationPeaks(List<CirculationOutcome.Computed> circulations, UnitSystem units) {
        record Row(String method, String place, double absolute, CirculationPoint at) {}
        List<Row> rows = new ArrayList<>();
        for (CirculationOutcome.Computed circulation : circulations) {
            String method = OperationWords.method(circulation.method());
            CirculationPoint choke = circulation.schedule().greatestChokePressure();
            rows.add(new Row(method, "choke", choke.chokePressure() + Physics.ATMOSPHERE, choke));
            circulation.peaks().forEach(p -> rows.add(new Row(method, p.where().name(), p.pressure(), p.moment())));
        }
        return new Rows<>(rows, units)
                .text("Method", Row::method)
                .text("Place", Row::place)
                .number("Highest pressure", Measure.PRESSURE_GAUGE, CEILING, r -> r.absolute() - Physics.ATMOSPHERE)
                .number("Highest pressure", Measure.PRESSURE_ABSOLUTE, CEILING, Row::absolute)
                .text("When", r -> r.at().phase().title())
                .number("Pumped", Measure.VOLUME, HALF_EVEN, r -> r.at().pumped())
                .optional("Top of gas MD", Measure.DEPTH, HALF_EVEN, r -> r.at().gasTop())
                .table("Highest pressures", "Rounded up, at the gauge and absolute.");
    }

    /** When each limit is first reached at each rate; limits that no rate reaches are left out. */
    public static ResultTable timeToLimit(MigrationOutcome.Computed migration, UnitSystem units) {
        record Row(String rate, MigrationOutcome.FirstReached limit, MigrationPoint moment) {}
        List<Row> rows = new ArrayList<>();
        for (MigrationOutcome.Course course : migration.courses()) {
            course.limits().stream()
                    .filter(l -> l.moment().isPresent())
                    .map(l -> new Row(course.rate(units), l, l.moment().get()))
                    .sorted(Comparator.comparingDouble(r -> r.moment().time()))
                    .forEach(rows::add);
        }
        return new Rows<>(rows, units.inHours())
                .text("Rise of gas", Row::rate)
                .text("Limit", r -> r.limit().name())
                .number(
                        "Reached at MD",
                        Measure.DEPTH,
                        HALF_EVEN,
                        r -> r.limit().measuredDepth())
                .number("First reached", Measure.TIME, FLOOR, r -> r.moment().time())
                .number(
                        "Surface pressure then",
                        Measure.PRESSURE_GAUGE,
                        FLOOR,
                        r -> r.moment().surfacePressure())
                .number(
                        "Top of gas MD then",
                        Measure.DEPTH,
                        HALF_EVEN,
                        r -> r.moment().upperEnd())
                .table(
                        "Time to each limit",
                        "Since shut-in, rounded down; limits that are never reached are left out.");
    }

    /**
     * A rise in the closed well at one rate, point by point.
     *
     * @param course to show
     * @param watched the watched depths, in their order
     * @param units to show
     */
    public static ResultTable migration(MigrationOutcome.Course course, List<WatchedDepth> watched, UnitSystem units) {
        Rows<MigrationPoint> rows = new Rows<>(course.points(), units.inHours())
                .number("Time", Measure.TIME, HALF_EVEN, MigrationPoint::time)
                .number("Top of gas MD", Measure.DEPTH, HALF_EVEN, MigrationPoint::upperEnd)
                .number("Lower end of gas MD", Measure.DEPTH, HALF_EVEN, MigrationPoint::lowerEnd)
                .number("Surface", Measure.PRESSURE_GAUGE, CEILING, MigrationPoint::surfacePressure);
        for (int i = 0; i < watched.size(); i++) {
            int k = i;
            rows.number(watched.get(i).name(), Measure.PRESSURE_ABSOLUTE, CEILING, p -> p.watched(k));
        }
        return rows.number("Bottom hole", Measure.PRESSURE_ABSOLUTE, CEILING, MigrationPoint::bottomHolePressure)
                .number("Gas volume", Measure.VOLUME, HALF_EVEN, MigrationPoint::gasVolume)
                .table(
                        "Gas rising in the closed well, " + course.rate(units),
                        "Pressures rounded up; it ends because "
                                + course.ending().title() + ".");
    }

    /** What to wait for and what to bleed, step by step. */
    public static ResultTable volumetric(VolumetricMethod.Table table, UnitSystem units) {
        return new Rows<>(table.steps(), units.inHours())
                .text("Step", s -> s.action().title())
                .number(
                        "Casing pressure after",
                        Measure.PRESSURE_GAUGE,
                        HALF_EVEN,
                        s -> s.end().surfacePressure())
                .number("Bled", Measure.VOLUME, HALF_EVEN, VolumetricMethod.Step::bled)
                .number("Bled in all", Measure.VOLUME, HALF_EVEN, VolumetricMethod.Step::totalBled)
                .number("Time", Measure.TIME, HALF_EVEN, s -> s.end().time())
                .number(
                        "Bottom hole",
                        Measure.PRESSURE_ABSOLUTE,
                        HALF_EVEN,
                        s -> s.end().bottomHolePressure())
                .number("Top of gas MD", Measure.DEPTH, HALF_EVEN, s -> s.end().upperEnd())
                .number("Gas volume", Measure.VOLUME, HALF_EVEN, s -> s.end().gasVolume())
                .table("Volumetric method", "It ends because " + table.ending().title() + ".");
    }

    /** What to pump and what to bleed down to, step by step. */
    public static ResultTable lubricateAndBleed(LubricateAndBleed.Table table, UnitSystem units) {
        return new Rows<>(table.steps(), units)
                .number("Pump", Measure.VOLUME, HALF_EVEN, LubricateAndBleed.Step::pumped)
                .number("Pumped in all", Measure.VOLUME, HALF_EVEN, LubricateAndBleed.Step::totalPumped)
                .number(
                        "Casing pressure rises to",
                        Measure.PRESSURE_GAUGE,
                        CEILING,
                        LubricateAndBleed.Step::afterPumping)
                .number("Bottom hole then", Measure.PRESSURE_ABSOLUTE, CEILING, LubricateAndBleed.Step::bottomHolePeak)
                .number("Bleed gas down to", Measure.PRESSURE_GAUGE, HALF_EVEN, LubricateAndBleed.Step::afterBleeding)
                .number("Gas left", Measure.VOLUME, HALF_EVEN, LubricateAndBleed.Step::gasVolume)
                .number("Gas left, mass", Measure.MASS, HALF_EVEN, LubricateAndBleed.Step::gasMass)
                .table(
                        "Lubricate and bleed",
                        "Starts with " + units.text(table.startPressure(), Measure.PRESSURE_GAUGE)
                                + " on the casing, to which gas is bled first; it ends because "
                                + table.ending().title() + ".");
    }

    /** Gas at the choke and in the separator. */
    public static ResultTable gasAtSurface(SurfaceGasOutcome.Computed gas, UnitSystem units) {
        List<String[]> rows = new ArrayList<>();
        row(rows, "Greatest gas rate", units.text(gas.rate(), Measure.GAS_RATE, CEILING));
        row(rows, "By", OperationWords.method(gas.method()));
        row(rows, "After", units.text(gas.moment().pumped(), Measure.VOLUME) + " pumped");
        if (gas.separator() instanceof SurfaceGasOutcome.Separator separator) {
            row(rows, "Pressure in the separator", gauge(separator.pressure(), units, CEILING));
            row(rows, "The same by the hand formula", gauge(separator.handPressure(), units, CEILING));
            row(
                    rows,
                    "Mud leg of " + units.text(separator.legDensity(), Measure.DENSITY),
                    units.text(separator.mudLeg(), Measure.PRESSURE_DIFFERENCE, FLOOR));
            row(
                    rows,
                    "Left to blow-through",
                    units.text(separator.blowThroughMargin(), Measure.PRESSURE_DIFFERENCE, FLOOR));
            separator
                    .capacity()
                    .ifPresent(
                            c -> row(rows, "Capacity that the maker states", units.text(c, Measure.GAS_RATE, FLOOR)));
        } else {
            row(rows, "Separator", ((NotAssessed) gas.separator()).summary(units));
        }
        return pairs(rows, units, "Gas at surface", "Loads rounded up, what holds them down.");
    }

    /** What is lost with the riser of a subsea well, and what lines of other fluid do. */
    public static ResultTable riser(RiserOutcome.Computed riser, UnitSystem units) {
        List<String[]> rows = new ArrayList<>();
        row(rows, "Pressure lost below the seabed", difference(riser.lost(), units));
        row(
                rows,
                "Least overbalance left",
                units.text(riser.worst().margin(), Measure.PRESSURE_DIFFERENCE, FLOOR) + " at "
                        + units.text(riser.worst().verticalDepth(), Measure.DEPTH) + " TVD");
        row(rows, "Mud that would keep it", units.text(riser.needed(), Measure.DENSITY, CEILING));
        row(rows, "Mud in the hole", units.text(riser.mudDensity(), Measure.DENSITY));
        row(rows, "Riser margin missing", units.text(riser.missing(), Measure.DENSITY_DIFFERENCE, CEILING));
        row(rows, "Mud in the riser falls to", units.text(riser.levelInRiser(), Measure.DEPTH) + " TVD");
        row(rows, "Collapse load of the emptied riser", difference(riser.collapse(), units));
        riser.lines().ifPresent(l -> {
            row(rows, l.heavier().name() + " over " + l.lighter().name(), difference(l.imbalance(), units));
            row(rows, "Level falls, once connected, by", units.text(l.fall(), Measure.LENGTH));
            row(rows, "Volume that goes over", units.text(l.overflow(), Measure.VOLUME));
        });
        return pairs(rows, units, "Without the riser", "Loads rounded up, what is left down.");
    }

    /** Pressure at the top of the gas by the classical quadratic, beside the schedule's. */
    public static ResultTable byHand(HandPressure hand, UnitSystem units) {
        return new Rows<>(hand.steps(), units)
                .text("Step", HandCalculation.Step::name)
                .text("Formula", HandCalculation.Step::formula)
                .text("With numbers", s -> Tables.substituted(s, units))
                .text("Result", s -> Tables.shown(s.result(), s.measure(), units))
                .table(
                        "Top of gas by hand, " + hand.where(),
                        "By hand " + units.text(hand.pressure(), Measure.PRESSURE_ABSOLUTE) + ", schedule "
                                + units.text(hand.schedulePressure(), Measure.PRESSURE_ABSOLUTE) + ". "
                                + hand.difference());
    }

    /** Loads of bullheading against their limits, the least margin first. */
    public static ResultTable bullheading(BullheadingOutcome.Computed outcome, UnitSystem units) {
        List<Bullheading.Load> loads = new ArrayList<>(outcome.loads());
        loads.add(outcome.pump());
        loads.sort((a, b) -> Double.compare(a.margin(), b.margin()));
        return new Rows<>(loads, units)
                .text("Limit", l -> l.limit().name())
                .number("Depth MD", Measure.DEPTH, HALF_EVEN, l -> l.limit().measuredDepth())
                .number("Highest load", Measure.PRESSURE_ABSOLUTE, CEILING, Bullheading.Load::load)
                .number(
                        "Limit there",
                        Measure.PRESSURE_ABSOLUTE,
                        FLOOR,
                        l -> l.limit().pressure())
                .number("Margin", Measure.PRESSURE_DIFFERENCE, FLOOR, Bullheading.Load::margin)
                .number("Pumped", Measure.VOLUME, HALF_EVEN, Bullheading.Load::pumped)
                .text("Outcome", l -> l.margin() > 0 ? "holds" : "does not hold")
                .table(
                        "Bullheading: loads",
                        "Loads rounded up, limits and margins down; a limit met exactly does not hold."
                                + (outcome.lineFriction() > 0
                                        ? " The loads on pump and manifold hold "
                                                + units.text(
                                                        outcome.lineFriction(), Measure.PRESSURE_DIFFERENCE, CEILING)
                                                + " of friction of the line."
                                        : ""));
    }

    /** Friction against the pump rate. */
    public static ResultTable friction(FrictionCurve curve, UnitSystem units) {
        return friction(curve.points(), "Friction", units);
    }

    private static ResultTable friction(List<FrictionCurve.Point> points, String name, UnitSystem units) {
        return new Rows<>(points, units)
                .number("Rate", Measure.FLOW_RATE, HALF_EVEN, FrictionCurve.Point::rate)
                .number("Annulus", Measure.PRESSURE_DIFFERENCE, CEILING, FrictionCurve.Point::annulus)
                .number("String, without bit", Measure.PRESSURE_DIFFERENCE, CEILING, FrictionCurve.Point::string)
                .optional("Choke line", Measure.PRESSURE_DIFFERENCE, CEILING, FrictionCurve.Point::chokeLine)
                .number(
                        "Equivalent circulating density",
                        Measure.EQUIVALENT_DENSITY,
                        CEILING,
                        FrictionCurve.Point::equivalentDensity)
                .table(name, "Losses rounded up; the density counts the friction of the annulus alone.");
    }

    /** Friction of the mud at the section's own rates, swab and surge; what the case gives no rate or speed for is left out. */
    public static List<ResultTable> mudFlow(MudFlowOutcome.Computed flow, UnitSystem units) {
        List<ResultTable> tables = new ArrayList<>();
        if (!flow.rates().isEmpty()) {
            tables.add(friction(flow.rates(), "Friction at the section's slow rates", units));
        }
        flow.trip().ifPresent(t -> tables.add(trip(t, units)));
        return tables;
    }

    /** Swab and surge. */
    public static ResultTable trip(MudFlowOutcome.Trip trip, UnitSystem units) {
        List<String[]> rows = new ArrayList<>();
        row(rows, "Speed of the string", units.perMinute().text(trip.speed(), Measure.SPEED));
        row(rows, "End of the string", trip.end().title());
        row(rows, "Swab, pulling out", difference(trip.swab(), units));
        row(rows, "Least overbalance then", margin(trip.pulling(), units));
        row(rows, "Surge, running in", difference(trip.surge(), units));
        row(rows, "Least margin to strength then", margin(trip.running(), units));
        return pairs(rows, units, "Swab and surge", "Loads rounded up, margins down.");
    }

    private static String margin(Optional<MudFlowOutcome.LeastMargin> least, UnitSystem units) {
        return least.map(l -> units.text(l.margin(), Measure.PRESSURE_DIFFERENCE, FLOOR) + " at "
                        + units.text(l.verticalDepth(), Measure.DEPTH) + " TVD")
                .orElse("not assessed: not known over the whole open hole");
    }

    /** What a kill sheet starts from. */
    public static ResultTable killSheetInput(KillSheet sheet, UnitSystem units) {
        KillSheetInput input = sheet.input();
        SlowCirculation slow = input.pump().slowCirculation();
        List<String[]> rows = new ArrayList<>();
        row(rows, "Mud in the well", units.text(input.mudDensity(), Measure.DENSITY));
        row(rows, "Shut-in drill-pipe pressure", gauge(input.shutIn().drillPipePressure(), units));
        row(rows, "Shut-in casing pressure", gauge(input.shutIn().casingPressure(), units));
        row(rows, "Pit gain", units.text(input.shutIn().gain(), Measure.VOLUME));
        row(rows, "Bit, MD and TVD", depths(input.bitDepth(), input, units));
        row(
                rows,
                "Slow rate",
                units.text(slow.rate(), Measure.FLOW_RATE) + " ("
                        + Math.round(slow.rate() / input.pump().strokeVolume() * 60) + " strokes/min)");
        row(rows, "Pressure at the slow rate", gauge(slow.pumpPressure().getAsDouble(), units));
        row(rows, "Pump output per stroke", units.precise(input.pump().strokeVolume(), Measure.VOLUME));
        row(rows, "Weak point", input.weakPoint().name());
        row(rows, "Weak point, MD and TVD", depths(input.weakPoint().measuredDepth(), input, units));
        row(rows, "Weak point holds", units.text(input.weakPoint().pressure(), Measure.PRESSURE_ABSOLUTE, FLOOR));
        return pairs(rows, units, "Starts from", "");
    }

    /** What a kill sheet answers. */
    public static ResultTable killSheetAnswers(KillSheet sheet, UnitSystem units) {
        KillSheetInput input = sheet.input();
        List<String[]> rows = new ArrayList<>();
        row(rows, "Formation pressure at the bit", gauge(sheet.formationPressure(), units, CEILING));
        row(rows, "Density that balances it", units.text(sheet.balancingDensity(), Measure.DENSITY, CEILING));
        row(rows, "Kill mud, rounded up", units.text(sheet.killDensity(), Measure.DENSITY));
        row(rows, "Initial circulating pressure", gauge(sheet.initialCirculatingPressure(), units));
        row(rows, "Final circulating pressure", gauge(sheet.finalCirculatingPressure(), units));
        row(rows, "Overbalance asked for", units.text(input.killMud().overbalance(), Measure.DENSITY_DIFFERENCE));
        return pairs(rows, units, "Kill mud and pressures", "");
    }

    /** Load on the weak point before and after, and MAASP. */
    public static ResultTable killSheetWeakPoint(KillSheet sheet, UnitSystem units) {
        KillSheet.WeakPointCheck check = sheet.weakPoint();
        List<String[]> rows = new ArrayList<>();
        row(
                rows,
                "Load at shut-in",
                check.shutIn().isPresent()
                        ? units.text(check.shutIn().getAsDouble(), Measure.PRESSURE_ABSOLUTE, CEILING)
                        : "not assessed: the influx reaches above it");
        row(rows, "Load with kill mud at rest", units.text(check.killed(), Measure.PRESSURE_ABSOLUTE, CEILING));
        row(rows, "It holds", units.text(check.limit(), Measure.PRESSURE_ABSOLUTE, FLOOR));
        row(
                rows,
                "Margin with kill mud",
                units.text(check.margin(), Measure.PRESSURE_DIFFERENCE, FLOOR)
                        + (check.holdsKillMud() ? "" : ": it does not hold"));
        row(rows, "MAASP, mud of shut-in", gauge(check.maasp(), units, FLOOR));
        row(rows, "MAASP, kill mud", gauge(check.maaspKilled(), units, FLOOR));
        return pairs(rows, units, "Weak point and MAASP", "MAASP is static and void once gas is above the weak point.");
    }

    /** Material to weight the mud up. */
    public static ResultTable killSheetWeighting(KillSheet sheet, UnitSystem units) {
        KillSheetInput.KillMud mud = sheet.input().killMud();
        List<String[]> rows = new ArrayList<>();
        row(rows, "Mud to weight up", units.text(mud.volume(), Measure.VOLUME));
        row(rows, "Density of the material", units.text(mud.material(), Measure.DENSITY));
        row(rows, "Material", units.text(sheet.weighting().mass(), Measure.MASS, CEILING));
        row(rows, "Volume increase", units.text(sheet.weighting().volumeIncrease(), Measure.VOLUME, CEILING));
        return pairs(rows, units, "Weighting up", "Pits and well as planned.");
    }

    /** Corrections for the choke line; empty where the stack is at surface or the friction is not known. */
    public static Optional<ResultTable> killSheetChokeLine(KillSheet sheet, UnitSystem units) {
        return sheet.chokeLine().map(c -> {
            List<String[]> rows = new ArrayList<>();
            row(rows, "Friction, mud of shut-in", difference(c.loss(), units));
            row(rows, "Friction, kill mud", difference(c.lossKilled(), units));
            row(rows, "It rests on", c.basis().title());
            row(rows, "Casing pressure at the slow rate", gauge(c.casingPressure(), units));
            row(rows, "Fall per start-up step", difference(c.startUpStep(), units));
            row(rows, "Not given back by the choke", difference(c.uncompensated(), units));
            row(rows, "MAASP while circulating", gauge(c.maaspCirculating(), units, FLOOR));
            return pairs(rows, units, "Choke line", "");
        });
    }

    /** Volumes, strokes and times in the order of pumping. */
    public static ResultTable killSheetVolumes(KillSheet sheet, UnitSystem units) {
        List<KillSheet.Leg> legs = new ArrayList<>(sheet.legs());
        double volume = sheet.bottomsUpVolume();
        KillSheetInput.Pump pump = sheet.input().pump();
        legs.add(new KillSheet.Leg(
                KillSheet.Place.ANNULUS,
                "bit to choke, bottoms up",
                volume,
                volume / pump.strokeVolume(),
                volume / pump.slowCirculation().rate()));
        return new Rows<>(legs, units.with(Measure.NUMBER, "1", 0))
                .text("Stretch", KillSheet.Leg::name)
                .number("Volume", Measure.VOLUME, HALF_EVEN, KillSheet.Leg::volume)
                .number("Strokes", Measure.NUMBER, HALF_EVEN, KillSheet.Leg::strokes)
                .number("Time", Measure.TIME, HALF_EVEN, KillSheet.Leg::time)
                .table("Volumes, strokes, times", "");
    }

    /** Drill-pipe pressure to hold while kill mud goes to the bit. */
    public static ResultTable pressureSchedule(KillSheet sheet, UnitSystem units) {
        return new Rows<>(sheet.schedule().steps(), units.with(Measure.NUMBER, "1", 0))
                .number("Strokes", Measure.NUMBER, HALF_EVEN, PressureSchedule.Step::strokes)
                .number("Pumped", Measure.VOLUME, HALF_EVEN, PressureSchedule.Step::pumped)
                .number("Time", Measure.TIME, HALF_EVEN, PressureSchedule.Step::time)
                .number("Kill mud at MD", Measure.DEPTH, HALF_EVEN, PressureSchedule.Step::frontMeasuredDepth)
                .number("TVD", Measure.DEPTH, HALF_EVEN, PressureSchedule.Step::frontVerticalDepth)
                .number("Hold on drill pipe", Measure.PRESSURE_GAUGE, HALF_EVEN, PressureSchedule.Step::pressure)
                .number("Straight line", Measure.PRESSURE_GAUGE, HALF_EVEN, PressureSchedule.Step::straightLine)
                .number(
                        "Straight line is short by",
                        Measure.PRESSURE_DIFFERENCE,
                        CEILING,
                        PressureSchedule.Step::underbalance)
                .table(
                        "Drill-pipe pressure while kill mud goes to the bit",
                        "By the true vertical depth of the kill mud. Below zero the straight line holds more than needed.");
    }

    private static void row(List<String[]> rows, String name, String value) {
        rows.add(new String[] {name, value});
    }

    private static ResultTable pairs(List<String[]> pairs, UnitSystem units, String name, String caption) {
        return new Rows<>(pairs, units)
                .text("what", p -> p[0])
                .text("value", p -> p[1])
                .table(name, caption);
    }

    private static String gauge(double value, UnitSystem units) {
        return gauge(value, units, HALF_EVEN);
    }

    private static String gauge(double value, UnitSystem units, RoundingMode rounding) {
        return units.text(value, Measure.PRESSURE_GAUGE, rounding);
    }

    private static String difference(double value, UnitSystem units) {
        return units.text(value, Measure.PRESSURE_DIFFERENCE, CEILING);
    }

    private static String depths(double measured, KillSheetInput input, UnitSystem units) {
        return units.text(measured, Measure.DEPTH) + ", "
                + units.text(input.path().verticalDepth(measured), Measure.DEPTH);
    }

    private static OptionalDouble value(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
