package stoneprocess.rules.cases;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Rulebase;
import tools.jackson.databind.JsonNode;

/**
 * What a case expects of a plan, held against the plan. The kinds of expectation are described beside the expert cases and
 * beside the validation cases.
 *
 * @param answer the plan
 * @param misses where the plan is not what is expected of it; grows with each check
 */
record Expectations(Recommendation answer, List<String> misses) {
    private static final Advisor ADVISOR = Advisor.standard();

    /** Where a plan is not what is expected of it. */
    static List<String> misses(Recommendation answer, JsonNode expected) {
        Expectations expectations = new Expectations(answer, new ArrayList<>());
        each(expected, expectations::check);
        return expectations.misses;
    }

    /** Where a plan has what it must not have; each unwanted value counts by itself. */
    static List<String> found(Recommendation answer, JsonNode unwanted) {
        Expectations expectations = new Expectations(answer, new ArrayList<>());
        each(unwanted, expectations::checkAbsent);
        return expectations.misses;
    }

    private void check(String kind, JsonNode wanted) {
        switch (kind) {
            case "status" ->
                oneOf("status", texts(wanted), List.of(answer.status().key()));
            case "decided" -> each(wanted, (topic, values) -> same(topic, texts(values), values(topic)));
            case "one-of" -> each(wanted, (topic, values) -> oneOf(topic, texts(values), values(topic)));
            case "includes" -> each(wanted, (topic, values) -> holds(topic, texts(values), values(topic)));
            case "excludes" -> each(wanted, (topic, values) -> lacks(topic, texts(values), everywhere(topic)));
            case "rests" -> holds("rests", texts(wanted), rests());
            case "rests-at-least" -> wanted.properties().forEach(each -> restsAtLeast(each.getKey(), each.getValue()));
            case "first-cut" ->
                each(
                        wanted,
                        (track, cut) -> same(
                                "first-cut of " + track,
                                List.of(cut.asString()),
                                decided(Topics.FIRST_CUT.id(), Subject.parse(track, "track"))));
            case "starts" -> each(wanted, this::starts);
            case "grades" -> each(wanted, (track, grades) -> same("grades of " + track, texts(grades), grades(track)));
            case "every-step" -> each(wanted, this::everyStep);
            case "steps" ->
                each(
                        wanted,
                        (step, topics) -> each(
                                topics,
                                (topic, values) -> holds(
                                        topic + " of " + step,
                                        texts(values),
                                        decided(topic, Subject.parse(step, "step")))));
            case "impasse" -> same("impasse", Set.copyOf(texts(wanted)), impasses());
            case "offers" -> holds("offers", texts(wanted), offers());
            case "holds-in-order" -> inOrder(texts(wanted));
            case "refused-by" -> holds("refused-by", texts(wanted), refusedBy());
            case "warnings" -> holds("warnings", texts(wanted), hazards());
            case "no-warnings" -> lacks("warnings", texts(wanted), hazards());
            case "asks" -> holds("asks", texts(wanted), asked());
            case "asks-not" -> lacks("asks", texts(wanted), asked());
            case "contradictions" -> holds("contradictions", texts(wanted), contradicted());
            case "asks-first" ->
                same(
                        "asks-first",
                        wanted.asString(),
                        asked().stream().findFirst().orElse("nothing"));
            default -> misses.add("the case has an unknown expectation " + kind);
        }
    }

    private void checkAbsent(String kind, JsonNode unwanted) {
        switch (kind) {
            case "status" ->
                lacks("status", texts(unwanted), List.of(answer.status().key()));
            case "includes" -> each(unwanted, (topic, values) -> lacks(topic, texts(values), everywhere(topic)));
            case "starts" -> each(unwanted, (track, grades) -> lacks(track + " starts", texts(grades), first(track)));
            case "offers" -> lacks("offers", texts(unwanted), offers());
            case "warnings" -> lacks("warnings", texts(unwanted), hazards());
            default -> misses.add("the case has an unknown expectation " + kind);
        }
    }

    private void starts(String track, JsonNode wanted) {
        oneOf(track + " starts", texts(wanted), first(track));
    }

    /** The first grade of a track; empty when the track is not worked. */
    private List<String> first(String track) {
        List<String> starts = answer.plan().stream()
                .flatMap(plan -> plan.starts().stream())
                .filter(start -> start.zone().equals(track))
                .map(start -> start.grade().key())
                .toList();
        return !starts.isEmpty() ? starts : grades(track).stream().limit(1).toList();
    }

    private void everyStep(String topic, JsonNode values) {
        List<Decision<?>> decisions = decisions(topic);
        if (decisions.isEmpty()) {
            misses.add(topic + " is decided for no step");
        }
        for (Decision<?> decision : decisions) {
            if (decision.keys().stream().noneMatch(texts(values)::contains)) {
                misses.add(topic + " of " + decision.subject().key() + ": wanted one of " + texts(values) + ", is "
                        + decision.keys());
            }
        }
    }

    /** A floor that is not cut decides nothing about a test area; its plan says so. */
    private List<String> values(String topic) {
        return topic.equals(Topics.TEST_AREA.id())
                ? answer.plan()
                        .map(plan -> List.of(plan.testArea().key()))
                        .orElseGet(() -> decided(topic, Subject.FLOOR))
                : decided(topic, Subject.FLOOR);
    }

    private List<String> everywhere(String topic) {
        return decisions(topic).stream()
                .flatMap(decision -> decision.keys().stream())
                .toList();
    }

    private List<Decision<?>> decisions(String topic) {
        return answer.outcomes().stream()
                .filter(outcome -> outcome.topic() == Topics.named(topic))
                .flatMap(outcome -> outcome.decided().stream())
                .toList();
    }

