package stoneprocess.rules.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.rules.text.document.Texts;

class SurveyQuestionsTest {
    private static final Path FILE = Path.of("..", "docs", "schema", "floor-survey.schema.json");
    private final SurveyQuestions questions = new SurveyQuestions(Texts.english());

    /** Run with {@code -Dschema.write} to write the file anew. */
    @Test
    void the_file_of_the_schema_asks_the_questions() throws IOException {
        if (System.getProperty("schema.write") != null) {
            Files.writeString(FILE, questions.schema());
        }
        assertThat(FILE).hasContent(questions.schema());
    }

    @Test
    void every_field_and_every_damage_is_described_by_its_question() {
        String schema = questions.schema();
        for (SurveyField<?> field : SurveyField.all()) {
            assertThat(schema).contains("\"description\" : \"" + questions.question(field.name()));
        }
        for (DamageKind kind : DamageKind.values()) {
            assertThat(schema).contains("\"description\" : \"" + questions.question("damages." + kind.key()) + "\"");
        }
        assertThat(schema)
                .contains("How thick is the stone or the topping? Check the drawings, or lift one piece."
                        + " Accepted: a value from 3 to 500 mm.");
    }

    @Test
    void a_name_that_no_survey_has_is_refused() {
        assertThatThrownBy(() -> questions.question("site.colour"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("site.colour");
    }
}
