package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Draft.label;
import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.answer.Comparison;
import stoneprocess.core.decision.Input;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Item;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** What two rulebases advise otherwise, in words. */
final class ComparisonWords {
    private ComparisonWords() {}

    static Document full(Comparison comparison, Parameters parameters) {
        Draft draft = Draft.titled(phrase("comparison.title"), parameters)
                .inOneLine(brief(comparison))
                .paragraph(brief(comparison));
        for (Comparison.Floor floor : comparison.differing()) {
            draft.section(Wording.name(floor.title()));
            if (floor.one() != floor.other()) {
                draft.labelled("difference.one", Wording.of(floor.one()));
                draft.labelled("difference.other", Wording.of(floor.other()));
            }
            floor.decisions()
                    .forEach(differs ->
                            draft.bullet(ValueWords.matter(differs.topic(), differs.subject()), sides(differs)));
        }
        return draft.document();
    }

    private static List<Item> sides(Comparison.Differs differs) {
        List<Item> sides = new ArrayList<>();
        sides.add(label("difference.one", ending(differs.one(), differs.rulesOfOne())));
        sides.add(label("difference.other", ending(differs.other(), differs.rulesOfOther())));
        if (!differs.through().isEmpty()) {
            Wording through = Wording.list(Joint.COMMA, differs.through(), ComparisonWords::input);
            sides.add(label("comparison.through", through));
        }
        return sides;
    }

    private static Wording input(Input input) {
        return input instanceof Input.OfTopic before ? ValueWords.topic(before.topic()) : Wording.name(input.name());
    }

    private static <V> Wording ending(Comparison.Ending<V> ending, List<String> rules) {
        return AnswerWords.ending(ending.topic(), ending.end(), ending.values(), rules);
    }

    private static Wording brief(Comparison comparison) {
        return phrase("comparison.brief")
                .with("differing", comparison.differing().size())
                .with("floors", comparison.floors());
    }
}
