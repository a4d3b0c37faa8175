package staunch.table;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import staunch.design.ComparedValue;
import staunch.design.StringSteel;
import staunch.earth.BoundUse;
import staunch.earth.EquivalentZero;
import staunch.earth.OffsetEvidence;
import staunch.envelope.InfluxForm;
import staunch.envelope.InfluxMargin;
import staunch.envelope.IntensityLimit;
import staunch.envelope.Kick;
import staunch.envelope.KickResult;
import staunch.envelope.Maasp;
import staunch.envelope.Masp;
import staunch.envelope.MaspBasis;
import staunch.envelope.MethodOptions;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SurfaceLimit;
import staunch.envelope.SurfaceTolerance;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;
import staunch.envelope.WeakPoint;
import staunch.units.Measure;
import staunch.units.UnitSystem;
import staunch.well.BurstBackUp;
import staunch.well.CasingString;

/** Results in words, with their numbers in chosen units and rounded to the safe side. */
public final class ResultWords {
    private ResultWords() {}

    /** What it means that a design dominates. */
    static String dominance() {
        return "A design dominates another where it is no worse in "
                + Stream.of(ComparedValue.values()).map(ComparedValue::title).collect(Collectors.joining(", "))
                + ", and better in at least one; steel and cost count for the whole well only. What neither design has is"
                + " left out.";
    }

    /** A tolerance in a few words: "38.2 bbl", "no limit, open hole 120.3 bbl", "none, 85 psi short", "not assessed". */
    public static String brief(Tolerance tolerance, UnitSystem units) {
        String note = note(tolerance, units);
        return headline(tolerance, units) + (note.isEmpty() ? "" : ", " + note);
    }

    /** The answer alone: "38.2 bbl", "no limit", "none", "not assessed", "not shut in". */
    public static String headline(Tolerance tolerance, UnitSystem units) {
        if (tolerance instanceof Tolerance.Finite finite) {
            return units.text(finite.volume(), Measure.VOLUME, RoundingMode.FLOOR);
        }
        if (tolerance instanceof Tolerance.Unlimited) {
            return "no limit";
        }
        if (tolerance instanceof Tolerance.FailsOnIntensity) {
            return "none";
        }
        return tolerance instanceof Tolerance.NotShutIn ? "not shut in" : "not assessed";
    }

    /** The number that belongs to a headline without a volume: "open hole 120.3 bbl", "85 psi short"; else empty. */
    public static String note(Tolerance tolerance, UnitSystem units) {
        if (tolerance instanceof Tolerance.Unlimited unlimited) {
            return "open hole " + units.text(unlimited.atLeast(), Measure.VOLUME, RoundingMode.FLOOR);
        }
        if (tolerance instanceof Tolerance.FailsOnIntensity fails) {
            return units.text(fails.shortfall(), Measure.PRESSURE_DIFFERENCE, RoundingMode.CEILING) + " short";
        }
        return "";
    }

    /** A tolerance in one sentence part: its volume, where it has one, and {@link #outcome}. */
    public static String full(Tolerance tolerance, UnitSystem units) {
        String outcome = outcome(tolerance, units);
        return tolerance instanceof Tolerance.Finite ? brief(tolerance, units) + ", " + outcome : outcome;
    }

    /** The largest influx that can be circulated to surface, an upper bound in words where a component is left out. */
    public static String headline(SurfaceTolerance surface, UnitSystem units) {
        String answer = headline(surface.tolerance(), units);
        if (surface.leftOut().isEmpty()) {
            return answer;
        }
        if (surface.tolerance() instanceof Tolerance.Unlimited) {
            return answer + " known";
        }
        return surface.tolerance() instanceof Tolerance.Finite ? "at most " + answer : answer;
    }

    /** The largest influx that can be circulated to surface with what governs it, or why there is none. */
    public static String full(SurfaceTolerance surface, UnitSystem units) {
        String outcome = outcome(surface, units);
        return surface.tolerance() instanceof Tolerance.Finite ? headline(surface, units) + ", " + outcome : outcome;
    }

    /** What governs an influx on its way to surface, and what is left out. */
    public static String outcome(SurfaceTolerance surface, UnitSystem units) {
        String left = surface.leftOut().isEmpty() ? "" : "; not counted: " + String.join("; ", surface.leftOut());
        return outcome(surface.tolerance(), units) + left;
    }

