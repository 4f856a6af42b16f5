package stoneprocess.core.exposure;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Friction;

/**
 * A measured dynamic coefficient of friction, compared with its limit.
 *
 * @param place what the floor is used for
 * @param measured the value measured by the method of ANSI A326.3: dry for the dry place, otherwise wet
 * @param meetsLimit whether the value is the limit or more
 * @param limit the lowest value accepted for that use
 * @param cautions how far the check holds
 */
public record FrictionCheck(
        SlipPlace place, Friction measured, boolean meetsLimit, Limit<Friction> limit, List<SlipCaution> cautions) {
    /** Copies the cautions. */
    public FrictionCheck {
        Refuse.nulls(FrictionCheck.class, place, measured, limit, cautions);
        cautions = List.copyOf(cautions);
    }
}
