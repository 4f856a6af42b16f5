package stoneprocess.core.exposure;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.TimeSpan;

/**
 * An engine that runs in a room. Give either its power, and it counts as a small petrol engine, or the carbon monoxide
 * that it gives off.
 *
 * @param room the room and its air
 * @param petrolEngine mechanical power in use, above zero and up to 19 kW
 * @param source pure carbon monoxide that the engine gives off, above zero
 * @param running running time, up to 8 h
 */
public record RunningEngine(RoomAir room, Optional<Power> petrolEngine, Optional<Airflow> source, TimeSpan running)
        implements ExposureInput {
    /**
     * Checks the ranges.
     *
     * @throws InvalidInputException for a power, source or time outside its range, and unless exactly one of power and
     *     source is given
     */
    public RunningEngine {
        Refuse.nulls(RunningEngine.class, room, petrolEngine, source, running);
        if (petrolEngine.isPresent() == source.isPresent()) {
            throw new InvalidInputException(
                    "engine.source",
                    source.isPresent() ? "given beside petrol-engine" : "nothing",
                    "exactly one of petrol-engine and source");
        }
        petrolEngine.ifPresent(CarbonMonoxide::requirePower);
        source.ifPresent(CarbonMonoxide::requireSource);
        CarbonMonoxide.requireTime(running);
    }
}
