package staunch.chart;

import java.awt.BasicStroke;
import java.awt.Color;

/** Colours that people with any colour vision tell apart (Okabe and Ito, 2008), and the lines drawn with them. */
final class Palette {
    static final Color INK = new Color(31, 41, 51);
    static final Color MUTED = new Color(91, 103, 115);
    static final Color GRID = new Color(222, 227, 232);
    static final Color ORANGE = new Color(230, 159, 0);
    static final Color SKY = new Color(86, 180, 233);
    static final Color GREEN = new Color(0, 158, 115);
    static final Color YELLOW = new Color(240, 228, 66);
    static final Color BLUE = new Color(0, 114, 178);
    static final Color VERMILLION = new Color(213, 94, 0);
    static final Color PURPLE = new Color(204, 121, 167);

    private Palette() {}

    /** How a line is broken, so that it is known without its colour. */
    enum Dash {
        SOLID(),
        DASHED(8, 4),
        DOTTED(2, 3),
        DASH_DOT(9, 3, 2, 3),
        LONG(14, 4),
        SHORT(4, 3);

        private final float[] pattern;

        Dash(float... pattern) {
            this.pattern = pattern;
        }

        BasicStroke stroke(float width) {
            return pattern.length == 0
                    ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                    : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, pattern, 0f);
        }
    }
}
