package stoneprocess.core.gloss;

import stoneprocess.core.term.Term;

/** What stands against accepting a floor. */
public enum AcceptanceFinding implements Term {
    /** The mean is too far under the test area's. */
    MEAN_TOO_LOW(AcceptanceVerdict.REFUSED),

    /** A spot is too far under the floor's mean. */
    SPOT_TOO_LOW(AcceptanceVerdict.REFUSED),

    /** The edges are too far under the centre. */
    EDGES_TOO_LOW(AcceptanceVerdict.REFUSED),

    /** No usable reading of the test area. */
    TEST_AREA_NOT_READ(AcceptanceVerdict.INCOMPLETE),

    /** No usable reading of the centre. */
    CENTRE_NOT_READ(AcceptanceVerdict.INCOMPLETE),

    /** No usable reading of an edge. */
    EDGES_NOT_READ(AcceptanceVerdict.INCOMPLETE);

    private final AcceptanceVerdict verdict;

    AcceptanceFinding(AcceptanceVerdict verdict) {
        this.verdict = verdict;
    }

    AcceptanceVerdict verdict() {
        return verdict;
    }
}
