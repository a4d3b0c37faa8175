package staunch.earth;

import java.util.Objects;
import java.util.Optional;
import staunch.units.Amount;
import staunch.units.EquivalentDensity;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;
import staunch.units.Wording;

/**
 * What makes a reading of an offset well hard to believe where it was taken: as a rule a slip in its unit, its level or its
 * column rather than the rock. Held against what else is known of the well: hydrostatic pressure Pₙ, overburden S, pore
 * pressure P. The limits are judgement.
 *
 * <table>
 * <caption>Limits by vertical depth z below the datum, pressures absolute</caption>
 * <tr><th>reading</th><th>refused</th><th>doubted</th></tr>
 * <tr><td>any</td><td>at or above ground or seabed</td><td>where the pore pressure of the well is not given; refused for a
 * strength test</td></tr>
 * <tr><td>formation pressure</td><td>below pₐ + 100 kg/m³ · g z, or above 1.05 S</td><td>below pₐ + (Pₙ − pₐ)/2, or above
 * S</td></tr>
 * <tr><td>strength test</td><td>below P, or above P + 2 (S − P), see {@link StressState#ratioOf}</td><td>above S</td></tr>
 * <tr><td>mud of a loss, kick or section</td><td>outside pₐ + 500 to 2700 kg/m³ · g z</td><td>above S</td></tr>
 * </table>
 *
 * @param refused whether the reading cannot be true; otherwise it is suspicious only
 * @param ofDepth whether its depth is in doubt rather than its pressure
 * @param text predicate of a sentence whose subject is the reading
 */
public record EvidenceDoubt(boolean refused, boolean ofDepth, Wording text) {
    private static final double LEAST_DENSITY = 100;
    private static final double OVERBURDEN_ERROR = 1.05;
    private static final double DEPLETED = 0.5;
    private static final double LIGHTEST_MUD = 500;
    private static final double HEAVIEST_MUD = 2700;
    private static final double LEAST_EFFECTIVE_STRESS = 1e4;
    /** What rounding of units and depths may leave, Pa. */
    private static final double SAME = 1;

    public EvidenceDoubt {
        Objects.requireNonNull(text, "text");
    }

    /** What a reading is. */
    public enum Reading {
        FORMATION_PRESSURE,
        STRENGTH,
        /** Pressure of the mud in a loss, in a kick or over a section. */
        MUD
    }

    /**
     * What speaks against a reading.
     *
     * @param kind what it is
     * @param well that it was taken in, with its hydrostatic pressure, overburden and pore pressure
     * @param verticalDepth below the datum of the well, m
     * @param pressure Pa absolute
     * @return empty where nothing does
     */
    public static Optional<EvidenceDoubt> of(
            Reading kind,
            OffsetWell well,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure) {
        Taken taken = new Taken(well, verticalDepth, pressure);
        return taken.atDepth(kind == Reading.STRENGTH).or(() -> switch (kind) {
            case FORMATION_PRESSURE -> taken.asFormationPressure();
            case STRENGTH -> taken.asStrength();
            case MUD -> taken.asMud();
        });
    }

    /**
     * Whether a pressure lies where most rock has it, from nine tenths of hydrostatic to the overburden: what a reading in
     * another unit has to do to be named as what may have been meant.
     */
    public static boolean isUsual(
            OffsetWell well,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure) {
        return verticalDepth > well.normal().waterLevel()
                && well.overburden().likely().covers(verticalDepth)
                && pressure >= 0.9 * well.normal().at(verticalDepth)
                && pressure <= well.overburden().likely().lowestAt(verticalDepth);
    }

    private record Taken(OffsetWell well, double z, double pressure) {
        private Amount depth() {
            return Amount.of(z, Measure.DEPTH);
        }

        private static Amount amount(double pressure) {
            return Amount.of(pressure, Measure.PRESSURE_ABSOLUTE);
        }

        private double fluid(double density) {
            return EquivalentDensity.pressure(density, z);
        }

