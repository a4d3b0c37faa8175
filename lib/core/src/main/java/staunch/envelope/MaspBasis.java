package staunch.envelope;

import staunch.units.Check;
import staunch.units.Measure;
import staunch.units.Si;

/** How the maximum anticipated surface pressure is found. */
public sealed interface MaspBasis {
    /** In plain words. */
    String title();

    /** The well full of gas from the exposed depth that gives most. */
    record GasToSurface() implements MaspBasis {
        @Override
        public String title() {
            return "gas to surface from the pore pressure that decides";
        }
    }

    /**
     * The section's drilled kick of one volume circulated out, at its worst moment.
     *
     * @param volume of the influx at bottom-hole conditions at shut-in, m³, 0.01 to 200
     */
    record KickLimited(@Si("m3") double volume) implements MaspBasis {
        public KickLimited {
            Check.within("influx of a kick-limited MASP", volume, 0.01, 200, Measure.VOLUME);
        }

        @Override
        public String title() {
            return "kick-limited: a named influx of the drilled kick circulated out";
        }
    }

    /** The lesser of gas to surface from the pore pressure and gas to surface from the fracture pressure at the shoe. */
    record FractureLimited() implements MaspBasis {
        @Override
        public String title() {
            return "fracture-limited: the lesser of gas to surface from pore pressure and from the fracture pressure at the"
                    + " shoe";
        }
    }

    /**
     * A column partly of mud below and gas above, from the exposed depth that gives most.
     *
     * @param mudShare part of the column's vertical height that mud fills, 0 to 1
     */
    record MudAndGas(@Si("1") double mudShare) implements MaspBasis {
        public MudAndGas {
            Check.within("share of mud in the column of a MASP", mudShare, 0, 1, Measure.NUMBER);
        }

        @Override
        public String title() {
            return "a named share of mud below gas, from the pore pressure that decides";
        }
    }
}