    /** What governs a tolerance, or what is missing for it, without the volume of a finite one. */
    public static String outcome(Tolerance tolerance, UnitSystem units) {
        if (tolerance instanceof Tolerance.Finite finite) {
            return tolerance.summary() + place(finite.weakPoint(), units);
        }
        if (tolerance instanceof Tolerance.Unlimited unlimited) {
            return tolerance.summary() + " ("
                    + units.text(unlimited.atLeast(), Measure.VOLUME, RoundingMode.FLOOR)
                    + ")";
        }
        if (tolerance instanceof Tolerance.FailsOnIntensity fails) {
            return tolerance.summary()
                    + place(fails.weakPoint(), units)
                    + ", "
                    + units.text(fails.shortfall(), Measure.PRESSURE_DIFFERENCE, RoundingMode.CEILING)
                    + " short";
        }
        return summary(tolerance, units);
    }

    /** A tolerance in words without its volume, the reason where there is none in the given units. */
    public static String summary(Tolerance tolerance, UnitSystem units) {
        if (tolerance instanceof Tolerance.NotAssessed open) {
            return "not assessed: " + open.reason(units)
                    + (open.missing().isEmpty() ? "" : " (missing: " + open.missing() + ")");
        }
        return tolerance.summary();
    }

    /** An intensity limit in words. */
    public static String text(IntensityLimit limit, UnitSystem units) {
        if (limit instanceof IntensityLimit.Largest largest) {
            return units.text(largest.intensity(), Measure.DENSITY_DIFFERENCE, RoundingMode.FLOOR)
                    + " above the static mud, limited at "
                    + largest.weakPoint().name();
        }
        if (limit instanceof IntensityLimit.NeverHeld never) {
            return units.text(never.volume(), Measure.VOLUME) + " is not held at any intensity";
        }
        return "not assessed: " + ((IntensityLimit.NotAssessed) limit).reason(units);
    }

    /**
     * What the formation holds, an upper bound in words where the strength of a part of the open hole is not known: "at
     * most 38.2 bbl", "no limit known".
     */
    public static String formation(SectionEnvelope section, KickResult kick, UnitSystem units) {
        return formation(section.maasp(), kick, units);
    }

    static String formation(Optional<Maasp> maasp, KickResult kick, UnitSystem units) {
        String answer = headline(kick.tolerance(), units);
        if (!strengthPartlyUnknown(maasp)) {
            return answer;
        }
        if (kick.tolerance() instanceof Tolerance.Unlimited) {
            return answer + " known";
        }
        return kick.tolerance() instanceof Tolerance.Finite ? "at most " + answer : answer;
    }

    /** Whether a part of the open hole has no strength, so that figures of the formation are upper bounds. */
    public static boolean strengthPartlyUnknown(Optional<Maasp> maasp) {
        return maasp.filter(m -> m.formation().isPresent())
                .filter(m -> m.components().stream()
                        .anyMatch(c -> c.type() == SurfaceLimit.Type.FORMATION
                                && c.pressure().isEmpty()))
                .isPresent();
    }

    /** Formation MAASP in words with "at most" where a part of the open hole has no strength, or why there is none. */
    public static String formationMaasp(Optional<Maasp> maasp, UnitSystem units) {
        return maasp.flatMap(Maasp::formation)
                .filter(f -> f.pressure().isPresent())
                .map(f -> (strengthPartlyUnknown(maasp) ? "at most " : "")
                        + units.text(f.pressure().getAsDouble(), Measure.PRESSURE_GAUGE, RoundingMode.FLOOR))
                .orElse("not assessed");
    }

    /** Lowest surface limit in words with "at most" where a component is missing, or why there is none. */
    public static String lowestSurfaceLimit(Optional<Maasp> maasp, UnitSystem units) {
        return maasp.flatMap(Maasp::lowest)
                .filter(f -> f.pressure().isPresent())
                .map(f -> (maasp.get().atMost() ? "at most " : "")
                        + units.text(f.pressure().getAsDouble(), Measure.PRESSURE_GAUGE, RoundingMode.FLOOR))
                .orElse("not assessed");
    }

