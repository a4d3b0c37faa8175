package staunch.envelope;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import staunch.earth.EquivalentZero;
import staunch.envelope.Kick.Scenario;
import staunch.envelope.MethodOptions.Estimates;
import staunch.units.Fault;
import staunch.units.Warning;
import staunch.units.Wording;
import staunch.well.CasingString;

/**
 * Evaluates one hole section: tolerance of the drilled and the swabbed kick at section TD and along the section, the
 * curves around them, MAASP, margins and verdicts. What the case lacks makes the result that needs it "not assessed", with
 * the field named; it is never guessed.
 */
public final class SectionEvaluator {
    private static final int INTENSITY_POINTS = 31;
    private static final String BEYOND_SURVEY = "the survey ends above section TD";
    private static final double SAME_INTENSITY = 1e-6;

    private final SectionInput input;
    private final SectionPlan plan;
    private final MethodOptions options;
    private final double shoe;
    private final double bottom;

    private SectionEvaluator(SectionInput input) {
        this.input = input;
        this.plan = input.plan();
        this.options = input.options();
        this.shoe = plan.topDepth();
        this.bottom = plan.bottomDepth();
    }

    /**
     * Evaluates a section.
     *
     * @param input what is known
     * @param progress told the number of depths finished, of {@link #depths}
     * @throws Fault where the input contradicts itself; what is merely missing is reported in the result
     */
    public static SectionEnvelope evaluate(SectionInput input, LongConsumer progress) {
        return new SectionEvaluator(input).evaluate(progress);
    }

    /**
     * Checks a section at section TD alone, as {@link #evaluate} does.
     *
     * @param input what is known
     * @throws Fault where the input contradicts itself; what is merely missing is reported in the result
     */
    public static SectionCheck check(SectionInput input) {
        return new SectionEvaluator(input).check();
    }

    /**
     * Whether a section meets everything, as {@link #check} finds it: its verdict is "holds". Of a section that is not shut
     * in, whether its mud does not fail the pressure window.
     *
     * @param input what is known
     * @throws Fault where the input contradicts itself
     */
    public static boolean holds(SectionInput input) {
        return new SectionEvaluator(input).holds();
    }

    /**
     * Whether a section meets the pressure window as far as {@link #holds} asks for it. No casing has a part in that but the
     * one at the top of the section.
     *
     * @param input what is known
     * @throws Fault where the input contradicts itself
     */
    public static boolean meetsWindow(SectionInput input) {
        SectionEvaluator evaluator = new SectionEvaluator(input);
        return evaluator.bottom <= input.path().end()
                && evaluator.meets(WindowCheck.deciding(input).verdict(new ArrayList<>()));
    }

    /** Number of depths at which the tolerance along a section is computed. */
    public static int depths(SectionInput input) {
        double length = input.plan().bottomDepth() - input.plan().topDepth();
        return (int) Math.max(
                input.options().depthCount(), Math.ceil(length / input.options().depthStep()));
    }

    private SectionEnvelope evaluate(LongConsumer progress) {
        if (bottom > input.path().end()) {
            progress.accept(depths(input));
            return beyondSurvey();
        }
        List<Warning> warnings = new ArrayList<>();
        WindowCheck windowCheck = new WindowCheck(input);
        PressureWindow window = windowCheck.check(warnings);
        if (plan.drilling() != Drilling.SHUT_IN) {
            return notShutIn(window, warnings);
        }
        Model deciding = Model.of(input, options.estimates(), windowCheck);
        Model likely =
                options.estimates() == Estimates.LIKELY ? deciding : Model.of(input, Estimates.LIKELY, windowCheck);
        KickResult drilled = result(Scenario.DRILLED, deciding, likely);
        KickResult swabbed = result(Scenario.SWABBED, deciding, likely);
        MaaspCalculator maasps = new MaaspCalculator(input, deciding.strength(), deciding.mudColumn());
        Optional<Maasp> maasp = maasps.atSectionMud();
        List<Maasp> maaspAgainstMud = maasps.againstMud();
        List<InfluxMargin> margins = margins(deciding, drilled, swabbed, warnings);
        List<DepthPoint> along = alongSection(deciding, maasps, progress);
        new SectionWarnings(input, deciding).addTo(warnings);
        return new SectionEnvelope(
                plan,
                verticalDepth(shoe),
                verticalDepth(bottom),
                combined(drilled.check(), swabbed.check(), window.verdict()),
                drilled,
                swabbed,
                window,
                along,
                volumeAgainstIntensity(deciding),
                largestIntensity(deciding, drilled.required()),
                zeroGainMargin(deciding),
                maasp,
                maaspAgainstMud,
                new MaspCalculator(input, deciding).all(),
                margins,
                deciding.annularLoss(),
                SectionAssumptions.of(input, deciding),
                warnings);
    }

