package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stoneprocess.core.answer.Hold;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Protection;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Item;
import stoneprocess.rules.text.document.Wording;

/**
 * A recommendation as a text that a floor technician carries onto the site. Never parse it: the recommendation holds
 * the same as data. Immutable and safe to share between threads.
 */
public final class PlanText {
    private static final List<Topic<?>> TOPICS_EXPLAINED = List.of(
            Topics.STONE,
            Topics.VERDICT,
            Topics.FINISH,
            Topics.BONDS,
            Topics.FIRST_CUT,
            Topics.LAST_GRIT,
            Topics.STEP_RULE,
            Topics.TRANSITION,
            Topics.POLISHING_AGENT,
            Topics.DENSIFIER,
            Topics.SEALER);

    /** What does not wait for the work; it heads the page and is no step of the preparation. */
    static final Set<Task> AT_ONCE = Set.of(
            Task.STOP_AND_SAMPLE, Task.STOP_CLEANER, Task.PART_ACID_FROM_CHLORINE, Task.BAR_TRIPS, Task.GUARD_SLIPS);

    /** What others settle or mend before a refusal falls away. */
    private static final Set<Task> FIRST_STEPS = EnumSet.of(
            Task.CALL_SPECIALIST,
            Task.CONSULT_CONSERVATOR,
            Task.CONFIRM_FLOOR_LOAD,
            Task.FIND_MOISTURE,
            Task.FIX_HOLLOW);

    private final RuleWords cards;

    /**
     * @param cards the cards of the rulebase that made the recommendations
     */
    public PlanText(Collection<Card> cards) {
        this.cards = new RuleWords(cards);
    }

    /** A recommendation as a document, which {@link stoneprocess.rules.text.document.Texts} or any other page renders. */
    public Document document(Recommendation recommendation, Detail detail) {
        Draft draft = Draft.titled(Wording.name(recommendation.survey().title()), recommendation.parameters());
        PlanTotals totals = PlanTotals.of(recommendation);
        PlanWords words = PlanWords.of(recommendation, detail);
        PlanFront.write(draft, recommendation, words, totals);
        today(draft, recommendation, words);
        refusals(draft, recommendation, words);
        verdict(draft, recommendation);
        impasses(draft, recommendation);
        if (detail == Detail.FULL) {
            draft.list("questions.heading", recommendation.questions(), asked -> question(recommendation, asked));
        } else {
            PlanFront.visit(draft, recommendation);
        }
        boolean mayStart = recommendation.plan().isPresent() || recommendation.status() == Status.REFUSED;
        if (detail == Detail.FULL
                || mayStart
                || !HazardRank.STOPS_THE_WORK.of(recommendation.warnings()).isEmpty()
                || !HazardRank.SETTLE_FIRST.of(recommendation.warnings()).isEmpty()) {
            WarningWords.warnings(draft, recommendation, detail);
        }
        if (recommendation.plan().isEmpty()) {
            PlanSections.notPlanned(draft, recommendation, words);
            PlanSections.openDeadline(draft, recommendation, totals);
        }
        limits(draft, recommendation);
        recommendation.plan().ifPresent(plan -> PlanSections.write(draft, recommendation, plan, words, totals));
        if (detail == Detail.FULL) {
            reasons(draft, recommendation);
            WarningWords.sources(draft, recommendation.warnings());
        }
        WarningWords.close(draft, recommendation.rulebase(), detail);
        return draft.document();
    }

    /** What keeps people and floor safe before any work, whether or not there is a plan. */
    private static void today(Draft draft, Recommendation recommendation, PlanWords words) {
        List<Task> tasks = recommendation.values(Topics.PREPARATION, Subject.FLOOR).stream()
                .filter(AT_ONCE::contains)
                .toList();
        draft.list("today.heading", tasks, task -> words.ofFloor(Topics.PREPARATION, task));
    }

