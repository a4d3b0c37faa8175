package staunch.control;

import staunch.well.StringGeometry;

/**
 * How the friction of the slow circulating pressure is shared along the string, which the rise of friction behind the kill
 * mud follows. Friction in the annulus and at the bit is not parted from it.
 */
public enum StringFriction {
    /** In proportion to length along the string, as kill sheets do. */
    BY_LENGTH("by length") {
        @Override
        double perLength(double insideDiameter) {
            return 1;
        }
    },
    /**
     * In proportion to length over inside diameter to the power 4.75: turbulent flow with the factor of Blasius, so that
     * collars count for more.
     */
    BY_BORE("by length and bore, turbulent") {
        @Override
        double perLength(double insideDiameter) {
            return Math.pow(insideDiameter, -4.75);
        }
    };

    private final String title;

    StringFriction(String title) {
        this.title = title;
    }

    abstract double perLength(double insideDiameter);

    /** In plain words. */
    public String title() {
        return title;
    }

    /** Share of the friction between the datum and a depth. */
    double shareAbove(StringGeometry string, double measuredDepth) {
        double above = 0;
        double all = 0;
        for (int i = 0; i < string.count(); i++) {
            double weight = perLength(string.component(i).insideDiameter());
            all += weight * (string.bottom(i) - string.top(i));
            above += weight * Math.max(0, Math.min(measuredDepth, string.bottom(i)) - string.top(i));
        }
        return above / all;
    }
}
