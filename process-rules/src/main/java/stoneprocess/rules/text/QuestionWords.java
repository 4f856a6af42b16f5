package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.Comparator;
import java.util.List;
import stoneprocess.core.plan.Question;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.text.document.Wording;

/** Words for the open questions of a recommendation. */
final class QuestionWords {
    private final RuleWords cards;

    QuestionWords(RuleWords cards) {
        this.cards = cards;
    }

    /** The question, how it is settled, and what stands until then. */
    Wording question(Question question) {
        boolean waits = question.rules().isEmpty();
        String rule = weightiest(waits ? question.waiting() : question.rules());
        return Wording.sentences(
                FieldWords.question(question.field()),
                FieldWords.howFound(question.field()),
                phrase(waits ? "question.waiting" : "question.cautious").with("rule", cards.title(rule)));
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
}
