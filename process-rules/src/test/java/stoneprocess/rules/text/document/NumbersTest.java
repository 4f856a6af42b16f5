package stoneprocess.rules.text.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.UnitSystem;

class NumbersTest {
    @ParameterizedTest
    @CsvSource({
        "112.5 %, 112 %, 113 %",
        "100.01 %, 100 %, 101 %",
        "100 %, 100 %, 100 %",
        "0 %, 0 %, 0 %",
        "0.0001 %, 0.0001 %, 0.0001 %",
        "4970.3 m3/h, 4970 m3/h, 4980 m3/h",
        "0.012345 mu, 0.0123, 0.0124",
        "0.468 min, 28 s, 29 s",
        "47.62 min, 47 min, 48 min",
        "59.99 min, 59 min, 60 min",
        "151.2 min, 2 h 31 min, 2 h 32 min",
        "240 min, 4 h, 4 h",
        "125 cfm, 212 m3/h, 213 m3/h"
    })
    void results_are_rounded_to_the_side_that_is_safe(String result, String atMost, String atLeast) {
        Numbers numbers = new Numbers(Language.english(), UnitSystem.METRIC);
        Quantity quantity = Quantity.parse(result, "result");
        assertThat(plain(numbers.print(quantity, Precision.AT_MOST))).isEqualTo(atMost);
        assertThat(plain(numbers.print(quantity, Precision.AT_LEAST))).isEqualTo(atLeast);
    }

    /** A value that came in US units goes out as it came: keeping it in metric must not push it over a digit. */
    @ParameterizedTest
    @CsvSource({"125 cfm", "5 in", "233 ft3", "112 cfm", "51 lb", "175 cfm", "1 lb"})
    void conversion_there_and_back_changes_no_digit(String given) {
        Numbers numbers = new Numbers(Language.english(), UnitSystem.US);
        Quantity quantity = Quantity.parse(given, "given");
        assertThat(plain(numbers.print(quantity, Precision.GIVEN))).isEqualTo(given);
        assertThat(plain(numbers.print(quantity, Precision.AT_MOST))).isEqualTo(given);
        assertThat(plain(numbers.print(quantity, Precision.AT_LEAST))).isEqualTo(given);
    }

    @ParameterizedTest
    @CsvSource({
        "12.49 pH, pH 12.49",
        "98.99 %, 98.99 %",
        "66 m3, 66 m3",
        "15 um, 15 um",
        "0.42 mu, 0.42",
        "90 min, 1 h 30 min"
    })
    void what_was_given_keeps_its_digits(String given, String printed) {
        assertThat(plain(new Numbers(Language.english(), UnitSystem.METRIC)
                        .print(Quantity.parse(given, "given"), Precision.GIVEN)))
                .isEqualTo(printed);
    }

    private static String plain(String figure) {
        return figure.replace(Numbers.UNBROKEN, ' ');
    }
}
