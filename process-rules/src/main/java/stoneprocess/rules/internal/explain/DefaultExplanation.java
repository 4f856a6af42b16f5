package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.answer.Explanation;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/** Answers from the decision records of a recommendation and from what the rules that made it read and say. */
final class DefaultExplanation implements Explanation {
    private static final Numbered<String> FORM = form();

    private final Recommendation recommendation;
    private final Map<Matter, Outcome> outcomes = new LinkedHashMap<>();
    private final Map<Topic<?>, List<Matter>> byTopic = new HashMap<>();
    private final Numbered<Card> cards;
    private final Map<String, FieldAnswer> answers = new HashMap<>();
    private final Map<Topic<?>, List<String>> domains = new HashMap<>();
    private final WhyFinder whys;
    private final WhyNotFinder whyNots;

    DefaultExplanation(Recommendation recommendation, Explainer explainer) {
        this.recommendation = recommendation;
        this.cards = explainer.cards();
        for (Outcome outcome : recommendation.outcomes()) {
            Matter matter = Matter.of(outcome);
            outcomes.put(matter, outcome);
            byTopic.computeIfAbsent(matter.topic(), topic -> new ArrayList<>()).add(matter);
        }
        this.whys = new WhyFinder(this);
        this.whyNots = new WhyNotFinder(this, explainer);
    }

    private static Numbered<String> form() {
        Map<String, String> form = new LinkedHashMap<>();
        FieldAnswer.names().forEach(name -> form.put(name, name));
        return new Numbered<>(form);
    }

    @Override
    public List<Matter> matters() {
        return List.copyOf(outcomes.keySet());
    }

    @Override
    public List<String> alternatives(Topic<?> topic, Subject subject) {
        Outcome outcome = outcome(topic, subject);
        List<String> decided = outcome instanceof Decision<?> decision ? decision.keys() : List.of();
        return domain(topic).stream().filter(value -> !decided.contains(value)).toList();
    }

    /** Keys of the domain, or of the grits of the sequence. */
    List<String> domain(Topic<?> topic) {
        return domains.computeIfAbsent(topic, this::makeDomain);
    }

    private List<String> makeDomain(Topic<?> topic) {
        return isOverGrades(topic)
                ? recommendation.sequence().grades().stream()
                        .map(AbrasiveGrade::key)
                        .toList()
                : Term.keys(topic.domain());
    }

    @Override
    public Why why(Topic<?> topic, Subject subject) {
        return whys.why(Matter.of(outcome(topic, subject)));
    }

    @Override
    public WhyNot whyNot(Topic<?> topic, Subject subject, String value) {
        Outcome outcome = outcome(topic, subject);
        if (topic == Topics.PASSES || topic == Topics.LITRES) {
            return whyNots.ofFigure(topic, outcome, value);
        }
        boolean had = outcome instanceof Decision<?> decision && decision.keys().contains(value);
        if (had || !domain(topic).contains(value)) {
            List<String> others = alternatives(topic, subject);
            throw new InvalidInputException(
                    topic.id() + ".value",
                    value,
                    others.isEmpty()
                            ? "nothing; the outcome has every value that there is"
                            : "a value that the outcome does not have, one of " + String.join(", ", others));
        }
        return topic instanceof Choice<?> choice
                ? whyNots.ofValue(choice, outcome, choice.value(value))
                : whyNots.ofGrade(topic, outcome, value);
    }

    private static boolean isOverGrades(Topic<?> topic) {
        return topic == Topics.GRIT_PATH || topic == Topics.TEST_CUTS;
    }

    private Outcome outcome(Topic<?> topic, Subject subject) {
        if (!Topics.all().contains(topic)) {
            throw new InvalidInputException("topic", topic.id(), "the topic of the topic table");
        }
        if (!topic.scope().fits(subject)) {
            throw new InvalidInputException(
                    topic.id() + ".subject", subject.key(), topic.scope().subjects());
        }
        Outcome outcome = outcomes.get(new Matter(topic, subject));
        if (outcome == null) {
            throw notReached(topic, subject);
        }
        return outcome;
    }

    private InvalidInputException notReached(Topic<?> topic, Subject subject) {
        List<String> reached =
                matters(topic).stream().map(matter -> matter.subject().key()).toList();
        return reached.isEmpty()
                ? new InvalidInputException(
                        "topic",
                        topic.id(),
                        "a topic decided for this floor, whose status is "
                                + recommendation.status().key() + ": "
                                + String.join(
                                        ", ",
                                        outcomes.keySet().stream()
                                                .map(matter -> matter.topic().id())
                                                .distinct()
                                                .toList()))
                : new InvalidInputException(
                        topic.id() + ".subject",
                        subject.key(),
                        "one that this recommendation came to: " + String.join(", ", reached));
    }

    /** What a matter rests on at once. */
    List<Matter> restsOn(Matter matter) {
        return whys.restsOn(matter);
    }

    Recommendation recommendation() {
        return recommendation;
    }

    /** What a topic was closed for. */
    List<Matter> matters(Topic<?> topic) {
        return byTopic.getOrDefault(topic, List.of());
    }

    Outcome outcome(Matter matter) {
        Outcome outcome = outcomes.get(matter);
        if (outcome == null) {
            throw new RulebaseException("Nothing was decided on " + matter);
        }
        return outcome;
    }

    /** The cards at some places, ordered by id. */
    List<Card> cardsAt(BitSet places) {
        return cards.at(places);
    }

    int cardOf(String rule) {
        Integer place = cards.place(rule);
        if (place == null) {
            throw new InvalidInputException("recommendation.rule", rule, "a recommendation of the rules that explain");
        }
        return place;
    }

    /** What the survey answers to the questions, in the order of its form. */
    List<FieldAnswer> answersAt(BitSet places) {
        List<FieldAnswer> found = new ArrayList<>(places.cardinality());
        for (String field : FORM.at(places)) {
            found.add(answers.computeIfAbsent(field, name -> FieldAnswer.of(recommendation.survey(), name)));
        }
        return found;
    }

    /** Where a question stands in the form; null when it is none. */
    @Nullable
    Integer questionOf(String field) {
        return FORM.place(field);
    }

    /** Adds where a question stands in the form. */
    void addQuestion(String field, BitSet places) {
        places.set(Objects.requireNonNull(questionOf(field), field));
    }
}
