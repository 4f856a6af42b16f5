package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.GritSequence;

/** What the documentation of the facade promises: nulls, errors, threads. */
class PromisesTest {
    private final Advisor advisor = Advisor.standard();

    @Test
    void nulls_are_refused_by_the_name_of_the_argument() {
        assertThatThrownBy(() -> advisor.recommend(null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("survey");
        assertThatThrownBy(() -> PlannedJob.of(null, JobOptions.defaults()))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("recommendation");
        Recommendation answer = advisor.recommend(Floors.wornGranite());
        assertThatThrownBy(() -> PlannedJob.of(answer, null))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("options");
        assertThatThrownBy(() -> PlannedJob.of(
                        advisor.recommend(FloorSurvey.builder("nothing known").build()), JobOptions.defaults()))
                .isInstanceOf(InvalidInputException.class);
    }

    @Test
    void a_grade_on_hand_that_the_sequence_lacks_is_refused_by_name() {
        GritSequence all = GritSequence.standard();
        Advisor few = Advisor.of(
                Rulebase.standard(),
                Options.defaults()
                        .withSequence(GritSequence.of(List.of(all.get("resin-400", ""), all.get("resin-800", "")))));
        FloorSurvey floor = Floors.unremarkable()
                .set(SurveyField.GRADES, List.of(all.get("resin-400", ""), all.get("resin-1500", "")))
                .build();
        assertThatThrownBy(() -> few.recommend(floor))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage(
                        "equipment.grades: 'resin-1500' is not accepted; accepted: grades of the options' sequence, "
                                + "of the same grain: resin-400, resin-800");
    }

    @Test
    void threads_that_share_an_advisor_get_equal_answers() {
        Recommendation alone = advisor.recommend(Floors.wornGranite());
        assertThat(IntStream.range(0, 24)
                        .parallel()
                        .mapToObj(i -> advisor.recommend(Floors.wornGranite()))
                        .toList())
                .containsOnly(alone);
    }
}
