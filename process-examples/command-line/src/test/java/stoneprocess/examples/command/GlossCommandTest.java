package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.examples.command.CommandLineTest.Ran;

class GlossCommandTest {
    private static final Path FERRY_HALL = Path.of("surveys", "ferry-hall-granite.json");

    @ParameterizedTest
    @ValueSource(strings = {"ferry-hall-granite", "market-arcade-limestone", "guest-house-foyer", "pilot-house-bath"})
    void it_exits_with_0_with_and_without_a_plan(String name) {
        Ran ran = Ran.command("", "gloss", "surveys/" + name + ".json");
        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("What the floor could reach").contains("Local codes");
    }

    @Test
    void a_survey_is_read_from_standard_input() throws IOException {
        assertThat(Ran.command(Files.readString(FERRY_HALL), "gloss", "-"))
                .isEqualTo(Ran.command("", "gloss", FERRY_HALL.toString()));
    }

    @Test
    void hold_points_keep_their_own_readings() {
        Ran ran = Ran.command(
                "",
                "gloss",
                FERRY_HALL.toString(),
                "--gloss",
                "35 GU",
                "--after",
                "400",
                "--passes",
                "7",
                "--reads",
                "8.8 GU",
                "--after",
                "800",
                "--passes",
                "10",
                "--reads",
                "25.8 GU, 27 GU",
                "--after",
                "1500",
                "--passes",
                "9");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("after resin 400, 7 passes\n      1 reading, mean 8.8 GU")
                .contains("after resin 800, 10 passes\n      2 readings, mean 26.4 GU")
                .contains("after resin 1500, 9 passes\n      not read");
    }

    @Test
    void the_wanted_half_width_is_passed_on() {
        assertThat(Ran.command("", "gloss", FERRY_HALL.toString(), "--within", "1 GU")
                        .out())
                .contains("Readings for a mean within 1 GU either way");
        assertThat(Ran.command("", "gloss", FERRY_HALL.toString(), "--units", "us")
                        .out())
                .contains("Readings for a mean within 2 GU either way");
    }

    @ParameterizedTest
    @CsvSource({
        "--gloss, 70, --gloss",
        "--gloss, 70 kg, --gloss",
        "--gloss, 0 GU, --gloss",
        "--gloss, -1 GU, --gloss",
        "--within, 0 GU, --within",
        "--within, wide, --within",
        "--zone, roof, --zone",
        "--after, 800, --passes",
        "--reads, 3 GU, --after",
        "--colour, red, --colour",
        "--units, leagues, --units"
    })
    void bad_options_exit_with_2_and_one_line(String option, String value, String named) {
        Ran ran = Ran.command("", "gloss", FERRY_HALL.toString(), option, value);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(named).doesNotContain("Exception");
        assertThat(ran.err().lines()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "20, 8, 3 GU, a resin grit from 30 to 12000",
        "-5, 8, 3 GU, a resin grit number of 1 or more",
        "800, -1, 3 GU, 0 or more passes",
        "800, 2000, 3 GU, 0 to 1000 passes",
        "800, 8, 3, a number",
        "800, 8, '3 GU,,5 GU', a number",
        "800, 8, 2000 GU, that of a mirror"
    })
    void bad_hold_points_exit_with_2_and_one_line(String grit, String passes, String reads, String accepted) {
        Ran ran =
                Ran.command("", "gloss", FERRY_HALL.toString(), "--after", grit, "--passes", passes, "--reads", reads);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains(accepted);
        assertThat(ran.err().lines()).hasSize(1);
    }

    @Test
    void help_names_every_option() {
        assertThat(Ran.command("", "gloss", "--help").out())
                .contains("--gloss", "--within", "--zone", "--after", "--passes", "--reads", "--units");
    }

    /** Every line of the sheet that the README shows is printed by the command beside it. */
    @Test
    void the_sheet_of_the_readme_is_what_is_printed() throws IOException {
        String readme = Files.readString(Path.of("..", "README.md"));
        Matcher shown = Pattern.compile(
                        "```sh\njava -jar stoneprocess.jar (gloss .*?)```\n\n```\n(.*?)```", Pattern.DOTALL)
                .matcher(readme);
        assertThat(shown.find()).isTrue();
        String[] arguments = Pattern.compile("\"([^\"]*)\"|[^\\s\\\\]+")
                .matcher(shown.group(1).replace("process-examples/", ""))
                .results()
                .map(word -> word.group(1) == null ? word.group() : word.group(1))
                .toArray(String[]::new);
        Ran ran = Ran.command("", arguments);
        assertThat(ran.exit()).isZero();
        assertThat(ran.out().lines().toList())
                .containsAll(shown.group(2)
                        .lines()
                        .filter(line -> !line.equals("..."))
                        .toList());
    }
}
