package staunch.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import staunch.design.CasingDesign;
import staunch.design.WellCase;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SectionPlan;
import staunch.envelope.WellEnvelope;
import staunch.units.Measure;
import staunch.units.UnitSystem;
import staunch.well.CasingString;
import staunch.well.Datum;
import staunch.well.HoleInterval;

/** The well as a straightened cut through its axis: measured depth downwards, diameters to their own scale. */
final class Schematic {
    private static final int WIDTH = 720;
    private static final int TOP = 40;
    private static final int HEIGHT = 500;
    private static final int AXIS = 215;
    private static final double HALF_WIDTH = 120;
    private static final double LABELS = 390;
    private static final int TICKS = 9;

    private final WellCase wellCase;
    private final CasingDesign design;
    private final List<SectionEnvelope> sections;
    private final UnitSystem units;
    private final Axis depth;
    private final double widest;

    Schematic(WellCase wellCase, WellEnvelope envelope, UnitSystem units) {
        this.wellCase = wellCase;
        this.design = wellCase.design(envelope.design());
        this.sections = envelope.sections();
        this.units = units;
        double deepest = Math.max(
                design.sections().stream()
                        .mapToDouble(SectionPlan::bottomDepth)
                        .max()
                        .orElse(1),
                design.strings().stream()
                        .mapToDouble(CasingString::shoeDepth)
                        .max()
                        .orElse(1));
        this.depth = new Axis(
                "Measured depth below " + wellCase.datum().name() + " [" + units.label(Measure.DEPTH) + "]",
                0,
                units.fromSi(deepest, Measure.DEPTH));
        double hole = design.sections().stream()
                .flatMap(s -> s.hole().stream())
                .mapToDouble(HoleInterval::diameter)
                .max()
                .orElse(1);
        double steel = design.strings().stream()
                .flatMap(s -> s.intervals().stream())
                .mapToDouble(i -> i.outsideDiameter())
                .max()
                .orElse(0);
        this.widest = Math.max(hole, steel);
    }

    Figure image() {
        String strings = String.join(
                "; ",
                design.strings().stream()
                        .map(s -> s.name() + " to " + units.text(s.shoeDepth(), Measure.DEPTH))
                        .toList());
        SideLabels labels = labels();
        int height = (int) Math.ceil(Math.max(TOP + HEIGHT, labels.bottom()) + 12);
        return new ChartImage(
                "schematic",
                "Well schematic, " + design.name() + " (straightened, diameters not to the scale of depths)",
                "Casing strings and hole sections against measured depth: " + strings + ".",
                new ChartImage.Size(WIDTH, height),
                g -> paint(g, labels));
    }

    private void paint(Graphics2D g, SideLabels labels) {
        for (double tick : depth.ticks(TICKS)) {
            double sy = TOP + (tick - depth.min()) / (depth.max() - depth.min()) * HEIGHT;
            Plot.grid(g, AXIS - HALF_WIDTH - 20, sy, LABELS - 30, sy);
            String label = depth.label(tick, TICKS);
            double sx = AXIS - HALF_WIDTH - 27 - Type.width(label, Type.PLAIN);
            Plot.text(g, label, sx, sy + 4, Type.PLAIN, Palette.INK);
        }
        AffineTransform upright = g.getTransform();
        g.translate(21, TOP + HEIGHT / 2.0 + Type.width(depth.title(), Type.BOLD) / 2);
        g.rotate(-Math.PI / 2);
        Plot.text(g, depth.title(), 0, 0, Type.BOLD, Palette.INK);
        g.setTransform(upright);
        for (SectionPlan section : design.sections()) {
            section.hole().forEach(h -> hole(g, h));
        }
        for (CasingString string : design.strings()) {
            cement(g, string);
        }
        for (CasingString string : design.strings()) {
            casing(g, string);
        }
        g.setColor(Palette.MUTED);
        g.setStroke(Palette.Dash.DASH_DOT.stroke(1f));
        g.draw(new Line2D.Double(AXIS, TOP - 8, AXIS, TOP + HEIGHT + 4));
        labels.paint(g);
    }

