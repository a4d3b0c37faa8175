package staunch.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Fracture pressure of a well along its log by the matrix stress coefficient, F = P + K (S − P), see
 * {@link StressState#strengthAt}, with K calibrated to the leak-off tests of the well. Low and high take the least and the
 * greatest K with the low and high overburden and pore pressure.
 *
 * @param least K of the tests
 * @param mean of the tests
 * @param greatest K of the tests
 * @param poissonRatio that stands for the mean in Eaton's formula; empty where K lies outside what one can stand for
 * @param tests how many leak-off tests K rests on
 * @param rows downwards, at the readings of the log with a pore pressure
 */
public record LogFracture(
        @Si("1") double least,
        @Si("1") double mean,
        @Si("1") double greatest,
        @Si("1") OptionalDouble poissonRatio,
        int tests,
        List<Row> rows) {
    public LogFracture {
        rows = List.copyOf(rows);
    }

    /**
     * Fracture pressure at a depth.
     *
     * @param verticalDepth below the datum of the well, m
     * @param pressure with its spread
     */
    public record Row(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth, PressureEstimate pressure) {
        public Row {
            Objects.requireNonNull(pressure, "pressure");
        }
    }

    /**
     * Of a well with a log; empty where no leak-off test was made in it, or it has no pore pressure from a log.
     *
     * @throws staunch.units.RangeFault where a test lies outside the profiles of the well, or its K is beyond belief
     */
    public static Optional<LogFracture> of(OffsetWell well) {
        double[] ratios = well.tests().stream()
                .filter(t -> t.standing() != Standing.INTEGRITY_TEST)
                .mapToDouble(t -> well.ratioOf(t.verticalDepth(), t.pressure()))
                .sorted()
                .toArray();
        if (ratios.length == 0 || well.logged().log().isEmpty()) {
            return Optional.empty();
        }
        double least = ratios[0];
        double greatest = ratios[ratios.length - 1];
        double sum = 0;
        for (double ratio : ratios) {
            sum += ratio;
        }
        double mean = Math.max(least, Math.min(greatest, sum / ratios.length));
        Range overburden = well.overburden();
        List<Row> rows = new ArrayList<>();
        for (LogPressure.Row row : well.logged().log().get().rows()) {
            double z = row.verticalDepth();
            PressureEstimate pore = row.pressure();
            // F = K S + (1 − K) P falls with P where K is above one.
            rows.add(new Row(
                    z,
                    new PressureEstimate(
                            strength(overburden.lowOrLikely(), z, least > 1 ? pore.high() : pore.low(), least),
                            strength(overburden.likely(), z, pore.likely(), mean),
                            strength(
                                    overburden.highOrLikely(), z, greatest > 1 ? pore.low() : pore.high(), greatest))));
        }
        boolean poisson = mean >= 0.05 / 0.95 && mean <= 1;
        return Optional.of(new LogFracture(
                least,
                mean,
                greatest,
                poisson ? OptionalDouble.of(StressState.poissonOfRatio(mean)) : OptionalDouble.empty(),
                ratios.length,
                rows));
    }

    private static double strength(PressureProfile overburden, double z, double pore, double ratio) {
        return new StressState(overburden.lowestAt(z), pore).strengthAt(ratio);
    }
}
