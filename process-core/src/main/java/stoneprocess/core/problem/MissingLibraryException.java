package stoneprocess.core.problem;

/** An optional library is needed for what was asked, and it is not on the class path or has another version. */
public final class MissingLibraryException extends StoneProcessException {
    private static final long serialVersionUID = 1L;

    public MissingLibraryException(String message, Throwable cause) {
        super(message, cause);
    }

    public MissingLibraryException(String message) {
        super(message);
    }
}
