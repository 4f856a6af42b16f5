package stoneprocess.rules.text;

import java.util.List;
import stoneprocess.core.answer.Comparison;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.answer.WhatIf;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/**
 * Answers about a recommendation as text, long and short. A long text has lines of at most 96 characters and ends with a
 * line feed; a short one is a single line of fewer than 140 characters and names the fact to check first. Never parse
 * them: the answers hold the same as data. Immutable and safe to share between threads.
 */
public final class AnswerText {
    private final Texts texts;
    private final Parameters parameters;

    /**
     * @param texts the reader's language and units
     * @param parameters the numbers of the rulebase that answered
     */
    public AnswerText(Texts texts, Parameters parameters) {
        this.texts = texts.with(parameters);
        this.parameters = parameters;
    }

    /** Why a matter was closed as it was. */
    public String render(Why why) {
        return texts.page(document(why));
    }

    /** The same as a document, to be rendered by any page. */
    public Document document(Why why) {
        return WhyWords.full(why, parameters);
    }

    /** The same in one line. */
    public String brief(Why why) {
        return texts.word(WhyWords.brief(why));
    }

    /** Why a matter was not closed with a value. */
    public String render(WhyNot whyNot) {
        return texts.page(document(whyNot));
    }

    /** The same as a document, to be rendered by any page. */
    public Document document(WhyNot whyNot) {
        return WhyNotWords.full(whyNot, parameters);
    }

    /** The same in one line. */
    public String brief(WhyNot whyNot) {
        return texts.word(WhyNotWords.brief(whyNot));
    }

    /** What differs between two recommendations. */
    public String render(Difference difference) {
        return texts.page(document(difference));
    }

    /** The same as a document, to be rendered by any page. */
    public Document document(Difference difference) {
        return DifferenceWords.full(Wording.phrase("difference.title"), List.of(), difference, parameters);
    }

    /** The same in one line. */
    public String brief(Difference difference) {
        return texts.word(DifferenceWords.brief(difference));
    }

    /** What changes of a survey bring. */
    public String render(WhatIf whatIf) {
        return texts.page(document(whatIf));
    }

    /** The same as a document, to be rendered by any page. */
    public Document document(WhatIf whatIf) {
        return DifferenceWords.full(
                Wording.name(whatIf.before().survey().title()),
                whatIf.changes().stream().map(FieldWords::change).toList(),
                Difference.between(whatIf.before(), whatIf.after()),
                parameters);
    }

    /** The same in one line. */
    public String brief(WhatIf whatIf) {
        return texts.word(DifferenceWords.brief(Difference.between(whatIf.before(), whatIf.after())));
    }

    /** How a floor would get a value. */
    public String render(HowTo howTo) {
        return texts.page(document(howTo));
    }

    /** The same as a document, to be rendered by any page. */
    public Document document(HowTo howTo) {
        return WayWords.full(howTo, parameters);
    }

    /** The same in one line: the first of the smallest ways. */
    public String brief(HowTo howTo) {
        return texts.word(WayWords.brief(howTo));
    }

    /** What is worth finding out. */
    public String render(WhatElse whatElse) {
        return texts.page(document(whatElse));
    }

    /** The same as a document, to be rendered by any page. */
    public Document document(WhatElse whatElse) {
        return WayWords.full(whatElse, parameters);
    }

    /** The same in one line: what to find out first. */
    public String brief(WhatElse whatElse) {
        return texts.word(WayWords.brief(whatElse));
    }

    /** Which floors two rulebases advise otherwise. */
    public String render(Comparison comparison) {
        return texts.page(document(comparison));
    }

    /** The same as a document, to be rendered by any page. */
    public Document document(Comparison comparison) {
        return ComparisonWords.full(comparison, parameters);
    }

    /** The same in one line. */
    public String brief(Comparison comparison) {
        return texts.word(ComparisonWords.brief(comparison));
    }
}
