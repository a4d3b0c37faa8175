package staunch.earth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Amount;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;
import staunch.units.UnitSystem;
import staunch.units.Wording;

/**
 * Carries what offset wells measured over to a planned well, at depths that correspond.
 *
 * <ul>
 *   <li>Pore pressure as excess over hydrostatic: P = Pₙ + ΔP, ΔP = P′ − Pₙ′ in the offset well.
 *   <li>Strength as effective-stress ratio: F = P + K (S − P), K = (F′ − P′) / (S′ − P′) in the offset well, with the
 *       planned well's own overburden S and pore pressure P.
 * </ul>
 *
 * Nothing is carried over as an equivalent density: that changes with the datum and the water depth though the rock does
 * not. Evidence counts within a vertical window w of the depth asked, with the weight (1 − |Δh| / w) / (1 + (d / d₀)²) for
 * the difference of matched depth Δh and the distance d. Leak-off tests, extended ones too, make the estimate; integrity tests are
 * lower bounds and have no weight. The least and the greatest piece of evidence are kept as spread, each with the low and
 * high estimates of overburden and pore pressure that its ratio rests on. The ratio is that of
 * Matthews and Kelly (1967); window and weight are choices, not laws of nature. Pressures flagged as rejected are left out.
 *
 * @param matching which depths correspond
 * @param window half height of the vertical window, m, 1 to 2000
 * @param halfDistance d₀, distance at which a well counts half of one next door, m, 1 to 1000 km
 * @param ratioConflict difference of stress ratios that is listed as a conflict, 0.01 to 1
 * @param pressureConflict difference of excess pressures that is listed as a conflict, Pa, 10 kPa to 100 MPa
 */
