package stoneprocess.rules.cases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** One expert case as it stands in its file; the form is described beside the files. */
record ExpertCase(String name, ObjectNode json) {
    private static final Path FOLDER = Path.of("src/test/resources/expert-cases");
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final Set<String> PARTS =
            Set.of("title", "source", "reasoning", "base", "told", "survey", "expect", "changed", "cannot-be-said");

    /** All cases of plans, by name. */
    static List<ExpertCase> all() {
        return Stream.of("floor", "job", "told")
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
        return survey(
                json,
                base.equals("nothing")
                        ? MAPPER.createObjectNode().put("format", FloorSurvey.FORMAT)
                        : read(FOLDER.resolve("base-" + base + ".json")));
    }

    /** A base, with what differs from it in a case. */
    static FloorSurvey survey(ObjectNode json, ObjectNode base) {
        ObjectNode survey = base.deepCopy();
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
        misses.addAll(Expectations.misses(answer, expect));
        return misses;
    }
}
