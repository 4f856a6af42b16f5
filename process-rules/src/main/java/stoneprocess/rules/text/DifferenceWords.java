package stoneprocess.rules.text;

import java.util.List;
import java.util.function.Function;
import stoneprocess.core.answer.Closing;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.MatterDifference;
import stoneprocess.core.answer.Side;
import stoneprocess.core.answer.Split;
import stoneprocess.core.answer.TrackDifference;

/** What differs between two recommendations, in words. */
final class DifferenceWords {
    private static final String INDENT = "      ";

    private final AnswerWords words;

    DifferenceWords(AnswerWords words) {
        this.words = words;
    }

    /**
     * @param changes what was changed, in words; none where two surveys are compared as they are
     */
    String full(String title, List<String> changes, Difference difference) {
        Page page = new Page();
        page.title(title);
        page.line(summary(difference));
        list(page, "difference.changes", changes);
        if (changes.isEmpty()) {
            split(page, "difference.answers", difference.answers(), this::answer);
        }
        tracks(page, difference.tracks());
        matters(page, difference);
        split(page, "difference.preparation", difference.preparation(), one -> words.values.value(one.task()));
        split(
                page,
                "difference.warnings",
                difference.warnings(),
                warning -> words.values.value(warning.hazard())
                        + (warning.certain() ? "" : " " + words.phrases.get("warnings.uncertain")));
        split(page, "difference.questions", difference.questions(), words.fields::question);
        split(page, "difference.offers", difference.counterOffers(), offer -> words.phrases.of(offer.kind()));
        list(page, "difference.parameters", difference.parameters());
        split(page, "difference.rulebases", difference.rulebases(), hash -> hash.substring(0, 12));
        return page.toString();
    }

    private String summary(Difference difference) {
        if (difference.sameAdvice()) {
            return words.phrases.get("difference.none");
        }
        return difference.one() == difference.other()
                ? words.phrases.get("difference.same-status")
                : words.get(
                        "difference.status", words.phrases.of(difference.one()), words.phrases.of(difference.other()));
    }

    private String answer(FieldAnswer answer) {
        return words.fields.question(answer.field()) + " " + words.fields.answer(answer);
    }

    private void list(Page page, String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            page.heading(words.phrases.get(heading)).items(lines);
        }
    }

    private <T> void split(Page page, String heading, Split<T> split, Function<T, String> word) {
        if (split.isEmpty()) {
            return;
        }
        page.heading(words.phrases.get(heading));
        List<String> one = split.one().stream().map(word).distinct().toList();
        List<String> other = split.other().stream().map(word).distinct().toList();
        one.forEach(line -> page.labelled("  ", words.phrases.get("difference.one"), line));
        other.forEach(line -> page.labelled("  ", words.phrases.get("difference.other"), line));
    }

    private void tracks(Page page, List<TrackDifference> tracks) {
        if (tracks.isEmpty()) {
            return;
        }
        page.heading(words.phrases.get("difference.grits"));
        for (TrackDifference track : tracks) {
            page.item(words.values.track(track.track()));
            page.labelled(INDENT, words.phrases.get("difference.one"), grades(track.one()));
            page.labelled(INDENT, words.phrases.get("difference.other"), grades(track.other()));
        }
    }

    private String grades(List<String> grades) {
        return grades.isEmpty()
                ? words.phrases.get("difference.not-worked")
                : String.join(", ", grades).replace('-', ' ');
    }

    private void matters(Page page, Difference difference) {
        List<MatterDifference> changed =
                difference.matters().stream().filter(MatterDifference::changed).toList();
        if (changed.isEmpty()) {
            return;
        }
        page.heading(words.phrases.get("difference.matters"));
        for (MatterDifference matter : changed) {
            page.item(
                    words.values.matter(matter.matter().topic(), matter.matter().subject()));
            page.labelled(INDENT, words.phrases.get("difference.one"), side(matter, matter.one()));
            page.labelled(INDENT, words.phrases.get("difference.other"), side(matter, matter.other()));
        }
    }

    private String side(MatterDifference matter, Side side) {
        String rules = side.rules().isEmpty() ? "" : " (" + String.join(", ", side.rules()) + ")";
        return closing(matter.matter().topic(), side.closing(), side.values()) + rules;
    }

    private String closing(String topic, Closing closing, List<String> values) {
        return switch (closing) {
            case IMPASSE -> words.phrases.get("answer.impasse");
            case NOT_REACHED -> words.phrases.get("answer.not-reached");
            case DECIDED ->
                values.isEmpty()
                        ? words.phrases.get("answer.nothing")
                        : String.join(", ", words.values.values(topic, values));
        };
    }

    String brief(Difference difference) {
        List<MatterDifference> changed =
                difference.matters().stream().filter(MatterDifference::changed).toList();
        if (changed.isEmpty()) {
            return words.phrases.get(difference.sameAdvice() ? "difference.none" : "difference.same-matters");
        }
        MatterDifference first = changed.get(0);
        String matter =
                words.values.matter(first.matter().topic(), first.matter().subject());
        return AnswerWords.shortest(
                words.get(
                        "difference.brief",
                        changed.size(),
                        matter,
                        side(first, first.one()),
                        side(first, first.other())),
                words.get("difference.brief-matter", changed.size(), matter));
    }
}
