package staunch.earth;

import staunch.units.Measure;
import staunch.units.Si;

/** What a log measures in shale that tells how far it has been compacted. */
public enum LogProperty {
    /** Sonic slowness Δt, s/m, 1e-4 to 1e-3 (30 to 305 µs/ft); falls as shale compacts. */
    SLOWNESS("sonic slowness", Measure.SLOWNESS, 1e-4, 1e-3),
    /** Resistivity R, Ω m, 0.01 to 1e5; rises as shale compacts. */
    RESISTIVITY("resistivity", Measure.RESISTIVITY, 0.01, 1e5);

    private final String title;
    private final Measure measure;
    private final double lowest;
    private final double highest;

    LogProperty(String title, Measure measure, double lowest, double highest) {
        this.title = title;
        this.measure = measure;
        this.lowest = lowest;
        this.highest = highest;
    }

    /** In plain words. */
    public String title() {
        return title;
    }

    /** What its numbers measure. */
    public Measure measure() {
        return measure;
    }

    double lowest() {
        return lowest;
    }

    double highest() {
        return highest;
    }

    /** Observed over normal compaction: below one the shale is less compacted than it would normally be. */
    double ratio(double observed, double normal) {
        return this == SLOWNESS ? normal / observed : observed / normal;
    }

    /**
     * Normal reading where a reading has a ratio to it.
     *
     * @param observed in SI units of {@link #measure()}
     * @param ratio as of {@link LogPressure}
     */
    @Si("1")
    public double normal(@Si("1") double observed, @Si("1") double ratio) {
        return this == SLOWNESS ? observed * ratio : observed / ratio;
    }

    /** Reading that has a ratio to another one. */
    double reading(double ratio, double normal) {
        return this == SLOWNESS ? normal / ratio : normal * ratio;
    }
}
