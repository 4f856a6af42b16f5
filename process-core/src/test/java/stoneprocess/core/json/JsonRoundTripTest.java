package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;

class JsonRoundTripTest {
    static Stream<Recommendation> recommendations() {
        return Stream.of(Examples.planned(), Examples.impasse());
    }

    @Test
    void a_survey_survives_printing_and_reading() {
        FloorSurvey survey = Examples.survey();
        String json = Json.SURVEY.print(survey);
        assertThat(Json.SURVEY.read(json)).isEqualTo(survey);
        assertThat(Json.SURVEY.print(Json.SURVEY.read(json))).isEqualTo(json);
    }

    @ParameterizedTest
    @MethodSource("recommendations")
    void a_recommendation_survives_printing_and_reading(Recommendation recommendation) {
        String json = Json.RECOMMENDATION.print(recommendation);
        assertThat(Json.RECOMMENDATION.read(json)).isEqualTo(recommendation);
        assertThat(Json.RECOMMENDATION.print(Json.RECOMMENDATION.read(json))).isEqualTo(json);
    }

    @Test
    void unknown_and_left_out_mean_the_same_and_none_means_looked() {
        String head = "{\"format\":\"floor-survey/1\",\"title\":\"t\"";
        FloorSurvey leftOut = Json.SURVEY.read(head + "}");
        FloorSurvey unknown = Json.SURVEY.read(
                head + ",\"condition\":{\"coating\":\"unknown\"},\"equipment\":{\"machines\":\"unknown\"}}");
        FloorSurvey none =
                Json.SURVEY.read(head + ",\"condition\":{\"coating\":\"none\"},\"equipment\":{\"machines\":[]}}");
        assertThat(unknown).isEqualTo(leftOut);
        assertThat(none).isNotEqualTo(leftOut);
    }

    @Test
    void quantities_are_read_in_any_unit_and_printed_in_the_kept_one() {
        FloorSurvey survey = Json.SURVEY.read("{\"format\":\"floor-survey/1\",\"title\":\"t\","
                + "\"site\":{\"area\":{\"value\":1e2,\"unit\":\"ft2\"}},"
                + "\"build-up\":{\"thickness\":{\"value\":0.75,\"unit\":\"in\"}}}");
        assertThat(Json.SURVEY.print(survey))
                .contains("\"value\" : 9.2903,")
                .contains("\"value\" : 19.05,")
                .contains("\"unit\" : \"mm\"");
    }

    @Test
    void without_jackson_there_is_one_clear_error() throws Exception {
        URL classes = Json.class.getProtectionDomain().getCodeSource().getLocation();
        try (URLClassLoader bare = new WithoutJackson(classes)) {
            Object form =
                    bare.loadClass(Json.class.getName()).getField("SURVEY").get(null);
            Class<?> reader = form.getClass();
            Class<?> survey = bare.loadClass(FloorSurvey.class.getName());
            Object builder = survey.getMethod("builder", String.class).invoke(null, "t");
            Object built = builder.getClass().getMethod("build").invoke(builder);
            // The second time, the Java machine says something else than the first.
            for (int time = 1; time <= 2; time++) {
                assertMissing(() -> reader.getMethod("read", String.class).invoke(form, "{}"));
                assertMissing(() -> reader.getMethod("print", Object.class).invoke(form, built));
                assertMissing(() -> reader.getMethod("schema").invoke(form));
            }
        }
    }

    private static void assertMissing(ThrowingCallable call) {
        assertThatThrownBy(call)
                .cause()
                .satisfies(problem -> assertThat(problem.getClass().getName())
                        .isEqualTo("stoneprocess.core.problem.MissingLibraryException"))
                .hasMessageContaining("tools.jackson.core:jackson-core");
    }

    /** Sees the library and the platform, and nothing else. */
    private static final class WithoutJackson extends URLClassLoader {
        private WithoutJackson(URL classes) {
            super(new URL[] {classes}, ClassLoader.getPlatformClassLoader());
        }
    }

    /**
     * Whoever has no Jackson reads the copies; run with {@code -Dschema.write} to write them anew. The survey's is written
     * where its questions are put into words; it differs in descriptions only.
     */
    @ParameterizedTest
    @MethodSource("stoneprocess.core.json.Json#all")
    void the_files_of_the_schemas_are_those_of_the_records(Form<?> form) throws IOException {
        String name = form.version().substring(0, form.version().indexOf('/')) + ".schema.json";
        Path file = Path.of("..", "docs", "schema", name);
        boolean survey = form == Json.SURVEY;
        if (System.getProperty("schema.write") != null) {
            assumeThat(survey).as("written with the words of its questions").isFalse();
            Files.writeString(file, form.schema());
        }
        String expected = Files.readString(file);
        assertThat(survey ? undescribed(form.schema()) : form.schema())
                .isEqualTo(survey ? undescribed(expected) : expected);
        try (InputStream in = Form.class.getResourceAsStream("schema/" + name)) {
            assertThat(in).as("in the jar").isNotNull();
        }
    }

    private static String undescribed(String schema) {
        return schema.replaceAll("(?m)^ *\"description\" : .*\\n", "");
    }
}
