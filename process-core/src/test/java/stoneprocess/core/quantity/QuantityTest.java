package stoneprocess.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.problem.InvalidInputException;

class QuantityTest {
    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void a_length_that_is_no_measured_value_is_refused(double value) {
        assertThatThrownBy(() -> new Length(value))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("length")
                .hasMessageContaining("zero or more");
        assertThatThrownBy(() -> Length.of(value, Unit.INCH)).isInstanceOf(InvalidInputException.class);
    }

    @Test
    void a_unit_of_another_dimension_is_refused_and_the_accepted_ones_are_named() {
        assertThatThrownBy(() -> Area.of(3, Unit.METRE))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("area.unit: 'm' is not accepted; accepted: one of m2, ft2");
    }

    @Test
    void an_inch_is_25_4_millimetres_exactly() {
        assertThat(Length.of(1, Unit.INCH)).isEqualTo(new Length(25.4));
        assertThat(Length.of(0.1, Unit.INCH)).isEqualTo(new Length(2.54));
    }

    @Test
    void values_are_rounded_half_even_to_the_declared_step() {
        assertThat(new Length(1.00005)).isEqualTo(new Length(1.0));
        assertThat(new Length(1.00015)).isEqualTo(new Length(1.0002));
    }

    @Test
    void values_of_two_dimensions_are_not_compared() {
        assertThatThrownBy(() -> new Length(1).compareTo(new Mass(1))).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void every_unit_gives_a_quantity_of_its_dimension(Unit unit) {
        Quantity quantity = Quantity.of(BigDecimal.TEN, unit);
        assertThat(quantity.dimension()).isEqualTo(unit.dimension());
    }

    @Property
    void printing_and_parsing_give_back_an_equal_quantity(
            @ForAll Unit unit, @ForAll @DoubleRange(min = 0, max = 1e7) double value) {
        Quantity quantity = Quantity.of(BigDecimal.valueOf(value), unit);
        assertThat(Quantity.parse(quantity.print(), "value")).isEqualTo(quantity);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5", "mm", "5 furlong", "x mm", "5mm"})
    void a_text_that_is_no_quantity_is_refused(String text) {
        assertThatThrownBy(() -> Quantity.parse(text, "thickness"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("thickness: ");
    }

    @Test
    void readers_see_their_own_units_to_three_digits() {
        assertThat(UnitSystem.METRIC.print(new Length(2.5))).isEqualTo("2.5 mm");
        assertThat(UnitSystem.US.print(new Length(2.5))).isEqualTo("0.0984 in");
        assertThat(UnitSystem.METRIC.print(new Area(180))).isEqualTo("180 m2");
        assertThat(UnitSystem.US.print(new Area(180))).isEqualTo("1938 ft2");
        assertThat(UnitSystem.US.print(Range.of(new Mass(15), new Mass(30)))).isEqualTo("33.1-66.1 lb");
        assertThat(UnitSystem.METRIC.print(Range.of(new Mass(15), new Mass(15))))
                .isEqualTo("15 kg");
        assertThat(UnitSystem.METRIC.print(new TimeSpan(1440))).isEqualTo("24 h");
    }

    @Test
    void a_range_whose_ends_are_the_wrong_way_round_is_refused() {
        assertThatThrownBy(() -> Range.of(new Mass(2), new Mass(1))).isInstanceOf(InvalidInputException.class);
    }
}
