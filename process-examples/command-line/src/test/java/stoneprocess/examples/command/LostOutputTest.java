package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.examples.Main;
import stoneprocess.examples.command.CommandLineTest.Ran;

/** What cannot be written, as on a full disk, is no success. */
class LostOutputTest {
    private static final String FLOOR = survey("counting-house-granite");
    private static final String LOG =
            Path.of("logs", "counting-house-started-too-fine.json").toString();

    /** Takes some bytes and then, like a full disk, no more. */
    private static final class Full extends OutputStream {
        private int room;

        Full(int room) {
            this.room = room;
        }

        @Override
        public void write(int data) throws IOException {
            if (room-- <= 0) {
                throw new IOException("No space left on device");
            }
        }
    }

    private static String survey(String name) {
        return Path.of("surveys", name + ".json").toString();
    }

    /** One line for each command and more for some. */
    static Stream<List<String>> lines() {
        return Stream.of(
                List.of("plan", FLOOR),
                List.of("plan", FLOOR, "--json"),
                List.of("plan", survey("market-arcade-limestone")),
                List.of("follow", FLOOR, LOG),
                List.of("diagnose", FLOOR, "--sign", "frames"),
                List.of("estimate", FLOOR),
                List.of(
                        "quote",
                        FLOOR,
                        "--prices=" + Path.of("prices", "harbour-crew.json"),
                        "--client=Harbour office",
                        "--date=2026-12-01"),
                List.of("exposure", "circuit", "--help"),
                List.of("gloss", FLOOR),
                List.of("why", FLOOR, "first-cut"),
                List.of("why-not", FLOOR, "first-cut", "refresh", "--short"),
                List.of("what-if", FLOOR, "owner.goal=hone"),
                List.of("how-to", FLOOR, "first-cut", "none"),
                List.of("what-else", survey("lighthouse-unknown-stone")),
                List.of("compare", FLOOR, survey("ferry-hall-granite")),
                List.of("audit", "--help"),
                List.of("rulebook", "CUT-003"),
                List.of("form"),
                List.of("schema"),
                List.of("--help"),
                List.of("--version"));
    }

    @Test
    void there_is_a_line_for_every_command() {
        String missing = Ran.command("").err();
        String names = missing.substring(missing.indexOf("one of ") + "one of ".length(), missing.indexOf(';'));
        Set<String> commands =
                Stream.of(names.split(",| or ")).map(String::strip).collect(Collectors.toSet());
        Set<String> covered = lines().map(line -> line.get(0)).collect(Collectors.toCollection(TreeSet::new));
        assertThat(commands).hasSize(17);
        assertThat(covered).containsAll(commands);
    }

    @ParameterizedTest
    @MethodSource("lines")
    void output_that_is_lost_exits_with_1_and_one_line(List<String> line) {
        assertLost(run(new Full(0), line.toArray(String[]::new)));
    }

    @Test
    void output_is_lost_when_its_last_byte_is() {
        Ran whole = Ran.command("", "plan", FLOOR);
        int bytes = whole.out().getBytes(StandardCharsets.UTF_8).length;
        assertLost(run(new Full(bytes / 2), "plan", FLOOR));
        assertLost(run(new Full(bytes - 1), "plan", FLOOR));
        assertThat(run(new Full(bytes), "plan", FLOOR)).isEqualTo(new Ran(0, "", ""));
    }

    private static void assertLost(Ran ran) {
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err()).startsWith("output: ").contains("accepted: ");
        assertThat(ran.err().lines()).hasSize(1);
    }

    @Test
    void an_input_that_is_not_accepted_prints_nothing_that_could_be_lost() {
        Ran ran = run(new Full(0), "plan", "no-such-file.json");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).startsWith("file: ");
    }

    /** The program as a whole, where the system has a device that is always full. */
    @Test
    void a_process_whose_disk_is_full_exits_with_1() throws IOException, InterruptedException {
        File full = new File("/dev/full");
        assumeTrue(full.exists(), "no /dev/full");
        ProcessBuilder program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "plan",
                        FLOOR)
                .redirectOutput(full);
        // The launcher tells on standard error which options it picked up from here.
        program.environment().keySet().removeAll(Set.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS"));
        Process process = program.start();
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
        assertThat(process.exitValue()).isEqualTo(1);
        assertThat(err.lines().filter(text -> !text.startsWith("SLF4J")))
                .hasSize(1)
                .first()
                .asString()
                .startsWith("output: ");
    }

    private static Ran run(OutputStream out, String... arguments) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = FloorCommand.run(
                arguments,
                InputStream.nullInputStream(),
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Ran(exit, "", err.toString(StandardCharsets.UTF_8));
    }
}
