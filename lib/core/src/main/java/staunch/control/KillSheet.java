package staunch.control;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Kind;
import staunch.units.Physics;
import staunch.units.Si;
import staunch.units.Warning;
import staunch.well.Annulus;
import staunch.well.WellPath;

/**
 * Kill sheet of a shut-in kick, for planning. With k the hydrostatic constant chosen, z_b the vertical depth of the bit:
 * formation pressure p_f = p_dp + k ρ z_b; kill mud ρ_k = ρ + p_dp/(k z_b) + overbalance, rounded up to the step; initial
 * circulating pressure p_scr + p_dp, final p_scr ρ_k/ρ; the schedule between them by {@link PressureSchedule}. Balance is
 * drawn at the bit. Formulas as in course notes and handbooks (N.J. Lapeyrouse, "Formulas and Calculations for Drilling,
 * Production and Workover"). How gas expands on its way is not part of it.
 *
 * @param input what it was made from
 * @param formationPressure at the bit, Pa gauge
 * @param balancingDensity kill mud density before rounding, overbalance counted, kg/m³
 * @param killDensity rounded up, kg/m³
 * @param initialCirculatingPressure Pa gauge
 * @param finalCirculatingPressure Pa gauge
 * @param schedule drill-pipe pressure by strokes
 * @param legs volumes, strokes and times in the order of pumping
 * @param weakPoint load on the weak point
 * @param weighting material for the kill mud
 * @param chokeLine corrections for the choke line of a subsea stack, where its friction is known
 * @param warnings what is suspicious or could not be assessed
 */
