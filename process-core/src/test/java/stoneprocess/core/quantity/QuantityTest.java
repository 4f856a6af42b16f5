package stoneprocess.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.problem.InvalidInputException;

class QuantityTest {
    static Stream<DoubleFunction<Quantity>> constructors() {
        return Stream.of(
                Acidity::new,
                Airflow::new,
                Angle::new,
                Area::new,
                AreaLoad::new,
                AreaRate::new,
                Concentration::new,
                Count::new,
                Coverage::new,
                Current::new,
                Energy::new,
                Friction::new,
                Gloss::new,
                Length::new,
                Mass::new,
                PendulumValue::new,
                Power::new,
                Rotation::new,
                Share::new,
                SoundLevel::new,
                Speed::new,
                Temperature::new,
                TimeSpan::new,
                Voltage::new,
                Volume::new);
    }

    @Test
    void the_constructors_under_test_are_those_of_every_dimension() {
        assertThat(constructors().map(make -> make.apply(1).dimension()))
                .containsExactlyInAnyOrder(Dimension.values())
                .hasSize(Quantity.class.getPermittedSubclasses().length);
    }

    @ParameterizedTest
    @MethodSource("constructors")
    void every_constructor_refuses_what_is_no_measured_value(DoubleFunction<Quantity> make) {
        String dimension = make.apply(0).dimension().key();
        double least = make.apply(0).dimension().least();
        for (double value : new double[] {
            least - 0.1, Math.nextDown(least), Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
        }) {
            assertThatThrownBy(() -> make.apply(value))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageStartingWith(dimension + ": '" + value + "'")
                    .hasMessageContaining((least == 0 ? "zero" : Double.toString(least)) + " or more");
        }
    }

    @ParameterizedTest
    @MethodSource("constructors")
    void every_constructor_rounds_half_to_even_at_the_declared_step(DoubleFunction<Quantity> make) {
        int decimals = make.apply(0).dimension().decimals();
        assertThat(make.apply(step("0.5", decimals)).decimal()).isZero();
        assertThat(make.apply(step("0.50001", decimals)).kept()).isEqualTo(step("1", decimals));
        assertThat(make.apply(step("1.5", decimals)).kept()).isEqualTo(step("2", decimals));
        assertThat(make.apply(step("2.5", decimals)).kept()).isEqualTo(step("2", decimals));
        assertThat(make.apply(step("3", decimals)).kept()).isEqualTo(step("3", decimals));
    }

    private static double step(String steps, int decimals) {
        return new BigDecimal(steps).movePointLeft(decimals).doubleValue();
    }

    @Test
    void minus_zero_is_zero() {
        assertThat(new Length(-0.0)).isEqualTo(new Length(0.0));
        assertThat(new Length(-0.0).print()).isEqualTo("0 mm");
    }

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
        assertThatThrownBy(() -> new Length(1).compareTo(new Mass(1))).isInstanceOf(InvalidInputException.class);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void every_unit_gives_a_quantity_of_its_dimension(Unit unit) {
        Quantity quantity = Quantity.of(BigDecimal.TEN, unit);
        assertThat(quantity.dimension()).isEqualTo(unit.dimension());
    }

    @Property(seed = "1955")
    void printing_and_parsing_give_back_an_equal_quantity(
            @ForAll Unit unit, @ForAll @DoubleRange(min = 0, max = 1e7) double value) {
        Quantity quantity = Quantity.of(BigDecimal.valueOf(value), unit);
        assertThat(Quantity.parse(quantity.print(), "value")).isEqualTo(quantity);
    }

    @Property(seed = "1955")
    void printing_and_parsing_are_lossless_up_to_the_largest_values(
            @ForAll Unit unit, @ForAll @DoubleRange(min = 1e9, max = 1e300) double value) {
        Quantity quantity = Quantity.of(BigDecimal.valueOf(value), unit);
        assertThat(Quantity.parse(quantity.print(), "value")).isEqualTo(quantity);
    }