    private void refusals(Draft draft, Recommendation recommendation, PlanWords words) {
        if (recommendation.status() == Status.REFUSED) {
            List<String> refused = RuleWords.rules(recommendation.refusals());
            Stream<Reason> holds = Hold.of(recommendation, cards::card).stream()
                    .filter(hold -> hold.topic() == Topics.VERDICT)
                    .map(Hold::reason);
            Stream<Reason> wish = recommendation.impasses().stream()
                    .filter(impasse -> impasse.topic() == Topics.FINISH)
                    .flatMap(impasse -> telling(impasse.vetoes()).stream());
            List<String> besides = Stream.concat(holds, wish)
                    .filter(Reason::certain)
                    .map(Reason::rule)
                    .distinct()
                    .filter(rule -> !refused.contains(rule))
                    .toList();
            draft.section("refusal.heading")
                    .bullets(refused, cards::because)
                    .list("refusal.besides", besides, cards::because);
            List<Task> first = recommendation.values(Topics.PREPARATION, Subject.FLOOR).stream()
                    .filter(FIRST_STEPS::contains)
                    .filter(task -> task != Task.FIX_HOLLOW || PlanWords.isCleared(recommendation))
                    .toList();
            words.list(draft, "first-steps.heading", Topics.PREPARATION, first);
            offers(draft, recommendation);
        }
    }

    /** What is known to bound a later cut, which an unknown extent or finish withholds but does not forget. */
    private void limits(Draft draft, Recommendation recommendation) {
        boolean cleaned = recommendation.values(Topics.VERDICT, Subject.FLOOR).contains(Verdict.CLEAN_ONLY);
        if (recommendation.plan().isEmpty() || cleaned || PlanWords.isCutTold(recommendation)) {
            return;
        }
        List<String> rules = recommendation.outcomes().stream()
                .filter(outcome ->
                        outcome.topic() == Topics.FIRST_CUT && outcome.subject().equals(Subject.OPEN_FIELD))
                .flatMap(outcome -> outcome instanceof Decision<?> decision
                        ? decision.reasons().stream()
                                .filter(reason -> !decision.outweighed().contains(reason))
                        : outcome.reasons().stream())
                .filter(reason -> reason.certain() && reason.kind() != ContributionKind.WISH)
                .map(Reason::rule)
                .distinct()
                .toList();
        draft.list("limits.heading", rules, cards::because);
    }

    /** Why a plan waits or cuts nothing; what rests on an unknown fact is told by the questions. */
    private void verdict(Draft draft, Recommendation recommendation) {
        boolean waits = recommendation.status() != Status.PLANNED && recommendation.status() != Status.REFUSED;
        boolean nothingCut = recommendation.status() == Status.PLANNED
                && recommendation.plan().orElseThrow().tracks().isEmpty();
        List<String> certain = recommendation.decision(Topics.VERDICT, Subject.FLOOR).stream()
                .flatMap(decision -> decision.won().stream())
                .filter(Reason::certain)
                .map(Reason::rule)
                .distinct()
                .sorted(Comparator.comparing(cards::protects))
                .toList();
        if ((waits || nothingCut) && !certain.isEmpty()) {
            draft.section(waits ? "verdict.waits" : "verdict.nothing-cut").bullets(certain, cards::because);
        }
        if (recommendation.plan().isPresent() && !recommendation.counterOffers().isEmpty()) {
            offers(draft, recommendation);
        }
    }

    private void impasses(Draft draft, Recommendation recommendation) {
        if (recommendation.status() != Status.IMPASSE && recommendation.status() != Status.UNDECIDED) {
            return;
        }
        boolean contradicted = StoneConflict.write(draft, recommendation);
        List<Impasse<?>> told =
                distinct(contradicted ? StoneConflict.besides(recommendation) : blocking(recommendation));
        for (Impasse<?> impasse : told) {
            draft.section(phrase("impasse.heading").with("topic", ValueWords.matter(impasse)));
            demands(draft, "impasse.needs", impasse.needs());
            demands(draft, "impasse.vetoes", telling(impasse.vetoes()));
            if (impasse.topic() == Topics.GRIT_PATH) {
                draft.bullet("impasse.no-path");
            }
            if (impasse.untilKnown()) {
                draft.bullet("impasse.until-known");
            }
        }
        if (contradicted && told.isEmpty()) {
            StoneConflict.waysOut(draft, recommendation);
            return;
        }
        offers(draft, recommendation);
        draft.list("acceptances.heading", recommendation.values(Topics.ACCEPTANCES, Subject.FLOOR));
    }

