package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Draft.label;
import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.List;
import java.util.function.Function;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.MatterDifference;
import stoneprocess.core.answer.Side;
import stoneprocess.core.answer.Split;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;

/** What differs between two recommendations, in words. */
final class DifferenceWords {
    private static final int HASH_SHOWN = 12;

    private DifferenceWords() {}

    /**
     * @param changes what was changed, in words; none where two surveys are compared as they are
     */
    static Document full(Wording title, List<Wording> changes, Difference difference, Parameters parameters) {
        Draft draft =
                Draft.titled(title, parameters).inOneLine(brief(difference)).paragraph(summary(difference));
        draft.list("difference.changes", changes, Function.identity());
        if (changes.isEmpty()) {
            split(draft, "difference.answers", difference.answers(), DifferenceWords::answer);
        }
        sides(
                draft,
                "difference.grits",
                difference.tracks(),
                track -> ValueWords.track(track.track()),
                track -> grades(track.one()),
                track -> grades(track.other()));
        sides(
                draft,
                "difference.matters",
                changed(difference),
                DifferenceWords::matter,
                matter -> side(matter.one()),
                matter -> side(matter.other()));
        split(draft, "difference.preparation", difference.preparation(), planned -> ValueWords.name(planned.task()));
        split(draft, "difference.warnings", difference.warnings(), warning -> {
            Wording hazard = ValueWords.name(warning.hazard());
            return warning.certain() ? hazard : Wording.sentences(hazard, phrase("warnings.uncertain"));
        });
        split(draft, "difference.questions", difference.questions(), FieldWords::question);
        split(draft, "difference.offers", difference.counterOffers(), offer -> Wording.of(offer.kind()));
        draft.list("difference.parameters", difference.parameters(), Wording::name);
        split(
                draft,
                "difference.rulebases",
                difference.rulebases(),
                hash -> Wording.name(hash.substring(0, HASH_SHOWN)));
        return draft.document();
    }

    private static Wording summary(Difference difference) {
        if (difference.sameAdvice()) {
            return phrase("difference.none");
        }
        return difference.one() == difference.other()
                ? phrase("difference.same-status")
                : phrase("difference.status").with("first", difference.one()).with("second", difference.other());
    }

    private static Wording answer(FieldAnswer answer) {
        return Wording.sentences(FieldWords.question(answer.field()), FieldWords.answer(answer));
    }

    private static <T> void split(Draft draft, String heading, Split<T> split, Function<T, Wording> word) {
        if (!split.isEmpty()) {
            draft.section(heading);
        }
        split.one().stream().map(word).distinct().forEach(line -> draft.labelled("difference.one", line));
        split.other().stream().map(word).distinct().forEach(line -> draft.labelled("difference.other", line));
    }

    private static <T> void sides(
            Draft draft,
            String heading,
            List<T> differences,
            Function<T, Wording> what,
            Function<T, Wording> one,
            Function<T, Wording> other) {
        if (!differences.isEmpty()) {
            draft.section(heading);
        }
        differences.forEach(difference -> draft.bullet(
                what.apply(difference),
                label("difference.one", one.apply(difference)),
                label("difference.other", other.apply(difference))));
    }

    private static Wording grades(List<String> grades) {
        return grades.isEmpty() ? phrase("difference.not-worked") : ValueWords.grades(grades);
    }

    private static List<MatterDifference> changed(Difference difference) {
        return difference.matters().stream().filter(MatterDifference::changed).toList();
    }

    private static Wording matter(MatterDifference matter) {
        return ValueWords.matter(matter.matter().topic(), matter.matter().subject());
    }

    private static <V> Wording side(Side<V> side) {
        return AnswerWords.ending(side.topic(), side.closing(), side.values(), side.rules());
    }

    private static Wording brief(Difference difference) {
        List<MatterDifference> changed = changed(difference);
        if (changed.isEmpty()) {
            return phrase(difference.sameAdvice() ? "difference.none" : "difference.same-matters");
        }
        MatterDifference first = changed.get(0);
        return AnswerWords.shortest(
                phrase("difference.brief")
                        .with("count", changed.size())
                        .with("matter", matter(first))
                        .with("first", side(first.one()))
                        .with("second", side(first.other())),
                phrase("difference.brief-matter").with("count", changed.size()).with("matter", matter(first)));
    }
}
