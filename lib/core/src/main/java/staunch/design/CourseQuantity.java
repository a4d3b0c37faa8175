package staunch.design;

import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import staunch.control.Bullheading;
import staunch.control.CirculationMethod;
import staunch.control.CirculationPoint;
import staunch.control.ClosestLimit;
import staunch.control.KillSheet;
import staunch.control.LubricateAndBleed;
import staunch.control.VolumetricMethod;
import staunch.envelope.BullheadingOutcome;
import staunch.envelope.CirculationOutcome;
import staunch.envelope.KickOperations;
import staunch.envelope.KickOperations.Followed;
import staunch.envelope.KillSheetOutcome;
import staunch.envelope.LubricationOutcome;
import staunch.envelope.MigrationOutcome;
import staunch.envelope.NotAssessed;
import staunch.envelope.SurfaceGasOutcome;
import staunch.envelope.VolumetricOutcome;
import staunch.units.Measure;

/** What a run record keeps of the course of one influx; the same of a drilled and of a swabbed one. */
enum CourseQuantity {
    INFLUX("influx followed", Measure.VOLUME, RoundingMode.HALF_EVEN, f -> Found.of(f.volume(), f.volumeBasis())),
    SHUT_IN_DRILL_PIPE(
            "shut-in drill-pipe pressure",
            Measure.PRESSURE_GAUGE,
            RoundingMode.CEILING,
            f -> Found.of(f.shutIn().drillPipePressure(), Found.JUST_CLOSED)),
    SHUT_IN_CASING(
            "shut-in casing pressure",
            Measure.PRESSURE_GAUGE,
            RoundingMode.CEILING,
            f -> Found.of(f.shutIn().casingPressure(), Found.JUST_CLOSED)),
    DRILLERS_CHOKE(
            "highest choke pressure, driller's method",
            Measure.PRESSURE_GAUGE,
            RoundingMode.CEILING,
            f -> choke(f.drillers())),
    DRILLERS_SHOE(
            "highest shoe pressure, driller's method",
            Measure.PRESSURE_ABSOLUTE,
            RoundingMode.CEILING,
            f -> shoe(f.drillers())),
    DRILLERS_MARGIN(
            "least margin while circulating, driller's method",
            Measure.PRESSURE_DIFFERENCE,
            RoundingMode.FLOOR,
            f -> margin(f.drillers())),
    WAIT_AND_WEIGHT_CHOKE(
            "highest choke pressure, wait and weight",
            Measure.PRESSURE_GAUGE,
            RoundingMode.CEILING,
            f -> choke(f.waitAndWeight())),
    WAIT_AND_WEIGHT_SHOE(
            "highest shoe pressure, wait and weight",
            Measure.PRESSURE_ABSOLUTE,
            RoundingMode.CEILING,
            f -> shoe(f.waitAndWeight())),
    WAIT_AND_WEIGHT_MARGIN(
            "least margin while circulating, wait and weight",
            Measure.PRESSURE_DIFFERENCE,
            RoundingMode.FLOOR,
            f -> margin(f.waitAndWeight())),
    PIT_GAIN("largest pit gain, driller's method", Measure.VOLUME, RoundingMode.CEILING, f -> gain(f.drillers())),
    GAS_RATE("largest gas rate at the choke", Measure.GAS_RATE, RoundingMode.CEILING, f -> gasRate(f.surfaceGas())),
    SEPARATOR_MARGIN(
            "mud leg of the separator over its pressure",
            Measure.PRESSURE_DIFFERENCE,
            RoundingMode.FLOOR,
            f -> separator(f.surfaceGas())),
    SHORTEST_WAIT(
            "shortest time to a limit, shut in", Measure.TIME, RoundingMode.FLOOR, f -> shortestWait(f.migration())),
    LONGEST_WAIT("longest time to a limit, shut in", Measure.TIME, RoundingMode.FLOOR, f -> longestWait(f.migration())),
    VOLUMETRIC_MARGIN(
            "least margin, volumetric method",
            Measure.PRESSURE_DIFFERENCE,
            RoundingMode.FLOOR,
            f -> volumetricMargin(f.volumetric())),
    VOLUMETRIC_BLED("mud bled, volumetric method", Measure.VOLUME, RoundingMode.HALF_EVEN, f -> bled(f.volumetric())),
    LUBRICATED(
            "mud pumped, lubricate and bleed",
            Measure.VOLUME,
            RoundingMode.HALF_EVEN,
            f -> lubricated(f.lubrication())),
    BULLHEADING_MARGIN(
            "least margin, bullheading",
            Measure.PRESSURE_DIFFERENCE,
            RoundingMode.FLOOR,
            f -> bullheading(f.bullheading())),
    KILL_MUD(
            "kill mud density",
            Measure.DENSITY,
            RoundingMode.HALF_EVEN,
            sheet(s -> Found.of(s.killDensity(), "of the kill sheet"))),
    KILL_MUD_MARGIN(
            "margin of the weak point with kill mud at rest",
            Measure.PRESSURE_DIFFERENCE,
            RoundingMode.FLOOR,
            sheet(s -> Found.of(
                    s.weakPoint().margin(),
                    s.input().weakPoint().name()
                            + (s.weakPoint().holdsKillMud() ? ", holds" : ", does not hold the kill mud")))),
    INITIAL_CIRCULATING(
            "initial circulating pressure",
            Measure.PRESSURE_GAUGE,
            RoundingMode.HALF_EVEN,
            sheet(s -> Found.of(s.initialCirculatingPressure(), "at the slow rate of the kill sheet"))),
    FINAL_CIRCULATING(
            "final circulating pressure",
            Measure.PRESSURE_GAUGE,
            RoundingMode.HALF_EVEN,
            sheet(s -> Found.of(s.finalCirculatingPressure(), "at the slow rate of the kill sheet"))),
    VOLUME_TO_BIT(
            "volume, surface to bit",
            Measure.VOLUME,
            RoundingMode.HALF_EVEN,
            sheet(s -> toBit(s, KillSheet.Leg::volume))),
    STROKES_TO_BIT(
            "strokes, surface to bit",
            Measure.NUMBER,
            RoundingMode.HALF_EVEN,
            sheet(s -> toBit(s, KillSheet.Leg::strokes))),
    VOLUME_BOTTOMS_UP(
            "volume, bit to surface",
            Measure.VOLUME,
            RoundingMode.HALF_EVEN,
            sheet(s -> Found.of(s.bottomsUpVolume(), Found.WITH_CHOKE_LINE))),
    STROKES_BOTTOMS_UP(
            "strokes, bit to surface",
            Measure.NUMBER,
            RoundingMode.HALF_EVEN,
            sheet(s -> Found.of(s.bottomsUpVolume() / s.input().pump().strokeVolume(), Found.WITH_CHOKE_LINE)));

