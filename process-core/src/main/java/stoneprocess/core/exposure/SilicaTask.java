package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.TimeSpan;

/**
 * Grinding that raises stone dust.
 *
 * @param tool the tool
 * @param control how dust is controlled
 * @param wheel diameter of the wheel or pad, above zero and up to 2 m
 * @param indoors whether the work is indoors or in any enclosed place; true when not known
 * @param time time on this task in one shift, up to 24 h
 * @param hepaBetweenPasses whether loose dust is vacuumed between passes with a high-efficiency filter
 */
public record SilicaTask(
        GrindingTool tool, DustControl control, Length wheel, boolean indoors, TimeSpan time, boolean hepaBetweenPasses)
        implements ExposureInput {
    /**
     * Checks the ranges.
     *
     * @throws InvalidInputException for a wheel or time outside its range
     */
    public SilicaTask {
        Refuse.nulls(SilicaTask.class, tool, control, wheel, time);
        if (wheel.millimetres() <= 0 || wheel.millimetres() > 2000) {
            throw new InvalidInputException("silica.wheel", wheel.print(), "more than 0 and up to 2000 mm");
        }
        if (time.minutes() > 24 * 60) {
            throw new InvalidInputException("silica.time", time.print(), "0 to 24 h");
        }
    }
}
