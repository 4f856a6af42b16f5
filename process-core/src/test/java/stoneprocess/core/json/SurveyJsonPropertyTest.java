package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.GritSequence;

class SurveyJsonPropertyTest {
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Json.SURVEY.schema(), InputFormat.JSON);

    @Provide
    Arbitrary<FloorSurvey> surveys() {
        return Surveys.any();
    }

    @Property(tries = 300, seed = "1955")
    void any_survey_survives_printing_and_reading(@ForAll("surveys") FloorSurvey survey) {
        String json = Json.SURVEY.print(survey);
        FloorSurvey read = Json.SURVEY.read(json);
        assertThat(read).isEqualTo(survey);
        assertThat(Json.SURVEY.print(read)).isEqualTo(json);

        long known = SurveyField.all().stream()
                .filter(field -> survey.answer(field).isKnown())
                .count();
        Statistics.label("known fields")
                .collect(known < SurveyField.all().size() / 2 ? "fewer" : "more")
                .coverage(coverage -> {
                    coverage.check("fewer").percentage(share -> share > 5);
                    coverage.check("more").percentage(share -> share > 5);
                });
        Statistics.label("zones with damages")
                .collect(
                        survey.zones().stream().anyMatch(zone -> !zone.damages().isEmpty()))
                .coverage(coverage -> coverage.check(true).percentage(share -> share > 30));
        Statistics.label("readings")
                .collect(!survey.readings().isEmpty())
                .coverage(coverage -> coverage.check(true).percentage(share -> share > 10));
    }

    @Property(tries = 100, seed = "1955")
    void the_schema_accepts_any_survey_that_is_printed(@ForAll("surveys") FloorSurvey survey) {
        assertThat(SCHEMA.validate(Json.SURVEY.print(survey), InputFormat.JSON)).isEmpty();
    }

    @Property(tries = 100, seed = "1955")
    void any_survey_survives_inside_a_recommendation(@ForAll("surveys") FloorSurvey survey) {
        Recommendation impasse = Examples.impasse();
        Recommendation recommendation = new Recommendation(
                impasse.status(),
                impasse.plan(),
                impasse.refusals(),
                impasse.warnings(),
                impasse.questions(),
                impasse.counterOffers(),
                impasse.outcomes(),
                survey,
                GritSequence.standard(),
                impasse.parameters(),
                impasse.rulebase());
        assertThat(Json.RECOMMENDATION.read(Json.RECOMMENDATION.print(recommendation)))
                .isEqualTo(recommendation);
    }
}
