package stoneprocess.core.estimate;

import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;

/** What cuts or polishes in a step: a bond, under the bond's own key, or powder. */
public enum StepKind implements Term {
    METAL,
    TRANSITION,
    RESIN,
    /** Polishing powder under a plain pad. */
    POWDER;

    static StepKind of(Bond bond) {
        return Term.parse(StepKind.class, bond.key(), "bond");
    }
}
