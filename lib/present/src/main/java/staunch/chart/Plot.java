package staunch.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Our own small layer over XChart. XChart scales and draws the curves; axes, labels and marks are ours, for three reasons:
 * XChart cannot turn an axis round, it draws its texts as outlines, and it knows no labels at curve ends. Depth is plotted
 * negated and labelled positive here and nowhere else.
 */
final class Plot {
    private static final int WIDTH = 720;
    private static final int WIDEST_SIDE_LABEL = 150;
    private static final int LINE = 15;
    private static final int EDGE = 10;
    private static final int X_TICKS = 9;
    private static final int Y_TICKS = 8;
    private static final float THIN = 1f;

    private final String name;
    private final Axis x;
    private final Axis y;
    private final boolean depthDown;
    private final int plotHeight;
    private final List<Curve> curves = new ArrayList<>();
    private final List<Line> crossLines = new ArrayList<>();
    private final List<Line> levelLines = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();

    private Plot(String name, Axis x, Axis y, boolean depthDown, int plotHeight) {
        this.name = name;
        this.x = x;
        this.y = y;
        this.depthDown = depthDown;
        this.plotHeight = plotHeight;
    }

    /** A curve by the points given; a missing y (NaN) breaks it. */
    record Curve(String label, Look look, double[] x, double[] y, boolean named) {}

    /** How a curve is drawn: a line, marks, or both. */
    record Look(Color color, Palette.Dash dash, float width, Marker marker) {
        static Look line(Color color, Palette.Dash dash) {
            return new Look(color, dash, 2f, SeriesMarkers.NONE);
        }

        static Look marked(Color color, Palette.Dash dash, Marker marker) {
            return new Look(color, dash, 2f, marker);
        }

        static Look marksOnly(Color color, Marker marker) {
            return new Look(color, null, 0f, marker);
        }

        Look width(float pixels) {
            return new Look(color, dash, pixels, marker);
        }
    }

    private record Line(double at, String label, boolean shoe) {}

    private record Stretch(int lane, double from, double to, String text, Color color) {}

    /** Plot with depth downwards and values across, values on top as on a log. */
    static Plot downwards(String name, Axis value, Axis depth) {
        return new Plot(name, value, depth, true, 400);
    }

    /** Plot with values upwards. */
    static Plot upwards(String name, Axis across, Axis upwards) {
        return new Plot(name, across, upwards, false, 280);
    }

    Plot curve(String label, Look look, double[] xs, double[] ys) {
        curves.add(new Curve(label, look, xs, ys, true));
        return this;
    }

    /** A curve that only the legend names, such as one that runs along another. */
    Plot highlight(String label, Look look, double[] xs, double[] ys) {
        curves.add(new Curve(label, look, xs, ys, false));
        return this;
    }

    /** A line across the plot at one depth or level, named beside the plot. */
    Plot level(double at, String label) {
        levelLines.add(new Line(at, label, false));
        return this;
    }

    /** A casing shoe at one depth. */
    Plot shoe(double depth, String label) {
        levelLines.add(new Line(depth, label, true));
        return this;
    }

    /** A line at one value of the other axis, named at its end. */
    Plot cross(double at, String label) {
        crossLines.add(new Line(at, label, false));
        return this;
    }

    /** A stretch where a curve has no value, said in words: in a lane beside a depth plot, as a band in an upright one. */
    Plot stretch(int lane, double from, double to, String text, Color color) {
        stretches.add(new Stretch(lane, from, to, text, color));
        return this;
    }

    ChartImage image(String title, String altText) {
        Layout layout = new Layout();
        return new ChartImage(name, title, altText, new ChartImage.Size(WIDTH, layout.height), g -> paint(g, layout));
    }

    private void paint(Graphics2D g, Layout at) {
        paintLegend(g, at);
        paintBands(g, at);
        paintAxes(g, at);
        paintLines(g, at);
        paintCurves(g, at);
        paintLanes(g, at);
        at.sideLabels.paint(g);
        paintFlags(g, at);
    }

