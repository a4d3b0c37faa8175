package staunch.control;

import staunch.influx.FlowChannel;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * A line of one bore, such as a choke line.
 *
 * @param length along the line, m, 0 to 5000
 * @param insideDiameter m, 0.01 to 1
 */
public record LineBore(
        @Si(value = "m", kind = Kind.LENGTH) double length,
        @Si(value = "m", kind = Kind.DIAMETER) double insideDiameter) {
    public LineBore {
        Check.within("length of the line", length, 0, 5000, Measure.LENGTH);
        Check.within("inside diameter of the line", insideDiameter, 0.01, 1, Measure.DIAMETER);
    }

    /** Its cross-section. */
    public FlowChannel channel() {
        return FlowChannel.bore(insideDiameter);
    }

    /** What it holds. */
    @Si("m3")
    public double volume() {
        return channel().area() * length;
    }
}
