package stoneprocess.rules.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.plan.Status;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.term.Term;
import stoneprocess.rules.Advisor;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What is done about each told damage, layer and wait on each family of stone. The rows stand in {@code
 * treatment-table.tsv}, which tells their source; a row counts for each of its stones.
 */
class TreatmentTableTest {
    private static final Path FOLDER = Path.of("src/test/resources/expert-cases");
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final Advisor ADVISOR = Advisor.standard();

    @Test
    void every_row_comes_out_on_every_stone() {
        List<String> misses = new ArrayList<>();
        List<ExpertCase> cells = cells();
        for (ExpertCase cell : cells) {
            cell.misses(ADVISOR.recommend(cell.survey())).forEach(miss -> misses.add(cell.name() + ": " + miss));
        }
        System.out.printf("Treatment table: %d cells%n", cells.size());
        assertThat(misses).isEmpty();
    }

    @Test
    void every_kind_of_damage_and_every_family_occurs() {
        assertThat(lines("treatment-table.tsv").map(row -> row[2]).collect(Collectors.joining(" ")))
                .contains(Stream.of(DamageKind.values())
                        .map(kind -> "damages." + kind.key())
                        .toList());
        assertThat(cells().stream().map(cell -> cell.name().split(" / ")[1]).distinct())
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(Family.values()).map(Family::key).toList());
    }

    /** Every row on each of its stones, as a case. */
    static List<ExpertCase> cells() {
        Map<String, String[]> families =
                lines("floor-table-families.tsv").collect(Collectors.toMap(row -> row[0], Function.identity()));
        return lines("treatment-table.tsv")
                .flatMap(row -> Arrays.stream(row[1].split(" "))
                        .flatMap(stones -> stones.equals("all") ? families.keySet().stream() : Stream.of(stones))
                        .map(family -> cell(row, families.get(family))))
                .toList();
    }

    private static ExpertCase cell(String[] row, String[] family) {
        ObjectNode cell = MAPPER.createObjectNode();
        cell.put("title", row[0]).put("base", "marble").put("source", row[4]);
        ObjectNode survey = cell.withObject("survey");
        survey.withObject("stone")
                .put("name", family[1])
                .put("identified-by", "petrographer")
                .put("acid-drop", family[2])
                .put("scriber", family[4])
                .put("water-drop", family[5])
                .put("colour", List.of("slate", "basalt-gabbro").contains(family[0]) ? "dark" : "pale")
                .put("data-sheet", family[0].equals("engineered-quartz") ? "high-silica" : "low-silica");
        ObjectNode zone = MAPPER.createObjectNode();
        zone.put("name", "whole").put("kind", "field").set("share", amount("100 %"));
        ArrayNode zones = survey.withArray("zones");
        zones.add(zone);
        for (String answer : row[2].split("; ")) {
            String[] told = answer.split("=");
            String[] name = told[0].split("\\.");
            ObjectNode section = (name[0].equals("damages") ? zone : survey).withObject(name[0]);
            if (name[0].equals("damages")) {
                damage(section.withObject(name[1]), told[1]);
            } else if (told[1].contains(" ")) {
                section.set(name[1], amount(told[1]));
            } else {
                section.put(name[1], told[1]);
            }
        }
        cell.set("expect", expected(row[3]));
        return new ExpertCase("treatment-table / " + family[0] + " / " + row[0], cell);
    }

    /** A look or a depth, then the share where it is told: {@code rough 2 %}, {@code 2 mm 30 %}. */
    private static void damage(ObjectNode damage, String text) {
        String[] words = text.split(" ", 2);
        boolean measured = Character.isDigit(text.charAt(0));
        String share = measured ? text.split("mm ", 2)[1] : words.length > 1 ? words[1] : "";
        if (measured) {
            damage.set("depth", amount(text.split(" mm")[0] + " mm"));
        } else {
            damage.put("look", words[0]);
        }
        if (!share.isEmpty()) {
            damage.set("share", amount(share));
        }
    }

    private static ObjectNode amount(String text) {
        String[] words = text.split(" ");
        return MAPPER.createObjectNode()
                .put("value", Double.parseDouble(words[0]))
                .put("unit", words[1]);
    }

    /** {@code topic:value} among what is decided, {@code !topic:value} not, {@code field:untouched}, {@code status:value}. */
    private static ObjectNode expected(String wanted) {
        ObjectNode expect = MAPPER.createObjectNode();
        for (String part : wanted.split("; ")) {
            String[] words = part.split(":");
            switch (words[0]) {
                case "field" -> expect.withObject("grades").withArray("open-field");
                case "status" -> expect.withArray("status").add(words[1]);
                case "asks" -> expect.withArray("asks").add(words[1]);
                default -> {
                    String kind = words[0].startsWith("!") ? "excludes" : "includes";
                    expect.withObject(kind).withArray(words[0].replace("!", "")).add(words[1]);
                }
            }
        }
        if (!expect.has("status")) {
            Term.keys(List.of(Status.values())).forEach(expect.withArray("status")::add);
        }
        return expect;
    }

    private static Stream<String[]> lines(String file) {
        try {
            return Files.readAllLines(FOLDER.resolve(file)).stream()
                    .skip(1)
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> line.split("\t"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
