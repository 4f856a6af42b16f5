package stoneprocess.core.stone;

import java.util.EnumSet;
import java.util.Set;

/** Sets of families that share a trait, for rules that read a test. */
public final class Families {
    private Families() {}

    /** Families in which acid may fizz on the solid face. */
    public static Set<Family> fizzingOnSolid() {
        return Traits.familiesWith(AcidReaction.STRONG, Traits::acid);
    }

    /** Families in which acid may fizz on scratched powder only. */
    public static Set<Family> fizzingOnPowder() {
        return Traits.familiesWith(AcidReaction.SLOW, Traits::acid);
    }

    /** Families that acid may leave alone. */
    public static Set<Family> untouchedByAcid() {
        return Traits.familiesWith(AcidReaction.NONE, Traits::acid);
    }

    /** Families that acid may etch, fast or slowly. */
    public static Set<Family> acidSensitive() {
        EnumSet<Family> families = EnumSet.copyOf(fizzingOnSolid());
        families.addAll(fizzingOnPowder());
        return families;
    }

    /** Families that a steel scriber may leave unscratched. */
    public static Set<Family> harderThanSteel() {
        return Traits.familiesWith(Hardness.HARD, Traits::hardness);
    }

    /** Families that a steel scriber may scratch. */
    public static Set<Family> softerThanSteel() {
        EnumSet<Family> families = EnumSet.copyOf(Traits.familiesWith(Hardness.MEDIUM, Traits::hardness));
        families.addAll(Traits.familiesWith(Hardness.SOFT, Traits::hardness));
        return families;
    }
}
