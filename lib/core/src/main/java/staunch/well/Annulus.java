package staunch.well;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;

/**
 * Room between hole or casing and string, from the top of the well to the bottom of the hole: contiguous intervals of
 * constant cross-section A = π/4 (D² − d²), with D the inside diameter of the innermost casing or of the open hole and d
 * the outside diameter of the string, zero below the bit. Volumes are exact on each interval. Tool joints and eccentric
 * pipe are not counted. Look-ups allocate nothing and take O(log n).
 */
public final class Annulus {
    /** Depths that differ by less are one depth. */
    private static final double SAME_DEPTH = 1e-6;

    /** Rounding of a sum of volumes, as a share of the whole. */
    private static final double SUM_ROUNDING = 1e-14;

    /** Longest stretch of stack and spools between the top of the annulus and the highest casing top, m. */
    private static final double LONGEST_SPOOL = 50;

    private final double[] breaks;
    private final double[] hole;
    private final double[] pipe;
    private final double[] area;
    private final double[] volume;
    private final StringGeometry string;

    private Annulus(double[] breaks, double[] hole, double[] pipe, StringGeometry string) {
        this.breaks = breaks;
        this.hole = hole;
        this.pipe = pipe;
        this.string = string;
        this.area = new double[hole.length];
        this.volume = new double[breaks.length];
        for (int i = 0; i < hole.length; i++) {
            area[i] = 0.25 * Math.PI * (hole[i] - pipe[i]) * (hole[i] + pipe[i]);
            volume[i + 1] = volume[i] + area[i] * (breaks[i + 1] - breaks[i]);
        }
    }

    /**
     * Annulus of the given bounds. Where the highest casing top lies up to 50 m below the top of the annulus (the casing
     * hangs in a wellhead and the stack stands above it), the bore of that casing counts up to the top.
     *
     * @throws InputFault where a string does not fit into the casing or the hole around it, where casing or open hole
     *     leave a gap, or where the hole ends above the bottom of the annulus
     */
    public static Annulus of(AnnulusGeometry geometry) {
        StringGeometry string = StringGeometry.of(geometry.string(), geometry.bitDepth());
        List<Bore> bores = bores(geometry);
        TreeSet<Double> depths = new TreeSet<>();
        for (Bore bore : bores) {
            depths.add(bore.from);
            depths.add(bore.to);
        }
        for (int i = 0; i < string.count(); i++) {
            depths.add(string.top(i));
            depths.add(string.bottom(i));
        }
        double top = geometry.topDepth();
        double bottom = geometry.bottomDepth();
        double[] breaks = depths.stream()
                .filter(d -> d > top && d < bottom)
                .mapToDouble(Double::doubleValue)
                .toArray();
        breaks = between(top, breaks, bottom);
        int n = breaks.length - 1;
        double[] hole = new double[n];
        double[] pipe = new double[n];
        for (int i = 0; i < n; i++) {
            double middle = 0.5 * (breaks[i] + breaks[i + 1]);
            Bore bore = bores.stream()
                    .filter(b -> middle > b.from && middle < b.to)
                    .findFirst()
                    .orElseThrow();
            hole[i] = bore.diameter;
            pipe[i] = pipeAt(string, middle, bore);
        }
        return new Annulus(breaks, hole, pipe, string);
    }

    private record Bore(String name, double diameter, double from, double to) {}

