package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.stone.Stone;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;

/** The derived schemas against an independent validator and against the tables of the code. */
class SchemaTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema SURVEY = REGISTRY.getSchema(Json.SURVEY.schema(), InputFormat.JSON);
    private static final Schema RECOMMENDATION = REGISTRY.getSchema(Json.RECOMMENDATION.schema(), InputFormat.JSON);

    private static List<Error> errors(Schema schema, String json) {
        return schema.validate(json, InputFormat.JSON);
    }

    static Stream<Recommendation> recommendations() {
        return JsonRoundTripTest.recommendations();
    }

    @Test
    void a_printed_survey_is_valid() {
        assertThat(errors(SURVEY, Json.SURVEY.print(Examples.survey()))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("recommendations")
    void a_printed_recommendation_is_valid(Recommendation recommendation) {
        assertThat(errors(RECOMMENDATION, Json.RECOMMENDATION.print(recommendation)))
                .isEmpty();
    }

    @Test
    void the_schema_refuses_what_the_reader_refuses() {
        assertThat(errors(SURVEY, "{\"format\":\"floor-survey/1\"}")).isNotEmpty();
        assertThat(errors(SURVEY, "{\"format\":\"floor-survey/1\",\"title\":\"t\",\"colour\":1}"))
                .isNotEmpty();
        assertThat(
                        errors(
                                SURVEY,
                                "{\"format\":\"floor-survey/1\",\"title\":\"t\",\"site\":{\"area\":{\"value\":-1,\"unit\":\"m2\"}}}"))
                .isNotEmpty();
        assertThat(errors(RECOMMENDATION, "{\"format\":\"floor-recommendation/1\"}"))
                .isNotEmpty();
    }

    @Test
    void sections_and_fields_of_the_schema_are_those_of_the_table() {
        Map<String, List<String>> table = new LinkedHashMap<>();
        SurveyField.all()
                .forEach(field -> table.computeIfAbsent(field.section(), section -> new ArrayList<>())
                        .add(field.shortName()));
        table.forEach((section, fields) -> {
            Described properties = schema().get("properties").get(section).get("properties");
            assertThat(properties.names()).as(section).containsExactlyElementsOf(fields);
        });
        List<String> expected = new ArrayList<>(List.of("format", "title"));
        expected.addAll(table.keySet());
        expected.addAll(List.of("zones", "readings"));
        assertThat(schema().get("properties").names()).containsExactlyElementsOf(expected);
    }

    @Test
    void the_words_of_the_schema_are_those_of_the_code() {
        for (SurveyField<?> field : SurveyField.all()) {
            Described property = schema().get("properties")
                    .get(field.section())
                    .get("properties")
                    .get(field.shortName());
            assertThat(words(property)).as(field.name()).isEqualTo(expectedWords(field));
        }
        for (DamageKind kind : DamageKind.values()) {
            Described damages = schema().get("properties")
                    .get("zones")
                    .get("items")
                    .get("properties")
                    .get("damages");
            Described look = damages.get("properties")
                    .get(kind.key())
                    .last("oneOf")
                    .get("properties")
                    .get("look");
            assertThat(look.get("enum").texts()).as(kind.key()).isEqualTo(Term.keys(kind.terms()));
        }
    }

    private static Described schema() {
        return Described.by(Json.SURVEY);
    }

    private static List<String> words(Described property) {
        if (property.optional("enum").isPresent()) {
            return property.get("enum").texts();
        }
        Described first = property.first("oneOf");
        if (first.optional("properties").isPresent()) {
            return first.get("properties").get("unit").get("enum").texts();
        }
        Described items = first.get("items");
        return items.optional("enum").isPresent() ? items.get("enum").texts() : List.of();
    }

    private static List<String> expectedWords(SurveyField<?> field) {
        FieldKind kind = field.kind();
        if (kind instanceof FieldKind.Choice choice) {
            return withUnknown(keys(choice.type()));
        }
        if (kind instanceof FieldKind.Choices choices) {
            return keys(choices.type());
        }
        if (kind instanceof FieldKind.Measure measure) {
            return Unit.symbols(measure.dimension());
        }
        if (kind instanceof FieldKind.StoneName) {
            return withUnknown(
                    StoneCatalogue.standard().all().stream().map(Stone::name).toList());
        }
        return List.of();
    }

    private static List<String> withUnknown(List<String> words) {
        List<String> all = new ArrayList<>(words);
        all.add("unknown");
        return all;
    }

    private static List<String> keys(Class<? extends Enum<?>> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(constant -> ((Term) constant).key())
                .toList();
    }
}
