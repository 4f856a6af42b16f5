package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.source.EvidenceGrade;
import stoneprocess.core.topic.Card;
import stoneprocess.rules.Rulebase;

/** Counts and names in the documents against what is there. */
class DocumentsTest {
    private static final Path ROOT = Path.of("..");
    /** Chapters of the stages that plan a floor; the others read a job log. */
    private static final List<String> PLANNING = List.of(
            "survey", "go-no-go", "first-cut", "sequence", "equipment", "water-and-passes", "finishing", "safety");

    @Test
    void the_change_log_counts_the_expert_cases() throws IOException {
        Path folder = ROOT.resolve(Path.of("process-rules", "src", "test", "resources", "expert-cases"));
        try (Stream<Path> files = Files.walk(folder)) {
            long cases = files.filter(file -> file.toString().endsWith(".json"))
                    .filter(file -> !file.getParent().equals(folder))
                    .count();
            assertThat(Files.readString(ROOT.resolve("docs/changelog.md"))).contains(cases + " expert cases");
        }
    }

    @Test
    void the_page_on_performance_counts_the_rules_that_plan_a_floor() throws IOException {
        long rules = Rulebase.standard().cards().stream()
                .map(Card::chapter)
                .filter(PLANNING::contains)
                .count();
        assertThat(rules).isPositive();
        assertThat(Files.readString(ROOT.resolve("docs/performance.md"))).contains("By now " + rules + " rules plan");
    }

    @Test
    void the_readme_tells_the_shares_of_rules_by_grade_of_their_source() throws IOException {
        List<Card> cards = Rulebase.standard().cards();
        List<Card> locked = cards.stream().filter(Card::locked).toList();
        assertThat(Files.readString(ROOT.resolve("README.md")))
                .contains("what the rules rest on: " + percent(EvidenceGrade.PUBLISHED, cards)
                        + " on a published source that can be found and was read, "
                        + percent(EvidenceGrade.SECOND_HAND, cards) + " on\n  one at second hand")
                .contains("of the locked rules " + percent(EvidenceGrade.PUBLISHED, locked) + " on a published source");
    }

    private static String percent(EvidenceGrade grade, List<Card> cards) {
        long graded = cards.stream().filter(card -> card.grade() == grade).count();
        return Math.round(100.0 * graded / cards.size()) + " %";
    }

    @Test
    void every_room_of_the_examples_stands_in_the_table_for_contributors() throws IOException {
        String text = Files.readString(ROOT.resolve("DEVELOPERS.md"));
        String table = text.substring(text.indexOf("| `stoneprocess.examples.`"));
        try (Stream<Path> rooms = Files.list(Path.of("command-line", "src", "main", "java", "stoneprocess", "examples"))
                .filter(Files::isDirectory)) {
            assertThat(rooms.map(room -> "| `" + room.getFileName() + "` |"))
                    .isNotEmpty()
                    .allSatisfy(row -> assertThat(table).contains(row));
        }
    }

    @Test
    void the_readme_tells_embedders_the_coordinates_of_this_version() throws IOException {
        assertThat(Files.readString(ROOT.resolve("README.md")))
                .contains("<artifactId>process-rules</artifactId>\n  <version>"
                        + Rulebase.standard().stamp().version() + "</version>");
    }
}
