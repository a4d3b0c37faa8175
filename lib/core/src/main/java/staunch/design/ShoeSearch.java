package staunch.design;

import java.util.List;
import java.util.Objects;
import staunch.envelope.MethodOptions;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Where the casing shoes of a design may stand.
 *
 * <p>A depth is allowed where the section drilled to it and the section drilled below it both hold: pressure window with
 * trip and surge margin, tolerance of the drilled and of the swabbed kick at section TD, casing burst share and equipment on
 * the way to surface, and where it lies in no shoe stay-out. Of a section that is not shut in the pressure window alone
 * counts, where it is known, and it goes no deeper than planned.
 *
 * @param design name of the casing design
 * @param mud rule by which the muds follow
 * @param options methods used
 * @param resolution greatest distance of the depths looked at besides every break, m: an allowed or forbidden stretch that
 *     is shorter and lies between breaks may be missed
 * @param jointResolution greatest distance of the depths at which all strings together are looked at, besides either side of
 *     every jump and the boundaries met in setting one string after another, m: on these depths the search is complete
 * @param windows of each string with the others as planned, downwards
 * @param joint solutions for all strings together, bottom-up and top-down
 */
public record ShoeSearch(
        String design,
        MudRule mud,
        MethodOptions options,
        @Si(value = "m", kind = Kind.LENGTH) double resolution,
        @Si(value = "m", kind = Kind.LENGTH) double jointResolution,
        List<ShoeWindow> windows,
        List<JointShoes> joint) {
    public ShoeSearch {
        Objects.requireNonNull(design, "design");
        Objects.requireNonNull(mud, "mud");
        Objects.requireNonNull(options, "options");
        Check.within("resolution of the shoe search", resolution, 1, 200, Measure.LENGTH);
        Check.within("resolution of the joint shoe search", jointResolution, 1, 200, Measure.LENGTH);
        windows = List.copyOf(windows);
        joint = List.copyOf(joint);
    }

    /** The window of a string. */
    public ShoeWindow window(String string) {
        return windows.stream()
                .filter(w -> w.string().equals(string))
                .findFirst()
                .orElseThrow(() -> new InputFault(
                        "casing string \"" + string + "\"",
                        "is not in casing design \"" + design + "\"",
                        "use one of " + windows.stream().map(ShoeWindow::string).toList()));
    }
}
