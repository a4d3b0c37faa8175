package staunch.table;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import staunch.control.Bullheading;
import staunch.control.CirculationMethod;
import staunch.control.CirculationPoint;
import staunch.control.ClosestLimit;
import staunch.control.FrictionCurve;
import staunch.control.VolumetricMethod;
import staunch.envelope.BullheadingOutcome;
import staunch.envelope.CirculationOutcome;
import staunch.envelope.KickOperations;
import staunch.envelope.KillSheetOutcome;
import staunch.envelope.LubricationOutcome;
import staunch.envelope.MigrationOutcome;
import staunch.envelope.MudFlowOutcome;
import staunch.envelope.NotAssessed;
import staunch.envelope.RiserOutcome;
import staunch.envelope.SurfaceGasOutcome;
import staunch.envelope.VolumetricOutcome;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** Results of operations in words, the answer first. */
public final class OperationWords {
    private OperationWords() {}

    /**
     * A question with its answer.
     *
     * @param question in a few words
     * @param words the answer
     */
    public record Answer(String question, String words) {}

    /** What a reader asks about an influx, in one order. */
    public static List<Answer> answers(KickOperations operations, UnitSystem units) {
        if (operations instanceof NotAssessed not) {
            String words = not.summary(units);
            return List.of(
                    new Answer("Influx followed", words),
                    new Answer("Shut in", words),
                    new Answer("How long can it wait", words),
                    new Answer("Driller's method", words),
                    new Answer("Wait and weight", words),
                    new Answer("Gas at surface", words),
                    new Answer("Volumetric method", words),
                    new Answer("Lubricate and bleed", words),
                    new Answer("Bullheading", words),
                    new Answer("Kill sheet", words));
        }
        KickOperations.Followed followed = (KickOperations.Followed) operations;
        return List.of(
                new Answer("Influx followed", influx(followed, units)),
                new Answer("Shut in", shutIn(followed, units)),
                new Answer("How long can it wait", wait(followed.migration(), units)),
                new Answer("Driller's method", circulation(followed.drillers(), units)),
                new Answer("Wait and weight", circulation(followed.waitAndWeight(), units)),
                new Answer("Gas at surface", gasAtSurface(followed.surfaceGas(), units)),
                new Answer("Volumetric method", volumetric(followed.volumetric(), units)),
                new Answer("Lubricate and bleed", lubrication(followed.lubrication(), units)),
                new Answer("Bullheading", bullheading(followed.bullheading(), units)),
                new Answer("Kill sheet", killSheet(followed.killSheet(), units)));
    }

    /** The method of a whole circulation, both circulations of the driller's method included. */
    public static String method(CirculationMethod method) {
        return method == CirculationMethod.DRILLERS ? "driller's method" : method.title();
    }

    /** Volume of an influx and where it comes from. */
    public static String influx(KickOperations.Followed followed, UnitSystem units) {
        return units.text(followed.volume(), Measure.VOLUME) + " on bottom, " + followed.volumeBasis();
    }

    private static String shutIn(KickOperations.Followed followed, UnitSystem units) {
        return "drill pipe " + load(followed.shutIn().drillPipePressure(), units) + ", casing "
                + load(followed.shutIn().casingPressure(), units);
    }

    /** How long the well can wait after an influx. */
    public static String wait(KickOperations operations, UnitSystem units) {
        return operations instanceof KickOperations.Followed followed
                ? wait(followed.migration(), units)
                : ((NotAssessed) operations).summary();
    }

    /** How long the closed well can wait: the earliest limit of the bracket, and the rate and limit behind it. */
    public static String wait(MigrationOutcome outcome, UnitSystem units) {
        if (outcome instanceof NotAssessed not) {
            return not.summary(units);
        }
        MigrationOutcome.Computed computed = (MigrationOutcome.Computed) outcome;
        Optional<MigrationOutcome.FirstReached> first = computed.earliest();
        if (first.isEmpty()) {
            return "no limit is reached at any rate";
        }
        double time = first.get().moment().orElseThrow().time();
        if (time == 0) {
            return "not at all: " + place(first.get(), units) + " is at its limit when the well is closed";
        }
        String rate = computed.courses().stream()
                .filter(c -> c.limits().contains(first.get()))
                .map(MigrationOutcome.Course::rate)
                .findFirst()
                .orElse("");
        return units.duration(time) + ": gas rising " + rate + ", " + place(first.get(), units);
    }

