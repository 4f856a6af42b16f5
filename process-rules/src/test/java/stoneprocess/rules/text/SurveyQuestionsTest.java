package stoneprocess.rules.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stoneprocess.core.json.Json;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
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
            assertThat(schema).contains("\"description\" : \"" + questions.question("damages." + kind.key()));
        }
        assertThat(schema)
                .contains(
                        "How thick is the stone or the topping? Check the drawings; lift a piece only once any adhesive"
                                + " or layer below is cleared for asbestos and lead."
                                + " Accepted: a value from 3 to 500 mm.");
    }

    @Test
    void the_form_names_every_field_every_damage_and_every_word() {
        String form = Texts.english().unwrapped(questions.form());
        for (SurveyField<?> field : SurveyField.all()) {
            assertThat(form).contains(field.name() + ": ");
            if (field.kind() instanceof FieldKind.Choice choice) {
                for (Enum<?> word : choice.type().getEnumConstants()) {
                    assertThat(form).containsPattern("(- |; | {6})" + ((Term) word).key() + "(:|;|\\.?\n)");
                }
            }
        }
        for (DamageKind kind : DamageKind.values()) {
            assertThat(form).contains("damages." + kind.key() + ": ");
        }
        assertThat(form).contains("- polish: polish, from 60 GU").contains("moderate: moderate, from 1.5 mm");
    }

    /** The examples of the form are read as a survey's are. */
    @Test
    void a_survey_made_of_the_forms_examples_is_accepted() {
        String form = Texts.english().unwrapped(questions.form());
        Matcher example = Pattern.compile("([a-z-]+)\\.([a-z-]+): [^\n]*\n +Such as (\\S+?)(?: (\\S+))?\\.\n")
                .matcher(form);
        int read = 0;
        while (example.find()) {
            String survey = "{\"format\": \"floor-survey/2\", \"title\": \"Net loft\", \"" + example.group(1)
                    + "\": {\"" + example.group(2) + "\": {\"value\": " + example.group(3) + ", \"unit\": \""
                    + Objects.requireNonNullElse(example.group(4), "count") + "\"}}}";
            SurveyField<?> field = SurveyField.named(example.group(1) + "." + example.group(2));
            assertThat(Json.SURVEY.read(survey).answer(field).isKnown())
                    .as(survey)
                    .isTrue();
            read++;
        }
        assertThat(read).isEqualTo((int) SurveyField.all().stream()
                .filter(field -> field.kind() instanceof FieldKind.Measure)
                .count());
    }

    @Test
    void a_name_that_no_survey_has_is_refused() {
        assertThatThrownBy(() -> questions.question("site.colour"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("site.colour");
    }
}
