package stoneprocess.core.answer;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Input;
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
            Set<Input> differing = new HashSet<>();
            difference.parameters().forEach(name -> differing.add(new Input.OfParameter(name)));
            changed.forEach(
                    matter -> differing.add(new Input.OfTopic(matter.matter().topic())));
            List<Differs> decisions = changed.stream()
                    .map(matter -> Differs.of(
                            matter,
                            Stream.of(one, other)
                                    .flatMap(recommendation -> behind(recommendation, matter.matter()))
                                    .filter(differing::contains)))
                    .toList();
            return Optional.of(new Floor(index, one.survey().title(), one.status(), other.status(), decisions));
        }

        /** What a matter was concluded from. */
        private static Stream<Input> behind(Recommendation recommendation, Matter matter) {
            return recommendation.outcomes().stream()
                    .filter(outcome -> outcome.closes(matter.topic(), matter.subject()))
                    .flatMap(outcome -> Stream.concat(
                            outcome instanceof Decision<?> decision ? decision.inputs().stream() : Stream.empty(),
                            outcome.reasons().stream()
                                    .flatMap(reason -> reason.facts().stream())
                                    .flatMap(fact -> fact.topics().stream())
                                    .map(Input.OfTopic::new)));
        }
    }

    /**
     * A topic that ends otherwise for a subject.
     *
     * @param topic the topic
     * @param subject what it is decided for
     * @param one what the first rulebase says
     * @param other what the second says
     * @param rulesOfOne ids of the rules that spoke to it in the first alone
     * @param rulesOfOther ids of the rules that spoke to it in the second alone
     * @param through the topics before it that end otherwise too and the numbers that differ, as far as
     *     this one was concluded from them
     */
    public record Differs(
            Topic<?> topic,
            Subject subject,
            Ending<?> one,
            Ending<?> other,
            List<String> rulesOfOne,
            List<String> rulesOfOther,
            List<Input> through) {
        public Differs {
            Refuse.nulls(Differs.class, topic, subject, one, other, rulesOfOne, rulesOfOther, through);
            rulesOfOne = List.copyOf(rulesOfOne);
            rulesOfOther = List.copyOf(rulesOfOther);
            through = List.copyOf(through);
        }

        private static Differs of(MatterDifference difference, Stream<Input> behind) {
            Input itself = new Input.OfTopic(difference.matter().topic());
            return new Differs(
                    difference.matter().topic(),
                    difference.matter().subject(),
                    Ending.of(difference.one()),
                    Ending.of(difference.other()),
                    difference.one().rules(),
                    difference.other().rules(),
                    behind.filter(input -> !input.equals(itself))
                            .distinct()
                            .sorted(Comparator.comparing(Input::name))
                            .toList());
        }
    }

    /**
     * How one rulebase closed a topic.
     *
     * @param <V> the topic's values
     * @param topic the topic
     * @param end decided, at an impasse, or not reached
     * @param values the values; none unless decided
     */
    public record Ending<V>(Topic<V> topic, Closing end, List<V> values) {
        public Ending {
            Refuse.nulls(Ending.class, topic, end, values);
            values = List.copyOf(values);
        }

        private static <V> Ending<V> of(Side<V> side) {
            return new Ending<>(side.topic(), side.closing(), side.values());
        }

        /** The values' stable keys. */
        public List<String> keys() {
            return topic.keys(values);
        }
    }
}
