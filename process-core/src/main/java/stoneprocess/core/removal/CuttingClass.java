package stoneprocess.core.removal;

import stoneprocess.core.stone.Hardness;
import stoneprocess.core.term.Term;

/** How a stone gives way to diamonds. */
public enum CuttingClass implements Term {
    SOFT,
    MEDIUM,
    HARD,
    /** Hard grains in a binder that lets them go. */
    WEAK_BINDER;

    /** The class of a hardness, where no binder gives way first. */
    public static CuttingClass of(Hardness hardness) {
        return Term.parse(CuttingClass.class, hardness.key(), "hardness");
    }

    /** Name of the parameter that tells how fast it is cut, relative to stone of middling hardness. */
    public String rateParameter() {
        return "cut-rate." + key();
    }

    /** Name of the parameter that tells how fast a machine is walked over it, as a share of the usual speed. */
    public String walkParameter() {
        return "walk-share." + key();
    }

    /** Name of the parameter that tells how deep a grade scratches it, as a share of the grain. */
    public String reachParameter() {
        return "scratch-reach." + key();
    }
}
