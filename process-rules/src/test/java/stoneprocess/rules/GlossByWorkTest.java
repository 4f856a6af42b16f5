package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.GritStage;
import stoneprocess.core.gloss.LevelReading;
import stoneprocess.core.gloss.PlannedGrit;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.Moment;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.site.FloorForecast;
import stoneprocess.core.site.TrackIntensity;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.TrackKind;

/** The forecast of gloss counts passes by what they take off, whatever machine makes them. The floors are invented. */
class GlossByWorkTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final List<FloorSurvey> WORN = worn();
    private static final LevelReading DULL = new LevelReading(0, new Gloss(8), 3);

    private static List<FloorSurvey> worn() {
        List<FloorSurvey> floors = new ArrayList<>();
        for (ScratchClass look : List.of(ScratchClass.SEEN, ScratchClass.FELT_BY_NAIL)) {
            for (Goal goal : List.of(Goal.SATIN, Goal.SEMI_GLOSS, Goal.POLISH, Goal.HIGH_GLOSS)) {
                for (FloorSurvey.Builder floor : List.of(
                        Floors.calciteMarble(Floors.dull(80), Floors.scratched(look, 60)),
                        Floors.damaged(Floors.dull(80), Floors.scratched(look, 60)))) {
                    floors.add(floor.set(SurveyField.GOAL, goal).build());
                }
            }
        }
        return floors;
    }

    private static Recommendation with(FloorSurvey floor, MachineClass machine) {
        return ADVISOR.recommend(floor.toBuilder()
                .set(SurveyField.MACHINES, EnumSet.of(machine, MachineClass.EDGE_TOOL))
                .build());
    }

    private static FloorForecast forecast(Recommendation plan, GritStage... done) {
        return FloorForecast.of(plan, TrackKind.OPEN_FIELD, Optional.of(DULL), List.of(done));
    }

    private static double end(FloorForecast forecast) {
        List<GlossPrediction> ends = forecast.ends();
        return ends.get(ends.size() - 1).median().gloss();
    }

    /** The standard deviation of a mean of nine readings, about the curve, as the model states it. */
    private static double scatter(Recommendation plan, double gloss) {
        double misfit = plan.parameters().part("gloss-curve.misfit");
        double single = plan.parameters().part("gloss-reading.scatter");
        return gloss * Math.sqrt(misfit * misfit + single * single / 9);
    }

    @Test
    void a_planetary_machine_is_promised_the_gloss_of_a_single_disc_in_fewer_passes() {
        int met = 0;
        double widest = 0;
        for (FloorSurvey floor : WORN) {
            Recommendation disc = with(floor, MachineClass.SINGLE_DISC);
            Recommendation planetary = with(floor, MachineClass.PLANETARY);
            List<PlannedStep> byDisc = disc.steps(TrackKind.OPEN_FIELD);
            List<PlannedStep> byPlanetary = planetary.steps(TrackKind.OPEN_FIELD);
            if (!byDisc.stream()
                    .map(PlannedStep::grade)
                    .toList()
                    .equals(byPlanetary.stream().map(PlannedStep::grade).toList())) {
                continue;
            }
            met++;
            for (int i = 0; i < byDisc.size(); i++) {
                assertThat(byPlanetary.get(i).passes().low())
                        .isLessThan(byDisc.get(i).passes().low());
            }
            double promised = end(forecast(disc));
            widest = Math.max(widest, Math.abs(end(forecast(planetary)) - promised) / scatter(disc, promised));
        }
        System.out.printf(
                "same grits under both machines: %d of %d floors, at most %.2f scatters apart%n",
                met, WORN.size(), widest);
        assertThat(met).isGreaterThan(12);
        assertThat(widest).isLessThan(1);
    }

    @Test
    void a_pass_more_of_any_machine_never_lowers_the_final_gloss_and_the_heavier_one_gains_more() {
        for (MachineClass machine : List.of(MachineClass.SINGLE_DISC, MachineClass.PLANETARY)) {
            Recommendation plan = with(WORN.get(4), machine);
            Share intensity = new TrackIntensity(plan, TrackKind.OPEN_FIELD).ofResin(800);
            double before = 0;
            for (int passes = 1; passes < 8; passes++) {
                double after = end(forecast(plan, new GritStage(800, passes, intensity, List.of())));
                assertThat(after).isGreaterThanOrEqualTo(before);
                before = after;
            }
        }
        FloorForecast disc = forecast(with(WORN.get(4), MachineClass.SINGLE_DISC), new GritStage(800, 2, List.of()));
        Recommendation heavy = with(WORN.get(4), MachineClass.PLANETARY);
        Share intensity = new TrackIntensity(heavy, TrackKind.OPEN_FIELD).ofResin(800);
        FloorForecast planetary = forecast(heavy, new GritStage(800, 2, intensity, List.of()));
        assertThat(planetary.afterMorePasses(0).median().gloss())
                .isGreaterThan(disc.afterMorePasses(0).median().gloss() + 1);
    }

    @Test
    void passes_of_another_machine_than_planned_count_by_what_they_take_off() {
        Recommendation plan = with(WORN.get(4), MachineClass.PLANETARY);
        TrackIntensity intensity = new TrackIntensity(plan, TrackKind.OPEN_FIELD);
        PlannedStep step = plan.steps(TrackKind.OPEN_FIELD).get(0);
        Entry.Worked planned = worked(step, 4, Optional.of(MachineClass.PLANETARY));
        Entry.Worked single = worked(step, 4, Optional.of(MachineClass.SINGLE_DISC));

        assertThat(intensity.inPlannedPasses(List.of(planned))).isEqualTo(4);
        assertThat(intensity.inPlannedPasses(List.of(worked(step, 4, Optional.empty()))))
                .isEqualTo(4);
        assertThat(intensity.inPlannedPasses(List.of(single))).isBetween(1.0, 2.0);
        assertThat(intensity.mean(List.of(planned, single)).percent())
                .isBetween(intensity.of(single).percent(), intensity.of(planned).percent());
        assertThat(new PlannedGrit(400, 4, intensity.of(step)).passesAfter(new GritStage(400, 4, List.of())))
                .isEqualTo(3);
    }

    private static Entry.Worked worked(PlannedStep step, int passes, Optional<MachineClass> machine) {
        return new Entry.Worked(
                new Moment(1, 600), TrackKind.OPEN_FIELD, step.grade(), passes, machine, Optional.empty());
    }
}
