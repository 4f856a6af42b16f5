package stoneprocess.core.gloss;

import java.math.BigDecimal;
import java.math.RoundingMode;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Dimension;

/**
 * Difference of two gloss values; unlike a gloss it may be negative.
 *
 * @param glossUnits the difference in GU, finite, rounded half to even to the declared step of {@link Dimension#GLOSS}
 */
public record GlossChange(double glossUnits) implements Comparable<GlossChange> {
    public GlossChange {
        if (!Double.isFinite(glossUnits)) {
            throw new InvalidInputException("change", Double.toString(glossUnits), "a finite number, in GU");
        }
        glossUnits = BigDecimal.valueOf(glossUnits)
                .setScale(Dimension.GLOSS.decimals(), RoundingMode.HALF_EVEN)
                .doubleValue();
    }

    @Override
    public int compareTo(GlossChange other) {
        return Double.compare(glossUnits, other.glossUnits);
    }
}
