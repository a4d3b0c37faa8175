package staunch.influx;

import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Cross-section that fluid flows through: a round bore, or the room between a bore and a concentric pipe.
 *
 * @param boreDiameter inside diameter of hole, casing, string or line, m, 0.005 to 1.5
 * @param pipeDiameter outside diameter of the pipe inside it, m, from 0 (no pipe) to less than the bore
 */
public record FlowChannel(
        @Si(value = "m", kind = Kind.DIAMETER) double boreDiameter,
        @Si(value = "m", kind = Kind.DIAMETER) double pipeDiameter) {
    public FlowChannel {
        Check.within("bore of the flow channel", boreDiameter, 0.005, 1.5, Measure.DIAMETER);
        Check.within("pipe in the flow channel", pipeDiameter, 0, 1.5, Measure.DIAMETER);
        if (pipeDiameter >= boreDiameter) {
            throw new InputFault(
                    "pipe in the flow channel", "is not smaller than the bore around it", "check both diameters");
        }
    }

    /** A bore without pipe in it. */
    public static FlowChannel bore(@Si(value = "m", kind = Kind.DIAMETER) double diameter) {
        return new FlowChannel(diameter, 0);
    }

    /** Whether there is pipe in the bore. */
    public boolean isAnnulus() {
        return pipeDiameter > 0;
    }

    /** Cross-section: π/4 (D² − d²). */
    @Si("m2")
    public double area() {
        return 0.25 * Math.PI * (boreDiameter - pipeDiameter) * (boreDiameter + pipeDiameter);
    }

    /** Four times the cross-section over the wetted perimeter: D − d, and D of a bore without pipe. */
    @Si(value = "m", kind = Kind.DIAMETER)
    public double hydraulicDiameter() {
        return boreDiameter - pipeDiameter;
    }

    /** Mean velocity of a flow rate. */
    @Si("m/s")
    public double velocity(@Si("m3/s") double rate) {
        return rate / area();
    }
}
