package staunch.envelope;

import java.util.Objects;
import java.util.Optional;

/**
 * A section against its criteria at section TD alone, without the curves of a {@link SectionEnvelope}: what searches over
 * many variants of a section ask for. Its values are those of the envelope.
 *
 * @param drilled tolerance of the drilled kick
 * @param swabbed tolerance of the swabbed kick
 * @param window whether the mud lies within the pressure window
 * @param maasp components at the section's mud density; empty where there is no mud or the section is not shut in
 * @param verdict of the section: the worst of the three
 */
public record SectionCheck(
        KickCheck drilled, KickCheck swabbed, Verdict window, Optional<Maasp> maasp, Verdict verdict) {
    public SectionCheck {
        Objects.requireNonNull(drilled, "drilled");
        Objects.requireNonNull(swabbed, "swabbed");
        Objects.requireNonNull(window, "window");
        Objects.requireNonNull(maasp, "maasp");
        Objects.requireNonNull(verdict, "verdict");
    }
}
