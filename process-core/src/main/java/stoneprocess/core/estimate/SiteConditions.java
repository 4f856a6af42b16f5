package stoneprocess.core.estimate;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;

/**
 * How the site lets the crew work.
 *
 * @param mobilisations times that the crew comes and goes, 1 or more
 * @param signOff wait for the owner to sign the test area, in hours of the clock
 * @param times when the site is worked, and by how many crews; the estimate's hours are those of one crew
 * @param night share of the working time at night rates, 0 to 100 %
 * @param people people on the site whenever it is worked, 1 to 100; one of them runs the machine
 * @param atBarrier people beside those, who watch the barrier while a step is worked by day, 0 to 100
 * @param distance one way to the site, driven there and back on each working day, up to 2000 km; empty where nobody told it
 */
public record SiteConditions(
        int mobilisations,
        Range<TimeSpan> signOff,
        WorkingTimes times,
        Share night,
        int people,
        int atBarrier,
        Optional<Length> distance) {
    private static final int MOST_PEOPLE = 100;
    private static final double MOST_DISTANCE = 2e9;

    public SiteConditions {
        Refuse.nulls(SiteConditions.class, signOff, times, night, distance);
        if (mobilisations < 1) {
            throw new InvalidInputException("site.mobilisations", Integer.toString(mobilisations), "1 or more");
        }
        Require.upTo100("site.night", night);
        if (people < 1 || people > MOST_PEOPLE) {
            throw new InvalidInputException("site.people", Integer.toString(people), "from 1 to " + MOST_PEOPLE);
        }
        if (atBarrier < 0 || atBarrier > MOST_PEOPLE) {
            throw new InvalidInputException("site.at-barrier", Integer.toString(atBarrier), "from 0 to " + MOST_PEOPLE);
        }
        distance.filter(way -> way.millimetres() > MOST_DISTANCE).ifPresent(way -> {
            throw new InvalidInputException("site.distance", way.print(), "2000 km or less");
        });
    }

    /**
     * One mobilisation, no wait for the signature, day work in shifts of {@code estimate.shift} at the usual times, {@code
     * estimate.people}, nobody at a barrier, no distance.
     */
    public static SiteConditions usual(Parameters parameters) {
        TimeSpan none = new TimeSpan(0);
        return new SiteConditions(
                1,
                Range.of(none, none),
                WorkingTimes.usual(parameters.get("estimate.shift", TimeSpan.class), parameters),
                new Share(0),
                (int) parameters.get("estimate.people", Count.class).number(),
                0,
                Optional.empty());
    }

    /** The same with another number of mobilisations. */
    public SiteConditions withMobilisations(int other) {
        return new SiteConditions(other, signOff, times, night, people, atBarrier, distance);
    }

    /** The same with another wait for the signature. */
    public SiteConditions withSignOff(Range<TimeSpan> other) {
        return new SiteConditions(mobilisations, other, times, night, people, atBarrier, distance);
    }

    /** The same with the usual wait for the signature, {@code estimate.sign-off}. Common practice. */
    public SiteConditions withUsualSignOff(Parameters parameters) {
        return withSignOff(parameters.range("estimate.sign-off", TimeSpan.class));
    }

    /** The same with another shift. */
    public SiteConditions withShift(TimeSpan other) {
        return withTimes(times.withShift(other));
    }

    /** Working time of a crew on a day of the site. */
    public TimeSpan shift() {
        return times.shift();
    }

    /** The same at other times. */
    public SiteConditions withTimes(WorkingTimes other) {
        return new SiteConditions(mobilisations, signOff, other, night, people, atBarrier, distance);
    }

    /** The same with another share of night work. */
    public SiteConditions withNight(Share other) {
        return new SiteConditions(mobilisations, signOff, times, other, people, atBarrier, distance);
    }

    /** The same with another number of people. */
    public SiteConditions withPeople(int other) {
        return new SiteConditions(mobilisations, signOff, times, night, other, atBarrier, distance);
    }

    /** The same with people who watch the barrier. */
    public SiteConditions withAtBarrier(int other) {
        return new SiteConditions(mobilisations, signOff, times, night, people, other, distance);
    }

    /** The same at a distance, or at one that nobody told. */
    public SiteConditions withDistance(Optional<Length> other) {
        return new SiteConditions(mobilisations, signOff, times, night, people, atBarrier, other);
    }
}
