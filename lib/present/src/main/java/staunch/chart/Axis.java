package staunch.chart;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Range of an axis in the units shown, with round ticks.
 *
 * @param title with unit
 * @param min lowest value
 * @param max highest value
 */
record Axis(String title, double min, double max) {
    private static final double[] STEPS = {1, 2, 2.5, 5, 10};

    /** Axis that reaches a little beyond the values on both sides. */
    static Axis around(String title, List<Double> values) {
        double low = values.stream().mapToDouble(v -> v).min().orElse(0);
        double high = values.stream().mapToDouble(v -> v).max().orElse(1);
        double room = high > low ? 0.05 * (high - low) : Math.max(1, Math.abs(high) * 0.1);
        return new Axis(title, low - room, high + room);
    }

    /** Axis from zero to a little beyond the highest value, and below zero only where a value is. */
    static Axis fromZero(String title, List<Double> values) {
        double low = Math.min(0, values.stream().mapToDouble(v -> v).min().orElse(0));
        double high = Math.max(0, values.stream().mapToDouble(v -> v).max().orElse(1));
        double span = high > low ? high - low : 1;
        return new Axis(title, low < 0 ? low - 0.05 * span : 0, high > 0 ? high + 0.06 * span : 0.05 * span);
    }

    /** Round values within the range, about so many. */
    List<Double> ticks(int about) {
        double step = step(about);
        List<Double> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(min / step - 1e-9); i * step <= max + 1e-9 * step; i++) {
            ticks.add(new BigDecimal(i)
                    .multiply(new BigDecimal(step, MathContext.DECIMAL32))
                    .doubleValue());
        }
        return ticks;
    }

    /** Tick value as its label shows it. */
    String label(double tick, int about) {
        double step = step(about);
        int decimals = Math.max(0, -(int) Math.floor(Math.log10(step) + 1e-9));
        if (Math.abs(step * Math.pow(10, decimals) - Math.rint(step * Math.pow(10, decimals))) > 1e-6) {
            decimals++;
        }
        String text = BigDecimal.valueOf(tick)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .toPlainString();
        return text.startsWith("-") ? "−" + text.substring(1) : text;
    }

    private double step(int about) {
        double rough = (max - min) / about;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        for (double step : STEPS) {
            if (step * power >= rough * (1 - 1e-9)) {
                return step * power;
            }
        }
        return 10 * power;
    }
}
