package stoneprocess.examples.command;

/** What the process says to its caller. */
final class ExitCode {
    /** There is a plan, or what was asked for was printed. */
    static final int DONE = 0;

    /** An audit ended, and something that it found is open. */
    static final int FINDINGS = 1;

    /** Standard output did not take all that was printed; one line on standard error says so. */
    static final int NOT_WRITTEN = 1;

    /** The input or the command line is not accepted; one line on standard error says why. */
    static final int BAD_INPUT = 2;

    /** Refused, an impasse, nothing to estimate or to follow, no way found: there is an answer, and it is not what was asked for. */
    static final int NO_PLAN = 3;

    private ExitCode() {}
}
