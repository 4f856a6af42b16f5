package stoneprocess.core.estimate;

import java.util.Optional;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Rotation;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.source.Citation;

/**
 * Something done to a floor again and again.
 *
 * @param name what is done; once in an option
 * @param rate area an hour of one person, above zero
 * @param every time from once to the next, above zero
 * @param source where the rate comes from
 * @param material price of the material for one square metre once; empty when there is none or no price
 */
public record UpkeepTask(String name, AreaRate rate, TimeSpan every, Citation source, Optional<Money> material) {
    private static final String DOUBTED = "CLEANING-TIMES-DOUBTFUL";

    public UpkeepTask {
        Require.text("upkeep.name", name);
        Require.positive("upkeep." + name + ".rate", rate);
        Require.positive("upkeep." + name + ".every", every);
    }

    /** Whether the rate is published and doubted all the same, since crews time otherwise. */
    public boolean doubtful() {
        return source.id().equals(DOUBTED);
    }

    /** The same task with the price of its material. */
    public UpkeepTask withMaterial(Money perSquareMetre) {
        return new UpkeepTask(name, rate, every, source, Optional.of(perSquareMetre));
    }

    /**
     * Burnishing at the published rates: 37 m2/h at 350 rpm, 206 m2/h at 2000 rpm and over. The second is doubted, since
     * crews time several times more.
     *
     * @throws InvalidInputException for a speed between, for which no rate is published
     */
    public static UpkeepTask burnish(Rotation speed, TimeSpan every, Parameters parameters) {
        Rotation slow = parameters.get("estimate.upkeep.burnish-slow-speed", Rotation.class);
        Rotation fast = parameters.get("estimate.upkeep.burnish-fast-speed", Rotation.class);
        if (speed.compareTo(fast) >= 0) {
            return of("burnish", "estimate.upkeep.burnish-fast", every, parameters);
        }
        if (speed.compareTo(slow) <= 0) {
            return of("burnish", "estimate.upkeep.burnish-slow", every, parameters);
        }
        throw new InvalidInputException(
                "upkeep.burnish.speed",
                speed.print(),
                "up to " + slow.print() + ", or " + fast.print() + " and over; give a timed rate between");
    }

    /** Scrubbing with a 17 inch machine at the published 174 m2/h. */
    public static UpkeepTask scrub(TimeSpan every, Parameters parameters) {
        return of("scrub", "estimate.upkeep.scrub", every, parameters);
    }

    /** Stripping a coating at the published 70 m2/h, halved where coats have built up. */
    public static UpkeepTask strip(boolean buildUp, TimeSpan every, Parameters parameters) {
        UpkeepTask task = of("strip", "estimate.upkeep.strip", every, parameters);
        double share = parameters.get("estimate.upkeep.build-up", Share.class).percent() / 100;
        return buildUp
                ? new UpkeepTask(
                        task.name,
                        new AreaRate(task.rate.squareMetresPerHour() * share),
                        every,
                        task.source,
                        task.material)
                : task;
    }

    private static UpkeepTask of(String name, String parameter, TimeSpan every, Parameters parameters) {
        Parameter found = parameters.parameter(parameter);
        return new UpkeepTask(name, parameters.get(parameter, AreaRate.class), every, found.source(), Optional.empty());
    }
}
