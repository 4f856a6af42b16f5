package stoneprocess.core.decision;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.Topic;

/**
 * A fact that a rule matched. Raw numbers are found through the fields in the recommendation's survey.
 *
 * @param name the fact's name in the rules, for example {@code Scratches}
 * @param mayBe keys of the classes that the fact may be, several when it is not known; keys, because the types of facts
 *     belong to the rules, which this library does not know
 * @param known true when the fact is known well enough that only these classes are meant
 * @param fields names of the survey fields or damage kinds that it was read from
 * @param topics the topics that it was concluded from
 */
public record MatchedFact(String name, List<String> mayBe, boolean known, List<String> fields, List<Topic<?>> topics) {
    public MatchedFact {
        Refuse.nulls(MatchedFact.class, name, mayBe, fields, topics);
        mayBe = List.copyOf(mayBe);
        fields = List.copyOf(fields);
        topics = List.copyOf(topics);
    }
}
