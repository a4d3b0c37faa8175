package staunch.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import staunch.earth.EarthModel;
import staunch.earth.OffsetEvidence;
import staunch.envelope.MethodOptions;
import staunch.limit.PressureEquipment;
import staunch.units.InputFault;
import staunch.units.UnitSystem;
import staunch.units.Warning;
import staunch.well.Datum;
import staunch.well.WellPath;

/**
 * Everything a case says about a well.
 *
 * @param header title block
 * @param units in which the case wants its results shown
 * @param datum zero of its depths
 * @param path of the hole
 * @param earth the rock
 * @param designs casing designs, the base design first
 * @param equipment pressure equipment
 * @param options methods
 * @param files it was read from; empty for a case built in code
 * @param warnings found while reading
 * @param evidence what offset wells say of it, and what was made of that in the rock; empty where the case names none
 * @param register every number with the place it was read from; empty for a case built in code
 */
public record WellCase(
        CaseHeader header,
        UnitSystem units,
        Datum datum,
        WellPath path,
        EarthModel earth,
        List<CasingDesign> designs,
        PressureEquipment equipment,
        MethodOptions options,
        List<InputFile> files,
        List<Warning> warnings,
        Optional<OffsetEvidence> evidence,
        List<InputValue> register) {
    public WellCase {
        Objects.requireNonNull(evidence, "evidence");
        register = List.copyOf(register);
        Objects.requireNonNull(header, "header");
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(datum, "datum");
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(earth, "earth");
        designs = List.copyOf(designs);
        if (designs.isEmpty()) {
            throw new InputFault("case", "has no casing design", "give at least one");
        }
        Set<String> names = new HashSet<>();
        for (CasingDesign design : designs) {
            if (!names.add(design.name())) {
                throw new InputFault("case", "has two casing designs named \"" + design.name() + "\"", "rename one");
            }
        }
        Objects.requireNonNull(equipment, "equipment");
        Objects.requireNonNull(options, "options");
        files = List.copyOf(files);
        warnings = List.copyOf(warnings);
    }

    /** A case without evidence of offset wells. */
    public WellCase(
            CaseHeader header,
            UnitSystem units,
            Datum datum,
            WellPath path,
            EarthModel earth,
            List<CasingDesign> designs,
            PressureEquipment equipment,
            MethodOptions options,
            List<InputFile> files,
            List<Warning> warnings) {
        this(
                header,
                units,
                datum,
                path,
                earth,
                designs,
                equipment,
                options,
                files,
                warnings,
                Optional.empty(),
                List.of());
    }

    /** A case built in code: methods by default, equipment not known. */
    public static WellCase of(
            CaseHeader header,
            UnitSystem units,
            Datum datum,
            WellPath path,
            EarthModel earth,
            CasingDesign... designs) {
        return new WellCase(
                header,
                units,
                datum,
                path,
                earth,
                List.of(designs),
                PressureEquipment.NONE,
                MethodOptions.DEFAULT,
                List.of(),
                List.of());
    }

    /** The same case with pressure equipment. */
    public WellCase withEquipment(PressureEquipment newEquipment) {
        return new WellCase(
                header, units, datum, path, earth, designs, newEquipment, options, files, warnings, evidence, register);
    }

    /** The design of that name. */
    public CasingDesign design(String name) {
        return designs.stream()
                .filter(d -> d.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new InputFault(
                        "casing design \"" + name + "\"",
                        "is not in the case",
                        "use one of " + designs.stream().map(CasingDesign::name).toList()));
    }

    /**
     * The same case with another design in the place of the one of that name.
     *
     * @throws InputFault where the case has no design of that name
     */
    public WellCase withDesign(CasingDesign replacement) {
        List<CasingDesign> changed = new ArrayList<>(designs);
        changed.set(designs.indexOf(design(replacement.name())), replacement);
        return new WellCase(
                header, units, datum, path, earth, changed, equipment, options, files, warnings, evidence, register);
    }
}
