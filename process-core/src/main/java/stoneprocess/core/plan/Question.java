package stoneprocess.core.plan;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.Topic;

/**
 * Something nobody knows yet that a decision depends on. Until it is answered the cautious reading holds.
 *
 * @param field name of the survey field, or {@code damages.} and a damage kind
 * @param rules ids of the rules that took the cautious reading because of it
 * @param waiting ids of the rules that would need a known answer before they ask for more
 * @param topics what those rules speak to
 */
public record Question(String field, List<String> rules, List<String> waiting, List<Topic<?>> topics) {
    public Question {
        Refuse.nulls(Question.class, field, rules, waiting, topics);
        rules = List.copyOf(rules);
        waiting = List.copyOf(waiting);
        topics = List.copyOf(topics);
    }
}
