package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
     * Rules one after the other, each with the facts of this floor that it rests on, its source and its id: all that known
     * facts make speak, of the others the first ones and how many more there are.
     */
    static void reasons(Draft draft, String heading, List<Reason> reasons, Function<String, Card> cards) {
        if (!reasons.isEmpty()) {
            draft.section(heading);
        }
        Map<String, List<Reason>> byRule = RuleWords.byRule(reasons);
        List<String> certain = byRule.keySet().stream()
                .filter(rule -> byRule.get(rule).stream().anyMatch(Reason::certain))
                .toList();
        List<String> open =
                byRule.keySet().stream().filter(rule -> !certain.contains(rule)).toList();
        int room = Math.max(0, RULES_SHOWN - certain.size());
        int shown = open.size() <= room + 1 ? open.size() : room;
        Stream.concat(certain.stream(), open.stream().limit(shown))
                .forEach(rule -> draft.bullet(reason(cards.apply(rule), byRule.get(rule))));
        if (shown < open.size()) {
            draft.bullet(phrase("answer.more-rules").with("count", open.size() - shown));
        }
    }

    private static Wording reason(Card card, List<Reason> ofRule) {
        List<Wording> words = new ArrayList<>(List.of(RuleWords.because(card)));
        List<MatchedFact> facts = ofRule.stream()
                .flatMap(reason -> reason.facts().stream())
                .filter(fact -> !FactWords.isStep(fact) && !fact.topics().equals(List.of(Topics.VERDICT)))
                .distinct()
                .toList();
        told(facts, "answer.by", fact -> !FactWords.isOpen(fact), FactWords::so).ifPresent(words::add);
        told(facts, "answer.not-known-here", FactWords::isOpen, fact -> FactWords.name(fact.name()))
                .ifPresent(words::add);
        if (!card.source().practice()) {
            words.add(phrase("answer.basis").with("source", Wording.source(card.source())));
        }
        Wording id = Wording.name(card.id());
        return phrase("card.ids")
                .with("words", Wording.list(Joint.SENTENCES, words))
                .with(
                        "ids",
                        card.source().practice()
                                ? Wording.list(Joint.COMMA, List.of(id, phrase("answer.practice")))
                                : id);
    }

    private static Optional<Wording> told(
            List<MatchedFact> facts, String key, Predicate<MatchedFact> which, Function<MatchedFact, Wording> words) {
        List<Wording> told = facts.stream().filter(which).map(words).distinct().toList();
        return told.isEmpty()
                ? Optional.empty()
                : Optional.of(phrase(key).with("facts", Wording.list(Joint.SEMICOLON, told)));
    }

    /** Questions of the survey, those first that it answers, with the answer; of the others the first ones. */
    static void checks(Draft draft, String heading, Collection<String> questions, List<FieldAnswer> answers) {
        Map<String, FieldAnswer> answered = answers.stream()
                .filter(FieldAnswer::known)
                .collect(Collectors.toMap(FieldAnswer::field, Function.identity(), (one, other) -> one));
        List<String> known = questions.stream().filter(answered::containsKey).toList();
        List<String> open =
                questions.stream().filter(field -> !answered.containsKey(field)).toList();
        int room = Math.max(0, QUESTIONS_SHOWN - known.size());
        int shown = open.size() <= room + 1 ? open.size() : room;
        draft.list(
                heading,
                Stream.concat(known.stream(), open.stream().limit(shown)).toList(),
                field -> known.contains(field)
                        ? phrase("answer.answered")
                                .with("question", FieldWords.question(field))
                                .with("answer", FieldWords.answer(answered.get(field)))
                        : phrase("answer.unanswered").with("question", FieldWords.question(field)));
        if (shown < open.size()) {
            draft.bullet(phrase("answer.more-questions").with("count", open.size() - shown));
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
