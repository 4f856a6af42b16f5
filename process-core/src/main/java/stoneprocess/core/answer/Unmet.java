package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.Topic;

/**
 * A condition of a rule that does not hold on a floor.
 *
 * @param fact name of the fact; {@code Step.} and a part for what a step is
 * @param actual keys of the classes that the fact may be, as a matched fact has them; several mean that nobody knows, none
 *     that it was not concluded
 * @param required keys of the classes of which one, known, would meet the condition; empty when only not knowing would
 * @param steps how many classes lie between; 0 when one of those that it may be would do and only has to be known; more
 *     than any two are apart when none is required or none is actual
 * @param fields names of the survey fields or damage kinds that the fact is read from
 * @param topics the topics that the fact is concluded from
 */
public record Unmet(
        String fact,
        List<String> actual,
        List<String> required,
        int steps,
        List<String> fields,
        List<Topic<?>> topics) {
    public Unmet {
        Refuse.nulls(Unmet.class, fact, actual, required, fields, topics);
        actual = List.copyOf(actual);
        required = List.copyOf(required);
        fields = List.copyOf(fields);
        topics = List.copyOf(topics);
    }
}
