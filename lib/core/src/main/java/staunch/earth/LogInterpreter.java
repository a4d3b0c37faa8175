package staunch.earth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.UnitSystem;
import staunch.units.Wording;

/** Works out {@link LogPressure}. */
final class LogInterpreter {
    /** Farthest that readings may stand apart for a measured pressure between them to be held against them, m. */
    private static final double NEAR = 50;

    private final LogMethod method;
    private final WellLog log;
    private final NormalPressure normal;
    private final Range overburden;
    private final List<PressurePoint> points;
    private final NormalTrend trend;
    private final double uncertainty;
    private final double ground;
    private final List<Wording> uncalibrated = new ArrayList<>();

    LogInterpreter(
            LogMethod method, TrendChoice choice, OptionalDouble stated, WellLog log, LogPressure.Surroundings well) {
        this.method = method;
        this.log = log;
        this.normal = well.normal();
        this.overburden = well.overburden();
        this.points = well.points();
        this.ground = normal.datum().groundOrSeabedDepth();
        this.trend = trend(choice);
        this.uncertainty = Check.within(
                "uncertainty of the ratio to the normal trend", stated.orElse(trend.scatter()), 0, 0.5, Measure.NUMBER);
    }

    /** Overburden and hydrostatic pressure with errors of one sign: −1 low, 0 likely, 1 high. */
    private record Side(PressureProfile overburden, int sign) {}

    private Side side(int sign) {
        return new Side(
                sign < 0 ? overburden.lowOrLikely() : sign > 0 ? overburden.highOrLikely() : overburden.likely(), sign);
    }

    private NormalTrend trend(TrendChoice choice) {
        LogProperty property = method.property();
        NormalTrend made;
        if (choice instanceof TrendChoice.Fitted fitted) {
            List<WellLog.Block> inside = log.read(b -> b.reading(property)).stream()
                    .filter(b -> b.verticalDepth() >= fitted.from() && b.verticalDepth() <= fitted.to())
                    .toList();
            if (inside.size() < 3) {
                throw new InputFault(
                        "normal trend of the " + property.title(),
                        "has " + inside.size() + " blocks with readings from "
                                + UnitSystem.SI.precise(fitted.from(), Measure.DEPTH) + " to "
                                + UnitSystem.SI.precise(fitted.to(), Measure.DEPTH),
                        "pick an interval with at least three");
            }
            made = NormalTrend.fit(
                    inside.stream().mapToDouble(b -> b.verticalDepth() - ground).toArray(),
                    inside.stream()
                            .mapToDouble(b -> b.reading(property).getAsDouble())
                            .toArray(),
                    20_000);
        } else {
            TrendChoice.Given given = (TrendChoice.Given) choice;
            Check.within(
                    "normal " + property.title() + " at ground or seabed",
                    given.atGround(),
                    property.lowest(),
                    property.highest(),
                    property.measure());
            double length = property == LogProperty.SLOWNESS ? -given.length() : given.length();
            made = NormalTrend.given(given.atGround(), length, given.scatter());
        }
        boolean compacts = property == LogProperty.SLOWNESS ? made.slope() < 0 : made.slope() > 0;
        if (!compacts) {
            throw new InputFault(
                    "normal trend of the " + property.title(),
                    property == LogProperty.SLOWNESS ? "does not fall with depth" : "does not rise with depth",
                    "pick an interval of shale in normal compaction");
        }
        return made;
    }

    LogPressure read() {
        Optional<LogPressure.Exponent> exponent =
                method instanceof LogMethod.Eaton eaton ? Optional.of(exponent(eaton)) : Optional.empty();
        List<LogPressure.Row> rows = new ArrayList<>();
        List<LogPressure.Unread> unread = new ArrayList<>();
        for (WellLog.Block block : readings()) {
            double z = block.verticalDepth();
            double reading = block.reading(method.property()).getAsDouble();
            double onTrend = trend.at(z - ground);
            double ratio = method.property().ratio(reading, onTrend);
            try {
                double likely = pressure(z, within(ratio), side(0), exponent);
                double low = pressure(z, ratio * (1 + uncertainty), side(-1), exponent);
                double high = pressure(z, ratio * (1 - uncertainty), side(1), exponent);
                // Without any uncertainty the three are equal but for rounding.
                PressureEstimate pressure = new PressureEstimate(Math.min(low, likely), likely, Math.max(high, likely));
                rows.add(new LogPressure.Row(z, ratio, pressure));
            } catch (RangeFault outside) {
                unread.add(new LogPressure.Unread(z, ratio, outside.wording()));
            }
        }
        return new LogPressure(method, uncertainty, exponent, rows, unread, uncalibrated);
    }

