package staunch.units;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * A text with the quantities it names, so that it can be read in any units. The text alone is whole, in SI units.
 *
 * @param text in SI units
 * @param amounts in the order in which the text names them
 */
public record Wording(String text, List<Amount> amounts) {
    public Wording {
        Objects.requireNonNull(text, "text");
        amounts = List.copyOf(amounts);
    }

    /**
     * Fills a template.
     *
     * @param template with {@code {}} where a quantity goes
     * @param amounts as many as there are marks
     * @throws IllegalArgumentException where marks and quantities differ in number: a mistake in the code
     */
    public static Wording of(String template, Amount... amounts) {
        String[] parts = template.split("\\{}", -1);
        if (parts.length != amounts.length + 1) {
            throw new IllegalArgumentException("\"" + template + "\" does not take " + amounts.length + " quantities");
        }
        StringBuilder text = new StringBuilder(parts[0]);
        for (int i = 0; i < amounts.length; i++) {
            text.append(amounts[i].si()).append(parts[i + 1]);
        }
        return new Wording(text.toString(), Arrays.asList(amounts));
    }

    /** The same between two other texts. */
    public Wording within(String before, String after) {
        return new Wording(before + text + after, amounts);
    }

    /** Several texts as one. */
    public static Wording joined(List<Wording> parts, String separator) {
        List<Amount> all = new ArrayList<>();
        parts.forEach(p -> all.addAll(p.amounts));
        return new Wording(
                String.join(separator, parts.stream().map(Wording::text).toList()), all);
    }

    /** The text with its quantities in the given units. */
    public String in(UnitSystem units) {
        StringBuilder shown = new StringBuilder();
        int from = 0;
        for (Amount amount : amounts) {
            String si = amount.si();
            int at = text.indexOf(si, from);
            if (at < 0) {
                throw new IllegalStateException("\"" + text + "\" does not name " + si);
            }
            shown.append(text, from, at).append(amount.in(units));
            from = at + si.length();
        }
        return shown.append(text, from, text.length()).toString();
    }
}
