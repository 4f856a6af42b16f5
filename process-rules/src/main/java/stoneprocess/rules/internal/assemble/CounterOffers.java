package stoneprocess.rules.internal.assemble;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/**
 * Ways out of an impasse. Each rule's card names the offers that release its demand; leaving the floor as it is always
 * remains.
 */
final class CounterOffers {
    private CounterOffers() {}

    /**
     * @param finestOnHand the finest resin grit on hand; empty when nobody counted
     */
    static <V> List<CounterOffer<?>> of(Impasse<V> impasse, Function<String, Card> cards, OptionalInt finestOnHand) {
        Map<OfferKind, Set<String>> released =
                released(Stream.concat(impasse.needs().stream(), impasse.vetoes().stream()), cards);
        if (impasse.topic() == Topics.GRIT_PATH) {
            released.put(OfferKind.GET_GRADES, Set.of());
            if (lacksFinerGritsOnly(impasse, finestOnHand)) {
                released.put(OfferKind.LOWER_FINISH, Set.of());
            }
        }
        if (released.containsKey(OfferKind.TOOL_FINISH)) {
            released.remove(OfferKind.LOWER_FINISH);
        }
        Set<String> unsure = restingOnAnUnknownStone(impasse);
        if (!unsure.isEmpty()) {
            released.computeIfAbsent(OfferKind.TEST_STONE, key -> new LinkedHashSet<>())
                    .addAll(unsure);
        }
        List<V> reachable = reachable(impasse);
        List<CounterOffer<?>> offers = new ArrayList<>();
        released.forEach((kind, ids) -> {
            boolean finish = kind == OfferKind.LOWER_FINISH && impasse.topic() == Topics.FINISH;
            boolean named = finish || kind == OfferKind.KEEP_THE_MARKS;
            List<V> values = named ? reachable : lacking(kind, impasse);
            // Without a value that the vetoes leave, a lower finish or softened marks are not on offer.
            if (!named || !values.isEmpty()) {
                offers.add(new CounterOffer<>(
                        kind, impasse.topic(), values, ids.stream().sorted().toList()));
            }
        });
        offers.add(new CounterOffer<>(OfferKind.LEAVE_IT, impasse.topic(), List.of(), List.of()));
        return offers;
    }

    /** True where the grits on hand reach a finish, only not the one wanted. */
    private static boolean lacksFinerGritsOnly(Impasse<?> impasse, OptionalInt finestOnHand) {
        return finestOnHand.isPresent()
                && !impasse.lacking().isEmpty()
                && impasse.lacking().stream()
                        .allMatch(grit -> grit instanceof Grit lacking
                                && lacking.bond() == Bond.RESIN
                                && lacking.number() > finestOnHand.getAsInt());
    }

    private static <V> List<V> lacking(OfferKind kind, Impasse<V> impasse) {
        return kind == OfferKind.GET_GRADES || kind == OfferKind.OTHER_MACHINE ? impasse.lacking() : List.of();
    }

    /** Ways out of a refusal, in the order of its reasons. */
    static List<CounterOffer<?>> of(List<Reason> refusals, Function<String, Card> cards) {
        List<CounterOffer<?>> offers = new ArrayList<>(released(Topics.VERDICT, refusals, cards));
        offers.add(new CounterOffer<>(OfferKind.LEAVE_IT, Topics.VERDICT, List.of(), List.of()));
        return offers;
    }

    /** What the reasons of a decision offer, in their order. */
    static List<CounterOffer<?>> released(Topic<?> topic, List<Reason> reasons, Function<String, Card> cards) {
        List<CounterOffer<?>> offers = new ArrayList<>();
        Map<OfferKind, Set<String>> released = released(reasons.stream(), cards);
        reasons.stream()
                .flatMap(reason -> offers(reason.rule(), cards))
                .distinct()
                .forEach(kind -> offers.add(new CounterOffer<>(
                        kind,
                        topic,
                        List.of(),
                        released.get(kind).stream().sorted().toList())));
        return offers;
    }

    /** What may be done instead of waiting for a hold that is certain; nothing where no rule offers anything. */
    static List<CounterOffer<?>> ofHold(List<Reason> holds, Function<String, Card> cards) {
        List<CounterOffer<?>> offers = of(holds.stream().filter(Reason::certain).toList(), cards);
        return offers.size() == 1 ? List.of() : offers;
    }

    private static Map<OfferKind, Set<String>> released(Stream<Reason> reasons, Function<String, Card> cards) {
        Map<OfferKind, Set<String>> released = new EnumMap<>(OfferKind.class);
        reasons.map(Reason::rule)
                .distinct()
                .forEach(id -> offers(id, cards)
                        .forEach(kind -> released.computeIfAbsent(kind, key -> new LinkedHashSet<>())
                                .add(id)));
        return released;
    }

    private static Stream<OfferKind> offers(String id, Function<String, Card> cards) {
        return cards.apply(id).offers().stream().map(OfferKind::valueOf);
    }

    private static Set<String> restingOnAnUnknownStone(Impasse<?> impasse) {
        return impasse.vetoes().stream()
                .filter(veto -> veto.facts().stream()
                        .anyMatch(fact -> !fact.known() && fact.topics().contains(Topics.STONE)))
                .map(Reason::rule)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The boldest value that the exclusions leave, once the demands are given up. */
    @SuppressWarnings("unchecked") // a domain holds values of its topic
    private static <V> List<V> reachable(Impasse<V> impasse) {
        Set<Object> excluded = new HashSet<>();
        impasse.vetoes().forEach(veto -> excluded.addAll(veto.values()));
        return impasse.topic().domain().stream()
                .filter(value -> value != Cut.NONE)
                .filter(value -> !excluded.contains(value))
                .reduce((first, second) -> second)
                .stream()
                .map(value -> (V) value)
                .toList();
    }
}