    private SectionCheck check() {
        if (bottom > input.path().end()) {
            Tolerance.NotAssessed none = new Tolerance.NotAssessed(BEYOND_SURVEY, "survey to section TD");
            return without(none, verdict(none), verdict(none));
        }
        WindowCheck windowCheck = WindowCheck.deciding(input);
        Verdict window = windowCheck.verdict(new ArrayList<>());
        if (plan.drilling() != Drilling.SHUT_IN) {
            return without(new Tolerance.NotShutIn(plan.drilling()), window, notShutInVerdict());
        }
        Model deciding = Model.of(input, options.estimates(), windowCheck);
        KickCheck drilled = kick(Scenario.DRILLED, deciding);
        KickCheck swabbed = kick(Scenario.SWABBED, deciding);
        return new SectionCheck(
                drilled,
                swabbed,
                window,
                new MaaspCalculator(input, deciding.strength(), deciding.mudColumn()).atSectionMud(),
                combined(drilled, swabbed, window));
    }

    private SectionCheck without(Tolerance none, Verdict window, Verdict verdict) {
        return new SectionCheck(
                without(Scenario.DRILLED, none, verdict),
                without(Scenario.SWABBED, none, verdict),
                window,
                Optional.empty(),
                verdict);
    }

    private boolean meets(Verdict window) {
        return plan.drilling() == Drilling.SHUT_IN
                ? window.outcome() == Verdict.Outcome.HOLDS
                : window.outcome() != Verdict.Outcome.FAILS;
    }

    private boolean holds() {
        if (bottom > input.path().end()) {
            return false;
        }
        WindowCheck windowCheck = WindowCheck.deciding(input);
        Verdict window = windowCheck.verdict(new ArrayList<>());
        if (plan.drilling() != Drilling.SHUT_IN || !meets(window)) {
            return meets(window);
        }
        Model deciding = Model.of(input, options.estimates(), windowCheck);
        KickCheck drilled = kick(Scenario.DRILLED, deciding);
        return drilled.verdict().outcome() != Verdict.Outcome.FAILS
                && combined(drilled, kick(Scenario.SWABBED, deciding), window).outcome() == Verdict.Outcome.HOLDS;
    }

    private Verdict notShutInVerdict() {
        return new Verdict(
                Verdict.Outcome.NOT_SHUT_IN, "not shut in: " + plan.drilling().title(), "");
    }

    private SectionEnvelope notShutIn(PressureWindow window, List<Warning> warnings) {
        return without(
                new Tolerance.NotShutIn(plan.drilling()),
                notShutInVerdict(),
                window,
                SectionAssumptions.notShutIn(input),
                warnings);
    }

    /** Where the path of the hole is not known nothing is: depths, volumes and pressures all hang on it. */
    private SectionEnvelope beyondSurvey() {
        Tolerance.NotAssessed none = new Tolerance.NotAssessed(BEYOND_SURVEY, "survey to section TD");
        Verdict open = verdict(none);
        PressureWindow window =
                new PressureWindow(List.of(), open, EquivalentZero.of(options.equivalentDensityFrom(), input.datum()));
        return plan.drilling() == Drilling.SHUT_IN
                ? without(none, open, window, List.of(), List.of())
                : notShutIn(window, List.of());
    }

