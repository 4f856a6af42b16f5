package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Friction;

/**
 * Slip measured as dynamic friction.
 *
 * @param friction by the method of ANSI A326.3, from 0 to 2.5; dry for the dry place, otherwise wet
 * @param place what the floor is used for
 */
public record FrictionReading(Friction friction, SlipPlace place) implements ExposureInput {
    /**
     * Checks the range.
     *
     * @throws InvalidInputException above 2.5
     */
    public FrictionReading {
        Refuse.nulls(FrictionReading.class, friction, place);
        WetSlip.requireFriction(friction);
    }
}
