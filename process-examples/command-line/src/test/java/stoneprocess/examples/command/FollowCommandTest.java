package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.json.Json;
import stoneprocess.core.log.Sign;
import stoneprocess.core.plan.Status;
import stoneprocess.core.topic.Finding;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.Task;
import stoneprocess.examples.command.CommandLineTest.Ran;

/** What {@code follow} and {@code diagnose} print. */
class FollowCommandTest {
    private static final String NO_ENTRIES = "{\"format\":\"job-log/1\",\"title\":\"t\",\"entries\":[]}";

    private static String survey(String name) {
        return Path.of("surveys", name + ".json").toString();
    }

    private static String log(String name) {
        return Path.of("logs", name + ".json").toString();
    }

    private static NextMove answer(String survey, String log) {
        Ran ran = Ran.command("", "follow", survey(survey), log(log), "--json");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isZero();
        NextMove next = Json.NEXT_MOVE.read(ran.out());
        assertThat(Json.NEXT_MOVE.print(next)).isEqualTo(ran.out());
        return next;
    }

    @ParameterizedTest
    @CsvSource({
        "ferry-hall-granite, ferry-hall-goes-well",
        "counting-house-granite, counting-house-started-too-fine",
        "reading-room-marble, reading-room-fill-came-out"
    })
    void a_log_is_answered_in_words(String survey, String log) {
        Ran ran = Ran.command("", "follow", survey(survey), log(log));
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .startsWith("Merrowhithe ")
                .contains(
                        "\nDone so far: ",
                        "\nGrits to come\n",
                        "\nRules behind this answer\n",
                        "safety rules still apply",
                        "Local codes")
                .endsWith(".\n");
    }

    @Test
    void work_that_goes_well_goes_on() {
        NextMove next = answer("ferry-hall-granite", "ferry-hall-goes-well");
        assertThat(next.move()).isEqualTo(Move.GO_ON);
        assertThat(next.findings()).contains(Finding.LOOK_IS_CLEAN, Finding.GAIN_IS_REAL);
    }

    @Test
    void a_hard_floor_that_was_started_too_fine_starts_again_coarser() {
        NextMove next = answer("counting-house-granite", "counting-house-started-too-fine");
        assertThat(next.move()).isEqualTo(Move.START_COARSER);
        assertThat(next.findings()).contains(Finding.STARTED_TOO_FINE, Finding.LATEST_GAIN_LARGEST);
        assertThat(next.ahead()
                        .plan()
                        .orElseThrow()
                        .tracks()
                        .get(0)
                        .steps()
                        .get(0)
                        .grade()
                        .number())
                .isLessThan(400);
    }

    @Test
    void a_fill_that_came_out_changes_the_plan() {
        NextMove next = answer("reading-room-marble", "reading-room-fill-came-out");
        assertThat(next.move()).isEqualTo(Move.RE_PLAN);
        assertThat(next.ahead().plan().orElseThrow().tasks()).contains(Task.FILL_CRACKS);
    }

    @Test
    void one_of_the_two_may_come_from_standard_input() throws IOException {
        Ran files = Ran.command("", "follow", survey("ferry-hall-granite"), log("ferry-hall-goes-well"));
        String log = Files.readString(Path.of(log("ferry-hall-goes-well")));
        String survey = Files.readString(Path.of(survey("ferry-hall-granite")));
        assertThat(Ran.command(log, "follow", survey("ferry-hall-granite"), "-"))
                .isEqualTo(files);
        assertThat(Ran.command(survey, "follow", "-", log("ferry-hall-goes-well")))
                .isEqualTo(files);
        for (String command : new String[] {"follow", "diagnose"}) {
            Ran both = Ran.command(log, command, "-", "-");
            assertThat(both.exit()).isEqualTo(2);
            assertThat(both.err().lines()).hasSize(1);
            assertThat(both.err()).contains("LOG: '-'", "a file, when the survey is read from standard input");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "ferry-hall-granite, counting-house-started-too-fine, behind the counters",
        "counting-house-granite, ferry-hall-goes-well, under the benches",
        "boat-shed-concrete, reading-room-fill-came-out, between the desks"
    })
    void a_log_of_another_floor_is_named_as_such_and_gets_no_advice(String survey, String log, String zone) {
        Ran ran = Ran.command("", "follow", survey(survey), log(log));
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("THIS LOG DOES NOT MATCH THE SURVEY. ", " are not in the survey of ", zone)
                .doesNotContain("Grits to come", "Check now", "Done so far");
    }

    @Test
    void us_units_are_printed_on_request() {
        String[] arguments = {
            "follow", survey("counting-house-granite"), log("counting-house-started-too-fine"), "--units", "us"
        };
        assertThat(Ran.command("", arguments).out().replaceAll("\\s+", " "))
                .contains(" lb added", " gal for each pass", " GU")
                .doesNotContain(" kg added");
    }

