package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static stoneprocess.rules.TradeFloors.field;
import static stoneprocess.rules.TradeFloors.grades;
import static stoneprocess.rules.TradeFloors.plan;
import static stoneprocess.rules.TradeFloors.recommend;
import static stoneprocess.rules.TradeFloors.steps;
import static stoneprocess.rules.TradeFloors.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.Setting;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WaterDrop;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Check;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.PickUp;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Upkeep;
import stoneprocess.core.topic.WaterLevel;

/** What a restorer of hard floors takes for granted. Every fact here is common practice, no source. */
class TradeFactsTest {
    private static final Plan REFRESH =
            Advisor.standard().recommend(Floors.wornGranite()).plan().orElseThrow();

    /** Crews count their passes, and weigh what they add, with a single disc. */
    private static final Plan BY_SINGLE_DISC =
            plan(with(Floors.wornGranite().toBuilder(), MachineClass.SINGLE_DISC, MachineClass.EDGE_TOOL));

    /** Common practice, no source. */
    @Test
    void a_worn_flat_hard_floor_without_lines_is_refreshed_upwards_with_the_last_three_grits_on_hand() {
        for (TrackKind track : List.of(TrackKind.OPEN_FIELD, TrackKind.EDGE)) {
            assertThat(grades(steps(REFRESH, track))).containsExactly("resin-800", "resin-1500", "resin-3000");
        }
    }

    /** Common practice, no source. */
    @Test
    void a_crew_with_more_grades_still_refreshes_with_the_last_three() {
        assertThat(grades(field(plan(Floors.unremarkable())))).containsExactly("resin-800", "resin-1500", "resin-3000");
    }

    /** Common practice, no source: slow passes of a hard floor, 4 to 6 with each grit. */
    @Test
    void passes_of_a_hard_floor_overlap_what_crews_count() {
        List<Range<Integer>> passes =
                field(BY_SINGLE_DISC).stream().map(PlannedStep::passes).toList();
        assertOverlap(passes.get(0), 4, 6);
        assertOverlap(passes.get(1), 4, 6);
        assertOverlap(passes.get(2), 4, 6);
        assertThat(passes).allSatisfy(planned -> assertThat(planned.high()).isLessThanOrEqualTo(8));
    }

    private static void assertOverlap(Range<Integer> passes, int low, int high) {
        assertThat(passes.low()).isLessThanOrEqualTo(high);
        assertThat(passes.high()).isGreaterThanOrEqualTo(low);
    }

    /** Common practice, no source: wetter at the coarse and middle grits than at the finest, wettest where most comes off. */
    @Test
    void water_goes_by_grit_and_stone() {
        assertThat(field(REFRESH))
                .extracting(PlannedStep::water)
                .containsExactly(WaterLevel.MODERATE, WaterLevel.MODERATE, WaterLevel.SCANT);
        assertThat(field(plan(TradeFloors.etchedMarble())))
                .extracting(PlannedStep::water)
                .containsExactly(
                        WaterLevel.GENEROUS,
                        WaterLevel.MODERATE,
                        WaterLevel.MODERATE,
                        WaterLevel.MODERATE,
                        WaterLevel.SCANT);
    }

    /** Common practice, no source. */
    @Test
    void less_water_is_fewer_litres_a_pass() {
        List<Range<stoneprocess.core.quantity.Volume>> litres = field(REFRESH).stream()
                .map(step -> step.litresPerPass().orElseThrow())
                .toList();
        assertThat(litres.get(2).high()).isLessThan(litres.get(1).low());
    }

    /** Common practice, no source. */
    @Test
    void no_grit_may_dry_out_and_none_is_splashed_about() {
        assertThat(field(REFRESH))
                .allSatisfy(step -> assertThat(step.handling()).contains(Handling.NEVER_DRY, Handling.NO_SPLASH));
    }

