package stoneprocess.core.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.problem.InvalidInputException;

class MoneyTest {
    @ParameterizedTest
    @ValueSource(strings = {"1e2147483647", "1000000000000.0001", "1e400", "-1", "-1e-2147483647"})
    void an_amount_outside_the_range_is_refused_with_the_range(String amount) {
        assertThatThrownBy(() -> Money.of(amount, "coin"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("money.amount: '")
                .hasMessageEndingWith("accepted: zero to 1000000000000");
    }

    @Test
    void the_ends_of_the_range_belong_to_it_and_a_vanishing_amount_is_nothing() {
        assertThat(Money.of("1000000000000", "coin").amount()).isEqualByComparingTo(Money.LARGEST);
        assertThat(Money.of("1e-2147483647", "coin").amount()).isEqualTo(new BigDecimal("0.0000"));
        assertThat(Money.of("0.00005", "coin").amount()).isEqualTo(new BigDecimal("0.0000"));
        assertThat(Money.of("0.00015", "coin").amount()).isEqualTo(new BigDecimal("0.0002"));
    }

    @Test
    void sums_and_products_beyond_the_range_are_refused_the_same_way() {
        Money most = Money.of("1000000000000", "coin");
        assertThatThrownBy(() -> most.plus(Money.of("1", "coin")))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("1000000000001.0000");
        assertThatThrownBy(() -> most.times(1e300))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("money.amount: ");
        assertThatThrownBy(() -> most.times(Double.POSITIVE_INFINITY))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("money.factor: 'Infinity' is not accepted; accepted: a finite number");
    }
}
