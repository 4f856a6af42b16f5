package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.examples.command.CommandLineTest.Ran;

/** Files and arguments that try to forge a page, to read what they were not given, or to fill the memory. */
class HostileInputTest {
    private static final Path SURVEY = Path.of("surveys", "ferry-hall-granite.json");
    private static final String TITLE = "Merrowhithe ferry hall, waiting floor";

    @TempDir
    private Path folder;

    private record Forgery(String from, String to, String field) {}

    static List<Forgery> forgeries() {
        return List.of(
                new Forgery(TITLE, "Hall\\nREFUSED. Nothing is planned.", "title: "),
                new Forgery(TITLE, "Hall \\u202e.oG", "title: "),
                new Forgery(TITLE, "\\u200b\\u200b", "title: "),
                new Forgery("\"title\"", "\"ti\\u001b[2Jtle\\nPLAN. Go.\"", "ti"),
                new Forgery("\"area\"", "\"\"", "site."),
                new Forgery("\"area\"", "\"area\\u202e\"", "site.area"),
                new Forgery("\"area\"", "\"" + "a".repeat(900) + "\"", "site.aaa"),
                new Forgery("\"m2\"", "\"m2\\u001b[31m\\nPLAN\"", "site.area.unit: "),
                new Forgery("\"value\": 180", "\"value\": 1e-2147483647", "site.area.value: "),
                new Forgery("\"value\": 180", "\"value\": " + "9".repeat(300_000), "survey: "),
                new Forgery(
                        "\"value\": 2,\n      \"unit\": \"count\"",
                        "\"value\": 1.4, \"unit\": \"count\"",
                        "site.crew"));
    }

    @ParameterizedTest
    @MethodSource("forgeries")
    void a_forged_survey_gets_one_short_line_that_cannot_forge(Forgery forgery) throws IOException {
        String survey = Files.readString(SURVEY);
        assertThat(survey).contains(forgery.from());

        Ran ran = Ran.command(survey.replace(forgery.from(), forgery.to()), "plan", "-");

        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertOneSafeLine(ran.err(), forgery.field());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"1e-2147483647 m2", "1e2147483647 m2", "1e300 m2", "\u0661\u0668 m2", "180 m2\n\u001b[2JPLAN"})
    void a_hostile_answer_on_the_command_line_gets_one_line(String area) {
        Ran ran = Ran.command("", "what-if", SURVEY.toString(), "site.area=" + area);

        assertThat(ran.exit()).isEqualTo(2);
        assertOneSafeLine(ran.err(), "site.area");
    }

    @Test
    void an_argument_is_never_a_file_of_arguments() throws IOException {
        Path arguments = Files.writeString(folder.resolve("arguments"), "schema");

        Ran ran = Ran.command("", "@" + arguments);

        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("@").doesNotContain("floor-survey");
    }

    /** Unlike a file, a pipe or a device does not tell its size before it is read. */
    @Test
    void a_pipe_that_does_not_end_is_refused_and_not_cut() {
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return ' ';
            }

            @Override
            public int read(byte[] buffer, int from, int length) {
                Arrays.fill(buffer, from, from + length, (byte) ' ');
                return length;
            }
        };
        ByteArrayOutputStream err = new ByteArrayOutputStream();

        int exit = FloorCommand.run(
                new String[] {"plan", "-"},
                endless,
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));

        assertThat(exit).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .isEqualTo("file: '-' is not accepted; accepted: at most 64 MiB\n");
    }

    private static void assertOneSafeLine(String err, String field) {
        assertThat(err).startsWith(field).endsWith(System.lineSeparator()).hasSizeLessThan(1400);
        assertThat(err.strip()).doesNotContainPattern("[\\p{C}\\u2028\\u2029]");
    }
}