    /** Common practice, no source. */
    @Test
    void hard_stone_is_cut_with_added_weight_and_less_of_it_on_the_finest_grits() {
        assertThat(field(REFRESH))
                .extracting(PlannedStep::weight)
                .containsExactly(AddedWeight.USUAL, AddedWeight.REDUCED, AddedWeight.REDUCED);
        assertThat(field(BY_SINGLE_DISC))
                .allSatisfy(
                        step -> assertThat(step.addedMass().low().kilograms()).isPositive());
    }

    /** Common practice, no source. */
    @Test
    void slurry_in_the_colour_of_the_stone_is_watched_for_at_every_grit() {
        assertThat(field(REFRESH))
                .allSatisfy(step -> assertThat(step.handling()).contains(Handling.WATCH_SLURRY));
        assertThat(Handling.WATCH_SLURRY.key()).isEqualTo("watch-slurry");
    }

    /** Common practice, no source. */
    @Test
    void slurry_is_picked_up_after_every_grit_with_a_wet_vacuum_or_else_with_two_buckets() {
        assertThat(field(REFRESH)).extracting(PlannedStep::pickUp).containsOnly(PickUp.WET_VACUUM);
        Plan without = plan(Floors.unremarkable().set(SurveyField.WET_VACUUM, Presence.NONE));
        assertThat(field(without)).extracting(PlannedStep::pickUp).containsOnly(PickUp.TWO_BUCKETS);
        Plan unsaid = plan(Floors.unremarkable().unknown(SurveyField.WET_VACUUM));
        assertThat(field(unsaid)).extracting(PlannedStep::pickUp).containsOnly(PickUp.TWO_BUCKETS);
    }

    /** Common practice, no source. */
    @Test
    void every_grit_is_rinsed_clean_and_dry_before_it_is_looked_at_and_read() {
        for (PlannedStep step : field(REFRESH)) {
            assertThat(step.checks())
                    .startsWith(Check.RINSED_CLEAN_DRY, Check.LOW_LIGHT)
                    .contains(Check.READ_60);
        }
    }

    /** Common practice, no source. */
    @Test
    void pads_and_bucket_are_clean_for_each_grit_and_its_edges_come_before_the_next() {
        assertThat(field(REFRESH))
                .allSatisfy(step ->
                        assertThat(step.handling()).contains(Handling.CLEAN_PADS_AND_BUCKET, Handling.EDGES_FIRST));
    }

    /** Common practice, no source. */
    @Test
    void a_burnisher_or_a_scrubber_never_cuts_while_there_is_a_slow_machine() {
        Plan plan = plan(with(
                Floors.unremarkable(),
                MachineClass.BURNISHER,
                MachineClass.SCRUBBER,
                MachineClass.SINGLE_DISC,
                MachineClass.EDGE_TOOL));
        assertThat(field(plan)).extracting(PlannedStep::machine).containsOnly(MachineClass.SINGLE_DISC);
    }

    /** Common practice, no source. */
    @Test
    void with_nothing_but_fast_machines_there_is_no_plan_and_another_machine_is_offered() {
        Recommendation answer = recommend(
                with(Floors.unremarkable(), MachineClass.BURNISHER, MachineClass.SCRUBBER, MachineClass.EDGE_TOOL));
        assertThat(answer.status()).isEqualTo(Status.IMPASSE);
        assertThat(answer.plan()).isEmpty();
        assertThat(answer.impasses()).allSatisfy(impasse -> {
            assertThat(impasse.topic()).isEqualTo(Topics.MACHINE);
            assertThat(rules(impasse)).contains("MAC-003");
        });
        assertThat(answer.counterOffers())
                .extracting(CounterOffer::kind)
                .contains(OfferKind.OTHER_MACHINE, OfferKind.LEAVE_IT);
    }