    /** Readings from the top of the trend down to where the overburden is known. */
    private List<WellLog.Block> readings() {
        return log.read(b -> b.reading(method.property())).stream()
                .filter(b -> trend.covers(b.verticalDepth() - ground)
                        && b.verticalDepth() > normal.waterLevel()
                        && overburden.likely().covers(b.verticalDepth()))
                .toList();
    }

    private static double within(double ratio) {
        return Check.within(
                "ratio of the log to its normal trend", ratio, 0, PorePressureMethod.GREATEST, Measure.NUMBER);
    }

    private double pressure(double z, double ratio, Side side, Optional<LogPressure.Exponent> exponent) {
        double hydrostatic = normal.at(z);
        StressState here = new StressState(side.overburden().lowestAt(z), hydrostatic);
        if (ratio >= 1) {
            return hydrostatic;
        }
        if (method instanceof LogMethod.Eaton eaton) {
            LogPressure.Exponent n = exponent.orElseThrow();
            double chosen = side.sign() < 0 ? n.low() : side.sign() > 0 ? n.high() : n.likely();
            return Math.max(hydrostatic, eaton.method().pressure(here, ratio, chosen));
        }
        double equivalent = ground + trend.depthOf(method.property().reading(ratio, trend.at(z - ground)));
        if (equivalent >= z) {
            return hydrostatic;
        }
        StressState above = new StressState(side.overburden().lowestAt(equivalent), normal.at(equivalent));
        return Math.max(hydrostatic, PorePressureMethod.byEquivalentDepth(here.overburden(), above));
    }

    // --- Calibration

    private LogPressure.Exponent exponent(LogMethod.Eaton eaton) {
        double stated = eaton.exponentWithoutPoints();
        if (!eaton.calibrated()) {
            return new LogPressure.Exponent(stated, stated, stated, 0);
        }
        List<PressurePoint> sorted = points.stream()
                .filter(p -> p.quality() != Quality.REJECTED)
                .sorted(Comparator.comparingDouble(PressurePoint::verticalDepth)
                        .thenComparing(PressurePoint::name)
                        .thenComparingDouble(PressurePoint::pressure))
                .toList();
        List<Double> found = new ArrayList<>();
        for (PressurePoint point : sorted) {
            double z = point.verticalDepth();
            OptionalDouble ratio = ratioAt(z);
            if (ratio.isEmpty()) {
                uncalibrated.add(new Wording(point.name() + ": the log has no shale near it", List.of()));
                continue;
            }
            StressState here = new StressState(overburden.likely().lowestAt(z), normal.at(z));
            if (point.pressure() <= here.porePressure() || point.pressure() >= here.overburden()) {
                String where = point.pressure() <= here.porePressure()
                        ? "not above hydrostatic"
                        : "at or above the overburden";
                uncalibrated.add(new Wording(point.name() + ": its pressure lies " + where, List.of()));
                continue;
            }
            try {
                found.add(eaton.method().calibrate(here, point.pressure(), ratio.getAsDouble()));
            } catch (RangeFault none) {
                uncalibrated.add(none.wording().within(point.name() + ": ", ""));
            }
        }
        if (found.isEmpty()) {
            return new LogPressure.Exponent(stated, stated, stated, 0);
        }
        double[] n = found.stream().mapToDouble(Double::doubleValue).toArray();
        double least = Arrays.stream(n).min().getAsDouble();
        double most = Arrays.stream(n).max().getAsDouble();
        double mean = Arrays.stream(n).sum() / n.length;
        return new LogPressure.Exponent(least, Math.max(least, Math.min(most, mean)), most, n.length);
    }

    /** Ratio between the readings above and below a depth. */
    private OptionalDouble ratioAt(double z) {
        List<WellLog.Block> readings = readings();
        for (int i = 1; i < readings.size(); i++) {
            double top = readings.get(i - 1).verticalDepth();
            double bottom = readings.get(i).verticalDepth();
            if (z >= top && z <= bottom) {
                double share = (z - top) / (bottom - top);
                return bottom - top > NEAR
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(ratio(readings.get(i - 1)) * (1 - share) + ratio(readings.get(i)) * share);
            }
        }
        return OptionalDouble.empty();
    }

    private double ratio(WellLog.Block block) {
        double reading = block.reading(method.property()).getAsDouble();
        return method.property().ratio(reading, trend.at(block.verticalDepth() - ground));
    }
}