    private SectionEnvelope without(
            Tolerance none,
            Verdict verdict,
            PressureWindow window,
            List<Assumption> assumptions,
            List<Warning> warnings) {
        IntensityLimit noLimit = new IntensityLimit.NotAssessed(
                none instanceof Tolerance.NotAssessed not ? not.reason() : "the section is not shut in");
        return new SectionEnvelope(
                plan,
                verticalDepth(shoe),
                verticalDepth(bottom),
                verdict,
                without(Scenario.DRILLED, none, verdict).with(none, Optional.empty()),
                without(Scenario.SWABBED, none, verdict).with(none, Optional.empty()),
                window,
                List.of(),
                List.of(),
                noLimit,
                noLimit,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                AnnularLosses.of(input).loss(),
                assumptions,
                warnings);
    }

    private OptionalDouble verticalDepth(double measuredDepth) {
        return measuredDepth <= input.path().end()
                ? OptionalDouble.of(input.path().verticalDepth(measuredDepth))
                : OptionalDouble.empty();
    }

    private KickCheck without(Scenario scenario, Tolerance none, Verdict verdict) {
        return new KickCheck(
                scenario,
                Optional.empty(),
                none,
                new SurfaceTolerance(none, List.of()),
                none instanceof Tolerance.NotShutIn ? OptionalDouble.empty() : required(scenario),
                verdict);
    }

    private KickResult result(Scenario scenario, Model deciding, Model likely) {
        KickCheck check = kick(scenario, deciding);
        Optional<HandCalculation> hand = check.tolerance() instanceof Tolerance.Finite finite
                ? Optional.of(deciding.hand(check.kick().orElseThrow(), deciding.hole(bottom), finite))
                : Optional.empty();
        return check.with(likely == deciding ? check.tolerance() : tolerance(likely, scenario, bottom), hand);
    }

    private KickCheck kick(Scenario scenario, Model deciding) {
        OptionalDouble required = required(scenario);
        Optional<Kick> kick = Optional.empty();
        Tolerance tolerance;
        SurfaceTolerance surface;
        try {
            deciding.needs(scenario);
            Kick asked = deciding.kick(scenario, bottom);
            kick = Optional.of(asked);
            tolerance = deciding.tolerance(asked, deciding.hole(bottom));
            surface = deciding.circulatedToSurface(asked, bottom);
        } catch (Missing missing) {
            tolerance = missing.asTolerance();
            surface = new SurfaceTolerance(tolerance, List.of());
        } catch (Fault fault) {
            tolerance = Tolerance.NotAssessed.of(fault);
            surface = new SurfaceTolerance(tolerance, List.of());
        }
        return new KickCheck(
                scenario, kick, tolerance, surface, required, verdict(tolerance, surface, required, deciding));
    }

    private Tolerance tolerance(Model model, Scenario scenario, double depth) {
        try {
            model.needs(scenario);
            return model.tolerance(model.kick(scenario, depth), model.hole(depth));
        } catch (Missing missing) {
            return missing.asTolerance();
        } catch (Fault fault) {
            return Tolerance.NotAssessed.of(fault);
        }
    }

    private OptionalDouble required(Scenario scenario) {
        return plan.criteria()
                .map(c -> scenario == Scenario.DRILLED ? c.drilledTolerance() : c.swabbedTolerance())
                .orElse(OptionalDouble.empty());
    }

