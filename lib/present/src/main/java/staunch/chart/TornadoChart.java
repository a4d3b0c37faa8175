package staunch.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.design.Sensitivity;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/**
 * Swings of the inputs of a section as bars about the margin of the base: filled towards the margin at the upper end of an
 * input's range, hatched towards that at the lower end, the longest on top.
 */
final class TornadoChart {
    private static final int WIDTH = 720;
    private static final int LEFT = 250;
    private static final int RIGHT = WIDTH - 90;
    private static final int TOP = 92;
    private static final int BAR = 12;
    private static final int ROW = 42;
    private static final int TICKS = 6;
    private static final int SIGNIFICANT = 4;

    private final Sensitivity sensitivity;
    private final UnitSystem units;
    private final List<Sensitivity.Input> drawn;
    private final Axis axis;
    private final int bottom;

    private TornadoChart(Sensitivity sensitivity, List<Sensitivity.Input> drawn, UnitSystem units) {
        this.sensitivity = sensitivity;
        this.units = units;
        this.drawn = drawn;
        List<Double> values = new ArrayList<>();
        values.add(shown(sensitivity.base().margin().getAsDouble()));
        for (Sensitivity.Input input : drawn) {
            values.add(shown(margin(input.atLow()).getAsDouble()));
            values.add(shown(margin(input.atHigh()).getAsDouble()));
        }
        this.axis = Axis.fromZero(
                "Margin of tolerance over requirement [" + units.label(Measure.VOLUME) + "], fails below zero", values);
        this.bottom = TOP + ROW * drawn.size();
    }

    static Figure of(Sensitivity sensitivity, UnitSystem units) {
        String title = "What the margin of " + sensitivity.section() + " hangs on, design " + sensitivity.design();
        List<Sensitivity.Input> drawn = sensitivity.inputs().stream()
                .filter(i -> margin(i.atLow()).isPresent() && margin(i.atHigh()).isPresent())
                .toList();
        if (sensitivity.base().margin().isEmpty()) {
            return new NotDrawn(
                    title,
                    "the margin of the section is no volume: "
                            + sensitivity.base().verdict().statement(units));
        }
        if (drawn.isEmpty()) {
            return new NotDrawn(title, "the case states no range over which the margin stays a volume");
        }
        TornadoChart chart = new TornadoChart(sensitivity, drawn, units);
        StringBuilder alt = new StringBuilder("Bars about the margin of the base, "
                + chart.volume(sensitivity.base().margin().getAsDouble()) + ". ");
        for (Sensitivity.Input input : drawn) {
            alt.append(input.input().title())
                    .append(": ")
                    .append(chart.volume(margin(input.atLow()).getAsDouble()))
                    .append(" at ")
                    .append(chart.value(input, input.low()))
                    .append(", ")
                    .append(chart.volume(margin(input.atHigh()).getAsDouble()))
                    .append(" at ")
                    .append(chart.value(input, input.high()))
                    .append(". ");
        }
        return new ChartImage(
                "tornado-" + Integer.toHexString((sensitivity.section() + sensitivity.design()).hashCode()),
                title,
                alt.toString().strip(),
                new ChartImage.Size(WIDTH, chart.bottom + 14),
                chart::paint);
    }

    private static OptionalDouble margin(Optional<Sensitivity.Effect> effect) {
        return effect.isPresent() ? effect.get().margin() : OptionalDouble.empty();
    }

    private String value(Sensitivity.Input input, OptionalDouble value) {
        return units.significant(value.getAsDouble(), SIGNIFICANT, input.measure());
    }

    private String volume(double si) {
        return units.text(si, Measure.VOLUME, RoundingMode.FLOOR);
    }

    private double shown(double si) {
        return units.fromSi(si, Measure.VOLUME);
    }

    private void paint(Graphics2D g) {
        key(g, LEFT, true, "at the upper end of the input");
        key(g, LEFT + 210.0, false, "at its lower end");
        double centre = (LEFT + RIGHT) / 2.0;
        Plot.text(g, axis.title(), centre - Type.width(axis.title(), Type.BOLD) / 2, 44, Type.BOLD, Palette.INK);
        for (double tick : axis.ticks(TICKS)) {
            double sx = x(tick);
            Plot.grid(g, sx, TOP - 8.0, sx, bottom);
            String label = axis.label(tick, TICKS);
            Plot.text(g, label, sx - Type.width(label, Type.PLAIN) / 2, TOP - 14.0, Type.PLAIN, Palette.INK);
        }
        double top = TOP;
        for (Sensitivity.Input input : drawn) {
            row(g, input, top);
            top += ROW;
        }
        g.setColor(Palette.INK);
        g.setStroke(new BasicStroke(1.4f));
        g.draw(new Line2D.Double(x(0), TOP - 8.0, x(0), bottom));
        double base = x(shown(sensitivity.base().margin().getAsDouble()));
        g.setStroke(Palette.Dash.DASH_DOT.stroke(1.2f));
        g.draw(new Line2D.Double(base, TOP - 8.0, base, bottom));
        String words = "base " + volume(sensitivity.base().margin().getAsDouble());
        double wordsAt = Math.min(
                Math.max(base - Type.width(words, Type.PLAIN) / 2, LEFT), WIDTH - 8.0 - Type.width(words, Type.PLAIN));
        Plot.text(g, words, wordsAt, TOP - 30.0, Type.PLAIN, Palette.INK);
    }

    private void key(Graphics2D g, double sx, boolean filled, String words) {
        box(g, new Rectangle2D.Double(sx, 12, 26, BAR), filled, Palette.INK);
        Plot.text(g, words, sx + 33, 22, Type.PLAIN, Palette.INK);
    }

    private void row(Graphics2D g, Sensitivity.Input input, double top) {
        String range = value(input, input.low()) + " – " + value(input, input.high());
        right(g, input.input().title(), top + 11, Palette.INK);
        right(g, range, top + 26, Palette.MUTED);
        bar(g, margin(input.atHigh()).getAsDouble(), top, true);
        bar(g, margin(input.atLow()).getAsDouble(), top + BAR + 2, false);
    }

    private static void right(Graphics2D g, String text, double y, Color color) {
        Plot.text(g, text, LEFT - 12.0 - Type.width(text, Type.PLAIN), y, Type.PLAIN, color);
    }

    private void bar(Graphics2D g, double si, double top, boolean filled) {
        double base = x(shown(sensitivity.base().margin().getAsDouble()));
        double end = x(shown(si));
        Color color = end < base ? Palette.VERMILLION : Palette.BLUE;
        box(g, new Rectangle2D.Double(Math.min(base, end), top, Math.abs(end - base), BAR), filled, color);
        String text = volume(si);
        double width = Type.width(text, Type.PLAIN);
        double sx = end < base ? Math.max(end - width - 5, LEFT - 8.0) : end + 5;
        Plot.text(g, text, sx, top + BAR - 2.0, Type.PLAIN, Palette.INK);
    }

    private static void box(Graphics2D g, Rectangle2D box, boolean filled, Color color) {
        g.setColor(color);
        g.setStroke(new BasicStroke(1.2f));
        if (filled) {
            g.fill(box);
        } else {
            for (double sx = box.getX() + 3; sx < box.getMaxX() - 1; sx += 5) {
                g.draw(new Line2D.Double(sx, box.getMinY(), sx, box.getMaxY()));
            }
            g.draw(box);
        }
    }

    private double x(double value) {
        return LEFT + (value - axis.min()) / (axis.max() - axis.min()) * (RIGHT - LEFT);
    }
}
