package staunch.kernel;

import java.util.Optional;

/** Says in a sentence of its own what a throwable means to the user; empty for what it does not know. */
@FunctionalInterface
public interface ErrorDescriber {
    Optional<String> describe(Throwable fault);

    static ErrorDescriber none() {
        return fault -> Optional.empty();
    }
}