    private Verdict verdict(Tolerance formation, SurfaceTolerance surface, OptionalDouble required, Model model) {
        if (formation instanceof Tolerance.NotAssessed not) {
            return verdict(not);
        }
        if (formation instanceof Tolerance.FailsOnIntensity fails) {
            return new Verdict(
                    Verdict.Outcome.FAILS,
                    "fails on intensity alone",
                    fails.weakPoint().name());
        }
        if (surface.tolerance() instanceof Tolerance.FailsOnIntensity fails) {
            return new Verdict(
                    Verdict.Outcome.FAILS,
                    "fails at casing or equipment on intensity alone" + withoutBackUp(fails.weakPoint()),
                    fails.weakPoint().name());
        }
        if (required.isEmpty()) {
            return new Verdict(
                    Verdict.Outcome.NOT_ASSESSED,
                    "not assessed: the case sets no required volume",
                    governing(formation, surface));
        }
        if (!holds(formation, required.getAsDouble())) {
            return new Verdict(Verdict.Outcome.FAILS, "fails at the formation", governing(formation));
        }
        if (!(surface.tolerance() instanceof Tolerance.NotAssessed)
                && !holds(surface.tolerance(), required.getAsDouble())) {
            return new Verdict(
                    Verdict.Outcome.FAILS,
                    "fails at casing or equipment on the way to surface",
                    governing(surface.tolerance()));
        }
        String unknown = model.unknownStrength();
        if (!unknown.isEmpty()) {
            String where = unknown.equals("open hole") ? "holds at the shoe" : "holds where the strength is known";
            return new Verdict(
                    Verdict.Outcome.NOT_ASSESSED,
                    where + "; " + unknown + " not assessed",
                    governing(formation, surface));
        }
        String scope = surface.complete() ? "holds" : "holds (formation only)";
        return new Verdict(Verdict.Outcome.HOLDS, scope, governing(formation, surface));
    }

    /** Casing that bursts under the mud alone often does so for want of the pressure outside. */
    private String withoutBackUp(WeakPoint weak) {
        Optional<CasingString> burst = input.casing().stream()
                .filter(s -> weak.name().startsWith(s.name()))
                .findFirst();
        if (burst.isEmpty()) {
            return "";
        }
        boolean assumed = burst.get().backUp().isEmpty();
        String missing = burst.get().mixWaterDensity().isEmpty() ? "casing string: mix water density" : "";
        missing = input.earth().porePressure().isEmpty() ? "earth: pore pressure" : missing;
        return ", casing burst"
                + (assumed && !missing.isEmpty() ? " with no back-up outside (missing: " + missing + ")" : "");
    }

    private static Verdict verdict(Tolerance.NotAssessed not) {
        String missing = not.missing().isEmpty() ? "" : " (missing: " + not.missing() + ")";
        return new Verdict(Verdict.Outcome.NOT_ASSESSED, "not assessed: " + not.reason() + missing, "", not.amounts());
    }

    private static boolean holds(Tolerance tolerance, double required) {
        return tolerance instanceof Tolerance.Unlimited
                || tolerance instanceof Tolerance.Finite finite && finite.volume() >= required;
    }

    /** What sets the lesser of both tolerances. */
    private static String governing(Tolerance formation, SurfaceTolerance surface) {
        boolean surfaceIsLess = surface.tolerance() instanceof Tolerance.Finite s
                && !(formation instanceof Tolerance.Finite f && f.volume() <= s.volume());
        return governing(surfaceIsLess ? surface.tolerance() : formation);
    }

    private static String governing(Tolerance tolerance) {
        if (tolerance instanceof Tolerance.Finite finite) {
            return finite.weakPoint().name() + ", " + finite.stage().moment().title();
        }
        return "";
    }

