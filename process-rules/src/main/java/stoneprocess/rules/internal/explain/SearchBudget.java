package stoneprocess.rules.internal.explain;

/**
 * How much one search may try. Counted in steps and not in time, so that the same question gets the same answer on any
 * machine; only a thread that was interrupted ends its search sooner, and stays interrupted. Not safe to share between
 * threads.
 */
final class SearchBudget {
    private final int most;
    private int taken;
    private int replans;
    private boolean cutShort;

    /** A budget of so many steps. */
    SearchBudget(int most) {
        this.most = most;
    }

    /** Takes a step; false when the search has to end. */
    boolean step() {
        if (taken == most || Thread.currentThread().isInterrupted()) {
            cutShort = true;
            return false;
        }
        taken++;
        return true;
    }

    /** Notes that the rules were run for a step. */
    void replanned() {
        replans++;
    }

    /** True when the search ended before all was tried. */
    boolean isCutShort() {
        return cutShort;
    }

    /** What was tried: surveys with one or two answers changed. */
    int taken() {
        return taken;
    }

    /** For how many of them the rules ran; the others were the same to them as one before. */
    int replans() {
        return replans;
    }
}
