package stoneprocess.core.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;

/**
 * An amount in a currency that is no more than a label; amounts are never converted.
 *
 * @param amount from zero to {@link #LARGEST}, rounded half to even to 0.0001; a sum or product beyond it is refused
 * @param currency the label, not blank
 */
public record Money(BigDecimal amount, String currency) implements Comparable<Money> {
    /** The largest amount, 1000000000000. */
    public static final BigDecimal LARGEST = BigDecimal.valueOf(1_000_000_000_000L);

    private static final int DECIMALS = 4;
    private static final BigDecimal NEGLIGIBLE = new BigDecimal("1e-10");

    /**
     * Checks the range.
     *
     * @throws InvalidInputException for an amount outside it and for a blank currency
     */
    public Money {
        Refuse.nulls(Money.class, amount, currency);
        Require.text("money.currency", currency);
        amount = amount("money.amount", amount);
    }

    /** An amount in the range of money, rounded as money is. */
    static BigDecimal amount(String field, BigDecimal amount) {
        if (amount.signum() < 0 || amount.compareTo(LARGEST) > 0) {
            throw new InvalidInputException(field, amount.toString(), "zero to " + LARGEST.toPlainString());
        }
        // An amount with a vast exponent cannot be brought to four decimals.
        return (amount.compareTo(NEGLIGIBLE) < 0 ? BigDecimal.ZERO : amount).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    }

    /**
     * An amount such as {@code 42.50}.
     *
     * @throws InvalidInputException for what is no number and for an amount outside the range
     */
    public static Money of(String amount, String currency) {
        try {
            return new Money(new BigDecimal(Objects.requireNonNull(amount, "amount")), currency);
        } catch (NumberFormatException e) {
            throw new InvalidInputException("money.amount", amount, "a number");
        }
    }

    static Money none(String currency) {
        return new Money(BigDecimal.ZERO, currency);
    }

    Money times(double factor) {
        if (!Double.isFinite(factor)) {
            throw new InvalidInputException("money.factor", Double.toString(factor), "a finite number");
        }
        return new Money(amount.multiply(BigDecimal.valueOf(factor)), currency);
    }

    Money plus(Money other) {
        requireSame(other);
        return new Money(amount.add(other.amount), currency);
    }

    /** How far two amounts lie apart. */
    Money apart(Money other) {
        requireSame(other);
        return new Money(amount.subtract(other.amount).abs(), currency);
    }

    /**
     * Orders amounts of one currency.
     *
     * @throws InvalidInputException for an amount in another currency
     */
    @Override
    public int compareTo(Money other) {
        requireSame(other);
        return amount.compareTo(other.amount);
    }

    private void requireSame(Money other) {
        if (!currency.equals(other.currency)) {
            throw new InvalidInputException("money.currency", other.currency, "the same currency, " + currency);
        }
    }
}
