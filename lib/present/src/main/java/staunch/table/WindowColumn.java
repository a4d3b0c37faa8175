package staunch.table;

import java.math.RoundingMode;
import java.util.OptionalDouble;
import java.util.function.Function;
import staunch.envelope.PressureWindow;

/** The pressures of a window, each with its safe side. */
enum WindowColumn {
    PORE_LIKELY("Pore pressure likely", RoundingMode.CEILING, PressureWindow.Point::porePressureLikely),
    PORE_HIGH("Pore pressure high", RoundingMode.CEILING, PressureWindow.Point::porePressureHigh),
    MUD("Mud", RoundingMode.HALF_EVEN, PressureWindow.Point::mudPressure),
    STRENGTH_LIKELY("Strength likely", RoundingMode.FLOOR, PressureWindow.Point::strengthLikely),
    STRENGTH_LOW("Strength low", RoundingMode.FLOOR, PressureWindow.Point::strengthLow),
    LIMIT("Limit", RoundingMode.FLOOR, PressureWindow.Point::limit);

    final String title;
    final RoundingMode rounding;
    final Function<PressureWindow.Point, OptionalDouble> pressure;

    WindowColumn(String title, RoundingMode rounding, Function<PressureWindow.Point, OptionalDouble> pressure) {
        this.title = title;
        this.rounding = rounding;
        this.pressure = pressure;
    }
}
