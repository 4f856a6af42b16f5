package stoneprocess.core.estimate;

import stoneprocess.core.term.Term;

/** What a line of hours rests on. */
public enum Basis implements Term {
    /** Common practice, by the assumptions named. */
    DEFAULT,
    /** The crew's own timing replaced the default. */
    CREW_TIMING,
    /** Given with the job. */
    GIVEN
}
