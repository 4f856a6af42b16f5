package stoneprocess.core.estimate;

import java.math.BigDecimal;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Share;

/**
 * What a house adds to what a job costs it, so that the sum is a price that it can send.
 *
 * @param risk how far the price goes from the likely cost towards the high one, 0 to 100 %
 * @param margin what is added to the cost with its risk, as a share of them, 0 to 500 %; none on travel
 * @param tax what is added to all, 0 to 100 %
 * @param rounding the step to which sums are rounded, halves up, 0.01 to 10000
 * @param validDays days for which the price holds, 1 to 365
 */
public record PriceTerms(Share risk, Share margin, Share tax, BigDecimal rounding, int validDays) {
    private static final BigDecimal LEAST_STEP = new BigDecimal("0.01");
    private static final BigDecimal MOST_STEP = new BigDecimal("10000");

    /**
     * Checks the limits and rounds the step as money is.
     *
     * @throws InvalidInputException for a number outside its limits
     */
    public PriceTerms {
        Refuse.nulls(PriceTerms.class, risk, margin, tax, rounding);
        Require.upTo100("terms.risk", risk);
        if (margin.percent() > 500) {
            throw new InvalidInputException("terms.margin", margin.print(), "from 0 to 500 %");
        }
        Require.upTo100("terms.tax", tax);
        if (rounding.compareTo(LEAST_STEP) < 0 || rounding.compareTo(MOST_STEP) > 0) {
            throw new InvalidInputException("terms.rounding", rounding.toString(), "from 0.01 to 10000");
        }
        rounding = Money.amount("terms.rounding", rounding);
        if (validDays < 1 || validDays > 365) {
            throw new InvalidInputException("terms.valid-days", Integer.toString(validDays), "from 1 to 365");
        }
    }
}
