package stoneprocess.core.estimate;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Quantity;

/**
 * What a step uses up or leaves over, rework included.
 *
 * @param kind what
 * @param step name of the step
 * @param amount how much; the dimension follows from the kind
 * @param assumptions the numbers behind it
 */
public record Consumable(ConsumableKind kind, String step, Spread<Quantity> amount, List<Assumption> assumptions) {
    public Consumable {
        Refuse.nulls(Consumable.class, kind, step, amount, assumptions);
        assumptions = List.copyOf(assumptions);
    }

    /** A name for the line that is the same in every estimate of such a step. */
    public String name() {
        return kind.key() + " " + step;
    }
}