    private static List<Bore> bores(AnnulusGeometry geometry) {
        double top = geometry.topDepth();
        double bottom = geometry.bottomDepth();
        CasingProfile casing = CasingProfile.of(geometry.casing());
        List<Bore> found = new ArrayList<>();
        double reached = top;
        for (CasingProfile.Stretch s : casing.stretches()) {
            if (s.to() <= top) {
                continue;
            }
            double from = Math.max(top, s.from());
            if (found.isEmpty() && from > top) {
                if (from - top > LONGEST_SPOOL) {
                    throw new InputFault(
                            "casing string \"" + s.string().name() + "\"",
                            "begins at " + CasingProfile.depth(from) + ", more than "
                                    + CasingProfile.depth(LONGEST_SPOOL)
                                    + " below the top of the annulus at " + CasingProfile.depth(top),
                            "give the casing that reaches the wellhead");
                }
                from = top;
            }
            found.add(new Bore(s.string().name(), s.interval().insideDiameter(), from, s.to()));
            reached = s.to();
        }
        for (HoleInterval open : geometry.openHole()) {
            if (open.bottomDepth() <= reached + SAME_DEPTH || reached >= bottom) {
                continue;
            }
            if (open.topDepth() > reached + SAME_DEPTH) {
                throw new InputFault(
                        "open hole",
                        "begins at " + CasingProfile.depth(open.topDepth()) + ", below "
                                + (found.isEmpty() ? "the top of the annulus" : "the casing shoe") + " at "
                                + CasingProfile.depth(reached),
                        "let it begin at the shoe, or check which strings are set");
            }
            found.add(new Bore("open hole", open.diameter(), reached, open.bottomDepth()));
            reached = open.bottomDepth();
        }
        if (reached < bottom - SAME_DEPTH) {
            throw new InputFault(
                    "hole",
                    "ends at " + CasingProfile.depth(reached) + ", above the bottom of the annulus at "
                            + CasingProfile.depth(bottom),
                    "give its diameter down to there");
        }
        if (reached < bottom) {
            Bore last = found.remove(found.size() - 1);
            found.add(new Bore(last.name, last.diameter, last.from, bottom));
        }
        return found;
    }

    private static double pipeAt(StringGeometry string, double middle, Bore bore) {
        for (int i = 0; i < string.count(); i++) {
            if (middle > string.top(i) && middle < string.bottom(i)) {
                StringComponent part = string.component(i);
                if (part.outsideDiameter() >= bore.diameter) {
                    throw new InputFault(
                            "string component \"" + part.name() + "\"",
                            "with outside diameter " + CasingProfile.diameter(part.outsideDiameter())
                                    + " does not fit into \"" + bore.name + "\" of "
                                    + CasingProfile.diameter(bore.diameter) + " at " + CasingProfile.depth(middle),
                            "give the diameter of its body rather than of blades or bit, or check the bore");
                }
                return part.outsideDiameter();
            }
        }
        return 0;
    }

    private static double[] between(double top, double[] inside, double bottom) {
        double[] all = new double[inside.length + 2];
        all[0] = top;
        System.arraycopy(inside, 0, all, 1, inside.length);
        all[all.length - 1] = bottom;
        // Depths closer than the rounding of unit conversions would leave slivers.
        int kept = 1;
        for (int i = 1; i < all.length; i++) {
            if (all[i] - all[kept - 1] > SAME_DEPTH) {
                all[kept++] = all[i];
            }
        }
        all[kept - 1] = bottom;
        return Arrays.copyOf(all, kept);
    }

    static double circle(double diameter) {
        return 0.25 * Math.PI * diameter * diameter;
    }

    /** Number of intervals. */
    public int count() {
        return area.length;
    }

    /** Measured depth of the top of an interval, counted from the top of the annulus. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double top(int index) {
        return breaks[index];
    }

    /** Measured depth of the bottom of an interval. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double bottom(int index) {
        return breaks[index + 1];
    }

    /** Measured depth of the top of the annulus. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double top() {
        return breaks[0];
    }

    /** Measured depth of the bottom of the annulus. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double bottom() {
        return breaks[breaks.length - 1];
    }

    /** Cross-section of an interval. */
    @Si("m2")
    public double area(int index) {
        return area[index];
    }

    /** Inside diameter of the casing or of the open hole of an interval. */
    @Si(value = "m", kind = Kind.DIAMETER)
    public double holeDiameter(int index) {
        return hole[index];
    }

    /** Outside diameter of the string in an interval; zero below the bit. */
    @Si(value = "m", kind = Kind.DIAMETER)
    public double pipeDiameter(int index) {
        return pipe[index];
    }

