package staunch.envelope;

import java.util.TreeSet;
import staunch.fluid.Gas;
import staunch.units.Physics;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/** Pressure and mass along the hole by Runge–Kutta of fourth order in measured depth. */
final class GasReference {
    /** Error over a kilometre far below 1e-10, m. */
    private static final double STEP = 1;

    private final AnySection section;
    private final WellPath path;
    private final Wells wells;
    private final Gas gas;
    private final TreeSet<Double> breaks = new TreeSet<>();

    GasReference(AnySection section, Wells wells, Gas gas) {
        this.section = section;
        this.wells = wells;
        this.gas = gas;
        this.path = WellPath.of(section.stations());
        for (SurveyStation station : section.stations()) {
            breaks.add(station.measuredDepth());
        }
        for (HoleInterval interval : section.hole()) {
            breaks.add(interval.topDepth());
        }
        breaks.add(section.bottom() - section.string()[0].length());
    }

    double vertical(double measuredDepth) {
        return path.verticalDepth(measuredDepth);
    }

    double mass(double top, double bottom, double pressureAtBottom) {
        return upTo(top, bottom, pressureAtBottom).mass();
    }

    /** Pressure at the top of the gas, and its mass. */
    record Top(double pressure, double mass) {}

    Top upTo(double top, double bottom, double pressureAtBottom) {
        double s = bottom;
        double p = pressureAtBottom;
        double mass = 0;
        while (s > top) {
            Double above = breaks.lower(s - 1e-9);
            double end = Math.max(top, above == null ? 0 : above);
            int n = (int) Math.ceil((s - end) / STEP);
            double h = (s - end) / n;
            double area = area(0.5 * (s + end));
            for (int i = 0; i < n; i++) {
                double at = s - i * h;
                double r1 = density(p, at);
                double k1 = r1 * rate(at);
                double r2 = density(p - 0.5 * h * k1, at - 0.5 * h);
                double k2 = r2 * rate(at - 0.5 * h);
                double r3 = density(p - 0.5 * h * k2, at - 0.5 * h);
                double k3 = r3 * rate(at - 0.5 * h);
                double r4 = density(p - h * k3, at - h);
                double k4 = r4 * rate(at - h);
                p -= h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
                mass += area * h / 6 * (r1 + 2 * r2 + 2 * r3 + r4);
            }
            s = end;
        }
        return new Top(p, mass);
    }

    private double density(double pressure, double md) {
        return gas.density(pressure, wells.temperature().at(path.verticalDepth(Math.max(0, md))));
    }

    private double rate(double md) {
        return Physics.GRAVITY * path.verticalRate(md);
    }

    private double area(double md) {
        StringComponent collars = section.string()[0];
        double pipe = md > section.bottom() - collars.length() ? collars.outsideDiameter() : Wells.PIPE;
        double bore =
                md < section.shoe() ? 0.22049 : section.hole()[md < section.hole()[1].topDepth() ? 0 : 1].diameter();
        return Math.PI / 4 * (bore * bore - pipe * pipe);
    }
}
