package stoneprocess.core.quantity;

import stoneprocess.core.term.Term;

/** What is measured. Each dimension is kept in one unit and rounded to one declared decimal step. */
public enum Dimension implements Term {
    /** Kept in millimetres to 0.0001 mm, so that a grain size of 0.1 micrometre survives. */
    LENGTH(4),
    /** Kept in square metres to 0.0001 m2. */
    AREA(4),
    /** Kept in kilograms to 0.0001 kg. */
    MASS(4),
    /** Kept in litres to 0.0001 l. */
    VOLUME(4),
    /** Liquid over a surface, kept in litres a square metre to 0.000001 l/m2. */
    COVERAGE(6),
    /** Kept in minutes to 0.0001 min. */
    TIME(4),
    /** Weight that a floor carries, kept in kilonewtons a square metre to 0.000001 kN/m2. */
    AREA_LOAD(6),
    /** Specular gloss in gloss units of ISO 2813, to 0.0001 GU. */
    GLOSS(4),
    /** Kept in volts to 0.0001 V. */
    VOLTAGE(4),
    /** Kept in amperes to 0.0001 A. */
    CURRENT(4),
    /** Electric power, kept in kilowatts to 0.0001 kW. */
    POWER(4),
    /** A part of a whole, kept in percent to 0.0001 %. */
    SHARE(4),
    /** Kept in revolutions a minute to 0.0001 rpm. */
    ROTATION(4),
    /** A number of things or a grit number, whole. */
    COUNT(0),
    /** Plane angle, kept in degrees to 0.0001 degree. */
    ANGLE(4),
    /** A-weighted sound level, kept in decibels to 0.0001 dB. */
    SOUND_LEVEL(4),
    /** Gas in air by volume, kept in parts per million to 0.0001 ppm. */
    CONCENTRATION(4),
    /** Air or gas in a time, kept in cubic metres an hour to 0.0001 m3/h. */
    AIRFLOW(4),
    /** Acidity as pH, to 0.0001. */
    ACIDITY(4),
    /** Pendulum test value, to 0.0001. */
    PENDULUM_VALUE(4),
    /** Coefficient of friction, to 0.000001. */
    FRICTION(6),
    /** Walking and sliding speed, kept in metres a minute to 0.000001 m/min. */
    SPEED(6),
    /** Area done in a time, kept in square metres an hour to 0.000001 m2/h. */
    AREA_RATE(6),
    /** Electric energy, kept in kilowatt hours to 0.0001 kWh. */
    ENERGY(4);

    private final int decimals;

    Dimension(int decimals) {
        this.decimals = decimals;
    }

    /** Decimals of the declared step. */
    public int decimals() {
        return decimals;
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
