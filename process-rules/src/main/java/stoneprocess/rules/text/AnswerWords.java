package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stoneprocess.core.answer.Closing;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** What the texts of all answers share. */
final class AnswerWords {
    /** A short text has fewer characters than this. */
    static final int SHORT = 140;

    /** An outcome in few words has at most so many characters. */
    private static final int FEW = 40;

    /** So many rules or values are told in full; a screen holds them. */
    private static final int RULES_SHOWN = 6;

    private static final int QUESTIONS_SHOWN = 10;

    private AnswerWords() {}

    /** The values of an outcome, or that it has none. */
    static Wording outcome(Outcome outcome) {
        if (outcome instanceof Decision<?> decision) {
            return decision.values().isEmpty() ? phrase("answer.nothing") : ValueWords.values(decision);
        }
        return phrase("answer.impasse");
    }

    /** How a matter ended, with the rules that spoke to it. */
    static <V> Wording ending(Topic<V> topic, Closing closing, List<V> values, List<String> rules) {
        return RuleWords.withIds(
                switch (closing) {
                    case IMPASSE -> phrase("answer.impasse");
                    case NOT_REACHED -> phrase("answer.not-reached");
                    case DECIDED -> values.isEmpty() ? phrase("answer.nothing") : ValueWords.values(topic, values);
                },
                rules);
    }

    /** The same, or how many values there are, in few words. */
    static Wording outcomeInFew(Outcome outcome) {
        Wording all = outcome(outcome);
        if (outcome instanceof Decision<?> decision && !decision.values().isEmpty()) {
            int count = decision.values().size();
            return new Wording.Shortest(
                    FEW + 1, List.of(all, phrase("answer.several").with("count", count)));
        }
        return all;
    }

    /** A matter with its values, or with how many there are where nobody would read them all. */
    static Wording statedInFew(Outcome outcome) {
        return outcome instanceof Decision<?> decision && decision.values().size() > RULES_SHOWN
                ? phrase("answer.outcome")
                        .with("matter", ValueWords.matter(outcome))
                        .with(
                                "value",
                                phrase("answer.several")
                                        .with("count", decision.values().size()))
                : Words.outcome(outcome);
    }

    /** The first that is short enough, from the richest on. */
    static Wording shortest(Wording... fromRichest) {
        return new Wording.Shortest(SHORT, List.of(fromRichest));
    }

    /**
     * Rules one after the other, each with the facts of this floor that it rests on, its source and its id; of many the
     * first ones, and the ids of the others.
     */
    static void reasons(Draft draft, String heading, List<Reason> reasons, Function<String, Card> cards) {
        if (!reasons.isEmpty()) {
            draft.section(heading);
        }
        Map<String, List<Reason>> byRule = RuleWords.byRule(reasons);
        List<String> rules = List.copyOf(byRule.keySet());
        int shown = rules.size() <= RULES_SHOWN + 1 ? rules.size() : RULES_SHOWN;
        for (String rule : rules.subList(0, shown)) {
            List<Reason> ofRule = byRule.get(rule);
            Card card = cards.apply(rule);
            List<Wording> words = new ArrayList<>(List.of(RuleWords.because(card)));
            List<Wording> facts = ofRule.stream()
                    .flatMap(reason -> reason.facts().stream())
                    .filter(fact -> !FactWords.isStep(fact) && !fact.topics().equals(List.of(Topics.VERDICT)))
                    .map(FactWords::so)
                    .distinct()
                    .toList();
            if (!facts.isEmpty()) {
                words.add(phrase("answer.by").with("facts", Wording.list(Joint.SEMICOLON, facts)));
            }
            if (!card.source().practice()) {
                words.add(phrase("answer.basis").with("source", Wording.source(card.source())));
            }
            Wording id = Wording.name(rule);
            draft.bullet(phrase("card.ids")
                    .with("words", Wording.list(Joint.SENTENCES, words))
                    .with(
                            "ids",
                            card.source().practice()
                                    ? Wording.list(Joint.COMMA, List.of(id, phrase("answer.practice")))
                                    : id));
        }
        if (shown < rules.size()) {
            draft.bullet(RuleWords.withIds(
                    phrase("answer.more-rules").with("count", rules.size() - shown),
                    rules.subList(shown, rules.size())));
        }
    }

    /** Questions of the survey, with what it answers where that is known. */
    static void checks(Draft draft, String heading, Collection<String> questions, List<FieldAnswer> answers) {
        int shown = questions.size() <= QUESTIONS_SHOWN + 1 ? questions.size() : QUESTIONS_SHOWN;
        draft.list(
                heading,
                questions.stream().limit(shown).toList(),
                field -> answers.stream()
                        .filter(answer -> answer.field().equals(field))
                        .findFirst()
                        .<Wording>map(answer -> phrase("answer.answered")
                                .with("question", FieldWords.question(field))
                                .with("answer", FieldWords.answer(answer)))
                        .orElse(FieldWords.question(field)));
        if (shown < questions.size()) {
            draft.bullet(phrase("answer.more-questions").with("count", questions.size() - shown));
        }
    }

    /** How a topic is decided, where the bundles say it in the terms of the topic. */
    static Optional<Wording> policy(Topic<?> topic) {
        String own = Wording.key(topic.policy()) + "." + topic.id();
        return Language.english().has(own) ? Optional.of(phrase(own)) : Optional.empty();
    }

    /** The fact to check first: one that is read from the survey, else one that was concluded. */
    static Wording check(List<MatchedFact> matched) {
        MatchedFact first = matched.stream()
                .filter(fact -> !fact.fields().isEmpty())
                .findFirst()
                .orElse(matched.get(0));
        Wording fact = FactWords.isStep(first) ? ValueWords.topic(Topics.GRIT_PATH) : FactWords.name(first.name());
        return phrase("answer.check").with("fact", fact);
    }

    /** A rule by its title, with its id, as a part of one line. */
    static Wording titleInLine(Card card) {
        return phrase("card.in-line").with("title", Wording.title(card)).with("id", card.id());
    }

    /** A rule by its id alone. */
    static Wording rule(String id) {
        return phrase("card.title").with("title", id);
    }
}
