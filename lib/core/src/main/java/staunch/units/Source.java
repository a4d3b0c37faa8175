package staunch.units;

import java.util.Objects;

/**
 * Where a number or a rule comes from.
 *
 * @param document title of the report, standard or file
 * @param place page, clause or line; empty where the document is short
 */
public record Source(String document, String place) {
    public Source {
        Objects.requireNonNull(document, "document");
        Objects.requireNonNull(place, "place");
        if (document.isBlank()) {
            throw new InputFault("source", "is empty", "name the document the value comes from");
        }
    }

    /** Document and place in one line. */
    public String text() {
        return place.isEmpty() ? document : document + ", " + place;
    }
}
