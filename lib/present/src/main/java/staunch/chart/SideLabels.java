package staunch.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Labels in a column beside a drawing, each moved up or down until it meets no other, with a line to what it names. */
final class SideLabels {
    private static final int LINE = 15;
    private static final int GAP = 3;
    private static final int LONG_WAY = 60;

    private final double x;
    private final double widest;
    private final List<Label> labels = new ArrayList<>();

    SideLabels(double x, double widest) {
        this.x = x;
        this.widest = widest;
    }

    private static final class Label {
        private final double fromX;
        private final double fromY;
        private final List<String> lines;
        private final Color color;
        private double top;

        Label(double fromX, double fromY, List<String> lines, Color color) {
            this.fromX = fromX;
            this.fromY = fromY;
            this.lines = lines;
            this.color = color;
            this.top = fromY - height() / 2;
        }

        double height() {
            return lines.size() * LINE;
        }
    }

    void add(double fromX, double fromY, String text, Color color) {
        labels.add(new Label(fromX, fromY, Type.balanced(text, widest, Type.PLAIN), color));
    }

    /** Spreads the labels between two heights; where they do not fit, the lowest hang below. */
    void spread(double highest, double lowest) {
        labels.sort(Comparator.comparingDouble(l -> l.fromY));
        down(highest);
        double limit = lowest;
        for (int i = labels.size() - 1; i >= 0; i--) {
            Label label = labels.get(i);
            label.top = Math.min(label.top, limit - label.height());
            limit = label.top - GAP;
        }
        down(highest);
    }

    private void down(double highest) {
        double free = highest;
        for (Label label : labels) {
            label.top = Math.max(label.top, free);
            free = label.top + label.height() + GAP;
        }
    }

    /** Lower edge of the lowest label. */
    double bottom() {
        return labels.stream().mapToDouble(l -> l.top + l.height()).max().orElse(0);
    }

    void paint(Graphics2D g) {
        for (Label label : labels) {
            g.setColor(label.color);
            g.setStroke(new BasicStroke(1f));
            if (x - label.fromX > LONG_WAY) {
                // A curve that ends early must not seem to go on.
                g.setColor(Palette.MUTED);
                g.setStroke(
                        new BasicStroke(0.7f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL, 1f, new float[] {1, 4}, 0));
            }
            g.draw(new Line2D.Double(label.fromX, label.fromY, x - 4, label.top + label.height() / 2 - 1));
            double baseline = label.top + 11;
            for (String line : label.lines) {
                Plot.text(g, line, x, baseline, Type.PLAIN, Palette.INK);
                baseline += LINE;
            }
        }
    }
}
