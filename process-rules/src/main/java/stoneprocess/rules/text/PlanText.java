package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.plan.Track;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Item;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/**
 * A recommendation as a text that a floor technician carries onto the site. Never parse it: the recommendation holds
 * the same as data. Immutable and safe to share between threads.
 */
public final class PlanText {
    private static final int QUESTIONS_THAT_MATTER_MOST = 3;
    private static final List<String> TOPICS_EXPLAINED = List.of(
            Topics.STONE.id(),
            Topics.VERDICT.id(),
            Topics.FINISH.id(),
            Topics.BONDS.id(),
            Topics.FIRST_CUT.id(),
            Topics.LAST_GRIT.id(),
            Topics.STEP_RULE.id(),
            Topics.TRANSITION.id(),
            Topics.POLISHING_AGENT.id(),
            Topics.DENSIFIER.id(),
            Topics.SEALER.id());

    private final Texts texts;
    private final RuleWords cards;
    private final QuestionWords questions;

    /**
     * @param texts the reader's language and units
     * @param cards the cards of the rulebase that made the recommendations
     */
    public PlanText(Texts texts, Collection<Card> cards) {
        this.texts = texts;
        this.cards = new RuleWords(cards);
        this.questions = new QuestionWords(this.cards);
    }

    /** The text of a recommendation, lines of at most 96 characters, ending with a line feed. */
    public String render(Recommendation recommendation, Detail detail) {
        return texts.page(document(recommendation, detail));
    }

    /** A recommendation as a document, to be rendered by any page. */
    public Document document(Recommendation recommendation, Detail detail) {
        Draft draft = Draft.titled(Wording.name(recommendation.survey().title()), recommendation.parameters());
        draft.paragraph(summary(recommendation));
        refusals(draft, recommendation);
        verdict(draft, recommendation);
        impasses(draft, recommendation);
        questions(draft, recommendation.questions(), detail);
        WarningWords.warnings(draft, recommendation.warnings(), detail);
        recommendation.plan().ifPresent(plan -> PlanSections.write(draft, plan, recommendation.survey()));
        if (detail == Detail.FULL) {
            reasons(draft, recommendation);
        }
        WarningWords.close(draft, recommendation.rulebase());
        return draft.document();
    }

    private static Wording summary(Recommendation recommendation) {
        Wording status = Wording.of(recommendation.status());
        return recommendation
                .plan()
                .map(plan -> sentences(status, summary(recommendation, plan)))
                .orElse(status);
    }

    private static Wording summary(Recommendation recommendation, Plan plan) {
        if (plan.tracks().isEmpty()) {
            boolean cleaned =
                    recommendation.values(Topics.FIRST_CUT, Subject.OPEN_FIELD).isEmpty();
            return phrase(cleaned ? "summary.nothing-is-cut" : "summary.no-cut-yet");
        }
        Track first = plan.tracks().get(0);
        return phrase(first.kind() == TrackKind.OPEN_FIELD ? "summary.cuts" : "summary.field-stays")
                .with("finish", plan.finish().<Wording>map(Wording::of).orElse(Wording.name("")))
                .with("grits", PlanSections.grades(first));
    }

    private void refusals(Draft draft, Recommendation recommendation) {
        if (recommendation.status() == Status.REFUSED) {
            draft.section("refusal.heading");
            recommendation.refusals().forEach(reason -> draft.bullet(cards.because(reason.rule())));
            offers(draft, recommendation);
        }
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
                .toList();
        if ((waits || nothingCut) && !certain.isEmpty()) {
            draft.section(waits ? "verdict.waits" : "verdict.nothing-cut");
            certain.forEach(rule -> draft.bullet(cards.because(rule)));
        }
    }

