package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.site.Quotation.Answer;
import stoneprocess.core.site.Quotation.Unknown;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.rules.text.Words;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** Words for some of the answers to a question; measured classes beside one another are one range. */
final class AnswerRange {
    private AnswerRange() {}

    static Wording words(Unknown unknown, Predicate<Answer> which) {
        FieldKind kind = SurveyField.named(unknown.field()).kind();
        List<Answer> all = unknown.answers();
        List<Wording> words = new ArrayList<>();
        for (int first = 0; first < all.size(); first++) {
            if (!which.test(all.get(first))) {
                continue;
            }
            if (kind instanceof FieldKind.Choice choice) {
                words.add(said(term(choice, all.get(first).from())));
                continue;
            }
            int next = first + 1;
            while (next < all.size() && which.test(all.get(next))) {
                next++;
            }
            words.add(range(unknown, first, next));
            first = next;
        }
        return Wording.list(Joint.OR, words);
    }

    /** As an owner is told it, where that has its own words. */
    private static Wording said(Term answer) {
        String own = Wording.key(answer) + ".owner";
        return Language.english().has(own) ? phrase(own) : Wording.of(answer);
    }

    private static Term term(FieldKind.Choice choice, String key) {
        return Stream.of(choice.type().getEnumConstants())
                .map(Term.class::cast)
                .filter(term -> term.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static Wording range(Unknown unknown, int first, int next) {
        List<Answer> all = unknown.answers();
        boolean open = next == all.size();
        String key = first == 0 ? open ? "answer.any" : "answer.below" : open ? "answer.from" : "answer.between";
        return phrase(key).with("low", amount(all.get(first))).with("high", amount(all.get(open ? first : next)));
    }

    private static Wording amount(Answer answer) {
        return Words.surveyed(Quantity.parse(answer.from(), "answer"));
    }
}
