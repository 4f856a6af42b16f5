package stoneprocess.core.answer;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.topic.Card;

/**
 * Why a matter was closed as it was, down to what the survey answers. It is read from the decision records that were
 * kept when the plan was made; nothing is reasoned anew. Immutable and safe to share between threads.
 *
 * @param grounds the outcome that was asked about, then every outcome that it rests on, each once; each rests only on
 *     those that follow it, so that there is no circle
 * @param cards the card of every rule in these, ordered by id
 * @param answers the survey's answer to every question that their facts were read from, unknown included, in the order
 *     of the survey form
 * @param numbers the parameters that went into computed values, by name, each with its unit
 */
public record Why(List<Ground> grounds, List<Card> cards, List<FieldAnswer> answers, Map<String, Quantity> numbers) {
    /** Version of the JSON form. */
    public static final String FORMAT = "why/1";

    /**
     * Copies lists and map.
     *
     * @throws InvalidInputException when there is no ground, one rests on something that does not follow it, or a
     *     rule's card is missing
     */
    public Why {
        Refuse.nulls(Why.class, grounds, cards, answers, numbers);
        grounds = List.copyOf(grounds);
        cards = List.copyOf(cards);
        answers = List.copyOf(answers);
        numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
        if (grounds.isEmpty()) {
            throw new InvalidInputException("grounds", "none", "at least the outcome that was asked about");
        }
        Set<Matter> following = new HashSet<>();
        for (int i = grounds.size() - 1; i >= 0; i--) {
            for (Matter matter : grounds.get(i).restsOn()) {
                if (!following.contains(matter)) {
                    throw new InvalidInputException(
                            "grounds.rests-on", matter.toString(), "matters that follow the one that rests on them");
                }
            }
            following.add(grounds.get(i).matter());
        }
        Cards.require(cards, grounds.stream().map(Ground::reasons).toList());
    }

    /** The outcome that was asked about. */
    public Outcome outcome() {
        return grounds.get(0).outcome();
    }

    /**
     * The card of a rule.
     *
     * @throws InvalidInputException when no reason names that rule
     */
    public Card card(String rule) {
        return Cards.of(cards, rule);
    }
}