public record KillSheet(
        KillSheetInput input,
        @Si(value = "Pa", kind = Kind.GAUGE) double formationPressure,
        @Si("kg/m3") double balancingDensity,
        @Si("kg/m3") double killDensity,
        @Si(value = "Pa", kind = Kind.GAUGE) double initialCirculatingPressure,
        @Si(value = "Pa", kind = Kind.GAUGE) double finalCirculatingPressure,
        PressureSchedule schedule,
        List<Leg> legs,
        WeakPointCheck weakPoint,
        KillFormulas.Weighting weighting,
        Optional<ChokeCorrection> chokeLine,
        List<Warning> warnings) {
    /** What stands on every sheet. */
    public static final String NOTICE = "Planning sheet. Not for use on a live well.";

    /** Distance from bit to bottom that a kill sheet passes over without a warning, m. */
    private static final double OFF_BOTTOM = 10;

    public KillSheet {
        Objects.requireNonNull(input, "input");
        Objects.requireNonNull(schedule, "schedule");
        legs = List.copyOf(legs);
        Objects.requireNonNull(weakPoint, "weakPoint");
        Objects.requireNonNull(weighting, "weighting");
        Objects.requireNonNull(chokeLine, "chokeLine");
        warnings = List.copyOf(warnings);
    }

    /**
     * A stretch that is pumped through.
     *
     * @param place where it is
     * @param name in plain words
     * @param volume m³
     * @param strokes volume over the output of a stroke
     * @param time at the slow rate, s
     */
    public record Leg(
            Place place,
            String name,
            @Si("m3") double volume,
            @Si("1") double strokes,
            @Si("s") double time) {}

    /** Where a stretch is. */
    public enum Place {
        SURFACE_LINES(false),
        STRING(false),
        ANNULUS(true),
        CHOKE_LINE(true),
        /** Shut off by the stack, and displaced apart. */
        RISER(false);

        private final boolean bottomsUp;

        Place(boolean bottomsUp) {
            this.bottomsUp = bottomsUp;
        }
    }

    /**
     * Load on the weak point. Surface pressures are static, with mud of one density from choke to weak point.
     *
     * @param shutIn pressure there at shut-in, Pa absolute; empty where the influx already reaches above it
     * @param killed pressure there with kill mud from bottom to surface at rest, Pa absolute
     * @param limit what it holds, Pa absolute
     * @param maasp formation MAASP with the mud of shut-in, Pa gauge; negative where that mud is too heavy
     * @param maaspKilled formation MAASP with kill mud, Pa gauge; negative where the kill mud breaks the weak point
     */
    public record WeakPointCheck(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) OptionalDouble shutIn,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double killed,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double limit,
            @Si(value = "Pa", kind = Kind.GAUGE) double maasp,
            @Si(value = "Pa", kind = Kind.GAUGE) double maaspKilled) {
        /** What the weak point holds beyond the static kill mud. */
        @Si(value = "Pa", kind = Kind.DIFFERENCE)
        public double margin() {
            return limit - killed;
        }

        /** Whether it holds kill mud to surface at rest; a load equal to the limit holds. */
        public boolean holdsKillMud() {
            return killed <= limit;
        }
    }

    /**
     * What the friction of the choke line asks for.
     *
     * @param loss at the slow rate with the mud of shut-in, Pa
     * @param lossKilled at the slow rate with kill mud, Pa
     * @param basis of the loss
     * @param casingPressure to hold at the choke once the pump is at the slow rate, Pa gauge, at least 0
     * @param uncompensated friction that the choke cannot give back at start-up, since it exceeds the shut-in casing
     *     pressure, Pa: it loads the well
     * @param startUpStep fall of the casing pressure at each step of start-up, Pa
     * @param maaspCirculating greatest choke pressure while circulating the mud of shut-in: formation MAASP less friction,
     *     Pa gauge
     */
    public record ChokeCorrection(
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double loss,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double lossKilled,
            ChokeLineLoss.Basis basis,
            @Si(value = "Pa", kind = Kind.GAUGE) double casingPressure,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double uncompensated,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double startUpStep,
            @Si(value = "Pa", kind = Kind.GAUGE) double maaspCirculating) {}

    /**
     * Makes the sheet.
     *
     * @throws staunch.units.Fault where the kill mud density comes out of the range of muds, or an input does not fit
     */
    public static KillSheet of(KillSheetInput input) {
        HydrostaticConstant constant = input.options().constant();
        KillSheetInput.ShutIn shutIn = input.shutIn();
        double mud = input.mudDensity();
        double bitVertical = input.path().verticalDepth(input.bitDepth());
        double formation = shutIn.drillPipePressure() + HandFormulas.hydrostaticPressure(mud, bitVertical, constant);
        double balancing = HandFormulas.equivalentDensityUnder(shutIn.drillPipePressure(), mud, bitVertical, constant)
                + input.killMud().overbalance();
        // Rounding lets a density just above a whole step count as that step; the mud in the well may be such a one.
        double kill =
                Math.max(mud, KillFormulas.roundedUp(balancing, input.killMud().step()));
        double slow = input.pump().slowCirculation().pumpPressure().getAsDouble();
        WeakPointCheck check = check(input, kill);
        Optional<ChokeCorrection> choke = input.subsea().flatMap(s -> correction(input, s, kill, check.maasp()));
        return new KillSheet(
                input,
                formation,
                balancing,
                kill,
                KillFormulas.initialCirculatingPressure(slow, shutIn.drillPipePressure()),
                KillFormulas.finalCirculatingPressure(slow, mud, kill),
                new PressureSchedule.Builder(input, kill).build(input.options().lines()),
                legs(input),
                check,
                KillFormulas.weighting(
                        input.killMud().volume(),
                        new KillFormulas.DensityChange(
                                mud, kill, input.killMud().material())),
                choke,
                warnings(input, check, choke));
    }

    /** Volume from the bit to surface through the choke: what a circulation bottoms up pumps. */
    @Si("m3")
    public double bottomsUpVolume() {
        return legs.stream()
                .filter(l -> l.place().bottomsUp)
                .mapToDouble(Leg::volume)
                .sum();
    }

    private static List<Leg> legs(KillSheetInput input) {
        Annulus annulus = input.annulus();
        double bit = input.bitDepth();
        String weakName = input.weakPoint().name();
        double weak = Math.min(input.weakPoint().measuredDepth(), bit);
        List<Leg> legs = new ArrayList<>();
        legs.add(leg(input, Place.SURFACE_LINES, "surface lines", input.pump().surfaceLineVolume()));
        legs.add(leg(input, Place.STRING, "string, surface to bit", annulus.stringVolume()));
        legs.add(leg(input, Place.ANNULUS, "annulus, bit to " + weakName, annulus.volumeBetween(weak, bit)));
        legs.add(leg(
                input,
                Place.ANNULUS,
                "annulus, " + weakName + " to stack",
                annulus.volumeBetween(annulus.top(), weak)));
        input.subsea().ifPresent(s -> {
            legs.add(leg(
                    input, Place.CHOKE_LINE, "choke line", s.chokeLine().line().volume()));
            legs.add(leg(input, Place.RISER, "riser, displaced apart", s.riserVolume()));
        });
        return legs;
    }

    private static Leg leg(KillSheetInput input, Place place, String name, double volume) {
        KillSheetInput.Pump pump = input.pump();
        return new Leg(
                place,
                name,
                volume,
                volume / pump.strokeVolume(),
                volume / pump.slowCirculation().rate());
    }

    private static WeakPointCheck check(KillSheetInput input, double kill) {
        HydrostaticConstant constant = input.options().constant();
        WellPath path = input.path();
        Annulus annulus = input.annulus();
        double weak = input.weakPoint().measuredDepth();
        double vertical = path.verticalDepth(weak);
        double stack = path.verticalDepth(annulus.top());
        double line = input.subsea()
                .map(s -> s.chokeLineDensity().orElse(input.mudDensity()))
                .orElse(input.mudDensity());
        double column = constant.gradient(input.mudDensity()) * (vertical - stack) + constant.gradient(line) * stack;
        double killed = Physics.ATMOSPHERE + constant.gradient(kill) * vertical;
        double limit = input.weakPoint().pressure();
        double below = annulus.volumeBetween(weak, annulus.bottom());
        OptionalDouble shutIn = input.shutIn().gain() <= below
                ? OptionalDouble.of(Physics.ATMOSPHERE + input.shutIn().casingPressure() + column)
                : OptionalDouble.empty();
        return new WeakPointCheck(shutIn, killed, limit, limit - Physics.ATMOSPHERE - column, limit - killed);
    }

    private static Optional<ChokeCorrection> correction(
            KillSheetInput input, KillSheetInput.Subsea subsea, double kill, double maasp) {
        double rate = input.pump().slowCirculation().rate();
        ChokeLineLoss before = subsea.chokeLine().at(rate);
        if (!(before instanceof ChokeLineLoss.Known known)) {
            return Optional.empty();
        }
        double casing = SubseaFormulas.casingPressureOnChoke(input.shutIn().casingPressure(), known.pressure());
        return Optional.of(new ChokeCorrection(
                known.pressure(),
                SubseaFormulas.lossAfterMudChange(known.pressure(), input.mudDensity(), kill),
                known.basis(),
                Math.max(0, casing),
                Math.max(0, -casing),
                SubseaFormulas.stepOfStartUp(
                        Math.min(known.pressure(), input.shutIn().casingPressure()), subsea.startUpSteps()),
                maasp - known.pressure()));
    }

    private static List<Warning> warnings(KillSheetInput input, WeakPointCheck check, Optional<ChokeCorrection> choke) {
        List<Warning> found = new ArrayList<>();
        String weak = input.weakPoint().name();
        if (input.annulus().bottom() - input.bitDepth() > OFF_BOTTOM) {
            found.add(new Warning("bit", "It is off bottom; the sheet balances the well at the bit, not below it."));
        }
        if (input.shutIn().casingPressure() < input.shutIn().drillPipePressure()) {
            found.add(new Warning(
                    "shut-in pressures",
                    "The casing pressure is below the drill-pipe pressure, as an influx lighter than mud in the annulus"
                            + " alone would not leave it."));
        }
        if (check.shutIn().isEmpty()) {
            found.add(new Warning(weak, "The influx already reaches above it; its load at shut-in is not assessed."));
        } else if (check.shutIn().getAsDouble() > check.limit()) {
            found.add(new Warning(weak, "It carries more at shut-in than it holds."));
        }
        if (!check.holdsKillMud()) {
            found.add(new Warning(weak, "It does not hold kill mud to surface: the well cannot be killed this way."));
        }
        if (input.subsea().isPresent() && choke.isEmpty()) {
            found.add(new Warning("choke line", "Its friction is not known; its corrections are not assessed."));
        }
        choke.filter(c -> c.uncompensated() > 0)
                .ifPresent(
                        c -> found.add(
                                new Warning(
                                        "choke line",
                                        "Its friction exceeds the shut-in casing pressure; the difference loads the well at start-up.")));
        return found;
    }
}
