package staunch.limit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a BOP stack holds from below. Any of its closing elements may be the one closed, so that every element up to the
 * uppermost that seals may see the well: the lowest rating among them counts. Elements that seal or connect must be rated;
 * spools, outlets and shears without a sealing duty count where they are rated.
 */
public sealed interface StackRating {
    /**
     * Every element that must hold is rated.
     *
     * @param lowest rating, with its element
     */
    record Rated(PressureRating lowest) implements StackRating {
        public Rated {
            Objects.requireNonNull(lowest, "lowest");
        }
    }

    /**
     * Something is missing.
     *
     * @param missing what, in the words of the case
     * @param lowestKnown lowest of the ratings that are known: the stack holds at most this
     */
    record NotAssessed(String missing, Optional<PressureRating> lowestKnown) implements StackRating {
        public NotAssessed {
            Objects.requireNonNull(missing, "missing");
            Objects.requireNonNull(lowestKnown, "lowestKnown");
        }
    }

    /**
     * Rating of a stack.
     *
     * @param stack elements from the bottom up
     */
    static StackRating of(List<StackElement> stack) {
        List<StackElement> exposed = exposed(stack);
        if (exposed.isEmpty()) {
            return new NotAssessed(
                    stack.isEmpty() ? "elements of the BOP stack" : "an element of the BOP stack that seals",
                    Optional.empty());
        }
        List<String> unrated = new ArrayList<>();
        List<PressureRating> rated = new ArrayList<>();
        for (StackElement element : exposed) {
            if (element.rating().isPresent()) {
                rated.add(element.rating().get());
            } else if (mustBeRated(element)) {
                unrated.add(element.name());
            }
        }
        Optional<PressureRating> lowest = rated.stream().min(Comparator.comparingDouble(PressureRating::pressure));
        return unrated.isEmpty()
                ? new Rated(lowest.orElseThrow())
                : new NotAssessed("rating of " + String.join(", ", unrated), lowest);
    }

    /** Elements that may see the well: every one up to the uppermost that seals; none where none seals. */
    static List<StackElement> exposed(List<StackElement> stack) {
        int uppermost = -1;
        for (int i = 0; i < stack.size(); i++) {
            if (stack.get(i).type().seals()) {
                uppermost = i;
            }
        }
        return stack.subList(0, uppermost + 1);
    }

    /** Whether an element that may see the well leaves the question open where its rating is not known. */
    static boolean mustBeRated(StackElement element) {
        return element.type().seals() || element.type().connects();
    }
}
