package stoneprocess.rules.text.document;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stoneprocess.core.problem.InvalidInputException;

/**
 * Which form of a word goes with a number, as a bundle's {@code language.plurals} says: a condition for each form,
 * {@code |} between; the first that holds chooses. A condition is empty, or tests with commas between, all of which must
 * hold: {@code =1}, {@code %10=2-4} or {@code %100!=12-14}.
 */
record Plurals(List<List<Plurals.Test>> forms) {
    private static final Pattern TEST = Pattern.compile("(?:%(\\d+))?(!?)=(\\d+)(?:-(\\d+))?");

    record Test(long modulus, boolean outside, long low, long high) {
        boolean holds(long number) {
            long rest = modulus == 0 ? number : number % modulus;
            return (rest >= low && rest <= high) != outside;
        }
    }

    static Plurals of(String conditions) {
        return new Plurals(Stream.of(conditions.split("\\|", -1))
                .map(condition -> Stream.of(condition.split(","))
                        .filter(test -> !test.isBlank())
                        .map(Plurals::test)
                        .toList())
                .toList());
    }

    private static Test test(String text) {
        Matcher matcher = TEST.matcher(text.strip());
        if (!matcher.matches()) {
            throw new InvalidInputException(
                    "language.plurals", text, "=1, %10=2-4 and %100!=12-14, with commas and | between");
        }
        long low = Long.parseLong(matcher.group(3));
        return new Test(
                matcher.group(1) == null ? 0 : Long.parseLong(matcher.group(1)),
                !matcher.group(2).isEmpty(),
                low,
                matcher.group(4) == null ? low : Long.parseLong(matcher.group(4)));
    }

    /** The place of the form that goes with a number. */
    int form(long number) {
        for (int i = 0; i < forms.size(); i++) {
            if (forms.get(i).stream().allMatch(test -> test.holds(Math.abs(number)))) {
                return i;
            }
        }
        return forms.size() - 1;
    }
}
