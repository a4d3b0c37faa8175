package staunch.fluid;

import staunch.units.InputFault;
import staunch.units.Si;

/**
 * An expansion law estimated from the parts of a mud, for a user without laboratory values. It is an estimate: a result
 * that rests on it says so.
 *
 * @param expansion the law
 * @param largestMisfit largest relative difference in density between the law and the parts it was fitted to
 * @param basis what it was estimated from, for the list of assumptions
 */
public record MudExpansionEstimate(
        MudExpansion expansion, @Si("1") double largestMisfit, String basis) {
    private static final int STEPS = 20;

    /**
     * Fits ln(ρ/ρ₀) = c (p − p₀) − α (T − T₀) by least squares to the density of the parts (diesel and pure water, each
     * conserving its mass, solids unchanging). The fit covers a band about the straight line from the shallow to the deep
     * state, half the range of pressure wide to either side, since pressure and temperature rise together in a well.
     *
     * @param volumes parts of the mud at the reference state
     * @param reference state at which the density of the mud is stated; p₀ and T₀
     * @param shallow state of lowest pressure and temperature
     * @param deep state of highest pressure and temperature
     * @throws InputFault where the deep state does not exceed the shallow one in both
     * @throws staunch.units.RangeFault where a state lies outside the range of a liquid's density, or the fitted
     *     coefficients outside those of a mud
     */
    public static MudExpansionEstimate of(
            MudVolumes volumes, MudVolumes.State reference, MudVolumes.State shallow, MudVolumes.State deep) {
        double pressureRange = deep.pressure() - shallow.pressure();
        double temperatureRange = deep.temperature() - shallow.temperature();
        if (pressureRange <= 0 || temperatureRange <= 0) {
            throw new InputFault(
                    "range of the mud estimate",
                    "does not rise from the shallow to the deep state",
                    "give the deep state a higher pressure and a higher temperature");
        }
        double pp = 0;
        double pt = 0;
        double tt = 0;
        double py = 0;
        double ty = 0;
        for (int i = 0; i <= STEPS; i++) {
            for (int j = 0; j <= STEPS; j++) {
                MudVolumes.State state = sample(shallow, deep, i, j);
                double y = Math.log(volumes.relativeDensity(state, reference));
                double p = (state.pressure() - reference.pressure()) / pressureRange;
                double t = (state.temperature() - reference.temperature()) / temperatureRange;
                pp += p * p;
                pt += p * t;
                tt += t * t;
                py += p * y;
                ty += t * y;
            }
        }
        double determinant = pp * tt - pt * pt;
        MudExpansion expansion = new MudExpansion(
                (py * tt - ty * pt) / determinant / pressureRange,
                -(ty * pp - py * pt) / determinant / temperatureRange,
                reference.pressure(),
                reference.temperature());
        double misfit = 0;
        for (int i = 0; i <= STEPS; i++) {
            for (int j = 0; j <= STEPS; j++) {
                MudVolumes.State state = sample(shallow, deep, i, j);
                double law = expansion.relativeDensity(state.pressure(), state.temperature());
                misfit = Math.max(misfit, Math.abs(law / volumes.relativeDensity(state, reference) - 1));
            }
        }
        return new MudExpansionEstimate(
                expansion,
                misfit,
                "compressibility and thermal expansion of the mud estimated from its volumes of oil, water and solids,"
                        + " with densities of diesel and pure water");
    }

    private static MudVolumes.State sample(MudVolumes.State shallow, MudVolumes.State deep, int i, int j) {
        double along = (double) i / STEPS;
        double lowest = Math.max(0, along - 0.5);
        double highest = Math.min(1, along + 0.5);
        double across = lowest + (highest - lowest) * j / STEPS;
        return new MudVolumes.State(
                shallow.pressure() + across * (deep.pressure() - shallow.pressure()),
                shallow.temperature() + along * (deep.temperature() - shallow.temperature()));
    }
}