    private static List<Impasse<?>> blocking(Recommendation recommendation) {
        return recommendation.impasses().stream()
                .filter(impasse -> impasse.topic().isBlocking())
                .toList();
    }

    private static List<Impasse<?>> distinct(List<Impasse<?>> impasses) {
        Map<List<Object>, Impasse<?>> distinct = new LinkedHashMap<>();
        impasses.forEach(impasse -> distinct.putIfAbsent(
                List.of(impasse.topic(), RuleWords.rules(impasse.needs()), RuleWords.rules(impasse.vetoes())),
                impasse));
        return List.copyOf(distinct.values());
    }

    /**
     * The gravest first; what excludes only what is not at hand anyway is not told, nor what excludes less than a rule as
     * grave does.
     */
    private List<Reason> telling(List<Reason> vetoes) {
        Predicate<Reason> lacking = veto -> cards.protects(veto.rule()) == Protection.CONVENIENCE;
        Set<Object> absent = new HashSet<>();
        vetoes.stream().filter(lacking).forEach(veto -> absent.addAll(veto.values()));
        return vetoes.stream()
                .filter(lacking.or(veto -> !absent.containsAll(veto.values())))
                .filter(veto -> vetoes.stream().noneMatch(other -> isStricter(other, veto)))
                .sorted(Comparator.comparing((Reason veto) -> cards.protects(veto.rule())))
                .toList();
    }

    private boolean isStricter(Reason one, Reason other) {
        return one.values().size() > other.values().size()
                && one.values().containsAll(other.values())
                && cards.protects(one.rule()).compareTo(cards.protects(other.rule())) <= 0;
    }

    /** Each rule once, after what it asks for or excludes. */
    private void demands(Draft draft, String key, List<Reason> reasons) {
        RuleWords.byRule(reasons)
                .forEach((rule, ofRule) -> draft.bullet(
                        phrase(key).with("says", says(rule, ofRule.get(0))).with("because", cards.because(rule))));
    }

    private Wording says(String rule, Reason reason) {
        return cards.card(rule)
                .map(card -> ValueWords.says(card.topic(), reason.kind(), reason.values()))
                .orElseGet(() -> Wording.name(rule));
    }

    private static void offers(Draft draft, Recommendation recommendation) {
        draft.section("offers.heading")
                .bullets(recommendation.counterOffers(), offer -> OfferWords.offer(recommendation, offer));
    }

    /** The question, how it is settled, what stands until then, and which first cut the answer may bring. */
    private Wording question(Recommendation recommendation, Question question) {
        List<Wording> sentences = new ArrayList<>(List.of(
                FieldWords.question(recommendation.survey(), question.field()),
                FieldWords.howFound(recommendation, question.field())));
        boolean waits = question.rules().isEmpty();
        if (!waits) {
            sentences.add(phrase("question.cautious").with("rule", cards.title(weightiest(question.rules()))));
        }
        List<String> waiting = waits ? question.waiting() : ofTheFirstCut(question.waiting());
        if (!waiting.isEmpty()) {
            sentences.add(phrase("question.waiting").with("rule", cards.title(weightiest(waiting))));
        }
        return Wording.sentences(sentences.toArray(Wording[]::new));
    }

    private List<String> ofTheFirstCut(List<String> rules) {
        return rules.stream()
                .filter(rule -> cards.card(rule)
                        .filter(card -> card.topic() == Topics.FIRST_CUT)
                        .isPresent())
                .toList();
    }

    /** The rule whose topic closes first. */
    private String weightiest(List<String> rules) {
        return rules.stream()
                .filter(rule -> cards.card(rule).isPresent())
                .min(Comparator.comparing(
                        rule -> order(cards.card(rule).orElseThrow().topic())))
                .orElse(rules.get(0));
    }

    /** Going ahead comes before everything else, what the stone is included. */
    private static int order(Topic<?> topic) {
        return topic == Topics.VERDICT ? -1 : Topics.all().indexOf(topic);
    }

