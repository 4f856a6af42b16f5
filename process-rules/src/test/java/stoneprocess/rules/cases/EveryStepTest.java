package stoneprocess.rules.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.WaterLevel;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.space.SurveyGenerator;

/** No step of a planned floor leaves the crew without machine, weight, water, passes, pick-up or hold point. */
class EveryStepTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final int DRAWN = 2_000;

    /** The floors of the outcome table are judged where they are planned, by {@link FloorTableTest}. */
    @Test
    void every_step_of_every_planned_floor_is_complete() {
        List<FloorSurvey> floors = new ArrayList<>();
        ExpertCase.all().forEach(expert -> floors.add(expert.survey()));
        SurveyGenerator generator = SurveyGenerator.of(new Share(95));
        SplittableRandom random = new SplittableRandom(1955);
        Stream.generate(() -> generator.draw(random)).limit(DRAWN).forEach(floors::add);
        int steps = 0;
        long dry = 0;
        for (FloorSurvey floor : floors) {
            List<PlannedStep> all = steps(ADVISOR.recommend(floor));
            all.forEach(step -> requireComplete(step, floor.title()));
            steps += all.size();
            dry += all.stream().filter(step -> step.method() == WorkMethod.DRY).count();
        }
        System.out.printf("Steps looked at: %d of %d floors, %d of them dry%n", steps, floors.size(), dry);
        assertThat(steps).isGreaterThan(1_000);
        assertThat(dry).isPositive();
    }

    static List<PlannedStep> steps(Recommendation answer) {
        return answer.plan().stream()
                .map(Plan::tracks)
                .flatMap(List::stream)
                .flatMap(track -> track.steps().stream())
                .toList();
    }

    static void requireComplete(PlannedStep step, String floor) {
        assertThat(step.passes().low()).as(floor).isPositive();
        assertThat(step.checks()).as(floor).isNotEmpty();
        assertThat(step.handling()).as(floor).isNotEmpty();
        assertThat(step.water() == WaterLevel.NONE).as(floor).isEqualTo(step.method() == WorkMethod.DRY);
        assertThat(step.weight() == AddedWeight.NONE
                        || step.addedMass().high().kilograms() > 0
                        || step.machine().key().matches("burnisher|scrubber|propane-machine"))
                .as(floor)
                .isTrue();
    }
}
