package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static stoneprocess.rules.TradeFloors.field;
import static stoneprocess.rules.TradeFloors.grades;
import static stoneprocess.rules.TradeFloors.recommend;
import static stoneprocess.rules.TradeFloors.steps;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Status;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Acceptance;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Check;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.SlurryRoute;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Upkeep;
import stoneprocess.core.topic.Verdict;
import stoneprocess.core.topic.WaterLevel;

/**
 * Eight situations that the plan must get right, each with everything that a crew would act on. The outcomes are common
 * practice, no source, but where a line names one.
 */
class EightFloorsTest {
    @Test
    void a_worn_flat_hard_floor_is_refreshed() {
        Recommendation answer = Advisor.standard().recommend(Floors.wornGranite());
        Plan plan = planned(answer, Status.PLANNED, Verdict.GO);

        assertThat(firstCut(answer)).isEqualTo(Cut.REFRESH);
        assertThat(plan.finish()).contains(Finish.POLISH);
        assertPath(plan, "resin-800", "resin-1500", "resin-3000");
        assertThat(plan.tasks())
                .containsExactly(Task.MASK, Task.PROTECT_ROUTE, Task.CLOSE_OFF, Task.PLAN_BAYS, Task.PLACE_FOR_SLURRY);
        assertThat(plan.repairs()).isEmpty();
        assertThat(plan.testArea()).isEqualTo(TestArea.REQUIRED);
        assertThat(field(plan)).extracting(PlannedStep::machine).containsOnly(MachineClass.PLANETARY);
        assertThat(steps(plan, TrackKind.EDGE)).extracting(PlannedStep::machine).containsOnly(MachineClass.EDGE_TOOL);
        assertThat(steps(plan, TrackKind.EDGE)).extracting(PlannedStep::weight).containsOnly(AddedWeight.NONE);
        assertThat(plan.polishingAgent()).isEqualTo(PolishingAgent.NEUTRAL_OXIDE);
        assertThat(plan.densifier()).isEqualTo(Densifier.NONE);
        assertThat(plan.sealer()).isEqualTo(Sealer.NONE);
        assertThat(plan.acceptances())
                .containsExactly(
                        Acceptance.EDGES_AND_VEINS_DIFFER,
                        Acceptance.CUT_CHANGES_LOOK,
                        Acceptance.FACTORY_POLISH_MAY_NOT_BE_MATCHED,
                        Acceptance.FINISH_IS_MEASURED,
                        Acceptance.GAIN_OVER_BASELINE,
                        Acceptance.LEAVING_IT_IS_AN_OPTION);
        assertThat(plan.finishTasks())
                .containsExactly(
                        FinishTask.SCRUB_AND_RINSE,
                        FinishTask.HAND_WIPE,
                        FinishTask.MEASURE_SLIP,
                        FinishTask.REOPEN,
                        FinishTask.HAND_OVER);
        assertThat(plan.upkeep())
                .containsExactly(
                        Upkeep.DUST_MOP,
                        Upkeep.NEUTRAL_CLEANER,
                        Upkeep.MATS,
                        Upkeep.LAST_PAD_UPKEEP,
                        Upkeep.PAD_WEEKLY,
                        Upkeep.LANE_TOUCH_UP,
                        Upkeep.NO_ACID,
                        Upkeep.NO_FLUORIDE,
                        Upkeep.WATCH_GLOSS);
        assertThat(hazards(answer))
                .containsExactly(
                        Hazard.SILICA_DUST,
                        Hazard.ELECTRICITY,
                        Hazard.WET_FLOOR,
                        Hazard.NOISE,
                        Hazard.VIBRATION,
                        Hazard.LIFTING,
                        Hazard.OXIDE_DUST,
                        Hazard.SLURRY,
                        Hazard.WET_SLIP_IN_USE,
                        Hazard.BYSTANDERS);
        assertThat(answer.questions()).extracting(Question::field).containsExactly("owner.gloss", "readings");
    }

