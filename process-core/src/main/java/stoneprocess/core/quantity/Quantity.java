package stoneprocess.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import stoneprocess.core.internal.input.Decimals;
import stoneprocess.core.problem.InvalidInputException;

/**
 * A measured value. It is kept in one unit a dimension and rounded, half to even, to the dimension's declared step, so
 * that printing and parsing give back an equal value. Values under the least of the dimension, infinite and
 * not-a-number values are refused.
 */
public sealed interface Quantity extends Comparable<Quantity>
        permits Acidity,
                Airflow,
                Angle,
                Area,
                AreaLoad,
                AreaRate,
                Concentration,
                Count,
                Coverage,
                Current,
                Energy,
                Friction,
                Gloss,
                Length,
                Mass,
                PendulumValue,
                Power,
                Rotation,
                Share,
                SoundLevel,
                Speed,
                Temperature,
                TimeSpan,
                Voltage,
                Volume {

    Dimension dimension();

    /** The value in the unit of {@link Dimension#unit()}. */
    double kept();

    /**
     * The value in another unit of the same dimension, not rounded further.
     *
     * @throws InvalidInputException for a unit of another dimension
     */
    default BigDecimal in(Unit unit) {
        requireDimension(unit, dimension());
        return unit.fromKept(decimal());
    }

    /** The kept value as a plain decimal without trailing zeros. */
    default BigDecimal decimal() {
        BigDecimal stripped = BigDecimal.valueOf(kept())
                .setScale(dimension().decimals(), RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /** The value and its kept unit, for example {@code 2.5 mm}. */
    default String print() {
        return decimal().toPlainString() + " " + dimension().unit().symbol();
    }

    /** Orders quantities of one dimension; comparing two dimensions is an error. */
    @Override
    default int compareTo(Quantity other) {
        if (other.dimension() != dimension()) {
            throw new InvalidInputException("other", other.print(), "a quantity to compare with " + print());
        }
        return Double.compare(kept(), other.kept());
    }

    /**
     * A quantity of the unit's dimension; the value is in the unit given.
     *
     * @throws InvalidInputException for a value under the least of the dimension, and for one too large to keep
     */
    static Quantity of(BigDecimal value, Unit unit) {
        return unit.dimension().of(unit.toKept(value).doubleValue());
    }

    /**
     * A quantity that somebody told: as {@link #of}, but a count is whole and is not rounded.
     *
     * @throws InvalidInputException as {@link #of}, and for a count that is not whole
     */
    static Quantity read(BigDecimal value, Unit unit) {
        if (unit == Unit.COUNT && value.stripTrailingZeros().scale() > 0) {
            throw new InvalidInputException(Dimension.COUNT.key(), value.toString(), "a whole number");
        }
        return of(value, unit);
    }

    /**
     * Reads {@code 2.5 mm}: a number, a space, a unit of any dimension.
     *
     * @throws InvalidInputException naming the field, for another form and for what is no measured value
     */
    static Quantity parse(String text, String field) {
        int space = text.indexOf(' ');
        if (space > 0) {
            String symbol = text.substring(space + 1);
            for (Unit unit : Unit.values()) {
                if (unit.symbol().equals(symbol)) {
                    return parse(text.substring(0, space), unit, field);
                }
            }
        }
        throw new InvalidInputException(field, text, "a number, a space and a unit, for example 2.5 mm");
    }

    private static Quantity parse(String number, Unit unit, String field) {
        try {
            return read(Decimals.parse(number, field), unit);
        } catch (InvalidInputException e) {
            throw new InvalidInputException(field, e.value(), e.accepted());
        }
    }

    /** Rounds to the declared step and refuses what is no measured value. Used by the records' constructors. */
    static double keep(Dimension dimension, double value) {
        if (!Double.isFinite(value) || value < dimension.least()) {
            throw new InvalidInputException(
                    dimension.key(),
                    Double.toString(value),
                    "a finite number of " + (dimension.least() == 0 ? "zero" : dimension.least()) + " or more, in "
                            + dimension.unit().symbol());
        }
        double steps = value * dimension.stepsInOne();
        double whole = StrictMath.rint(steps);
        // Up to here a product of doubles errs by less than a ten thousandth of a step; only near a half do digits
        // decide.
        if (Math.abs(steps) < 1L << 40 && Math.abs(steps - whole) < 0.499) {
            return whole / dimension.stepsInOne() + 0.0;
        }
        return BigDecimal.valueOf(value)
                .setScale(dimension.decimals(), RoundingMode.HALF_EVEN)
                .doubleValue();
    }

    /** Converts to the kept unit and checks the unit's dimension. Used by the records' factories. */
    static double convert(Dimension dimension, double value, Unit unit) {
        requireDimension(unit, dimension);
        if (!Double.isFinite(value)) {
            return value;
        }
        return unit.toKept(BigDecimal.valueOf(value)).doubleValue();
    }

    private static void requireDimension(Unit unit, Dimension dimension) {
        if (unit.dimension() != dimension) {
            throw new InvalidInputException(
                    dimension.key() + ".unit", unit.symbol(), "one of " + String.join(", ", Unit.symbols(dimension)));
        }
    }
}
