package staunch.design;

import java.util.Objects;
import staunch.units.Check;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * What a string costs.
 *
 * @param string name of the string
 * @param currency any text; only prices of one currency are added up
 * @param amount of money for one metre or one kilogram
 * @param basis which of the two
 */
public record StringPrice(
        String string, String currency, @Si("1") double amount, Basis basis) {
    public StringPrice {
        Check.text("string with a price", string);
        Check.text("currency of the price of " + string, currency);
        Check.within("price of " + string, amount, 0, 1e10, Measure.NUMBER);
        Objects.requireNonNull(basis, "basis");
    }

    /** What the price is for. */
    public enum Basis {
        METRE,
        KILOGRAM
    }

    /** Cost of steel of that string: price times length in m, or times the mass in kg. */
    double of(double length, double mass) {
        return amount * (basis == Basis.METRE ? length : mass);
    }
}