    /**
     * The worst of the checks, all of them named where several are equally bad: fails before not assessed before holds. A
     * kick without a criterion does not count where the other has one, unless it breaks the well by itself.
     */
    private static Verdict combined(KickCheck drilled, KickCheck swabbed, Verdict window) {
        List<Verdict> checks = new ArrayList<>();
        boolean both = counts(drilled, swabbed) && counts(swabbed, drilled);
        if (both && saysTheSame(drilled.verdict(), swabbed.verdict())) {
            Verdict same = drilled.verdict();
            String governing = joined(
                    Stream.of(same.governing(), swabbed.verdict().governing()).filter(g -> !g.isEmpty()));
            checks.add(named(
                    "drilled and swabbed kick",
                    new Verdict(same.outcome(), same.statement(), governing, same.amounts())));
        } else {
            if (counts(drilled, swabbed)) {
                checks.add(named("drilled kick", drilled.verdict()));
            }
            if (counts(swabbed, drilled)) {
                checks.add(named("swabbed kick", swabbed.verdict()));
            }
        }
        checks.add(named("", window));
        Verdict.Outcome worst = checks.stream()
                .map(Verdict::outcome)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        List<Verdict> decisive =
                checks.stream().filter(v -> v.outcome() == worst).toList();
        if (worst == Verdict.Outcome.HOLDS) {
            return decisive.get(0);
        }
        Wording statement = Wording.joined(
                decisive.stream()
                        .map(v -> new Wording(v.statement(), v.amounts()))
                        .distinct()
                        .toList(),
                "; ");
        return new Verdict(
                worst,
                worst.title() + ": " + statement.text(),
                joined(decisive.stream().map(Verdict::governing).filter(g -> !g.isEmpty())),
                statement.amounts());
    }

    /** Fails or is not assessed for one reason, which is then told once. */
    private static boolean saysTheSame(Verdict drilled, Verdict swabbed) {
        return drilled.outcome() != Verdict.Outcome.HOLDS
                && drilled.outcome() == swabbed.outcome()
                && drilled.statement().equals(swabbed.statement())
                && drilled.amounts().equals(swabbed.amounts());
    }

    private static boolean counts(KickCheck kick, KickCheck other) {
        return kick.required().isPresent()
                || other.required().isEmpty()
                || kick.verdict().outcome() == Verdict.Outcome.FAILS;
    }

    private static String joined(Stream<String> words) {
        return words.distinct().collect(Collectors.joining("; "));
    }

    /** What a check found, without its outcome in front, which is said once for all of them. */
    private static Verdict named(String check, Verdict verdict) {
        if (verdict.outcome() == Verdict.Outcome.HOLDS) {
            return verdict;
        }
        String outcome = verdict.outcome().title();
        String statement = verdict.statement();
        String rest = statement.startsWith(outcome)
                ? statement.substring(outcome.length()).replaceFirst("^:", check.isEmpty() ? "" : ",")
                : " " + statement;
        return new Verdict(verdict.outcome(), (check + rest).trim(), verdict.governing(), verdict.amounts());
    }

    private List<DepthPoint> alongSection(Model model, MaaspCalculator maasps, LongConsumer progress) {
        int n = depths(input);
        List<DepthPoint> points = new ArrayList<>(n);
        for (int i = 1; i <= n; i++) {
            double depth = i == n ? bottom : shoe + (bottom - shoe) * i / n;
            Tolerance drilled = tolerance(model, Scenario.DRILLED, depth);
            points.add(new DepthPoint(
                    depth,
                    input.path().verticalDepth(depth),
                    drilled,
                    tolerance(model, Scenario.SWABBED, depth),
                    maasps.formation(depth),
                    drilled instanceof Tolerance.NotAssessed ? OptionalDouble.empty() : shoeMargin(model, depth)));
            progress.accept(i);
        }
        return points;
    }

    private OptionalDouble shoeMargin(Model model, double depth) {
        Optional<Volume> volume = volume(Scenario.DRILLED);
        if (volume.isEmpty() || !model.shoeKnown()) {
            return OptionalDouble.empty();
        }
        try {
            Kick kick = model.kick(Scenario.DRILLED, depth);
            return OptionalDouble.of(
                    model.shoeMargin(kick, model.hole(depth), volume.get().value()));
        } catch (Fault larger) {
            // An influx larger than the annulus has no displacement; the tolerance says how much fits.
            return OptionalDouble.empty();
        }
    }

