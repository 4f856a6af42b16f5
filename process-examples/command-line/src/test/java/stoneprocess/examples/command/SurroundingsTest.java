package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.examples.Main;
import stoneprocess.examples.command.CommandLineTest.Ran;

/**
 * What is printed depends on what is asked and on nothing around it: not on the language, digits, calendar, time zone or
 * character set of the machine.
 */
@Isolated("sets the default locale and time zone")
class SurroundingsTest {
    /** Of these, the default formats of some print digits that are not ASCII, a comma, or an I without a dot. */
    private static final List<String> LOCALES =
            List.of("ar-EG-u-nu-arab", "fa-IR", "th-TH-u-ca-buddhist-nu-thai", "tr-TR", "de-CH", "hi-IN-u-nu-deva");

    private static final List<String> ZONES = List.of("Pacific/Kiritimati", "America/St_Johns");

    private final Locale locale = Locale.getDefault();
    private final TimeZone zone = TimeZone.getDefault();

    @BeforeEach
    @AfterEach
    void restore() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    /** Every command under one of the places in turn; the profile {@code audit} tries all places with each. */
    static Stream<Arguments> commandsAndPlaces() {
        List<List<String>> lines = new ArrayList<>(LostOutputTest.lines().toList());
        lines.add(List.of("plan", "no-such-file.json"));
        lines.add(List.of("exposure", "noise"));
        return IntStream.range(0, lines.size())
                .mapToObj(i -> Arguments.of(
                        lines.get(i),
                        Boolean.getBoolean("audit.whole") ? LOCALES : List.of(LOCALES.get(i % LOCALES.size()))));
    }

    @ParameterizedTest
    @MethodSource("commandsAndPlaces")
    void every_command_prints_the_same_bytes_under_every_locale_and_time_zone(List<String> line, List<String> places) {
        String[] arguments = line.toArray(String[]::new);
        Locale.setDefault(Locale.ROOT);
        TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
        Ran expected = Ran.command("", arguments);

        for (String place : places) {
            Locale.setDefault(Locale.forLanguageTag(place));
            TimeZone.setDefault(TimeZone.getTimeZone(ZONES.get(LOCALES.indexOf(place) % ZONES.size())));
            assertThat(Ran.command("", arguments)).as(place).isEqualTo(expected);
        }
    }

    /** A program of its own, since the character set of a running one is fixed. */
    @ParameterizedTest
    @ValueSource(strings = {"US-ASCII", "ISO-8859-1", "UTF-16"})
    void a_process_prints_the_same_bytes_under_every_character_set(String charset)
            throws IOException, InterruptedException {
        String survey = Path.of("surveys", "ferry-hall-granite.json").toString();
        ProcessBuilder program = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dfile.encoding=" + charset,
                "-Dstdout.encoding=" + charset,
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "estimate",
                survey);
        program.environment().keySet().removeAll(Set.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS"));
        Process process = program.redirectError(ProcessBuilder.Redirect.DISCARD).start();
        byte[] printed = process.getInputStream().readAllBytes();

        assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
        assertThat(new String(printed, StandardCharsets.UTF_8))
                .isEqualTo(Ran.command("", "estimate", survey).out());
    }

    /** The test above would hold nothing if the machine's locale did not reach the formats of the JDK. */
    @Test
    void the_locales_of_this_test_do_change_what_the_jdk_prints_by_default() {
        Locale.setDefault(Locale.forLanguageTag(LOCALES.get(0)));
        assertThat(String.format("%d", 15)).isNotEqualTo("15");
        Locale.setDefault(Locale.forLanguageTag("tr-TR"));
        assertThat("I".toLowerCase()).isNotEqualTo("i");
    }
}
