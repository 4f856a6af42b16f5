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
import stoneprocess.core.quantity.UnitSystem;

/**
 * Answers about a recommendation as text, long and short. A long text has lines of at most 96 characters and ends with a
 * line feed; a short one is a single line of fewer than 140 characters and names the fact to check first. Never parse
 * them: the answers hold the same as data. Immutable and safe to share between threads.
 */
public final class AnswerText {
    private final WhyWords whys;
    private final WhyNotWords whyNots;
    private final DifferenceWords differences;
    private final WayWords ways;
    private final ComparisonWords comparisons;
    private final AnswerWords words;

    /**
     * @param units the reader's units
     * @param parameters the numbers of the rulebase that answered
     */
    public AnswerText(UnitSystem units, Parameters parameters) {
        AnswerWords words = new AnswerWords(units, parameters);
        this.whys = new WhyWords(words);
        this.whyNots = new WhyNotWords(words);
        this.differences = new DifferenceWords(words);
        this.ways = new WayWords(words);
        this.comparisons = new ComparisonWords(words);
        this.words = words;
    }

    /** Why a matter was closed as it was. */
    public String render(Why why) {
        return whys.full(why);
    }

    /** The same in one line. */
    public String brief(Why why) {
        return whys.brief(why);
    }

    /** Why a matter was not closed with a value. */
    public String render(WhyNot whyNot) {
        return whyNots.full(whyNot);
    }

    /** The same in one line. */
    public String brief(WhyNot whyNot) {
        return whyNots.brief(whyNot);
    }

    /** What differs between two recommendations. */
    public String render(Difference difference) {
        return differences.full(words.phrases.get("difference.title"), List.of(), difference);
    }

    /** The same in one line. */
    public String brief(Difference difference) {
        return differences.brief(difference);
    }

    /** What changes of a survey bring. */
    public String render(WhatIf whatIf) {
        return differences.full(
                whatIf.before().survey().title(),
                whatIf.changes().stream().map(words.fields::change).toList(),
                Difference.between(whatIf.before(), whatIf.after()));
    }

    /** The same in one line. */
    public String brief(WhatIf whatIf) {
        return differences.brief(Difference.between(whatIf.before(), whatIf.after()));
    }

    /** How a floor would get a value. */
    public String render(HowTo howTo) {
        return ways.full(howTo);
    }

    /** The same in one line: the first of the smallest ways. */
    public String brief(HowTo howTo) {
        return ways.brief(howTo);
    }

    /** What is worth finding out. */
    public String render(WhatElse whatElse) {
        return ways.full(whatElse);
    }

    /** The same in one line: what to find out first. */
    public String brief(WhatElse whatElse) {
        return ways.brief(whatElse);
    }

    /** Which floors two rulebases advise otherwise. */
    public String render(Comparison comparison) {
        return comparisons.full(comparison);
    }

    /** The same in one line. */
    public String brief(Comparison comparison) {
        return comparisons.brief(comparison);
    }

    /** The texts that do not come from an enum; a test keeps the bundle complete. */
    static List<String> fixedKeys() {
        return List.of(
                "answer.it-is",
                "answer.impasse",
                "answer.nothing",
                "answer.several",
                "answer.says",
                "answer.by",
                "answer.won",
                "answer.outweighed",
                "answer.vetoed",
                "answer.needs",
                "answer.vetoes",
                "answer.rests-on",
                "answer.numbers",
                "answer.to-overturn",
                "answer.survey",
                "answer.survey-too",
                "answer.survey-says",
                "answer.check-by",
                "answer.degrees",
                "answer.none-there",
                "answer.check",
                "answer.follows-from",
                "why-not.title",
                "why-not.instead",
                "why-not.stands",
                "why-not.brief-several",
                "why-not.by",
                "why-not.asked",
                "why-not.silent",
                "why-not.needs",
                "why-not.here",
                "why-not.more",
                "why-not.brief",
                "why-not.brief-needs",
                "answer.not-reached",
                "change.more",
                "change.less",
                "change.instead",
                "change.found",
                "change.to-find-out",
                "difference.title",
                "difference.one",
                "difference.other",
                "difference.none",
                "difference.same-status",
                "difference.same-matters",
                "difference.status",
                "difference.changes",
                "difference.answers",
                "difference.grits",
                "difference.not-worked",
                "difference.matters",
                "difference.preparation",
                "difference.warnings",
                "difference.questions",
                "difference.offers",
                "difference.parameters",
                "difference.rulebases",
                "difference.brief",
                "difference.brief-matter",
                "how-to.title",
                "how-to.people",
                "how-to.nature",
                "how-to.and",
                "how-to.mind",
                "how-to.more",
                "how-to.change",
                "how-to.count",
                "what-else.title",
                "what-else.nothing",
                "what-else.count",
                "what-else.heading",
                "what-else.changes",
                "what-else.brief",
                "what-else.more",
                "what-else.first",
                "comparison.title",
                "comparison.brief",
                "comparison.through");
    }
}
