package stoneprocess.core.topic;

import java.util.Comparator;
import java.util.stream.Stream;
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
    /** The last three grits up to the finish. */
    REFRESH(Bond.RESIN, 800),
    /** Resin 400. */
    FINE_HONE(Bond.RESIN, 400),
    /** Resin 200. */
    HONE(Bond.RESIN, 200),
    /** Resin 100. */
    COARSE_HONE(Bond.RESIN, 100),
    /** Resin 50. */
    FINE_GRIND(Bond.RESIN, 50),
    /** Metal 100. */
    LIGHT_GRIND(Bond.METAL, 100),
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

    /** Bond of the first grit; resin, the gentlest, when nothing is cut. */
    public Bond bond() {
        return bond;
    }

    /** Nominal grit number; zero when nothing is cut. */
    public int number() {
        return number;
    }

    /**
     * The first cut that starting with a grit amounts to: the finest of its bond whose number is no finer than the
     * grit. A bond that no first cut names cuts as deep as the coarsest resin.
     */
    public static Cut of(AbrasiveGrade grade) {
        Cut boldest = grade.bond() == Bond.METAL ? HEAVY_GRIND : FINE_GRIND;
        return Stream.of(values())
                .filter(cut -> cut != NONE && cut.bond == grade.bond() && cut.number <= grade.number())
                .max(Comparator.comparingInt(Cut::number))
                .orElse(boldest);
    }
}
