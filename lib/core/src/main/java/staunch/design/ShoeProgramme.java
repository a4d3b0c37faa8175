package staunch.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.envelope.Criteria;
import staunch.envelope.Drilling;
import staunch.envelope.MethodOptions;
import staunch.envelope.SectionInput;
import staunch.envelope.SectionPlan;
import staunch.fluid.Mud;
import staunch.units.InputFault;
import staunch.units.Physics;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.HoleInterval;

/**
 * A casing design whose shoes move and whose strings may be left out.
 *
 * <ul>
 *   <li>A string grows or shrinks at its lower end; its intervals keep their depths. A liner keeps its lap with the string
 *       above it, and its cement its top at the liner's.
 *   <li>A section keeps its bit, string, mud rule, criteria and the rat hole below the next shoe. Its washouts stay where
 *       they are and count as far as the section reaches; the rest has its smallest planned diameter.
 *   <li>The hole of a string that is left out is drilled with the section below it.
 * </ul>
 */
final class ShoeProgramme {
    private static final double SAME_DEPTH = 0.01;
    private static final double LINER_TOP = 50;

    /** Least hole above and below a shoe, m. */
    static final double LEAST_HOLE = 1;

    private final WellCase wellCase;
    private final CasingDesign base;
    private final MethodOptions options;
    private final MudRule rule;
    private final List<SectionPlan> sections;

    /** String whose shoe is the top of each section; null where none is. */
    private final CasingString[] above;

    private final int firstMovable;

    ShoeProgramme(WellCase wellCase, CasingDesign base, MethodOptions options, MudRule rule) {
        this.wellCase = wellCase;
        this.base = base;
        this.options = options;
        this.rule = rule;
        this.sections = base.sections();
        this.above = new CasingString[sections.size()];
        for (int i = 0; i < above.length; i++) {
            for (CasingString string : base.strings()) {
                if (Math.abs(string.shoeDepth() - sections.get(i).topDepth()) <= SAME_DEPTH) {
                    above[i] = string;
                }
            }
        }
        int first = sections.size();
        while (first > 1 && sections.get(first - 1).drilling() == Drilling.SHUT_IN && above[first - 1] != null) {
            first--;
        }
        this.firstMovable = first;
        boolean moving = options.mudDensity() == MethodOptions.MudDensityModel.PRESSURE_AND_TEMPERATURE;
        if (rule == MudRule.LIGHTEST && moving) {
            throw new InputFault(
                    "mud of the shoe search",
                    "cannot be the lightest one where mud density moves with pressure and temperature",
                    "search with the planned muds, or with constant mud density");
        }
    }

    /** Strings that can be moved, downwards: those above the sections that are shut in, from the first below which all are. */
    List<CasingString> movable() {
        return List.of(Arrays.copyOfRange(above, firstMovable, above.length));
    }

    /** Why a string is not moved; empty where it is. */
    Optional<String> fixed(CasingString string) {
        for (int i = firstMovable; i < above.length; i++) {
            if (above[i] == string) {
                return Optional.empty();
            }
        }
        return Optional.of(
                Arrays.asList(above).contains(string)
                        ? "the section below it, or one farther down, is not shut in"
                        : "no section is drilled below it");
    }

    /** Whether a string hangs from the one above it, so that it does not cover it. */
    boolean liner(CasingString string) {
        return string.topDepth() > wellCase.datum().groundOrSeabedDepth() + LINER_TOP;
    }

    /** Measured depth above all movable shoes: the shoe, or the top of the hole, that the first of their sections has. */
    double top() {
        return sections.get(firstMovable - 1).topDepth();
    }

    double bottom() {
        return sections.get(sections.size() - 1).bottomDepth();
    }

    /** Index of the section that ends at a string, or at the bottom of the well where there is none. */
    private int endingAt(Optional<CasingString> lower) {
        for (int i = 1; lower.isPresent() && i < above.length; i++) {
            if (above[i] == lower.get()) {
                return i - 1;
            }
        }
        return above.length - 1;
    }

    private double ratHole(int section) {
        return section + 1 < above.length && above[section + 1] != null
                ? sections.get(section).bottomDepth() - above[section + 1].shoeDepth()
                : 0;
    }

