package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.answer.Ground;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.Why;
import stoneprocess.core.decision.Input;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.feature.Decided;
import stoneprocess.rules.feature.Step;

/** Follows an outcome back to the survey. */
final class WhyFinder {
    private static final Map<Topic<?>, Integer> TABLE_ORDER = order();
    private static final Comparator<Matter> LATEST_FIRST =
            Comparator.comparing(matter -> -TABLE_ORDER.get(matter.topic()));

    /** All that stands behind a matter, as places among matters, cards and questions. */
    private record Behind(
            Ground ground, BitSet matters, BitSet cards, BitSet questions, Map<String, Quantity> numbers) {}

    private final DefaultExplanation explanation;
    private final List<Matter> latestFirst;
    private final Map<Matter, Integer> places = new HashMap<>();
    private final @Nullable Behind[] behind;

    WhyFinder(DefaultExplanation explanation) {
        this.explanation = explanation;
        this.latestFirst = explanation.matters().stream().sorted(LATEST_FIRST).toList();
        latestFirst.forEach(matter -> places.put(matter, places.size()));
        this.behind = new Behind[latestFirst.size()];
    }

    private static Map<Topic<?>, Integer> order() {
        Map<Topic<?>, Integer> order = new HashMap<>();
        Topics.all().forEach(topic -> order.put(topic, order.size()));
        return Map.copyOf(order);
    }

    Why why(Matter matter) {
        Behind all = follow(placeOf(matter));
        List<Ground> grounds = new ArrayList<>(all.matters().cardinality());
        all.matters().stream().forEach(place -> grounds.add(follow(place).ground()));
        return new Why(
                grounds, explanation.cardsAt(all.cards()), explanation.answersAt(all.questions()), all.numbers());
    }

    /** What a matter rests on at once. */
    List<Matter> restsOn(Matter matter) {
        return follow(placeOf(matter)).ground().restsOn();
    }

    private int placeOf(Matter matter) {
        return Objects.requireNonNull(places.get(matter), matter::toString);
    }

    private Behind follow(int place) {
        Behind known = behind[place];
        if (known != null) {
            return known;
        }
        Behind found = alone(latestFirst.get(place));
        found.matters().set(place);
        for (Matter next : found.ground().restsOn()) {
            Behind deeper = follow(placeOf(next));
            found.matters().or(deeper.matters());
            found.cards().or(deeper.cards());
            found.questions().or(deeper.questions());
            found.numbers().putAll(deeper.numbers());
        }
        behind[place] = found;
        return found;
    }

    private Behind alone(Matter matter) {
        Behind alone = new Behind(ground(matter), new BitSet(), new BitSet(), new BitSet(), new TreeMap<>());
        for (Reason reason : alone.ground().reasons()) {
            alone.cards().set(explanation.cardOf(reason.rule()));
            reason.facts().stream()
                    .flatMap(fact -> Readings.of(fact).stream())
                    .forEach(field -> explanation.addQuestion(field, alone.questions()));
        }
        for (Input input : Readings.inputs(alone.ground().outcome())) {
            if (input instanceof Input.OfField || input instanceof Input.OfDamage) {
                explanation.addQuestion(input.name(), alone.questions());
            } else if (input instanceof Input.OfParameter) {
                Parameters parameters = explanation.recommendation().parameters();
                alone.numbers()
                        .put(input.name(), parameters.parameter(input.name()).value());
            }
        }
        return alone;
    }

    private Ground ground(Matter matter) {
        Outcome outcome = explanation.outcome(matter);
        Set<Matter> restsOn = new LinkedHashSet<>();
        for (Reason reason : outcome.reasons()) {
            reason.facts().forEach(fact -> restsOn.addAll(behind(fact)));
        }
        for (Input input : Readings.inputs(outcome)) {
            if (input instanceof Input.OfTopic before) {
                restsOn.addAll(behind(matter, before.topic()));
            }
        }
        return new Ground(outcome, matter.topic().policy(), List.copyOf(restsOn));
    }

    /** The matters that a fact was concluded from. */
    private List<Matter> behind(MatchedFact fact) {
        if (fact.name().equals(Step.class.getSimpleName())) {
            Subject.OfStep step = (Subject.OfStep) Subject.parse(fact.mayBe().get(0), fact.name());
            Matter path = new Matter(Topics.GRIT_PATH, new Subject.OfTrack(step.track()));
            boolean metal = step.grade().startsWith(Bond.METAL.key() + "-");
            return metal ? List.of(path, new Matter(Topics.METAL_METHOD, Subject.FLOOR)) : List.of(path);
        }
        if (fact.name().equals(Decided.LocalMarks.class.getSimpleName())) {
            return List.of(new Matter(Topics.FIRST_CUT, Subject.LOCAL_REPAIR));
        }
        return fact.topics().stream()
                .flatMap(topic -> explanation.matters(topic).stream())
                .toList();
    }

    /** The matters of a topic that went into a computed value. */
    private List<Matter> behind(Matter computed, Topic<?> topic) {
        if (topic.scope() == Scope.STEP) {
            return List.of(new Matter(topic, computed.subject()));
        }
        if (topic == Topics.GRIT_PATH) {
            return explanation.matters(topic).subList(0, 1);
        }
        if (topic.scope() == Scope.TRACK) {
            // A place is repaired separately only when the field's own cut does not clear it.
            boolean local = computed.subject().equals(Subject.LOCAL_REPAIR);
            return Stream.of(computed.subject(), local ? Subject.OPEN_FIELD : computed.subject())
                    .distinct()
                    .map(track -> new Matter(topic, track))
                    .toList();
        }
        return explanation.matters(topic);
    }
}
