package staunch.design;

import staunch.units.Check;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * Cost of steel at the prices of the case.
 *
 * @param currency as the case writes it
 * @param amount of money
 */
public record SteelCost(String currency, @Si("1") double amount) {
    public SteelCost {
        Check.text("currency", currency);
        Check.within("cost of steel", amount, 0, 1e15, Measure.NUMBER);
    }
}
