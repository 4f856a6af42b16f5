package stoneprocess.rules.text;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.source.Card;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/** What the texts of all answers share. */
final class AnswerWords {
    /** A short text has fewer characters than this. */
    static final int SHORT = 140;

    private static final String INDENT = "      ";

    final Phrases phrases;
    final FactWords facts;
    final ValueWords values;
    final FieldWords fields;
    final UnitSystem units;

    AnswerWords(UnitSystem units, Parameters parameters) {
        this.units = units;
        this.phrases = new Phrases(units, parameters);
        this.facts = new FactWords(phrases);
        this.values = new ValueWords(phrases);
        this.fields = new FieldWords(units, phrases);
    }

    String get(String key, Object... arguments) {
        return phrases.get(key).formatted(arguments);
    }

    /** The values of an outcome, or that it has none. */
    String outcome(Outcome outcome) {
        if (!(outcome instanceof Decision decision)) {
            return phrases.get("answer.impasse");
        }
        return decision.values().isEmpty()
                ? phrases.get("answer.nothing")
                : String.join(", ", values.values(decision.topic(), decision.values()));
    }

    /** The same, or how many values there are, in few words. */
    String outcomeInFew(Outcome outcome) {
        String all = outcome(outcome);
        return outcome instanceof Decision decision && all.length() > 40
                ? get("answer.several", decision.values().size())
                : all;
    }

    /** The first that is short enough; the last one always is. */
    static String shortest(String... fromRichest) {
        for (String text : fromRichest) {
            if (text.length() < SHORT) {
                return text;
            }
        }
        throw new IllegalStateException("No text of under " + SHORT + " characters: " + fromRichest[0]);
    }

    /** Rules with what they say of their topics and on which facts, one after the other. */
    void reasons(Page page, String heading, List<Reason> reasons, Function<String, Card> cards) {
        if (reasons.isEmpty()) {
            return;
        }
        page.heading(phrases.get(heading));
        Map<String, Set<String>> factsByRule = new LinkedHashMap<>();
        Map<String, Reason> byRule = new LinkedHashMap<>();
        for (Reason reason : reasons) {
            byRule.putIfAbsent(reason.rule(), reason);
            Set<String> known = factsByRule.computeIfAbsent(reason.rule(), rule -> new LinkedHashSet<>());
            reason.facts().forEach(fact -> known.add(facts.so(fact)));
        }
        byRule.forEach((rule, reason) -> {
            Card card = cards.apply(rule);
            page.item(card.title() + ". " + card.because() + ". (" + rule + ")");
            page.labelled(INDENT, phrases.get("answer.says"), says(card.topic(), reason));
            if (!factsByRule.get(rule).isEmpty()) {
                page.labelled(INDENT, phrases.get("answer.by"), String.join("; ", factsByRule.get(rule)));
            }
            page.labelled(INDENT, phrases.get("warnings.source"), card.source().print());
        });
    }

    private String says(String topic, Reason reason) {
        Topic<? extends Term> about = Topics.named(topic);
        return values.says(
                about, reason.kind(), reason.values().stream().map(about::value).toList());
    }

    /** Questions of the survey with what it answers and how to look again. */
    void checks(Page page, Collection<String> questions, List<FieldAnswer> answers) {
        for (String field : questions) {
            String now = answers.stream()
                    .filter(answer -> answer.field().equals(field))
                    .findFirst()
                    .map(answer -> " " + get("answer.survey-says", fields.answer(answer)))
                    .orElse("");
            page.item(fields.question(field) + now + " " + get("answer.check-by", fields.howFound(field)));
        }
    }

    /** The fact to name in a short text: one that is read from the survey, else one that was concluded. */
    String factToCheck(List<MatchedFact> matched) {
        return matched.stream()
                .filter(fact -> !fact.fields().isEmpty())
                .findFirst()
                .or(() -> matched.stream().findFirst())
                .map(fact -> fact.name().equals("Step") ? values.topic(Topics.GRIT_PATH.id()) : facts.name(fact.name()))
                .orElse("");
    }
}
