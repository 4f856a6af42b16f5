package stoneprocess.rules.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.Ground;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.Why;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.decision.Scope;
import stoneprocess.core.decision.Subject;
import stoneprocess.core.decision.Topic;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.tool.Bond;
import stoneprocess.rules.decide.Topics;
import stoneprocess.rules.feature.Decided;
import stoneprocess.rules.feature.Step;

/** Follows an outcome back to the survey. */
final class WhyFinder {
    private static final Map<String, Integer> TABLE_ORDER = order();
    private static final Set<String> FIELDS = Set.copyOf(FieldAnswer.names());
    private static final Comparator<Ground> LATEST_FIRST =
            Comparator.comparing(ground -> -TABLE_ORDER.get(ground.matter().topic()));

    /** A ground with what it adds to an answer by itself. */
    private record Link(Ground ground, Set<String> rules, Set<String> fields, Map<String, Quantity> numbers) {}

    private final Explanation explanation;
    private final Map<Matter, Link> links = new HashMap<>();

    WhyFinder(Explanation explanation) {
        this.explanation = explanation;
    }

    private static Map<String, Integer> order() {
        Map<String, Integer> order = new HashMap<>();
        Topics.all().forEach(topic -> order.put(topic.id(), order.size()));
        return Map.copyOf(order);
    }

    Why why(Outcome outcome) {
        Map<Matter, Link> behind = new LinkedHashMap<>();
        follow(Matter.of(outcome), behind);
        List<Ground> ordered =
                new ArrayList<>(behind.values().stream().map(Link::ground).toList());
        ordered.sort(LATEST_FIRST);
        Set<String> rules = new HashSet<>();
        Set<String> fields = new HashSet<>();
        Map<String, Quantity> numbers = new TreeMap<>();
        for (Link link : behind.values()) {
            rules.addAll(link.rules());
            fields.addAll(link.fields());
            numbers.putAll(link.numbers());
        }
        return new Why(ordered, explanation.cards(rules.stream()), explanation.answers(fields), numbers);
    }

    private void follow(Matter matter, Map<Matter, Link> behind) {
        if (!behind.containsKey(matter)) {
            Link link = links.computeIfAbsent(matter, this::link);
            behind.put(matter, link);
            link.ground().restsOn().forEach(next -> follow(next, behind));
        }
    }

    private Link link(Matter matter) {
        Ground ground = ground(matter);
        Set<String> rules = new HashSet<>();
        Set<String> fields = new HashSet<>();
        Map<String, Quantity> numbers = new TreeMap<>();
        for (Reason reason : ground.reasons()) {
            rules.add(reason.rule());
            reason.facts().forEach(fact -> fields.addAll(Readings.of(fact)));
        }
        for (String input : Readings.inputs(ground.outcome())) {
            if (FIELDS.contains(input)) {
                fields.add(input);
            } else if (!TABLE_ORDER.containsKey(input)) {
                numbers.put(
                        input,
                        explanation
                                .recommendation()
                                .parameters()
                                .parameter(input)
                                .value());
            }
        }
        return new Link(ground, rules, fields, numbers);
    }

    private Ground ground(Matter matter) {
        Outcome outcome = explanation.outcome(matter);
        Set<Matter> restsOn = new LinkedHashSet<>();
        for (Reason reason : Ground.reasons(outcome)) {
            reason.facts().forEach(fact -> restsOn.addAll(behind(fact)));
        }
        Readings.inputs(outcome).stream()
                .filter(TABLE_ORDER::containsKey)
                .forEach(input -> restsOn.addAll(behind(matter, input)));
        return new Ground(outcome, Topics.named(matter.topic()).policy(), List.copyOf(restsOn));
    }

    /** The matters that a fact was concluded from. */
    private List<Matter> behind(MatchedFact fact) {
        if (fact.name().equals(Step.class.getSimpleName())) {
            Subject.OfStep step = (Subject.OfStep) Subject.parse(fact.mayBe().get(0), fact.name());
            Matter path = new Matter(Topics.GRIT_PATH.id(), new Subject.OfTrack(step.track()));
            boolean metal = step.grade().startsWith(Bond.METAL.key() + "-");
            return metal ? List.of(path, new Matter(Topics.METAL_METHOD.id(), Subject.FLOOR)) : List.of(path);
        }
        if (fact.name().equals(Decided.LocalMarks.class.getSimpleName())) {
            return List.of(new Matter(Topics.FIRST_CUT.id(), Subject.LOCAL_REPAIR));
        }
        return fact.topics().stream()
                .flatMap(topic -> explanation.matters(topic).stream())
                .toList();
    }

    /** The matters of a topic that went into a computed value. */
    private List<Matter> behind(Matter computed, String input) {
        Topic<?> topic = Topics.named(input);
        if (topic.scope() == Scope.STEP) {
            return List.of(new Matter(input, computed.subject()));
        }
        if (topic == Topics.GRIT_PATH) {
            return explanation.matters(input).subList(0, 1);
        }
        if (topic.scope() == Scope.TRACK) {
            // A place is repaired by itself only when the field's own cut does not clear it.
            boolean local = computed.subject().equals(Subject.LOCAL_REPAIR);
            return Stream.of(computed.subject(), local ? Subject.OPEN_FIELD : computed.subject())
                    .distinct()
                    .map(track -> new Matter(input, track))
                    .toList();
        }
        return explanation.matters(input);
    }
}
