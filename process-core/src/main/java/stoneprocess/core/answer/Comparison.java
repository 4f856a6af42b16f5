package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.plan.Status;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Subject;

/**
 * Two rulebases over the same surveys: which floors get other advice, topic by topic, and through which rules.
 *
 * @param one the rulebase that is compared
 * @param other the rulebase that it is compared with
 * @param floors how many surveys were answered by both
 * @param differing the floors that get other advice, in the order of the surveys
 */
public record Comparison(RulebaseStamp one, RulebaseStamp other, int floors, List<Floor> differing) {
    /** Version of the JSON form. */
    public static final String FORMAT = "comparison/1";

    /** Copies the list. */
    public Comparison {
        Refuse.nulls(Comparison.class, one, other, differing);
        differing = List.copyOf(differing);
    }

    /**
     * A floor that gets other advice.
     *
     * @param index place of its survey among those that were given, from 0
     * @param title title of the survey
     * @param one status by the first rulebase
     * @param other status by the second
     * @param decisions the topics that end otherwise, in the order in which they close
     */
    public record Floor(int index, String title, Status one, Status other, List<Differs> decisions) {
        /** Copies the list. */
        public Floor {
            Refuse.nulls(Floor.class, title, one, other, decisions);
            decisions = List.copyOf(decisions);
        }
    }

    /**
     * A topic that ends otherwise for a subject.
     *
     * @param topic id of the topic
     * @param subject what it is decided for
     * @param one what the first rulebase says
     * @param other what the second says
     * @param rulesOfOne ids of the rules that spoke to it in the first alone
     * @param rulesOfOther ids of the rules that spoke to it in the second alone
     * @param through ids of the topics before it that end otherwise too and names of the numbers that differ, as far as
     *     this one was concluded from them
     */
    public record Differs(
            String topic,
            Subject subject,
            Side one,
            Side other,
            List<String> rulesOfOne,
            List<String> rulesOfOther,
            List<String> through) {
        /** Copies the lists. */
        public Differs {
            Refuse.nulls(Differs.class, topic, subject, one, other, rulesOfOne, rulesOfOther, through);
            rulesOfOne = List.copyOf(rulesOfOne);
            rulesOfOther = List.copyOf(rulesOfOther);
            through = List.copyOf(through);
        }
    }

    /**
     * How one rulebase closed a topic.
     *
     * @param end decided, at an impasse, or not reached
     * @param values keys of the values; none unless decided
     */
    public record Side(End end, List<String> values) {
        /** Copies the list. */
        public Side {
            Refuse.nulls(Side.class, end, values);
            values = List.copyOf(values);
        }
    }

    /** How a topic ended. */
    public enum End implements Term {
        /** With values, which may be none. */
        DECIDED,

        /** No value was possible. */
        IMPASSE,

        /** It was not asked. */
        NOT_REACHED
    }
}
