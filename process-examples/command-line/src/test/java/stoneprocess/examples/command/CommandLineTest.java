package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.rules.text.SurveyQuestions;
import stoneprocess.rules.text.document.Texts;

class CommandLineTest {
    private static final Path SURVEYS = Path.of("surveys");

    /** What a run of the command line left behind. */
    record Ran(int exit, String out, String err) {
        static Ran command(String input, String... arguments) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            int exit = FloorCommand.run(
                    arguments,
                    new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                    new PrintStream(out, true, StandardCharsets.UTF_8),
                    new PrintStream(err, true, StandardCharsets.UTF_8));
            return new Ran(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        }
    }

    private static String sample(String name) {
        return SURVEYS.resolve(name + ".json").toString();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ferry-hall-granite",
                "counting-house-granite",
                "reading-room-marble",
                "customs-house-terrazzo",
                "boat-shed-concrete",
                "guest-house-foyer",
                "lighthouse-unknown-stone"
            })
    void a_planned_floor_exits_with_0(String name) {
        Ran ran = Ran.command("", "plan", sample(name));
        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("PLAN").contains("local codes").endsWith(".\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"market-arcade-limestone", "pilot-house-bath"})
    void a_refusal_and_an_impasse_exit_with_3_and_offer_ways_out(String name) {
        Ran ran = Ran.command("", "plan", sample(name));
        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.err()).isEmpty();
        // Where pieces rock, to leave them is no way out.
        String wayOut =
                name.equals("market-arcade-limestone") ? "Lift and relay the pieces" : "Leave the floor as it is";
        assertThat(ran.out()).contains("Options").contains(wayOut);
    }

    @Test
    void json_is_the_recommendation_alone_and_can_be_read_back() {
        Ran ran = Ran.command("", "plan", sample("ferry-hall-granite"), "--json");
        Recommendation recommendation = Json.RECOMMENDATION.read(ran.out());
        assertThat(recommendation.status()).isEqualTo(Status.PLANNED);
        assertThat(Json.RECOMMENDATION.print(recommendation)).isEqualTo(ran.out());
    }

    @Test
    void a_survey_is_read_from_standard_input() throws IOException {
        String survey = Files.readString(SURVEYS.resolve("ferry-hall-granite.json"));
        assertThat(Ran.command(survey, "plan", "-")).isEqualTo(Ran.command("", "plan", sample("ferry-hall-granite")));
    }

    @Test
    void the_three_questions_that_matter_most_come_first_and_the_rest_on_request() {
        Ran brief = Ran.command("", "plan", sample("lighthouse-unknown-stone"));
        Ran full = Ran.command("", "plan", sample("lighthouse-unknown-stone"), "--full");
        assertThat(brief.out().replaceAll("\\s+", " "))
                .contains(" ask ", "12 more below")
                .doesNotContain("Is a wet vacuum on hand?");
        assertThat(full.out()).contains("Is a wet vacuum on hand?").contains("\nDecisions and reasons\n");
    }

    @Test
    void us_units_are_printed_on_request() {
        assertThat(Ran.command("", "plan", sample("ferry-hall-granite"), "--units", "us")
                        .out())
                .contains("added weight, lb", "gal/pass")
                .containsPattern("  33-66  .* full, [0-9.-]+")
                .doesNotContain(" kg");
    }

    @Test
    void the_schemas_are_printed() {
        String survey = new SurveyQuestions(Texts.english()).schema();
        assertThat(Ran.command("", "schema")).isEqualTo(new Ran(0, survey, ""));
        assertThat(Ran.command("", "schema", "recommendation")).isEqualTo(new Ran(0, Json.RECOMMENDATION.schema(), ""));
    }

    static Stream<Arguments> refusedInputs() {
        String head = "{\"format\":\"floor-survey/1\",\"title\":\"t\"";
        return Stream.of(
                Arguments.of("empty", "", "empty"),
                Arguments.of("not JSON", "floor", "valid JSON"),
                Arguments.of("an unknown field", head + ",\"colour\":\"red\"}", "colour"),
                Arguments.of(
                        "a wrong unit", head + ",\"site\":{\"area\":{\"value\":1,\"unit\":\"kg\"}}}", "site.area.unit"),
                Arguments.of(
                        "a negative area",
                        head + ",\"site\":{\"area\":{\"value\":-1,\"unit\":\"m2\"}}}",
                        "site.area.value"),
                Arguments.of(
                        "gloss over the scale",
                        head
                                + ",\"zones\":[{\"name\":\"z\",\"kind\":\"lane\",\"share\":{\"value\":9,\"unit\":\"%\"}}],"
                                + "\"readings\":[{\"zone\":\"z\",\"geometry\":\"60\",\"gloss\":{\"value\":1200,\"unit\":\"GU\"},\"state\":\"clean-dry\"}]}",
                        "readings[0].gloss"),
                Arguments.of(
                        "a grit outside the sequence",
                        head + ",\"equipment\":{\"grades\":[\"resin-750\"]}}",
                        "equipment.grades[0]"),
                Arguments.of(
                        "impossible facts at one spot",
                        head
                                + ",\"zones\":[{\"name\":\"z\",\"kind\":\"lane\",\"share\":{\"value\":9,\"unit\":\"%\"},"
                                + "\"damages\":{\"scratches\":{\"look\":\"none\",\"depth\":{\"value\":1,\"unit\":\"mm\"}}}}]}",
                        "zones[0].damages.scratches.depth"),
                Arguments.of("10 MB of nesting", "[".repeat(10_000_000), "nesting"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refusedInputs")
    void bad_input_exits_with_2_and_one_line(String what, String survey, String field) {
        Ran ran = Ran.command(survey, "plan", "-");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(field).contains("accepted: ").doesNotContain("\tat ", "Exception");
        assertThat(ran.err().lines()).hasSize(1);
    }

    /** The first four, each in a line of its own, then how many more there are. */
    @Test
    void several_wrong_answers_are_told_at_once() {
        String survey =
                "{\"format\":\"floor-survey/2\",\"title\":\"x\",\"stone\":{\"name\":\"slat\",\"face\":\"rough\"},"
                        + "\"condition\":{\"coating\":\"varnish\"},\"site\":{\"area\":60,\"setting\":\"inside\"},"
                        + "\"owner\":{\"goal\":\"shiny\"}}";
        Ran ran = Ran.command(survey, "plan", "-");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err().lines().map(line -> line.replaceFirst(": .*", "")))
                .containsExactly("stone.name", "stone.face", "condition.coating", "site.area", "and 2 more");
        assertThat(ran.err().lines().limit(4)).allMatch(line -> line.contains("accepted: "));
    }

    @Test
    void files_that_cannot_be_read_get_one_line(@TempDir Path folder) throws IOException {
        Path binary = Files.write(folder.resolve("binary.json"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        for (String name : new String[] {"no-such-file.json", folder.toString(), binary.toString()}) {
            Ran ran = Ran.command("", "plan", name);
            assertThat(ran.exit()).as(name).isEqualTo(2);
            assertThat(ran.err().lines()).as(name).hasSize(1);
            assertThat(ran.err()).startsWith("file: ");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "plan",
                "plan a b",
                "plan x --colour",
                "polish",
                "estimate",
                "follow",
                "follow x",
                "diagnose",
                "diagnose x --sign fog",
                "schema roof",
                "plan x --units leagues"
            })
    void a_command_line_that_is_not_accepted_gets_one_line(String line) {
        Ran ran = Ran.command("", line.isEmpty() ? new String[0] : line.split(" "));
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines()).hasSize(1);
    }

    @Test
    void help_and_version_are_printed() {
        assertThat(Ran.command("", "--help").out())
                .contains("plan")
                .contains("follow")
                .contains("diagnose")
                .contains("estimate")
                .contains("schema")
                .contains("Exit codes");
        assertThat(Ran.command("", "--version").out())
                .contains("stoneprocess 0.1")
                .contains("rulebase ");
    }
}
