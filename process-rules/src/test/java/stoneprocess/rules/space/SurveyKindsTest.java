package stoneprocess.rules.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.parameter.Scale;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SizeClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.testkit.FieldClasses;
import stoneprocess.rules.testkit.InvalidSurveys;
import stoneprocess.rules.testkit.SurveyKind;

class SurveyKindsTest {
    private static final Parameters NUMBERS = Parameters.standard();
    private static final SurveyGenerator GENERATOR = SurveyGenerator.of(new Share(95));

    @Test
    void an_unremarkable_floor_is_planned() {
        assertThat(Advisor.standard().recommend(Unremarkable.floor().build()).status())
                .isEqualTo(Status.PLANNED);
    }

    @Test
    void measured_answers_lie_on_the_limits_or_one_step_before_them_about_half_of_the_time() {
        List<Quantity> limits = Scale.of("floor-size", SizeClass.class, NUMBERS).limits().stream()
                .<Quantity>map(limit -> limit)
                .toList();
        List<Quantity> before = limits.stream().map(FieldClasses::stepBefore).toList();
        Map<String, Integer> on = new HashMap<>();
        int draws = 400;
        for (SurveyKind kind : SurveyKind.values()) {
            for (int seed = 0; seed < draws; seed++) {
                FloorSurvey survey = kind.draw(GENERATOR, NUMBERS, new SplittableRandom(seed));
                survey.answer(SurveyField.AREA).value().ifPresent(area -> {
                    on.merge(kind + " on", limits.contains(area) ? 1 : 0, Integer::sum);
                    on.merge(kind + " before", before.contains(area) ? 1 : 0, Integer::sum);
                });
            }
        }
        assertThat(on.get("VALID on")).isLessThan(draws / 20);
        assertThat(on.get("BOUNDARY on")).isBetween(draws / 3, 2 * draws / 3);
        assertThat(on.get("BOUNDARY before")).isLessThan(draws / 20);
        assertThat(on.get("NEAR_MISS before")).isBetween(draws / 3, 2 * draws / 3);
    }

    @Test
    void typical_floors_are_mostly_cut_and_every_kind_is_sometimes_planned_and_sometimes_not() {
        Advisor advisor = Advisor.standard();
        for (SurveyKind kind : SurveyKind.values()) {
            int planned = 0;
            int cut = 0;
            int draws = 60;
            for (int seed = 0; seed < draws; seed++) {
                Recommendation answer = advisor.recommend(kind.draw(GENERATOR, NUMBERS, new SplittableRandom(seed)));
                planned += answer.plan().isPresent() ? 1 : 0;
                cut += answer.steps(TrackKind.OPEN_FIELD).isEmpty() ? 0 : 1;
            }
            assertThat(planned).as(kind + " planned").isBetween(1, draws - 1);
            if (kind == SurveyKind.TYPICAL) {
                assertThat(cut).isGreaterThan(draws / 2);
            }
        }
    }

    @Test
    void every_class_of_a_measured_field_has_an_answer_that_the_field_accepts() {
        FieldClasses classes = new FieldClasses(NUMBERS, GritSequence.standard());
        FloorSurvey floor = Unremarkable.floor().build();
        int measured = 0;
        for (SurveyField<?> field : SurveyField.all()) {
            List<Object> answers = classes.of(field, floor);
            answers.forEach(field::check);
            assertThat(answers).as(field.name()).doesNotHaveDuplicates();
            if (field.kind() instanceof FieldKind.Measure && !answers.isEmpty()) {
                assertThat(answers).as(field.name()).hasSizeGreaterThan(1);
                measured++;
            }
        }
        assertThat(measured).isGreaterThanOrEqualTo(9);
    }

    @Test
    void an_invalid_survey_is_refused_by_the_name_of_its_field() {
        FloorSurvey floor = Unremarkable.floor().zones(List.of()).build();
        List<InvalidSurveys.Attempt> attempts = InvalidSurveys.all(floor);

        assertThat(attempts).hasSizeGreaterThan(80);
        for (InvalidSurveys.Attempt attempt : attempts) {
            assertThatThrownBy(attempt.survey()::get)
                    .as(attempt.toString())
                    .isInstanceOf(InvalidInputException.class)
                    .satisfies(
                            e -> assertThat(((InvalidInputException) e).field()).endsWith(attempt.field()));
        }
    }
}
