package stoneprocess.rules.text;

import java.util.List;
import stoneprocess.core.answer.Comparison;

/** What two rulebases advise otherwise, in words. */
final class ComparisonWords {
    private static final String INDENT = "      ";

    private final AnswerWords words;

    ComparisonWords(AnswerWords words) {
        this.words = words;
    }

    String full(Comparison comparison) {
        Page page = new Page();
        page.title(words.phrases.get("comparison.title"));
        page.line(brief(comparison));
        for (Comparison.Floor floor : comparison.differing()) {
            page.heading(floor.title());
            if (floor.one() != floor.other()) {
                page.labelled("  ", words.phrases.get("difference.one"), words.phrases.of(floor.one()));
                page.labelled("  ", words.phrases.get("difference.other"), words.phrases.of(floor.other()));
            }
            floor.decisions().forEach(differs -> differs(page, differs));
        }
        return page.toString();
    }

    private void differs(Page page, Comparison.Differs differs) {
        page.item(words.values.matter(differs.topic(), differs.subject()));
        page.labelled(
                INDENT,
                words.phrases.get("difference.one"),
                side(differs.topic(), differs.one()) + rules(differs.rulesOfOne()));
        page.labelled(
                INDENT,
                words.phrases.get("difference.other"),
                side(differs.topic(), differs.other()) + rules(differs.rulesOfOther()));
        if (!differs.through().isEmpty()) {
            List<String> through = differs.through().stream()
                    .map(name -> Phrases.has("topic." + name) ? words.values.topic(name) : name)
                    .toList();
            page.labelled(INDENT, words.phrases.get("comparison.through"), String.join(", ", through));
        }
    }

    private static String rules(List<String> rules) {
        return rules.isEmpty() ? "" : " (" + String.join(", ", rules) + ")";
    }

    private String side(String topic, Comparison.Side side) {
        return switch (side.end()) {
            case IMPASSE -> words.phrases.get("answer.impasse");
            case NOT_REACHED -> words.phrases.get("answer.not-reached");
            case DECIDED ->
                side.values().isEmpty()
                        ? words.phrases.get("answer.nothing")
                        : String.join(", ", words.values.values(topic, side.values()));
        };
    }

    String brief(Comparison comparison) {
        return words.get("comparison.brief", comparison.differing().size(), comparison.floors());
    }
}
