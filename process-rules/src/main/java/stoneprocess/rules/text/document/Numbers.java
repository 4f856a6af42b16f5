package stoneprocess.rules.text.document;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.UnitSystem;

/**
 * Prints numbers as a language writes them, in the reader's units. In the units of exposure, results have three digits,
 * a mass at most one decimal, and are rounded to the side that is safe; times have two, under a minute whole
 * seconds and from an hour up whole minutes; what was given and limits keep five digits.
 */
record Numbers(Language language, UnitSystem units) {
    /** Holds a number and its unit on one line; a page prints a plain space. */
    static final char UNBROKEN = '\u00A0';

    private static final MathContext GIVEN = new MathContext(5);
    private static final MathContext RATED = new MathContext(2);
    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    String print(BigDecimal number, boolean grouped) {
        String plain = number.toPlainString();
        return grouped ? localised(grouped(plain), true) : localised(plain, false);
    }

    /** A range with one unit. */
    String print(Quantity low, Quantity high) {
        String symbol = units.unitFor(high).symbol();
        String text = units.print(Range.of(low, high));
        return (localised(text.substring(0, text.length() - symbol.length()), false) + unitAlone(high)).strip();
    }

    String print(Quantity quantity, Precision precision) {
        return switch (precision) {
            case USUAL -> (localised(units.number(quantity), false) + " " + unitAlone(quantity)).strip();
            case NUMBER -> localised(units.number(quantity), false);
            case UNIT -> unitAlone(quantity);
            case EXACT ->
                localised(quantity.decimal().toPlainString(), false) + " "
                        + quantity.dimension().unit().symbol();
            case GIVEN -> given(quantity);
            case AT_MOST -> result(quantity, RoundingMode.FLOOR);
            case AT_LEAST -> result(quantity, RoundingMode.CEILING);
            case ENGINE -> engine((Power) quantity);
        };
    }

    private String unitAlone(Quantity quantity) {
        Unit unit = units.unitFor(quantity);
        return unit == Unit.COUNT ? "" : unit.symbol();
    }

    private static String grouped(String plain) {
        return plain.replaceAll("(?<=\\d)(?=(\\d{3})+$)", ",");
    }

    private String localised(String plain, boolean grouped) {
        String decimal = language.phrase("number.decimal");
        String text = decimal.equals(".") ? plain : plain.replace(".", decimal);
        return grouped ? text.replace(",", language.phrase("number.group")) : text;
    }

    private String given(Quantity quantity) {
        if (quantity instanceof TimeSpan span) {
            return time(span, RoundingMode.HALF_EVEN);
        }
        Unit unit = unit(quantity);
        return printed(quantity.in(unit).round(GIVEN), unit);
    }

    private String engine(Power power) {
        Unit unit = units == UnitSystem.METRIC ? Unit.KILOWATT : Unit.HORSEPOWER;
        return printed(power.in(unit).round(RATED), unit);
    }

    private String result(Quantity result, RoundingMode mode) {
        if (result instanceof TimeSpan span) {
            return time(span, mode);
        }
        Unit unit = unit(result);
        return printed(rounded(result, unit, mode), unit);
    }

    private String time(TimeSpan span, RoundingMode mode) {
        BigDecimal minutes = span.in(Unit.MINUTE);
        if (minutes.compareTo(SIXTY) < 0) {
            return minutes.compareTo(BigDecimal.ONE) < 0
                    ? minutes.multiply(SIXTY).setScale(0, mode).toPlainString() + UNBROKEN + "s"
                    : printed(rounded(span, Unit.MINUTE, mode), Unit.MINUTE);
        }
        BigDecimal[] parts = minutes.setScale(0, mode).divideAndRemainder(SIXTY);
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
        int digits = result instanceof TimeSpan ? 2 : 3;
        int scale = digits - (value.precision() - value.scale());
        int most = result.dimension() == Dimension.MASS ? 1 : result.dimension().decimals();
        return lenient.setScale(Math.min(scale, most), mode);
    }

    private String printed(BigDecimal value, Unit unit) {
        BigDecimal stripped = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        String number = localised(stripped.toPlainString(), false);
        return switch (unit) {
            case PH -> "pH" + UNBROKEN + number;
            case COEFFICIENT_OF_FRICTION, COUNT -> number;
            case DEGREE -> number + UNBROKEN + language.phrase("number.degrees");
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
