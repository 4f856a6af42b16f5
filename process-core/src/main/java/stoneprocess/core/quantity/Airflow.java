package stoneprocess.core.quantity;

/**
 * Air or gas that flows in a time, as of a fan, an extractor or an exhaust.
 *
 * @param cubicMetresPerHour the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#AIRFLOW}
 */
public record Airflow(double cubicMetresPerHour) implements Quantity {
    public Airflow {
        cubicMetresPerHour = Quantity.keep(Dimension.AIRFLOW, cubicMetresPerHour);
    }

    /** The value in any unit of {@link Dimension#AIRFLOW}; a unit of another dimension is refused. */
    public static Airflow of(double value, Unit unit) {
        return new Airflow(Quantity.convert(Dimension.AIRFLOW, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.AIRFLOW;
    }

    @Override
    public double kept() {
        return cubicMetresPerHour;
    }
}
