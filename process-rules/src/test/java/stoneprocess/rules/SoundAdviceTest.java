package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static stoneprocess.rules.TradeFloors.field;
import static stoneprocess.rules.TradeFloors.grades;
import static stoneprocess.rules.TradeFloors.plan;
import static stoneprocess.rules.TradeFloors.recommend;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
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
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.Bed;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.EtchClass;
import stoneprocess.core.survey.Face;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.LaboratoryResult;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.StoneColour;
import stoneprocess.core.survey.StoneMix;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WaterDrop;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Upkeep;
import stoneprocess.core.topic.WaterLevel;

/** Advice to which a seasoned restorer would object if it were otherwise. Common practice, no source, but where named. */
class SoundAdviceTest {
    @Test
    void a_floor_sold_as_marble_and_proved_by_two_tests_takes_a_polish() {
        FloorSurvey.Builder marble = Floors.calciteMarble(Floors.scratched(ScratchClass.FELT_BY_NAIL, 20))
                .set(SurveyField.STONE_NAME, "marble")
                .set(SurveyField.GOAL, Goal.POLISH);
        assertThat(recommend(marble).status()).isEqualTo(Status.PLANNED);
        assertThat(grades(field(plan(marble)))).endsWith("resin-3000");
    }

    @ParameterizedTest
    @CsvSource({"NOT_DARKENED, PLANNED", "DARKENS_SLOWLY, IMPASSE", "DARKENS_AT_ONCE, IMPASSE"})
    void dense_limestone_takes_a_polish_and_porous_limestone_does_not(WaterDrop drop, Status status) {
        FloorSurvey.Builder limestone = Floors.calciteMarble(Floors.scratched(ScratchClass.FELT_BY_NAIL, 20))
                .set(SurveyField.STONE_NAME, "limestone")
                .set(SurveyField.FINISH_NOW, Finish.HONE)
                .set(SurveyField.WATER_DROP, drop)
                .set(SurveyField.GOAL, Goal.POLISH);
        Recommendation answer = recommend(limestone);
        assertThat(answer.status()).isEqualTo(status);
        if (status == Status.IMPASSE) {
            assertThat(answer.counterOffers()).anySatisfy(offer -> {
                assertThat(offer.kind()).isEqualTo(OfferKind.LOWER_FINISH);
                assertThat(offer.keys()).contains(Finish.SATIN.key());
            });
        }
    }

    @Test
    void limestone_whose_porosity_nobody_tested_is_asked_for_a_water_drop() {
        Recommendation answer = recommend(Floors.calciteMarble(Floors.scratched(ScratchClass.FELT_BY_NAIL, 20))
                .set(SurveyField.STONE_NAME, "limestone")
                .set(SurveyField.FINISH_NOW, Finish.HONE)
                .unknown(SurveyField.WATER_DROP)
                .set(SurveyField.GOAL, Goal.POLISH));
        assertThat(answer.status()).isEqualTo(Status.UNDECIDED);
        assertThat(answer.impasses().get(0).untilKnown()).isTrue();
        assertThat(answer.questions()).extracting(Question::field).contains("stone.water-drop");
    }

    @Test
    void encaustic_tile_takes_no_polish_however_dense_it_seems() {
        Recommendation answer = recommend(Floors.calciteMarble(Floors.dull(80))
                .set(SurveyField.STONE_NAME, "encaustic-cement-tile")
                .set(SurveyField.GOAL, Goal.POLISH));
        assertThat(answer.status()).isEqualTo(Status.IMPASSE);
        assertThat(answer.impasses().get(0).vetoes()).extracting(Reason::rule).containsExactly("FIN-003");
    }

