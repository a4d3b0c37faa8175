package staunch.units;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Everything this library measures: an SI unit together with the kind of the number. Each measure knows the suffix that
 * its keys carry in machine output.
 */
public enum Measure {
    NUMBER("1", Kind.PLAIN, "", "number", "1", "%"),
    DEPTH("m", Kind.DEPTH, "_m", "depth", "m", "ft"),
    LENGTH("m", Kind.LENGTH, "_m", "length", "m", "ft"),
    DIAMETER("m", Kind.DIAMETER, "_m", "diameter", "in", "mm", "m"),
    AREA("m2", Kind.PLAIN, "_m2", "area", "m2", "in2"),
    CAPACITY("m3/m", Kind.PLAIN, "_m3_per_m", "capacity", "m3/m", "l/m", "bbl/ft"),
    VOLUME("m3", Kind.PLAIN, "_m3", "volume", "m3", "bbl", "l"),
    FLOW_RATE("m3/s", Kind.PLAIN, "_m3_per_s", "flow rate", "m3/s", "l/min", "gpm", "bbl/min"),
    GAS_RATE("m3/s", Kind.STANDARD, "_m3_per_s_std", "gas rate", "Sm3/d", "Sm3/h", "MMscf/d"),
    MASS("kg", Kind.PLAIN, "_kg", "mass", "kg", "lb"),
    LINEAR_MASS("kg/m", Kind.PLAIN, "_kg_per_m", "weight per length", "kg/m", "lb/ft"),
    MOLAR_MASS("kg/mol", Kind.PLAIN, "_kg_per_mol", "molar mass", "kg/mol", "g/mol"),
    DENSITY("kg/m3", Kind.PLAIN, "_kg_per_m3", "density", "kg/m3", "sg", "ppg", "lb/ft3"),
    EQUIVALENT_DENSITY(
            "kg/m3", Kind.EQUIVALENT, "_kg_per_m3_emw", "equivalent mud weight", "kg/m3", "sg", "ppg", "psi/ft"),
    DENSITY_DIFFERENCE("kg/m3", Kind.DIFFERENCE, "_kg_per_m3_diff", "density difference", "kg/m3", "sg", "ppg"),
    PRESSURE_ABSOLUTE(
            "Pa",
            Kind.ABSOLUTE,
            "_Pa_abs",
            "absolute pressure",
            "psi",
            "bar",
            "kPa",
            "MPa",
            "psia",
            "bara",
            "kPaa",
            "MPaa"),
    PRESSURE_GAUGE("Pa", Kind.GAUGE, "_Pa_gauge", "gauge pressure", "psi", "bar", "kPa", "MPa"),
    PRESSURE_DIFFERENCE("Pa", Kind.DIFFERENCE, "_Pa_diff", "pressure difference", "psi", "bar", "kPa", "MPa"),
    STRESS("Pa", Kind.STRESS, "_Pa", "stress", "MPa", "psi", "ksi"),
    PRESSURE_GRADIENT("Pa/m", Kind.PLAIN, "_Pa_per_m", "pressure gradient", "Pa/m", "kPa/m", "bar/m", "psi/ft"),
    COMPRESSIBILITY("1/Pa", Kind.PLAIN, "_per_Pa", "compressibility", "1/Pa", "1/GPa", "1/bar", "1/psi"),
    THERMAL_EXPANSION("1/K", Kind.PLAIN, "_per_K", "thermal expansion", "1/K", "1/degC", "1/degF"),
    TEMPERATURE("K", Kind.POINT, "_K", "temperature", "degC", "degF", "K"),
    TEMPERATURE_DIFFERENCE("K", Kind.DIFFERENCE, "_K_diff", "temperature difference", "K", "degC", "degF"),
    TEMPERATURE_GRADIENT(
            "K/m", Kind.PLAIN, "_K_per_m", "temperature gradient", "K/m", "degC/100m", "degC/km", "degF/100ft"),
    VISCOSITY("Pa.s", Kind.PLAIN, "_Pa_s", "viscosity", "Pa.s", "mPa.s", "cP"),
    FORCE("N", Kind.PLAIN, "_N", "force", "kN", "klbf", "lbf", "N"),
    SURFACE_TENSION("N/m", Kind.PLAIN, "_N_per_m", "surface tension", "mN/m", "N/m"),
    ANGLE("rad", Kind.PLAIN, "_rad", "angle", "deg", "rad"),
    CURVATURE("rad/m", Kind.PLAIN, "_rad_per_m", "dogleg severity", "rad/m", "deg/30m", "deg/100ft"),
    SPEED("m/s", Kind.PLAIN, "_m_per_s", "speed", "m/s", "m/min", "m/h", "ft/min", "ft/h"),
    SLOWNESS("s/m", Kind.PLAIN, "_s_per_m", "slowness", "us/ft", "us/m"),
    RESISTIVITY("ohm.m", Kind.PLAIN, "_ohm_m", "resistivity", "ohm.m"),
    TIME("s", Kind.PLAIN, "_s", "time", "s", "min", "h"),
    FREQUENCY("1/s", Kind.PLAIN, "_per_s", "rate per time", "1/s", "1/min", "spm");

    private final String siUnit;
    private final Kind kind;
    private final String jsonSuffix;
    private final String title;
    private final List<String> usualUnits;

    private static final Map<String, Measure> BY_DECLARATION = Arrays.stream(values())
            .collect(Collectors.toUnmodifiableMap(m -> m.siUnit + " " + m.kind, Function.identity()));

    Measure(String siUnit, Kind kind, String jsonSuffix, String title, String... usualUnits) {
        this.siUnit = siUnit;
        this.kind = kind;
        this.jsonSuffix = jsonSuffix;
        this.title = title;
        this.usualUnits = List.of(usualUnits);
    }

    /** SI unit in which values of this measure are held. */
    public String siUnit() {
        return siUnit;
    }

    /** What its numbers stand for. */
    public Kind kind() {
        return kind;
    }

    /** Ending of a key that holds a value of this measure in machine output, such as {@code _Pa_gauge}. */
    public String jsonSuffix() {
        return jsonSuffix;
    }

    /** Name in plain words. */
    public String title() {
        return title;
    }

    /** Units in which people write it; more are understood. */
    public List<String> usualUnits() {
        return usualUnits;
    }

    /**
     * Finds the measure that a declaration stands for.
     *
     * @throws IllegalArgumentException where no measure has that unit and kind: a mistake in the declaring code
     */
    public static Measure of(Si declaration) {
        Measure measure = BY_DECLARATION.get(declaration.value() + " " + declaration.kind());
        if (measure == null) {
            throw new IllegalArgumentException(
                    "No measure has unit " + declaration.value() + " and kind " + declaration.kind());
        }
        return measure;
    }
}
