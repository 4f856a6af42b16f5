package stoneprocess.core.decision;

import java.util.List;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;

/**
 * A topic that cannot be closed: no value meets all needs and escapes all vetoes.
 *
 * @param <V> the topic's values
 * @param topic what was to be decided
 * @param subject what it was to be decided for
 * @param needs the demands
 * @param vetoes the exclusions
 * @param untilKnown true when it would not be one without what rests on facts that nobody knows yet
 * @param lacking what would have to be got first: all grits of the path over all grits that are not on hand,
 *     or the machines that are not on hand and of which any one would do; empty when nothing that can be got would help
 */
public record Impasse<V>(
        Topic<V> topic, Subject subject, List<Reason> needs, List<Reason> vetoes, boolean untilKnown, List<V> lacking)
        implements Outcome {
    public Impasse {
        Refuse.nulls(Impasse.class, topic, subject, needs, vetoes, lacking);
        needs = List.copyOf(needs);
        vetoes = List.copyOf(vetoes);
        lacking = List.copyOf(lacking);
    }

    @Override
    public List<Reason> reasons() {
        return Stream.concat(needs.stream(), vetoes.stream()).toList();
    }

    /** The stable keys of what is lacking. */
    public List<String> lackingKeys() {
        return topic.keys(lacking);
    }
}
