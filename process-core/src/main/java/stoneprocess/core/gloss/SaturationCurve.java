package stoneprocess.core.gloss;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;

/**
 * Gloss against passes of one grit: G(p) = limit - (limit - start) exp(-p / tau). Measured on ceramic tile against
 * polishing time (Matsunaga, Salati and Sousa) for homogeneous starts; on stone a working assumption.
 *
 * @param start gloss before the first pass
 * @param limit gloss after endless passes of this grit; may lie under the start when the grit is coarse
 * @param tau passes after which 63 % of the way is done, over 0, finite
 */
public record SaturationCurve(Gloss start, Gloss limit, double tau) {
    public SaturationCurve {
        Refuse.nulls(SaturationCurve.class, start, limit);
        if (!(tau > 0 && Double.isFinite(tau))) {
            throw new InvalidInputException("tau", Double.toString(tau), "a finite number of passes over 0");
        }
    }

    /**
     * Gloss after some passes, between start and limit.
     *
     * @param passes 0 or more, need not be whole; negative and not-a-number values are refused
     */
    public Gloss after(double passes) {
        if (!(passes >= 0)) {
            throw new InvalidInputException("passes", Double.toString(passes), "zero or more passes");
        }
        return new Gloss(level(start.gloss(), limit.gloss(), StrictMath.exp(-passes / tau)));
    }

    /**
     * Passes until a gloss is read: tau ln((limit - start) / (limit - gloss)), the inverse of {@link #after}.
     *
     * @param gloss from the start up to, but not including, the limit; anything else is refused
     */
    public double passesTo(Gloss gloss) {
        double way = limit.gloss() - start.gloss();
        double left = limit.gloss() - gloss.gloss();
        boolean between = way > 0 ? left > 0 && left <= way : left < 0 && left >= way;
        if (!between) {
            throw new InvalidInputException(
                    "gloss", gloss.print(), "from " + start.print() + " to short of " + limit.print());
        }
        return tau * StrictMath.log(way / left);
    }

    static double level(double start, double limit, double remaining) {
        return limit - (limit - start) * remaining;
    }
}
