package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Input;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.site.JobNote;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.space.SurveyGenerator;

/** Rules, passes and estimate take the stone of one floor for the same. */
class OneStoneTest {
    private static final int DRAWN = 400;

    private static final Advisor ADVISOR = Advisor.standard();

    /** Rules used to call scratched sandstone medium or hard, the forecast and the estimate medium alone. */
    @ParameterizedTest
    @EnumSource(ScriberTest.class)
    void the_scriber_on_sandstone_tells_rules_passes_and_estimate_the_same(ScriberTest scriber) {
        FloorSurvey survey = Floors.damaged(Floors.scratched(ScratchClass.FELT_BY_NAIL, 20))
                .set(SurveyField.STONE_NAME, "sandstone")
                .set(SurveyField.SCRIBER, scriber)
                .set(SurveyField.GOAL, Goal.HONE)
                .build();
        Recommendation answer = ADVISOR.recommend(survey);
        KnownStone stone = KnownStone.of(answer);
        assertThat(stone.weakBinder()).isTrue();
        assertThat(read(answer)).isNotEmpty().containsOnly(Term.keys(stone.hardness()));
        assertThat(passInputs(answer))
                .isNotEmpty()
                .allMatch(inputs -> inputs.contains(new Input.OfParameter("cut-rate.weak-binder")));
        PlannedJob job = PlannedJob.of(answer, JobOptions.defaults());
        assertThat(job.job().stone()).isEqualTo(stone.cutting());
        assertThat(job.job().stone()).isEqualTo(CuttingClass.WEAK_BINDER);
        assertThat(job.notes()).doesNotContain(JobNote.STONE_MAY_BE_HARD);
    }

    @Test
    void rules_passes_and_estimate_agree_on_drawn_floors() {
        int inDoubt = 0;
        int reckoned = 0;
        for (int i = 0; i < DRAWN; i++) {
            SplittableRandom random = new SplittableRandom(97L * i);
            Recommendation answer = ADVISOR.recommend(
                    SurveyGenerator.of(new Share(i % 2 == 0 ? 95 : 65)).draw(random));
            KnownStone stone = KnownStone.of(answer);
            inDoubt += stone.hardness().size() > 1 ? 1 : 0;
            assertThat(read(answer)).as("what rules read").allMatch(Term.keys(stone.hardness())::equals);
            assertThat(passInputs(answer))
                    .as("passes")
                    .allMatch(inputs -> inputs.contains(
                            new Input.OfParameter(stone.cutting().rateParameter())));
            boolean cuts =
                    answer.plan().filter(plan -> !plan.tracks().isEmpty()).isPresent();
            if (cuts
                    && PlannedJob.isThere(answer)
                    && answer.survey().answer(SurveyField.AREA).isKnown()) {
                PlannedJob job = PlannedJob.of(answer, JobOptions.defaults());
                assertThat(job.job().stone()).as("estimate").isEqualTo(stone.cutting());
                reckoned++;
            }
        }
        assertThat(inDoubt).as("floors of more than one hardness").isGreaterThan(DRAWN / 10);
        assertThat(reckoned).as("floors that were estimated").isGreaterThan(5);
    }

    /** What the plan shows is what was decided, computed once. */
    private static void stepsAreAsDecided(Recommendation answer, Track track) {
        for (PlannedStep step : track.steps()) {
            Subject subject = new Subject.OfStep(track.kind(), step.grade().key());
            assertThat(answer.values(Topics.PASSES, subject)).containsExactly(step.passes());
            assertThat(answer.values(Topics.LITRES, subject))
                    .isEqualTo(step.litresPerPass().stream().toList());
        }
    }

    private static List<List<String>> read(Recommendation answer) {
        return decisions(answer)
                .flatMap(decision -> Stream.concat(decision.won().stream(), decision.outweighed().stream()))
                .flatMap(reason -> reason.facts().stream())
                .filter(fact -> fact.name().equals("CuttingHardness"))
                .map(MatchedFact::mayBe)
                .toList();
    }

    private static List<List<Input>> passInputs(Recommendation answer) {
        return decisions(answer)
                .filter(decision -> decision.topic() == Topics.PASSES)
                .map(Decision::inputs)
                .toList();
    }

    private static Stream<Decision<?>> decisions(Recommendation answer) {
        return answer.outcomes().stream().filter(Decision.class::isInstance).map((Outcome outcome) ->
                (Decision<?>) outcome);
    }
}