    /** MASP in words with where it stands and whether the ratings hold it, or why there is none. */
    public static String masp(Optional<Masp> masp, UnitSystem units) {
        return masp.map(m -> m.pressure().isPresent()
                        ? maspPressure(m, units) + " at " + m.at() + ", "
                                + m.verdict().outcome().title()
                        : "not assessed")
                .orElse("–");
    }

    /** A MASP alone, rounded up; "not assessed" where there is none. */
    public static String maspPressure(Masp masp, UnitSystem units) {
        return masp.pressure().isPresent()
                ? units.text(masp.pressure().getAsDouble(), Measure.PRESSURE_GAUGE, RoundingMode.CEILING)
                : "not assessed";
    }

    /** Basis of a MASP in a few words with its number. */
    public static String basis(MaspBasis basis, UnitSystem units) {
        if (basis instanceof MaspBasis.KickLimited kick) {
            return "kick-limited, influx of " + units.text(kick.volume(), Measure.VOLUME);
        }
        if (basis instanceof MaspBasis.MudAndGas mixed) {
            return UnitSystem.SI.precise(100 * mixed.mudShare(), Measure.NUMBER) + " % mud below gas";
        }
        return basis instanceof MaspBasis.FractureLimited ? "fracture-limited" : "gas to surface";
    }

    /** Where equivalent mud weights count from, as a sentence. */
    public static String equivalentFrom(EquivalentZero zero) {
        return "Equivalent mud weights (EMW) from " + zero.name() + ".";
    }

    /** What stands outside a casing against a burst. */
    static String backUp(CasingString string, UnitSystem units) {
        Optional<BurstBackUp> given = string.backUp();
        if (given.isPresent() && given.get() instanceof BurstBackUp.OfDensity column) {
            return "as specified, " + units.text(column.density(), Measure.DENSITY);
        }
        if (given.isPresent()) {
            return "as specified, by depth";
        }
        return string.mixWaterDensity().isPresent()
                ? "pore pressure or mix water of "
                        + units.text(string.mixWaterDensity().getAsDouble(), Measure.DENSITY)
                : "none";
    }

    /** The margin of one scenario while its influx is circulated out, in a few words; empty where there is none. */
    public static Optional<InfluxMargin> margin(SectionEnvelope section, Kick.Scenario scenario) {
        return section.margins().stream().filter(m -> m.scenario() == scenario).findFirst();
    }

    /** Name and depth of a weak point. */
    public static String text(WeakPoint point, UnitSystem units) {
        return point.name() + place(point, units);
    }

    /** The statement of a verdict without its outcome in front; the outcome alone where there is no more to say. */
    public static String detail(Verdict verdict, UnitSystem units) {
        String outcome = verdict.outcome().title() + ": ";
        String statement = verdict.statement(units);
        return statement.startsWith(outcome) ? statement.substring(outcome.length()) : statement;
    }

    /** One sentence that answers for the whole well: which sections fail, are not assessed, hold or are not shut in. */
    public static String verdict(List<SectionEnvelope> sections) {
        List<String> parts = new ArrayList<>();
        part(sections, Verdict.Outcome.FAILS, "fails", "fail").ifPresent(parts::add);
        part(sections, Verdict.Outcome.NOT_ASSESSED, "is not assessed", "are not assessed")
                .ifPresent(parts::add);
        Map<Boolean, List<SectionEnvelope>> whole = sections.stream()
                .collect(Collectors.partitioningBy(s -> s.verdict().statement().startsWith("holds (formation only)")));
        part(whole.get(false), Verdict.Outcome.HOLDS, "holds", "hold").ifPresent(parts::add);
        part(whole.get(true), Verdict.Outcome.HOLDS, "holds (formation only)", "hold (formation only)")
                .ifPresent(parts::add);
        part(sections, Verdict.Outcome.NOT_SHUT_IN, "is not shut in", "are not shut in")
                .ifPresent(parts::add);
        return String.join("; ", parts) + ".";
    }

