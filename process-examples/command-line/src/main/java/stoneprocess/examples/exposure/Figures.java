package stoneprocess.examples.exposure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Power;
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

    /** Holds a number and its unit on one line; the sheet prints a plain space. */
    static final char UNBROKEN = '\u00A0';

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

    /** The power of an engine, which US readers know in horsepower. */
    String engine(Power power) {
        Unit unit = units == UnitSystem.METRIC ? Unit.KILOWATT : Unit.HORSEPOWER;
        return printed(power.in(unit).round(GIVEN), unit);
    }

    private String result(Quantity result, RoundingMode mode) {
        if (result instanceof TimeSpan span) {
            return time(span, mode);
        }
        Unit unit = unit(result);
        return printed(rounded(result, unit, mode), unit);
    }

    private static String time(TimeSpan span, RoundingMode mode) {
        BigDecimal minutes = span.in(Unit.MINUTE);
        if (minutes.compareTo(HOUR) < 0) {
            return printed(rounded(span, Unit.MINUTE, mode), Unit.MINUTE);
        }
        BigDecimal[] parts = minutes.setScale(0, mode).divideAndRemainder(HOUR);
        String hours = printed(parts[0], Unit.HOUR);
        return parts[1].signum() == 0 ? hours : hours + UNBROKEN + printed(parts[1], Unit.MINUTE);
    }

    /** Rounds; what keeping a value to its step may have added or taken pushes it over no digit. */
    private static BigDecimal rounded(Quantity result, Unit unit, RoundingMode mode) {
        BigDecimal halfStep =
                unit.fromKept(BigDecimal.valueOf(5, result.dimension().decimals() + 1));
        BigDecimal value = result.in(unit);
        BigDecimal lenient = switch (mode) {
            case FLOOR -> value.add(halfStep);
            case CEILING -> value.subtract(halfStep).max(BigDecimal.ZERO);
            default -> value;
        };
        int scale = Math.max(0, RESULT_DIGITS - (value.precision() - value.scale()));
        return lenient.setScale(Math.min(scale, result.dimension().decimals()), mode);
    }

    private static String printed(BigDecimal value, Unit unit) {
        BigDecimal stripped = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        String number = stripped.toPlainString();
        return switch (unit) {
            case PH -> "pH" + UNBROKEN + number;
            case COEFFICIENT_OF_FRICTION -> number;
            default -> number + UNBROKEN + unit.symbol();
        };
    }

    /** A room is thought of in cubic metres or feet, a profile in micrometres, a wheel or a reach in mm or inches. */
    private Unit unit(Quantity quantity) {
        if (quantity.dimension() == Dimension.VOLUME) {
            return units == UnitSystem.METRIC ? Unit.CUBIC_METRE : Unit.CUBIC_FOOT;
        }
        if (quantity.dimension() == Dimension.LENGTH) {
            Unit tape = units == UnitSystem.METRIC ? Unit.MILLIMETRE : Unit.INCH;
            return quantity.kept() < 1 ? Unit.MICROMETRE : tape;
        }
        return units.unitFor(quantity);
    }
}
