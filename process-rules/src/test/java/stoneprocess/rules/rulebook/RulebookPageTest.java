package stoneprocess.rules.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.answer.RuleContent;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.LippageClass;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.text.document.Texts;

class RulebookPageTest {
    private static final Rulebase RULEBASE = Rulebase.standard();
    private static final Path PAGE = Path.of("..", "docs", "rulebook.md");

    /** Run with {@code -Drulebook.write} to write the page anew. */
    @Test
    void the_page_in_the_docs_is_the_page_of_the_shipped_rules() throws IOException {
        String page = RulebookPage.markdown(RULEBASE);
        if (System.getProperty("rulebook.write") != null) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.readString(PAGE))
                .as("docs/rulebook.md is stale; write it anew with -Drulebook.write")
                .isEqualTo(page);
    }

    @Test
    void every_rule_stands_on_the_page_with_its_reason() {
        String page = RulebookPage.markdown(RULEBASE);
        for (Card card : RULEBASE.cards()) {
            assertThat(page).contains("**" + card.id() + "** " + card.title()).contains(card.because());
        }
    }

    @Test
    void a_rule_is_told_in_plain_words() {
        assertThat(RulebookPage.part(Texts.english(), RULEBASE, "CUT-003"))
                .startsWith("- **CUT-003** Start no finer than 200 when a fingernail catches the scratches.\n")
                .contains("*When* scratches in the open field: caught by a fingernail.\n")
                .contains("*Then* requires: resin 200 or coarser.\n")
                .contains("Practice differs. Some start every worn floor at 50");
        assertThat(RulebookPage.part(Texts.english(), RULEBASE, "CUT-024"))
                .contains("*When* surface of the concrete or terrazzo: ground before, or not known;"
                        + " written consent of conservator or officer: no, or not known;"
                        + " historic fabric: yes, or not known.\n")
                .contains("*Then* rules out: resin 200 and coarser.\n");
        assertThat(RulebookPage.part(Texts.english(), RULEBASE, "SUR-001"))
                .contains("*Then* allows only what follows from: name of the stone.\n");
    }

    @ParameterizedTest
    @EnumSource(Stage.class)
    void every_stage_is_a_chapter_and_the_page_has_them_in_the_order_of_the_work(Stage stage) {
        String page = RulebookPage.markdown(RULEBASE);
        String chapter = RulebookPage.part(Texts.english(), RULEBASE, stage.key());
        assertThat(chapter).startsWith("## ").contains("*When*");
        assertThat(page.indexOf(chapter)).isNotNegative().isEqualTo(page.lastIndexOf(chapter));
        assertThat(page.lines().filter(line -> line.matches("## \\d+\\. .*")))
                .extracting(line -> Integer.parseInt(line.substring(3, line.indexOf('.'))))
                .isEqualTo(IntStream.rangeClosed(1, 11).boxed().toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"CUT-999", "cut-003", "chapter", ""})
    void an_unknown_part_is_refused_with_what_there_is(String part) {
        assertThatThrownBy(() -> RulebookPage.part(Texts.english(), RULEBASE, part))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("rulebook: '" + part + "'")
                .hasMessageContaining("first-cut, sequence");
    }

    /** Read from the rule's own text, not from its compiled form. */
    @Test
    void a_condition_accepts_what_the_rules_text_says() {
        RuleContent rule = RULEBASE.contents().stream()
                .filter(content -> content.card().id().equals("CUT-013"))
                .findFirst()
                .orElseThrow();
        assertThat(rule.conditions())
                .containsExactly(
                        new RuleContent.Condition(
                                List.of("Lippage"),
                                List.of(LippageClass.MODERATE),
                                List.of(LippageClass.NONE, LippageClass.SLIGHT, LippageClass.HIGH),
                                false),
                        new RuleContent.Condition(
                                List.of("FinishDecided"),
                                List.of(Finish.SEMI_GLOSS, Finish.POLISH, Finish.HIGH_GLOSS),
                                List.of(Finish.HONE, Finish.SATIN),
                                false));
        assertThat(rule.says()).isEqualTo(Topics.FIRST_CUT.needAtLeast(Cut.GRIND));
        assertThat(rule.follows()).isEmpty();
    }
}