    private static String place(MigrationOutcome.FirstReached limit, UnitSystem units) {
        return limit.name() + " at " + units.text(limit.measuredDepth(), Measure.DEPTH) + " MD";
    }

    /** Whether a circulation holds, and what comes closest. */
    public static String circulation(CirculationOutcome outcome, UnitSystem units) {
        if (outcome instanceof NotAssessed not) {
            return not.summary(units);
        }
        CirculationOutcome.Computed computed = (CirculationOutcome.Computed) outcome;
        String choke = "choke up to "
                + load(computed.schedule().greatestChokePressure().chokePressure(), units) + ", gain up to "
                + units.text(computed.schedule().greatestGasVolume().gasVolume(), Measure.VOLUME, RoundingMode.CEILING);
        return computed.schedule()
                .leastMargin()
                .map(p -> (computed.holds() ? "holds: " : "does not hold: ") + closest(p, units) + "; " + choke)
                .orElse(choke + "; no limit is known");
    }

    private static String closest(CirculationPoint moment, UnitSystem units) {
        ClosestLimit closest = moment.closest().orElseThrow();
        return margin(closest, units) + ", " + moment.phase().title();
    }

    private static String margin(ClosestLimit closest, UnitSystem units) {
        String where = closest.name() + " at " + units.text(closest.measuredDepth(), Measure.DEPTH) + " MD";
        return closest.margin() < 0
                ? units.text(-closest.margin(), Measure.PRESSURE_DIFFERENCE, RoundingMode.CEILING) + " too much at "
                        + where
                : units.text(closest.margin(), Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR) + " left at " + where;
    }

    /** Gas at the choke, and whether the separator holds it. */
    public static String gasAtSurface(SurfaceGasOutcome outcome, UnitSystem units) {
        if (outcome instanceof NotAssessed not) {
            return not.summary(units);
        }
        SurfaceGasOutcome.Computed gas = (SurfaceGasOutcome.Computed) outcome;
        String rate =
                "up to " + units.text(gas.rate(), Measure.GAS_RATE, RoundingMode.CEILING) + ", " + method(gas.method());
        if (gas.separator() instanceof NotAssessed not) {
            return rate + "; separator " + not.summary(units);
        }
        SurfaceGasOutcome.Separator separator = (SurfaceGasOutcome.Separator) gas.separator();
        String held = separator.blowThroughMargin() > 0
                ? "the mud leg of the separator holds it: "
                : "gas blows through the mud leg of the separator: ";
        String over = separator.capacity().isPresent() && separator.capacity().getAsDouble() < gas.rate()
                ? "; above the " + units.text(separator.capacity().getAsDouble(), Measure.GAS_RATE, RoundingMode.FLOOR)
                        + " that its maker states"
                : "";
        return rate + "; " + held
                + units.text(separator.pressure(), Measure.PRESSURE_GAUGE, RoundingMode.CEILING) + " against "
                + units.text(separator.mudLeg(), Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR) + over;
    }

    /** Equivalent circulating density at the slowest and fastest of the slow rates, swab and surge. */
    public static String mudFlow(MudFlowOutcome outcome, UnitSystem units) {
        if (outcome instanceof NotAssessed not) {
            return not.summary(units);
        }
        MudFlowOutcome.Computed flow = (MudFlowOutcome.Computed) outcome;
        List<String> said = new ArrayList<>();
        if (!flow.rates().isEmpty()) {
            FrictionCurve.Point fastest = flow.rates().get(flow.rates().size() - 1);
            said.add("equivalent circulating density "
                    + units.text(fastest.equivalentDensity(), Measure.EQUIVALENT_DENSITY, RoundingMode.CEILING) + " at "
                    + units.text(fastest.rate(), Measure.FLOW_RATE));
        }
        flow.trip()
                .map(t -> "tripped at " + units.perMinute().text(t.speed(), Measure.SPEED) + ": swab "
                        + units.text(t.swab(), Measure.PRESSURE_DIFFERENCE, RoundingMode.CEILING) + ", surge "
                        + units.text(t.surge(), Measure.PRESSURE_DIFFERENCE, RoundingMode.CEILING)
                        + t.pulling()
                                .filter(l -> l.margin() < 0)
                                .map(l -> "; pulling out lets the well flow")
                                .orElse("")
                        + t.running()
                                .filter(l -> l.margin() < 0)
                                .map(l -> "; running in breaks the formation")
                                .orElse(""))
                .ifPresent(said::add);
        return String.join("; ", said);
    }

