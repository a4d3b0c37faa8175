package staunch.earth;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Puts offset evidence into the rock of a planned well, by explicit choice.
 *
 * <ul>
 *   <li>A profile stays as predicted, is adjusted, or is made of the evidence alone, see {@link EvidenceUse}. Adjusted:
 *       p = p₀ + s (e − p₀), with the prediction p₀, the transferred estimate e of {@link OffsetTransfer} and
 *       s = 1 − |Δh| / w of the nearest piece of evidence. The spread of the prediction stays; where the evidence has a
 *       wider one, that counts. The shape of s is a choice, not a law of nature.
 *   <li>A planned test with leak-off evidence within the window counts no more than the likely strength at its depth, where
 *       that is adjusted or transferred.
 *   <li>A test made in a named weak zone speaks of the zone alone. Where asked, the lowest leak-off in it stands in the
 *       place of the zone's estimate, as equivalent density from the datum.
 *   <li>A loss is an upper bound of the strength at the mud pressure it began at, a kick a lower bound of the pore pressure.
 *       Both are carried over, compared with the profiles and with other evidence, and listed. By default they change nothing.
 *       Where they count, see {@link BoundUse}, each moves the profiles to the unfavourable side within the window, with the
 *       share s = 1 − |Δh| / w of its own distance: a loss the low and the likely strength, F − s max(0, F − b) with
 *       b = P + K (S − P) and the stress ratio K of the loss; a kick the high and the likely pore pressure,
 *       P + s max(0, b − P) with the excess of the kick over hydrostatic. Of several the one that moves farthest counts. A loss
 *       met in a named weak zone lowers that zone alone, to the loss. Planned tests are lowered like the strength. The
 *       stress in b is that without the kicks, so that a kick never raises the strength. A mud that met no kick never lowers
 *       the pore pressure, since tight rock does not flow, and an integrity test of an offset well never raises the strength:
 *       both would widen the window on what another well bore.
 *   <li>Pore pressures read from logs change nothing, or are carried over as estimates, see {@link LogUse}: the profile is
 *       first drawn to them as to evidence, with s = 1 between their readings, and then, as above, to the measured pressures.
 *       So a measured pressure counts alone at its depth, and the log again at the edge of the window. Where the two differ by
 *       more than the size of a conflict, that is listed.
 *   <li>Integrity tests are lower bounds: they change nothing and are listed where they lie above the prediction.
 * </ul>
 *
 * @param transfer how evidence is carried over and weighted
 * @param porePressure what the pore pressure is to be made of
 * @param strength what the strength is to be made of
 * @param weakZones whether leak-off tests replace the estimates of weak zones
 * @param logs what pore pressures read from logs do
 * @param bounds what losses and kicks do
 */
public record EvidenceTransfer(
        OffsetTransfer transfer,
        EvidenceUse porePressure,
        EvidenceUse strength,
        boolean weakZones,
        LogUse logs,
        BoundUse bounds) {
    public EvidenceTransfer {
        Objects.requireNonNull(transfer, "transfer");
        Objects.requireNonNull(porePressure, "porePressure");
        Objects.requireNonNull(strength, "strength");
        Objects.requireNonNull(logs, "logs");
        Objects.requireNonNull(bounds, "bounds");
    }

    /** Logs and bounds change nothing. */
    public EvidenceTransfer(
            OffsetTransfer transfer, EvidenceUse porePressure, EvidenceUse strength, boolean weakZones) {
        this(transfer, porePressure, strength, weakZones, LogUse.COMPARED, BoundUse.LISTED);
    }

    /**
     * Rock with evidence.
     *
     * @param earth rock of the planned well
     * @param evidence how it came about
     */
    public record Result(EarthModel earth, OffsetEvidence evidence) {
        public Result {
            Objects.requireNonNull(earth, "earth");
            Objects.requireNonNull(evidence, "evidence");
        }
    }

    /**
     * Rock of the planned well with the evidence put in.
     *
     * @param predicted rock of the planned well without it
     * @param normal its hydrostatic pressure and datum
     * @param overburden its overburden by vertical depth below its datum
     * @param wells offset wells with what was measured in them; their order makes no difference
     * @param plannedTests names of the strength tests that are still to be made
     * @throws staunch.units.InputFault where a prediction is to be adjusted that is not there, or evidence alone leaves a
     *     gap between its depths
     * @throws staunch.units.RangeFault where a test lies outside the profiles of its own well, or its stress ratio is
     *     beyond belief
     */
    public Result apply(
            EarthModel predicted,
            NormalPressure normal,
            Range overburden,
            List<OffsetWell> wells,
            Set<String> plannedTests) {
        return new EvidenceModel(this, predicted, normal, overburden, wells).build(plannedTests);
    }
}