    @Test
    void scratched_and_etched_marble_with_one_lipped_tile_is_relaid_there_and_honed_without_metal() {
        Recommendation answer = recommend(TradeFloors.etchedMarble());
        Plan plan = planned(answer, Status.PLANNED, Verdict.GO);

        assertThat(firstCut(answer)).isEqualTo(Cut.HONE);
        assertThat(plan.finish()).contains(Finish.POLISH);
        assertPath(plan, "resin-200", "resin-400", "resin-800", "resin-1500", "resin-3000");
        assertThat(field(plan)).noneMatch(step -> step.grade().bond() == Bond.METAL);
        assertThat(plan.tasks())
                .containsExactly(
                        Task.BAR_TRIPS,
                        Task.MASK,
                        Task.PROTECT_ROUTE,
                        Task.CLOSE_OFF,
                        Task.PLAN_BAYS,
                        Task.PLACE_FOR_SLURRY,
                        Task.RELAY_LIPPED);
        assertThat(plan.repairs()).containsExactly(Repair.LOCAL_LIPPAGE);
        assertThat(field(plan)).extracting(PlannedStep::weight).containsOnly(AddedWeight.REDUCED);
        assertThat(plan.sealer()).isEqualTo(Sealer.NONE);
        assertThat(plan.densifier()).isEqualTo(Densifier.NONE);
        assertThat(plan.acceptances()).contains(Acceptance.SEALER_STOPS_NO_ETCHING, Acceptance.CUT_CHANGES_LOOK);
        assertThat(plan.upkeep())
                .contains(Upkeep.NO_ACID, Upkeep.NO_NIGHTLY_DIAMOND, Upkeep.LANE_TOUCH_UP)
                .doesNotContain(Upkeep.LAST_PAD_UPKEEP);
        assertThat(hazards(answer)).contains(Hazard.SILICA_DUST).doesNotContain(Hazard.ALKALINE_SLURRY);
        assertThat(reasons(answer, Topics.FIRST_CUT)).containsExactly("CUT-003", "CUT-009");
    }

    /** GSA 0940010R for the trial; NTMA technical seminar 2012 for 120 to 200 and the sealer. */
    @Test
    void waxed_terrazzo_waits_for_a_cleaning_trial_and_would_end_at_200_and_be_sealed() {
        Recommendation answer = recommend(TradeFloors.waxedTerrazzo());
        Plan plan = planned(answer, Status.PROVISIONAL, Verdict.HOLD);

        assertThat(plan.tasks())
                .containsExactly(
                        Task.TRY_ON_STRIP,
                        Task.CLEANING_TRIAL,
                        Task.TERRAZZO_TRIALS,
                        Task.MASK,
                        Task.PROTECT_ROUTE,
                        Task.ARRANGE_FRESH_AIR,
                        Task.CLOSE_OFF,
                        Task.PLAN_BAYS,
                        Task.PLACE_FOR_SLURRY,
                        Task.STRIP_COATING);
        assertThat(plan.finish()).contains(Finish.HONE);
        assertPath(plan, "resin-200");
        assertThat(plan.sealer()).isEqualTo(Sealer.IMPREGNATOR);
        assertThat(plan.densifier()).isEqualTo(Densifier.NONE);
        assertThat(plan.acceptances()).contains(Acceptance.SEALER_STOPS_NO_ETCHING);
        assertThat(plan.slurry())
                .containsExactly(
                        SlurryRoute.COLLECT_AND_SETTLE, SlurryRoute.NOTHING_TO_STORM_DRAIN, SlurryRoute.CHECK_PH);
        assertThat(plan.finishTasks())
                .containsExactly(
                        FinishTask.SCRUB_AND_RINSE,
                        FinishTask.NEUTRALISE,
                        FinishTask.HAND_WIPE,
                        FinishTask.REOPEN,
                        FinishTask.HAND_OVER);
        assertThat(plan.upkeep()).contains(Upkeep.NO_FINER_PAD, Upkeep.NO_ACID);
        assertThat(hazards(answer)).contains(Hazard.CAUSTIC_STRIPPER, Hazard.ALKALINE_SLURRY);
    }

    @Test
    void scratched_concrete_is_honed_densified_and_sealed() {
        Recommendation answer = recommend(TradeFloors.concrete(Floors.scratched(ScratchClass.FELT_BY_COIN, 20)));
        Plan plan = planned(answer, Status.PLANNED, Verdict.GO);

        assertThat(firstCut(answer)).isEqualTo(Cut.GRIND);
        assertThat(plan.finish()).contains(Finish.HONE);
        assertPath(plan, "metal-50", "metal-100", "transition-100", "resin-100", "resin-200", "resin-400");
        assertThat(plan.densifier()).isEqualTo(Densifier.AFTER_LAST_GRIT);
        assertThat(plan.sealer()).isEqualTo(Sealer.IMPREGNATOR);
        assertThat(plan.slurry()).contains(SlurryRoute.CHECK_PH);
        assertThat(field(plan).get(5).checks())
                .contains(Check.AGAINST_TEST_AREA, Check.READ_60, Check.READ_85)
                .doesNotContain(Check.READ_20);
        assertThat(plan.upkeep()).contains(Upkeep.NO_FINER_PAD);
        assertThat(hazards(answer))
                .contains(Hazard.SILICA_DUST, Hazard.ALKALINE_SLURRY, Hazard.DENSIFIER_ALKALI, Hazard.SLURRY);
    }

