package staunch.control;

import staunch.influx.FlowChannel;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;
import staunch.well.Annulus;
import staunch.well.StringComponent;
import staunch.well.StringGeometry;

/**
 * Pressure lost to friction along a well: {@link Friction} summed over its stretches of one cross-section. Rates from 1e-6
 * to 0.5 m³/s; a rate of zero is a fault, as friction at rest is not assessed. Losses at the bit, in surface lines and in
 * tools are apart.
 */
public final class Hydraulics {
    private Hydraulics() {}

    /**
     * Loss in the annulus from the bit to its top: what adds to the pressure at the bit while circulating.
     *
     * @throws staunch.units.Fault where the rate is out of range
     */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public static double annularLoss(Annulus annulus, FlowingMud mud, @Si("m3/s") double rate) {
        return annularLossAbove(annulus, annulus.bottom(), mud, rate);
    }

    /**
     * Loss in the annulus between a depth and its top: what adds to the pressure at that depth while circulating. Below the
     * bit nothing flows, so that it grows no further there.
     *
     * @param measuredDepth m, within the annulus
     * @throws staunch.units.Fault where depth or rate are out of range
     */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public static double annularLossAbove(
            Annulus annulus,
            @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
            FlowingMud mud,
            @Si("m3/s") double rate) {
        checkRate(rate);
        Check.within(
                "measured depth asked of the annulus", measuredDepth, annulus.top(), annulus.bottom(), Measure.DEPTH);
        double loss = 0;
        for (int i = 0; i < annulus.count() && annulus.top(i) < measuredDepth; i++) {
            if (annulus.pipeDiameter(i) > 0) {
                FlowChannel channel = channel(annulus, i);
                double length = Math.min(measuredDepth, annulus.bottom(i)) - annulus.top(i);
                loss += length
                        * Friction.at(channel, mud, channel.velocity(rate)).gradient();
            }
        }
        return loss;
    }

    /**
     * Loss inside the string from the datum to the bit, without the bit.
     *
     * @throws InputFault where a component is plugged
     * @throws staunch.units.Fault where the rate is out of range
     */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public static double stringLoss(StringGeometry string, FlowingMud mud, @Si("m3/s") double rate) {
        checkRate(rate);
        double loss = 0;
        for (int i = 0; i < string.count(); i++) {
            StringComponent part = string.component(i);
            if (part.insideDiameter() == 0) {
                throw new InputFault(
                        "string component \"" + part.name() + "\"", "is plugged", "mud cannot be pumped through it");
            }
            FlowChannel bore = FlowChannel.bore(part.insideDiameter());
            loss += (string.bottom(i) - string.top(i))
                    * Friction.at(bore, mud, bore.velocity(rate)).gradient();
        }
        return loss;
    }

    /**
     * Loss in a choke or kill line of one bore, without its ends.
     *
     * @throws staunch.units.Fault where the rate is out of range
     */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public static double lineLoss(LineBore line, FlowingMud mud, @Si("m3/s") double rate) {
        checkRate(rate);
        FlowChannel bore = line.channel();
        return line.length() * Friction.at(bore, mud, bore.velocity(rate)).gradient();
    }

    /**
     * Loss through the nozzles of the bit: ρ (q/A)²/(2 C²) with the discharge coefficient C = 0.95 of API RP 13D (from
     * memory).
     *
     * @param density kg/m³, 500 to 3000
     * @param rate m³/s
     * @param flowArea total area of the nozzles, m², 1e-6 to 0.1
     */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public static double nozzleLoss(@Si("kg/m3") double density, @Si("m3/s") double rate, @Si("m2") double flowArea) {
        Check.within("mud density", density, 500, 3000, Measure.DENSITY);
        checkRate(rate);
        Check.within("flow area of the bit", flowArea, 1e-6, 0.1, Measure.AREA);
        double jet = rate / flowArea / 0.95;
        return 0.5 * density * jet * jet;
    }

    /**
     * Equivalent circulating density: ρ + Δp/(g z).
     *
     * @param density static, kg/m³, 500 to 3000
     * @param loss friction between that depth and surface, Pa, 0 to 1e8; negative (down to −1e8) for swab
     * @param verticalDepth below the datum of the equivalent density, m, 1 to 20 000
     */
    @Si(value = "kg/m3", kind = Kind.EQUIVALENT)
    public static double equivalentCirculatingDensity(
            @Si("kg/m3") double density,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double loss,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        Check.within("mud density", density, 500, 3000, Measure.DENSITY);
        Check.within("friction loss", loss, -1e8, 1e8, Measure.PRESSURE_DIFFERENCE);
        Check.within("vertical depth", verticalDepth, 1, 20_000, Measure.DEPTH);
        return density + loss / (Physics.GRAVITY * verticalDepth);
    }

    static FlowChannel channel(Annulus annulus, int interval) {
        return new FlowChannel(annulus.holeDiameter(interval), annulus.pipeDiameter(interval));
    }

    private static void checkRate(double rate) {
        Check.within("flow rate", rate, 1e-6, 0.5, Measure.FLOW_RATE);
    }
}
