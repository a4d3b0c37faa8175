package staunch.chart;

import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/**
 * Stands between XChart and the real graphics. XChart draws a curve as single segments, each beginning its dashes anew, so
 * that a dashed curve of many points looks solid; here segments that follow each other become one path.
 */
final class LineJoiner extends VectorGraphics2D {
    private final Graphics2D target;
    private Path2D path;
    private Color color;
    private Stroke stroke;

    LineJoiner(Graphics2D target) {
        this.target = target;
    }

    @Override
    public void draw(Shape shape) {
        if (shape instanceof Line2D line) {
            boolean follows = path != null
                    && path.getCurrentPoint().equals(line.getP1())
                    && getColor().equals(color)
                    && getStroke().equals(stroke);
            if (!follows) {
                finish();
                path = new Path2D.Double();
                path.moveTo(line.getX1(), line.getY1());
                color = getColor();
                stroke = getStroke();
            }
            path.lineTo(line.getX2(), line.getY2());
        }
    }

    @Override
    public void fill(Shape shape) {
        if (getColor().getAlpha() != 0) {
            finish();
            target.setColor(getColor());
            target.fill(shape);
        }
    }

    /** Hands the last path on. */
    void finish() {
        if (path != null) {
            target.setColor(color);
            target.setStroke(stroke);
            target.draw(path);
            path = null;
        }
    }
}
