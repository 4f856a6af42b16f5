package stoneprocess.core.survey;

import stoneprocess.core.parameter.NamedScale;
import stoneprocess.core.term.Term;

/** Classes of finish, from matt to mirror-like. */
public enum Finish implements Term {
    /** Matt to low sheen. */
    HONE,

    /** Satin. */
    SATIN,

    /** Semi-gloss. */
    SEMI_GLOSS,

    /** Polish. */
    POLISH,

    /** High gloss. */
    HIGH_GLOSS;

    /** Finishes by the gloss at 60 degrees at which each begins. */
    public static final NamedScale<Finish> SCALE = new NamedScale<>("finish", Finish.class);
}
