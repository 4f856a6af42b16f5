package stoneprocess.rules.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.answer.Comparison;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Item;
import stoneprocess.rules.text.document.Section;
import stoneprocess.rules.text.document.Wording;

/**
 * Answers about a recommendation as documents, each with a short form of fewer than 140 characters that names the fact to
 * check first: {@code texts.page(answers.document(why))}, {@code texts.line(answers.document(why))}. Immutable and safe to
 * share between threads.
 */
public final class AnswerText {
    private final Parameters parameters;

    /**
     * @param parameters the numbers of the rulebase that answered
     */
    public AnswerText(Parameters parameters) {
        this.parameters = parameters;
    }

    /** Why a matter was closed as it was. */
    public Document document(Why why) {
        Optional<Wording> besides =
                WhyWords.mayCut(why) ? Optional.of(Wording.phrase("answer.no-plan-of-itself")) : Optional.empty();
        return WhyWords.full(why, Optional.empty(), besides, parameters);
    }

    /**
     * The same under the name of the floor, with why there is no plan where nothing forbids one, and where the work
     * starts with another grit than the damage would allow.
     *
     * @param recommendation the recommendation that was asked about
     */
    public Document document(Why why, Recommendation recommendation) {
        return ofFloor(
                recommendation,
                WhyWords.full(
                        why,
                        PlanText.endBeforeStart(recommendation, why.outcome()),
                        besides(why, recommendation),
                        parameters));
    }

    /** Why there is no plan although nothing forbids to cut; that damage in places does not set the start of the field. */
    private static Optional<Wording> besides(Why why, Recommendation recommendation) {
        Outcome outcome = why.outcome();
        if (WhyWords.mayCut(why)) {
            return PlanText.planless(recommendation);
        }
        boolean field = outcome.topic() == Topics.FIRST_CUT && outcome.subject().equals(Subject.OPEN_FIELD);
        return field && !recommendation.steps(TrackKind.LOCAL_REPAIR).isEmpty()
                ? Optional.of(Wording.phrase("answer.repairs-apart"))
                : Optional.empty();
    }

    /** Why a matter was not closed with a value. */
    public Document document(WhyNot whyNot) {
        return WhyNotWords.full(whyNot, parameters);
    }

    /**
     * The same under the name of the floor.
     *
     * @param recommendation the recommendation that was asked about
     */
    public Document document(WhyNot whyNot, Recommendation recommendation) {
        return ofFloor(recommendation, document(whyNot));
    }

    /** An answer under the name of its floor, beginning with what was asked. */
    private static Document ofFloor(Recommendation recommendation, Document answer) {
        List<Section> sections = new ArrayList<>();
        answer.title()
                .ifPresent(asked -> sections.add(new Section(Optional.empty(), List.of(new Item.Paragraph(asked)))));
        sections.addAll(answer.sections());
        return new Document(
                Optional.of(Wording.name(recommendation.survey().title())),
                answer.line(),
                sections,
                answer.parameters());
    }

    /** What differs between two recommendations. */
    public Document document(Difference difference) {
        return DifferenceWords.full(Wording.phrase("difference.title"), difference, List.of(), parameters);
    }

    /**
     * The same, with what the jobs of both need in all.
     *
     * @param one the one recommendation
     * @param other the other
     */
    public Document document(Difference difference, Recommendation one, Recommendation other) {
        String title = one.survey().title();
        return DifferenceWords.full(
                title.equals(other.survey().title())
                        ? Wording.name(title)
                        : Wording.phrase("difference.of-two")
                                .with("second", Wording.name(other.survey().title()))
                                .with("first", Wording.name(title)),
                difference,
                PlanTotals.instead(one, other),
                parameters);
    }

    /**
     * What other answers to the survey of a floor bring: the plan then, what goes and what comes.
     *
     * @param before the recommendation for the floor as it is
     * @param after the recommendation for the floor with the changes
     * @param cards the cards of the rulebase that made them
     */
    public Document document(Recommendation before, Recommendation after, Collection<Card> cards) {
        return WhatIfWords.full(before, after, cards);
    }

    /** How a floor would get a value. */
    public Document document(HowTo howTo) {
        return WayWords.full(howTo, Optional.empty(), parameters);
    }

    /**
     * How a floor would get a value, under its name, with the ways out first that its plan offers.
     *
     * @param recommendation the recommendation for the floor that was asked about
     */
    public Document document(HowTo howTo, Recommendation recommendation) {
        return ofFloor(recommendation, WayWords.full(howTo, Optional.of(recommendation), parameters));
    }

    /**
     * What is worth finding out, most decisive first.
     *
     * @param recommendation the recommendation for the floor that was asked about
     */
    public Document document(WhatElse whatElse, Recommendation recommendation) {
        return WhatElseWords.full(whatElse, recommendation);
    }

    /** Which floors two rulebases advise otherwise. */
    public Document document(Comparison comparison) {
        return ComparisonWords.full(comparison, parameters);
    }
}
