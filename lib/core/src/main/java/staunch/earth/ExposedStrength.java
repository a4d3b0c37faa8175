package staunch.earth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import staunch.units.EquivalentDensity;
import staunch.units.Kind;
import staunch.units.Si;
import staunch.well.WellPath;

/**
 * What the formation holds at each depth of an open hole.
 *
 * <ul>
 *   <li>A test taken up to 30 m vertically below the shoe is the test of the shoe: its equivalent density counts from the
 *       shoe down to the depth of the test, but no farther than 100 m along hole. A test recorded up to 1 m above the
 *       shoe counts at the shoe. Of several, a leak-off counts before an integrity test and that before a prediction; of
 *       several leak-offs the lowest counts, of several integrity tests, each a lower bound, the highest.
 *   <li>Any other test inside the open hole holds at its own depth only.
 *   <li>Everywhere else the predicted profile counts. A test is never carried downwards.
 *   <li>A named weak zone lowers all of these to its own equivalent density over its vertical depths, at every measured
 *       depth that lies in them.
 * </ul>
 *
 * An equivalent density ρ at vertical depth z below the datum is the absolute pressure p = pₐ + ρ g z, with pₐ the
 * standard atmosphere.
 *
 * @param nodes by measured depth; between two neighbours the strength is linear in vertical depth, except across a gap;
 *     two at one depth make a step, and one between them a depth that was tested by itself
 * @param gaps depths of which nothing is known
 * @param shoe strength at the shoe: its test, or the prediction there; empty where neither is known
 */
public record ExposedStrength(List<Node> nodes, List<Gap> gaps, Optional<Node> shoe) {
    /** Greatest vertical distance of a shoe's test below the shoe, m: rat hole and the first metres of new hole. */
    @Si(value = "m", kind = Kind.LENGTH)
    public static final double SHOE_TEST_REACH = 30;

    /** Greatest distance along hole over which a shoe's test counts, m: keeps it out of a level section. */
    static final double SHOE_TEST_REACH_ALONG_HOLE = 100;

    /** Distance above the shoe at which a recorded test is still the shoe's, m: depths are recorded in whole metres. */
    @Si(value = "m", kind = Kind.LENGTH)
    public static final double SHOE_TEST_RECORDING = 1;

    public ExposedStrength {
        nodes = List.copyOf(nodes);
        gaps = List.copyOf(gaps);
        Objects.requireNonNull(shoe, "shoe");
    }

    /** Which end of the predicted strength counts. */
    public enum Estimate {
        LOW("low estimate"),
        LIKELY("likely estimate");

        private final String title;

        Estimate(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /**
     * One depth.
     *
     * @param name the shoe, a test, a weak zone, or "open hole"
     * @param measuredDepth m
     * @param verticalDepth m
     * @param strength of the formation, Pa absolute
     * @param limit strength less the margin, Pa absolute
     * @param basis what the strength rests on
     */
    public record Node(
            String name,
            @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double strength,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double limit,
            String basis) {}

    /**
     * Strength of an open hole.
     *
     * @throws staunch.units.RangeFault where the open hole leaves the path
     */
    public static ExposedStrength of(EarthModel earth, WellPath path, OpenHole hole, Estimate estimate) {
        return new Builder(earth, path, hole, estimate).build();
    }

    /** Whether every depth of the open hole is known. */
    public boolean complete() {
        return gaps.isEmpty();
    }

    /** Whether nothing is known at all. */
    public boolean unknown() {
        return nodes.isEmpty();
    }

    /** Lowest strength at a measured depth, read between nodes; empty in a gap or outside the open hole. */
    public Optional<Node> lowestAt(WellPath path, @Si(value = "m", kind = Kind.DEPTH) double measuredDepth) {
        List<Node> found = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            Node here = nodes.get(i);
            if (Math.abs(here.measuredDepth() - measuredDepth) <= Breaks.SAME_DEPTH) {
                found.add(here);
            } else if (i > 0
                    && here.measuredDepth() > measuredDepth
                    && nodes.get(i - 1).measuredDepth() < measuredDepth
                    && gaps.stream().noneMatch(g -> g.from() < measuredDepth && g.to() > measuredDepth)) {
                found.add(between(nodes.get(i - 1), here, measuredDepth, path.verticalDepth(measuredDepth)));
            }
        }
        return found.stream().min(Comparator.comparingDouble(Node::strength));
    }

    private static Node between(Node above, Node below, double measuredDepth, double verticalDepth) {
        double span = below.verticalDepth() - above.verticalDepth();
        double share = span == 0 ? 0 : (verticalDepth - above.verticalDepth()) / span;
        return new Node(
                below.name(),
                measuredDepth,
                verticalDepth,
                above.strength() + share * (below.strength() - above.strength()),
                above.limit() + share * (below.limit() - above.limit()),
                below.basis());
    }

    /** A line of strength with what it rests on. */
    private record Rule(Line line, String name, String basis) {}

