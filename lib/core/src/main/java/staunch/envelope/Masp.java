package staunch.envelope;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Maximum anticipated surface pressure of a section: a design load of wellhead, BOP stack, casing and choke line, not an
 * answer about circulating a kick. It stands at surface, or at the mudline where the stack is on the seabed.
 *
 * @param basis how it was found
 * @param pressure above the atmosphere, not rounded, Pa gauge; empty where not assessed
 * @param at "surface" or "mudline"
 * @param verticalDepth of that place below the datum, m
 * @param from what set it, in plain words; empty where not assessed
 * @param fromVerticalDepth depth of the formation that set it, m, where assessed
 * @param formationPressure there, Pa absolute, where assessed
 * @param notAssessed reason and missing field, where there is no value
 * @param checks against every rating; empty where there is no value
 * @param verdict whether every rating holds it
 */
public record Masp(
        MaspBasis basis,
        @Si(value = "Pa", kind = Kind.GAUGE) OptionalDouble pressure,
        String at,
        @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
        String from,
        @Si(value = "m", kind = Kind.DEPTH) OptionalDouble fromVerticalDepth,
        @Si(value = "Pa", kind = Kind.ABSOLUTE) OptionalDouble formationPressure,
        Optional<String> notAssessed,
        List<MaspCheck> checks,
        Verdict verdict) {
    public Masp {
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(pressure, "pressure");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(fromVerticalDepth, "fromVerticalDepth");
        Objects.requireNonNull(formationPressure, "formationPressure");
        Objects.requireNonNull(notAssessed, "notAssessed");
        checks = List.copyOf(checks);
        Objects.requireNonNull(verdict, "verdict");
    }
}
