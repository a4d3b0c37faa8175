package staunch.units;

import java.util.Arrays;
import java.util.Objects;

/**
 * Everything this library measures: an SI unit together with the kind of the number. Each measure knows the suffix that
 * its keys carry in machine output.
 */
public enum Measure {
    NUMBER("1", Kind.PLAIN, "", "number"),
    DEPTH("m", Kind.DEPTH, "_m", "depth"),
    LENGTH("m", Kind.LENGTH, "_m", "length"),
    DIAMETER("m", Kind.DIAMETER, "_m", "diameter"),
    AREA("m2", Kind.PLAIN, "_m2", "area"),
    CAPACITY("m3/m", Kind.PLAIN, "_m3_per_m", "capacity"),
    VOLUME("m3", Kind.PLAIN, "_m3", "volume"),
    FLOW_RATE("m3/s", Kind.PLAIN, "_m3_per_s", "flow rate"),
    MASS("kg", Kind.PLAIN, "_kg", "mass"),
    LINEAR_MASS("kg/m", Kind.PLAIN, "_kg_per_m", "weight per length"),
    MOLAR_MASS("kg/mol", Kind.PLAIN, "_kg_per_mol", "molar mass"),
    DENSITY("kg/m3", Kind.PLAIN, "_kg_per_m3", "density"),
    EQUIVALENT_DENSITY("kg/m3", Kind.EQUIVALENT, "_kg_per_m3_emw", "equivalent mud weight"),
    DENSITY_DIFFERENCE("kg/m3", Kind.DIFFERENCE, "_kg_per_m3_diff", "density difference"),
    PRESSURE_ABSOLUTE("Pa", Kind.ABSOLUTE, "_Pa_abs", "absolute pressure"),
    PRESSURE_GAUGE("Pa", Kind.GAUGE, "_Pa_gauge", "gauge pressure"),
    PRESSURE_DIFFERENCE("Pa", Kind.DIFFERENCE, "_Pa_diff", "pressure difference"),
    STRESS("Pa", Kind.STRESS, "_Pa", "stress"),
    PRESSURE_GRADIENT("Pa/m", Kind.PLAIN, "_Pa_per_m", "pressure gradient"),
    COMPRESSIBILITY("1/Pa", Kind.PLAIN, "_per_Pa", "compressibility"),
    THERMAL_EXPANSION("1/K", Kind.PLAIN, "_per_K", "thermal expansion"),
    TEMPERATURE("K", Kind.POINT, "_K", "temperature"),
    TEMPERATURE_DIFFERENCE("K", Kind.DIFFERENCE, "_K_diff", "temperature difference"),
    TEMPERATURE_GRADIENT("K/m", Kind.PLAIN, "_K_per_m", "temperature gradient"),
    VISCOSITY("Pa.s", Kind.PLAIN, "_Pa_s", "viscosity"),
    ANGLE("rad", Kind.PLAIN, "_rad", "angle"),
    CURVATURE("rad/m", Kind.PLAIN, "_rad_per_m", "dogleg severity"),
    SPEED("m/s", Kind.PLAIN, "_m_per_s", "speed"),
    TIME("s", Kind.PLAIN, "_s", "time"),
    FREQUENCY("1/s", Kind.PLAIN, "_per_s", "rate per time");

    private final String siUnit;
    private final Kind kind;
    private final String jsonSuffix;
    private final String title;

    Measure(String siUnit, Kind kind, String jsonSuffix, String title) {
        this.siUnit = siUnit;
        this.kind = kind;
        this.jsonSuffix = jsonSuffix;
        this.title = title;
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

    /**
     * Finds the measure that a declaration stands for.
     *
     * @throws IllegalArgumentException where no measure has that unit and kind: a mistake in the declaring code
     */
    public static Measure of(Si declaration) {
        Objects.requireNonNull(declaration, "declaration");
        return Arrays.stream(values())
                .filter(m -> m.siUnit.equals(declaration.value()) && m.kind == declaration.kind())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "No measure has unit " + declaration.value() + " and kind " + declaration.kind()));
    }
}