    private List<String> decided(String topic, Subject subject) {
        return answer.decision(Topics.named(topic), subject).map(Decision::keys).orElse(List.of());
    }

    /** The grades of a track; where lanes are worked alone, the machine's track stands under the name of each such zone. */
    private List<String> grades(String track) {
        boolean lanesAlone = answer.survey().isLanesAlone();
        String machine = TrackKind.OPEN_FIELD.key();
        boolean worked = answer.survey().zones().stream()
                .anyMatch(zone -> zone.name().equals(track) && zone.kind().isTrodden());
        if (lanesAlone && track.equals(machine)) {
            return List.of();
        }
        String kind = lanesAlone && worked ? machine : track;
        return answer.plan().stream()
                .flatMap(plan -> plan.tracks().stream())
                .filter(planned -> planned.kind().key().equals(kind))
                .flatMap(planned -> planned.steps().stream())
                .map(step -> step.grade().key())
                .toList();
    }

    private void restsAtLeast(String task, JsonNode shortest) {
        TimeSpan least = TimeSpan.of(
                shortest.get("value").asDouble(),
                Unit.parse(Dimension.TIME, shortest.get("unit").asString(), "rests-at-least"));
        Optional<TimeSpan> rest = answer.plan().stream()
                .flatMap(plan -> plan.preparation().stream())
                .filter(preparation -> preparation.task().key().equals(task))
                .flatMap(preparation -> preparation.rest().stream())
                .map(Range::low)
                .findFirst();
        if (rest.filter(planned -> planned.compareTo(least) >= 0).isEmpty()) {
            misses.add(
                    "rests-at-least: " + task + " " + rest.map(TimeSpan::print).orElse("none"));
        }
    }

    private List<String> rests() {
        return answer.plan().stream()
                .flatMap(plan -> plan.preparation().stream())
                .filter(preparation -> preparation.rest().isPresent())
                .map(preparation -> preparation.task().key())
                .toList();
    }

    private Set<String> impasses() {
        Set<String> topics = new LinkedHashSet<>();
        answer.impasses().stream()
                .map(impasse -> impasse.topic().id())
                .filter(topic -> !topic.equals(Topics.STONE.id()))
                .forEach(topics::add);
        return topics;
    }

    private List<String> offers() {
        return answer.counterOffers().stream()
                .flatMap(offer -> Stream.concat(
                        Stream.of(offer.kind().key()),
                        offer.keys().stream().map(value -> offer.kind().key() + ": " + value)))
                .toList();
    }

    private List<String> refusedBy() {
        return answer.refusals().stream()
                .flatMap(reason -> reason.facts().stream())
                .map(MatchedFact::fields)
                .flatMap(List::stream)
                .toList();
    }

    /** Each is a protection and a field of one hold; others may stand between. */
    private void inOrder(List<String> wanted) {
        List<Set<String>> told = ADVISOR.holds(answer).stream()
                .map(hold -> hold.reason().facts().stream()
                        .flatMap(fact -> fact.fields().stream())
                        .map(field -> hold.protects().key() + ": " + field)
                        .collect(Collectors.toSet()))
                .toList();
        int at = 0;
        for (String ground : wanted) {
            while (at < told.size() && !told.get(at).contains(ground)) {
                at++;
            }
            if (at == told.size()) {
                misses.add("holds-in-order: lacks " + ground + " at its place, is " + told);
            }
        }
    }

    /** Fields of the answers that a hold calls contradictory and has looked at again. */
    private List<String> contradicted() {
        return grounds()
                .filter(ground -> card(ground).offers().contains(OfferKind.LOOK_AGAIN.name()))
                .flatMap(Expectations::fields)
                .distinct()
                .toList();
    }

    private Stream<Reason> grounds() {
        return answer.decision(Topics.VERDICT, Subject.FLOOR).stream().flatMap(decision -> decision.won().stream());
    }

    private static Stream<String> fields(Reason reason) {
        return reason.facts().stream().flatMap(fact -> fact.fields().stream());
    }

    private static Card card(Reason reason) {
        return Rulebase.standard().cards().stream()
                .filter(card -> card.id().equals(reason.rule()))
                .findFirst()
                .orElseThrow();
    }

    private List<String> hazards() {
        return answer.warnings().stream().map(warning -> warning.hazard().key()).toList();
    }

    private List<String> asked() {
        return answer.questions().stream().map(question -> question.field()).toList();
    }

    private void same(String what, Object wanted, Object is) {
        if (!wanted.equals(is)) {
            misses.add(what + ": wanted " + wanted + ", is " + is);
        }
    }

    private void oneOf(String what, List<String> wanted, List<String> is) {
        if (is.size() != 1 || !wanted.contains(is.get(0))) {
            misses.add(what + ": wanted one of " + wanted + ", is " + is);
        }
    }

    private void holds(String what, List<String> wanted, List<String> is) {
        wanted.stream()
                .filter(value -> !is.contains(value))
                .forEach(value -> misses.add(what + ": lacks " + value + ", is " + is));
    }

    private void lacks(String what, List<String> unwanted, List<String> is) {
        unwanted.stream().filter(is::contains).forEach(value -> misses.add(what + ": has " + value));
    }

    private static void each(JsonNode object, BiConsumer<String, JsonNode> check) {
        for (Map.Entry<String, JsonNode> entry : object.properties()) {
            check.accept(entry.getKey(), entry.getValue());
        }
    }

    private static List<String> texts(JsonNode node) {
        return node.isArray()
                ? node.values().stream().map(JsonNode::asString).toList()
                : Arrays.asList(node.asString());
    }
}
