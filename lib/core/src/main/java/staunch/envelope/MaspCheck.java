package staunch.envelope;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * The load of a maximum anticipated surface pressure on one component, at its depth with the least margin.
 *
 * @param name string interval or piece of equipment, in the words of the case
 * @param type what may break
 * @param measuredDepth where the margin is least, m
 * @param verticalDepth where the margin is least, m
 * @param load greatest pressure inside at that depth, Pa gauge; empty where the component is not assessed
 * @param holds pressure inside that it holds there: its rating, for casing back-up and the allowed share of burst, Pa
 *     gauge; empty where not assessed
 * @param margin what it holds less the load, Pa; empty where not assessed
 * @param outcome fails where the load is equal to what it holds, or more
 * @param notAssessed reason and missing field, where there is no margin
 */
public record MaspCheck(
        String name,
        SurfaceLimit.Type type,
        @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
        @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
        @Si(value = "Pa", kind = Kind.GAUGE) OptionalDouble load,
        @Si(value = "Pa", kind = Kind.GAUGE) OptionalDouble holds,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble margin,
        Verdict.Outcome outcome,
        Optional<String> notAssessed) {
    public MaspCheck {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(load, "load");
        Objects.requireNonNull(holds, "holds");
        Objects.requireNonNull(margin, "margin");
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(notAssessed, "notAssessed");
    }
}
