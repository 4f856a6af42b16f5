package stoneprocess.core.answer;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Quantity;

/**
 * One thing that a survey says in answer to a question.
 *
 * @param zone name of the zone that it is said of; empty for what is said of the floor
 * @param keys keys of the words, grits or stone; the look of a damage; angle and state of the surface of a reading
 * @param amounts what was measured, each with its unit; depth, then share of a damage
 */
public record Given(Optional<String> zone, List<String> keys, List<Quantity> amounts) {
    public Given {
        Refuse.nulls(Given.class, zone, keys, amounts);
        keys = List.copyOf(keys);
        amounts = List.copyOf(amounts);
    }
}
