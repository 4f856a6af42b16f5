package stoneprocess.core.decision;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;

/** How a topic was closed for one subject: a decision, or an impasse. */
public sealed interface Outcome permits Decision, Impasse {
    /** What was closed. */
    Topic<?> topic();

    /** What it was closed for. */
    Subject subject();

    /** Every reason: what won, was outweighed and was vetoed; the needs and vetoes of an impasse. */
    List<Reason> reasons();

    /** The decision; empty for an impasse. */
    default Optional<Decision<?>> decided() {
        return this instanceof Decision<?> decision ? Optional.of(decision) : Optional.empty();
    }

    /** The impasse; empty for a decision. */
    default Optional<Impasse<?>> stuck() {
        return this instanceof Impasse<?> impasse ? Optional.of(impasse) : Optional.empty();
    }

    /** True when it closes this topic for this subject. */
    default boolean closes(Topic<?> topic, Subject subject) {
        return topic() == topic && subject().equals(subject);
    }

    /** The decision of a topic for a subject among outcomes; empty when there is none or it ended in an impasse. */
    @SuppressWarnings("unchecked")
    static <V> Optional<Decision<V>> decision(Collection<Outcome> outcomes, Topic<V> topic, Subject subject) {
        Objects.requireNonNull(topic, "topic");
        Objects.requireNonNull(subject, "subject");
        for (Outcome outcome : outcomes) {
            if (outcome instanceof Decision<?> decision && outcome.closes(topic, subject)) {
                return Optional.of((Decision<V>) decision);
            }
        }
        return Optional.empty();
    }
}
