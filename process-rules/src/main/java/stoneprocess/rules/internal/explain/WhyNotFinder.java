package stoneprocess.rules.internal.explain;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.SilentRule;
import stoneprocess.core.answer.Unmet;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.answer.WhyNotKind;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.internal.input.Decimals;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.decide.Policy;

/** Finds what kept a value from being the outcome. */
final class WhyNotFinder {
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000);
    private static final Comparator<SilentRule> NEAREST_FIRST = Comparator.comparing(
                    (SilentRule silent) -> silent.unmet().size())
            .thenComparing(WhyNotFinder::classSteps)
            .thenComparing(SilentRule::rule);

    private final DefaultExplanation explanation;
    private final Explainer explainer;
    // A rule that names several values is silent on each for the same reason, and on steps that look alike to it.
    private final Map<List<Seen>, Map<Asker, Optional<SilentRule>>> kept = new HashMap<>();
    private @Nullable FloorFacts facts;

    WhyNotFinder(DefaultExplanation explanation, Explainer explainer) {
        this.explanation = explanation;
        this.explainer = explainer;
    }

    private static long classSteps(SilentRule silent) {
        long steps = 0;
        for (Unmet condition : silent.unmet()) {
            steps += condition.steps();
        }
        return steps;
    }

    WhyNot ofValue(Choice<?> topic, Outcome outcome, Term value) {
        Policy policy = Policy.of(topic);
        List<Reason> excluding = reasons(outcome, reason -> policy.excludes(topic, reason, value));
        List<Reason> asking = reasons(outcome, reason -> asks(reason, value));
        if (outcome instanceof Impasse) {
            return spoken(WhyNotKind.IMPASSE, outcome, value, excluding, asking);
        }
        Decision<?> decision = (Decision<?>) outcome;
        if (policy.isSingle() && !policy.needsNarrow()) {
            return ofPrecedence(topic, decision, value);
        }
        if (!excluding.isEmpty()) {
            return spoken(WhyNotKind.VETOED, decision, value, excluding, asking);
        }
        if (!policy.isSingle()) {
            return silent(decision, value, asker -> asker.kind() != ContributionKind.VETO);
        }
        return policy.isLocal() ? ofOne(topic, decision, value, asking) : ofSteps(decision, value, asking);
    }

    private WhyNot ofOne(Choice<?> topic, Decision<?> decision, Term value, List<Reason> asking) {
        boolean milder = position(topic, value) < position(topic, (Term) decision.value());
        if (milder || asking.stream().anyMatch(WhyNotFinder::isWish)) {
            return spoken(WhyNotKind.OUTWEIGHED, decision, value, wishesThatWon(decision), asking);
        }
        List<Reason> all = decision.reasons();
        return silent(decision, value, asker -> wouldDecide(asker, all, value));
    }

    private static boolean isWish(Reason reason) {
        return reason.kind() == ContributionKind.WISH;
    }

    private static List<Reason> wishesThatWon(Decision<?> decision) {
        return decision.won().stream().filter(WhyNotFinder::isWish).toList();
    }

    /** A need decides on the most cautious value that it leaves, a wish on the best ranked that is allowed. */
    private static boolean wouldDecide(Asker asker, List<Reason> all, Term value) {
        return switch (asker.kind()) {
            case NEED -> asker.values().get(0).equals(value);
            case WISH -> {
                for (Term wished : asker.values()) {
                    if (all.stream().noneMatch(reason -> excludes(reason, wished))) {
                        yield wished.equals(value);
                    }
                }
                yield false;
            }
            case VETO -> false;
        };
    }

    /** The first value in the domain's order wins; what rests on something unknown may count for a milder one. */
    private WhyNot ofPrecedence(Choice<?> topic, Decision<?> decision, Term value) {
        List<Reason> asking = reasons(decision, reason -> reason.values().get(0).equals(value));
        if (position(topic, value) > position(topic, (Term) decision.value())) {
            List<Reason> others = decision.won().stream()
                    .filter(reason -> !asking.contains(reason))
                    .toList();
            return others.isEmpty()
                    ? uncertain(topic, decision, value, asking)
                    : spoken(WhyNotKind.OUTWEIGHED, decision, value, others, asking);
        }
        if (!asking.isEmpty()) {
            return uncertain(topic, decision, value, asking);
        }
        return silent(decision, value, asker -> asker.values().get(0).equals(value));
    }

    private WhyNot ofSteps(Decision<?> decision, Term value, List<Reason> asking) {
        List<Reason> by = new ArrayList<>(wishesThatWon(decision));
        Subject.OfStep own = (Subject.OfStep) decision.subject();
        explanation.matters(decision.topic()).stream()
                .filter(matter -> matter.subject() instanceof Subject.OfStep step && step.track() == own.track())
                .filter(matter -> !matter.subject().equals(own))
                .flatMap(matter -> explanation.outcome(matter).reasons().stream())
                .filter(reason -> excludes(reason, value))
                .forEach(by::add);
        return spoken(WhyNotKind.OTHER_STEPS, decision, value, by, asking);
    }

    private static int position(Choice<?> topic, Term value) {
        return topic.domain().indexOf(value);
    }

    private static List<Reason> reasons(Outcome outcome, Predicate<Reason> which) {
        List<Reason> found = new ArrayList<>();
        for (Reason reason : outcome.reasons()) {
            if (which.test(reason)) {
                found.add(reason);
            }
        }
        return found;
    }

    private static boolean excludes(Reason reason, Term value) {
        return switch (reason.kind()) {
            case NEED -> !reason.values().contains(value);
            case VETO -> reason.values().contains(value);
            case WISH -> false;
        };
    }

    private static boolean asks(Reason reason, Term value) {
        return reason.kind() != ContributionKind.VETO && reason.values().contains(value);
    }

    private WhyNot spoken(WhyNotKind kind, Outcome outcome, Term value, List<Reason> by, List<Reason> asked) {
        return whyNot(kind, outcome, value.key(), by, asked, List.of(), List.of(), Stream.of());
    }

    private WhyNot whyNot(
            WhyNotKind kind,
            Outcome outcome,
            String value,
            List<Reason> by,
            List<Reason> asked,
            List<SilentRule> silent,
            List<Matter> restsOn,
            Stream<String> fields) {
        BitSet cards = new BitSet();
        by.forEach(reason -> cards.set(explanation.cardOf(reason.rule())));
        asked.forEach(reason -> cards.set(explanation.cardOf(reason.rule())));
        silent.forEach(rule -> cards.set(explanation.cardOf(rule.rule())));
        BitSet questions = new BitSet();
        fields.forEach(field -> explanation.addQuestion(field, questions));
        return new WhyNot(
                value,
                kind,
                outcome,
                by,
                asked,
                silent,
                restsOn,
                explanation.cardsAt(cards),
                explanation.answersAt(questions));
    }

    private WhyNot silent(Decision<?> decision, Term value, Predicate<Asker> asks) {
        List<SilentRule> silent = new ArrayList<>();
        Map<Asker, Optional<SilentRule>> anywhere = kept(List.of());
        Map<Asker, Optional<SilentRule>> onStep = kept(facts().step(decision.subject()));
        for (Asker asker : explainer.naming(decision.topic(), value)) {
            if (asks.test(asker) && asker.concerns(decision.subject())) {
                (asker.readsStep() ? onStep : anywhere)
                        .computeIfAbsent(asker, key -> silent(key, decision.subject()))
                        .ifPresent(silent::add);
            }
        }
        return silent(WhyNotKind.NOT_ASKED, decision, value, List.of(), silent);
    }

    private Map<Asker, Optional<SilentRule>> kept(List<Seen> step) {
        return kept.computeIfAbsent(step, key -> new IdentityHashMap<>());
    }

    private Optional<SilentRule> silent(Asker asker, Subject subject) {
        List<Unmet> conditions = unmet(asker, subject);
        return conditions.isEmpty() ? Optional.empty() : Optional.of(new SilentRule(asker.rule(), conditions));
    }

    private WhyNot silent(
            WhyNotKind kind, Decision<?> decision, Term value, List<Reason> asked, List<SilentRule> silent) {
        silent.sort(NEAREST_FIRST);
        Stream<String> fields = silent.stream()
                .flatMap(rule -> rule.unmet().stream())
                .flatMap(condition -> condition.fields().stream());
        return whyNot(kind, decision, value.key(), List.of(), asked, silent, List.of(), fields);
    }

    private List<Unmet> unmet(Asker asker, Subject subject) {
        List<Unmet> found = new ArrayList<>();
        for (UnmetFinder condition : asker.conditions()) {
            found.addAll(condition.unmet(facts().of(condition.type(), subject)));
        }
        found.sort(Comparator.comparing(Unmet::steps));
        return found;
    }

    private FloorFacts facts() {
        FloorFacts read = facts;
        if (read == null) {
            read = new FloorFacts(explanation.recommendation(), explainer.seen());
            facts = read;
        }
        return read;
    }

    /** What would have to be known for the rules that asked to count in full. */
    private WhyNot uncertain(Topic<?> topic, Decision<?> decision, Term value, List<Reason> asking) {
        List<SilentRule> silent = new ArrayList<>();
        for (Asker asker : explainer.naming(topic, value)) {
            if (asking.stream().anyMatch(reason -> reason.rule().equals(asker.rule()))) {
                List<Unmet> unknown = asker.conditions().stream()
                        .map(condition -> condition.uncertain(facts().of(condition.type(), decision.subject())))
                        .flatMap(Optional::stream)
                        .toList();
                if (!unknown.isEmpty()) {
                    silent.add(new SilentRule(asker.rule(), unknown));
                }
            }
        }
        return silent(WhyNotKind.UNCERTAIN, decision, value, asking, silent);
    }

    WhyNot ofFigure(Topic<?> topic, Outcome outcome, String value) {
        BigDecimal number = number(topic, value);
        boolean whole = number.stripTrailingZeros().scale() <= 0;
        if (number.signum() < 0 || number.compareTo(MOST) > 0 || topic == Topics.PASSES && !whole) {
            throw notAFigure(topic, value);
        }
        return computed(WhyNotKind.COMPUTED, outcome, value, List.of(), inputs(outcome), Set.of());
    }

    private static BigDecimal number(Topic<?> topic, String value) {
        try {
            return Decimals.parse(value, topic.id());
        } catch (InvalidInputException e) {
            throw notAFigure(topic, value);
        }
    }

    private static InvalidInputException notAFigure(Topic<?> topic, String value) {
        return new InvalidInputException(
                topic.id() + ".value",
                value,
                (topic == Topics.PASSES ? "a whole number of passes" : "a number of litres") + ", from 0 to 1000000");
    }

    private List<Matter> inputs(Outcome outcome) {
        return explanation.restsOn(Matter.of(outcome));
    }

    WhyNot ofGrade(Topic<?> topic, Outcome outcome, String key) {
        if (topic == Topics.TEST_CUTS) {
            return computed(WhyNotKind.COMPUTED, outcome, key, List.of(), inputs(outcome), Set.of());
        }
        AbrasiveGrade grade = explanation.recommendation().sequence().get(key, topic.id());
        Optional<List<AbrasiveGrade>> onHand =
                explanation.recommendation().survey().answer(SurveyField.GRADES).value();
        if (onHand.filter(grades -> !grades.contains(grade)).isPresent()) {
            return computed(
                    WhyNotKind.NOT_ON_HAND, outcome, key, List.of(), List.of(), Set.of(SurveyField.GRADES.name()));
        }
        Matter bonds = new Matter(Topics.BONDS, Subject.FLOOR);
        if (explanation.outcome(bonds) instanceof Decision<?> used
                && !used.values().contains(grade.bond())) {
            List<Reason> excluding = reasons(used, reason -> excludes(reason, grade.bond()));
            return computed(WhyNotKind.BOND_LEFT_OUT, outcome, key, excluding, List.of(bonds), Set.of());
        }
        if (outcome instanceof Impasse) {
            return computed(
                    WhyNotKind.NO_PATH, outcome, key, List.of(), inputs(outcome), Set.of(SurveyField.GRADES.name()));
        }
        return besidePath((Decision<?>) outcome, grade);
    }

    private WhyNot besidePath(Decision<?> path, AbrasiveGrade grade) {
        List<String> sequence = explanation.recommendation().sequence().grades().stream()
                .map(AbrasiveGrade::key)
                .toList();
        int position = sequence.indexOf(grade.key());
        int start = sequence.indexOf(path.keys().get(0));
        int end = sequence.indexOf(path.keys().get(path.values().size() - 1));
        Matter firstCut = new Matter(Topics.FIRST_CUT, path.subject());
        Matter lastGrit = new Matter(Topics.LAST_GRIT, Subject.FLOOR);
        if (position > end) {
            return computed(WhyNotKind.AFTER_END, path, grade.key(), List.of(), List.of(lastGrit), Set.of());
        }
        if (position < start) {
            return computed(
                    WhyNotKind.BEFORE_START, path, grade.key(), List.of(), List.of(firstCut, lastGrit), Set.of());
        }
        return computed(WhyNotKind.STEPPED_OVER, path, grade.key(), List.of(), inputs(path), Set.of());
    }

    private WhyNot computed(
            WhyNotKind kind, Outcome outcome, String value, List<Reason> by, List<Matter> restsOn, Set<String> fields) {
        return whyNot(kind, outcome, value, by, List.of(), List.of(), restsOn, fields.stream());
    }
}
