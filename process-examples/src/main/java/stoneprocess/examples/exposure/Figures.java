package stoneprocess.examples.exposure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.UnitSystem;

/**
 * Figures in the reader's units. Results have three digits, from 1000 up whole numbers, from an hour up whole minutes,
 * and are rounded to the side that is safe; what was given and limits keep five digits.
 */
final class Figures {
    static final String ROUNDING = "Results are rounded to the safe side.";

    /** More than any value is known to, fewer than conversion to another unit and back leaves untouched. */
    private static final MathContext CONVERTED = new MathContext(6);

    private static final MathContext GIVEN = new MathContext(5);
    private static final int RESULT_DIGITS = 3;
    private static final BigDecimal HOUR = BigDecimal.valueOf(60);

    private final UnitSystem units;

    Figures(UnitSystem units) {
        this.units = units;
    }

    /** What was given, or a limit. */
    String given(Quantity quantity) {
        if (quantity instanceof TimeSpan span) {
            return time(span, RoundingMode.HALF_EVEN);
        }
        Unit unit = unit(quantity);
        return printed(quantity.in(unit).round(GIVEN), unit);
    }

    /** A result of which less is safer to promise: a time allowed, a mass, a spare power. Rounded down. */
    String atMost(Quantity result) {
        return result(result, RoundingMode.FLOOR);
    }

    /** A result of which more is safer to expect or to provide: a dose, a gas, needed air. Rounded up. */
    String atLeast(Quantity result) {
        return result(result, RoundingMode.CEILING);
    }

    private String result(Quantity result, RoundingMode mode) {
        if (result instanceof TimeSpan span) {
            return time(span, mode);
        }
        Unit unit = unit(result);
        return printed(rounded(result.in(unit), mode), unit);
    }

    private static String time(TimeSpan span, RoundingMode mode) {
        BigDecimal minutes = span.in(Unit.MINUTE);
        if (minutes.compareTo(HOUR) < 0) {
            return printed(rounded(minutes, mode), Unit.MINUTE);
        }
        BigDecimal[] parts = minutes.setScale(0, mode).divideAndRemainder(HOUR);
        String hours = printed(parts[0], Unit.HOUR);
        return parts[1].signum() == 0 ? hours : hours + " " + printed(parts[1], Unit.MINUTE);
    }

    private static BigDecimal rounded(BigDecimal value, RoundingMode mode) {
        BigDecimal known = value.round(CONVERTED);
        int digits = Math.max(RESULT_DIGITS, known.precision() - known.scale());
        return known.round(new MathContext(digits, mode));
    }

    private static String printed(BigDecimal value, Unit unit) {
        BigDecimal stripped = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        return stripped.toPlainString() + " " + unit.symbol();
    }

    /** A room is thought of in cubic metres or feet, a profile in micrometres. */
    private Unit unit(Quantity quantity) {
        if (quantity.dimension() == Dimension.VOLUME) {
            return units == UnitSystem.METRIC ? Unit.CUBIC_METRE : Unit.CUBIC_FOOT;
        }
        if (quantity.dimension() == Dimension.LENGTH && quantity.kept() < 1) {
            return Unit.MICROMETRE;
        }
        return units.unitFor(quantity);
    }
}
