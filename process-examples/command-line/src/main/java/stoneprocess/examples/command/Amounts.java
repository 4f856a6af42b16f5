package stoneprocess.examples.command;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;

/** Amounts and ranges of a wanted dimension, as the command line has them. */
final class Amounts {
    private Amounts() {}

    /**
     * Reads {@code 3 h} or {@code 3-4 h}.
     *
     * @throws InvalidInputException for another form or another dimension
     */
    static <Q extends Quantity> Range<Q> range(String text, String field, Class<Q> type, String example) {
        int space = text.indexOf(' ');
        int hyphen = text.indexOf('-');
        if (hyphen > 0 && hyphen < space) {
            Q low = quantity(text.substring(0, hyphen) + text.substring(space), field, type, example);
            Q high = quantity(text.substring(hyphen + 1), field, type, example);
            if (low.compareTo(high) > 0) {
                throw new InvalidInputException(field, text, "a lower figure first, for example " + example);
            }
            return Range.of(low, high);
        }
        Q both = quantity(text, field, type, example);
        return Range.of(both, both);
    }

    /**
     * Reads {@code 48 m}.
     *
     * @throws InvalidInputException for another form or another dimension
     */
    static <Q extends Quantity> Q quantity(String text, String field, Class<Q> type, String example) {
        Quantity quantity = Quantity.parse(text, field);
        if (!type.isInstance(quantity)) {
            throw new InvalidInputException(field, text, "a value such as " + example);
        }
        return type.cast(quantity);
    }

    /**
     * Reads {@code 2026-12-18}.
     *
     * @throws InvalidInputException for another form
     */
    static LocalDate date(String text, String field, String examples) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new InvalidInputException(field, text, examples);
        }
    }
}
