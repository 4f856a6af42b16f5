package stoneprocess.core.answer;

import stoneprocess.core.decision.Outcome;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;

/**
 * One thing that a plan settles.
 *
 * @param topic what is settled
 * @param subject what it is settled for
 */
public record Matter(Topic<?> topic, Subject subject) {
    public Matter {
        Refuse.nulls(Matter.class, topic, subject);
    }

    /** What an outcome settles. */
    public static Matter of(Outcome outcome) {
        return new Matter(outcome.topic(), outcome.subject());
    }

    /** The topic and its subject as one phrase of an error. */
    @Override
    public String toString() {
        return topic.id() + " of " + subject.key();
    }
}