    /**
     * Cross-section at a depth; at a break that of the interval below it.
     *
     * @param measuredDepth m, within the annulus
     * @throws RangeFault outside the annulus
     */
    @Si("m2")
    public double areaAt(@Si(value = "m", kind = Kind.DEPTH) double measuredDepth) {
        return area[interval(measuredDepth)];
    }

    /** Measured depths of the ends of all intervals, from the top down. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double[] breaks() {
        return breaks.clone();
    }

    /** Volume of the whole annulus. */
    @Si("m3")
    public double volume() {
        return volume[volume.length - 1];
    }

    /**
     * Volume between two depths.
     *
     * @param top measured depth, m, within the annulus
     * @param bottom measured depth, m, within the annulus, not above the top
     * @return negative where bottom lies above top
     * @throws RangeFault outside the annulus
     */
    @Si("m3")
    public double volumeBetween(
            @Si(value = "m", kind = Kind.DEPTH) double top, @Si(value = "m", kind = Kind.DEPTH) double bottom) {
        return volumeAbove(bottom) - volumeAbove(top);
    }

    /**
     * Measured depth of the top of a volume that fills the annulus upwards from a depth.
     *
     * @param bottom measured depth it stands on, m, within the annulus
     * @param filled m³, from 0 to the volume above that depth
     * @throws RangeFault where the volume does not fit below the top of the annulus
     */
    @Si(value = "m", kind = Kind.DEPTH)
    public double topOfVolume(@Si(value = "m", kind = Kind.DEPTH) double bottom, @Si("m3") double filled) {
        double below = volumeAbove(bottom);
        if (!(filled >= 0 && filled <= below)) {
            throw new RangeFault(
                    "volume standing in the annulus",
                    filled,
                    0,
                    below,
                    Measure.VOLUME,
                    "the annulus holds no more above that depth");
        }
        return depthOf(below - filled);
    }

    /**
     * Measured depth of the bottom of a volume that fills the annulus downwards from a depth.
     *
     * @param top measured depth it hangs from, m, within the annulus
     * @param filled m³, from 0 to the volume below that depth
     * @throws RangeFault where the volume does not fit above the bottom of the annulus
     */
    @Si(value = "m", kind = Kind.DEPTH)
    public double bottomOfVolume(@Si(value = "m", kind = Kind.DEPTH) double top, @Si("m3") double filled) {
        double above = volumeAbove(top);
        if (!(filled >= 0 && filled <= volume() - above + SUM_ROUNDING * volume())) {
            throw new RangeFault(
                    "volume standing in the annulus",
                    filled,
                    0,
                    volume() - above,
                    Measure.VOLUME,
                    "the annulus holds no more below that depth");
        }
        return depthOf(above + filled);
    }

    /** The string with its depths. */
    public StringGeometry string() {
        return string;
    }

    /** Volume inside the string from the datum to the bit; zero where there is no pipe. */
    @Si("m3")
    public double stringVolume() {
        return string.insideVolume();
    }

    private double volumeAbove(double measuredDepth) {
        int i = interval(measuredDepth);
        return volume[i] + area[i] * (measuredDepth - breaks[i]);
    }

    private double depthOf(double volumeAbove) {
        int i = find(volume, volumeAbove);
        return Math.min(breaks[i + 1], breaks[i] + (volumeAbove - volume[i]) / area[i]);
    }

    private int interval(double measuredDepth) {
        if (!(measuredDepth >= top() - SAME_DEPTH && measuredDepth <= bottom() + SAME_DEPTH)) {
            Check.within("measured depth asked of the annulus", measuredDepth, top(), bottom(), Measure.DEPTH);
        }
        return find(breaks, measuredDepth);
    }

    /** Interval whose lower bound is the last not above the value. */
    private static int find(double[] bounds, double value) {
        int low = 0;
        int high = bounds.length - 2;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (bounds[middle] <= value) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }
}
