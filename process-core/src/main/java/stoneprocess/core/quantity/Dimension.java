package stoneprocess.core.quantity;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.function.DoubleFunction;
import stoneprocess.core.term.Term;

/** What is measured. Each dimension is kept in one unit and rounded to one declared decimal step. */
public enum Dimension implements Term {
    /** Kept in millimetres to 0.0001 mm, so that a grain size of 0.1 micrometre survives. */
    LENGTH(Length::new, 4),
    /** Kept in square metres to 0.0001 m2. */
    AREA(Area::new, 4),
    /** Kept in kilograms to 0.0001 kg. */
    MASS(Mass::new, 4),
    /** Kept in litres to 0.0001 l. */
    VOLUME(Volume::new, 4),
    /** Liquid over a surface, kept in litres a square metre to 0.000001 l/m2. */
    COVERAGE(Coverage::new, 6),
    /** Kept in minutes to 0.0001 min. */
    TIME(TimeSpan::new, 4),
    /** Weight that a floor carries, kept in kilonewtons a square metre to 0.000001 kN/m2. */
    AREA_LOAD(AreaLoad::new, 6),
    /** Specular gloss in gloss units of ISO 2813, to 0.0001 GU. */
    GLOSS(Gloss::new, 4),
    /** Kept in volts to 0.0001 V. */
    VOLTAGE(Voltage::new, 4),
    /** Kept in amperes to 0.0001 A. */
    CURRENT(Current::new, 4),
    /** Electric power, kept in kilowatts to 0.0001 kW. */
    POWER(Power::new, 4),
    /** A part of a whole, kept in percent to 0.0001 %. */
    SHARE(Share::new, 4),
    /** Kept in revolutions a minute to 0.0001 rpm. */
    ROTATION(Rotation::new, 4),
    /** A number of things or a grit number, whole. */
    COUNT(Count::new, 0),
    /** Plane angle, kept in degrees to 0.0001 degree. */
    ANGLE(Angle::new, 4),
    /** A-weighted sound level, kept in decibels to 0.0001 dB. */
    SOUND_LEVEL(SoundLevel::new, 4),
    /** Gas in air by volume, kept in parts per million to 0.0001 ppm. */
    CONCENTRATION(Concentration::new, 4),
    /** Air or gas in a time, kept in cubic metres an hour to 0.0001 m3/h. */
    AIRFLOW(Airflow::new, 4),
    /** Acidity as pH, to 0.0001. */
    ACIDITY(Acidity::new, 4),
    /** Pendulum test value, to 0.0001. */
    PENDULUM_VALUE(PendulumValue::new, 4),
    /** Coefficient of friction, to 0.000001. */
    FRICTION(Friction::new, 6),
    /** Walking and sliding speed, kept in metres a minute to 0.000001 m/min. */
    SPEED(Speed::new, 6),
    /** Area done in a time, kept in square metres an hour to 0.000001 m2/h. */
    AREA_RATE(AreaRate::new, 6),
    /** Electric energy, kept in kilowatt hours to 0.0001 kWh. */
    ENERGY(Energy::new, 4),
    /** Kept in degrees Celsius to 0.0001 C; the only dimension with values below zero, down to absolute zero. */
    TEMPERATURE(Temperature::new, 4);

    private final DoubleFunction<Quantity> quantity;
    private final int decimals;
    private final double stepsInOne;

    Dimension(DoubleFunction<Quantity> quantity, int decimals) {
        this.quantity = quantity;
        this.decimals = decimals;
        this.stepsInOne = BigDecimal.ONE.scaleByPowerOfTen(decimals).doubleValue();
    }

    /**
     * The dimension of a class of quantities.
     *
     * @throws IllegalArgumentException for a class that has none of its own
     */
    public static Dimension of(Class<?> type) {
        return Arrays.stream(values())
                .filter(dimension -> dimension.type() == type)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(type + " is no quantity"));
    }

    /** A quantity of this dimension, from the value in the kept unit. */
    Quantity of(double kept) {
        return quantity.apply(kept);
    }

    /** The class of its quantities. */
    public Class<? extends Quantity> type() {
        return of(1).getClass();
    }

    /** The least value, in the kept unit. */
    public double least() {
        return this == TEMPERATURE ? -273.15 : 0;
    }

    /** Decimals of the declared step. */
    public int decimals() {
        return decimals;
    }

    /** How many of the declared steps make up one of the kept unit. */
    double stepsInOne() {
        return stepsInOne;
    }

    /** The unit in which values of this dimension are kept. */
    public Unit unit() {
        for (Unit unit : Unit.values()) {
            if (unit.dimension() == this) {
                return unit;
            }
        }
        throw new IllegalStateException("No unit for " + this);
    }
}
