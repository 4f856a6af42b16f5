package stoneprocess.core.estimate;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.quantity.TimeSpan;

/**
 * Area per hour from the way a machine is walked.
 *
 * @param path width that one walk covers, above zero
 * @param overlap how much of it the next walk covers again, 0 to below 100 %
 * @param walk walking speed, above zero
 * @param passes traverses of the bay, 1 or more; a fraction stands for the middle of a range
 * @param bay length of a walk, above zero
 * @param turn time to turn at the end of each walk
 * @param handling share of the time lost to hoses, cable and looking, 0 to below 100 %
 */
public record Kinematics(
        Length path, Share overlap, Speed walk, double passes, Length bay, TimeSpan turn, Share handling) {
    public Kinematics {
        Refuse.nulls(Kinematics.class, path, overlap, walk, bay, turn, handling);
        Require.positive("kinematics.path", path);
        Require.below100("kinematics.overlap", overlap);
        Require.positive("kinematics.walk", walk);
        if (!(passes >= 1) || Double.isInfinite(passes)) {
            throw new InvalidInputException("kinematics.passes", Double.toString(passes), "1 pass or more");
        }
        Require.positive("kinematics.bay", bay);
        Require.below100("kinematics.handling", handling);
    }

    /** path (1 - overlap) bay / (bay / walk + turn) / passes (1 - handling). Plain geometry. */
    public AreaRate rate() {
        double metres = bay.millimetres() / 1000;
        double strip = path.millimetres() / 1000 * (1 - overlap.percent() / 100) * metres;
        double minutes = metres / walk.metresPerMinute() + turn.minutes();
        return new AreaRate(60 * strip / minutes / passes * (1 - handling.percent() / 100));
    }
}
