package staunch.well;

import java.util.Arrays;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * A drill string hung in the hole: its components with their depths, from the datum down to the bit. The uppermost
 * component reaches to the datum; what would stand above the datum is cut off.
 */
public final class StringGeometry {
    private final StringComponent[] component;
    private final double[] depth;
    private final double[] volume;

    private StringGeometry(StringComponent[] component, double[] depth) {
        this.component = component;
        this.depth = depth;
        this.volume = new double[depth.length];
        for (int i = 0; i < component.length; i++) {
            volume[i + 1] = volume[i] + Annulus.circle(component[i].insideDiameter()) * (depth[i + 1] - depth[i]);
        }
    }

    /**
     * String with its bit at a depth.
     *
     * @param string from the bit up
     * @param bitDepth measured depth, m, 0 to 20 000
     * @throws staunch.units.RangeFault where the bit depth is outside its range
     */
    public static StringGeometry of(DrillString string, @Si(value = "m", kind = Kind.DEPTH) double bitDepth) {
        Check.within("measured depth of the bit", bitDepth, 0, 20_000, Measure.DEPTH);
        int n = string.components().size();
        StringComponent[] fromTop = new StringComponent[n];
        double[] depth = new double[n + 1];
        int used = 0;
        double at = bitDepth;
        depth[n] = bitDepth;
        for (int i = 0; i < n && at > 0; i++) {
            StringComponent part = string.components().get(i);
            at = i == n - 1 ? 0 : Math.max(0, at - part.length());
            used++;
            fromTop[n - used] = part;
            depth[n - used] = at;
        }
        return new StringGeometry(Arrays.copyOfRange(fromTop, n - used, n), Arrays.copyOfRange(depth, n - used, n + 1));
    }

    /** Number of components in the hole; zero where there is no pipe. */
    public int count() {
        return component.length;
    }

    /** Component, counted from the datum down. */
    public StringComponent component(int index) {
        return component[index];
    }

    /** Measured depth of the top of a component. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double top(int index) {
        return depth[index];
    }

    /** Measured depth of the bottom of a component. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double bottom(int index) {
        return depth[index + 1];
    }

    /** Volume inside the string from the datum to the bit; zero where there is no pipe. */
    @Si("m3")
    public double insideVolume() {
        return volume[volume.length - 1];
    }

    /**
     * Depth inside the string that a volume pumped in at the datum has reached.
     *
     * @param pumped m³, 0 to {@link #insideVolume()}
     * @throws staunch.units.RangeFault where it has already turned the bit
     * @throws InputFault where there is no pipe in the hole
     */
    @Si(value = "m", kind = Kind.DEPTH)
    public double depthReached(@Si("m3") double pumped) {
        if (component.length == 0) {
            throw new InputFault("string", "is not in the hole", "run it before pumping down it");
        }
        Check.within("volume pumped into the string", pumped, 0, insideVolume(), Measure.VOLUME);
        int i = 0;
        while (i < component.length - 1 && volume[i + 1] < pumped) {
            i++;
        }
        if (volume[i + 1] == volume[i]) {
            return depth[i];
        }
        double share = (pumped - volume[i]) / (volume[i + 1] - volume[i]);
        return depth[i] + share * (depth[i + 1] - depth[i]);
    }
}
