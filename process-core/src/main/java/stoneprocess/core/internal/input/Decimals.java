package stoneprocess.core.internal.input;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import stoneprocess.core.problem.InvalidInputException;

/** Reads decimals from text, of a size that can be reckoned with; JSON, the command line and the price list share it. */
public final class Decimals {
    /** The most characters of a number. */
    public static final int LONGEST = 1_000;

    /** Beyond the decimal exponent of any double. */
    private static final int LARGEST_EXPONENT = 400;

    private static final Pattern DECIMAL = Pattern.compile("[+-]?([0-9]++(\\.[0-9]*+)?|\\.[0-9]++)([eE][+-]?[0-9]++)?");

    private Decimals() {}

    /**
     * A decimal such as {@code 2.5} or {@code 1e-3}, in digits of ASCII.
     *
     * @throws InvalidInputException naming the field, for what is no number, for more than {@value #LONGEST} characters
     *     and for an exponent beyond 400
     */
    public static BigDecimal parse(String text, String field) {
        if (text.length() > LONGEST || !DECIMAL.matcher(text).matches()) {
            throw new InvalidInputException(field, text, "a number of at most " + LONGEST + " characters");
        }
        try {
            BigDecimal number = new BigDecimal(text);
            if (Math.abs((long) number.precision() - number.scale()) <= LARGEST_EXPONENT) {
                return number;
            }
        } catch (NumberFormatException e) {
            // The exponent alone is beyond what a decimal can hold: refused as any other that is too large.
        }
        throw new InvalidInputException(
                field, text, "a number with an exponent from -" + LARGEST_EXPONENT + " to " + LARGEST_EXPONENT);
    }
}