    @Test
    void a_floor_that_has_what_is_wanted_is_cleaned_and_kept_and_nothing_is_cut() {
        Recommendation answer = recommend(TradeFloors.soundGranite());
        Plan plan = planned(answer, Status.PLANNED, Verdict.CLEAN_ONLY);

        assertThat(plan.tracks()).isEmpty();
        assertThat(plan.finish()).isEmpty();
        assertThat(plan.testArea()).isEqualTo(TestArea.NOT_NEEDED);
        assertThat(plan.slurry()).containsExactly(SlurryRoute.NOTHING_TO_STORM_DRAIN);
        assertThat(plan.sealer()).isEqualTo(Sealer.NONE);
        assertThat(plan.finishTasks())
                .containsExactly(
                        FinishTask.VACUUM_GRIT,
                        FinishTask.WASH_AND_DWELL,
                        FinishTask.SCRUB_AND_RINSE,
                        FinishTask.CHECK_RINSE,
                        FinishTask.HAND_WIPE,
                        FinishTask.REOPEN,
                        FinishTask.HAND_OVER);
        assertThat(plan.upkeep())
                .containsExactly(
                        Upkeep.DUST_MOP,
                        Upkeep.NEUTRAL_CLEANER,
                        Upkeep.MATS,
                        Upkeep.NO_ACID,
                        Upkeep.NO_FLUORIDE,
                        Upkeep.WATCH_GLOSS);
        assertThat(hazards(answer)).containsExactly(Hazard.ELECTRICITY, Hazard.WET_FLOOR, Hazard.BYSTANDERS);
        assertThat(answer.questions()).extracting(Question::field).containsExactly("readings");
    }

    @Test
    void a_floor_whose_pieces_rock_is_refused_with_the_cause() {
        Recommendation answer = recommend(TradeFloors.looseTiles());

        assertThat(answer.status()).isEqualTo(Status.REFUSED);
        assertThat(answer.plan()).isEmpty();
        assertThat(answer.refusals()).extracting(Reason::rule).containsExactly("GON-001");
        assertThat(answer.refusals().get(0).facts()).singleElement().satisfies(fact -> {
            assertThat(fact.name()).isEqualTo("TapSound");
            assertThat(fact.mayBe()).containsExactly("loose");
            assertThat(fact.fields()).containsExactly("build-up.sounding");
        });
        assertThat(answer.counterOffers()).extracting(CounterOffer::kind).containsExactly(OfferKind.LIFT_AND_RELAY);
        assertThat(answer.values(Topics.FIRST_CUT, Subject.OPEN_FIELD)).isEmpty();
    }

    @Test
    void thin_stone_with_deep_scratches_and_a_high_gloss_wanted_is_an_impasse_with_ways_out() {
        Recommendation answer = recommend(TradeFloors.thinGranite());

        assertThat(answer.status()).isEqualTo(Status.IMPASSE);
        assertThat(answer.plan()).isEmpty();
        assertThat(answer.impasses()).extracting(Impasse::subject).containsExactly(Subject.OPEN_FIELD, Subject.EDGE);
        Impasse<?> impasse = answer.impasses().get(0);
        assertThat(impasse.topic()).isEqualTo(Topics.FIRST_CUT);
        assertThat(impasse.needs()).extracting(Reason::rule).containsExactly("CUT-007");
        assertThat(impasse.vetoes()).extracting(Reason::rule).containsExactly("CUT-020", "CUT-021");
        assertThat(impasse.untilKnown()).isFalse();
        assertThat(answer.counterOffers())
                .containsExactly(
                        new CounterOffer<>(
                                OfferKind.KEEP_THE_MARKS,
                                Topics.FIRST_CUT,
                                List.of(Cut.COARSE_HONE),
                                List.of("CUT-007")),
                        new CounterOffer<>(OfferKind.LOCAL_REPAIR, Topics.FIRST_CUT, List.of(), List.of("CUT-007")),
                        new CounterOffer<>(
                                OfferKind.REPLACE_PIECES, Topics.FIRST_CUT, List.of(), List.of("CUT-007", "CUT-021")),
                        new CounterOffer<>(OfferKind.LEAVE_IT, Topics.FIRST_CUT, List.of(), List.of()));
        assertThat(hazards(answer)).contains(Hazard.SILICA_DUST);
    }

