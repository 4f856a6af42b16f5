package stoneprocess.rules.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.plan.AddedWeight;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Step;
import stoneprocess.core.plan.WaterLevel;
import stoneprocess.core.plan.WorkMethod;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.space.SurveyGenerator;

/** No step of a planned floor leaves the crew without machine, weight, water, passes, pick-up or hold point. */
class EveryStepTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final int DRAWN = 2_000;

    @Test
    void every_step_of_every_planned_floor_is_complete() throws IOException {
        List<FloorSurvey> floors = new ArrayList<>(FloorTableTest.surveys());
        ExpertCase.all().forEach(expert -> floors.add(expert.survey()));
        SurveyGenerator generator = SurveyGenerator.of(new Share(95));
        SplittableRandom random = new SplittableRandom(1955);
        Stream.generate(() -> generator.draw(random)).limit(DRAWN).forEach(floors::add);
        int steps = 0;
        int dry = 0;
        for (FloorSurvey floor : floors) {
            Recommendation answer = ADVISOR.recommend(floor);
            List<Step> all = answer.plan().stream()
                    .map(Plan::tracks)
                    .flatMap(List::stream)
                    .flatMap(track -> track.steps().stream())
                    .toList();
            for (Step step : all) {
                steps++;
                dry += step.method() == WorkMethod.DRY ? 1 : 0;
                assertThat(step.passes().low()).as(floor.title()).isPositive();
                assertThat(step.checks()).as(floor.title()).isNotEmpty();
                assertThat(step.handling()).as(floor.title()).isNotEmpty();
                assertThat(step.water() == WaterLevel.NONE)
                        .as(floor.title())
                        .isEqualTo(step.method() == WorkMethod.DRY);
                assertThat(step.weight() == AddedWeight.NONE
                                || step.addedMass().high().kilograms() > 0
                                || step.machine().key().matches("burnisher|scrubber|propane-machine"))
                        .as(floor.title())
                        .isTrue();
            }
        }
        System.out.printf("Steps looked at: %d of %d floors, %d of them dry%n", steps, floors.size(), dry);
        assertThat(steps).isGreaterThan(5_000);
        assertThat(dry).isPositive();
    }
}
