package stoneprocess.core.estimate;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;

/**
 * How the site lets the crew work.
 *
 * @param mobilisations times that the crew comes and goes, 1 or more
 * @param signOff wait for the owner to sign the test area, in hours of the clock
 * @param shift working time of a day, above 0 and up to 24 h
 * @param night share of the working time at night rates, 0 to 100 %
 */
public record SiteConditions(int mobilisations, Range<TimeSpan> signOff, TimeSpan shift, Share night) {
    public SiteConditions {
        Refuse.nulls(SiteConditions.class, signOff, shift, night);
        if (mobilisations < 1) {
            throw new InvalidInputException("site.mobilisations", Integer.toString(mobilisations), "1 or more");
        }
        Require.positive("site.shift", shift);
        if (shift.compareTo(TimeSpan.of(1, Unit.DAY)) > 0) {
            throw new InvalidInputException("site.shift", shift.print(), "24 h or less");
        }
        Require.upTo100("site.night", night);
    }

    /** One visit, no wait for the signature, day work, the shift of {@code estimate.shift}. */
    public static SiteConditions usual(Parameters parameters) {
        TimeSpan none = new TimeSpan(0);
        return new SiteConditions(
                1, Range.of(none, none), parameters.get("estimate.shift", TimeSpan.class), new Share(0));
    }
}