    @Test
    void a_wholly_unknown_stone_gets_questions_a_test_area_and_a_cautious_provisional_plan() {
        Recommendation answer = Advisor.standard().recommend(Floors.unknownStone());
        Plan plan = planned(answer, Status.PROVISIONAL, Verdict.HOLD);

        assertThat(answer.questions())
                .extracting(Question::field)
                .startsWith("stone.name", "stone.acid-drop", "stone.scriber")
                .contains(
                        "build-up.sounding",
                        "build-up.hazardous-layer",
                        "stone.laboratory",
                        "build-up.thickness",
                        "damages.scratches",
                        "owner.goal")
                .doesNotContain("stone.colour");
        assertThat(plan.testArea()).isEqualTo(TestArea.REQUIRED);
        assertThat(firstCut(answer)).isEqualTo(Cut.NONE);
        assertThat(plan.tracks()).isEmpty();
        assertThat(plan.finish()).contains(Finish.HONE);
        assertThat(answer.values(Topics.BONDS, Subject.FLOOR)).doesNotContain(Bond.METAL);
        assertThat(plan.tasks())
                .contains(Task.TEST_STONE, Task.CLEANING_TRIAL)
                // It is pale: a drop on a broken edge comes first, a laboratory where that leaves a doubt.
                .doesNotContain(Task.CONSULT_CONSERVATOR, Task.STOP_AND_SAMPLE);
        assertThat(plan.polishingAgent()).isEqualTo(PolishingAgent.NONE);
        assertThat(plan.densifier()).isEqualTo(Densifier.NONE);
        assertThat(plan.sealer()).isEqualTo(Sealer.NONE);
        assertThat(plan.upkeep()).contains(Upkeep.NO_ACID, Upkeep.NO_FLUORIDE, Upkeep.NO_NIGHTLY_DIAMOND);
        assertThat(hazards(answer)).containsExactly(Hazard.values());
        assertThat(answer.warnings())
                .filteredOn(warning -> warning.hazard() == Hazard.FIBROUS_STONE)
                .singleElement()
                .extracting(SafetyWarning::certain)
                .isEqualTo(false);
    }

    @Test
    void
            a_dull_floor_that_may_be_terrazzo_is_not_cut_before_it_is_known_and_marble_by_name_would_be_refreshed_gently() {
        FloorSurvey.Builder dull = Floors.unknownStone().toBuilder()
                .zone(Floors.zone("whole", 100, Map.of(DamageKind.WEAR, Floors.dull(80))));
        assertThat(planned(recommend(dull), Status.PROVISIONAL, Verdict.HOLD).tracks())
                .isEmpty();
        Recommendation answer = recommend(dull.set(SurveyField.STONE_NAME, "marble"));
        Plan plan = planned(answer, Status.PROVISIONAL, Verdict.HOLD);
        assertThat(firstCut(answer)).isEqualTo(Cut.REFRESH);
        assertPath(plan, "resin-400");
        assertThat(field(plan)).allSatisfy(step -> {
            assertThat(step.weight()).isEqualTo(AddedWeight.NONE);
            assertThat(step.water()).isEqualTo(WaterLevel.SCANT);
            assertThat(step.machine()).isEqualTo(MachineClass.SINGLE_DISC);
            assertThat(step.litresPerPass()).isEmpty();
        });
    }

    private static Plan planned(Recommendation answer, Status status, Verdict verdict) {
        assertThat(answer.status()).isEqualTo(status);
        assertThat(answer.values(Topics.VERDICT, Subject.FLOOR)).containsExactly(verdict);
        assertThat(answer.refusals()).isEmpty();
        assertThat(answer.impasses()).isEmpty();
        assertThat(answer.counterOffers()).isEmpty();
        return answer.plan().orElseThrow();
    }

    private static void assertPath(Plan plan, String... expected) {
        for (TrackKind track : List.of(TrackKind.OPEN_FIELD, TrackKind.EDGE)) {
            assertThat(grades(steps(plan, track))).as(track.key()).containsExactly(expected);
        }
    }

    private static Cut firstCut(Recommendation answer) {
        return answer.values(Topics.FIRST_CUT, Subject.OPEN_FIELD).get(0);
    }

    private static List<Hazard> hazards(Recommendation answer) {
        return answer.warnings().stream().map(SafetyWarning::hazard).toList();
    }

    private static List<String> reasons(Recommendation answer, stoneprocess.core.topic.Topic<?> topic) {
        Subject subject = topic.scope() == Scope.TRACK ? Subject.OPEN_FIELD : Subject.FLOOR;
        return answer.decision(topic, subject).orElseThrow().won().stream()
                .map(Reason::rule)
                .toList();
    }
}