    @Property(seed = "1955")
    void a_value_is_kept_as_its_digits_round(
            @ForAll Dimension dimension,
            @ForAll @DoubleRange(min = 0, max = 1e13) double value,
            @ForAll @IntRange(min = 0, max = 1_000_000) int halfSteps) {
        double half =
                BigDecimal.valueOf(halfSteps * 5L, dimension.decimals() + 1).doubleValue();
        for (double each : List.of(value, value / 1e9, half, Math.nextUp(half), Math.nextDown(half + 1))) {
            assertThat(dimension.of(each).kept())
                    .isEqualTo(BigDecimal.valueOf(each)
                            .setScale(dimension.decimals(), RoundingMode.HALF_EVEN)
                            .doubleValue());
        }
    }

    @Test
    void seventeen_digits_survive_printing_and_parsing() {
        Area area = new Area(1234567890123.4568);
        assertThat(area.print()).isEqualTo("1234567890123.4568 m2");
        assertThat(Quantity.parse(area.print(), "area")).isEqualTo(area);
    }

    @Property(seed = "1955")
    void a_converted_value_comes_back_equal(@ForAll Unit unit, @ForAll @DoubleRange(min = 0, max = 1e9) double value) {
        Quantity quantity = Quantity.of(BigDecimal.valueOf(value), unit);
        for (Unit other : Unit.values()) {
            if (other.dimension() == unit.dimension()) {
                assertThat(Quantity.of(quantity.in(other), other)).isEqualTo(quantity);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "-1 mm, -1.0",
        "1e350 mm, Infinity",
        "1e999 mm, 1e999",
        "1e-2147483647 in, 1e-2147483647",
        "1e99999999999 in, 1e99999999999",
        "x mm, x",
        "NaN mm, NaN",
        "0x1p3 mm, 0x1p3",
        "\u0665 mm, \u0665",
        "1.4 count, 1.4"
    })
    void what_cannot_be_kept_is_refused_under_the_name_of_the_field(String text, String value) {
        assertThatThrownBy(() -> Quantity.parse(text, "build-up.thickness"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("build-up.thickness: '" + value + "' is not accepted; accepted: a");
    }

    @Test
    void a_number_of_many_digits_is_refused_in_one_short_line() {
        assertThatThrownBy(() -> Quantity.parse("9".repeat(300_000) + " m2", "site.area"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("site.area: '999")
                .hasMessageEndingWith("accepted: a number of at most 1000 characters");
    }

    @Test
    void quantities_are_ordered_by_value() {
        assertThat(new Length(2)).isGreaterThan(new Length(1.9999)).isEqualByComparingTo(new Length(2.00001));
    }

    @Test
    void a_quantity_in_a_unit_of_another_dimension_is_refused() {
        assertThatThrownBy(() -> new Length(2).in(Unit.KILOGRAM))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("length.unit: 'kg' is not accepted; accepted: one of mm, um, cm, m, km, in, ft");
    }

    @Test
    void a_symbol_is_found_within_its_dimension_only() {
        assertThat(Unit.parse(Dimension.AREA, "ft2", "site.area")).isEqualTo(Unit.SQUARE_FOOT);
        assertThatThrownBy(() -> Unit.parse(Dimension.AREA, "m", "site.area"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("site.area.unit: 'm' is not accepted; accepted: one of m2, ft2");
    }

    @Test
    void symbols_tell_units_apart() {
        assertThat(Unit.values()).extracting(Unit::symbol).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void the_kept_unit_of_a_dimension_has_the_factor_one(Dimension dimension) {
        assertThat(dimension.unit().toKept(BigDecimal.TEN)).isEqualByComparingTo(BigDecimal.TEN);
        assertThat(Unit.symbols(dimension)).startsWith(dimension.unit().symbol());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5", "mm", "5 furlong", "x mm", "5mm"})
    void a_text_that_is_no_quantity_is_refused(String text) {
        assertThatThrownBy(() -> Quantity.parse(text, "thickness"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("thickness: ");
    }

    @Test
    void readers_see_their_own_units_to_three_digits_and_masses_to_two() {
        assertThat(UnitSystem.METRIC.print(new Length(2.5))).isEqualTo("2.5 mm");
        assertThat(UnitSystem.US.print(new Length(2.5))).isEqualTo("0.0984 in");
        assertThat(UnitSystem.METRIC.print(new Area(180))).isEqualTo("180 m2");
        assertThat(UnitSystem.US.print(new Area(180))).isEqualTo("1938 ft2");
        assertThat(UnitSystem.US.print(Range.of(new Mass(15), new Mass(30)))).isEqualTo("33-66 lb");
        assertThat(UnitSystem.METRIC.print(Range.of(new Mass(15), new Mass(15))))
                .isEqualTo("15 kg");
        assertThat(UnitSystem.METRIC.print(new TimeSpan(1440))).isEqualTo("24 h");
    }

    /** Sizes of things, as a reader in each country writes them. */
    @ParameterizedTest
    @CsvSource({
        "999.9999 mm, 1000 mm, 3.28 ft",
        "1000 mm, 1 m, 3.28 ft",
        "304.8 mm, 305 mm, 1 ft",
        "304.7 mm, 305 mm, 12 in",
        "25.4 mm, 25.4 mm, 1 in",
        "0.0218 mm, 0.022 mm, 0.000858 in",
        "0 mm, 0 mm, 0 in",
        "45 kg, 45 kg, 99 lb",
        "3.785411784 l, 3.8 l, 1 gal",
        "0.5 l/m2, 0.5 l/m2, 1.57 fl oz/ft2",
        "4.788026 kN/m2, 4.79 kN/m2, 100 psf",
        "119.9 min, 120 min, 120 min",
        "120 min, 2 h, 2 h",
        "62.5 GU, 62.5 GU, 62.5 GU",
        "120 V, 120 V, 120 V",
        "20 A, 20 A, 20 A",
        "1.5 kW, 1.5 kW, 1.5 kW",
        "33.3333 %, 33.3 %, 33.3 %",
        "175 rpm, 175 rpm, 175 rpm",
        "8 count, 8 count, 8 count",
        "1.5 deg, 1.5 deg, 1.5 deg",
        "85 dBA, 85 dBA, 85 dBA",
        "35 ppm, 35 ppm, 35 ppm",
        "100 cfm, 170 m3/h, 100 cfm",
        "40 m/s, 144 km/h, 89.5 mph",
        "12.5 pH, 12.5 pH, 12.5 pH",
        "36 PTV, 36 PTV, 36 PTV",
        "0.42 mu, 0.42 mu, 0.42 mu",
        "0.05 m/min, 3 m/h, 9.84 ft/h",
        "0.499999 m/min, 30 m/h, 98.4 ft/h",
        "0.5 m/min, 30 m/h, 98.4 ft/h",
        "11 m/min, 11 m/min, 36.1 ft/min",
        "2.75 m2/h, 2.8 m2/h, 30 ft2/h",
        "12 kWh, 12 kWh, 12 kWh",
    })
    void each_reader_sees_the_units_of_the_country(String text, String metric, String us) {
        Quantity quantity = Quantity.parse(text, "value");
        assertThat(UnitSystem.METRIC.print(quantity)).isEqualTo(metric);
        assertThat(UnitSystem.US.print(quantity)).isEqualTo(us);
    }

    @Test
    void both_ends_of_a_range_belong_to_it_and_are_printed_in_one_unit() {
        Range<Length> range = Range.of(new Length(500), new Length(1500));
        assertThat(range.contains(new Length(500))).isTrue();
        assertThat(range.contains(new Length(1500))).isTrue();
        assertThat(range.contains(new Length(499.9999))).isFalse();
        assertThat(range.contains(new Length(1500.0001))).isFalse();
        assertThat(UnitSystem.METRIC.print(range)).isEqualTo("0.5-1.5 m");
    }

    @Test
    void a_range_whose_ends_are_the_wrong_way_round_is_refused() {
        assertThatThrownBy(() -> Range.of(new Mass(2), new Mass(1)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("range: '2 kg to 1 kg' is not accepted");
    }
}
