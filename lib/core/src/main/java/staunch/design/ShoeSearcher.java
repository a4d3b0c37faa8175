package staunch.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import staunch.design.ShoeObstacle.Criterion;
import staunch.earth.EarthModel;
import staunch.earth.ExposedStrength;
import staunch.earth.PressureProfile;
import staunch.earth.StrengthTest;
import staunch.envelope.KickCheck;
import staunch.envelope.MethodOptions;
import staunch.envelope.SectionCheck;
import staunch.envelope.SectionEvaluator;
import staunch.envelope.SectionInput;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;
import staunch.units.Fault;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.HoleInterval;

/** Searches the shoe depths of one casing design. */
final class ShoeSearcher {
    /** Greatest distance between depths looked at, m. */
    private static final double STEP = 25;

    private static final double SAME_DEPTH = 0.05;
    private static final int MOST_PASSES = 4;

    private final WellCase wellCase;
    private final CasingDesign base;
    private final MethodOptions options;
    private final MudRule rule;
    private final ShoeProgramme programme;
    private final ShoeScan scan;
    private final List<CasingString> movable;

    ShoeSearcher(WellCase wellCase, CasingDesign base, MethodOptions options, MudRule rule) {
        this.wellCase = wellCase;
        this.base = base;
        this.options = options;
        this.rule = rule;
        this.programme = new ShoeProgramme(wellCase, base, options, rule);
        this.scan = new ShoeScan(wellCase.path(), STEP, along(turns()), jumps());
        this.movable = programme.movable();
    }

    ShoeSearch search(Progress progress) {
        List<ShoeWindow> windows = new ArrayList<>();
        int total = movable.size() + 2;
        int done = 0;
        for (CasingString string : base.strings()) {
            Optional<String> fixed = programme.fixed(string);
            progress.step(done, total, string.name());
            done += fixed.isPresent() ? 0 : 1;
            double shoe = string.shoeDepth();
            windows.add(new ShoeWindow(
                    string.name(),
                    shoe,
                    wellCase.path().verticalDepth(shoe),
                    fixed.isPresent() ? List.of() : window(string),
                    fixed));
        }
        List<JointShoes> joint = new ArrayList<>();
        for (JointShoes.Direction direction : JointShoes.Direction.values()) {
            progress.step(done++, total, "all strings");
            joint.add(joint(direction));
        }
        progress.step(total, total, "done");
        return new ShoeSearch(base.name(), rule, options, STEP, windows, joint);
    }

    /** Vertical depths at which pressures of the rock turn. */
    private TreeSet<Double> turns() {
        TreeSet<Double> vertical = new TreeSet<>();
        profiles().forEach(p -> {
            for (double z : p.depths()) {
                vertical.add(z);
            }
        });
        return vertical;
    }

