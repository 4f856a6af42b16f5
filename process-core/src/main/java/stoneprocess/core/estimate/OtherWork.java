package stoneprocess.core.estimate;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;

/**
 * Work besides the steps: fills, grout, relaying.
 *
 * @param name what it is; once in a job
 * @param work time of one technician
 * @param curing curing or drying before the floor is gone over, in hours of the clock, day and night
 * @param after name of the step that it follows, {@link #TEST_AREA} or {@link #SEALING}; empty for before the test area
 */
public record OtherWork(String name, Range<TimeSpan> work, Range<TimeSpan> curing, Optional<String> after) {
    /** What follows the sealer and its cure, such as the measured slip of the floor that people will walk on. */
    public static final String SEALING = Work.SEALING.key();

    /** What follows the signature on the test area and what cures meanwhile: places that are ground by hand. */
    public static final String TEST_AREA = Work.TEST_AREA.key();

    private static final Set<String> IN_PLACES = Set.of("relay-lipped", "fix-hollow", "fill-cracks");

    public OtherWork {
        Refuse.nulls(OtherWork.class, name, work, curing, after);
        Require.text("other-work.name", name);
    }

    /** Whether something sets or cures after it, which takes warmth; a poultice dwells, and a floor cools or dries. */
    public boolean cures() {
        return curing.high().kept() > 0
                && !name.startsWith("poultice-")
                && !List.of("heating-off", "let-dry").contains(name);
    }

    /** Whether work of this name cures or dwells in places of its own, so that other places and the test area go on. */
    static boolean isInPlaces(String name) {
        return IN_PLACES.contains(name) || name.startsWith("poultice-");
    }

    /** The same work after another step. */
    public OtherWork after(Optional<String> other) {
        return new OtherWork(name, work, curing, other);
    }

    /**
     * Work of a named kind with its usual curing, the parameter {@code rest.<name>}: {@code fill-cracks},
     * {@code regrout}, {@code relay-lipped}, {@code fix-hollow}, a poultice. Common practice.
     *
     * @throws InvalidInputException when there is no such parameter
     */
    public static OtherWork usual(String name, Range<TimeSpan> work, Optional<String> after, Parameters parameters) {
        return new OtherWork(
                name, work, parameters.range("rest." + Objects.requireNonNull(name, "name"), TimeSpan.class), after);
    }
}
