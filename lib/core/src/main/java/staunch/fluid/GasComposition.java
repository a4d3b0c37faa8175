package staunch.fluid;

import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * A natural gas by its gravity and its non-hydrocarbon parts.
 *
 * @param gravity density relative to air at the same conditions, of the whole mixture, 0.55 to 1.8
 * @param hydrogenSulphide mole fraction of H2S, 0 to 1
 * @param carbonDioxide mole fraction of CO2, 0 to 1
 * @param nitrogen mole fraction of N2, 0 to 1
 */
public record GasComposition(
        @Si("1") double gravity,
        @Si("1") double hydrogenSulphide,
        @Si("1") double carbonDioxide,
        @Si("1") double nitrogen) {
    public GasComposition {
        Check.within("gas gravity", gravity, 0.55, 1.8, Measure.NUMBER);
        Check.within("mole fraction of hydrogen sulphide", hydrogenSulphide, 0, 1, Measure.NUMBER);
        Check.within("mole fraction of carbon dioxide", carbonDioxide, 0, 1, Measure.NUMBER);
        Check.within("mole fraction of nitrogen", nitrogen, 0, 1, Measure.NUMBER);
        if (hydrogenSulphide + carbonDioxide + nitrogen > 1) {
            throw new InputFault(
                    "gas composition", "has mole fractions that add up to more than 1", "check H2S, CO2 and N2");
        }
    }

    /** Molar mass: gravity times that of air. */
    @Si("kg/mol")
    public double molarMass() {
        return gravity * Physics.MOLAR_MASS_AIR;
    }

    /** A sweet gas without nitrogen. */
    public static GasComposition sweet(@Si("1") double gravity) {
        return new GasComposition(gravity, 0, 0, 0);
    }
}
