package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.topic.Card;

/**
 * Why a matter was not closed with a value. What spoke is read from the decision record; what was silent is read from
 * the conditions of the rules over the facts of the floor. Immutable and safe to share between threads.
 *
 * @param value the value as the question named it: the key of a value of the domain or of a grit, or a figure in digits
 * @param kind what kept it from being the outcome
 * @param outcome what was decided instead
 * @param by the reasons that vetoed or outweighed it, or that made an impasse of it; for
 *     {@link WhyNotKind#OTHER_STEPS} those that exclude it at other steps of the track and those that wish for the
 *     value that was chosen, none when the order of the domain decided
 * @param asked the reasons that asked for it all the same
 * @param silent the rules that ask for it, but not on this floor, the nearest to speaking first; none when no rule asks
 *     for it at all
 * @param restsOn the matters that kept a grit or a figure out
 * @param cards the card of every rule that is named, ordered by id
 * @param answers the survey's answer to every question behind the conditions that do not hold, in the order of the
 *     survey form
 */
public record WhyNot(
        String value,
        WhyNotKind kind,
        Outcome outcome,
        List<Reason> by,
        List<Reason> asked,
        List<SilentRule> silent,
        List<Matter> restsOn,
        List<Card> cards,
        List<FieldAnswer> answers) {
    /** Version of the JSON form. */
    public static final String FORMAT = "why-not/1";

    /**
     * Copies the lists.
     *
     * @throws InvalidInputException when the card of a named rule is missing
     */
    public WhyNot {
        Refuse.nulls(WhyNot.class, value, kind, outcome, by, asked, silent, restsOn, cards, answers);
        by = List.copyOf(by);
        asked = List.copyOf(asked);
        silent = List.copyOf(silent);
        restsOn = List.copyOf(restsOn);
        cards = List.copyOf(cards);
        answers = List.copyOf(answers);
        Cards.require(cards, List.of(by, asked));
        Cards.requireRules(cards, silent);
    }

    /** What was asked about. */
    public Matter matter() {
        return Matter.of(outcome);
    }

    /**
     * The card of a rule.
     *
     * @throws InvalidInputException when the answer does not name that rule
     */
    public Card card(String rule) {
        return Cards.of(cards, rule);
    }
}
