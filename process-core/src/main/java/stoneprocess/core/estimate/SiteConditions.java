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
import stoneprocess.core.quantity.Unit;

/**
 * How the site lets the crew work.
 *
 * @param mobilisations times that the crew comes and goes, 1 or more
 * @param signOff wait for the owner to sign the test area, in hours of the clock
 * @param shift working time of a day on the site, above 0 and up to 24 h
 * @param night share of the working time at night rates, 0 to 100 %
 * @param people people on the site whenever it is worked, 1 to 100; one of them runs the machine
 * @param distance one way to the site, driven there and back on each working day, up to 2000 km; empty where nobody told it
 */
public record SiteConditions(
        int mobilisations,
        Range<TimeSpan> signOff,
        TimeSpan shift,
        Share night,
        int people,
        Optional<Length> distance) {
    private static final int MOST_PEOPLE = 100;
    private static final double MOST_DISTANCE = 2e9;

    public SiteConditions {
        Refuse.nulls(SiteConditions.class, signOff, shift, night, distance);
        if (mobilisations < 1) {
            throw new InvalidInputException("site.mobilisations", Integer.toString(mobilisations), "1 or more");
        }
        Require.positive("site.shift", shift);
        if (shift.compareTo(TimeSpan.of(1, Unit.DAY)) > 0) {
            throw new InvalidInputException("site.shift", shift.print(), "24 h or less");
        }
        Require.upTo100("site.night", night);
        if (people < 1 || people > MOST_PEOPLE) {
            throw new InvalidInputException("site.people", Integer.toString(people), "from 1 to " + MOST_PEOPLE);
        }
        distance.filter(way -> way.millimetres() > MOST_DISTANCE).ifPresent(way -> {
            throw new InvalidInputException("site.distance", way.print(), "2000 km or less");
        });
    }

    /** One mobilisation, no wait for the signature, day work, {@code estimate.shift} and {@code estimate.people}, no distance. */
    public static SiteConditions usual(Parameters parameters) {
        TimeSpan none = new TimeSpan(0);
        return new SiteConditions(
                1,
                Range.of(none, none),
                parameters.get("estimate.shift", TimeSpan.class),
                new Share(0),
                (int) parameters.get("estimate.people", Count.class).number(),
                Optional.empty());
    }

    /** The same with another number of mobilisations. */
    public SiteConditions withMobilisations(int other) {
        return new SiteConditions(other, signOff, shift, night, people, distance);
    }

    /** The same with another wait for the signature. */
    public SiteConditions withSignOff(Range<TimeSpan> other) {
        return new SiteConditions(mobilisations, other, shift, night, people, distance);
    }

    /** The same with another shift. */
    public SiteConditions withShift(TimeSpan other) {
        return new SiteConditions(mobilisations, signOff, other, night, people, distance);
    }

    /** The same with another share of night work. */
    public SiteConditions withNight(Share other) {
        return new SiteConditions(mobilisations, signOff, shift, other, people, distance);
    }

    /** The same with another number of people. */
    public SiteConditions withPeople(int other) {
        return new SiteConditions(mobilisations, signOff, shift, night, other, distance);
    }

    /** The same at a distance, or at one that nobody told. */
    public SiteConditions withDistance(Optional<Length> other) {
        return new SiteConditions(mobilisations, signOff, shift, night, people, other);
    }
}
