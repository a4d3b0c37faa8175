package staunch.earth;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.RangeFault;
import staunch.units.Si;
import staunch.units.Wording;

/**
 * Pore pressure of a well from a log of its shale.
 *
 * <ul>
 *   <li>Ratio r of a reading to its normal trend, see {@link LogProperty}: below one the shale is undercompacted.
 *   <li>Where r ≥ 1 the pressure is hydrostatic: these methods see undercompaction; more compaction than normal tells of
 *       another rock, not of depletion.
 *   <li>Low and high: r (1 ± u) with the least and the greatest exponent of the calibration and the low and high overburden,
 *       as errors of one sign.
 *   <li>A reading outside the range of its method has no pressure; it is listed, never bent into the range.
 * </ul>
 *
 * @param method by which it was read
 * @param uncertainty u of a ratio, as a share
 * @param exponent of Eaton's equation; empty for the equivalent depth
 * @param rows one for each reading with a pressure, downwards, at least two
 * @param unread readings without a pressure, downwards
 * @param uncalibrated measured pressures that tell no exponent, with the reason
 */
public record LogPressure(
        LogMethod method,
        @Si("1") double uncertainty,
        Optional<Exponent> exponent,
        List<Row> rows,
        List<Unread> unread,
        List<Wording> uncalibrated) {
    public LogPressure {
        Objects.requireNonNull(method, "method");
        Objects.requireNonNull(exponent, "exponent");
        rows = List.copyOf(rows);
        unread = List.copyOf(unread);
        uncalibrated = List.copyOf(uncalibrated);
        if (rows.size() < 2) {
            throw new InputFault(
                    "pore pressure from the log",
                    "is to be had in fewer than two blocks"
                            + (unread.isEmpty()
                                    ? ""
                                    : ", since " + unread.get(0).reason().text()),
                    "check the normal trend, the curve and its unit");
        }
    }

    /**
     * Exponent of Eaton's equation.
     *
     * @param low least that a measured pressure asks for
     * @param likely mean of them; that of the choice where there are none
     * @param high greatest
     * @param points how many measured pressures it rests on
     */
    public record Exponent(
            @Si("1") double low,
            @Si("1") double likely,
            @Si("1") double high,
            int points) {}

    /**
     * A reading.
     *
     * @param verticalDepth below the datum of the well, m
     * @param ratio r
     * @param pressure pore pressure
     */
    public record Row(
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si("1") double ratio,
            PressureEstimate pressure) {
        public Row {
            Objects.requireNonNull(pressure, "pressure");
        }
    }

    /**
     * A reading without a pressure.
     *
     * @param verticalDepth below the datum of the well, m
     * @param ratio r
     * @param reason why not
     */
    public record Unread(
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si("1") double ratio,
            Wording reason) {
        public Unread {
            Objects.requireNonNull(reason, "reason");
        }
    }

    /**
     * Reads a log.
     *
     * @param method which way
     * @param trend where the normal trend comes from
     * @param uncertainty u of a ratio, 0 to 0.5; empty for the scatter of the fit
     * @param log curves of the well
     * @param well its hydrostatic pressure, overburden and measured pressures
     * @throws InputFault where the trend cannot be made, goes the wrong way, or the log gives fewer than two pressures
     * @throws RangeFault where the uncertainty is out of range
     */
    public static LogPressure of(
            LogMethod method, TrendChoice trend, @Si("1") OptionalDouble uncertainty, WellLog log, Surroundings well) {
        return new LogInterpreter(method, trend, uncertainty, log, well).read();
    }

    /**
     * What of a well counts besides its log.
     *
     * @param normal hydrostatic pressure and datum
     * @param overburden by vertical depth below the datum
     * @param points measured pressures
     */
    public record Surroundings(NormalPressure normal, Range overburden, List<PressurePoint> points) {
        public Surroundings {
            Objects.requireNonNull(normal, "normal");
            Objects.requireNonNull(overburden, "overburden");
            points = List.copyOf(points);
        }
    }

    /** Its pore pressure by vertical depth below the datum of its well, straight between the readings. */
    public Range profile() {
        return OffsetTransfer.range(
                rows.stream().mapToDouble(Row::verticalDepth).toArray(),
                rows.stream().map(Row::pressure).toList());
    }
}
