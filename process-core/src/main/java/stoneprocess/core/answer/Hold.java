package stoneprocess.core.answer;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Protection;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/**
 * One thing that is settled before the work starts: a ground of a verdict against work, a task that comes first, what is
 * lacking, a hazard that a licensed person clears, a demand that keeps a topic from being decided.
 *
 * @param protects what it protects
 * @param topic what the rule speaks to
 * @param reason the rule and the facts that it matched
 */
public record Hold(Protection protects, Topic<?> topic, Reason reason) {
    private static final Set<Topic<?>> SETTLED_FIRST =
            Set.of(Topics.VERDICT, Topics.PREPARATION, Topics.SHORTFALLS, Topics.WARNINGS);

    public Hold {
        Refuse.nulls(Hold.class, protects, topic, reason);
    }

    /**
     * All of a recommendation, the gravest first, each rule once; outweighed grounds of a verdict too, so that a refusal does
     * not hide what else must be settled.
     *
     * @param recommendation what was recommended
     * @param cards the card of a rule; none of a rule that is not known any more, which then holds nothing
     */
    public static List<Hold> of(Recommendation recommendation, Function<String, Optional<Card>> cards) {
        Refuse.nulls(Hold.class, recommendation, cards);
        Map<String, Hold> holds = new LinkedHashMap<>();
        for (Outcome outcome : recommendation.outcomes()) {
            Consumer<Reason> keep = reason -> cards.apply(reason.rule())
                    .flatMap(Card::protects)
                    .ifPresent(
                            protects -> holds.putIfAbsent(reason.rule(), new Hold(protects, outcome.topic(), reason)));
            outcome.stuck()
                    .ifPresent(impasse -> Stream.concat(impasse.needs().stream(), impasse.vetoes().stream())
                            .forEach(keep));
            if (outcome instanceof Decision<?> decision && SETTLED_FIRST.contains(outcome.topic())) {
                Stream.concat(decision.won().stream(), decision.outweighed().stream())
                        .forEach(keep);
            }
        }
        return holds.values().stream()
                .sorted(Comparator.comparing(Hold::protects))
                .toList();
    }
}
