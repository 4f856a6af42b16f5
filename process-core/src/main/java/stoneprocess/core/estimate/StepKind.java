package stoneprocess.core.estimate;

import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;

/** What cuts or polishes in a step: a bond, under the bond's own key, or powder. */
public enum StepKind implements Term {
    METAL,
    TRANSITION,
    RESIN,
    /** Polishing powder under a plain pad. */
    POWDER;

    /** The kind of a step that is cut with a bond. */
    public static StepKind of(Bond bond) {
        return Term.parse(StepKind.class, bond.key(), "bond");
    }

    /**
     * How fast a machine is walked: {@code estimate.walk.<kind>}, slowed by the share of it at which the stone is walked.
     * Powder has none, it goes by the area.
     */
    public Range<Speed> walked(CuttingClass stone, Parameters parameters) {
        double share = parameters.part(stone.walkParameter());
        Range<Speed> usual = parameters.range(walkParameter(), Speed.class);
        return Range.of(
                new Speed(share * usual.low().metresPerMinute()),
                new Speed(share * usual.high().metresPerMinute()));
    }

    String walkParameter() {
        return "estimate.walk." + key();
    }
}
