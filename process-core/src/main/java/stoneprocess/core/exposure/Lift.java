package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.TimeSpan;

/**
 * A two-handed lift by one person, described at one end of the lift. Where the load has to be set down with care,
 * assess both ends and use the lower limit.
 *
 * @param load mass of the load
 * @param reach horizontal distance of the hands from the ankles
 * @param height height of the hands above the floor
 * @param travel vertical distance from start to end
 * @param turn angle between the load and straight ahead, up to 180 degrees
 * @param lifts number of lifts counted
 * @param counted time over which they were counted, above zero; the manual counts over 15 minutes
 * @param duration duration of the lifting task, above zero and up to 8 h
 * @param coupling how well the hands hold
 */
public record Lift(
        Mass load,
        Length reach,
        Length height,
        Length travel,
        Angle turn,
        Count lifts,
        TimeSpan counted,
        TimeSpan duration,
        Coupling coupling)
        implements ExposureInput {
    /**
     * Checks the ranges.
     *
     * @throws InvalidInputException for a time of zero, a duration above 8 h or a turn above 180 degrees
     */
    public Lift {
        Refuse.nulls(Lift.class, load, reach, height, travel, turn, lifts, counted, duration, coupling);
        if (counted.minutes() <= 0) {
            throw new InvalidInputException("lift.counted", counted.print(), "more than 0 min");
        }
        if (duration.minutes() <= 0 || duration.minutes() > 8 * 60) {
            throw new InvalidInputException("lift.duration", duration.print(), "more than 0 and up to 8 h");
        }
        if (turn.degrees() > 180) {
            throw new InvalidInputException("lift.turn", turn.print(), "0 to 180 deg");
        }
    }

    double liftsPerMinute() {
        return lifts.number() / counted.minutes();
    }
}
