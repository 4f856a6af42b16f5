package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.exposure.ExposureInput;
import stoneprocess.core.json.Json;
import stoneprocess.examples.command.CommandLineTest.Ran;

/** The questions of {@code exposure} from the command line. Arguments are separated by a bar, as units hold spaces. */
class ExposureCommandTest {
    private static final String LIFT = "lifting|--load|20 kg|--reach|40 cm|--height|10 cm|--travel|70 cm|--lifts|15"
            + "|--duration|1 h|--hold|fair";
    private static final List<String> QUESTIONS = List.of(
            "noise|--level|95 dBA|--time|2 h|--level|90 dBA|--time|4 h",
            "carbon-monoxide|--room|66 m3|--air|1400 m3/h|--engine|5 hp|--running|1 h",
            "carbon-monoxide|--room|66 m3|--source|1.4 m3/h|--background|9 ppm|--running|1 h",
            "silica|--tool|hand-grinder|--dust|collector|--wheel|5 in|--time|5 h|--shroud|--airflow|125 cfm|--filter"
                    + "|99 %|--filter-cleaning",
            "silica|--tool|floor-grinder|--dust|water-fed|--wheel|430 mm|--time|8 h",
            "slip|--pendulum|36 PTV",
            "slip|--rz|15 um",
            "slip|--ramp|12 deg",
            "slip|--dcof|0.45 mu|--place|interior-wet-plus",
            "slurry|--ph|11.5 pH",
            LIFT,
            "circuit|--volts|230 V|--breaker|16 A|--load|1.5 kW|--load|1.1 kW");

    private static Ran ask(String question) {
        return Ran.command("", ("exposure|" + question).split("\\|"));
    }

    static Stream<Arguments> questions() {
        return QUESTIONS.stream()
                .flatMap(question -> Stream.of("metric", "us").map(units -> Arguments.of(question, units)));
    }

    @ParameterizedTest
    @MethodSource("questions")
    void every_answer_shows_input_result_limit_basis_cautions_and_who_decides(String question, String units) {
        Ran ran = ask(question + "|--units|" + units);
        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .containsSubsequence(
                        "\n===", "\nGiven\n", "\nResult", "\nLimit", "\nRests on\n", "\nCautions\n", "\nWho decides\n")
                .endsWith(".\n");
        assertThat(ran.out().replaceAll("\\s+", " ")).contains("local codes take precedence", "as given");
        assertThat(ran.out().lines())
                .allSatisfy(line -> assertThat(line)
                        .hasSizeLessThanOrEqualTo(96)
                        .doesNotContain("\r", "\u00A0")
                        .doesNotEndWith(" "));
    }

    @ParameterizedTest
    @MethodSource("questions")
    void a_question_in_a_file_gets_the_same_answer(String question, String units) {
        String asked = ask(question + "|--json").out();
        assertThat(Json.EXPOSURE.print(Json.EXPOSURE.read(asked))).isEqualTo(asked);
        assertThat(Ran.command(asked, "exposure", "file", "-", "--units", units).out())
                .isEqualTo(ask(question + "|--units|" + units).out());
    }

