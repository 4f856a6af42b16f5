package stoneprocess.core.exposure;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Friction;

/**
 * A measured dynamic coefficient of friction against its limit.
 *
 * @param place what the floor is used for
 * @param measured the value as measured by the method of ANSI A326.3, wet except for the dry place
 * @param meetsLimit the value is the limit or more
 * @param limit the least value for that use
 * @param cautions what the check holds for
 */
public record FrictionCheck(
        SlipPlace place, Friction measured, boolean meetsLimit, Limit<Friction> limit, List<SlipCaution> cautions) {
    /** Copies the cautions. */
    public FrictionCheck {
        Refuse.nulls(FrictionCheck.class, place, measured, limit, cautions);
        cautions = List.copyOf(cautions);
    }
}