    /** A number, or none, with where it holds or why there is none. */
    record Found(OptionalDouble value, String outcome) {
        private static final String JUST_CLOSED = "gas on bottom, well just closed";
        private static final String WITH_CHOKE_LINE = "through annulus and choke line";

        static Found of(double value, String outcome) {
            return new Found(OptionalDouble.of(value), outcome);
        }

        static Found none(String outcome) {
            return new Found(OptionalDouble.empty(), outcome);
        }

        static Found none(NotAssessed reason) {
            return none(reason.summary());
        }
    }

    private final String title;
    private final Measure measure;
    private final RoundingMode rounding;
    private final Function<Followed, Found> find;

    CourseQuantity(String title, Measure measure, RoundingMode rounding, Function<Followed, Found> find) {
        this.title = title;
        this.measure = measure;
        this.rounding = rounding;
        this.find = find;
    }

    String title() {
        return title;
    }

    Measure measure() {
        return measure;
    }

    RoundingMode rounding() {
        return rounding;
    }

    Found of(KickOperations kick) {
        return kick instanceof Followed followed ? find.apply(followed) : Found.none((NotAssessed) kick);
    }

    private static Found of(CirculationOutcome outcome, Function<CirculationOutcome.Computed, Found> find) {
        return outcome instanceof CirculationOutcome.Computed computed
                ? find.apply(computed)
                : Found.none((NotAssessed) outcome);
    }

    private static Found choke(CirculationOutcome outcome) {
        return of(outcome, c -> {
            CirculationPoint highest = c.schedule().greatestChokePressure();
            return Found.of(highest.chokePressure(), highest.phase().title());
        });
    }

    private static Found shoe(CirculationOutcome outcome) {
        return of(
                outcome,
                c -> c.peaks().stream()
                        .filter(p -> p.where().name().equals("shoe"))
                        .findFirst()
                        .map(p -> Found.of(p.pressure(), p.moment().phase().title()))
                        .orElse(Found.none("not followed")));
    }

    private static Found margin(CirculationOutcome outcome) {
        return of(
                outcome,
                c -> c.schedule()
                        .leastMargin()
                        .map(p -> closest(p.closest(), ", " + p.phase().title()))
                        .orElse(closest(Optional.empty(), "")));
    }

    private static Found closest(Optional<ClosestLimit> closest, String when) {
        return closest.map(c -> Found.of(c.margin(), c.name() + when)).orElse(Found.none("no limit is known"));
    }

    private static Found gain(CirculationOutcome outcome) {
        return of(outcome, c -> {
            CirculationPoint largest = c.schedule().greatestGasVolume();
            return Found.of(largest.gasVolume(), largest.phase().title());
        });
    }

