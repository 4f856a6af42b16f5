package stoneprocess.core.tool;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.term.Term;

/**
 * A grade by its name; which grain it has tells the sequence that it belongs to.
 *
 * @param bond what holds the diamonds
 * @param number the grit number, 1 to 30000; a higher number is finer
 */
public record Grit(Bond bond, int number) {
    private static final int MOST = 30_000;

    public Grit {
        Refuse.nulls(Grit.class, bond);
        requireNumber(number);
    }

    static void requireNumber(int number) {
        if (number < 1 || number > MOST) {
            throw new InvalidInputException(
                    "grade.number", Integer.toString(number), "a grit number from 1 to " + MOST);
        }
    }

    /** Stable key, for example {@code resin-800}. */
    public String key() {
        return bond.key() + "-" + number;
    }

    /**
     * The grade with the given key.
     *
     * @throws InvalidInputException naming the field
     */
    public static Grit parse(String key, String field) {
        int dash = key.lastIndexOf('-');
        for (Bond bond : Bond.values()) {
            if (dash > 0
                    && key.substring(0, dash).equals(bond.key())
                    && key.substring(dash + 1).matches("[1-9]\\d{0,4}")) {
                int number = Integer.parseInt(key.substring(dash + 1));
                if (number <= MOST) {
                    return new Grit(bond, number);
                }
            }
        }
        throw new InvalidInputException(
                field,
                key,
                "one of " + String.join(", ", Term.keys(List.of(Bond.values())))
                        + ", a hyphen and a grit number from 1 to " + MOST);
    }
}
