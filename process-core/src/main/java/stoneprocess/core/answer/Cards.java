package stoneprocess.core.answer;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.source.Card;

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
    static void require(List<Card> cards, Stream<Reason> reasons) {
        requireAll(cards, reasons.map(Reason::rule));
    }

    /** Refuses silent rules without a card. */
    static void requireRules(List<Card> cards, List<SilentRule> silent) {
        requireAll(cards, silent.stream().map(SilentRule::rule));
    }

    private static void requireAll(List<Card> cards, Stream<String> rules) {
        Set<String> known = new HashSet<>();
        cards.forEach(card -> known.add(card.id()));
        rules.filter(rule -> !known.contains(rule)).findFirst().ifPresent(rule -> {
            throw new InvalidInputException("cards", "without " + rule, "the card of every rule that is named");
        });
    }
}
