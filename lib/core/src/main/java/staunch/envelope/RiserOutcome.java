package staunch.envelope;

import java.util.Objects;
import java.util.Optional;
import staunch.control.ConnectedLines;
import staunch.units.Kind;
import staunch.units.Si;

/** What the riser of a subsea well holds up, and what is lost without it. */
public sealed interface RiserOutcome permits RiserOutcome.Computed, NotAssessed {
    /**
     * The riser parts at the stack, sea stands on the well.
     *
     * @param lost pressure lost everywhere below the seabed, Pa; negative where sea weighs more than the mud in the riser
     * @param worst exposed depth that is then least overbalanced
     * @param needed mud density that would keep every exposed depth balanced, kg/m³: riser margin counted
     * @param mudDensity of the section, kg/m³
     * @param levelInRiser vertical depth to which the mud in the riser falls when its lower end opens to the sea, m; the datum
     *     where it does not fall
     * @param collapse greatest pressure of the sea over the emptied riser, at that level, Pa
     * @param lines choke or kill line against the riser where their fluids differ
     */
    record Computed(
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double lost,
            Exposed worst,
            @Si("kg/m3") double needed,
            @Si("kg/m3") double mudDensity,
            @Si(value = "m", kind = Kind.DEPTH) double levelInRiser,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double collapse,
            Optional<ConnectedLines> lines)
            implements RiserOutcome {
        public Computed {
            Objects.requireNonNull(worst, "worst");
            Objects.requireNonNull(lines, "lines");
        }

        /** Riser margin: how much heavier the mud would have to be; negative where it is heavy enough. */
        @Si(value = "kg/m3", kind = Kind.DIFFERENCE)
        public double missing() {
            return needed - mudDensity;
        }

        /** Whether every exposed depth stays at or above its pore pressure. */
        public boolean staysBalanced() {
            return worst.margin() >= 0;
        }
    }

    /**
     * A depth without the riser.
     *
     * @param verticalDepth m
     * @param pressure of sea and mud, Pa absolute
     * @param porePressure in the estimate that decides, Pa absolute
     */
    record Exposed(
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double porePressure) {
        /** Overbalance left; negative where the well flows. */
        @Si(value = "Pa", kind = Kind.DIFFERENCE)
        public double margin() {
            return pressure - porePressure;
        }
    }
}
