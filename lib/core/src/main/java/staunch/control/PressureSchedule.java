package staunch.control;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.well.StringGeometry;
import staunch.well.WellPath;

/**
 * Drill-pipe pressure while kill mud is pumped to the bit. At the kill mud front, measured depth s and vertical depth z(s):
 *
 * <p>p = p_dp (1 − z(s)/z_bit) + p_scr (1 + (ρ_k/ρ − 1) F(s)),
 *
 * <p>the shut-in drill-pipe pressure taken off with the true vertical depth of the front, friction raised with the share F
 * of the string that kill mud fills. Bottom-hole pressure then rises from the formation pressure by no more than what
 * rounding the kill mud density up adds. Beside it stands the straight line from initial to final circulating pressure by
 * strokes, and how far below or above the needed pressure it lies: below is underbalance.
 *
 * @param steps from the first stroke to the bit: even lines, and every place where string or survey changes
 * @param greatestUnderbalance of the straight line, Pa, at least 0
 * @param underbalanceAt where it is; the first step where there is none
 * @param greatestOverbalance of the straight line, Pa, at least 0
 */
public record PressureSchedule(
        List<Step> steps,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) double greatestUnderbalance,
        Step underbalanceAt,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) double greatestOverbalance) {
    public PressureSchedule {
        steps = List.copyOf(steps);
    }

    /**
     * One line of the schedule.
     *
     * @param pumped since the start, surface lines counted, m³
     * @param strokes since the start
     * @param time since the start at the slow rate, s
     * @param frontMeasuredDepth of the kill mud front, m
     * @param frontVerticalDepth of the kill mud front, m
     * @param pressure to hold on the drill pipe, Pa gauge
     * @param straightLine what the straight line would hold, Pa gauge
     */
    public record Step(
            @Si("m3") double pumped,
            @Si("1") double strokes,
            @Si("s") double time,
            @Si(value = "m", kind = Kind.DEPTH) double frontMeasuredDepth,
            @Si(value = "m", kind = Kind.DEPTH) double frontVerticalDepth,
            @Si(value = "Pa", kind = Kind.GAUGE) double pressure,
            @Si(value = "Pa", kind = Kind.GAUGE) double straightLine) {
        /** Needed pressure less straight line: above zero the straight line underbalances the well. */
        @Si(value = "Pa", kind = Kind.DIFFERENCE)
        public double underbalance() {
            return pressure - straightLine;
        }
    }

    /**
     * Needed drill-pipe pressure after a volume was pumped, linear between steps.
     *
     * @param pumped m³, 0 to that of the last step
     */
    @Si(value = "Pa", kind = Kind.GAUGE)
    public double pressureAfter(@Si("m3") double pumped) {
        Check.within("volume pumped", pumped, 0, steps.get(steps.size() - 1).pumped(), Measure.VOLUME);
        int i = 1;
        while (i < steps.size() - 1 && steps.get(i).pumped() < pumped) {
            i++;
        }
        Step a = steps.get(i - 1);
        Step b = steps.get(i);
        double share = b.pumped() == a.pumped() ? 1 : (pumped - a.pumped()) / (b.pumped() - a.pumped());
        return a.pressure() + share * (b.pressure() - a.pressure());
    }

    /** Works the schedule out. */
    static final class Builder {
        /** Parts of a stretch between two nodes in which the slope of the difference is searched for a change of sign. */
        private static final int PARTS = 4;

        private static final int HALVINGS = 60;

        private final WellPath path;
        private final StringGeometry string;
        private final KillSheetInput.Pump pump;
        private final StringFriction friction;
        private final double shutInPressure;
        private final double slowPressure;
        private final double densityRatio;
        private final double bit;
        private final double bitVertical;

        Builder(KillSheetInput input, double killDensity) {
            path = input.path();
            string = input.annulus().string();
            pump = input.pump();
            friction = input.options().friction();
            shutInPressure = input.shutIn().drillPipePressure();
            slowPressure = pump.slowCirculation().pumpPressure().getAsDouble();
            densityRatio = killDensity / input.mudDensity();
            bit = input.bitDepth();
            bitVertical = path.verticalDepth(bit);
        }

        PressureSchedule build(int lines) {
            TreeSet<Double> fronts = new TreeSet<>();
            fronts.add(0.0);
            for (int i = 0; i < string.count(); i++) {
                fronts.add(string.bottom(i));
            }
            for (double node : path.nodesBetween(0, bit)) {
                fronts.add(node);
            }
            for (int i = 1; i < lines; i++) {
                fronts.add(string.depthReached(string.insideVolume() * i / lines));
            }
            List<Step> steps = new ArrayList<>();
            if (pump.surfaceLineVolume() > 0) {
                Step top = step(0, 0);
                steps.add(new Step(0, 0, 0, 0, 0, top.pressure(), top.straightLine()));
            }
            double volume = 0;
            double last = 0;
            List<Step> searched = new ArrayList<>();
            for (double front : fronts) {
                extremes(last, front, volume, searched);
                volume = insideVolume(front);
                steps.add(step(front, volume));
                last = front;
            }
            searched.addAll(steps);
            Step under = steps.get(0);
            double over = 0;
            for (Step s : searched) {
                under = s.underbalance() > under.underbalance() ? s : under;
                over = Math.max(over, -s.underbalance());
            }
            return new PressureSchedule(steps, Math.max(0, under.underbalance()), under, over);
        }

        private double insideVolume(double front) {
            double volume = 0;
            for (int i = 0; i < string.count() && string.top(i) < front; i++) {
                double d = string.component(i).insideDiameter();
                volume += 0.25 * Math.PI * d * d * (Math.min(front, string.bottom(i)) - string.top(i));
            }
            return volume;
        }

        private Step step(double front, double volume) {
            double vertical = path.verticalDepth(front);
            double pressure = shutInPressure * (1 - vertical / bitVertical)
                    + slowPressure * (1 + (densityRatio - 1) * friction.shareAbove(string, front));
            double initial = shutInPressure + slowPressure;
            double straight =
                    initial + (slowPressure * densityRatio - initial) * Math.min(1, volume / string.insideVolume());
            double pumped = pump.surfaceLineVolume() + volume;
            return new Step(
                    pumped,
                    pumped / pump.strokeVolume(),
                    pumped / pump.slowCirculation().rate(),
                    front,
                    vertical,
                    pressure,
                    straight);
        }

        /** Adds the steps between two nodes where the difference to the straight line is greatest or least. */
        private void extremes(double from, double to, double volumeAtFrom, List<Step> found) {
            if (to <= from) {
                return;
            }
            double area = (insideVolume(to) - volumeAtFrom) / (to - from);
            double shareRate = (friction.shareAbove(string, to) - friction.shareAbove(string, from)) / (to - from);
            double initial = shutInPressure + slowPressure;
            double constant = slowPressure * (densityRatio - 1) * shareRate
                    - (slowPressure * densityRatio - initial) * area / string.insideVolume();
            for (int k = 0; k < PARTS; k++) {
                double low = from + (to - from) * k / PARTS;
                double high = from + (to - from) * (k + 1) / PARTS;
                boolean risesAtLow = slope(low, constant) > 0;
                if (risesAtLow == slope(high - 1e-9 * (high - low), constant) > 0) {
                    continue;
                }
                for (int h = 0; h < HALVINGS; h++) {
                    double middle = 0.5 * (low + high);
                    if (slope(middle, constant) > 0 == risesAtLow) {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
                found.add(step(low, volumeAtFrom + area * (low - from)));
            }
        }

        private double slope(double front, double constant) {
            return constant - shutInPressure / bitVertical * path.verticalRate(front);
        }
    }
}
