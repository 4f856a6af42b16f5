package stoneprocess.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * Factors against independent libraries: indriya for units built from the SI base units, and the US customary units of
 * systems-common, with its own definitions of inch, foot, pound, gallon and fluid ounce. The pound-force is not in
 * there: pound by standard gravity, 9.80665 m/s2 (3rd General Conference on Weights and Measures, 1901).
 */
class UnitValidationTest {
    private static final javax.measure.Unit<?> POUND_FORCE =
            USCustomary.POUND.multiply(9.80665).multiply(Units.METRE).divide(Units.SECOND.pow(2));

    private static final Map<Unit, javax.measure.Unit<?>> INDEPENDENT = Map.ofEntries(
            Map.entry(Unit.MILLIMETRE, Units.METRE.divide(1000)),
            Map.entry(Unit.MICROMETRE, Units.METRE.divide(1_000_000)),
            Map.entry(Unit.CENTIMETRE, Units.METRE.divide(100)),
            Map.entry(Unit.METRE, Units.METRE),
            Map.entry(Unit.KILOMETRE, Units.METRE.multiply(1000)),
            Map.entry(Unit.INCH, USCustomary.INCH),
            Map.entry(Unit.FOOT, USCustomary.FOOT),
            Map.entry(Unit.SQUARE_METRE, Units.SQUARE_METRE),
            Map.entry(Unit.SQUARE_FOOT, USCustomary.SQUARE_FOOT),
            Map.entry(Unit.KILOGRAM, Units.KILOGRAM),
            Map.entry(Unit.POUND, USCustomary.POUND),
            Map.entry(Unit.LITRE, Units.LITRE),
            Map.entry(Unit.CUBIC_METRE, Units.CUBIC_METRE),
            Map.entry(Unit.US_GALLON, USCustomary.GALLON_LIQUID),
            Map.entry(Unit.LITRE_PER_SQUARE_METRE, Units.LITRE.divide(Units.SQUARE_METRE)),
            Map.entry(Unit.US_FLUID_OUNCE_PER_SQUARE_FOOT, USCustomary.FLUID_OUNCE.divide(USCustomary.SQUARE_FOOT)),
            Map.entry(Unit.MINUTE, Units.MINUTE),
            Map.entry(Unit.HOUR, Units.HOUR),
            Map.entry(Unit.DAY, Units.DAY),
            Map.entry(Unit.WEEK, Units.WEEK),
            Map.entry(Unit.YEAR, Units.YEAR),
            Map.entry(
                    Unit.KILONEWTON_PER_SQUARE_METRE,
                    Units.NEWTON.multiply(1000).divide(Units.SQUARE_METRE)),
            Map.entry(Unit.POUND_PER_SQUARE_FOOT, POUND_FORCE.divide(USCustomary.SQUARE_FOOT)),
            Map.entry(Unit.VOLT, Units.VOLT),
            Map.entry(Unit.AMPERE, Units.AMPERE),
            Map.entry(Unit.KILOWATT, Units.WATT.multiply(1000)),
            Map.entry(Unit.PERCENT, Units.PERCENT),
            Map.entry(Unit.REVOLUTION_PER_MINUTE, AbstractUnit.ONE.divide(Units.MINUTE)),
            Map.entry(Unit.HORSEPOWER, USCustomary.HORSEPOWER),
            Map.entry(Unit.CUBIC_FOOT, USCustomary.CUBIC_FOOT),
            Map.entry(Unit.PART_PER_MILLION, AbstractUnit.ONE.divide(1_000_000)),
            Map.entry(Unit.CUBIC_METRE_PER_HOUR, Units.CUBIC_METRE.divide(Units.HOUR)),
            Map.entry(Unit.CUBIC_FOOT_PER_MINUTE, USCustomary.FOOT.pow(3).divide(Units.MINUTE)),
            Map.entry(Unit.KILOMETRE_PER_HOUR, Units.METRE.multiply(1000).divide(Units.HOUR)),
            Map.entry(Unit.MILE_PER_HOUR, USCustomary.MILE.divide(Units.HOUR)),
            Map.entry(Unit.DEGREE, Units.RADIAN.multiply(Math.PI).divide(180)),
            Map.entry(Unit.METRE_PER_MINUTE, Units.METRE.divide(Units.MINUTE)),
            Map.entry(Unit.METRE_PER_SECOND, Units.METRE_PER_SECOND),
            Map.entry(Unit.METRE_PER_HOUR, Units.METRE.divide(Units.HOUR)),
            Map.entry(Unit.FOOT_PER_MINUTE, USCustomary.FOOT.divide(Units.MINUTE)),
            Map.entry(Unit.FOOT_PER_HOUR, USCustomary.FOOT.divide(Units.HOUR)),
            Map.entry(Unit.SQUARE_METRE_PER_HOUR, Units.SQUARE_METRE.divide(Units.HOUR)),
            Map.entry(Unit.SQUARE_FOOT_PER_HOUR, USCustomary.SQUARE_FOOT.divide(Units.HOUR)),
            Map.entry(Unit.KILOWATT_HOUR, Units.WATT.multiply(1000).multiply(Units.HOUR)),
            Map.entry(Unit.DEGREE_CELSIUS, Units.CELSIUS),
            Map.entry(Unit.DEGREE_FAHRENHEIT, USCustomary.FAHRENHEIT));

    @Test
    void every_factor_agrees_with_an_independent_units_library() {
        INDEPENDENT.forEach((unit, independent) -> {
            double expected =
                    factor(independent, INDEPENDENT.get(unit.dimension().unit()));
            assertThat(unit.toKept(BigDecimal.ONE).doubleValue())
                    .as(unit.symbol())
                    .isCloseTo(expected, Offset.offset(Math.abs(expected) * 1e-12));
        });
    }

    /** National Institute of Standards and Technology, Handbook 44, appendix C: exact figures, from memory. */
    @ParameterizedTest
    @CsvSource({
        "INCH, 25.4",
        "FOOT, 304.8",
        "SQUARE_FOOT, 0.09290304",
        "POUND, 0.45359237",
        "US_GALLON, 3.785411784",
    })
    void exact_definitions_hold_to_the_last_digit(Unit unit, BigDecimal factor) {
        assertThat(unit.toKept(BigDecimal.ONE)).isEqualByComparingTo(factor);
    }

    @Test
    void only_units_without_a_physical_dimension_are_left_out() {
        assertThat(Unit.values())
                .filteredOn(unit -> !INDEPENDENT.containsKey(unit))
                .containsExactlyInAnyOrder(
                        Unit.GLOSS_UNIT,
                        Unit.COUNT,
                        Unit.DECIBEL_A,
                        Unit.PH,
                        Unit.PENDULUM_TEST_VALUE,
                        Unit.COEFFICIENT_OF_FRICTION);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static double factor(javax.measure.Unit from, javax.measure.Unit to) {
        return from.getConverterTo(to).convert(1.0);
    }
}
