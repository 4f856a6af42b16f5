package stoneprocess.rules.text;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Protection;
import stoneprocess.rules.text.document.Wording;

/** What the cards of a rulebase say about its rules. A rule without a card is called by its id. */
final class RuleWords {
    private final Map<String, Card> cards = new LinkedHashMap<>();

    RuleWords(Collection<Card> cards) {
        cards.forEach(card -> this.cards.put(card.id(), card));
    }

    Optional<Card> card(String rule) {
        return Optional.ofNullable(cards.get(rule));
    }

    /** What a rule protects; the look where it does not say so. */
    Protection protects(String rule) {
        return card(rule).flatMap(Card::protects).orElse(Protection.LOOK);
    }

    Wording title(String rule) {
        return card(rule).map(Wording::title).orElseGet(() -> Wording.name(rule));
    }

    /** The title and the reason as two sentences. */
    Wording because(String rule) {
        return card(rule).map(RuleWords::because).orElseGet(() -> Wording.name(rule));
    }

    /** The reason as a sentence, unless it has been told, and remembers it. */
    Optional<Wording> cause(String rule, Set<String> told) {
        return card(rule)
                .filter(card -> told.add(card.because()))
                .map(card -> Wording.phrase("card.title").with("title", Wording.because(card)));
    }

    /** The same and the rule's id in brackets. */
    Wording becauseWithId(String rule) {
        return withIds(because(rule), List.of(rule));
    }

    /** The same; the title alone where the reason has been told, and remembers the reason. */
    Wording because(String rule, Set<String> told) {
        boolean repeated = card(rule).filter(card -> !told.add(card.because())).isPresent();
        return repeated
                ? withIds(Wording.phrase("card.title").with("title", title(rule)), List.of(rule))
                : becauseWithId(rule);
    }

    static Wording because(Card card) {
        return Wording.phrase("card.because").with("title", Wording.title(card)).with("because", Wording.because(card));
    }

    /** Words and the ids of rules in brackets; only the words where there are no rules. */
    static Wording withIds(Wording words, List<String> rules) {
        return rules.isEmpty()
                ? words
                : Wording.phrase("card.ids")
                        .with("words", words)
                        .with("ids", Wording.list(Wording.Joint.COMMA, rules, Wording::name));
    }

    /** The reasons that each rule gives, in the order of the first of each. */
    static Map<String, List<Reason>> byRule(List<Reason> reasons) {
        return reasons.stream().collect(Collectors.groupingBy(Reason::rule, LinkedHashMap::new, Collectors.toList()));
    }

    static List<String> rules(List<Reason> reasons) {
        return reasons.stream().map(Reason::rule).distinct().toList();
    }
}