    private void hole(Graphics2D g, HoleInterval hole) {
        double half = half(hole.diameter());
        double from = y(hole.topDepth());
        double to = y(hole.bottomDepth());
        g.setColor(Palette.MUTED);
        g.setStroke(Palette.Dash.SHORT.stroke(1f));
        g.draw(new Line2D.Double(AXIS - half, from, AXIS - half, to));
        g.draw(new Line2D.Double(AXIS + half, from, AXIS + half, to));
        g.draw(new Line2D.Double(AXIS - half, to, AXIS + half, to));
    }

    private void cement(Graphics2D g, CasingString string) {
        if (string.topOfCement().isPresent()) {
            double from = y(Math.max(string.topOfCement().getAsDouble(), string.topDepth()));
            double to = y(string.shoeDepth());
            double half =
                    half(string.intervals().get(string.intervals().size() - 1).outsideDiameter());
            g.setColor(Palette.GRID);
            g.fill(new Rectangle2D.Double(AXIS - half - 5, from, 5, to - from));
            g.fill(new Rectangle2D.Double(AXIS + half, from, 5, to - from));
        }
    }

    private void casing(Graphics2D g, CasingString string) {
        double half = half(string.intervals().get(string.intervals().size() - 1).outsideDiameter());
        double from = y(string.topDepth());
        double to = y(string.shoeDepth());
        g.setColor(Palette.INK);
        g.setStroke(new BasicStroke(2.4f));
        g.draw(new Line2D.Double(AXIS - half, from, AXIS - half, to));
        g.draw(new Line2D.Double(AXIS + half, from, AXIS + half, to));
        g.fill(Plot.triangle(AXIS + half, to));
        AffineTransform upright = g.getTransform();
        g.translate(2.0 * AXIS, 0);
        g.scale(-1, 1);
        g.fill(Plot.triangle(AXIS + half, to));
        g.setTransform(upright);
    }

    private SideLabels labels() {
        SideLabels labels = new SideLabels(LABELS, WIDTH - LABELS - 8);
        for (CasingString string : design.strings()) {
            double half =
                    half(string.intervals().get(string.intervals().size() - 1).outsideDiameter());
            labels.add(
                    AXIS + half + 8,
                    y(string.shoeDepth()),
                    string.name() + ", shoe " + depths(string.shoeDepth()),
                    Palette.INK);
        }
        for (SectionEnvelope section : sections) {
            SectionPlan plan = section.plan();
            HoleInterval middle = plan.hole().get(plan.hole().size() / 2);
            labels.add(
                    AXIS + half(middle.diameter()),
                    y((plan.topDepth() + plan.bottomDepth()) / 2),
                    plan.name() + ": " + section.verdict().outcome().title(),
                    Palette.MUTED);
        }
        Datum datum = wellCase.datum();
        boolean land = datum.place() instanceof Datum.OnLand;
        labels.add(
                AXIS + HALF_WIDTH + 12,
                y(datum.groundOrSeabedDepth()),
                (land ? "ground level " : "seabed ") + units.text(datum.groundOrSeabedDepth(), Measure.DEPTH),
                Palette.MUTED);
        labels.spread(TOP - 20, TOP + HEIGHT + 8.0);
        return labels;
    }

    private String depths(double measured) {
        String md = units.text(measured, Measure.DEPTH) + " MD";
        return measured > wellCase.path().end()
                ? md
                : md + ", " + units.text(wellCase.path().verticalDepth(measured), Measure.DEPTH) + " TVD";
    }

    private double half(double diameter) {
        return diameter / widest * HALF_WIDTH;
    }

    private double y(double measured) {
        return TOP + (units.fromSi(measured, Measure.DEPTH) - depth.min()) / (depth.max() - depth.min()) * HEIGHT;
    }
}