public record OffsetTransfer(
        DepthMatching matching,
        @Si(value = "m", kind = Kind.LENGTH) double window,
        @Si(value = "m", kind = Kind.LENGTH) double halfDistance,
        @Si("1") double ratioConflict,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) double pressureConflict) {
    public OffsetTransfer {
        Objects.requireNonNull(matching, "matching");
        Check.within("vertical window of the transfer", window, 1, 2000, Measure.LENGTH);
        Check.within("distance of half weight", halfDistance, 1, 1e6, Measure.LENGTH);
        Check.within("difference of stress ratios in conflict", ratioConflict, 0.01, 1, Measure.NUMBER);
        Check.within("difference of pressures in conflict", pressureConflict, 1e4, 1e8, Measure.PRESSURE_DIFFERENCE);
    }

    /**
     * Strength of the planned well.
     *
     * @param verticalDepths below its datum, m, within its profiles
     * @return one outcome for each depth; the order of the offset wells makes no difference
     * @throws RangeFault where a depth or a test lies outside a profile, or a stress ratio is beyond belief
     * @throws InputFault where two offset wells have one name
     */
    public List<StrengthTransfer> strength(
            PlannedWell planned,
            List<OffsetWell> offsets,
            @Si(value = "m", kind = Kind.DEPTH) double[] verticalDepths) {
        List<StrengthTransfer.Contribution> all = new ArrayList<>();
        List<OffsetWell> wells = new ArrayList<>();
        for (OffsetWell well : sorted(offsets)) {
            well.tests().stream()
                    .sorted(Comparator.comparingDouble(StrengthTest::verticalDepth)
                            .thenComparing(StrengthTest::name)
                            .thenComparingDouble(StrengthTest::pressure))
                    .forEach(test -> {
                        double ratio = well.ratioOf(test.verticalDepth(), test.pressure());
                        double below = well.belowGround(test.verticalDepth());
                        all.add(new StrengthTransfer.Contribution(well.name(), test, below, ratio, 0));
                        wells.add(well);
                    });
        }
        List<StrengthTransfer> result = new ArrayList<>();
        for (double z : verticalDepths) {
            List<StrengthTransfer.Contribution> leakOffs = new ArrayList<>();
            List<StrengthTransfer.Contribution> bounds = new ArrayList<>();
            List<PressureEstimate> ofLeakOffs = new ArrayList<>();
            List<PressureEstimate> ofBounds = new ArrayList<>();
            double total = 0;
            for (int i = 0; i < all.size(); i++) {
                StrengthTransfer.Contribution c = all.get(i);
                double weight = weight(wells.get(i), c.test().verticalDepth(), planned.normal(), z);
                if (weight > 0 && c.test().standing() == Standing.INTEGRITY_TEST) {
                    bounds.add(c);
                    ofBounds.add(carried(wells.get(i), c.test(), planned, z));
                } else if (weight > 0) {
                    leakOffs.add(weighted(c, weight));
                    ofLeakOffs.add(carried(wells.get(i), c.test(), planned, z));
                    total += weight;
                }
            }
            if (leakOffs.isEmpty() && bounds.isEmpty()) {
                result.add(new StrengthTransfer.NoEvidence(z));
            } else if (leakOffs.isEmpty()) {
                result.add(new StrengthTransfer.BoundOnly(z, least(ofBounds), greatest(ofBounds), bounds));
            } else {
                result.add(strengthAt(z, planned.stressAt(z), leakOffs, total, bounds, ofLeakOffs));
            }
        }
        return List.copyOf(result);
    }

    private static StrengthTransfer.Contribution weighted(StrengthTransfer.Contribution c, double weight) {
        return new StrengthTransfer.Contribution(c.well(), c.test(), c.belowMudline(), c.stressRatio(), weight);
    }

    private static double least(List<PressureEstimate> estimates) {
        return estimates.stream().mapToDouble(PressureEstimate::low).min().orElseThrow();
    }

    private static double greatest(List<PressureEstimate> estimates) {
        return estimates.stream().mapToDouble(PressureEstimate::high).max().orElseThrow();
    }

    /**
     * Strength that one test lets expect. Low and high: an overburden and pore pressure of the offset well that are too high
     * make its ratio too low. Where both overburdens rest on the same sediment they are wrong alike, whatever the error of the
     * pore pressure; otherwise the errors are taken to add up.
     */
    PressureEstimate carried(OffsetWell well, StrengthTest test, PlannedWell planned, double z) {
        double there = test.verticalDepth();
        double likely = planned.stressAt(z).strengthAt(well.ratioOf(there, test.pressure()));
        double low = likely;
        double high = likely;
        boolean common = well.logged().commonSediment();
        for (boolean heavy : new boolean[] {false, true}) {
            for (boolean highPore : common ? new boolean[] {false, true} : new boolean[] {heavy}) {
                OptionalDouble ratio = well.ratioWithin(there, test.pressure(), heavy, highPore);
                if (ratio.isPresent()) {
                    double strength =
                            planned.stressAt(z, common ? heavy : !heavy).strengthAt(ratio.getAsDouble());
                    low = Math.min(low, strength);
                    high = Math.max(high, strength);
                }
            }
        }
        return new PressureEstimate(low, likely, high);
    }

    private StrengthTransfer strengthAt(
            double z,
            StressState stress,
            List<StrengthTransfer.Contribution> leakOffs,
            double total,
            List<StrengthTransfer.Contribution> bounds,
            List<PressureEstimate> carried) {
        double mean = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        List<StrengthTransfer.Contribution> shares = new ArrayList<>();
        for (StrengthTransfer.Contribution c : leakOffs) {
            StrengthTransfer.Contribution share = weighted(c, c.weight() / total);
            shares.add(share);
            mean += share.weight() * share.stressRatio();
            least = Math.min(least, share.stressRatio());
            most = Math.max(most, share.stressRatio());
        }
        // Rounding of the shares must not push the mean of equal values out of their range.
        mean = Math.max(least, Math.min(most, mean));
        PressureEstimate strength = new PressureEstimate(least(carried), stress.strengthAt(mean), greatest(carried));
        return new StrengthTransfer.Estimated(z, strength, shares, bounds, conflicts(shares, bounds));
    }

    private List<EvidenceConflict> conflicts(
            List<StrengthTransfer.Contribution> leakOffs, List<StrengthTransfer.Contribution> bounds) {
        List<EvidenceConflict> found = new ArrayList<>();
        for (int i = 0; i < leakOffs.size(); i++) {
            StrengthTransfer.Contribution one = leakOffs.get(i);
            for (StrengthTransfer.Contribution other : leakOffs.subList(i + 1, leakOffs.size())) {
                double difference = Math.abs(one.stressRatio() - other.stressRatio());
                if (difference > ratioConflict) {
                    found.add(new EvidenceConflict(
                            one.label(),
                            other.label(),
                            "leak-off at stress ratios that differ by "
                                    + UnitSystem.SI.number(difference, Measure.NUMBER)));
                }
            }
            for (StrengthTransfer.Contribution bound : bounds) {
                double above = bound.stressRatio() - one.stressRatio();
                if (above > ratioConflict) {
                    found.add(new EvidenceConflict(
                            one.label(),
                            bound.label(),
                            "an integrity test held at a stress ratio " + UnitSystem.SI.number(above, Measure.NUMBER)
                                    + " above the leak-off"));
                }
            }
        }
        return found;
    }

    /**
     * Pore pressure of the planned well. Its own pore-pressure profile is not used.
     *
     * @param verticalDepths below its datum, m, below its free water level
     * @return one outcome for each depth; the order of the offset wells makes no difference
     * @throws RangeFault where a depth lies above the free water level, or the result below vacuum
     * @throws InputFault where two offset wells have one name
     */
    public List<PressureTransfer> porePressure(
            NormalPressure planned,
            List<OffsetWell> offsets,
            @Si(value = "m", kind = Kind.DEPTH) double[] verticalDepths) {
        MeasuredPressures measured = new MeasuredPressures(this, planned, offsets);
        return Arrays.stream(verticalDepths).mapToObj(z -> measured.at(z, true)).toList();
    }

    static PressureTransfer.Contribution weighted(PressureTransfer.Contribution c, double weight) {
        return new PressureTransfer.Contribution(c.well(), c.point(), c.belowMudline(), c.excess(), weight);
    }

    PressureTransfer pressureAt(
            double z,
            double hydrostatic,
            List<PressureTransfer.Contribution> near,
            double total,
            boolean withConflicts) {
        double mean = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        List<PressureTransfer.Contribution> shares = new ArrayList<>();
        List<EvidenceConflict> conflicts = new ArrayList<>();
        for (PressureTransfer.Contribution c : near) {
            PressureTransfer.Contribution share = weighted(c, c.weight() / total);
            for (PressureTransfer.Contribution other :
                    withConflicts ? shares : List.<PressureTransfer.Contribution>of()) {
                double difference = Math.abs(share.excess() - other.excess());
                if (difference > pressureConflict) {
                    conflicts.add(new EvidenceConflict(
                            other.label(),
                            share.label(),
                            Wording.of(
                                    "excess pressures that differ by {}",
                                    Amount.of(difference, Measure.PRESSURE_DIFFERENCE))));
                }
            }
            shares.add(share);
            mean += share.weight() * share.excess();
            least = Math.min(least, share.excess());
            most = Math.max(most, share.excess());
        }
        mean = Math.max(least, Math.min(most, mean));
        PressureEstimate pressure = new PressureEstimate(hydrostatic + least, hydrostatic + mean, hydrostatic + most);
        return new PressureTransfer.Estimated(z, pressure, shares, conflicts);
    }

    /**
     * What logs of offset wells let expect at a depth: excess over hydrostatic at the depth that corresponds, straight between
     * readings no farther apart than the window. Wells are weighted by distance; low is the least of their low estimates,
     * high the greatest of the high ones.
     *
     * @param share 1 between readings; 1 − |Δh| / w of the nearest one beyond the ends of a log
     */
    record FromLogs(PressureEstimate pressure, double share, List<String> wells) {}

    /** Empty where no log reaches. */
    Optional<FromLogs> fromLogs(NormalPressure planned, List<OffsetWell> offsets, double z) {
        double total = 0;
        double mean = 0;
        double share = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        List<String> names = new ArrayList<>();
        for (OffsetWell well : sorted(offsets)) {
            Optional<LogExcess> found = well.logged().log().flatMap(log -> excess(well, log, planned, z));
            if (found.isEmpty()) {
                continue;
            }
            LogExcess excess = found.get();
            double weight = excess.share() * weight(well);
            names.add(well.name());
            total += weight;
            mean += weight * excess.likely();
            least = Math.min(least, excess.low());
            most = Math.max(most, excess.high());
            share = Math.max(share, excess.share());
        }
        if (total == 0) {
            return Optional.empty();
        }
        double hydrostatic = planned.at(z);
        mean = Math.max(least, Math.min(most, mean / total));
        PressureEstimate pressure = new PressureEstimate(hydrostatic + least, hydrostatic + mean, hydrostatic + most);
        return Optional.of(new FromLogs(pressure, share, names));
    }

    private record LogExcess(double low, double likely, double high, double share) {}

    private Optional<LogExcess> excess(OffsetWell well, LogPressure log, NormalPressure planned, double z) {
        LogPressure.Row above = null;
        LogPressure.Row below = null;
        double up = Double.POSITIVE_INFINITY;
        double down = Double.POSITIVE_INFINITY;
        for (LogPressure.Row row : log.rows()) {
            OptionalDouble difference = matching.difference(well, row.verticalDepth(), planned, z);
            if (difference.isPresent()) {
                double deeper = difference.getAsDouble();
                if (deeper <= 0 && -deeper < up) {
                    above = row;
                    up = -deeper;
                }
                if (deeper >= 0 && deeper < down) {
                    below = row;
                    down = deeper;
                }
            }
        }
        if (above != null && below != null && up + down <= window) {
            double part = up + down == 0 ? 0 : up / (up + down);
            LogExcess a = excess(well, above, 1);
            LogExcess b = excess(well, below, 1);
            return Optional.of(new LogExcess(
                    a.low() + part * (b.low() - a.low()),
                    a.likely() + part * (b.likely() - a.likely()),
                    a.high() + part * (b.high() - a.high()),
                    1));
        }
        LogPressure.Row nearest = up <= down ? above : below;
        double share = 1 - Math.min(up, down) / window;
        return nearest == null || share <= 0 ? Optional.empty() : Optional.of(excess(well, nearest, share));
    }

    private static LogExcess excess(OffsetWell well, LogPressure.Row row, double share) {
        double hydrostatic = well.normal().at(row.verticalDepth());
        PressureEstimate p = row.pressure();
        return new LogExcess(p.low() - hydrostatic, p.likely() - hydrostatic, p.high() - hydrostatic, share);
    }

    private double weight(OffsetWell well) {
        double share = well.distance() / halfDistance;
        return 1 / (1 + share * share);
    }

    double weight(OffsetWell well, double offsetDepth, NormalPressure planned, double plannedDepth) {
        double share = well.distance() / halfDistance;
        return nearness(well, offsetDepth, planned, plannedDepth) / (1 + share * share);
    }

    /** 1 − |Δh| / w, or 0 outside the window. */
    double nearness(OffsetWell well, double offsetDepth, NormalPressure planned, double plannedDepth) {
        OptionalDouble difference = matching.difference(well, offsetDepth, planned, plannedDepth);
        return difference.isEmpty() ? 0 : Math.max(0, 1 - Math.abs(difference.getAsDouble()) / window);
    }

    static List<OffsetWell> sorted(List<OffsetWell> offsets) {
        List<OffsetWell> sorted =
                offsets.stream().sorted(Comparator.comparing(OffsetWell::name)).toList();
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).name().equals(sorted.get(i - 1).name())) {
                throw new InputFault(
                        "offset well " + sorted.get(i).name(), "is given twice", "join what was measured in it");
            }
        }
        return sorted;
    }

    static Range range(double[] z, List<PressureEstimate> estimates) {
        return new Range(
                PressureProfile.of(
                        z,
                        estimates.stream().mapToDouble(PressureEstimate::likely).toArray()),
                Optional.of(PressureProfile.of(
                        z, estimates.stream().mapToDouble(PressureEstimate::low).toArray())),
                Optional.of(PressureProfile.of(
                        z,
                        estimates.stream().mapToDouble(PressureEstimate::high).toArray())));
    }
}
