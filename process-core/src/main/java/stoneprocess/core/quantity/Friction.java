package stoneprocess.core.quantity;

/**
 * A coefficient of friction, dimensionless: friction force over load.
 *
 * @param friction the value in the kept unit, zero or more, rounded to the declared step of {@link Dimension#FRICTION}
 */
public record Friction(double friction) implements Quantity {
    public Friction {
        friction = Quantity.keep(Dimension.FRICTION, friction);
    }

    /** The value in any unit of {@link Dimension#FRICTION}; a unit of another dimension is refused. */
    public static Friction of(double value, Unit unit) {
        return new Friction(Quantity.convert(Dimension.FRICTION, value, unit));
    }

    @Override
    public Dimension dimension() {
        return Dimension.FRICTION;
    }

    @Override
    public double kept() {
        return friction;
    }
}
