package staunch.table;

import java.math.RoundingMode;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** Shows the unrounded number of a column with the decimals of its unit, rounded to the safe side. */
final class ShownFormat extends NumberFormat {
    private static final long serialVersionUID = 1L;

    private final transient UnitSystem units;
    private final Measure measure;
    private final RoundingMode rounding;

    ShownFormat(UnitSystem units, Measure measure, RoundingMode rounding) {
        this.units = units;
        this.measure = measure;
        this.rounding = rounding;
    }

    @Override
    public StringBuffer format(double number, StringBuffer into, FieldPosition position) {
        return into.append(units.number(units.toSi(number, measure), measure, rounding));
    }

    @Override
    public StringBuffer format(long number, StringBuffer into, FieldPosition position) {
        return format((double) number, into, position);
    }

    @Override
    public Number parse(String text, ParsePosition position) {
        throw new UnsupportedOperationException("shows numbers only");
    }
}