    private void impasses(Draft draft, Recommendation recommendation) {
        if (recommendation.status() != Status.IMPASSE && recommendation.status() != Status.UNDECIDED) {
            return;
        }
        for (Impasse<?> impasse : blocking(recommendation)) {
            draft.section(phrase("impasse.heading")
                    .with("topic", ValueWords.topic(impasse.topic().id())));
            demands(draft, "impasse.needs", impasse.needs());
            demands(draft, "impasse.vetoes", impasse.vetoes());
            if (impasse.topic() == Topics.GRIT_PATH) {
                draft.bullet("impasse.no-path");
            }
            if (impasse.untilKnown()) {
                draft.bullet("impasse.until-known");
            }
        }
        offers(draft, recommendation);
    }

    private static List<Impasse<?>> blocking(Recommendation recommendation) {
        Map<List<Object>, Impasse<?>> distinct = new LinkedHashMap<>();
        recommendation.impasses().stream()
                .filter(impasse -> impasse.topic().isBlocking())
                .forEach(impasse -> distinct.putIfAbsent(
                        List.of(impasse.topic(), RuleWords.rules(impasse.needs()), RuleWords.rules(impasse.vetoes())),
                        impasse));
        return List.copyOf(distinct.values());
    }

    private void demands(Draft draft, String key, List<Reason> reasons) {
        RuleWords.rules(reasons).forEach(rule -> draft.bullet(phrase(key).with("because", cards.because(rule))));
    }

    private static void offers(Draft draft, Recommendation recommendation) {
        draft.section("offers.heading");
        recommendation.counterOffers().forEach(offer -> draft.bullet(offer(offer)));
    }

    private static Wording offer(CounterOffer offer) {
        Wording kind = Wording.of(offer.kind());
        return phrase("offers.offer")
                .with("offer", offer.values().isEmpty() ? kind : sentences(kind, offered(offer)))
                .with("loss", Wording.of(offer.kind(), "gives-up"));
    }

    private static Wording offered(CounterOffer offer) {
        if (offer.kind() == OfferKind.GET_GRADES) {
            return phrase("offers.missing").with("grits", ValueWords.grades(offer.values()));
        }
        if (offer.kind() == OfferKind.OTHER_MACHINE) {
            return phrase("offers.any-of").with("values", ValueWords.values(offer.topic(), offer.values()));
        }
        return phrase(offer.kind() == OfferKind.KEEP_THE_MARKS ? "offers.no-coarser" : "offers.up-to")
                .with("value", ValueWords.value(offer.topic(), offer.values().get(0)));
    }

    private void questions(Draft draft, List<Question> all, Detail detail) {
        if (all.isEmpty()) {
            return;
        }
        int shown = detail == Detail.FULL ? all.size() : Math.min(QUESTIONS_THAT_MATTER_MOST, all.size());
        draft.section(
                shown == all.size()
                        ? phrase("questions.heading")
                        : phrase("questions.some").with("shown", shown).with("all", all.size()));
        all.subList(0, shown).forEach(question -> draft.bullet(questions.question(question)));
    }

    private void reasons(Draft draft, Recommendation recommendation) {
        draft.section("reasons.heading");
        for (Outcome outcome : recommendation.outcomes()) {
            if (outcome instanceof Decision<?> decision
                    && (outcome.subject().equals(Subject.FLOOR) || isWorked(recommendation, outcome))
                    && TOPICS_EXPLAINED.contains(outcome.topic().id())) {
                draft.bullet(
                        phrase("reasons.decision")
                                .with("topic", ValueWords.topic(decision.topic().id()))
                                .with(
                                        "values",
                                        ValueWords.values(decision.topic().id(), decision.keys())),
                        reasons(decision));
            }
        }
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
        if (won.isEmpty()) {
            reasons.add(new Item.Labelled(Wording.name(""), phrase("reasons.nothing-said")));
        }
        won.forEach(rule -> reasons.add(new Item.Labelled(Wording.name(rule), cards.because(rule))));
        RuleWords.rules(decision.outweighed()).forEach(rule -> reasons.add(lost("reasons.outweighed", rule)));
        RuleWords.rules(decision.vetoed()).forEach(rule -> reasons.add(lost("reasons.vetoed", rule)));
        return reasons;
    }

    private Item lost(String key, String rule) {
        return new Item.Labelled(Wording.name(rule), phrase(key).with("title", cards.title(rule)));
    }
}