    /**
     * The sections whose MASP reaches a rating, as a sentence; empty where there are none. Where it does so by one basis and
     * not by the other, the basis is named.
     */
    public static String maspFailures(List<SectionEnvelope> sections, UnitSystem units) {
        List<String> names = new ArrayList<>();
        for (SectionEnvelope section : sections) {
            List<Masp> failing = section.masps().stream()
                    .filter(m -> m.verdict().outcome() == Verdict.Outcome.FAILS)
                    .toList();
            if (failing.isEmpty()) {
                continue;
            }
            String by = failing.size() == section.masps().size()
                    ? ""
                    : " (by " + basis(failing.get(0).basis(), units) + ")";
            names.add(section.plan().name() + by);
        }
        return names.isEmpty() ? "" : "MASP, a design load, reaches a rating in " + joined(names) + ".";
    }

    /** Methods chosen other than the defaults, as a sentence; empty where there are none. */
    public static String departures(MethodOptions options, Optional<OffsetEvidence> evidence) {
        List<String> chosen = new ArrayList<>(options.departures());
        evidence.map(OffsetEvidence::boundUse)
                .filter(use -> use != BoundUse.LISTED)
                .ifPresent(use -> chosen.add("bounds of offset wells: " + use.title()));
        return chosen.isEmpty() ? "" : "Chosen instead of the defaults: " + String.join("; ", chosen) + ".";
    }

    private static String joined(List<String> names) {
        return names.size() == 1
                ? names.get(0)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }

    /** What the weights of steel are of. */
    static String steel() {
        return "Plain pipe of nominal diameters at "
                + UnitSystem.METRIC.text(StringSteel.DENSITY, Measure.DENSITY)
                + ", couplings not counted; where the case gives the nominal weight, by that, threaded and coupled.";
    }

    /** The choices of method as question and answer. */
    static List<List<String>> options(MethodOptions options, UnitSystem units) {
        return List.of(
                List.of("Kick tolerance", options.definition().title()),
                List.of("Pressure of a drilled kick", options.drilledPressure().title()),
                List.of("Weak points", options.weakPoint().title()),
                List.of("Deciding estimates", options.estimates().title()),
                List.of("Gas", options.gasModel().title()),
                List.of("Circulation", options.method().title()),
                List.of("Mud density", options.mudDensity().title()),
                List.of("MASP", options.maspBasis().title() + maspNumber(options.maspBasis(), units)),
                List.of(
                        "Equivalent mud weights from",
                        options.equivalentDensityFrom().title()),
                List.of("Form of the influx", influx(options.influx())),
                List.of("Annular friction", options.annularFriction().title()),
                List.of("Seawater back-up of wellhead and BOP", options.seawaterCredit() ? "counted" : "not counted"),
                List.of(
                        "Depths along a section",
                        "at least "
                                + options.depthCount()
                                + ", not more than "
                                + units.text(options.depthStep(), Measure.LENGTH)
                                + " apart"));
    }

    private static String influx(InfluxForm influx) {
        return influx instanceof InfluxForm.Distributed spread
                ? influx.title() + " (gas fraction " + UnitSystem.SI.precise(spread.gasFraction(), Measure.NUMBER) + ")"
                : influx.title();
    }

    /** A share in percent: "80 %", "not given". */
    static String share(OptionalDouble share) {
        return share.isPresent()
                ? UnitSystem.SI.precise(100 * share.getAsDouble(), Measure.NUMBER) + " %"
                : "not given";
    }

    private static String maspNumber(MaspBasis basis, UnitSystem units) {
        boolean numbered = basis instanceof MaspBasis.KickLimited || basis instanceof MaspBasis.MudAndGas;
        return numbered ? " (" + basis(basis, units) + ")" : "";
    }

    private static String place(WeakPoint point, UnitSystem units) {
        return " (" + units.text(point.verticalDepth(), Measure.DEPTH) + " TVD)";
    }

    private static Optional<String> part(
            List<SectionEnvelope> sections, Verdict.Outcome outcome, String one, String several) {
        List<String> names = sections.stream()
                .filter(s -> s.verdict().outcome() == outcome)
                .map(s -> s.plan().name())
                .toList();
        if (names.isEmpty()) {
            return Optional.empty();
        }
        if (names.size() == 1) {
            return Optional.of(names.get(0) + " " + one);
        }
        return Optional.of(joined(names) + " " + several);
    }
}