    private void paintLegend(Graphics2D g, Layout at) {
        for (Key key : at.keys) {
            Curve curve = key.curve;
            double mid = key.y - 4;
            double sample = key.sample();
            if (curve.look.dash != null) {
                g.setColor(curve.look.color);
                g.setStroke(curve.look.dash.stroke(curve.look.width));
                g.draw(new Line2D.Double(key.x, mid, key.x + sample, mid));
            }
            g.setColor(curve.look.color);
            curve.look.marker.paint(g, key.x + sample / 2, mid, 8);
            text(g, curve.label, key.x + sample + 6, key.y, Type.PLAIN, Palette.INK);
        }
    }

    private void paintAxes(Graphics2D g, Layout at) {
        for (double tick : x.ticks(X_TICKS)) {
            double sx = at.x(tick);
            grid(g, sx, at.top, sx, at.bottom);
            String label = x.label(tick, X_TICKS);
            double baseline = depthDown ? at.top - 7 : at.bottom + 16;
            text(g, label, sx - Type.width(label, Type.PLAIN) / 2, baseline, Type.PLAIN, Palette.INK);
        }
        for (double tick : y.ticks(Y_TICKS)) {
            double sy = at.y(tick);
            grid(g, at.left, sy, at.right, sy);
            String label = y.label(tick, Y_TICKS);
            text(g, label, at.left - 7 - Type.width(label, Type.PLAIN), sy + 4, Type.PLAIN, Palette.INK);
        }
        g.setColor(Palette.INK);
        g.setStroke(new BasicStroke(THIN));
        double valueEdge = depthDown ? at.top : at.bottom;
        g.draw(new Line2D.Double(at.left, at.top, at.left, at.bottom));
        g.draw(new Line2D.Double(at.left, valueEdge, at.right, valueEdge));
        double xTitle = (at.left + at.right) / 2 - Type.width(x.title(), Type.BOLD) / 2;
        text(g, x.title(), xTitle, depthDown ? at.top - 25 : at.bottom + 35, Type.BOLD, Palette.INK);
        AffineTransform upright = g.getTransform();
        g.translate(EDGE + 11, (at.top + at.bottom) / 2 + Type.width(y.title(), Type.BOLD) / 2);
        g.rotate(-Math.PI / 2);
        text(g, y.title(), 0, 0, Type.BOLD, Palette.INK);
        g.setTransform(upright);
    }

    private void paintLines(Graphics2D g, Layout at) {
        for (Line line : levelLines) {
            double sy = at.y(line.at);
            g.setColor(line.shoe ? Palette.MUTED : Palette.INK);
            g.setStroke(line.shoe ? new BasicStroke(THIN) : Palette.Dash.DASH_DOT.stroke(1.2f));
            g.draw(new Line2D.Double(at.left, sy, at.right, sy));
            if (line.shoe) {
                g.setColor(Palette.INK);
                g.fill(triangle(at.left, sy));
                g.fill(triangle(at.right, sy));
            }
        }
        for (Line line : crossLines) {
            double sx = at.x(line.at);
            g.setColor(Palette.INK);
            g.setStroke(Palette.Dash.DASH_DOT.stroke(1.2f));
            g.draw(new Line2D.Double(sx, at.top, sx, at.bottom));
        }
    }

    /** A casing shoe as drawings of wells have it: a filled triangle above its depth. */
    static Shape triangle(double sx, double sy) {
        Path2D path = new Path2D.Double();
        path.moveTo(sx, sy);
        path.lineTo(sx + 8, sy);
        path.lineTo(sx, sy - 9);
        path.closePath();
        return path;
    }

