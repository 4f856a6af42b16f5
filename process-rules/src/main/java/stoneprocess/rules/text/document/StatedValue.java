package stoneprocess.rules.text.document;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;

/**
 * A decided value that a text states, so that a reader of the document finds its reasons and two documents can be
 * compared without their words.
 *
 * @param topic what was decided
 * @param subject what it was decided for
 * @param value the value's stable key, as {@link Topic#keys} gives it
 */
public record StatedValue(Topic<?> topic, Subject subject, String value) {
    public StatedValue {
        Refuse.nulls(StatedValue.class, topic, subject, value);
    }

    /** A value of a topic that is decided for the floor. */
    public static StatedValue ofFloor(Topic<?> topic, String value) {
        return new StatedValue(topic, Subject.FLOOR, value);
    }
}
