package stoneprocess.core.answer;

import stoneprocess.core.decision.Outcome;
import stoneprocess.core.topic.Subject;

/**
 * One thing that a plan settles.
 *
 * @param topic id of the topic
 * @param subject what it is settled for
 */
public record Matter(String topic, Subject subject) {
    /** What an outcome settles. */
    public static Matter of(Outcome outcome) {
        return new Matter(outcome.topic(), outcome.subject());
    }
}
