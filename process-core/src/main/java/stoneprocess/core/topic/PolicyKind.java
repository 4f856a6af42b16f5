package stoneprocess.core.topic;

import stoneprocess.core.term.Term;

/** How the contributions to a topic become one decision. */
public enum PolicyKind implements Term {
    /** One value among those that all needs allow and no veto excludes: the boldest that a wish asks for, else the most cautious. */
    ONE,

    /** Every value asked for stands, unless vetoed. */
    ALL,

    /** The value asked for that comes first in the domain; the last value when nothing is asked for. */
    PRECEDENCE,

    /** Every value that all needs allow and no veto excludes. */
    REMAINS,

    /** Every value that is suggested and not vetoed, those suggested oftener and ranked higher first. */
    RANKED,

    /** The grit path from the first cut to the last grit over the grits in use. */
    PATH,

    /** One value for each step, changed as seldom as possible over the track. */
    FEWEST_CHANGES,

    /** A formula over closed decisions, parameters and the survey. */
    COMPUTED;

    /** Whether several values may stand side by side. */
    public boolean isPlural() {
        return this == ALL || this == REMAINS || this == RANKED || this == PATH;
    }

    /** Whether one value of an ordered domain is chosen, so that a demand may reach from a value on or up to one. */
    public boolean isOrdered() {
        return this == ONE;
    }

    /** Whether a demand leaves only its values standing, in place of adding them. */
    public boolean isNarrowing() {
        return this == REMAINS || this == FEWEST_CHANGES;
    }
}
