package stoneprocess.core.answer;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.topic.Card;

/** The cards that an answer carries. */
final class Cards {
    private Cards() {}

    static Card of(List<Card> cards, String rule) {
        return cards.stream()
                .filter(card -> card.id().equals(rule))
                .findFirst()
                .orElseThrow(() -> new InvalidInputException(
                        "rule",
                        rule,
                        "one of "
                                + String.join(", ", cards.stream().map(Card::id).toList())));
    }

    /** Refuses reasons whose rule has no card. */
    static void require(List<Card> cards, List<List<Reason>> reasons) {
        Set<String> known = ids(cards);
        for (List<Reason> some : reasons) {
            for (Reason reason : some) {
                require(known, reason.rule());
            }
        }
    }

    /** Refuses silent rules without a card. */
    static void requireRules(List<Card> cards, List<SilentRule> silent) {
        Set<String> known = ids(cards);
        for (SilentRule rule : silent) {
            require(known, rule.rule());
        }
    }

    private static Set<String> ids(List<Card> cards) {
        Set<String> ids = new HashSet<>();
        for (Card card : cards) {
            ids.add(card.id());
        }
        return ids;
    }

    private static void require(Set<String> known, String rule) {
        if (!known.contains(rule)) {
            throw new InvalidInputException("cards", "without " + rule, "the card of every rule that is named");
        }
    }
}