    /** What is lost with the riser of a subsea well. */
    public static String riser(RiserOutcome outcome, UnitSystem units) {
        if (outcome instanceof NotAssessed not) {
            return not.summary(units);
        }
        RiserOutcome.Computed riser = (RiserOutcome.Computed) outcome;
        double margin = riser.worst().margin();
        String where = " at " + units.text(riser.worst().verticalDepth(), Measure.DEPTH) + " TVD";
        return riser.staysBalanced()
                ? "the well stays overbalanced: " + units.text(margin, Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR)
                        + " left" + where
                : "the well flows: " + units.text(-margin, Measure.PRESSURE_DIFFERENCE, RoundingMode.CEILING)
                        + " short" + where + "; mud would have to be "
                        + units.text(riser.needed(), Measure.DENSITY, RoundingMode.CEILING);
    }

    /** What the volumetric method comes to. */
    public static String volumetric(VolumetricOutcome outcome, UnitSystem units) {
        if (outcome instanceof NotAssessed not) {
            return not.summary(units);
        }
        VolumetricOutcome.Computed computed = (VolumetricOutcome.Computed) outcome;
        List<VolumetricMethod.Step> steps = computed.table().steps();
        long bleeds = steps.stream()
                .filter(s -> s.action() == VolumetricMethod.Action.BLEED)
                .count();
        double bled = steps.isEmpty() ? 0 : steps.get(steps.size() - 1).totalBled();
        String work = bleeds + (bleeds == 1 ? " bleed, " : " bleeds, ") + units.text(bled, Measure.VOLUME) + " in all";
        return held(computed.closest(), units) + work + "; ends because "
                + computed.table().ending().title();
    }

    private static String held(Optional<ClosestLimit> closest, UnitSystem units) {
        return closest.map(c -> (c.margin() > 0 ? "holds: " : "does not hold: ") + margin(c, units) + "; ")
                .orElse("");
    }

    /** What lubricate and bleed comes to. */
    public static String lubrication(LubricationOutcome outcome, UnitSystem units) {
        if (outcome instanceof NotAssessed not) {
            return not.summary(units);
        }
        LubricationOutcome.Computed computed = (LubricationOutcome.Computed) outcome;
        int steps = computed.table().steps().size();
        return held(computed.table().closest(), units) + steps + (steps == 1 ? " step" : " steps") + " from "
                + load(computed.table().startPressure(), units) + " on the casing; ends because "
                + computed.table().ending().title();
    }

    /** Whether the influx can be pumped back. */
    public static String bullheading(BullheadingOutcome outcome, UnitSystem units) {
        if (outcome instanceof NotAssessed not) {
            return not.summary(units);
        }
        BullheadingOutcome.Computed computed = (BullheadingOutcome.Computed) outcome;
        Bullheading.Load governing = computed.governing();
        String where = governing.limit().name() + " at "
                + units.text(governing.limit().measuredDepth(), Measure.DEPTH) + " MD";
        return computed.feasible()
                ? "feasible: "
                        + units.text(governing.margin(), Measure.PRESSURE_DIFFERENCE, RoundingMode.FLOOR) + " left at "
                        + where
                : "not feasible: "
                        + units.text(-governing.margin(), Measure.PRESSURE_DIFFERENCE, RoundingMode.CEILING)
                        + " too much at " + where;
    }

    /** Kill mud and circulating pressures of a kill sheet. */
    public static String killSheet(KillSheetOutcome outcome, UnitSystem units) {
        if (outcome instanceof NotAssessed not) {
            return not.summary(units);
        }
        var sheet = ((KillSheetOutcome.Computed) outcome).sheet();
        return "kill mud " + units.text(sheet.killDensity(), Measure.DENSITY) + ", circulating pressure "
                + units.number(sheet.initialCirculatingPressure(), Measure.PRESSURE_GAUGE) + " to "
                + units.text(sheet.finalCirculatingPressure(), Measure.PRESSURE_GAUGE)
                + (sheet.weakPoint().holdsKillMud()
                        ? ""
                        : "; " + sheet.input().weakPoint().name() + " does not hold the kill mud");
    }

    private static String load(double gauge, UnitSystem units) {
        return units.text(gauge, Measure.PRESSURE_GAUGE, RoundingMode.CEILING);
    }
}