        Optional<EvidenceDoubt> atDepth(boolean stressNeeded) {
            double ground = well.normal().datum().groundOrSeabedDepth();
            if (z <= ground) {
                return Optional.of(new EvidenceDoubt(
                        true,
                        true,
                        Wording.of(
                                "lies at {} below the datum of " + well.name()
                                        + ", not below its ground or seabed at {}",
                                depth(),
                                Amount.of(ground, Measure.DEPTH))));
            }
            if (!well.porePressure().likely().covers(z)) {
                return Optional.of(new EvidenceDoubt(
                        stressNeeded,
                        true,
                        Wording.of(
                                "lies at {} below the datum of " + well.name()
                                        + ", outside {} to {}, where its pore pressure is given",
                                depth(),
                                Amount.of(well.porePressure().likely().top(), Measure.DEPTH),
                                Amount.of(well.porePressure().likely().bottom(), Measure.DEPTH))));
            }
            return Optional.empty();
        }

        Optional<EvidenceDoubt> asFormationPressure() {
            double least = fluid(LEAST_DENSITY);
            double half = Physics.ATMOSPHERE + DEPLETED * (well.normal().at(z) - Physics.ATMOSPHERE);
            if (pressure < least) {
                return refused(
                        "makes {} at {}, below {}, a tenth of what water weighs there",
                        amount(pressure),
                        depth(),
                        amount(least));
            }
            if (pressure < half) {
                return doubted(
                        "makes {} at {}, below {}, half of what water weighs there: the rock is much depleted, or the"
                                + " unit is another",
                        amount(pressure),
                        depth(),
                        amount(half));
            }
            return overburden(true);
        }

        private Optional<EvidenceDoubt> overburden(boolean formation) {
            if (!well.overburden().likely().covers(z)) {
                return Optional.empty();
            }
            double overburden = well.overburden().likely().lowestAt(z);
            double most = OVERBURDEN_ERROR * overburden;
            if (formation && pressure > most) {
                return refused(
                        "makes {} at {}, above {}, the overburden there and 5 % on it",
                        amount(pressure), depth(), amount(most));
            }
            return pressure > overburden + SAME
                    ? doubted(
                            "makes {} at {}, above the overburden there of {}",
                            amount(pressure),
                            depth(),
                            amount(overburden))
                    : Optional.empty();
        }

        Optional<EvidenceDoubt> asStrength() {
            if (!well.overburden().likely().covers(z)) {
                return Optional.empty();
            }
            double pore = well.porePressure().likely().highestAt(z);
            double stress = well.overburden().likely().lowestAt(z) - pore;
            if (stress < LEAST_EFFECTIVE_STRESS) {
                return refused(
                        "makes {} at {}, where the pore pressure of {} leaves no effective stress below the overburden of"
                                + " {}",
                        amount(pressure),
                        depth(),
                        amount(pore),
                        amount(pore + stress));
            }
            if (pressure < pore - SAME || pressure > pore + 2 * stress) {
                return refused(
                        "makes {} at {}, outside {} to {}, from the pore pressure to twice the effective stress above it",
                        amount(pressure),
                        depth(),
                        amount(pore),
                        amount(pore + 2 * stress));
            }
            return overburden(false);
        }

        Optional<EvidenceDoubt> asMud() {
            if (pressure < fluid(LIGHTEST_MUD) || pressure > fluid(HEAVIEST_MUD)) {
                return refused(
                        "makes {} at {}, outside {} to {}, from the lightest to the heaviest mud",
                        amount(pressure),
                        depth(),
                        amount(fluid(LIGHTEST_MUD)),
                        amount(fluid(HEAVIEST_MUD)));
            }
            return overburden(false);
        }

        private static Optional<EvidenceDoubt> refused(String template, Amount... amounts) {
            return Optional.of(new EvidenceDoubt(true, false, Wording.of(template, amounts)));
        }

        private static Optional<EvidenceDoubt> doubted(String template, Amount... amounts) {
            return Optional.of(new EvidenceDoubt(false, false, Wording.of(template, amounts)));
        }
    }
}
