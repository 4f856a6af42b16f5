package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.net.URLClassLoader;
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
        String json = SurveyJson.print(survey);
        assertThat(SurveyJson.read(json)).isEqualTo(survey);
        assertThat(SurveyJson.print(SurveyJson.read(json))).isEqualTo(json);
    }

    @ParameterizedTest
    @MethodSource("recommendations")
    void a_recommendation_survives_printing_and_reading(Recommendation recommendation) {
        String json = RecommendationJson.print(recommendation);
        assertThat(RecommendationJson.read(json)).isEqualTo(recommendation);
        assertThat(RecommendationJson.print(RecommendationJson.read(json))).isEqualTo(json);
    }

    @Test
    void unknown_and_left_out_mean_the_same_and_none_means_looked() {
        String head = "{\"format\":\"floor-survey/1\",\"title\":\"t\"";
        FloorSurvey leftOut = SurveyJson.read(head + "}");
        FloorSurvey unknown = SurveyJson.read(
                head + ",\"condition\":{\"coating\":\"unknown\"},\"equipment\":{\"machines\":\"unknown\"}}");
        FloorSurvey none =
                SurveyJson.read(head + ",\"condition\":{\"coating\":\"none\"},\"equipment\":{\"machines\":[]}}");
        assertThat(unknown).isEqualTo(leftOut);
        assertThat(none).isNotEqualTo(leftOut);
    }

    @Test
    void quantities_are_read_in_any_unit_and_printed_in_the_kept_one() {
        FloorSurvey survey = SurveyJson.read("{\"format\":\"floor-survey/1\",\"title\":\"t\","
                + "\"site\":{\"area\":{\"value\":1e2,\"unit\":\"ft2\"}},"
                + "\"build-up\":{\"thickness\":{\"value\":0.75,\"unit\":\"in\"}}}");
        assertThat(SurveyJson.print(survey))
                .contains("\"value\" : 9.2903,")
                .contains("\"value\" : 19.05,")
                .contains("\"unit\" : \"mm\"");
    }

    @Test
    void without_jackson_there_is_one_clear_error() throws Exception {
        URL classes = SurveyJson.class.getProtectionDomain().getCodeSource().getLocation();
        try (URLClassLoader bare = new WithoutJackson(classes)) {
            Class<?> reader = bare.loadClass(SurveyJson.class.getName());
            Class<?> survey = bare.loadClass(FloorSurvey.class.getName());
            Object builder = survey.getMethod("builder", String.class).invoke(null, "t");
            Object built = builder.getClass().getMethod("build").invoke(builder);
            // The second time, the Java machine says something else than the first.
            for (int time = 1; time <= 2; time++) {
                assertMissing(() -> reader.getMethod("read", String.class).invoke(null, "{}"));
                assertMissing(() -> reader.getMethod("print", survey).invoke(null, built));
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

    @Test
    void the_schemas_need_no_jackson() throws IOException {
        try (InputStream in = Schemas.class.getResourceAsStream("schema/floor-survey.schema.json")) {
            assertThat(in).isNotNull();
        }
        assertThat(Schemas.survey()).contains("floor-survey/1");
        assertThat(Schemas.recommendation()).contains("floor-recommendation/1");
        assertThat(Schemas.jobLog()).contains("job-log/1");
        assertThat(Schemas.nextMove()).contains("next-move/1");
        assertThat(Schemas.diagnosis()).contains("diagnosis/1");
    }
}
