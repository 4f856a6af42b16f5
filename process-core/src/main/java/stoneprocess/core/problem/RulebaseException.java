package stoneprocess.core.problem;

/** The rulebase cannot be loaded, built or run. A fault of the rules or of the class path, never of a survey. */
public final class RulebaseException extends StoneProcessException {
    private static final long serialVersionUID = 1L;

    public RulebaseException(String message) {
        super(message);
    }

    public RulebaseException(String message, Throwable cause) {
        super(message, cause);
    }
}
