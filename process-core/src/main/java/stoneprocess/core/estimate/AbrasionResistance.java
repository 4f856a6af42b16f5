package stoneprocess.core.estimate;

import java.util.Objects;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.source.Citation;
import stoneprocess.core.stone.StoneCatalogue;

/**
 * How well a stone resists abrasion, as the index Ha of ASTM C241 and C1353: the inverse of the volume lost, so that
 * twice the Ha loses half the volume.
 *
 * @param ha the index, above 0 and up to 1000, dimensionless
 * @param source a test of this floor's stone, or the standard whose purchase minimum it is
 * @param purchaseMinimum true when it is what a standard asks of new stone, no fact about this floor
 */
public record AbrasionResistance(double ha, Citation source, boolean purchaseMinimum) {
    public AbrasionResistance {
        Refuse.nulls(AbrasionResistance.class, source);
        if (!(ha > 0 && ha <= 1000)) {
            throw new InvalidInputException("stone.ha", Double.toString(ha), "an index above 0 and up to 1000");
        }
    }

    /** Measured on this floor's stone. */
    public static AbrasionResistance measured(double ha, Citation source) {
        return new AbrasionResistance(ha, source, false);
    }

    /**
     * The least Ha that an ASTM specification accepts for new stone (C503, C568, C615, C616, C629, C1526, C1527). A
     * place to start from, never a fact about a floor that lies.
     *
     * @param stone the stone in the standard's words, for example {@code marble}
     * @param kind the standard's class, for example {@code standard}
     * @throws InvalidInputException when no specification is listed for it
     */
    public static AbrasionResistance purchaseMinimum(String stone, String kind) {
        Objects.requireNonNull(stone, "stone");
        Objects.requireNonNull(kind, "kind");
        return StoneCatalogue.standard().purchaseLimits().stream()
                .filter(limit -> stone.equals(limit.stone())
                        && kind.equals(limit.kind())
                        && limit.abrasionMinHa().isPresent())
                .findFirst()
                .map(limit -> new AbrasionResistance(limit.abrasionMinHa().getAsDouble(), limit.source(), true))
                .orElseThrow(() -> new InvalidInputException(
                        "stone", stone + ", " + kind, "a stone and class listed in purchase-limits.tsv"));
    }
}