    private record Volume(double value, String basis) {}

    private Optional<Volume> volume(Scenario scenario) {
        OptionalDouble required = required(scenario);
        if (required.isPresent() && required.getAsDouble() > 0) {
            return Optional.of(new Volume(required.getAsDouble(), "required tolerance"));
        }
        return plan.detectableGain().isPresent() && plan.detectableGain().getAsDouble() > 0
                ? Optional.of(new Volume(plan.detectableGain().getAsDouble(), "detectable gain"))
                : Optional.empty();
    }

    private List<InfluxMargin> margins(Model model, KickResult drilled, KickResult swabbed, List<Warning> warnings) {
        List<InfluxMargin> margins = new ArrayList<>();
        if (!model.shoeKnown()) {
            return margins;
        }
        for (KickResult result : List.of(drilled, swabbed)) {
            Optional<Volume> volume = volume(result.scenario());
            if (volume.isEmpty() || result.kick().isEmpty() || result.tolerance() instanceof Tolerance.NotAssessed) {
                continue;
            }
            try {
                margins.add(model.margin(
                        result.kick().get(),
                        model.hole(bottom),
                        volume.get().value(),
                        volume.get().basis()));
            } catch (Fault fault) {
                // An influx larger than the annulus, on bottom or expanded, has no displacement to follow.
                warnings.add(new Warning(
                        "influx margin",
                        fault.wording()
                                .within(
                                        "not given for the "
                                                + result.scenario().title() + " with the volume of the "
                                                + volume.get().basis() + ": ",
                                        ".")));
            }
        }
        return margins;
    }

    private List<IntensityPoint> volumeAgainstIntensity(Model model) {
        try {
            model.needs(Scenario.SWABBED);
            DrilledHole hole = model.hole(bottom);
            double zeroGain = model.zeroGainIntensity(hole);
            double asked = plan.criteria()
                    .map(Criteria::kickIntensity)
                    .orElse(OptionalDouble.empty())
                    .orElse(0);
            TreeSet<Double> intensities = new TreeSet<>(List.of(0.0, asked));
            double highest = Math.max(zeroGain, asked);
            for (int i = 1; i < INTENSITY_POINTS; i++) {
                double intensity = highest * i / (INTENSITY_POINTS - 1);
                if (Math.abs(intensity - asked) > SAME_INTENSITY) {
                    intensities.add(intensity);
                }
            }
            List<IntensityPoint> points = new ArrayList<>();
            for (double intensity : intensities) {
                points.add(
                        new IntensityPoint(intensity, model.tolerance(model.kickOfIntensity(bottom, intensity), hole)));
            }
            return points;
        } catch (Missing | Fault notAssessed) {
            // The tolerance at section TD carries the reason.
            return List.of();
        }
    }

    private IntensityLimit largestIntensity(Model model, OptionalDouble required) {
        if (required.isEmpty()) {
            return new IntensityLimit.NotAssessed("the case sets no required volume");
        }
        try {
            model.needs(Scenario.SWABBED);
            return model.largestIntensity(model.hole(bottom), required.getAsDouble());
        } catch (Missing missing) {
            return new IntensityLimit.NotAssessed(missing.getMessage());
        } catch (Fault fault) {
            return IntensityLimit.NotAssessed.of(fault);
        }
    }

    private IntensityLimit zeroGainMargin(Model model) {
        try {
            model.needs(Scenario.SWABBED);
            DrilledHole hole = model.hole(bottom);
            return new IntensityLimit.Largest(0, model.zeroGainIntensity(hole), model.weakPointWithoutGas(hole));
        } catch (Missing missing) {
            return new IntensityLimit.NotAssessed(missing.getMessage());
        } catch (Fault fault) {
            return IntensityLimit.NotAssessed.of(fault);
        }
    }
}
