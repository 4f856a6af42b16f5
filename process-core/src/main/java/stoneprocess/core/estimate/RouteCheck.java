package stoneprocess.core.estimate;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.term.Term;

/**
 * Two routes to the output of a step in the open field, laid side by side.
 *
 * @param step name of the step
 * @param cut how fast it cuts
 * @param walked from path width, walking speed, overlap and passes; the hours
 *     rest on this one unless the crew timed the step
 * @param practice what one technician does in an hour by common practice, on marble-class or granite-class stone;
 *     empty where practice names none
 * @param agreement whether the likely walked rate lies in the band of practice
 * @param departures what differs from the job that the band is for, and by how much it speeds the step up
 */
public record RouteCheck(
        String step,
        CutRate cut,
        Spread<AreaRate> walked,
        Optional<Range<AreaRate>> practice,
        Agreement agreement,
        List<Departure> departures) {
    public RouteCheck {
        Refuse.nulls(RouteCheck.class, step, cut, walked, practice, agreement, departures);
        departures = List.copyOf(departures);
    }

    /** How the two routes compare. */
    public enum Agreement implements Term {
        /** The likely walked rate lies in the band. */
        AGREE,
        /** It does once the departures are taken out. */
        EXPLAINED,
        /** It does not, even then. */
        NOT_EXPLAINED,
        /** Common practice names no band for such a step. */
        NO_BAND
    }

    /** What makes a step differ from the one that the band is for. */
    public enum Cause implements Term {
        /** Another path than a usual single disc's. */
        PATH_WIDTH,
        /** Other passes than usual. */
        PASSES,
        /** Stone, load, speed or tool cut at another rate. */
        CUT_RATE
    }

    /**
     * One cause.
     *
     * @param cause what differs
     * @param factor the walked rate with it over the rate without it; more than 100 % is faster
     */
    public record Departure(Cause cause, Share factor) {
        public Departure {
            Refuse.nulls(Departure.class, cause, factor);
        }
    }
}