    private static final class Builder {
        private static final String OPEN_HOLE = "open hole";

        private final WellPath path;
        private final OpenHole hole;
        private final Optional<PressureProfile> profile;
        private final String profileBasis;
        private final List<WeakZone> zones;
        private final List<StrengthTest> tests = new ArrayList<>();
        private final Optional<StrengthTest> shoeTest;
        private final double shoeVertical;
        private final double shoeTestEnd;
        private final List<Node> nodes = new ArrayList<>();
        private final List<Gap> gaps = new ArrayList<>();

        Builder(EarthModel earth, WellPath path, OpenHole hole, Estimate estimate) {
            this.path = path;
            this.hole = hole;
            this.zones = earth.weakZones();
            boolean low = estimate == Estimate.LOW
                    && earth.strength().isPresent()
                    && earth.strength().get().low().isPresent();
            this.profile = earth.strength().map(r -> low ? r.lowOrLikely() : r.likely());
            this.profileBasis = "predicted strength, " + (low ? Estimate.LOW : Estimate.LIKELY).title();
            this.shoeVertical = path.verticalDepth(hole.shoeDepth());
            List<StrengthTest> ofShoe = new ArrayList<>();
            for (StrengthTest test : earth.tests()) {
                double below = test.verticalDepth() - shoeVertical;
                boolean atShoe = below >= -SHOE_TEST_RECORDING - Breaks.SAME_DEPTH
                        && below <= SHOE_TEST_REACH + Breaks.SAME_DEPTH;
                (atShoe ? ofShoe : tests).add(test);
            }
            this.shoeTest = ofShoe.stream().min(ORDER);
            this.shoeTestEnd = shoeTest.map(this::endOf).orElse(hole.shoeDepth());
        }

        private static final Comparator<StrengthTest> ORDER = Comparator.<StrengthTest>comparingInt(
                        t -> switch (t.standing()) {
                            case LEAK_OFF, EXTENDED_LEAK_OFF -> 0;
                            case INTEGRITY_TEST -> 1;
                            case PREDICTED -> 2;
                        })
                .thenComparingDouble(t -> t.standing() == Standing.INTEGRITY_TEST ? -equivalent(t) : equivalent(t));

        private static double equivalent(StrengthTest test) {
            return EquivalentDensity.of(test.pressure(), test.verticalDepth());
        }

        /** Measured depth at which the hole first leaves the vertical depths from the shoe to its test. */
        private double endOf(StrengthTest test) {
            double farthest = Math.min(hole.bottomDepth(), hole.shoeDepth() + SHOE_TEST_REACH_ALONG_HOLE);
            double deepest = Math.max(test.verticalDepth(), shoeVertical);
            double[] md = Breaks.of(path, hole.shoeDepth(), farthest, List.of(shoeVertical, deepest));
            double end = md[0];
            for (int i = 1; i < md.length; i++) {
                double middle = path.verticalDepth(0.5 * (md[i - 1] + md[i]));
                if (middle < shoeVertical - Breaks.SAME_DEPTH || middle > deepest + Breaks.SAME_DEPTH) {
                    return end;
                }
                end = md[i];
            }
            return end;
        }

        ExposedStrength build() {
            double[] md = breaks();
            for (int i = 0; i < md.length; i++) {
                points(md[i]);
                if (i < md.length - 1) {
                    piece(md[i], md[i + 1]);
                }
            }
            if (md.length == 1 && nodes.isEmpty()) {
                double z = shoeVertical;
                Optional<Rule> rule = ruleAt(md[0], z);
                rule.ifPresentOrElse(r -> add(md[0], z, r), () -> gaps.add(Gap.between(md[0], md[0], z, z)));
            }
            Optional<Node> shoe = nodes.stream()
                    .filter(n -> n.measuredDepth() == hole.shoeDepth())
                    .findFirst();
            return new ExposedStrength(nodes, gaps, shoe);
        }

        private double[] breaks() {
            TreeSet<Double> vertical = new TreeSet<>();
            profile.ifPresent(p -> {
                for (double z : p.depths()) {
                    vertical.add(z);
                }
            });
            for (WeakZone zone : zones) {
                vertical.add(zone.topVerticalDepth());
                vertical.add(zone.bottomVerticalDepth());
                profile.ifPresent(p -> vertical.addAll(crossings(p, zone)));
            }
            tests.forEach(t -> vertical.add(t.verticalDepth()));
            double[] upper = Breaks.of(path, hole.shoeDepth(), shoeTestEnd, vertical);
            double[] lower = Breaks.of(path, shoeTestEnd, hole.bottomDepth(), vertical);
            double[] all = new double[upper.length + lower.length - 1];
            System.arraycopy(upper, 0, all, 0, upper.length);
            System.arraycopy(lower, 1, all, upper.length, lower.length - 1);
            return all;
        }