    private static Found gasRate(SurfaceGasOutcome outcome) {
        return outcome instanceof SurfaceGasOutcome.Computed gas
                ? Found.of(
                        gas.rate(),
                        gas.method() == CirculationMethod.DRILLERS
                                ? "driller's method"
                                : gas.method().title())
                : Found.none((NotAssessed) outcome);
    }

    private static Found separator(SurfaceGasOutcome outcome) {
        if (outcome instanceof NotAssessed not) {
            return Found.none(not);
        }
        SurfaceGasOutcome.SeparatorOutcome separator = ((SurfaceGasOutcome.Computed) outcome).separator();
        return separator instanceof SurfaceGasOutcome.Separator leg
                ? Found.of(
                        leg.blowThroughMargin(),
                        leg.blowThroughMargin() > 0 ? "the mud leg holds the gas" : "gas blows through the mud leg")
                : Found.none((NotAssessed) separator);
    }

    /** Rates in their order: how the case words them depends on its units. */
    private static final List<String> RATES = List.of("slow", "medium", "fast");

    private static String rising(MigrationOutcome.Computed migration, MigrationOutcome.Course course) {
        return "gas rising at the " + RATES.get(migration.courses().indexOf(course)) + " rate";
    }

    private static Found shortestWait(MigrationOutcome outcome) {
        if (outcome instanceof NotAssessed not) {
            return Found.none(not);
        }
        MigrationOutcome.Computed migration = (MigrationOutcome.Computed) outcome;
        return migration.courses().stream()
                .filter(c -> c.earliest().isPresent())
                .min(Comparator.comparingDouble(CourseQuantity::time))
                .map(c -> reached(migration, c))
                .orElse(Found.none("no limit is reached at any rate"));
    }

    private static Found longestWait(MigrationOutcome outcome) {
        if (outcome instanceof NotAssessed not) {
            return Found.none(not);
        }
        MigrationOutcome.Computed migration = (MigrationOutcome.Computed) outcome;
        return migration.courses().stream()
                .filter(c -> c.earliest().isEmpty())
                .findFirst()
                .map(c -> Found.none("no limit is reached, " + rising(migration, c)))
                .orElseGet(() -> migration.courses().stream()
                        .max(Comparator.comparingDouble(CourseQuantity::time))
                        .map(c -> reached(migration, c))
                        .orElseThrow());
    }

    private static double time(MigrationOutcome.Course course) {
        return course.earliest().orElseThrow().moment().orElseThrow().time();
    }

    private static Found reached(MigrationOutcome.Computed migration, MigrationOutcome.Course course) {
        return Found.of(time(course), course.earliest().orElseThrow().name() + ", " + rising(migration, course));
    }

    private static Found volumetricMargin(VolumetricOutcome outcome) {
        return outcome instanceof VolumetricOutcome.Computed computed
                ? closest(
                        computed.closest(),
                        computed.closest().filter(c -> c.margin() > 0).isPresent() ? ", holds" : ", does not hold")
                : Found.none((NotAssessed) outcome);
    }

    private static Found bled(VolumetricOutcome outcome) {
        if (outcome instanceof NotAssessed not) {
            return Found.none(not);
        }
        VolumetricMethod.Table table = ((VolumetricOutcome.Computed) outcome).table();
        List<VolumetricMethod.Step> steps = table.steps();
        return Found.of(
                steps.isEmpty() ? 0 : steps.get(steps.size() - 1).totalBled(),
                "ends because " + table.ending().title());
    }

    private static Found lubricated(LubricationOutcome outcome) {
        if (outcome instanceof NotAssessed not) {
            return Found.none(not);
        }
        LubricateAndBleed.Table table = ((LubricationOutcome.Computed) outcome).table();
        List<LubricateAndBleed.Step> steps = table.steps();
        return Found.of(
                steps.isEmpty() ? 0 : steps.get(steps.size() - 1).totalPumped(),
                "ends because " + table.ending().title());
    }

    private static Found bullheading(BullheadingOutcome outcome) {
        if (outcome instanceof NotAssessed not) {
            return Found.none(not);
        }
        BullheadingOutcome.Computed computed = (BullheadingOutcome.Computed) outcome;
        Bullheading.Load governing = computed.governing();
        return Found.of(
                governing.margin(), governing.limit().name() + (computed.feasible() ? ", feasible" : ", not feasible"));
    }

    private static Function<Followed, Found> sheet(Function<KillSheet, Found> find) {
        return f -> f.killSheet() instanceof KillSheetOutcome.Computed computed
                ? find.apply(computed.sheet())
                : Found.none((NotAssessed) f.killSheet());
    }

    private static Found toBit(KillSheet sheet, java.util.function.ToDoubleFunction<KillSheet.Leg> what) {
        return Found.of(
                sheet.legs().stream()
                        .filter(l -> l.place() == KillSheet.Place.SURFACE_LINES || l.place() == KillSheet.Place.STRING)
                        .mapToDouble(what)
                        .sum(),
                "surface lines and string");
    }
}
