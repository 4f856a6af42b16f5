package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.examples.BracketedLanguage;
import stoneprocess.examples.command.CommandLineTest.Ran;
import stoneprocess.rules.text.document.Language;

/** A folder of phrases that somebody lays on the class path is a language of every command. */
class LanguageOptionTest {
    private static final List<String> BUNDLES = List.of("language", "phrases", "sheets");

    private static Path folder;

    @BeforeAll
    static void lay_a_language_on_the_class_path() throws IOException, URISyntaxException {
        Path classPath = Path.of(LanguageOptionTest.class.getResource("/").toURI());
        folder = Files.createDirectories(classPath.resolve("stoneprocess/rules/text/" + BracketedLanguage.TAG));
        Map<String, String> phrases = BracketedLanguage.phrases();
        for (String bundle : BUNDLES) {
            Properties properties = new Properties();
            if (bundle.equals("phrases")) {
                properties.putAll(phrases);
            }
            StringWriter text = new StringWriter();
            properties.store(text, null);
            Files.writeString(folder.resolve(bundle + ".properties"), text.toString());
        }
    }

    @AfterAll
    static void take_it_away() throws IOException {
        for (String bundle : BUNDLES) {
            Files.delete(folder.resolve(bundle + ".properties"));
        }
        Files.delete(folder);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plan surveys/ferry-hall-granite.json",
                "follow surveys/ferry-hall-granite.json logs/ferry-hall-goes-well.json",
                "follow surveys/market-arcade-limestone.json logs/ferry-hall-goes-well.json",
                "diagnose surveys/ferry-hall-granite.json --sign swirls",
                "estimate surveys/ferry-hall-granite.json",
                "estimate surveys/market-arcade-limestone.json",
                "gloss surveys/ferry-hall-granite.json",
                "why surveys/ferry-hall-granite.json first-cut",
                "why-not surveys/ferry-hall-granite.json first-cut grind --short",
                "how-to surveys/ferry-hall-granite.json finish hone",
                "what-if surveys/ferry-hall-granite.json owner.goal=hone",
                "what-else surveys/ferry-hall-granite.json",
                "compare surveys/ferry-hall-granite.json surveys/reading-room-marble.json",
                "exposure slurry --ph 12",
                "audit --quick",
                "rulebook safety",
                "schema survey"
            })
    void every_command_that_prints_text_prints_it_in_that_language(String command) {
        String[] arguments = (command.replace("12", "12_pH") + " --language " + BracketedLanguage.TAG).split(" ");
        for (int i = 0; i < arguments.length; i++) {
            arguments[i] = arguments[i].replace('_', ' ');
        }
        Ran ran = Ran.command("", arguments);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains(BracketedLanguage.OPEN);
    }

    @Test
    void without_the_option_a_text_is_english() {
        Ran asked = Ran.command("", "plan", "surveys/ferry-hall-granite.json", "--language", "en");
        Ran ran = Ran.command("", "plan", "surveys/ferry-hall-granite.json");
        assertThat(ran.out()).isEqualTo(asked.out()).contains("Hold point").doesNotContain(BracketedLanguage.OPEN);
    }

    @Test
    void a_language_that_is_not_there_is_refused_with_those_that_are() {
        Ran ran = Ran.command("", "plan", "surveys/ferry-hall-granite.json", "--language", "eo");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .isEqualTo("--language: 'eo' is not accepted; accepted: one of " + String.join(", ", Language.tags())
                        + "\n");
        assertThat(Language.tags()).contains("en", BracketedLanguage.TAG);
    }
}