        /** Vertical depths inside a zone where the profile falls below its strength, or rises above it. */
        private static List<Double> crossings(PressureProfile profile, WeakZone zone) {
            Line line = Line.equivalent(zone.strength());
            double[] z = profile.depths();
            double[] p = profile.pressures();
            List<Double> found = new ArrayList<>();
            for (int i = 1; i < z.length; i++) {
                double above = p[i - 1] - line.at(z[i - 1]);
                double below = p[i] - line.at(z[i]);
                if (above * below < 0) {
                    double crossing = z[i - 1] + (z[i] - z[i - 1]) * above / (above - below);
                    if (crossing > zone.topVerticalDepth() && crossing < zone.bottomVerticalDepth()) {
                        found.add(crossing);
                    }
                }
            }
            return found;
        }

        /** What holds at one depth alone: the shoe's test where it reaches no deeper, single tests, zones without height. */
        private void points(double md) {
            double z = path.verticalDepth(md);
            if (md == hole.shoeDepth() && shoeTestEnd == md && shoeTest.isPresent()) {
                add(md, z, lowered(shoeRule(), z));
            }
            for (StrengthTest test : tests) {
                if (at(md, test.verticalDepth())) {
                    Line line = Line.equivalent(equivalent(test));
                    add(md, z, lowered(new Rule(line, basis(test), basis(test)), z));
                }
            }
            for (WeakZone zone : zones) {
                if (zone.topVerticalDepth() == zone.bottomVerticalDepth() && at(md, zone.topVerticalDepth())) {
                    add(md, z, rule(zone));
                }
            }
        }

        private boolean at(double md, double verticalDepth) {
            for (double found : path.measuredDepthsAt(verticalDepth, hole.shoeDepth(), hole.bottomDepth())) {
                if (Math.abs(found - md) <= Breaks.SAME_DEPTH) {
                    return true;
                }
            }
            return false;
        }

        private void piece(double from, double to) {
            double middle = 0.5 * (from + to);
            double above = path.verticalDepth(from);
            double below = path.verticalDepth(to);
            Optional<Rule> rule = ruleAt(middle, path.verticalDepth(middle));
            if (rule.isPresent()) {
                add(from, above, rule.get());
                add(to, below, rule.get());
                return;
            }
            Gap gap = Gap.between(from, to, above, below);
            Gap last = gaps.isEmpty() ? null : gaps.get(gaps.size() - 1);
            if (last != null && last.to() == from) {
                gaps.set(gaps.size() - 1, last.and(gap));
            } else {
                gaps.add(gap);
            }
        }

        private Optional<Rule> ruleAt(double md, double z) {
            if (shoeTest.isPresent() && md <= shoeTestEnd) {
                return Optional.of(lowered(shoeRule(), z));
            }
            Optional<Rule> predicted =
                    profile.filter(p -> p.covers(z)).map(p -> new Rule(p.pieceAt(z, false), OPEN_HOLE, profileBasis));
            if (predicted.isPresent()) {
                return Optional.of(lowered(predicted.get(), z));
            }
            return zones.stream()
                    .filter(zone -> inside(zone, z))
                    .min(Comparator.comparingDouble(WeakZone::strength))
                    .map(Builder::rule);
        }

        private Rule lowered(Rule rule, double z) {
            Rule lowest = rule;
            for (WeakZone zone : zones) {
                Rule other = rule(zone);
                if (inside(zone, z) && other.line().at(z) < lowest.line().at(z)) {
                    lowest = other;
                }
            }
            return lowest;
        }

        private static boolean inside(WeakZone zone, double z) {
            return z >= zone.topVerticalDepth() - Breaks.SAME_DEPTH
                    && z <= zone.bottomVerticalDepth() + Breaks.SAME_DEPTH;
        }

        private static Rule rule(WeakZone zone) {
            return new Rule(Line.equivalent(zone.strength()), zone.name(), "weak zone \"" + zone.name() + "\"");
        }

        private Rule shoeRule() {
            StrengthTest test = shoeTest.orElseThrow();
            return new Rule(Line.equivalent(equivalent(test)), OPEN_HOLE, basis(test));
        }

        private static String basis(StrengthTest test) {
            String bound = test.standing() == Standing.INTEGRITY_TEST ? " (a lower bound)" : "";
            return test.standing().title() + " \"" + test.name() + "\"" + bound;
        }

        private void add(double md, double z, Rule rule) {
            double strength = rule.line().at(z);
            boolean firstAtShoe = md == hole.shoeDepth() && nodes.isEmpty();
            String name = firstAtShoe && rule.name().equals(OPEN_HOLE) ? hole.shoeName() : rule.name();
            Node last = nodes.isEmpty() ? null : nodes.get(nodes.size() - 1);
            boolean same = last != null
                    && last.measuredDepth() == md
                    && last.basis().equals(rule.basis())
                    && Math.abs(last.strength() - strength) <= 1e-9 * strength;
            if (!same) {
                nodes.add(new Node(name, md, z, strength, strength - hole.strengthMargin(), rule.basis()));
            }
        }
    }
}
