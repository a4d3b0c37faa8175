package staunch.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import staunch.design.ShoeObstacle.Criterion;
import staunch.design.ShoeSections.Between;
import staunch.earth.EarthModel;
import staunch.earth.ExposedStrength;
import staunch.earth.PressureProfile;
import staunch.earth.StrengthTest;
import staunch.envelope.MethodOptions;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.HoleInterval;

/** Searches the shoe depths of one casing design. */
final class ShoeSearcher {
    /** Greatest distance between depths looked at, m. */
    private static final double STEP = 25;

    /** Greatest distance between depths of all strings together, of which every pair is looked at, m. */
    private static final double JOINT_STEP = 50;

    private final WellCase wellCase;
    private final CasingDesign base;
    private final MethodOptions options;
    private final MudRule rule;
    private final ShoeProgramme programme;
    private final ShoeScan scan;
    private final List<CasingString> movable;
    private final ShoeSections sections;

    ShoeSearcher(WellCase wellCase, CasingDesign base, MethodOptions options, MudRule rule) {
        this.wellCase = wellCase;
        this.base = base;
        this.options = options;
        this.rule = rule;
        this.programme = new ShoeProgramme(wellCase, base, options, rule);
        this.scan = new ShoeScan(wellCase.path(), STEP, along(turns()), jumps());
        this.movable = programme.movable();
        this.sections = new ShoeSections(wellCase, programme);
    }

    ShoeSearch search(Progress progress) {
        List<ShoeWindow> windows = new ArrayList<>();
        int total = movable.size() + 1;
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
        progress.step(done, total, "all strings");
        List<JointShoes> joint = new JointSearch(wellCase, programme, sections, nodes()).search();
        progress.step(total, total, "done");
        return new ShoeSearch(base.name(), rule, options, STEP, JOINT_STEP, windows, joint);
    }

    /** Depths of all strings: even ones, those to either side of every jump, and where the strings are planned. */
    private double[] nodes() {
        double[] nodes = scan.sides(JOINT_STEP)
                .nodes(programme.top() + ShoeProgramme.LEAST_HOLE, programme.bottom() - ShoeProgramme.LEAST_HOLE);
        return DoubleStream.concat(Arrays.stream(nodes), movable.stream().mapToDouble(CasingString::shoeDepth))
                .sorted()
                .distinct()
                .toArray();
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

    /**
     * One string moves; the section above and the section below it are checked. No stretches where there is no room.
     */
    private List<ShoeStretch> window(CasingString string) {
        int i = movable.indexOf(string);
        Optional<CasingString> upper = i > 0 ? Optional.of(movable.get(i - 1)) : Optional.empty();
        Optional<CasingString> lower = i + 1 < movable.size() ? Optional.of(movable.get(i + 1)) : Optional.empty();
        double from = upper.map(CasingString::shoeDepth).orElse(programme.top());
        double to = lower.map(CasingString::shoeDepth).orElse(programme.bottom());
        List<Between> between =
                List.of(new Between(upper, Optional.of(string)), new Between(Optional.of(string), lower));
        boolean open = !programme.shutIn(Optional.of(string));
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
                depth -> sections.stayOuts(depth).isEmpty()
                        && between.stream().allMatch(s -> sections.holds(s, Map.of(string, depth), Set.of())),
                depth -> {
                    List<ShoeObstacle> found = new ArrayList<>(sections.stayOuts(depth));
                    between.forEach(s -> found.addAll(sections.obstacles(s, Map.of(string, depth), Set.of())));
                    return found;
                });
    }
}
