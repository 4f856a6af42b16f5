package stoneprocess.rules.decide;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.TrackKind;

/** What a formula may ask: the topics closed so far, the numbers, the grits, and what the survey tells. */
public interface Known {
    /** All closed topics in the order in which they closed. */
    Collection<Outcome> outcomes();

    /** What was decided on a topic for a subject; empty when it is not closed or ended in an impasse. */
    <V> Optional<Decision<V>> decision(Topic<V> topic, Subject subject);

    /** The values decided for a subject; none when the topic is not closed or ended in an impasse. */
    <V> List<V> values(Topic<V> topic, Subject subject);

    Parameters parameters();

    /** The grits that there are to choose from, whether on hand or not. */
    GritSequence sequence();

    /** The grits in use; empty when none is on hand. */
    Optional<GritSequence> inUse();

    /** The area of a track, as far as it is known. */
    Optional<Area> areaOf(TrackKind track);

    /** The grade after which a track goes on; empty where it begins with the damage. */
    Optional<AbrasiveGrade> worked(TrackKind track);

    /**
     * What a grade of a track has to take off.
     *
     * @param before the grade worked before it; empty for the first
     */
    Range<Length> depth(TrackKind track, Optional<AbrasiveGrade> before, AbrasiveGrade grade);

    /** What is known of the stone. */
    KnownStone stone();

    /** True for a floor of nothing but edges and stairs, which no floor machine reaches. */
    boolean isAllHandWork();

    /** False where lanes and entrances are worked alone, and where nothing borders the floor. */
    boolean hasEdges();

    /** True once a topic without which there is no plan has ended in an impasse. */
    default boolean isBlocked() {
        return outcomes().stream()
                .flatMap(outcome -> outcome.stuck().stream())
                .anyMatch(impasse -> impasse.topic().isBlocking());
    }
}
