package stoneprocess.rules.audit;

import java.util.List;
import java.util.Optional;

/**
 * A part of a topic's outcome that can be looked at by itself, such as whether one value stands.
 *
 * @param <S> what is kept of what was said
 */
interface View<S> extends Sweep.Tally<S> {
    /** Keys of the values that come of it, in their order. */
    List<String> outcome(S kept);

    /** False when a way makes no difference to the outcome, now and whatever else fires. */
    default boolean canChange(S kept, FiringWay way) {
        return !idle(kept, way);
    }

    /** True when the outcome is another one once a way fires too. */
    default boolean changes(S kept, FiringWay way) {
        return add(kept, way)
                .filter(after -> !outcome(after).equals(outcome(kept)))
                .isPresent();
    }

    /** False for ways that never say anything about this part. */
    default boolean isAbout(FiringWay way) {
        return true;
    }

    /** True when it counts whether a way fires beside another whose difference is looked for. */
    default boolean countsBeside(FiringWay looked, FiringWay way) {
        return isAbout(way);
    }

    /** The same, of interest only as long as a way can make a difference. */
    default Sweep.Tally<S> asLongAsChangedBy(FiringWay way) {
        View<S> view = this;
        return new Sweep.Tally<>() {
            @Override
            public S start() {
                return view.start();
            }

            @Override
            public Optional<S> add(S kept, FiringWay fired) {
                return view.add(kept, fired).filter(after -> view.canChange(after, way));
            }

            @Override
            public boolean idle(S kept, FiringWay fired) {
                return view.idle(kept, fired);
            }
        };
    }
}
