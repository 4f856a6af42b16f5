package stoneprocess.core.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Preparation;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Status;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.TrackKind;

/**
 * What differs between two recommendations: of one floor under two rulebases, or of two surveys. It holds nothing that
 * both have. Immutable and safe to share between threads.
 *
 * @param one status of the one
 * @param other status of the other
 * @param matters matters that end differently, or alike through other rules, in the order of the topic table
 * @param tracks tracks with other grades, in the order of {@link TrackKind}
 * @param preparation tasks before the first cut
 * @param warnings hazards; one that both warn of stands on both sides when rules, sources or certainty differ
 * @param questions names of the fields that are asked for, in the order of their weight
 * @param counterOffers ways out
 * @param answers what the two surveys answer, in the order of the survey form
 * @param parameters names of the numbers that differ, in the order of their table
 * @param rulebases hashes of the rulebases
 */
public record Difference(
        Status one,
        Status other,
        List<MatterDifference> matters,
        List<TrackDifference> tracks,
        Split<Preparation> preparation,
        Split<SafetyWarning> warnings,
        Split<String> questions,
        Split<CounterOffer<?>> counterOffers,
        Split<FieldAnswer> answers,
        List<String> parameters,
        Split<String> rulebases) {
    /** Version of the JSON form. */
    public static final String FORMAT = "difference/1";

    public Difference {
        Refuse.nulls(
                Difference.class,
                one,
                other,
                matters,
                tracks,
                preparation,
                warnings,
                questions,
                counterOffers,
                answers,
                parameters,
                rulebases);
        matters = List.copyOf(matters);
        tracks = List.copyOf(tracks);
        parameters = List.copyOf(parameters);
    }

    /**
     * What differs between two recommendations.
     *
     * @throws NullPointerException when one of them is null
     */
    public static Difference between(Recommendation one, Recommendation other) {
        return new Difference(
                one.status(),
                other.status(),
                matters(one, other),
                tracks(one, other),
                Split.of(preparation(one), preparation(other)),
                Split.of(one.warnings(), other.warnings()),
                Split.of(fields(one), fields(other)),
                Split.of(one.counterOffers(), other.counterOffers()),
                Split.of(FieldAnswer.known(one.survey()), FieldAnswer.known(other.survey())),
                parameters(one, other),
                Split.of(
                        List.of(one.rulebase().hash()), List.of(other.rulebase().hash())));
    }

    /** True when both advise the same for the same reasons, whatever they were asked. */
    public boolean sameAdvice() {
        return one == other
                && matters.isEmpty()
                && tracks.isEmpty()
                && preparation.isEmpty()
                && warnings.isEmpty()
                && questions.isEmpty()
                && counterOffers.isEmpty();
    }

    /** True when nothing differs, what they were asked and by which rules included. */
    public boolean isEmpty() {
        return sameAdvice() && answers.isEmpty() && parameters.isEmpty() && rulebases.isEmpty();
    }

    private static List<MatterDifference> matters(Recommendation one, Recommendation other) {
        Map<Matter, Outcome> first = byMatter(one);
        Map<Matter, Outcome> second = byMatter(other);
        List<MatterDifference> matters = new ArrayList<>();
        for (Matter matter : merged(List.copyOf(first.keySet()), List.copyOf(second.keySet()))) {
            Outcome mine = first.get(matter);
            Outcome theirs = second.get(matter);
            Side<?> left = side(matter.topic(), mine, theirs);
            Side<?> right = side(matter.topic(), theirs, mine);
            MatterDifference difference = new MatterDifference(matter, left, right);
            if (difference.changed()
                    || !left.rules().isEmpty()
                    || !right.rules().isEmpty()) {
                matters.add(difference);
            }
        }
        return matters;
    }

    private static Map<Matter, Outcome> byMatter(Recommendation recommendation) {
        Map<Matter, Outcome> outcomes = new LinkedHashMap<>();
        recommendation.outcomes().forEach(outcome -> outcomes.put(Matter.of(outcome), outcome));
        return outcomes;
    }

    /** Both lists in one order: what only the second has stands behind what it follows there. */
    private static List<Matter> merged(List<Matter> first, List<Matter> second) {
        List<Matter> merged = new ArrayList<>(first);
        Set<Matter> known = new LinkedHashSet<>(first);
        int position = 0;
        for (Matter matter : second) {
            if (known.contains(matter)) {
                position = merged.indexOf(matter) + 1;
            } else {
                merged.add(position, matter);
                position++;
            }
        }
        return merged;
    }

    private static Side<?> side(Topic<?> topic, @Nullable Outcome mine, @Nullable Outcome theirs) {
        Set<String> rules = rules(mine);
        rules.removeAll(rules(theirs));
        if (mine == null) {
            return new Side<>(topic, Closing.NOT_REACHED, List.of(), List.of());
        }
        return mine instanceof Decision<?> decision
                ? decided(decision, List.copyOf(rules))
                : new Side<>(topic, Closing.IMPASSE, List.of(), List.copyOf(rules));
    }

    private static <V> Side<V> decided(Decision<V> decision, List<String> rules) {
        return new Side<>(decision.topic(), Closing.DECIDED, decision.values(), rules);
    }

    private static Set<String> rules(@Nullable Outcome outcome) {
        Set<String> rules = new TreeSet<>();
        if (outcome != null) {
            outcome.reasons().stream().map(Reason::rule).forEach(rules::add);
        }
        return rules;
    }

    private static List<TrackDifference> tracks(Recommendation one, Recommendation other) {
        return Stream.of(TrackKind.values())
                .map(track -> new TrackDifference(track, grades(one, track), grades(other, track)))
                .filter(track -> !track.one().equals(track.other()))
                .toList();
    }

    private static List<String> grades(Recommendation recommendation, TrackKind kind) {
        return recommendation.steps(kind).stream()
                .map(step -> step.grade().key())
                .toList();
    }

    private static List<Preparation> preparation(Recommendation recommendation) {
        return recommendation.plan().map(Plan::preparation).orElse(List.of());
    }

    private static List<String> fields(Recommendation recommendation) {
        return recommendation.questions().stream().map(Question::field).toList();
    }

    private static List<String> parameters(Recommendation one, Recommendation other) {
        return one.parameters().all().stream()
                .filter(parameter ->
                        !other.parameters().parameter(parameter.name()).value().equals(parameter.value()))
                .map(Parameter::name)
                .toList();
    }
}