    @Test
    void the_shipped_file_asks_one_question_of_each_kind_and_is_valid() throws IOException {
        String json = Files.readString(Path.of("exposure", "cellar-stair.json"));
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(Json.EXPOSURE.schema(), InputFormat.JSON)
                        .validate(json, InputFormat.JSON))
                .isEmpty();
        assertThat(Json.EXPOSURE.read(json).inputs())
                .extracting(input -> (Object) input.getClass())
                .containsExactlyInAnyOrder((Object[]) ExposureInput.class.getPermittedSubclasses());
        Ran ran = Ran.command(json, "exposure", "file", "-");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out().lines().filter(line -> line.matches("=+"))).hasSize(10);
    }

    @Test
    void a_file_that_is_not_accepted_is_refused_by_path() throws IOException {
        String json = Files.readString(Path.of("exposure", "cellar-stair.json"));
        assertThat(Ran.command(json.replace("\"value\": 11.5", "\"value\": 15"), "exposure", "file", "-")
                        .err())
                .startsWith("inputs[7].ph: '15 pH' is not accepted; accepted: 0 to 14 pH");
        assertThat(Ran.command(json.replace("\"lift\"", "\"push\""), "exposure", "file", "-")
                        .err())
                .startsWith("inputs[8].kind: 'push' is not accepted; accepted: one of noise-day, running-engine");
        assertThat(Ran.command(json.replace("\"petrol-engine\"", "\"x-engine\""), "exposure", "file", "-")
                        .err())
                .startsWith("inputs[1].source: 'nothing' is not accepted; accepted: exactly one of petrol-engine");
    }

    @Test
    void the_same_question_is_answered_in_metric_and_us_units() {
        assertThat(ask(LIFT).out()).contains("400 mm", " kg").doesNotContain("15.7", " lb");
        assertThat(ask(LIFT + "|--units|us").out()).contains("15.748 in", " lb").doesNotContain(" mm", " kg");
        assertThat(ask(QUESTIONS.get(1)).out()).contains("3.7 kW", "m3/h").doesNotContain(" cfm");
        assertThat(ask(QUESTIONS.get(1) + "|--units|us").out())
                .contains("5 hp", " cfm")
                .doesNotContain("m3/h");
    }

    @Test
    void the_unit_of_the_question_does_not_change_the_answer() {
        assertThat(ask("slip|--rz|0.015 mm").out())
                .isEqualTo(ask("slip|--rz|15 um").out());
        assertThat(ask("noise|--level|95 dBA|--time|120 min").out())
                .isEqualTo(ask("noise|--level|95 dBA|--time|2 h").out());
    }

    @Test
    void what_is_not_said_is_read_cautiously() {
        String silica = "silica|--tool|hand-grinder|--dust|water-fed|--wheel|5 in|--time|1 h";
        assertThat(ask(silica).out()).contains("NOT IN TABLE 1", "indoors or enclosed");
        assertThat(ask(silica + "|--outdoors").out()).contains("TABLE 1 MET", "outdoors");
        assertThat(ask("silica|--tool|floor-grinder|--dust|collector|--wheel|20 in|--time|1 h")
                        .out())
                .contains("TABLE 1 NOT MET")
                .contains("not known, taken as none");
        assertThat(ask("carbon-monoxide|--room|66 m3|--engine|5 hp|--running|1 h")
                        .out())
                .contains("none known");
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of("noise|--level|95 m|--time|2 h", "--level", "95 m", "dBA"),
                Arguments.of("noise|--level|loud|--time|2 h", "--level", "loud", "dBA"),
                Arguments.of("noise|--level|95dBA|--time|2 h", "--level", "95dBA", "a number, a space and one of"),
                Arguments.of("noise|--level|150 dBA|--time|2 h", "noise.level", "150 dBA", "0 to 140 dBA"),
                Arguments.of("noise|--level|95 dBA|--time|25 h", "noise.time", "1500 min", "0 to 24 h"),
                Arguments.of("slurry|--ph|14.1 pH", "slurry.ph", "14.1 pH", "0 to 14 pH"),
                Arguments.of("slip|--pendulum|151 PTV", "slip.pendulum", "151 PTV", "0 to 150 PTV"),
                Arguments.of("slip|--dcof|0.45 mu", "--place", "''", "interior-wet-plus"),
                Arguments.of("slip|--dcof|0.45 mu|--place|roof", "--place", "roof", "oils-and-greases"),
                Arguments.of("slip|--pendulum|36 PTV|--place|exterior-wet", "--place", "exterior-wet", "nothing"),
                Arguments.of(LIFT + "|--turn|181 deg", "lift.turn", "181 deg", "0 to 180 deg"),
                Arguments.of(LIFT.replace("15|", "1.5|"), "--lifts", "1.5", "a whole number"),
                Arguments.of(LIFT.replace("fair", "firm"), "--hold", "firm", "good, fair, poor"),
                Arguments.of("circuit|--volts|0 V|--breaker|16 A", "circuit.volts", "0 V", "up to 1000 V"),
                Arguments.of(
                        "carbon-monoxide|--room|66 m3|--engine|30 hp|--running|1 h", "engine.power", "kW", "19 kW"),
                Arguments.of(
                        "carbon-monoxide|--room|0.5 m3|--engine|5 hp|--running|1 h", "room.volume", "500 l", "1000 l"),
                Arguments.of("silica|--tool|saw|--dust|dry|--wheel|5 in|--time|1 h", "--tool", "saw", "floor-grinder"),
                Arguments.of(
                        "silica|--tool|hand-grinder|--dust|dry|--wheel|5 in|--time|1 h|--shroud",
                        "--dust",
                        "dry",
                        "collector"));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void bad_input_is_one_line_with_field_value_and_what_is_accepted(
            String question, String field, String value, String accepted) {
        Ran ran = ask(question);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines()).hasSize(1);
        assertThat(ran.err()).contains(field, value, "accepted: ", accepted).doesNotContain("Exception");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "gravity",
                "noise",
                "noise|--level|95 dBA",
                "slip",
                "slip|--pendulum|36 PTV|--rz|15 um",
                "slurry",
                "circuit|--volts|230 V",
                "carbon-monoxide|--room|66 m3|--running|1 h",
                "carbon-monoxide|--room|66 m3|--running|1 h|--engine|5 hp|--source|1 m3/h",
                "slurry|--ph|7 pH|--units|leagues"
            })
    void a_question_that_is_not_complete_gets_one_line(String question) {
        Ran ran = ask(question);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().lines()).hasSize(1);
    }

    @Test
    void help_has_one_line_for_each_question_and_option() {
        assertThat(Ran.command("", "--help").out()).contains("exposure");
        List<String> lines = Ran.command("", "exposure", "--help").out().lines().toList();
        for (String question :
                List.of("noise", "carbon-monoxide", "silica", "slip", "slurry", "lifting", "circuit", "file")) {
            assertThat(lines).anySatisfy(line -> assertThat(line).matches("  " + question + " +[A-Z].*\\."));
            assertThat(Ran.command("", "exposure", question, "--help").out()).contains("--units=SYSTEM");
        }
    }
}
