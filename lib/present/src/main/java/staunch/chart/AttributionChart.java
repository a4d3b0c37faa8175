package staunch.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import staunch.design.Attribution;
import staunch.design.SectionChange;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/**
 * Shares of each cause in the change of a result, as bars from zero: filled for the cause alone, hatched for the cause
 * after those above it. The last two rows are the remainder and the total.
 */
final class AttributionChart {
    private static final int WIDTH = 720;
    private static final int LEFT = 232;
    private static final int RIGHT = WIDTH - 74;
    private static final double LABEL = 66;
    private static final int TOP = 74;
    private static final int BAR = 11;
    private static final int LINE = 15;
    private static final int TICKS = 6;

    private final SectionChange section;
    private final Attribution attribution;
    private final UnitSystem units;
    private final Measure measure;
    private final List<Row> rows = new ArrayList<>();
    private final Axis axis;
    private final int bottom;

    /** A cause with its bars; heights follow from the lines of its name. */
    private record Row(List<String> name, OptionalDouble alone, OptionalDouble inSequence, String words, double top) {
        double height() {
            return Math.max(name.size() * LINE, 2 * BAR + 3) + 9.0;
        }
    }

    AttributionChart(SectionChange section, Attribution attribution, UnitSystem units) {
        this.section = section;
        this.attribution = attribution;
        this.units = units;
        this.measure = attribution.measure();
        List<Double> values = new ArrayList<>();
        double y = TOP;
        List<Integer> parts = section.causesWithPart(attribution.quantity());
        for (int i : parts) {
            Attribution.Share share = attribution.shares().get(i);
            y = add(share.cause(), share.alone(), share.inSequence(), share.outcomeAlone(), y);
        }
        int others = attribution.shares().size() - parts.size();
        if (others > 0) {
            OptionalDouble none = OptionalDouble.of(0);
            y = add(others + (others == 1 ? " other cause" : " other causes"), none, none, "", y);
        }
        y = add("remainder", attribution.remainderAlone(), attribution.remainderInSequence(), "not a number", y);
        y = add("total", attribution.total(), OptionalDouble.empty(), "not a number", y);
        bottom = (int) Math.ceil(y);
        for (Row row : rows) {
            row.alone.ifPresent(v -> values.add(units.fromSi(v, measure)));
            row.inSequence.ifPresent(v -> values.add(units.fromSi(v, measure)));
        }
        Axis close = Axis.fromZero(
                "Change of " + attribution.quantity().title() + " [" + units.label(measure) + "]", values);
        // The number of a bar to the left needs room before the names begin.
        double room =
                values.stream().anyMatch(v -> v < 0) ? LABEL / (RIGHT - LEFT - LABEL) * (close.max() - close.min()) : 0;
        axis = new Axis(close.title(), close.min() - room, close.max());
    }

    private double add(String name, OptionalDouble alone, OptionalDouble inSequence, String words, double y) {
        Row row = new Row(Type.wrap(name, LEFT - 24.0, Type.PLAIN), alone, inSequence, words, y);
        rows.add(row);
        return y + row.height();
    }

    Figure image() {
        StringBuilder alt = new StringBuilder("Bars from zero, one pair for each cause. ");
        for (Attribution.Share share : attribution.shares()) {
            alt.append(share.cause())
                    .append(": alone ")
                    .append(number(share.alone(), share.outcomeAlone()))
                    .append(", in sequence ")
                    .append(number(share.inSequence(), share.outcomeInSequence()))
                    .append(". ");
        }
        alt.append("Remainder alone ")
                .append(number(attribution.remainderAlone(), "not a number"))
                .append(". Total ")
                .append(number(attribution.total(), "not a number"))
                .append('.');
        String title = "What changed " + attribution.quantity().title() + " of " + section.section() + ", design "
                + section.design();
        String slug = section.section() + section.design() + attribution.quantity();
        return new ChartImage(
                "attribution-" + Integer.toHexString(slug.hashCode()),
                title,
                alt.toString(),
                new ChartImage.Size(WIDTH, bottom + 12),
                this::paint);
    }

    private String number(OptionalDouble value, String otherwise) {
        if (value.isEmpty()) {
            return otherwise;
        }
        String text = units.text(value.getAsDouble(), measure);
        return value.getAsDouble() > 0 ? "+" + text : text.replaceFirst("^-", "−");
    }

    private void paint(Graphics2D g) {
        key(g, LEFT, true, "alone, on the earlier case");
        key(g, LEFT + 210.0, false, "in sequence, after those above");
        Plot.text(
                g,
                axis.title(),
                (LEFT + RIGHT) / 2.0 - Type.width(axis.title(), Type.BOLD) / 2,
                42,
                Type.BOLD,
                Palette.INK);
        for (double tick : axis.ticks(TICKS)) {
            double sx = x(tick);
            Plot.grid(g, sx, TOP - 8.0, sx, bottom);
            String label = axis.label(tick, TICKS);
            Plot.text(g, label, sx - Type.width(label, Type.PLAIN) / 2, TOP - 14.0, Type.PLAIN, Palette.INK);
        }
        for (Row row : rows) {
            row(g, row);
        }
        double totalTop = rows.get(rows.size() - 1).top() - 3;
        g.setColor(Palette.MUTED);
        g.setStroke(new BasicStroke(1f));
        g.draw(new Line2D.Double(12, totalTop, RIGHT, totalTop));
        g.setColor(Palette.INK);
        g.setStroke(new BasicStroke(1.4f));
        g.draw(new Line2D.Double(x(0), TOP - 8.0, x(0), bottom));
    }

    private void key(Graphics2D g, double sx, boolean filled, String words) {
        bar(g, new Rectangle2D.Double(sx, 12, 26, BAR), filled, Palette.INK);
        Plot.text(g, words, sx + 33, 22, Type.PLAIN, Palette.INK);
    }

    private void row(Graphics2D g, Row row) {
        double y = row.top() + 11;
        for (String line : row.name()) {
            Plot.text(g, line, LEFT - 12.0 - Type.width(line, Type.PLAIN), y, Type.PLAIN, Palette.INK);
            y += LINE;
        }
        if (row.alone().isPresent()) {
            bar(g, row.alone().getAsDouble(), row.top(), true);
        } else {
            Plot.text(g, row.words(), x(0) + 6, row.top() + 10, Type.PLAIN, Palette.INK);
        }
        row.inSequence().ifPresent(v -> bar(g, v, row.top() + BAR + 2, false));
    }

    private void bar(Graphics2D g, double si, double top, boolean filled) {
        double value = units.fromSi(si, measure);
        double from = Math.min(x(0), x(value));
        Color color = value < 0 ? Palette.VERMILLION : Palette.BLUE;
        bar(g, new Rectangle2D.Double(from, top, Math.abs(x(value) - x(0)), BAR), filled, color);
        String text = number(OptionalDouble.of(si), "");
        double width = Type.width(text, Type.PLAIN);
        double sx = value < 0 ? from - width - 5 : x(value) + 5;
        Plot.text(g, text, sx, top + BAR - 1.0, Type.PLAIN, Palette.INK);
    }

    private static void bar(Graphics2D g, Rectangle2D box, boolean filled, Color color) {
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