    @ParameterizedTest
    @ValueSource(strings = {"guest-house-foyer", "market-arcade-limestone"})
    void without_grades_to_work_the_plan_is_the_answer_and_the_exit_is_3(String name) {
        Ran follow = Ran.command(NO_ENTRIES, "follow", survey(name), "-");
        Ran diagnose = Ran.command("", "diagnose", survey(name), "--sign", "haze");
        String plan = Ran.command("", "plan", survey(name)).out();
        for (Ran ran : new Ran[] {follow, diagnose}) {
            assertThat(ran.exit()).isEqualTo(3);
            assertThat(ran.err()).isEmpty();
            assertThat(ran.out()).startsWith("NOTHING TO FOLLOW: ").endsWith(plan);
        }
        Ran json = Ran.command(NO_ENTRIES, "follow", survey(name), "-", "--json");
        assertThat(json.exit()).isEqualTo(3);
        assertThat(Json.RECOMMENDATION.read(json.out()).status()).isIn(Status.PLANNED, Status.REFUSED);
    }

    static Stream<Arguments> refusedLogs() {
        return Stream.of(
                Arguments.of("", "job log: "),
                Arguments.of("page one", "job log: "),
                Arguments.of(NO_ENTRIES.replace("/1", "/2"), "format: "),
                Arguments.of(NO_ENTRIES.replace("[]", "[{\"at\":\"noon\"}]"), "entries[0].at: "),
                Arguments.of(NO_ENTRIES.replace("[]", "[{\"at\":\"day 1, 12:00\"}]"), "entries[0]: "));
    }

    @ParameterizedTest
    @MethodSource("refusedLogs")
    void a_bad_log_exits_with_2_and_one_line(String log, String start) {
        for (String command : new String[] {"follow", "diagnose"}) {
            Ran ran = Ran.command(log, command, survey("ferry-hall-granite"), "-");
            assertThat(ran.exit()).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err()).startsWith(start).contains("accepted: ");
            assertThat(ran.err().lines()).hasSize(1);
        }
    }

    @Test
    void signs_are_traced_to_causes() {
        Ran ran = Ran.command(
                "", "diagnose", survey("reading-room-marble"), "--sign", "haze", "--sign", "dull-edges", "--json");
        assertThat(ran.exit()).isZero();
        Diagnosis diagnosis = Json.DIAGNOSIS.read(ran.out());
        assertThat(diagnosis.signs()).isEqualTo(EnumSet.of(Sign.HAZE, Sign.DULL_EDGES));
        assertThat(diagnosis.causes()).isNotEmpty();
        assertThat(Json.DIAGNOSIS.print(diagnosis)).isEqualTo(ran.out());
        String text = Ran.command("", "diagnose", survey("reading-room-marble"), "--sign", "haze")
                .out();
        assertThat(text)
                .startsWith("Merrowhithe library, reading room\n")
                .contains("\nSeen: a milky veil over the shine.\n", "\nMost likely: ", " Possible: moisture");
    }

    @Test
    void signs_of_the_latest_looks_are_added() {
        String[] arguments = {
            "diagnose", survey("counting-house-granite"), log("counting-house-started-too-fine"), "--json"
        };
        Ran ran = Ran.command("", arguments);
        assertThat(ran.err()).isEmpty();
        assertThat(Json.DIAGNOSIS.read(ran.out()).signs()).containsExactly(Sign.LOW_WITHOUT_LINES);
    }

    @Test
    void without_any_sign_there_is_nothing_to_trace() {
        Ran ran = Ran.command("", "diagnose", survey("ferry-hall-granite"));
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).startsWith("signs: no fault is named; name what you see, such as haze");
        assertThat(ran.err().lines()).hasSize(1);
    }

    @Test
    void an_unknown_sign_is_refused_with_those_that_are_known() {
        Ran ran = Ran.command("", "diagnose", survey("ferry-hall-granite"), "--sign", "fog");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("'fog' is not accepted", "haze", "coloured-streaks");
        assertThat(ran.err().lines()).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource(Sign.class)
    void the_help_names_every_sign(Sign sign) {
        Ran ran = Ran.command("", "diagnose", "--help");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).containsPattern("\\s" + sign.key() + "[,.]");
    }

    @Test
    void the_schemas_of_logs_and_answers_are_printed() {
        assertThat(Ran.command("", "schema", "job-log")).isEqualTo(new Ran(0, Json.JOB_LOG.schema(), ""));
        assertThat(Ran.command("", "schema", "next-move")).isEqualTo(new Ran(0, Json.NEXT_MOVE.schema(), ""));
        assertThat(Ran.command("", "schema", "Diagnosis")).isEqualTo(new Ran(0, Json.DIAGNOSIS.schema(), ""));
    }
}
