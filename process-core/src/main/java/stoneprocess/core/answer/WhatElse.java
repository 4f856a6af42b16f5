package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.survey.HowFound;
import stoneprocess.core.topic.Topic;

/**
 * What is worth finding out: the facts that nobody knows yet and whose answer can change the outcome of a topic, those
 * that can change more topics first, then in the order of the survey form. What can change nothing is left out.
 *
 * @param open what is not known
 * @param untried names of what the search did not try in full before it ended; it may change more topics than are told. None
 *     in a whole answer
 * @param rulebase the rules that were asked
 */
public record WhatElse(List<Open> open, List<String> untried, RulebaseStamp rulebase) {
    /** Version of the JSON form. */
    public static final String FORMAT = "what-else/1";

    /**
     * One fact that nobody knows yet.
     *
     * @param field name of the field, {@code damages.} and a kind of damage, or {@code readings}
     * @param topics the topics whose outcome an answer can change, in the order in which they close; at least one
     * @param howFound the quickest test that settles it
     */
    public record Open(String field, List<Topic<?>> topics, HowFound howFound) {
        public Open {
            Refuse.nulls(Open.class, field, topics, howFound);
            topics = List.copyOf(topics);
        }
    }

    public WhatElse {
        Refuse.nulls(WhatElse.class, open, untried, rulebase);
        open = List.copyOf(open);
        untried = List.copyOf(untried);
    }
}
