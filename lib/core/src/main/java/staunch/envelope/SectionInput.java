package staunch.envelope;

import java.util.List;
import java.util.Objects;
import staunch.earth.EarthModel;
import staunch.earth.EquivalentZero;
import staunch.limit.PressureEquipment;
import staunch.well.CasingString;
import staunch.well.Datum;
import staunch.well.WellPath;

/**
 * Everything the envelope of one section is computed from.
 *
 * @param datum zero of the depths
 * @param path of the hole
 * @param earth the rock
 * @param casing strings set when the section is drilled
 * @param equipment pressure equipment
 * @param plan the section
 * @param options methods; equivalent mud weights cannot count from a mudline under a sea of unknown density
 */
public record SectionInput(
        Datum datum,
        WellPath path,
        EarthModel earth,
        List<CasingString> casing,
        PressureEquipment equipment,
        SectionPlan plan,
        MethodOptions options) {
    public SectionInput {
        Objects.requireNonNull(datum, "datum");
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(earth, "earth");
        casing = List.copyOf(casing);
        Objects.requireNonNull(equipment, "equipment");
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(options, "options");
        EquivalentZero.of(options.equivalentDensityFrom(), datum);
    }
}
