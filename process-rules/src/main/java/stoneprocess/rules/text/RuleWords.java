package stoneprocess.rules.text;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.source.Card;

/** What the cards of a rulebase say about its rules. A rule without a card is called by its id. */
final class RuleWords {
    private final Map<String, Card> cards = new LinkedHashMap<>();

    RuleWords(Collection<Card> cards) {
        cards.forEach(card -> this.cards.put(card.id(), card));
    }

    Optional<Card> card(String rule) {
        return Optional.ofNullable(cards.get(rule));
    }

    String title(String rule) {
        return card(rule).map(Card::title).orElse(rule);
    }

    String because(String rule) {
        return card(rule)
                .map(card -> card.title() + ". " + card.because() + ".")
                .orElse(rule);
    }

    static List<String> rules(List<Reason> reasons) {
        return reasons.stream().map(Reason::rule).distinct().toList();
    }
}
