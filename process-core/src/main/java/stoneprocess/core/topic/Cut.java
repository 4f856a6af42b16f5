package stoneprocess.core.topic;

import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;

/**
 * First cuts, from the most cautious to the boldest. The grit number is a label of the usual sequence; in another
 * sequence the nearest number of that sequence is meant.
 */
public enum Cut implements Term {
    /** Nothing is cut. */
    NONE(Bond.RESIN, 0),
    /** The last three grades up to the finish. */
    REFRESH(Bond.RESIN, 800),
    /** Resin 400. */
    FINE_HONE(Bond.RESIN, 400),
    /** Resin 200. */
    HONE(Bond.RESIN, 200),
    /** Resin 100. */
    COARSE_HONE(Bond.RESIN, 100),
    /** Resin 50. */
    FINE_GRIND(Bond.RESIN, 50),
    /** Metal 50. */
    GRIND(Bond.METAL, 50),
    /** Metal 30. */
    HEAVY_GRIND(Bond.METAL, 30);

    private final Bond bond;
    private final int number;

    Cut(Bond bond, int number) {
        this.bond = bond;
        this.number = number;
    }

    /** Bond of the first grade; resin, the gentlest, when nothing is cut. */
    public Bond bond() {
        return bond;
    }

    /** Nominal grit number; zero when nothing is cut. */
    public int number() {
        return number;
    }

    /** The first cut that starting with a grade amounts to. */
    public static Cut of(AbrasiveGrade grade) {
        if (grade.bond() == Bond.METAL) {
            return grade.number() < GRIND.number ? HEAVY_GRIND : GRIND;
        }
        if (grade.bond() == Bond.TRANSITION || grade.number() < COARSE_HONE.number) {
            return FINE_GRIND;
        }
        if (grade.number() < HONE.number) {
            return COARSE_HONE;
        }
        if (grade.number() < FINE_HONE.number) {
            return HONE;
        }
        return grade.number() < REFRESH.number ? FINE_HONE : REFRESH;
    }
}
