package stoneprocess.core.answer;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.plan.Status;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

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

    private static final Comparator<MatterDifference> ORDER = Comparator.comparing((MatterDifference difference) ->
                    Topics.all().indexOf(difference.matter().topic()))
            .thenComparing(difference -> difference.one().closing() == Closing.NOT_REACHED);

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

        /**
         * What differs on one floor; empty when both give the same advice.
         *
         * @param index place of the survey among those that are compared, from 0
         */
        public static Optional<Floor> of(int index, Recommendation one, Recommendation other) {
            Difference difference = Difference.between(one, other);
            List<MatterDifference> changed = difference.matters().stream()
                    .filter(MatterDifference::changed)
                    .sorted(ORDER)
                    .toList();
            if (changed.isEmpty() && one.status() == other.status()) {
                return Optional.empty();
            }
            Set<String> differing = new HashSet<>(difference.parameters());
            changed.forEach(matter -> differing.add(matter.matter().topic().id()));
            List<Differs> decisions = changed.stream()
                    .map(matter -> Differs.of(
                            matter,
                            Stream.of(one, other)
                                    .flatMap(recommendation -> behind(recommendation, matter.matter()))
                                    .filter(differing::contains)))
                    .toList();
            return Optional.of(new Floor(index, one.survey().title(), one.status(), other.status(), decisions));
        }

        /** Topics and numbers from which a matter was concluded. */
        private static Stream<String> behind(Recommendation recommendation, Matter matter) {
            return recommendation.outcomes().stream()
                    .filter(outcome -> outcome.closes(matter.topic(), matter.subject()))
                    .flatMap(outcome -> Stream.concat(
                            outcome instanceof Decision<?> decision ? decision.inputs().stream() : Stream.empty(),
                            outcome.reasons().stream()
                                    .flatMap(reason -> reason.facts().stream())
                                    .flatMap(fact -> fact.topics().stream())
                                    .map(Topic::id)));
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

        private static Differs of(MatterDifference difference, Stream<String> behind) {
            String topic = difference.matter().topic().id();
            return new Differs(
                    topic,
                    difference.matter().subject(),
                    new Side(difference.one().closing(), difference.one().values()),
                    new Side(difference.other().closing(), difference.other().values()),
                    difference.one().rules(),
                    difference.other().rules(),
                    behind.filter(name -> !name.equals(topic))
                            .distinct()
                            .sorted()
                            .toList());
        }
    }

    /**
     * How one rulebase closed a topic.
     *
     * @param end decided, at an impasse, or not reached
     * @param values keys of the values; none unless decided
     */
    public record Side(Closing end, List<String> values) {
        /** Copies the list. */
        public Side {
            Refuse.nulls(Side.class, end, values);
            values = List.copyOf(values);
        }
    }
}
