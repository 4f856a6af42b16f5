package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.gloss.Direction;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.GainVerdict;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.log.EdgeLook;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Moment;
import stoneprocess.core.log.PadLook;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Finding;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.TrackKind;

/**
 * A hard floor, read once at 60 degrees after 800, 1500 and 3000: 3.7, 4.8 and 7.8 units. Common practice,
 * no source.
 */
class FollowUpTest {
    private static final Advisor ADVISOR = Advisor.standard();

    @Test
    void an_empty_log_gives_the_first_hold_point_of_the_plan() {
        Recommendation plan = ADVISOR.recommend(floor(Goal.POLISH));

        NextMove next = ADVISOR.followUp(plan, new JobLog("ferry hall", List.of()));

        assertThat(next.move()).isEqualTo(Move.GO_ON);
        assertThat(next.at()).isEmpty();
        assertThat(next.ahead().plan().orElseThrow().tracks())
                .isEqualTo(plan.plan().orElseThrow().tracks());
        assertThat(next.ahead().warnings()).isEqualTo(plan.warnings());
    }

    @Test
    void single_readings_tell_what_is_missing_and_that_85_degrees_resolve_better() {
        NextMove next = session(Goal.JUST_BETTER, 1);

        assertThat(next.findings())
                .contains(Finding.GAIN_NEEDS_READINGS, Finding.READ_AT_85, Finding.LATEST_GAIN_LARGEST);
        assertThat(next.progress())
                .singleElement()
                .satisfies(zone -> assertThat(zone.gain().orElseThrow())
                        .satisfies(gain -> assertThat(gain.verdict()).isEqualTo(GainVerdict.NOT_ENOUGH_READINGS))
                        .satisfies(gain -> assertThat(gain.missingAfter()).isEqualTo(1)));
    }

    @Test
    void nothing_failed_when_the_owner_only_wanted_it_better() {
        NextMove next = session(Goal.JUST_BETTER);

        assertThat(next.findings()).contains(Finding.BETTER_IS_ENOUGH);
        assertThat(next.move()).isNotIn(Move.START_COARSER, Move.TWO_GRADES_BACK, Move.ONE_GRADE_BACK);
    }

    @Test
    void for_a_semi_gloss_the_floor_was_started_too_fine_whatever_the_passes() {
        for (int passes : List.of(4, 8, 16, 60)) {
            NextMove next = session(Goal.SEMI_GLOSS, passes);

            assertThat(next.findings()).as(passes + " passes").contains(Finding.STARTED_TOO_FINE);
            assertThat(next.move()).as(passes + " passes").isEqualTo(Move.START_COARSER);
            assertThat(next.ahead()
                            .plan()
                            .orElseThrow()
                            .tracks()
                            .get(0)
                            .steps()
                            .get(0)
                            .grade()
                            .number())
                    .isLessThan(800);
        }
    }

    private static NextMove session(Goal goal) {
        return session(goal, 4);
    }

    private static NextMove session(Goal goal, int passes) {
        FloorSurvey floor = floor(goal);
        String zone = floor.zones().get(0).name();
        List<Entry> entries = new ArrayList<>();
        int hour = 8;
        double[] read = {3.7, 4.8, 7.8};
        int[] grits = {800, 1500, 3000};
        for (int i = 0; i < grits.length; i++) {
            entries.add(new Entry.Worked(
                    new Moment(1, 60 * hour),
                    TrackKind.OPEN_FIELD,
                    grade("resin-" + grits[i]),
                    passes,
                    Optional.empty(),
                    Optional.empty()));
            entries.add(new Entry.Looked(
                    new Moment(1, 60 * hour + 30),
                    zone,
                    FaceState.CLEAN_DRY,
                    Optional.of(ScratchLook.NONE),
                    Optional.of(Presence.NONE),
                    Optional.of(PadLook.OPEN),
                    Optional.of(EdgeLook.AS_FIELD),
                    Optional.of(Set.of())));
            entries.add(new Entry.Read(
                    new Moment(1, 60 * hour + 40),
                    new Reading(
                            "middle",
                            zone,
                            Direction.ALONG,
                            Geometry.DEG_60,
                            new Gloss(read[i]),
                            FaceState.CLEAN_DRY)));
            hour += 2;
        }
        return ADVISOR.followUp(ADVISOR.recommend(floor), new JobLog("ferry hall", entries));
    }

    private static AbrasiveGrade grade(String key) {
        return GritSequence.standard().get(key, "grade");
    }

    private static FloorSurvey floor(Goal goal) {
        return Floors.unremarkable().set(SurveyField.GOAL, goal).build();
    }
}
