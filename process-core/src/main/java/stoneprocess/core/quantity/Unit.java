package stoneprocess.core.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import stoneprocess.core.problem.InvalidInputException;

/**
 * A unit with its exact factor. The first unit of each dimension is the one in which values are kept. Factors of US
 * customary units follow the exact definitions of 1959 (inch 25.4 mm, pound 0.45359237 kg, gallon 231 cubic inches).
 */
public enum Unit {
    MILLIMETRE("mm", Dimension.LENGTH, "1"),
    MICROMETRE("um", Dimension.LENGTH, "0.001"),
    CENTIMETRE("cm", Dimension.LENGTH, "10"),
    METRE("m", Dimension.LENGTH, "1000"),
    KILOMETRE("km", Dimension.LENGTH, "1000000"),
    INCH("in", Dimension.LENGTH, "25.4"),
    FOOT("ft", Dimension.LENGTH, "304.8"),

    SQUARE_METRE("m2", Dimension.AREA, "1"),
    SQUARE_FOOT("ft2", Dimension.AREA, "0.09290304"),

    KILOGRAM("kg", Dimension.MASS, "1"),
    POUND("lb", Dimension.MASS, "0.45359237"),

    LITRE("l", Dimension.VOLUME, "1"),
    CUBIC_METRE("m3", Dimension.VOLUME, "1000"),
    CUBIC_FOOT("ft3", Dimension.VOLUME, "28.316846592"),
    US_GALLON("gal", Dimension.VOLUME, "3.785411784"),

    LITRE_PER_SQUARE_METRE("l/m2", Dimension.COVERAGE, "1"),
    US_FLUID_OUNCE_PER_SQUARE_FOOT("fl oz/ft2", Dimension.COVERAGE, "0.0295735295625", "0.09290304"),

    MINUTE("min", Dimension.TIME, "1"),
    HOUR("h", Dimension.TIME, "60"),
    DAY("d", Dimension.TIME, "1440"),
    WEEK("week", Dimension.TIME, "10080"),
    /** The mean year of the Gregorian calendar, 365.2425 days. */
    YEAR("year", Dimension.TIME, "525949.2"),

    KILONEWTON_PER_SQUARE_METRE("kN/m2", Dimension.AREA_LOAD, "1"),
    POUND_PER_SQUARE_FOOT("psf", Dimension.AREA_LOAD, "0.0044482216152605", "0.09290304"),

    GLOSS_UNIT("GU", Dimension.GLOSS, "1"),
    VOLT("V", Dimension.VOLTAGE, "1"),
    AMPERE("A", Dimension.CURRENT, "1"),
    KILOWATT("kW", Dimension.POWER, "1"),
    HORSEPOWER("hp", Dimension.POWER, "0.74569987158227022"),
    PERCENT("%", Dimension.SHARE, "1"),
    REVOLUTION_PER_MINUTE("rpm", Dimension.ROTATION, "1"),
    COUNT("count", Dimension.COUNT, "1"),
    DEGREE("deg", Dimension.ANGLE, "1"),

    DECIBEL_A("dBA", Dimension.SOUND_LEVEL, "1"),
    PART_PER_MILLION("ppm", Dimension.CONCENTRATION, "1"),

    CUBIC_METRE_PER_HOUR("m3/h", Dimension.AIRFLOW, "1"),
    CUBIC_FOOT_PER_MINUTE("cfm", Dimension.AIRFLOW, "1.69901079552"),

    PH("pH", Dimension.ACIDITY, "1"),
    PENDULUM_TEST_VALUE("PTV", Dimension.PENDULUM_VALUE, "1"),
    COEFFICIENT_OF_FRICTION("mu", Dimension.FRICTION, "1"),

    METRE_PER_MINUTE("m/min", Dimension.SPEED, "1"),
    METRE_PER_SECOND("m/s", Dimension.SPEED, "60"),
    METRE_PER_HOUR("m/h", Dimension.SPEED, "1", "60"),
    FOOT_PER_MINUTE("ft/min", Dimension.SPEED, "0.3048"),
    FOOT_PER_HOUR("ft/h", Dimension.SPEED, "0.3048", "60"),
    KILOMETRE_PER_HOUR("km/h", Dimension.SPEED, "1000", "60"),
    MILE_PER_HOUR("mph", Dimension.SPEED, "26.8224"),

    SQUARE_METRE_PER_HOUR("m2/h", Dimension.AREA_RATE, "1"),
    SQUARE_FOOT_PER_HOUR("ft2/h", Dimension.AREA_RATE, "0.09290304"),

    KILOWATT_HOUR("kWh", Dimension.ENERGY, "1"),

    DEGREE_CELSIUS("C", Dimension.TEMPERATURE, "1"),
    DEGREE_FAHRENHEIT("F", Dimension.TEMPERATURE, "5", "9", "32");

    private final String symbol;
    private final Dimension dimension;
    private final BigDecimal numerator;
    private final BigDecimal denominator;
    private final BigDecimal zero;

    Unit(String symbol, Dimension dimension, String factor) {
        this(symbol, dimension, factor, "1");
    }

    Unit(String symbol, Dimension dimension, String numerator, String denominator) {
        this(symbol, dimension, numerator, denominator, "0");
    }

    /** A unit whose scale reads {@code zero} where the kept unit reads zero. */
    Unit(String symbol, Dimension dimension, String numerator, String denominator, String zero) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.numerator = new BigDecimal(numerator);
        this.denominator = new BigDecimal(denominator);
        this.zero = new BigDecimal(zero);
    }

    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Converts a value in this unit to the unit in which the dimension is kept, to 34 digits. */
    public BigDecimal toKept(BigDecimal value) {
        return value.subtract(zero).multiply(numerator).divide(denominator, MathContext.DECIMAL128);
    }

    /** Converts a value in the unit in which the dimension is kept to this unit, to 34 digits. */
    public BigDecimal fromKept(BigDecimal value) {
        return value.multiply(denominator)
                .divide(numerator, MathContext.DECIMAL128)
                .add(zero);
    }

    /** All units of a dimension, the kept unit first. */
    public static List<Unit> of(Dimension dimension) {
        return Arrays.stream(values())
                .filter(unit -> unit.dimension == dimension)
                .toList();
    }

    /** Symbols of all units of a dimension, the kept unit first. */
    public static List<String> symbols(Dimension dimension) {
        return of(dimension).stream().map(Unit::symbol).toList();
    }

    /**
     * The unit of the dimension with the given symbol.
     *
     * @throws InvalidInputException naming the field and the accepted symbols
     */
    public static Unit parse(Dimension dimension, String symbol, String field) {
        return of(dimension).stream()
                .filter(unit -> unit.symbol.equals(symbol))
                .findFirst()
                .orElseThrow(() -> new InvalidInputException(
                        field + ".unit", symbol, "one of " + String.join(", ", symbols(dimension))));
    }
}