    private void reasons(Draft draft, Recommendation recommendation) {
        draft.section("reasons.heading");
        Map<List<Object>, List<Decision<?>>> alike = new LinkedHashMap<>();
        for (Outcome outcome : recommendation.outcomes()) {
            if (outcome instanceof Decision<?> decision
                    && !decision.reasons().isEmpty()
                    && (outcome.subject().equals(Subject.FLOOR) || isWorked(recommendation, outcome))
                    && (outcome.topic() != Topics.VERDICT
                            || recommendation.plan().isPresent()
                            || recommendation.status() == Status.REFUSED)
                    && (outcome.topic() != Topics.BONDS
                            || recommendation.plan().stream()
                                    .anyMatch(plan -> !plan.tracks().isEmpty()))
                    && TOPICS_EXPLAINED.contains(outcome.topic())) {
                alike.computeIfAbsent(
                                List.of(decision.topic(), decision.values(), reasons(decision)),
                                key -> new ArrayList<>())
                        .add(decision);
            }
        }
        alike.values().forEach(decisions -> {
            Decision<?> first = decisions.get(0);
            List<Item> reasons = new ArrayList<>(reasons(first));
            endBeforeStart(recommendation, first)
                    .ifPresent(grade -> reasons.add(new Item.Labelled(
                            Wording.name(""), WhyWords.endBeforeStart(ValueWords.values(first), grade))));
            draft.bullet(
                    phrase("reasons.decision")
                            .with("topic", matter(decisions))
                            .with("values", ValueWords.values(first)),
                    reasons);
        });
    }

    /** The only grit of a track whose first cut could be finer, were the last grit not coarser. */
    static Optional<AbrasiveGrade> endBeforeStart(Recommendation recommendation, Outcome outcome) {
        return outcome instanceof Decision<?> decision
                        && decision.topic() == Topics.FIRST_CUT
                        && decision.subject() instanceof Subject.OfTrack track
                        && decision.values().equals(List.of(Cut.FINE_HONE))
                ? recommendation.steps(track.track()).stream()
                        .findFirst()
                        .map(PlannedStep::grade)
                        .filter(grade -> grade.number() < Cut.FINE_HONE.number())
                : Optional.empty();
    }

    /** That there is no plan, and about what needs and bans clash; empty where there is a plan. */
    static Optional<Wording> planless(Recommendation recommendation) {
        if (recommendation.plan().isPresent()) {
            return Optional.empty();
        }
        List<Wording> words = new ArrayList<>(List.of(PlanWords.verdict(recommendation)));
        distinct(blocking(recommendation))
                .forEach(impasse -> words.add(phrase("answer.conflict").with("topic", ValueWords.matter(impasse))));
        return Optional.of(phrase("answer.planless").with("why", Wording.sentences(words.toArray(Wording[]::new))));
    }

    /** What was decided alike, and for which tracks. */
    private static Wording matter(List<Decision<?>> decisions) {
        Topic<?> topic = decisions.get(0).topic();
        return decisions.get(0).subject().equals(Subject.FLOOR)
                ? ValueWords.topic(topic)
                : phrase("value.matter")
                        .with("topic", ValueWords.topic(topic))
                        .with(
                                "subject",
                                Wording.list(
                                        Wording.Joint.COMMA,
                                        decisions.stream()
                                                .map(decision -> ValueWords.subject(decision.subject()))
                                                .toList()));
    }

    private static boolean isWorked(Recommendation recommendation, Outcome outcome) {
        return outcome.topic() == Topics.FIRST_CUT
                && recommendation.plan().stream()
                        .flatMap(plan -> plan.tracks().stream())
                        .anyMatch(track -> outcome.subject().equals(new Subject.OfTrack(track.kind())));
    }

    private List<Item> reasons(Decision<?> decision) {
        List<Item> reasons = new ArrayList<>();
        List<String> won = RuleWords.rules(decision.won());
        won.forEach(rule -> reasons.add(new Item.Labelled(Wording.name(rule), cards.because(rule))));
        RuleWords.rules(decision.outweighed()).forEach(rule -> reasons.add(lost(rule)));
        RuleWords.rules(decision.vetoed()).forEach(rule -> reasons.add(lost(rule)));
        return reasons;
    }

    private Item lost(String rule) {
        return new Item.Labelled(
                Wording.name(rule), phrase("reasons.outweighed").with("title", cards.title(rule)));
    }
}
