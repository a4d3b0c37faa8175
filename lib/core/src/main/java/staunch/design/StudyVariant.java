package staunch.design;

import java.util.List;
import java.util.Objects;
import staunch.envelope.MethodOptions;
import staunch.envelope.MethodOptions.Estimates;
import staunch.units.Check;

/**
 * One choice of evidence and method under which designs are checked: low strength with high pore pressure, or likely ones;
 * with or without an offset well; driller's method or wait-and-weight.
 *
 * @param name of the variant
 * @param wellCase case with its evidence
 * @param options methods
 */
public record StudyVariant(String name, WellCase wellCase, MethodOptions options) {
    public StudyVariant {
        Check.text("name of the variant", name);
        Objects.requireNonNull(wellCase, "wellCase");
        Objects.requireNonNull(options, "options");
    }

    /** A case by its own methods. */
    public static StudyVariant of(String name, WellCase wellCase) {
        return new StudyVariant(name, wellCase, wellCase.options());
    }

    /** The case with each choice of estimates in turn: high pore pressure with low strength, likely. */
    public static List<StudyVariant> estimates(WellCase wellCase, MethodOptions options) {
        return List.of(Estimates.values()).stream()
                .map(e -> new StudyVariant(e.title(), wellCase, options.withEstimates(e)))
                .toList();
    }
}
