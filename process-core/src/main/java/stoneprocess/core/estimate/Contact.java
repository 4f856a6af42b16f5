package stoneprocess.core.estimate;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.AreaLoad;
import stoneprocess.core.quantity.Speed;

/**
 * How the pads meet the stone.
 *
 * @param pressure force over the pads' area, above zero; kN/m2 is kPa
 * @param sliding mean sliding speed, above zero
 */
public record Contact(AreaLoad pressure, Speed sliding) {
    public Contact {
        Refuse.nulls(Contact.class, pressure, sliding);
        Require.positive("contact.pressure", pressure);
        Require.positive("contact.sliding", sliding);
    }
}
