package staunch.design;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.envelope.CirculationPeaks;
import staunch.envelope.InfluxMargin;
import staunch.envelope.KickResult;
import staunch.envelope.Maasp;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.Verdict;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * What one casing design reaches in a hole section.
 *
 * @param design name of the casing design
 * @param topDepth measured depth of the shoe above, m
 * @param bottomDepth measured depth of section TD, m
 * @param drilled tolerance of the drilled kick at section TD
 * @param swabbed tolerance of the swabbed kick at section TD
 * @param maasp components at the section's mud density; empty where there is no mud or the section is not shut in
 * @param leastShoeMargin smallest margin at the shoe while the required or detectable influx is circulated out, drilled
 *     or swabbed, Pa; empty where not assessed
 * @param peaks highest pressures while the drilled influx is circulated out by the method of the study
 * @param verdict of the section, with the limit that governs
 */
public record SectionOutcome(
        String design,
        @Si(value = "m", kind = Kind.DEPTH) double topDepth,
        @Si(value = "m", kind = Kind.DEPTH) double bottomDepth,
        KickResult drilled,
        KickResult swabbed,
        Optional<Maasp> maasp,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble leastShoeMargin,
        CirculationPeaks peaks,
        Verdict verdict) {
    public SectionOutcome {
        Objects.requireNonNull(design, "design");
        Objects.requireNonNull(drilled, "drilled");
        Objects.requireNonNull(swabbed, "swabbed");
        Objects.requireNonNull(maasp, "maasp");
        Objects.requireNonNull(leastShoeMargin, "leastShoeMargin");
        Objects.requireNonNull(peaks, "peaks");
        Objects.requireNonNull(verdict, "verdict");
    }

    static SectionOutcome of(String design, SectionEnvelope section, CirculationPeaks peaks) {
        return new SectionOutcome(
                design,
                section.plan().topDepth(),
                section.plan().bottomDepth(),
                section.drilled(),
                section.swabbed(),
                section.maasp(),
                section.margins().stream()
                        .mapToDouble(InfluxMargin::leastAtShoe)
                        .min(),
                peaks,
                section.verdict());
    }
}
