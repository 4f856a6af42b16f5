package stoneprocess.rules.cases;

import static java.nio.file.Files.readAllLines;
import static java.nio.file.Files.readString;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.rules.Advisor;
import tools.jackson.databind.JsonNode;

/**
 * Floors of published sources, written blind, against the planner. A case that is not right does not fail; a case whose
 * result is another than its standing does, in either direction.
 */
class ValidationTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final Map<String, Standing> STANDINGS = table("standing.tsv").stream()
            .map(Standing::of)
            .collect(Collectors.toMap(Standing::name, standing -> standing, ValidationTest::twice, TreeMap::new));

    /** A row of {@code standing.tsv}; the last cell tells why a case was withdrawn, a hyphen that it was not. */
    private record Standing(String name, boolean rightAtFirst, boolean rightNow, boolean withdrawn) {
        private static Standing of(List<String> cells) {
            assertThat(cells).hasSize(4);
            return new Standing(
                    cells.get(0),
                    yes(cells.get(1)),
                    yes(cells.get(2)),
                    !cells.get(3).equals("-"));
        }

        private static boolean yes(String cell) {
            assertThat(cell).isIn("yes", "no");
            return cell.equals("yes");
        }

        private String batch() {
            return name.substring(0, name.indexOf('/'));
        }
    }

    static List<ValidationCase> cases() {
        return ValidationCase.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void a_case_is_as_right_as_it_stands(ValidationCase validation) {
        Standing standing = STANDINGS.get(validation.name());
        assertThat(standing).as("row of standing.tsv").isNotNull();
        List<String> misses = validation.misses(ADVISOR.recommend(validation.survey()));
        misses.forEach(miss -> System.out.printf("Missed in %s: %s%n", validation.name(), miss));
        if (!standing.withdrawn()) {
            assertThat(misses.isEmpty())
                    .as("right now; where it is missed: %s; when meant, change the column 'now'", misses)
                    .isEqualTo(standing.rightNow());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void a_case_says_enough_and_names_its_source(ValidationCase validation) {
        assertThat(validation.unknownWords()).isEmpty();
        assertThat(validation.expectations()).isGreaterThanOrEqualTo(3);
        assertThat(validation.json().has("must-not") || validation.json().has("must-ask"))
                .isTrue();
        assertThat(validation.beyondTheVerdict()).isTrue();
        for (String part : List.of("title", "author", "year", "clause", "read")) {
            assertThat(validation.source().path(part).asString("")).as(part).isNotBlank();
        }
        assertThat(validation.source().get("grade").asString()).isIn("published", "second hand");
    }

    @Test
    void every_standing_has_its_case() {
        assertThat(STANDINGS.keySet())
                .containsExactlyInAnyOrderElementsOf(
                        cases().stream().map(ValidationCase::name).toList());
    }

    @Test
    void no_source_carries_more_than_four_cases() {
        Map<JsonNode, Long> perSource = cases().stream()
                .collect(Collectors.groupingBy(validation -> validation.source().get("title"), Collectors.counting()));
        assertThat(perSource.values()).allMatch(count -> count <= 4);
    }

    @Test
    void the_page_and_the_readme_tell_the_standing() throws IOException {
        String page = readString(Path.of("..", "docs", "validation.md"));
        for (List<String> batch : table("batches.tsv")) {
            List<Standing> standings = of(batch.get(0));
            assertThat(page)
                    .contains(String.format(
                            "| %s | %s | %d | %s | %d | %d |",
                            batch.get(0),
                            batch.get(1),
                            standings.size(),
                            share(standings, Standing::rightAtFirst),
                            count(standings, standing -> standing.rightNow() && !standing.withdrawn()),
                            count(standings, Standing::withdrawn)));
        }
        List<List<String>> batches = table("batches.tsv");
        List<Standing> latest = of(batches.get(batches.size() - 1).get(0));
        assertThat(readString(Path.of("..", "README.md")).replaceAll("\\s+", " "))
                .contains(String.format(
                        "of the latest %d floors written blind from published sources %s came out right at their first run",
                        latest.size(), share(latest, Standing::rightAtFirst)));
    }

    private static List<Standing> of(String batch) {
        return STANDINGS.values().stream()
                .filter(standing -> standing.batch().equals(batch))
                .toList();
    }

    private static long count(List<Standing> standings, Predicate<Standing> wanted) {
        return standings.stream().filter(wanted).count();
    }

    /** Number and share with the 95 % interval after Wilson. */
    private static String share(List<Standing> standings, Predicate<Standing> wanted) {
        int all = standings.size();
        int right = (int) count(standings, wanted);
        ConfidenceInterval interval = new WilsonScoreInterval().createInterval(all, right, 0.95);
        return String.format(
                Locale.ROOT,
                "%d, %.0f %% (%.0f to %.0f %%)",
                right,
                100.0 * right / all,
                100 * interval.getLowerBound(),
                100 * interval.getUpperBound());
    }

    private static List<List<String>> table(String file) {
        try (Stream<String> lines = readAllLines(ValidationCase.FOLDER.resolve(file)).stream()) {
            return lines.skip(1).map(line -> List.of(line.split("\t"))).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Standing twice(Standing first, Standing second) {
        throw new IllegalStateException(second.name() + " stands twice in standing.tsv");
    }
}