    boolean shutIn(Optional<CasingString> lower) {
        return sections.get(endingAt(lower)).drilling() == Drilling.SHUT_IN;
    }

    /**
     * What one section is checked with.
     *
     * @param upper string at its top; empty where it is the first below fixed hole
     * @param lower string that is set in it; empty for the last section
     * @param shoes depths of strings that moved
     * @param leftOut strings that are not set
     */
    SectionInput section(
            Optional<CasingString> upper,
            Optional<CasingString> lower,
            Map<CasingString, Double> shoes,
            Set<CasingString> leftOut) {
        int i = endingAt(lower);
        double from = upper.map(u -> shoe(u, shoes)).orElse(top());
        double to = lower.isPresent() ? shoe(lower.get(), shoes) + ratHole(i) : bottom();
        List<CasingString> casing = upper.map(u -> strings(u, shoes, leftOut)).orElseGet(() -> fixedStrings(from));
        SectionPlan plan = stretched(sections.get(i), from, Math.min(to, bottom()));
        return new SectionInput(
                wellCase.datum(), wellCase.path(), wellCase.earth(), casing, wellCase.equipment(), plan, options);
    }

    private List<CasingString> fixedStrings(double shoe) {
        return base.strings().stream()
                .filter(s -> s.shoeDepth() <= shoe + SAME_DEPTH)
                .toList();
    }

    private static double shoe(CasingString string, Map<CasingString, Double> shoes) {
        return shoes.getOrDefault(string, string.shoeDepth());
    }

    /** Strings down to one, which stands where it stands; a string above it stands above it. */
    private List<CasingString> strings(CasingString last, Map<CasingString, Double> shoes, Set<CasingString> leftOut) {
        List<CasingString> kept = base.strings().subList(0, base.strings().indexOf(last) + 1).stream()
                .filter(s -> !leftOut.contains(s))
                .toList();
        Map<CasingString, Double> placed = new HashMap<>(shoes);
        double deepest = shoe(last, shoes);
        for (int i = kept.size() - 2; i >= 0; i--) {
            deepest = Math.min(shoe(kept.get(i), shoes), deepest - LEAST_HOLE);
            placed.put(kept.get(i), deepest);
        }
        List<CasingString> moved = new ArrayList<>();
        for (CasingString string : kept) {
            moved.add(moved(string, placed, leftOut));
        }
        return moved;
    }

    private CasingString moved(CasingString string, Map<CasingString, Double> shoes, Set<CasingString> leftOut) {
        double top = string.topDepth();
        if (liner(string)) {
            List<CasingString> before = base.strings().subList(0, base.strings().indexOf(string));
            Optional<CasingString> planned = last(before.stream()
                    .filter(s -> s.shoeDepth() >= string.topDepth())
                    .toList());
            Optional<CasingString> hung =
                    last(before.stream().filter(s -> !leftOut.contains(s)).toList());
            if (planned.isPresent() && hung.isPresent()) {
                double lap = planned.get().shoeDepth() - top;
                top = Math.max(shoe(hung.get(), shoes) - lap, 0);
            }
        }
        double shoe = shoe(string, shoes);
        if (top == string.topDepth() && shoe == string.shoeDepth()) {
            return string;
        }
        OptionalDouble cement = string.topOfCement();
        if (cement.isPresent()) {
            boolean atTop = Math.abs(cement.getAsDouble() - string.topDepth()) <= SAME_DEPTH;
            cement = OptionalDouble.of(atTop ? top : Math.max(top, Math.min(cement.getAsDouble(), shoe)));
        }
        return new CasingString(
                string.name(),
                intervals(string, top, shoe),
                cement,
                string.fluidBehindDensity(),
                string.mixWaterDensity(),
                string.allowedBurstShare(),
                string.testPressure(),
                string.linerTopRating(),
                string.backUp());
    }

    private static Optional<CasingString> last(List<CasingString> strings) {
        return strings.isEmpty() ? Optional.empty() : Optional.of(strings.get(strings.size() - 1));
    }

