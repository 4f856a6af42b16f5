package stoneprocess.rules.follow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Sign;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.text.FollowText;
import stoneprocess.rules.text.document.Texts;

/** Lanes of a finished floor that feet have dulled; common practice, no source. The floors are invented. */
class LanesTouchedUpTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final JobLog NONE = new JobLog("years later", List.of());

    private static Recommendation plan(Zone... zones) {
        return ADVISOR.recommend(Floors.calciteMarble()
                .set(SurveyField.GOAL, Goal.POLISH)
                .zones(List.of(zones))
                .build());
    }

    private static Zone zone(String name, ZoneKind kind, double share) {
        Zone dull = Floors.zone(name, share, Map.of(DamageKind.WEAR, Floors.dull(80)));
        return new Zone(name, kind, dull.share(), dull.damages());
    }

    private static NextMove next(Recommendation plan) {
        return ADVISOR.diagnose(plan, Set.of(Sign.DULL_LANES), NONE).remedy();
    }

    private static String text(Recommendation plan) {
        return Texts.english()
                .page(new FollowText(ADVISOR.rulebase().cards())
                        .document(plan, NONE, ADVISOR.diagnose(plan, Set.of(Sign.DULL_LANES), NONE)));
    }

    @Test
    void the_last_grit_runs_over_the_lanes_alone_feathered_and_with_the_planned_passes() {
        Recommendation plan = plan(
                zone("lane", ZoneKind.LANE, 25), zone("rest", ZoneKind.FIELD, 65), zone("wall", ZoneKind.EDGE, 10));
        NextMove next = next(plan);
        assertThat(next.move()).isEqualTo(Move.TOUCH_UP_LANES);
        List<Track> tracks = next.ahead().plan().orElseThrow().tracks().stream()
                .filter(track -> !track.steps().isEmpty())
                .toList();
        assertThat(tracks).extracting(Track::kind).containsExactly(TrackKind.OPEN_FIELD);
        List<PlannedStep> planned = plan.steps(TrackKind.OPEN_FIELD);
        PlannedStep last = planned.get(planned.size() - 1);
        assertThat(tracks.get(0).steps()).singleElement().satisfies(step -> {
            assertThat(step.grade()).isEqualTo(last.grade());
            assertThat(step.passes()).isEqualTo(last.passes());
            assertThat(step.handling()).contains(Handling.FEATHER_EDGES);
            assertThat(litres(step)).isBetween(0.2 * litres(last), 0.35 * litres(last));
        });
        assertThat(text(plan)).contains("TOUCH UP THE LANES").doesNotContain("SET-UP");
    }

    private static double litres(PlannedStep step) {
        Range<Volume> litres = step.litresPerPass().orElseThrow();
        return litres.high().litres();
    }

    @Test
    void without_a_surveyed_lane_no_figures_are_told_for_the_whole_floor() {
        Recommendation plan = plan(zone("all", ZoneKind.FIELD, 100));
        NextMove next = next(plan);
        assertThat(next.move()).isEqualTo(Move.TOUCH_UP_LANES);
        assertThat(next.ahead().steps(TrackKind.OPEN_FIELD)).isEmpty();
        assertThat(text(plan)).contains("None can be told: the survey shows no lane");
    }
}
