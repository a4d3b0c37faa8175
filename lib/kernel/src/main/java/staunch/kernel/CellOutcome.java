package staunch.kernel;

import java.util.Optional;

/**
 * How a cell ended.
 *
 * @param result the value of its last expression, if that is to be shown
 * @param error why it failed, if it did
 */
public record CellOutcome(Optional<MimeBundle> result, Optional<CellError> error) {
    public boolean succeeded() {
        return error.isEmpty();
    }

    static CellOutcome done(Optional<MimeBundle> result) {
        return new CellOutcome(result, Optional.empty());
    }

    static CellOutcome failed(CellError error) {
        return new CellOutcome(Optional.empty(), Optional.of(error));
    }
}