    private void paintCurves(Graphics2D g, Layout at) {
        XYChart chart = new XYChartBuilder()
                .width((int) (at.right - at.left))
                .height((int) (at.bottom - at.top))
                .build();
        XYStyler styler = chart.getStyler();
        Color none = new Color(0, 0, 0, 0);
        styler.setChartBackgroundColor(none);
        styler.setPlotBackgroundColor(none);
        styler.setPlotBorderVisible(false);
        styler.setPlotGridLinesVisible(false);
        styler.setPlotTicksMarksVisible(false);
        styler.setPlotContentSize(1);
        styler.setPlotMargin(0);
        styler.setChartPadding(0);
        styler.setChartTitleVisible(false);
        styler.setLegendVisible(false);
        styler.setAxisTicksVisible(false);
        styler.setAxisTitlesVisible(false);
        styler.setMarkerSize(8);
        styler.setXAxisMin(x.min());
        styler.setXAxisMax(x.max());
        styler.setYAxisMin(depthDown ? -y.max() : y.min());
        styler.setYAxisMax(depthDown ? -y.min() : y.max());
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            double[] ys = curve.y.clone();
            for (int k = 0; depthDown && k < ys.length; k++) {
                ys[k] = -ys[k];
            }
            XYSeries series = chart.addSeries("curve " + i, curve.x, ys);
            series.setLineColor(curve.look.color);
            series.setMarkerColor(curve.look.color);
            boolean sparse = curve.x.length > 12 && curve.look.dash != null;
            series.setMarker(sparse ? SeriesMarkers.NONE : curve.look.marker);
            series.setLineStyle(curve.look.dash == null ? SeriesLines.NONE : curve.look.dash.stroke(curve.look.width));
            if (sparse && curve.look.marker != SeriesMarkers.NONE) {
                addSparseMarks(chart, "marks " + i, curve, ys);
            }
        }
        Shape clip = g.getClip();
        g.setClip(new Rectangle2D.Double(at.left - 1, at.top - 1, at.right - at.left + 2, at.bottom - at.top + 2));
        g.translate(at.left, at.top);
        LineJoiner joiner = new LineJoiner(g);
        chart.paint(joiner, (int) (at.right - at.left), (int) (at.bottom - at.top));
        joiner.finish();
        g.translate(-at.left, -at.top);
        g.setClip(clip);
    }

    /** A mark on every point of a long curve would hide it. */
    private static void addSparseMarks(XYChart chart, String seriesName, Curve curve, double[] ys) {
        int every = Math.max(1, curve.x.length / 9);
        List<Double> markX = new ArrayList<>();
        List<Double> markY = new ArrayList<>();
        for (int k = every / 2; k < ys.length; k += every) {
            markX.add(curve.x[k]);
            markY.add(ys[k]);
        }
        XYSeries marks = chart.addSeries(seriesName, markX, markY);
        marks.setLineStyle(SeriesLines.NONE);
        marks.setMarker(curve.look.marker);
        marks.setMarkerColor(curve.look.color);
    }

    private void paintBands(Graphics2D g, Layout at) {
        if (depthDown) {
            return;
        }
        for (Stretch band : stretches) {
            double from = at.x(band.from);
            double to = at.x(band.to);
            g.setColor(Palette.GRID);
            g.fill(new Rectangle2D.Double(from, at.top, to - from, at.bottom - at.top));
        }
    }

    private void paintLanes(Graphics2D g, Layout at) {
        for (Stretch stretch : stretches) {
            if (depthDown) {
                double sx = at.right + 5 + stretch.lane * 12;
                double from = at.y(stretch.from);
                double height = Math.max(3, at.y(stretch.to) - from);
                Rectangle2D lane = new Rectangle2D.Double(sx, from, 8, height);
                g.setColor(stretch.color);
                g.setStroke(new BasicStroke(1.2f));
                g.draw(lane);
                for (double h = 4; h < height - 1; h += 6) {
                    g.draw(new Line2D.Double(sx, from + h, sx + 8, from + h));
                }
            } else {
                paintBandText(g, at, stretch);
            }
        }
    }

    private void paintBandText(Graphics2D g, Layout at, Stretch band) {
        double from = at.x(band.from);
        double width = at.x(band.to) - from;
        List<String> lines = Type.wrap(band.text, Math.max(width - 8, 60), Type.PLAIN);
        double widest =
                lines.stream().mapToDouble(l -> Type.width(l, Type.PLAIN)).max().orElse(0);
        if (widest <= width - 6) {
            double sy = at.top + 16;
            for (String line : lines) {
                text(g, line, from + (width - Type.width(line, Type.PLAIN)) / 2, sy, Type.PLAIN, Palette.INK);
                sy += LINE;
            }
        } else {
            AffineTransform upright = g.getTransform();
            g.translate(from + width / 2 + 4, at.top + 8 + Type.width(band.text, Type.PLAIN));
            g.rotate(-Math.PI / 2);
            text(g, band.text, 0, 0, Type.PLAIN, Palette.INK);
            g.setTransform(upright);
        }
    }

    private void paintFlags(Graphics2D g, Layout at) {
        for (Flag flag : at.flags) {
            double baseline = at.flagBaseline(flag.row);
            g.setColor(flag.color);
            g.setStroke(new BasicStroke(THIN));
            double elbow = depthDown ? at.bottom + 4 : flag.fromY - 2;
            if (elbow - flag.fromY > 12) {
                // A curve that ends above must not seem to go on.
                g.setColor(Palette.MUTED);
                g.setStroke(
                        new BasicStroke(0.7f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL, 1f, new float[] {1, 4}, 0));
            }
            g.draw(new Line2D.Double(flag.fromX, flag.fromY, flag.sx, elbow));
            g.setColor(flag.color);
            g.setStroke(new BasicStroke(THIN));
            g.draw(new Line2D.Double(flag.sx, elbow, flag.sx, depthDown ? baseline - 2 : baseline - 8));
            text(g, flag.text, flag.textX, baseline, Type.PLAIN, Palette.INK);
        }
    }

    static void grid(Graphics2D g, double x1, double y1, double x2, double y2) {
        g.setColor(Palette.GRID);
        g.setStroke(new BasicStroke(THIN));
        g.draw(new Line2D.Double(x1, y1, x2, y2));
    }

    static void text(Graphics2D g, String text, double x, double y, Font font, Color color) {
        g.setFont(font);
        g.setColor(color);
        g.drawString(text, (float) x, (float) y);
    }

    private record Key(Curve curve, double x, double y) {
        double sample() {
            return sample(curve);
        }

        static double sample(Curve curve) {
            return curve.look.dash == null ? 10 : 30;
        }
    }

    /** A label above or below the plot, on a stalk that no other label crosses. */
    private static final class Flag {
        private final double fromX;
        private final double fromY;
        private final String text;
        private final Color color;
        private final double width;
        private double sx;
        private double textX;
        private int row;

        Flag(double fromX, double fromY, String text, Color color) {
            this.fromX = fromX;
            this.sx = fromX;
            this.fromY = fromY;
            this.text = text;
            this.color = color;
            this.width = Type.width(text, Type.PLAIN);
        }

        boolean covers(double stalk) {
            return stalk > textX - 3 && stalk < textX + width + 4;
        }

        boolean overlaps(Flag other) {
            return row == other.row && textX < other.textX + other.width + 8 && other.textX < textX + width + 8;
        }
    }

    /** Where everything stands, in pixels of the drawing. */
    private final class Layout {
        private final double left;
        private final double right;
        private final double top;
        private final double bottom;
        private final int height;
        private final List<Key> keys = new ArrayList<>();
        private final SideLabels sideLabels;
        private final List<Flag> flags = new ArrayList<>();

        Layout() {
            double legendBottom = placeLegend();
            double widestTick = y.ticks(Y_TICKS).stream()
                    .mapToDouble(t -> Type.width(y.label(t, Y_TICKS), Type.PLAIN))
                    .max()
                    .orElse(0);
            left = Math.ceil(EDGE + 20 + widestTick + 10);
            int lanes = depthDown
                    ? stretches.stream().mapToInt(s -> s.lane + 1).max().orElse(0)
                    : 0;
            double gap = 14 + lanes * 12;
            boolean side = !levelLines.isEmpty() || (depthDown ? !stretches.isEmpty() : !curves.isEmpty());
            right = Math.floor(WIDTH - EDGE - (side ? WIDEST_SIDE_LABEL + gap : 14));
            sideLabels = new SideLabels(right + gap + 2, WIDEST_SIDE_LABEL);
            double flagsAbove = 0;
            if (!depthDown) {
                placeFlags(0, 0);
                flagsAbove = rows() * LINE;
                flags.clear();
            }
            top = Math.ceil(legendBottom + (depthDown ? 46 : 12 + flagsAbove));
            bottom = top + plotHeight;
            placeFlags(top, bottom);
            placeSideLabels();
            double below = depthDown ? 10 + rows() * LINE : 42;
            height = (int) Math.ceil(Math.max(bottom + below, sideLabels.bottom()) + 6);
        }

        double x(double value) {
            return left + (value - x.min()) / (x.max() - x.min()) * (right - left);
        }

        double y(double value) {
            double share = (value - y.min()) / (y.max() - y.min());
            return depthDown ? top + share * (bottom - top) : bottom - share * (bottom - top);
        }

        double flagBaseline(int row) {
            return depthDown ? bottom + 18 + row * LINE : top - 6 - row * LINE;
        }

        private int rows() {
            return flags.stream().mapToInt(f -> f.row + 1).max().orElse(0);
        }

        private double placeLegend() {
            double kx = EDGE;
            double ky = EDGE + 10;
            for (Curve curve : curves) {
                double width = Key.sample(curve) + 6 + Type.width(curve.label, Type.PLAIN) + 20;
                if (kx + width > WIDTH && kx > EDGE) {
                    kx = EDGE;
                    ky += 18;
                }
                keys.add(new Key(curve, kx, ky));
                kx += width;
            }
            return curves.isEmpty() ? 0 : ky + 4;
        }

        private void placeFlags(double plotTop, double plotBottom) {
            for (Line line : crossLines) {
                flags.add(new Flag(x(line.at), depthDown ? plotBottom : plotTop, line.label, Palette.INK));
            }
            if (depthDown) {
                for (Curve curve : curves) {
                    int last = lowestPoint(curve);
                    if (last >= 0 && curve.look.dash != null && curve.named) {
                        flags.add(new Flag(x(curve.x[last]), y(curve.y[last]), curve.label, curve.look.color));
                    }
                }
            }
            flags.sort(Comparator.comparingDouble((Flag f) -> f.fromX).reversed());
            for (int i = 0; i < flags.size(); i++) {
                Flag flag = flags.get(i);
                if (i > 0 && flags.get(i - 1).sx - flag.fromX < 7) {
                    flag.sx = flags.get(i - 1).sx;
                }
                flag.textX = Math.min(flag.sx + 4, WIDTH - EDGE - flag.width);
                List<Flag> placed = flags.subList(0, i);
                while (flag.row < 12 && placed.stream().anyMatch(other -> collide(flag, other))) {
                    flag.row++;
                }
            }
        }

        private boolean collide(Flag a, Flag b) {
            return a.overlaps(b) || (b.row >= a.row && a.covers(b.sx)) || (a.row >= b.row && b.covers(a.sx));
        }

        private void placeSideLabels() {
            for (Line line : levelLines) {
                sideLabels.add(right + (line.shoe ? 9 : 2), y(line.at), line.label, Palette.MUTED);
            }
            if (depthDown) {
                for (Stretch s : stretches) {
                    sideLabels.add(right + 13 + s.lane * 12, (y(s.from) + y(s.to)) / 2, s.text, s.color);
                }
            } else {
                for (Curve curve : curves) {
                    int last = lastPoint(curve);
                    boolean endsAtEdge = last >= 0 && right - x(curve.x[last]) < 12;
                    if (curve.named && (endsAtEdge || (last >= 0 && curves.size() > 1))) {
                        sideLabels.add(x(curve.x[last]), y(curve.y[last]), curve.label, curve.look.color);
                    }
                }
            }
            sideLabels.spread(top - 8, bottom + (depthDown ? 8 : 36));
        }

        /** Index of the deepest point of a curve. */
        private int lowestPoint(Curve curve) {
            int lowest = -1;
            for (int i = 0; i < curve.x.length; i++) {
                if (!Double.isNaN(curve.y[i]) && (lowest < 0 || curve.y[i] >= curve.y[lowest])) {
                    lowest = i;
                }
            }
            return lowest;
        }

        private int lastPoint(Curve curve) {
            for (int i = curve.x.length - 1; i >= 0; i--) {
                if (!Double.isNaN(curve.y[i])) {
                    return i;
                }
            }
            return -1;
        }
    }
}
