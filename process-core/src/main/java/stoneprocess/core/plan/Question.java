package stoneprocess.core.plan;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/**
 * Something nobody knows yet that a decision depends on. Until it is answered the cautious reading holds.
 *
 * @param field name of the survey field, or {@code damages.} and a damage kind
 * @param rules ids of the rules that took the cautious reading because of it
 * @param waiting ids of the rules that would need a known answer before they ask for more
 * @param topics what those rules speak to
 */
public record Question(String field, List<String> rules, List<String> waiting, List<Topic<?>> topics) {
    /** The topics that say whether a floor is worked, or where and with which grits it is cut. */
    public static final Set<Topic<?>> DECISIVE = Set.of(
            Topics.STONE,
            Topics.VERDICT,
            Topics.FINISH,
            Topics.BONDS,
            Topics.FIRST_CUT,
            Topics.REPAIRS,
            Topics.LAST_GRIT,
            Topics.STEP_RULE,
            Topics.TRANSITION,
            Topics.GRIT_PATH);

    private static final Set<Topic<?>> WEIGHTY =
            Set.of(Topics.WARNINGS, Topics.PREPARATION, Topics.MACHINE, Topics.METAL_METHOD, Topics.POLISHING_AGENT);

    public Question {
        Refuse.nulls(Question.class, field, rules, waiting, topics);
        rules = List.copyOf(rules);
        waiting = List.copyOf(waiting);
        topics = List.copyOf(topics);
    }

    /** True where the answer can change whether the floor is worked, or where and with which grits it is cut. */
    public boolean isDecisive() {
        return isDecisive(topics);
    }

    /** True where the answer can change whether and how the floor is cut, what is safe, or what the job costs. */
    public boolean isWeighty() {
        return isDecisive() || topics.stream().anyMatch(WEIGHTY::contains);
    }

    /** True where one of these topics says whether a floor is worked, or where and with which grits it is cut. */
    public static boolean isDecisive(Collection<Topic<?>> topics) {
        return topics.stream().anyMatch(DECISIVE::contains);
    }
}
