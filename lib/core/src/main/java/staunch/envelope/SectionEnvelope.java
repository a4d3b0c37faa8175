package staunch.envelope;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Kind;
import staunch.units.Si;
import staunch.units.Warning;

/**
 * Well-control envelope of one hole section.
 *
 * @param plan the section as given
 * @param shoeVerticalDepth vertical depth of the shoe above, m; empty where the survey ends above it
 * @param bottomVerticalDepth vertical depth of section TD, m; empty where the survey ends above it
 * @param verdict of the section: the worst of drilled kick, swabbed kick and pressure window; the design load of the
 *     maximum anticipated surface pressure has its own
 * @param drilled tolerance of the drilled kick at section TD
 * @param swabbed tolerance of the swabbed kick at section TD
 * @param window pressures over the exposed depths
 * @param alongSection tolerance with the bit at each depth
 * @param volumeAgainstIntensity curve at section TD
 * @param largestIntensity that the required drilled volume allows at section TD
 * @param zeroGainMargin intensity at which the tolerance at section TD becomes zero
 * @param maasp components at the section's mud density; empty where there is no mud or the section is not shut in
 * @param maaspAgainstMud the same for a range of mud densities
 * @param masps maximum anticipated surface pressure by the default basis, and after it by the chosen one where that is
 *     another; empty where the section is not shut in
 * @param margins shoe margin for the required or detectable volume, drilled and swabbed, where assessed
 * @param annularLoss friction in the annulus at the greatest slow circulating rate
 * @param assumptions choices and defaults behind the results
 * @param warnings legal but suspicious input, neglected effects
 */
public record SectionEnvelope(
        SectionPlan plan,
        @Si(value = "m", kind = Kind.DEPTH) OptionalDouble shoeVerticalDepth,
        @Si(value = "m", kind = Kind.DEPTH) OptionalDouble bottomVerticalDepth,
        Verdict verdict,
        KickResult drilled,
        KickResult swabbed,
        PressureWindow window,
        List<DepthPoint> alongSection,
        List<IntensityPoint> volumeAgainstIntensity,
        IntensityLimit largestIntensity,
        IntensityLimit zeroGainMargin,
        Optional<Maasp> maasp,
        List<Maasp> maaspAgainstMud,
        List<Masp> masps,
        List<InfluxMargin> margins,
        AnnularLoss annularLoss,
        List<Assumption> assumptions,
        List<Warning> warnings) {
    public SectionEnvelope {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(shoeVerticalDepth, "shoeVerticalDepth");
        Objects.requireNonNull(bottomVerticalDepth, "bottomVerticalDepth");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(drilled, "drilled");
        Objects.requireNonNull(swabbed, "swabbed");
        Objects.requireNonNull(window, "window");
        alongSection = List.copyOf(alongSection);
        volumeAgainstIntensity = List.copyOf(volumeAgainstIntensity);
        Objects.requireNonNull(largestIntensity, "largestIntensity");
        Objects.requireNonNull(zeroGainMargin, "zeroGainMargin");
        Objects.requireNonNull(maasp, "maasp");
        maaspAgainstMud = List.copyOf(maaspAgainstMud);
        masps = List.copyOf(masps);
        margins = List.copyOf(margins);
        Objects.requireNonNull(annularLoss, "annularLoss");
        assumptions = List.copyOf(assumptions);
        warnings = List.copyOf(warnings);
    }

    /** Maximum anticipated surface pressure by the chosen basis; empty where the section is not shut in. */
    public Optional<Masp> masp() {
        return masps.isEmpty() ? Optional.empty() : Optional.of(masps.get(masps.size() - 1));
    }
}
