package stoneprocess.core.topic;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.term.Term;

/**
 * What one firing of one rule says about one topic. Rules and facts are stamped on it by the engine room.
 *
 * @param kind need, wish or veto
 * @param topic the topic
 * @param subject what it is said about; on a topic that is decided for each track, the floor stands for its tracks
 * @param values the set allowed or excluded in domain order, or the ranked preference
 */
public record Contribution(ContributionKind kind, Choice<?> topic, Subject subject, List<? extends Term> values) {
    public Contribution {
        Refuse.nulls(Contribution.class, kind, topic, subject, values);
        values = List.copyOf(values);
        if (values.isEmpty() && kind != ContributionKind.VETO) {
            throw new InvalidInputException(topic.id(), "no value", "at least one value to need or to wish");
        }
        if (!topic.domain().containsAll(values)) {
            throw new InvalidInputException(
                    topic.id(),
                    String.join(", ", Term.keys(values)),
                    "some of " + String.join(", ", Term.keys(topic.domain())));
        }
        boolean fits = switch (topic.scope()) {
            case FLOOR -> subject instanceof Subject.Floor;
            case TRACK -> subject instanceof Subject.OfTrack || subject instanceof Subject.Floor;
            case STEP -> subject instanceof Subject.OfStep;
        };
        if (!fits) {
            throw new InvalidInputException(
                    topic.id() + ".subject", subject.key(), "a " + topic.scope().key());
        }
    }
}