    private List<PressureProfile> profiles() {
        return Stream.of(wellCase.earth().porePressure(), wellCase.earth().strength())
                .flatMap(Optional::stream)
                .flatMap(r -> Stream.of(Optional.of(r.likely()), r.low(), r.high()))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Measured depths at which rock, hole or casing jump, and from which a strength test counts as the shoe's. */
    private double[] jumps() {
        EarthModel earth = wellCase.earth();
        TreeSet<Double> vertical = new TreeSet<>();
        for (PressureProfile profile : profiles()) {
            double[] z = profile.depths();
            vertical.addAll(List.of(profile.top(), profile.bottom()));
            for (int i = 1; i < z.length; i++) {
                if (z[i] == z[i - 1]) {
                    vertical.add(z[i]);
                }
            }
        }
        for (StrengthTest test : earth.tests()) {
            vertical.add(test.verticalDepth());
            vertical.add(test.verticalDepth() - ExposedStrength.SHOE_TEST_REACH);
            vertical.add(test.verticalDepth() + ExposedStrength.SHOE_TEST_RECORDING);
        }
        earth.weakZones().forEach(z -> vertical.addAll(List.of(z.topVerticalDepth(), z.bottomVerticalDepth())));
        earth.stayOuts().forEach(z -> vertical.addAll(List.of(z.topVerticalDepth(), z.bottomVerticalDepth())));
        Stream<HoleInterval> hole = base.sections().stream().flatMap(s -> s.hole().stream());
        Stream<CasingInterval> casing = base.strings().stream().flatMap(s -> s.intervals().stream());
        return Stream.of(
                        Arrays.stream(along(vertical)),
                        hole.flatMapToDouble(h -> DoubleStream.of(h.topDepth(), h.bottomDepth())),
                        casing.flatMapToDouble(c -> DoubleStream.of(c.topDepth(), c.bottomDepth())))
                .flatMapToDouble(d -> d)
                .distinct()
                .toArray();
    }

    private double[] along(Collection<Double> vertical) {
        double end = Math.min(programme.bottom(), wellCase.path().end());
        return vertical.stream()
                .flatMapToDouble(z -> Arrays.stream(wellCase.path().measuredDepthsAt(z, 0, end)))
                .toArray();
    }

    /** One string moves; the section above and the section below it are checked. */
    private List<ShoeStretch> window(CasingString string) {
        int i = movable.indexOf(string);
        Optional<CasingString> upper = i > 0 ? Optional.of(movable.get(i - 1)) : Optional.empty();
        Optional<CasingString> lower = i + 1 < movable.size() ? Optional.of(movable.get(i + 1)) : Optional.empty();
        double from = upper.map(CasingString::shoeDepth).orElse(programme.top());
        double to = lower.map(CasingString::shoeDepth).orElse(programme.bottom());
        List<Between> sections =
                List.of(new Between(upper, Optional.of(string)), new Between(Optional.of(string), lower));
        return scan(from, to, string, sections, Map.of(), Set.of());
    }

    /** A section by the strings at its ends; empty at the top and the bottom of what is searched. */
    private record Between(Optional<CasingString> upper, Optional<CasingString> lower) {}

    /**
     * Depths of one string between two depths; no stretches where there is no room.
     *
     * @param sections that must hold
     * @param shoes depths of other strings that moved
     */
    private List<ShoeStretch> scan(
            double from,
            double to,
            CasingString string,
            List<Between> sections,
            Map<CasingString, Double> shoes,
            Set<CasingString> leftOut) {
        boolean open =
                sections.stream().anyMatch(s -> s.lower().equals(Optional.of(string)) && !programme.shutIn(s.lower()));
        double top = from + ShoeProgramme.LEAST_HOLE;
        double deepest = to - ShoeProgramme.LEAST_HOLE;
        double bottom = open ? Math.min(deepest, string.shoeDepth()) : deepest;
        if (bottom - top < ShoeProgramme.LEAST_HOLE) {
            return List.of();
        }
        return scan.stretches(
                top,
                bottom,
                open && bottom < deepest ? Criterion.NOT_SHUT_IN_ABOVE : Criterion.END_OF_SEARCH,
                depth -> stayOuts(depth).isEmpty()
                        && sections.stream().allMatch(s -> holds(s, with(shoes, string, depth), leftOut)),
                depth -> {
                    List<ShoeObstacle> found = new ArrayList<>(stayOuts(depth));
                    sections.forEach(s -> found.addAll(obstacles(s, with(shoes, string, depth), leftOut)));
                    return found;
                });
    }

    private static Map<CasingString, Double> with(Map<CasingString, Double> shoes, CasingString string, double depth) {
        Map<CasingString, Double> all = new HashMap<>(shoes);
        all.put(string, depth);
        return all;
    }

    private boolean holds(Between section, Map<CasingString, Double> shoes, Set<CasingString> leftOut) {
        try {
            return SectionEvaluator.holds(programme.section(section.upper(), section.lower(), shoes, leftOut));
        } catch (Fault notAssessed) {
            // What is wrong there is told where the stretch ends.
            return false;
        }
    }

    private List<ShoeObstacle> stayOuts(double measuredDepth) {
        double z = wellCase.path().verticalDepth(measuredDepth);
        return wellCase.earth().stayOuts().stream()
                .filter(s -> s.holds(z))
                .map(s -> new ShoeObstacle(Criterion.STAY_OUT, "", s.reason(), s.name()))
                .toList();
    }

    private List<ShoeObstacle> obstacles(Between section, Map<CasingString, Double> shoes, Set<CasingString> leftOut) {
        SectionInput input;
        SectionCheck check;
        try {
            input = programme.section(section.upper(), section.lower(), shoes, leftOut);
            check = SectionEvaluator.check(input);
        } catch (Fault fault) {
            return List.of(new ShoeObstacle(Criterion.NOT_ASSESSED, "", fault.getMessage(), ""));
        }
        return obstacles(input.plan().name(), check);
    }

    static List<ShoeObstacle> obstacles(String section, SectionCheck check) {
        List<ShoeObstacle> found = new ArrayList<>();
        Verdict window = check.window();
        if (check.verdict().outcome() == Verdict.Outcome.NOT_SHUT_IN) {
            if (window.outcome() == Verdict.Outcome.FAILS) {
                found.add(obstacle(windowCriterion(window), section, window));
            }
            return found;
        }
        if (check.verdict().outcome() == Verdict.Outcome.HOLDS) {
            return found;
        }
        if (window.outcome() == Verdict.Outcome.FAILS || !window.governing().isEmpty()) {
            found.add(obstacle(windowCriterion(window), section, window));
        }
        add(found, section, check.drilled(), Criterion.DRILLED_TOLERANCE);
        add(found, section, check.swabbed(), Criterion.SWABBED_TOLERANCE);
        if (found.isEmpty()) {
            found.add(obstacle(Criterion.NOT_ASSESSED, section, check.verdict()));
        }
        return found;
    }

    private static void add(List<ShoeObstacle> found, String section, KickCheck kick, Criterion formation) {
        if (kick.verdict().outcome() == Verdict.Outcome.FAILS) {
            boolean rock = kick.tolerance() instanceof Tolerance.FailsOnIntensity
                    || kick.tolerance() instanceof Tolerance.Finite finite
                            && kick.required().isPresent()
                            && finite.volume() < kick.required().getAsDouble();
            found.add(obstacle(rock ? formation : Criterion.CASING_OR_EQUIPMENT, section, kick.verdict()));
        }
    }

    private static Criterion windowCriterion(Verdict window) {
        return window.governing().equals("pore pressure") ? Criterion.PORE_PRESSURE : Criterion.STRENGTH;
    }

    private static ShoeObstacle obstacle(Criterion criterion, String section, Verdict verdict) {
        return new ShoeObstacle(criterion, section, verdict.statement(), verdict.governing());
    }

    /** Subsets of the strings by their number, until one works; of several the one with the least steel. */
    private JointShoes joint(JointShoes.Direction direction) {
        int n = movable.size();
        if (n == 0) {
            return nothing(direction, "no string can be moved");
        }
        Set<List<CasingString>> hopeless = new HashSet<>();
        for (int size = 0; size <= n; size++) {
            List<JointShoes> working = new ArrayList<>();
            for (int bits = 0; bits < 1 << n; bits++) {
                if (Integer.bitCount(bits) == size) {
                    Set<CasingString> leftOut = new HashSet<>();
                    for (int i = 0; i < n; i++) {
                        if ((bits >> i & 1) == 0) {
                            leftOut.add(movable.get(i));
                        }
                    }
                    solve(direction, leftOut, hopeless).ifPresent(working::add);
                }
            }
            Optional<JointShoes> best = working.stream()
                    .min(Comparator.comparingDouble(
                            j -> SteelUse.of(j.design().orElseThrow()).mass()));
            if (best.isPresent()) {
                return best.get();
            }
        }
        return nothing(direction, "no depths of the strings of this design meet all criteria");
    }

    private static JointShoes nothing(JointShoes.Direction direction, String statement) {
        return new JointShoes(direction, statement, List.of(), List.of(), Optional.empty());
    }

    /** Depths of the strings that are kept, and what bounds each. */
    private record Placed(Map<CasingString, Double> shoes, Map<CasingString, List<ShoeObstacle>> bounds) {}

    /**
     * Laps of liners, and so the casing above them, follow the shoes: the pass is repeated with the depths found until they
     * stay, then everything is checked together.
     */
    private Optional<JointShoes> solve(
            JointShoes.Direction direction, Set<CasingString> leftOut, Set<List<CasingString>> hopeless) {
        List<CasingString> kept =
                movable.stream().filter(s -> !leftOut.contains(s)).toList();
        Map<CasingString, Double> known = Map.of();
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            Set<List<CasingString>> learnt = pass == 0 ? hopeless : new HashSet<>();
            Optional<Placed> placed = direction == JointShoes.Direction.BOTTOM_UP
                    ? bottomUp(kept, leftOut, known, learnt)
                    : topDown(kept, leftOut, learnt);
            if (placed.isEmpty()) {
                return Optional.empty();
            }
            Map<CasingString, Double> shoes = placed.get().shoes();
            Map<CasingString, Double> before = known;
            boolean settled = kept.stream()
                    .allMatch(s -> before.containsKey(s) && Math.abs(before.get(s) - shoes.get(s)) <= SAME_DEPTH);
            known = shoes;
            if (settled || direction == JointShoes.Direction.TOP_DOWN) {
                return holds(kept, shoes, leftOut)
                        ? Optional.of(result(direction, kept, placed.get(), leftOut))
                        : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private Optional<Placed> bottomUp(
            List<CasingString> kept,
            Set<CasingString> leftOut,
            Map<CasingString, Double> known,
            Set<List<CasingString>> hopeless) {
        Map<CasingString, Double> shoes = new HashMap<>(known);
        Map<CasingString, List<ShoeObstacle>> bounds = new HashMap<>();
        double below = programme.bottom();
        for (int i = kept.size() - 1; i >= 0; i--) {
            List<CasingString> suffix = kept.subList(i, kept.size());
            if (i > 0 && hopeless.contains(suffix)) {
                return Optional.empty();
            }
            CasingString string = kept.get(i);
            Optional<CasingString> lower = i + 1 < kept.size() ? Optional.of(kept.get(i + 1)) : Optional.empty();
            boolean first = i == 0;
            List<Between> sections = new ArrayList<>(List.of(new Between(Optional.of(string), lower)));
            if (first) {
                sections.add(new Between(Optional.empty(), Optional.of(string)));
            }
            List<ShoeStretch> stretches = scan(programme.top(), below, string, sections, shoes, leftOut);
            Optional<ShoeStretch> shallowest =
                    stretches.stream().filter(ShoeStretch::allowed).findFirst();
            if (shallowest.isEmpty()) {
                if (!first) {
                    hopeless.add(List.copyOf(suffix));
                }
                return Optional.empty();
            }
            below = shallowest.get().from();
            shoes.put(string, below);
            bounds.put(string, shallowest.get().boundAbove());
        }
        return Optional.of(new Placed(shoes, bounds));
    }

    private Optional<Placed> topDown(
            List<CasingString> kept, Set<CasingString> leftOut, Set<List<CasingString>> hopeless) {
        Map<CasingString, Double> shoes = new HashMap<>();
        Map<CasingString, List<ShoeObstacle>> bounds = new HashMap<>();
        Optional<CasingString> upper = Optional.empty();
        double above = programme.top();
        for (int i = 0; i < kept.size(); i++) {
            List<CasingString> prefix = kept.subList(0, i + 1);
            if (hopeless.contains(prefix)) {
                return Optional.empty();
            }
            CasingString string = kept.get(i);
            if (i == 0 && !programme.shutIn(Optional.of(string))) {
                shoes.put(string, string.shoeDepth());
                bounds.put(string, List.of(new ShoeObstacle(Criterion.NOT_SHUT_IN_ABOVE, "", "", "")));
            } else {
                List<Between> sections = List.of(new Between(upper, Optional.of(string)));
                List<ShoeStretch> stretches = scan(above, programme.bottom(), string, sections, shoes, leftOut);
                Optional<ShoeStretch> deepest =
                        stretches.stream().filter(ShoeStretch::allowed).reduce((a, b) -> b);
                if (deepest.isEmpty()) {
                    hopeless.add(List.copyOf(prefix));
                    return Optional.empty();
                }
                shoes.put(string, deepest.get().to());
                bounds.put(string, deepest.get().boundBelow());
            }
            above = shoes.get(string);
            upper = Optional.of(string);
        }
        return Optional.of(new Placed(shoes, bounds));
    }

    private boolean holds(List<CasingString> kept, Map<CasingString, Double> shoes, Set<CasingString> leftOut) {
        Optional<CasingString> upper = Optional.empty();
        for (int i = 0; i <= kept.size(); i++) {
            Optional<CasingString> lower = i < kept.size() ? Optional.of(kept.get(i)) : Optional.empty();
            if (!holds(new Between(upper, lower), shoes, leftOut)) {
                return false;
            }
            upper = lower;
        }
        return true;
    }

    private JointShoes result(
            JointShoes.Direction direction, List<CasingString> kept, Placed placed, Set<CasingString> leftOut) {
        List<JointShoes.Shoe> shoes = kept.stream()
                .map(s -> new JointShoes.Shoe(
                        s.name(),
                        placed.shoes().get(s),
                        wellCase.path().verticalDepth(placed.shoes().get(s)),
                        placed.bounds().get(s)))
                .toList();
        List<String> names = movable.stream()
                .filter(leftOut::contains)
                .map(CasingString::name)
                .toList();
        String statement = names.isEmpty()
                ? "all " + kept.size() + " strings are needed"
                : kept.size() + " of " + movable.size() + " strings are enough; not needed: "
                        + String.join(", ", names);
        return new JointShoes(
                direction, statement, shoes, names, Optional.of(programme.design(placed.shoes(), leftOut)));
    }
}