    @Test
    void a_pale_ground_does_not_clear_talc_rock_of_fibres() {
        Recommendation answer = recommend(FloorSurvey.builder("pale, soft, unnamed")
                .set(SurveyField.COLOUR, StoneColour.PALE)
                .set(SurveyField.ACID_DROP, AcidDrop.NO_REACTION)
                .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED));
        assertThat(answer.values(Topics.STONE, Subject.FLOOR)).contains(Family.SOAPSTONE);
        assertThat(answer.warnings()).extracting(SafetyWarning::hazard).contains(Hazard.FIBROUS_STONE);
        assertThat(answer.questions()).extracting(Question::field).contains("stone.laboratory");
    }

    @ParameterizedTest
    @CsvSource({
        "serpentine, NOT_SAMPLED, REFUSED",
        "serpentine, FIBRES_FOUND, REFUSED",
        "soapstone, NOT_SAMPLED, REFUSED"
    })
    void stone_that_may_hold_fibres_is_not_cut_until_a_laboratory_has_cleared_it(
            String name, LaboratoryResult result, Status status) {
        assertThat(recommend(fibrous(name).set(SurveyField.LABORATORY, result)).status())
                .isEqualTo(status);
    }

    @Test
    void cleared_serpentine_is_cut_with_little_water_and_no_metal() {
        Plan plan = plan(fibrous("serpentine").set(SurveyField.LABORATORY, LaboratoryResult.FREE_OF_FIBRES));
        assertThat(field(plan)).isNotEmpty().allSatisfy(step -> {
            assertThat(step.water()).isEqualTo(WaterLevel.SCANT);
            assertThat(step.grade().bond()).isNotEqualTo(Bond.METAL);
        });
    }

    private static FloorSurvey.Builder fibrous(String name) {
        return Floors.damaged(Floors.dull(80))
                .set(SurveyField.STONE_NAME, name)
                .set(SurveyField.COLOUR, StoneColour.GREEN)
                .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                .set(SurveyField.FINISH_NOW, Finish.HONE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"brick", "porcelain"})
    void fired_tile_is_never_planned_to_be_cut_whatever_is_still_unknown(String name) {
        for (FloorSurvey.Builder floor : List.of(
                fired(name),
                fired(name).unknown(SurveyField.SOUNDING),
                fired(name).unknown(SurveyField.HAZARDOUS_LAYER),
                fired(name).set(SurveyField.HISTORIC, Historic.YES),
                fired(name).set(SurveyField.MIX, StoneMix.MIXED_HARDNESS))) {
            assertNothingIsCut(plan(floor), recommend(floor));
        }
        assertThat(recommend(fired(name)).status()).isEqualTo(Status.PLANNED);
        assertThat(recommend(fired(name).unknown(SurveyField.SOUNDING)).status())
                .isEqualTo(Status.PROVISIONAL);
    }

    @Test
    void a_cleft_face_is_never_planned_to_be_cut_while_the_work_is_held() {
        FloorSurvey.Builder slate = Floors.damaged(Floors.dull(80))
                .set(SurveyField.STONE_NAME, "slate")
                .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                .set(SurveyField.FACE, Face.CLEFT)
                .set(SurveyField.FINISH_NOW, Finish.HONE)
                .set(SurveyField.HISTORIC, Historic.YES);
        assertThat(recommend(slate).status()).isEqualTo(Status.PROVISIONAL);
        assertNothingIsCut(plan(slate), recommend(slate));
        assertThat(plan(slate).tasks()).contains(Task.CONSULT_CONSERVATOR);
    }

    private static FloorSurvey.Builder fired(String name) {
        return Floors.damaged(Floors.dull(80)).set(SurveyField.STONE_NAME, name);
    }

    private static void assertNothingIsCut(Plan plan, Recommendation answer) {
        assertThat(plan.tracks()).isEmpty();
        assertThat(plan.testArea()).isEqualTo(TestArea.NOT_NEEDED);
        assertThat(plan.upkeep()).doesNotContain(Upkeep.LANE_TOUCH_UP, Upkeep.LAST_PAD_UPKEEP);
        assertThat(answer.warnings()).extracting(SafetyWarning::hazard).doesNotContain(Hazard.SILICA_DUST);
    }

    @Test
    void the_work_waits_until_the_owner_has_said_what_finish_is_wanted() {
        Recommendation answer = recommend(
                Floors.damaged(Floors.scratched(ScratchClass.FELT_BY_NAIL, 20)).unknown(SurveyField.GOAL));
        assertThat(answer.status()).isEqualTo(Status.PROVISIONAL);
        assertThat(answer.questions()).extracting(Question::field).contains("owner.goal");
        assertThat(answer.plan().orElseThrow().finish()).contains(Finish.HONE);
    }

    @Test
    void a_high_gloss_on_dolomite_is_finished_with_oxide_and_serpentine_with_diamond_only() {
        FloorSurvey.Builder dolomite = Floors.calciteMarble(Floors.scratched(ScratchClass.FELT_BY_NAIL, 20))
                .set(SurveyField.STONE_NAME, "dolomite-marble")
                .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_POWDER)
                .set(SurveyField.GOAL, Goal.HIGH_GLOSS);
        assertThat(plan(dolomite).polishingAgent()).isEqualTo(PolishingAgent.NEUTRAL_OXIDE);
        assertThat(plan(fibrous("serpentine")
                                .set(SurveyField.LABORATORY, LaboratoryResult.FREE_OF_FIBRES)
                                .set(SurveyField.GOAL, Goal.HIGH_GLOSS))
                        .polishingAgent())
                .isEqualTo(PolishingAgent.NONE);
    }

    @ParameterizedTest
    @CsvSource({"SCRATCHED", "NOT_SCRATCHED"})
    void sandstone_is_honed_to_200_and_gets_no_weight_on_its_weak_binder(ScriberTest scriber) {
        Plan plan = plan(Floors.damaged(Floors.scratched(ScratchClass.FELT_BY_NAIL, 20))
                .set(SurveyField.STONE_NAME, "sandstone")
                .set(SurveyField.SCRIBER, scriber)
                .set(SurveyField.FINISH_NOW, Finish.HONE)
                .set(SurveyField.GOAL, Goal.HONE)
                .set(SurveyField.WATER_DROP, WaterDrop.DARKENS_AT_ONCE));
        assertThat(grades(field(plan))).containsExactly("resin-200");
        assertThat(field(plan)).extracting(PlannedStep::weight).containsOnly(AddedWeight.NONE);
        assertThat(plan.sealer()).isEqualTo(Sealer.IMPREGNATOR);
    }

    @Test
    void calcite_cemented_quartzite_may_fizz_on_powder() {
        Recommendation answer = recommend(Floors.unremarkable()
                .set(SurveyField.STONE_NAME, "quartzite")
                .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_POWDER));
        assertThat(answer.values(Topics.STONE, Subject.FLOOR)).containsExactly(Family.QUARTZITE);
        assertThat(answer.plan().orElseThrow().upkeep()).contains(Upkeep.NO_ACID, Upkeep.NO_FLUORIDE);
    }

    @Test
    void granite_that_fizzes_is_not_granite_and_the_work_is_held() {
        Recommendation answer = recommend(Floors.unremarkable()
                .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                .set(SurveyField.GOAL, Goal.HONE));
        assertThat(answer.status()).isEqualTo(Status.PROVISIONAL);
        assertThat(answer.decision(Topics.VERDICT, Subject.FLOOR).orElseThrow().won())
                .extracting(Reason::rule)
                .contains("GON-009");
        assertThat(answer.values(Topics.BONDS, Subject.FLOOR)).doesNotContain(Bond.METAL);
    }

    @Test
    void a_polish_on_a_stone_that_nobody_knows_waits_for_the_tests() {
        Recommendation answer = recommend(Floors.damaged(Floors.scratched(ScratchClass.SEEN, 20))
                .unknown(SurveyField.STONE_NAME)
                .unknown(SurveyField.ACID_DROP)
                .unknown(SurveyField.SCRIBER)
                .set(SurveyField.GOAL, Goal.POLISH));
        assertThat(answer.status()).isEqualTo(Status.UNDECIDED);
        assertThat(answer.impasses())
                .allSatisfy(impasse -> assertThat(impasse.untilKnown()).isTrue());
        assertThat(answer.questions())
                .extracting(Question::field)
                .contains("stone.name", "stone.acid-drop", "stone.scriber");
    }

    @Test
    void no_reaction_on_a_coated_face_does_not_make_marble_a_silicate() {
        Recommendation answer = recommend(Floors.calciteMarble(Floors.scratched(ScratchClass.SEEN, 20))
                .set(SurveyField.ACID_DROP, AcidDrop.NO_REACTION)
                .set(SurveyField.COATING, Coating.CRYSTALLISED));
        assertThat(answer.values(Topics.STONE, Subject.FLOOR)).containsExactly(Family.CALCITE_MARBLE);
    }

    @Test
    void one_test_alone_allows_no_metal_and_offers_the_second_test() {
        FloorSurvey.Builder deep =
                Floors.damaged(Floors.scratched(ScratchClass.DEEP, 20)).unknown(SurveyField.ACID_DROP);
        Recommendation answer = recommend(deep);
        assertThat(answer.status()).isEqualTo(Status.UNDECIDED);
        assertThat(answer.values(Topics.BONDS, Subject.FLOOR)).doesNotContain(Bond.METAL);
        assertThat(answer.values(Topics.PREPARATION, Subject.FLOOR)).contains(Task.TEST_STONE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"GYPSUM_SCREED", "RAISED_ACCESS", "WOOD"})
    void a_bed_that_water_ruins_gets_little_of_it(Bed bed) {
        assertThat(field(plan(Floors.unremarkable().set(SurveyField.BED, bed))))
                .isNotEmpty()
                .extracting(PlannedStep::water)
                .containsOnly(WaterLevel.SCANT);
    }

    /** A quarter of the stone at most: 5 mm of 20 mm, 2 mm of 8 mm. */
    @ParameterizedTest
    @CsvSource({"20, 5, PLANNED", "20, 5.1, IMPASSE", "8, 6, IMPASSE", "30, 6, PLANNED"})
    void lippage_is_not_ground_off_where_that_takes_more_than_a_quarter_of_the_stone(
            double thickness, double lippage, Status status) {
        Recommendation answer = recommend(Floors.damaged(Floors.lipped(lippage, 50))
                .set(SurveyField.THICKNESS, Length.of(thickness, Unit.MILLIMETRE)));
        assertThat(answer.status()).isEqualTo(status);
        if (status == Status.UNDECIDED) {
            assertThat(answer.counterOffers())
                    .extracting(CounterOffer::kind)
                    .contains(OfferKind.LIFT_AND_RELAY, OfferKind.REPLACE_PIECES);
        }
    }

    @Test
    void a_hollow_floor_is_cut_lightly_and_without_metal() {
        Recommendation answer = recommend(Floors.unremarkable().set(SurveyField.SOUNDING, Sounding.HOLLOW));
        Plan plan = answer.plan().orElseThrow();
        assertThat(plan.tasks()).contains(Task.FIX_HOLLOW);
        assertThat(answer.values(Topics.BONDS, Subject.FLOOR)).doesNotContain(Bond.METAL);
        assertThat(field(plan)).extracting(PlannedStep::weight).containsOnly(AddedWeight.REDUCED);
    }

    /** 29 CFR 1926.1101. */
    @ParameterizedTest
    @CsvSource({"UNTESTED, REFUSED", "CONFIRMED, REFUSED", "CLEARED, PLANNED"})
    void a_suspect_layer_stops_the_work_until_it_is_cleared(HazardousLayer layer, Status status) {
        Recommendation answer = recommend(Floors.unremarkable().set(SurveyField.HAZARDOUS_LAYER, layer));
        assertThat(answer.status()).isEqualTo(status);
        assertThat(answer.warnings().stream().map(SafetyWarning::hazard).anyMatch(Hazard.HAZARDOUS_LAYER::equals))
                .isEqualTo(status == Status.REFUSED);
    }

    @Test
    void etches_on_a_silicate_are_a_contradiction() {
        Recommendation answer =
                recommend(Floors.damaged(Floors.etched(EtchClass.ROUGH, 20)).set(SurveyField.GOAL, Goal.HONE));
        assertThat(answer.plan()).isEmpty();
        assertThat(answer.impasses())
                .filteredOn(impasse -> impasse.topic() == Topics.FIRST_CUT)
                .isNotEmpty()
                .allMatch(Impasse::untilKnown);
        assertThat(answer.decision(Topics.VERDICT, Subject.FLOOR).orElseThrow().won())
                .extracting(Reason::rule)
                .contains("GON-009");
    }

    /** Italian decree of 14 May 1996, Annex 4, on green stones: unknown green stone is not cut before a laboratory has cleared it. */
    @Test
    void green_marble_that_may_be_serpentine_is_refused_until_a_laboratory_clears_it() {
        FloorSurvey.Builder green = Floors.calciteMarble(Floors.dull(50))
                .set(SurveyField.STONE_NAME, "green-marble")
                .set(SurveyField.COLOUR, StoneColour.GREEN);
        assertThat(recommend(green).status()).isEqualTo(Status.REFUSED);
        assertThat(recommend(green.set(SurveyField.LABORATORY, LaboratoryResult.FREE_OF_FIBRES))
                        .status())
                .isEqualTo(Status.PLANNED);
    }

    @Test
    void a_damp_floor_gets_the_usual_water_at_most_at_every_grade_and_is_sealed_once_dry() {
        Recommendation answer = recommend(Floors.calciteMarble(Floors.scratched(ScratchClass.FELT_BY_NAIL, 40))
                .set(SurveyField.WATER_DROP, WaterDrop.DARKENS_SLOWLY)
                .set(SurveyField.MOISTURE, Share.of(6, Unit.PERCENT)));
        Plan plan = answer.plan().orElseThrow();
        assertThat(field(plan).get(0).water()).isEqualTo(WaterLevel.MODERATE);
        assertThat(plan.tasks()).contains(Task.LET_DRY);
        assertThat(plan.sealer()).isEqualTo(Sealer.IMPREGNATOR);
        assertThat(answer.warnings()).extracting(SafetyWarning::hazard).contains(Hazard.SEALER_VAPOUR);
    }

    @Test
    void stone_in_which_a_laboratory_found_fibres_is_refused_whatever_it_is_called() {
        for (String name : List.of("green-marble", "serpentine", "grey-granite")) {
            Recommendation answer = recommend(Floors.unremarkable()
                    .set(SurveyField.STONE_NAME, name)
                    .set(SurveyField.LABORATORY, LaboratoryResult.FIBRES_FOUND));
            assertThat(answer.status()).as(name).isEqualTo(Status.REFUSED);
        }
    }

    @Test
    void stone_that_a_laboratory_cleared_carries_no_warning_of_fibres() {
        Recommendation answer = recommend(Floors.calciteMarble(Floors.dull(50))
                .set(SurveyField.STONE_NAME, "green-marble")
                .set(SurveyField.COLOUR, StoneColour.GREEN)
                .set(SurveyField.LABORATORY, LaboratoryResult.FREE_OF_FIBRES));
        assertThat(answer.warnings()).extracting(SafetyWarning::hazard).doesNotContain(Hazard.FIBROUS_STONE);
    }

    @Test
    void gypsum_is_left_to_a_specialist() {
        Recommendation answer = recommend(Floors.damaged(Floors.dull(50))
                .set(SurveyField.STONE_NAME, "gypsum")
                .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                .set(SurveyField.WATER_DROP, WaterDrop.DARKENS_AT_ONCE));
        assertThat(answer.status()).isEqualTo(Status.REFUSED);
        assertThat(answer.counterOffers()).extracting(CounterOffer::kind).contains(OfferKind.SPECIALIST_CLEANING);
        assertThat(answer.values(Topics.PREPARATION, Subject.FLOOR)).contains(Task.CALL_SPECIALIST);
    }

    /** Drawn: the floor is refused whatever a closer name would say. */
    @Test
    void a_refused_stone_whose_name_and_tests_are_told_is_not_asked_for_its_name_again() {
        Recommendation answer = recommend(FloorSurvey.builder("drawn")
                .set(SurveyField.STONE_NAME, "gypsum")
                .set(SurveyField.ACID_DROP, AcidDrop.NO_REACTION)
                .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                .set(SurveyField.COLOUR, StoneColour.MIXED));
        assertThat(answer.status()).isEqualTo(Status.REFUSED);
        assertThat(answer.questions())
                .extracting(Question::field)
                .contains("owner.goal")
                .doesNotContain("stone.name");
    }

    /** Common practice, no source: a refresh that lacks its first grades was started too fine. */
    @Test
    void a_refresh_is_not_shortened_because_its_first_grades_are_not_on_hand() {
        GritSequence all = GritSequence.standard();
        Recommendation answer = recommend(Floors.unremarkable()
                .set(SurveyField.GRADES, List.of(all.get("resin-1500", ""), all.get("resin-3000", ""))));
        assertThat(answer.status()).isEqualTo(Status.IMPASSE);
        assertThat(answer.counterOffers()).extracting(CounterOffer::kind).contains(OfferKind.GET_GRADES);
    }

    @Test
    void a_few_pitted_etches_are_cut_out_and_not_only_blended() {
        Plan plan = recommend(Floors.calciteMarble(Floors.dull(60), Floors.etched(EtchClass.PITTED, 2)))
                .plan()
                .orElseThrow();
        assertThat(plan.repairs()).containsExactly(Repair.POWDER_FIRST, Repair.POWDER_ON_THE_FIELD, Repair.DEEP_ETCHES);
    }
}
