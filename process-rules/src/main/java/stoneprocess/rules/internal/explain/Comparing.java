package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.answer.Comparison;
import stoneprocess.core.answer.Comparison.Differs;
import stoneprocess.core.answer.Comparison.End;
import stoneprocess.core.answer.Comparison.Side;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/** Compares how two rulebases answer the same survey, topic by topic. */
public final class Comparing {
    private record Place(String topic, Subject subject) {}

    private final Map<Place, Outcome> one;
    private final Map<Place, Outcome> other;
    private final Set<String> numbers;
    private final Set<Place> differing = new LinkedHashSet<>();

    private Comparing(Recommendation one, Recommendation other) {
        this.one = byPlace(one);
        this.other = byPlace(other);
        this.numbers = differing(one.parameters(), other.parameters());
        Stream.concat(this.one.keySet().stream(), this.other.keySet().stream())
                .filter(place -> !side(this.one.get(place)).equals(side(this.other.get(place))))
                .forEach(differing::add);
    }

    /**
     * What differs on one floor; empty when both give the same advice.
     *
     * @param index place of the survey among those that are compared, from 0
     */
    public static Optional<Comparison.Floor> floor(int index, Recommendation one, Recommendation other) {
        List<Differs> decisions = new Comparing(one, other).decisions();
        if (decisions.isEmpty() && one.status() == other.status()) {
            return Optional.empty();
        }
        return Optional.of(new Comparison.Floor(index, one.survey().title(), one.status(), other.status(), decisions));
    }

    private List<Differs> decisions() {
        List<Differs> decisions = new ArrayList<>();
        for (Topic<?> topic : Topics.all()) {
            differing.stream()
                    .filter(place -> place.topic().equals(topic.id()))
                    .forEach(place -> decisions.add(differs(place)));
        }
        return decisions;
    }

    private Differs differs(Place place) {
        Outcome here = one.get(place);
        Outcome there = other.get(place);
        Set<String> rulesHere = rules(here);
        Set<String> rulesThere = rules(there);
        Set<String> endOtherwise = differing.stream().map(Place::topic).collect(Collectors.toSet());
        List<String> through = Stream.concat(rests(here), rests(there))
                .filter(name -> endOtherwise.contains(name) || numbers.contains(name))
                .filter(name -> !name.equals(place.topic()))
                .distinct()
                .sorted()
                .toList();
        return new Differs(
                place.topic(),
                place.subject(),
                side(here),
                side(there),
                rulesHere.stream().filter(rule -> !rulesThere.contains(rule)).toList(),
                rulesThere.stream().filter(rule -> !rulesHere.contains(rule)).toList(),
                through);
    }

    private static Map<Place, Outcome> byPlace(Recommendation recommendation) {
        Map<Place, Outcome> byPlace = new LinkedHashMap<>();
        recommendation
                .outcomes()
                .forEach(outcome -> byPlace.put(new Place(outcome.topic().id(), outcome.subject()), outcome));
        return byPlace;
    }

    private static Set<String> differing(Parameters one, Parameters other) {
        Map<String, Object> values =
                other.all().stream().collect(Collectors.toMap(Parameter::name, parameter -> parameter.value()));
        return one.all().stream()
                .filter(parameter -> !parameter.value().equals(values.get(parameter.name())))
                .map(Parameter::name)
                .collect(Collectors.toSet());
    }

    private static Side side(@Nullable Outcome outcome) {
        if (outcome instanceof Decision<?> decision) {
            return new Side(End.DECIDED, decision.keys());
        }
        return new Side(outcome == null ? End.NOT_REACHED : End.IMPASSE, List.of());
    }

    private static Set<String> rules(@Nullable Outcome outcome) {
        return reasons(outcome).map(Reason::rule).sorted().collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Topics and numbers that an outcome was concluded from. */
    private static Stream<String> rests(@Nullable Outcome outcome) {
        Stream<String> inputs = outcome instanceof Decision<?> decision ? decision.inputs().stream() : Stream.empty();
        Stream<String> behindFacts = reasons(outcome)
                .flatMap(reason -> reason.facts().stream())
                .flatMap(fact -> fact.topics().stream())
                .map(Topic::id);
        return Stream.concat(inputs, behindFacts);
    }

    private static Stream<Reason> reasons(@Nullable Outcome outcome) {
        return Stream.ofNullable(outcome).map(Outcome::reasons).flatMap(List::stream);
    }
}