    private static List<CasingInterval> intervals(CasingString string, double top, double shoe) {
        List<CasingInterval> kept = new ArrayList<>();
        int last = string.intervals().size() - 1;
        double from = top;
        for (int i = 0; i <= last; i++) {
            CasingInterval old = string.intervals().get(i);
            double to = i == last ? shoe : Math.min(old.bottomDepth(), shoe);
            if (to - from > SAME_DEPTH) {
                kept.add(new CasingInterval(
                        from,
                        to,
                        old.outsideDiameter(),
                        old.insideDiameter(),
                        old.grade(),
                        old.yieldStrength(),
                        old.burstRating(),
                        old.connectionRating(),
                        old.wear(),
                        old.nominalWeight()));
                from = to;
            }
        }
        return kept;
    }

    private SectionPlan stretched(SectionPlan plan, double from, double to) {
        if (from == plan.topDepth() && to == plan.bottomDepth()) {
            return withMud(plan);
        }
        double nominal =
                plan.hole().stream().mapToDouble(HoleInterval::diameter).min().orElseThrow();
        List<HoleInterval> hole = new ArrayList<>();
        double at = from;
        for (HoleInterval h : plan.hole()) {
            double top = Math.max(h.topDepth(), from);
            double bottom = Math.min(h.bottomDepth(), to);
            if (h.diameter() > nominal && bottom - top > SAME_DEPTH) {
                if (top - at > SAME_DEPTH) {
                    hole.add(new HoleInterval(at, top, nominal));
                    at = top;
                }
                hole.add(new HoleInterval(at, bottom, h.diameter()));
                at = bottom;
            }
        }
        if (to - at > SAME_DEPTH) {
            hole.add(new HoleInterval(at, to, nominal));
        }
        return withMud(plan.withHole(hole));
    }

    /**
     * Lightest mud: ρ = max over the exposed depths of (p − pₐ) / (g z) + trip margin, with the pore pressure p that
     * decides; linear between the points of the profile in depth, so that the greatest value stands at a point or an end.
     */
    private SectionPlan withMud(SectionPlan plan) {
        Optional<PressureProfile> pore = wellCase.earth()
                .porePressure()
                .map(options.estimates() == MethodOptions.Estimates.LIKELY ? Range::likely : Range::highOrLikely);
        if (rule == MudRule.AS_PLANNED
                || plan.drilling() != Drilling.SHUT_IN
                || plan.mud().isEmpty()
                || pore.isEmpty()) {
            return plan;
        }
        double trip = plan.criteria()
                .map(Criteria::tripMargin)
                .orElse(OptionalDouble.empty())
                .orElse(0);
        TreeSet<Double> depths = new TreeSet<>(List.of(plan.topDepth(), plan.bottomDepth()));
        for (double z : pore.get().depths()) {
            for (double md : wellCase.path().measuredDepthsAt(z, plan.topDepth(), plan.bottomDepth())) {
                depths.add(md);
            }
        }
        for (double md : wellCase.path().nodesBetween(plan.topDepth(), plan.bottomDepth())) {
            depths.add(md);
        }
        double density = 0;
        for (double md : depths) {
            double z = wellCase.path().verticalDepth(md);
            if (z > 0 && pore.get().covers(z)) {
                double p =
                        md == plan.topDepth() ? pore.get().below(z) : pore.get().highestAt(z);
                density = Math.max(density, (p - Physics.ATMOSPHERE) / (Physics.GRAVITY * z) + trip);
            }
        }
        Mud mud = plan.mud().get();
        return density == 0 ? plan : plan.withMud(mud.withDensity(density * (1 + 1e-12)));
    }

    /** The whole design with these shoes. */
    CasingDesign design(Map<CasingString, Double> shoes, Set<CasingString> leftOut) {
        List<CasingString> strings = base.strings().stream()
                .filter(s -> !leftOut.contains(s))
                .map(s -> moved(s, shoes, leftOut))
                .toList();
        List<SectionPlan> plans = new ArrayList<>(sections.subList(0, firstMovable - 1));
        double from = top();
        for (int i = firstMovable - 1; i < above.length; i++) {
            boolean last = i == above.length - 1;
            if (last || !leftOut.contains(above[i + 1])) {
                double shoe = last ? bottom() : shoe(above[i + 1], shoes);
                plans.add(stretched(sections.get(i), from, last ? shoe : Math.min(shoe + ratHole(i), bottom())));
                from = shoe;
            }
        }
        return new CasingDesign(base.name(), strings, plans, base.prices());
    }
}
