package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.json.Json;
import stoneprocess.rules.Advisor;

/** Samples and their recommendations against the schemas, by an independent validator. */
class SampleSchemaTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema SURVEY = REGISTRY.getSchema(Json.SURVEY.schema(), InputFormat.JSON);
    private static final Schema RECOMMENDATION = REGISTRY.getSchema(Json.RECOMMENDATION.schema(), InputFormat.JSON);
    private static final Advisor ADVISOR = Advisor.standard();

    static Stream<String> samples() throws IOException {
        return SamplesRegressionTest.samples();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void samples_and_their_recommendations_are_valid(String name) throws IOException {
        String survey = Files.readString(Path.of("surveys", name));
        assertThat(SURVEY.validate(survey, InputFormat.JSON)).isEmpty();
        String answer = Json.RECOMMENDATION.print(ADVISOR.recommend(Json.SURVEY.read(survey)));
        assertThat(RECOMMENDATION.validate(answer, InputFormat.JSON)).isEmpty();
    }
}
