package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.text.Detail;
import stoneprocess.rules.text.PlanText;
import stoneprocess.rules.text.Words;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.StatedValue;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/** The page that a crew is handed: the answer first, short, and nothing lost. */
class PlanPageTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final PlanText TEXT = new PlanText(ADVISOR.rulebase().cards());
    private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z'-]*");
    private static final int SCREEN = 24;

    static Stream<Path> samples() throws IOException {
        return Files.list(Path.of("surveys")).sorted();
    }

    private static Recommendation plan(Path sample) throws IOException {
        return ADVISOR.recommend(Json.SURVEY.read(Files.readString(sample)));
    }

    private static List<PlannedStep> steps(Recommendation recommendation) {
        return recommendation.plan().map(Plan::tracks).orElse(List.of()).stream()
                .flatMap(track -> track.steps().stream())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_first_screen_holds_the_answer_every_hazard_and_every_grit(Path sample) throws IOException {
        Recommendation plan = plan(sample);
        String page = page(plan, Detail.BRIEF);
        String screen = String.join("\n", page.lines().limit(SCREEN).toList());
        String verdict = Texts.english().word(Wording.of(plan.status()));
        assertThat(screen.lines().skip(2).findFirst().orElseThrow()).startsWith(verdict.split("\\.")[0]);
        String inOneLine = screen.replaceAll("\\s+", " ");
        for (SafetyWarning warning : plan.warnings()) {
            assertThat(inOneLine).contains(Texts.english().word(Words.shortly(warning.hazard())));
        }
        for (PlannedStep step : steps(plan)) {
            assertThat(screen)
                    .contains("\n  "
                            + Texts.english().word(Words.grade(step.grade().key())) + " ");
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_short_page_states_all_that_the_full_page_states(Path sample) throws IOException {
        Recommendation plan = plan(sample);
        Document brief = TEXT.document(plan, Detail.BRIEF);
        assertThat(brief.stated()).isEqualTo(TEXT.document(plan, Detail.FULL).stated());
        assertThat(brief.stated())
                .containsAll(plan.warnings().stream()
                        .map(warning -> StatedValue.ofFloor(
                                Topics.WARNINGS, warning.hazard().key()))
                        .toList());
        assertThat(words(page(plan, Detail.BRIEF))).isLessThan(words(page(plan, Detail.FULL)));
    }

    /** The words that the page had when edges and safety sheets stood in it a second time and at length. */
    @ParameterizedTest
    @CsvSource({"ferry-hall-granite, 1618", "boat-shed-concrete, 1984", "reading-room-marble, 1761"})
    void a_page_of_many_grits_has_half_of_the_words_that_it_had_or_fewer(String sample, int before) throws IOException {
        Recommendation plan = plan(Path.of("surveys", sample + ".json"));
        assertThat(words(page(plan, Detail.BRIEF))).isLessThanOrEqualTo(before / 2);
    }

    private static int words(String page) {
        return (int) WORD.matcher(page).results().count();
    }

    private static String page(Recommendation plan, Detail detail) {
        return Texts.english().page(TEXT.document(plan, detail));
    }
}
