package stoneprocess.core.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.Set;

/** The units in which a reader wants to see values. Conversion is exact; only the last printed digit is rounded. */
public enum UnitSystem {
    METRIC,
    US;

    /** Metres a minute. */
    private static final double FASTER_THAN_ANYONE_WALKS = 600;

    /** What nobody measures more closely on a site. */
    private static final Set<Dimension> ROUGH = EnumSet.of(Dimension.MASS, Dimension.VOLUME, Dimension.AREA_RATE);

    /** The unit in which a value of this size is shown. */
    public Unit unitFor(Quantity quantity) {
        boolean metric = this == METRIC;
        return switch (quantity.dimension()) {
            case LENGTH -> {
                double millimetres = quantity.kept();
                if (metric) {
                    yield millimetres < 1000 ? Unit.MILLIMETRE : Unit.METRE;
                }
                yield millimetres < 304.8 ? Unit.INCH : Unit.FOOT;
            }
            case AREA -> metric ? Unit.SQUARE_METRE : Unit.SQUARE_FOOT;
            case MASS -> metric ? Unit.KILOGRAM : Unit.POUND;
            case VOLUME -> metric ? Unit.LITRE : Unit.US_GALLON;
            case COVERAGE -> metric ? Unit.LITRE_PER_SQUARE_METRE : Unit.US_FLUID_OUNCE_PER_SQUARE_FOOT;
            case TIME -> quantity.kept() < 120 ? Unit.MINUTE : Unit.HOUR;
            case AREA_LOAD -> metric ? Unit.KILONEWTON_PER_SQUARE_METRE : Unit.POUND_PER_SQUARE_FOOT;
            case AIRFLOW -> metric ? Unit.CUBIC_METRE_PER_HOUR : Unit.CUBIC_FOOT_PER_MINUTE;
            case SPEED -> {
                if (quantity.kept() >= FASTER_THAN_ANYONE_WALKS) {
                    yield metric ? Unit.KILOMETRE_PER_HOUR : Unit.MILE_PER_HOUR;
                }
                boolean slow = quantity.kept() < 1;
                if (metric) {
                    yield slow ? Unit.METRE_PER_HOUR : Unit.METRE_PER_MINUTE;
                }
                yield slow ? Unit.FOOT_PER_HOUR : Unit.FOOT_PER_MINUTE;
            }
            case AREA_RATE -> metric ? Unit.SQUARE_METRE_PER_HOUR : Unit.SQUARE_FOOT_PER_HOUR;
            case TEMPERATURE -> metric ? Unit.DEGREE_CELSIUS : Unit.DEGREE_FAHRENHEIT;
            case GLOSS,
                    VOLTAGE,
                    CURRENT,
                    POWER,
                    SHARE,
                    COUNT,
                    ROTATION,
                    ANGLE,
                    SOUND_LEVEL,
                    CONCENTRATION,
                    ACIDITY,
                    PENDULUM_VALUE,
                    FRICTION,
                    ENERGY -> quantity.dimension().unit();
        };
    }

    /**
     * The number alone, in {@link #unitFor}, to three significant digits, from 1000 up to the whole number; to two for
     * masses, volumes, area rates and lengths under a millimetre; without trailing zeros.
     */
    public String number(Quantity quantity) {
        return number(quantity, unitFor(quantity));
    }

    /** The number as {@link #number} prints it, and its unit. */
    public String print(Quantity quantity) {
        Unit unit = unitFor(quantity);
        return number(quantity, unit) + " " + unit.symbol();
    }

    /** A range with one unit, the upper end's; equal ends are printed once. */
    public <Q extends Quantity> String print(Range<Q> range) {
        Unit unit = unitFor(range.high());
        String low = number(range.low(), unit);
        String high = number(range.high(), unit);
        return (low.equals(high) ? low : low + "-" + high) + " " + unit.symbol();
    }

    private static String number(Quantity quantity, Unit unit) {
        BigDecimal value = quantity.in(unit);
        int digitsBeforePoint = value.precision() - value.scale();
        boolean thin = unit == Unit.MILLIMETRE && digitsBeforePoint <= 0;
        int digits = thin || ROUGH.contains(quantity.dimension()) ? 2 : 3;
        int decimals = Math.max(0, digits - Math.max(1, digitsBeforePoint));
        if (value.signum() != 0 && digitsBeforePoint <= 0) {
            decimals = digits - digitsBeforePoint;
        }
        BigDecimal rounded = value.setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
    }
}
