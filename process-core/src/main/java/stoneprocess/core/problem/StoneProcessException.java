package stoneprocess.core.problem;

/**
 * What this library throws by design: catch it to catch all of it. Beside it stand only the usual
 * {@link NullPointerException} for an argument that is null, which names the argument, and
 * {@link java.io.UncheckedIOException} where a caller's stream fails.
 */
public abstract sealed class StoneProcessException extends RuntimeException
        permits InvalidInputException, MissingLibraryException, RulebaseException {
    private static final long serialVersionUID = 1L;

    StoneProcessException(String message) {
        super(message);
    }

    StoneProcessException(String message, Throwable cause) {
        super(message, cause);
    }
}