    /** Common practice, no source, for the refusal by default; NIOSH 96-118 for why. */
    @Test
    void propane_is_refused_indoors_and_where_nobody_said_whether_it_is_indoors() {
        for (FloorSurvey.Builder floor : List.of(
                TradeFloors.unevenConcrete(), TradeFloors.unevenConcrete().unknown(SurveyField.SETTING))) {
            Recommendation answer = recommend(with(floor, MachineClass.PROPANE_MACHINE, MachineClass.EDGE_TOOL));
            boolean known = answer.survey().answer(SurveyField.SETTING).isKnown();
            assertThat(answer.status()).isEqualTo(known ? Status.IMPASSE : Status.UNDECIDED);
            assertThat(answer.impasses())
                    .allSatisfy(impasse -> assertThat(rules(impasse)).contains("MAC-004"));
        }
    }

    /** Common practice, no source. */
    @Test
    void propane_may_cut_concrete_outdoors_and_never_stone() {
        Plan concrete = plan(with(
                TradeFloors.unevenConcrete().set(SurveyField.SETTING, Setting.OUTDOORS),
                MachineClass.PROPANE_MACHINE,
                MachineClass.EDGE_TOOL));
        assertThat(field(concrete)).extracting(PlannedStep::machine).containsOnly(MachineClass.PROPANE_MACHINE);

        Recommendation granite = recommend(with(
                Floors.unremarkable().set(SurveyField.SETTING, Setting.OUTDOORS),
                MachineClass.PROPANE_MACHINE,
                MachineClass.EDGE_TOOL));
        assertThat(granite.status()).isEqualTo(Status.IMPASSE);
    }

    /** Common practice, no source. */
    @Test
    void a_penetrating_sealer_goes_where_the_stone_takes_it_and_not_on_dense_polished_granite() {
        for (WaterDrop takes : List.of(WaterDrop.DARKENS_SLOWLY, WaterDrop.DARKENS_AT_ONCE)) {
            assertThat(plan(Floors.unremarkable().set(SurveyField.WATER_DROP, takes))
                            .sealer())
                    .isEqualTo(Sealer.IMPREGNATOR);
        }
        Recommendation dense = recommend(Floors.unremarkable());
        assertThat(dense.plan().orElseThrow().sealer()).isEqualTo(Sealer.NONE);
        assertThat(dense.decision(Topics.SEALER, Subject.FLOOR).orElseThrow().won())
                .extracting(Reason::rule)
                .containsExactly("SEA-003");
    }

    /** Common practice, no source. */
    @Test
    void the_pad_of_the_last_grit_serves_upkeep_and_touch_up() {
        assertThat(REFRESH.upkeep()).contains(Upkeep.LAST_PAD_UPKEEP, Upkeep.LANE_TOUCH_UP);
    }

    /** Common practice, no source. */
    @Test
    void a_scratch_that_a_nail_feels_starts_a_grade_coarser_on_granite_than_on_marble() {
        FloorSurvey.Builder granite = Floors.damaged(Floors.scratched(ScratchClass.FELT_BY_NAIL, 20));
        FloorSurvey.Builder marble = Floors.calciteMarble(Floors.scratched(ScratchClass.FELT_BY_NAIL, 20))
                .set(SurveyField.GOAL, Goal.POLISH);
        assertThat(grades(field(plan(granite)))).startsWith("resin-100");
        assertThat(grades(field(plan(marble)))).startsWith("resin-200");
    }

    /** Common practice, no source. */
    @Test
    void one_bad_scratch_does_not_decide_a_large_floor() {
        Plan plan = plan(Floors.damaged(Floors.dull(80), Floors.scratched(ScratchClass.DEEP, 1)));
        assertThat(grades(field(plan))).startsWith("resin-800");
        assertThat(plan.repairs()).containsExactly(stoneprocess.core.topic.Repair.LOCAL_SCRATCHES);
    }

    private static List<String> rules(Impasse<?> impasse) {
        return impasse.vetoes().stream().map(Reason::rule).toList();
    }
}
