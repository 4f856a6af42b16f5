package stoneprocess.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * Factors against the units library indriya, which builds its units from the SI base units. The US customary units are
 * built there from the exact international definitions of 1959: foot 0.3048 m, pound 0.45359237 kg, gallon 231 cubic
 * inches, fluid ounce 1/128 gallon, standard gravity 9.80665 m/s2.
 */
class UnitValidationTest {
    private static final javax.measure.Unit<?> INCH =
            Units.METRE.multiply(0.3048).divide(12);
    private static final javax.measure.Unit<?> FOOT = Units.METRE.multiply(0.3048);
    private static final javax.measure.Unit<?> SQUARE_FOOT = FOOT.pow(2);
    private static final javax.measure.Unit<?> POUND = Units.KILOGRAM.multiply(0.45359237);
    private static final javax.measure.Unit<?> GALLON = INCH.pow(3).multiply(231);
    private static final javax.measure.Unit<?> MILLIMETRE = Units.METRE.divide(1000);
    private static final javax.measure.Unit<?> POUND_FORCE =
            POUND.multiply(9.80665).multiply(Units.METRE).divide(Units.SECOND.pow(2));

    private static final Map<Unit, javax.measure.Unit<?>> INDEPENDENT = Map.ofEntries(
            Map.entry(Unit.MILLIMETRE, MILLIMETRE),
            Map.entry(Unit.MICROMETRE, Units.METRE.divide(1_000_000)),
            Map.entry(Unit.CENTIMETRE, Units.METRE.divide(100)),
            Map.entry(Unit.METRE, Units.METRE),
            Map.entry(Unit.INCH, INCH),
            Map.entry(Unit.FOOT, FOOT),
            Map.entry(Unit.SQUARE_METRE, Units.SQUARE_METRE),
            Map.entry(Unit.SQUARE_FOOT, SQUARE_FOOT),
            Map.entry(Unit.KILOGRAM, Units.KILOGRAM),
            Map.entry(Unit.POUND, POUND),
            Map.entry(Unit.LITRE, Units.LITRE),
            Map.entry(Unit.CUBIC_METRE, Units.CUBIC_METRE),
            Map.entry(Unit.US_GALLON, GALLON),
            Map.entry(Unit.LITRE_PER_SQUARE_METRE, Units.LITRE.divide(Units.SQUARE_METRE)),
            Map.entry(Unit.US_FLUID_OUNCE_PER_SQUARE_FOOT, GALLON.divide(128).divide(SQUARE_FOOT)),
            Map.entry(Unit.MINUTE, Units.MINUTE),
            Map.entry(Unit.HOUR, Units.HOUR),
            Map.entry(Unit.DAY, Units.DAY),
            Map.entry(
                    Unit.KILONEWTON_PER_SQUARE_METRE,
                    Units.NEWTON.multiply(1000).divide(Units.SQUARE_METRE)),
            Map.entry(Unit.POUND_PER_SQUARE_FOOT, POUND_FORCE.divide(SQUARE_FOOT)),
            Map.entry(Unit.VOLT, Units.VOLT),
            Map.entry(Unit.AMPERE, Units.AMPERE),
            Map.entry(Unit.KILOWATT, Units.WATT.multiply(1000)),
            Map.entry(Unit.PERCENT, Units.PERCENT),
            Map.entry(Unit.REVOLUTION_PER_MINUTE, AbstractUnit.ONE.divide(Units.MINUTE)),
            Map.entry(Unit.DEGREE, Units.RADIAN.multiply(Math.PI).divide(180)));

    @Test
    void every_factor_agrees_with_an_independent_units_library() {
        INDEPENDENT.forEach((unit, independent) -> {
            double expected =
                    factor(independent, INDEPENDENT.get(unit.dimension().unit()));
            assertThat(unit.toKept(BigDecimal.ONE).doubleValue())
                    .as(unit.symbol())
                    .isCloseTo(expected, Offset.offset(expected * 1e-12));
        });
    }

    @Test
    void only_units_without_a_physical_dimension_are_left_out() {
        assertThat(Unit.values())
                .filteredOn(unit -> !INDEPENDENT.containsKey(unit))
                .containsExactlyInAnyOrder(Unit.GLOSS_UNIT, Unit.COUNT);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static double factor(javax.measure.Unit from, javax.measure.Unit to) {
        return from.getConverterTo(to).convert(1.0);
    }
}
