package stoneprocess.core.estimate;

import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.TimeSpan;

/**
 * The k of Preston (1927), dh/dt = k p v, of one tool on one stone. There is no published value for diamond on floor
 * stone: it is calibrated on the floor.
 *
 * @param perPascal k, above zero, in 1/Pa
 */
public record PrestonCoefficient(double perPascal) {
    public PrestonCoefficient {
        if (!(perPascal > 0) || Double.isInfinite(perPascal)) {
            throw new InvalidInputException(
                    "preston.coefficient", Double.toString(perPascal), "a finite number above 0, in 1/Pa");
        }
    }

    /**
     * The coefficient from a measured cut: k = h / (p v t).
     *
     * @param depth depth removed, above zero
     * @param contact pressure and sliding speed
     * @param time how long each point of the stone lay under a pad, above zero
     */
    public static PrestonCoefficient calibrate(Length depth, Contact contact, TimeSpan time) {
        Require.positive("preston.depth", depth);
        Require.positive("preston.time", time);
        return new PrestonCoefficient(depth.millimetres() / 1000 / work(contact, time));
    }

    /** Depth removed: h = k p v t. Holds while the pad stays open and the load does not make it float. */
    public Length depth(Contact contact, TimeSpan time) {
        return new Length(perPascal * work(contact, time) * 1000);
    }

    /** p v t in Pa m. */
    private static double work(Contact contact, TimeSpan time) {
        return contact.pressure().kept() * 1000 * contact.sliding().kept() * time.minutes();
    }
}
