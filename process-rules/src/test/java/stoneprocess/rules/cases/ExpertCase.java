package stoneprocess.rules.cases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** One expert case as it stands in its file; the form is described beside the files. */
record ExpertCase(String name, ObjectNode json) {
    private static final Path FOLDER = Path.of("src/test/resources/expert-cases");
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final Set<String> PARTS =
            Set.of("title", "source", "reasoning", "base", "survey", "expect", "changed");

    /** All cases of plans, by name. */
    static List<ExpertCase> all() {
        return Stream.of("floor", "job")
                .flatMap(folder -> files(folder).stream())
                .map(file -> new ExpertCase(name(file), read(file)))
                .toList();
    }

    /** The files of one folder of cases, by name. */
    static List<Path> files(String folder) {
        try (Stream<Path> files = Files.list(FOLDER.resolve(folder))) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Folder and file without its ending, for example {@code floor/alabaster-floor}. */
    static String name(Path file) {
        return FOLDER.relativize(file).toString().replace(".json", "");
    }

    static ObjectNode read(Path file) {
        try {
            return (ObjectNode) MAPPER.readTree(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return name;
    }

    String source() {
        return json.get("source").asString();
    }

    /** The facts in: the base with what differs from it. */
    FloorSurvey survey() {
        return survey(json);
    }

    /** The base that a case names, with what differs from it. */
    static FloorSurvey survey(ObjectNode json) {
        String base = json.get("base").asString();
        ObjectNode survey = base.equals("nothing")
                ? MAPPER.createObjectNode().put("format", FloorSurvey.FORMAT)
                : read(FOLDER.resolve("base-" + base + ".json"));
        survey.set("title", json.get("title"));
        json.get("survey").properties().forEach(section -> {
            if (section.getValue() instanceof ObjectNode fields
                    && survey.get(section.getKey()) instanceof ObjectNode known) {
                known.setAll(fields);
            } else {
                survey.set(section.getKey(), section.getValue().deepCopy());
            }
        });
        if (survey.get("zones") instanceof ArrayNode zones) {
            zones.forEach(zone -> completed((ObjectNode) zone));
        }
        return Json.SURVEY.read(MAPPER.writeValueAsString(survey));
    }

    private static void completed(ObjectNode zone) {
        boolean unknown = "unknown".equals(zone.path("unlisted-damages").asString(""));
        zone.remove("unlisted-damages");
        ObjectNode damages = zone.withObject("damages");
        for (DamageKind kind : DamageKind.values()) {
            if (!damages.has(kind.key()) && !unknown) {
                damages.put(kind.key(), "none");
            }
        }
    }

    /** Where the answer is not what the case expects; none when it is. */
    List<String> misses(Recommendation answer) {
        List<String> misses = new ArrayList<>();
        json.propertyNames().stream()
                .filter(part -> !PARTS.contains(part))
                .forEach(part -> misses.add("the case has an unknown part " + part));
        JsonNode expect = json.get("expect");
        if (!expect.has("status")) {
            misses.add("the case expects no status");
        }
        misses.addAll(misses(answer, expect));
        return misses;
    }

    /** Where an answer is not what is expected of it. */
    static List<String> misses(Recommendation answer, JsonNode expect) {
        List<String> misses = new ArrayList<>();
        expect.properties().forEach(entry -> new Expectation(answer, misses).check(entry.getKey(), entry.getValue()));
        return misses;
    }

    private record Expectation(Recommendation answer, List<String> misses) {
        private void check(String kind, JsonNode wanted) {
            switch (kind) {
                case "status" ->
                    same("status", wanted.asString(), answer.status().key());
                case "decided" -> each(wanted, (topic, values) -> same(topic, texts(values), values(topic)));
                case "includes" -> each(wanted, (topic, values) -> holds(topic, texts(values), values(topic)));
                case "excludes" -> each(wanted, (topic, values) -> lacks(topic, texts(values), everywhere(topic)));
                case "rests" -> holds("rests", texts(wanted), rests());
                case "first-cut" ->
                    each(
                            wanted,
                            (track, cut) -> same(
                                    "first-cut of " + track,
                                    List.of(cut.asString()),
                                    decided(Topics.FIRST_CUT.id(), Subject.parse(track, "track"))));
                case "starts" -> each(wanted, this::starts);
                case "grades" ->
                    each(wanted, (track, grades) -> same("grades of " + track, texts(grades), grades(track)));
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
                case "refused-by" -> holds("refused-by", texts(wanted), refusedBy());
                case "warnings" -> holds("warnings", texts(wanted), hazards());
                case "no-warnings" -> lacks("warnings", texts(wanted), hazards());
                case "asks" -> holds("asks", texts(wanted), asked());
                case "asks-first" ->
                    same(
                            "asks-first",
                            wanted.asString(),
                            asked().stream().findFirst().orElse("nothing"));
                default -> misses.add("the case has an unknown expectation " + kind);
            }
        }

        private void starts(String track, JsonNode wanted) {
            String first = grades(track).stream().findFirst().orElse("nothing");
            if (!texts(wanted).contains(first)) {
                misses.add(track + " starts: wanted one of " + texts(wanted) + ", is " + first);
            }
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
                    ? answer.plan().stream().map(plan -> plan.testArea().key()).toList()
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
            return answer.decision(Topics.named(topic), subject)
                    .map(Decision::keys)
                    .orElse(List.of());
        }

        private List<String> grades(String track) {
            return answer.plan().stream()
                    .flatMap(plan -> plan.tracks().stream())
                    .filter(planned -> planned.kind().key().equals(track))
                    .flatMap(planned -> planned.steps().stream())
                    .map(step -> step.grade().key())
                    .toList();
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
                            offer.values().stream().map(value -> offer.kind().key() + ": " + value)))
                    .toList();
        }

        private List<String> refusedBy() {
            return answer.refusals().stream()
                    .flatMap(reason -> reason.facts().stream())
                    .map(MatchedFact::fields)
                    .flatMap(List::stream)
                    .toList();
        }

        private List<String> hazards() {
            return answer.warnings().stream()
                    .map(warning -> warning.hazard().key())
                    .toList();
        }

        private List<String> asked() {
            return answer.questions().stream().map(question -> question.field()).toList();
        }

        private void same(String what, Object wanted, Object is) {
            if (!wanted.equals(is)) {
                misses.add(what + ": wanted " + wanted + ", is " + is);
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
}
