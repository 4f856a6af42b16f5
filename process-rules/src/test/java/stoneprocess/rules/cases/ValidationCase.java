package stoneprocess.rules.cases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Topics;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * One floor of a batch with what a published source prescribes for it; form and rules of the game are described beside
 * the files.
 *
 * @param name batch and file without its ending, for example {@code batch-1/oil-in-terrazzo}
 * @param json the file
 */
record ValidationCase(String name, ObjectNode json) {
    static final Path FOLDER = Path.of("src/test/resources/validation");
    private static final Set<String> PARTS = Set.of(
            "title", "source", "says", "form", "base", "survey", "must", "must-not", "must-ask", "cannot-be-said");

    /** All cases of all batches, by name. */
    static List<ValidationCase> all() {
        try (Stream<Path> files = Files.walk(FOLDER, 2)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .filter(file -> !FOLDER.equals(file.getParent()))
                    .sorted()
                    .map(file -> new ValidationCase(
                            FOLDER.relativize(file).toString().replace(".json", ""), ExpertCase.read(file)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String toString() {
        return name;
    }

    /** The folder that the case lies in. */
    String batch() {
        return name.substring(0, name.indexOf('/'));
    }

    JsonNode source() {
        return json.get("source");
    }

    /** The facts in, in the form in which the case was written. */
    FloorSurvey survey() {
        String base = json.get("base").asString();
        ObjectNode known = base.equals("nothing")
                ? JsonNodeFactory.instance.objectNode()
                : ExpertCase.read(FOLDER.resolve(base + ".json"));
        known.set("format", json.get("form"));
        return ExpertCase.survey(json, known);
    }

    /** Where the answer is not what the source prescribes, and what cannot be said; none when the case is right. */
    List<String> misses(Recommendation answer) {
        List<String> misses = new ArrayList<>(Expectations.misses(answer, part("must")));
        misses.addAll(Expectations.found(answer, part("must-not")));
        if (json.has("must-ask")) {
            misses.addAll(Expectations.misses(
                    answer, JsonNodeFactory.instance.objectNode().set("asks", json.get("must-ask"))));
        }
        json.path("cannot-be-said").forEach(line -> misses.add("cannot be said: " + line.asString()));
        return misses;
    }

    /** How many things are expected, of which a value that must be absent is one. */
    int expectations() {
        return count(part("must"))
                + count(part("must-not"))
                + json.path("must-ask").size();
    }

    /** True when something is expected beside status and verdict. */
    boolean beyondTheVerdict() {
        return json.has("must-ask")
                || Stream.of(part("must"), part("must-not"))
                        .flatMap(part -> part.properties().stream())
                        .filter(kind -> !kind.getKey().equals("status"))
                        .anyMatch(kind -> !kind.getValue().isObject()
                                || kind.getValue().propertyNames().stream()
                                        .anyMatch(topic -> !topic.equals(Topics.VERDICT.id())));
    }

    /** Parts and unwanted words that nothing knows; a misspelt word could never be found. */
    List<String> unknownWords() {
        List<String> unknown = new ArrayList<>(json.propertyNames().stream()
                .filter(part -> !PARTS.contains(part))
                .toList());
        part("must-not").properties().forEach(kind -> {
            JsonNode values = kind.getValue();
            switch (kind.getKey()) {
                case "status" -> addUnknown(unknown, values, Term.keys(List.of(Status.values())));
                case "offers" -> addUnknown(unknown, values, Term.keys(List.of(OfferKind.values())));
                case "warnings" -> addUnknown(unknown, values, Term.keys(List.of(Hazard.values())));
                case "starts" ->
                    values.properties()
                            .forEach(track -> track.getValue().forEach(grade -> Grit.parse(grade.asString(), name)));
                case "includes" ->
                    values.properties()
                            .forEach(topic -> addUnknown(
                                    unknown,
                                    topic.getValue(),
                                    Term.keys(Topics.choice(topic.getKey()).domain())));
                default -> unknown.add(kind.getKey());
            }
        });
        return unknown;
    }

    private static void addUnknown(List<String> unknown, JsonNode values, List<String> known) {
        values.values().stream()
                .map(JsonNode::asString)
                .filter(value -> !known.contains(value))
                .forEach(unknown::add);
    }

    private JsonNode part(String name) {
        return json.has(name) ? json.get(name) : JsonNodeFactory.instance.objectNode();
    }

    private static int count(JsonNode part) {
        int count = 0;
        for (var kind : part.properties()) {
            if (!kind.getValue().isObject()) {
                count += kind.getKey().equals("status") ? 1 : kind.getValue().size();
                continue;
            }
            for (JsonNode values : kind.getValue()) {
                count += kind.getKey().equals("includes") ? values.size() : 1;
            }
        }
        return count;
    }
}
