package staunch.units;

/** Pressures as the trade compares them along a well: as the density of the fluid column that would give them. */
public final class EquivalentDensity {
    private EquivalentDensity() {}

    /**
     * Equivalent mud weight: ρ = (p − p₀) / (g z), with p₀ the standard atmosphere at the datum. By definition; the datum
     * is the zero of the depth handed in.
     *
     * @param pressure absolute, Pa
     * @param verticalDepth below the datum, m, 0.1 to 20 000
     * @return kg/m³
     * @throws RangeFault where the depth lies outside its range
     */
    @Si(value = "kg/m3", kind = Kind.EQUIVALENT)
    public static double of(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        Check.within("vertical depth of an equivalent density", verticalDepth, 0.1, 20_000, Measure.DEPTH);
        return (pressure - Physics.ATMOSPHERE) / (Physics.GRAVITY * verticalDepth);
    }

    /**
     * The pressure that an equivalent mud weight stands for: p = p₀ + ρ g z.
     *
     * @param density equivalent, kg/m³
     * @param verticalDepth below the datum, m
     * @return Pa absolute
     */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public static double pressure(
            @Si(value = "kg/m3", kind = Kind.EQUIVALENT) double density,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        return Physics.ATMOSPHERE + density * Physics.GRAVITY * verticalDepth;
    }
}
