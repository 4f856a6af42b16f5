package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.overlay.Overlay;
import stoneprocess.rules.text.Detail;
import stoneprocess.rules.text.PlanText;
import stoneprocess.rules.text.document.Texts;

/** The code and the output that the README shows are the real ones. */
class ReadmeTest {
    private static final Path README = Path.of("..", "README.md");

    @Test
    void the_code_of_the_readme_runs() {
        Advisor advisor = Advisor.standard();
        FloorSurvey survey = FloorSurvey.builder("Hall")
                .set(SurveyField.STONE_NAME, "granite")
                .set(SurveyField.AREA, Area.of(60, Unit.SQUARE_METRE))
                .build();
        Recommendation recommendation = advisor.recommend(survey);
        assertThat(recommendation.questions()).isNotEmpty();
        assertThat(recommendation.decision(Topics.FIRST_CUT, Subject.OPEN_FIELD))
                .isPresent();
        String json = Json.RECOMMENDATION.print(recommendation);
        Recommendation same = Json.RECOMMENDATION.read(json);
        assertThat(same).isEqualTo(recommendation);

        Rulebase house = Rulebase.with(Overlay.none()
                .retune("lippage.high", Length.of(2.5, Unit.MILLIMETRE), "floor manager", "our owners see less"));
        assertThat(house.parameters().retuned()).containsOnlyKeys("lippage.high");
    }

    /** Every statement that the README shows stands above, so it compiles. */
    @Test
    void the_code_of_the_readme_is_the_code_above() throws IOException {
        String own = squeezed(Files.readString(
                Path.of("command-line", "src", "test", "java", "stoneprocess", "examples", "ReadmeTest.java")));
        List<String> statements = statements(ShownCommands.blocks(Files.readString(README), "java"));
        assertThat(statements).hasSizeGreaterThanOrEqualTo(6);
        for (String statement : statements) {
            assertThat(own).contains(statement);
        }
    }

    /** Every line of the sample output that the README shows is printed. */
    @Test
    void the_output_of_the_readme_is_what_is_printed() throws IOException {
        String survey = Files.readString(Path.of("surveys", "ferry-hall-granite.json"));
        Advisor advisor = Advisor.standard();
        String printed = Texts.english()
                .page(new PlanText(advisor.rulebase().cards())
                        .document(advisor.recommend(Json.SURVEY.read(survey)), Detail.BRIEF));
        List<String> shown = ShownCommands.blocks(Files.readString(README), "").stream()
                .filter(block -> block.startsWith("Merrowhithe ferry hall, waiting floor"))
                .flatMap(String::lines)
                .filter(line -> !line.equals("..."))
                .toList();
        assertThat(shown).isNotEmpty();
        assertThat(printed.lines()).containsAll(shown);
    }

    /**
     * Of an answer to a job log the README shows the beginning, up to the grades to come. Run with
     * {@code -Dsamples.write} to show it anew.
     */
    @ParameterizedTest
    @CsvSource({"follow, Merrowhithe counting house", "diagnose, Merrowhithe library"})
    void what_the_readme_shows_of_an_answer_is_its_beginning(String name, String start) throws IOException {
        String readme = Files.readString(README);
        String printed = run(readme, name);
        String beginning = printed.split("\n(Grits to come|Possible repeat)\n")[0] + "...\n";
        String shown = ShownCommands.blocks(readme, "").stream()
                .filter(block -> block.startsWith(start))
                .findFirst()
                .orElseThrow();
        if (System.getProperty("samples.write") != null) {
            Files.writeString(README, readme.replace("```\n" + shown, "```\n" + beginning));
            shown = beginning;
        }
        assertThat(shown).isEqualTo(beginning);
        assertThat(shown.lines()).hasSizeGreaterThan(10);
    }

    /** The commands that the README shows are run, and every line that it shows of the answer is printed, in order. */
    @ParameterizedTest
    @CsvSource({"exposure noise, Noise,", "estimate, Old customs house, ESTIMATE"})
    void what_the_readme_shows_of_a_command_is_what_is_printed(String name, String start, @Nullable String word)
            throws IOException {
        String readme = Files.readString(README);
        String printed = run(readme, name);
        List<String> shown = ShownCommands.blocks(readme, "").stream()
                .filter(block -> block.startsWith(start) && (word == null || block.contains(word)))
                .flatMap(String::lines)
                .filter(line -> !line.equals("..."))
                .toList();
        assertThat(shown).hasSizeGreaterThan(10);
        assertThat(printed.lines()).containsSubsequence(shown);
    }

    @Test
    void what_the_readme_shows_of_questions_is_what_is_printed() throws IOException {
        assertThat(ShownCommands.requireShown(README, "## Asking why", "\n## ")).hasSizeGreaterThan(3);
    }

    /** What the first command of a name that the README shows prints. */
    private static String run(String readme, String name) {
        String command = ShownCommands.blocks(readme, "sh").stream()
                .filter(block -> block.contains(" " + name + " "))
                .findFirst()
                .orElseThrow();
        return ShownCommands.run(command, 0);
    }

    private static List<String> statements(List<String> blocks) {
        List<String> statements = new ArrayList<>();
        for (String block : blocks) {
            String code = squeezed(block.replaceAll("(?m)//.*$", ""));
            for (String statement : code.split(";")) {
                if (!statement.isBlank()) {
                    statements.add(statement);
                }
            }
        }
        return statements;
    }

    private static String squeezed(String code) {
        return code.replaceAll("\\s+", "");
    }
}
