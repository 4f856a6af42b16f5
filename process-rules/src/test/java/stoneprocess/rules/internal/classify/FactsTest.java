package stoneprocess.rules.internal.classify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Sign;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.Voltage;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.FibreRisk;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.Damp;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.SizeClass;
import stoneprocess.core.survey.StoneColour;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.tool.Powder;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Verdict;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.feature.BudgetClass;
import stoneprocess.rules.feature.BuildUp;
import stoneprocess.rules.feature.Decided;
import stoneprocess.rules.feature.Equipment;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.FinishGap;
import stoneprocess.rules.feature.GritClass;
import stoneprocess.rules.feature.Identification;
import stoneprocess.rules.feature.OnSite;
import stoneprocess.rules.feature.Site;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.feature.StepEnd;
import stoneprocess.rules.feature.StepOrder;
import stoneprocess.rules.feature.StoneFacts;
import stoneprocess.rules.feature.StoneTraits;
import stoneprocess.rules.feature.SupplyClass;
import stoneprocess.rules.feature.Wishes;
import stoneprocess.rules.internal.review.LogReview;

class FactsTest {
    static Stream<FloorSurvey> floors() {
        return Stream.of(
                Floors.wornGranite(),
                Floors.unknownStone(),
                FloorSurvey.builder("nothing known").build());
    }

    @ParameterizedTest
    @MethodSource("floors")
    void every_line_of_the_table_gives_exactly_one_fact(FloorSurvey survey) {
        List<Object> facts = everyFact(situation(survey));

        for (Class<?> type : Facts.types()) {
            boolean ofLog = type.getEnclosingClass() == OnSite.class;
            assertThat(count(type, facts)).as(type.getSimpleName()).isEqualTo(ofLog ? 0 : expected(type));
        }
        assertThat(facts).allSatisfy(fact -> assertThat(Facts.types()).contains(fact.getClass()));
    }

    @Test
    void every_line_of_the_table_gives_exactly_one_fact_on_a_job_too() {
        Recommendation plan = Advisor.standard().recommend(Floors.wornGranite());
        LogReview review = LogReview.of(plan, new JobLog("nothing noted", List.of()));
        List<Object> facts =
                everyFact(new Situation(plan.survey(), plan.parameters(), plan.sequence(), Optional.of(review)));

        for (Class<?> type : Facts.types()) {
            assertThat(count(type, facts)).as(type.getSimpleName()).isEqualTo(expected(type));
        }
    }

    private static long count(Class<?> type, List<Object> facts) {
        return facts.stream().filter(fact -> fact.getClass() == type).count();
    }

    private static long expected(Class<?> type) {
        Map<Class<?>, Integer> constants = Map.of(
                Step.class, 0,
                Equipment.MachineOnHand.class, MachineClass.values().length,
                Equipment.PowderOnHand.class, Powder.values().length,
                Decided.PowderUse.class, Powder.values().length,
                OnSite.EventStands.class, EventKind.values().length,
                OnSite.BondRun.class, Bond.values().length,
                OnSite.SignSeen.class, Sign.values().length,
                OnSite.Suspected.class, Fault.values().length);
        return constants.getOrDefault(type, 1);
    }

    @Test
    void every_fact_of_an_empty_survey_may_be_anything() {
        Situation nothing = situation(FloorSurvey.builder("nothing known").build());
        assertThat(Facts.after(Optional.empty(), nothing)).allSatisfy(fact -> {
            Feature<?> feature = (Feature<?>) fact;
            assertThat(feature.known()).isNull();
            Class<?> classes = feature.mayBe().iterator().next().getDeclaringClass();
            assertThat(feature.mayBe()).hasSize(classes.getEnumConstants().length);
            assertThat(Facts.matched(fact).known()).isFalse();
        });
    }

    @Test
    void the_space_of_a_type_holds_each_class_by_itself_and_the_one_that_nobody_knows() {
        List<Object> space = Facts.space(StoneTraits.CuttingHardness.class);
        assertThat(space)
                .containsExactly(
                        new StoneTraits.CuttingHardness(Set.of(Hardness.SOFT)),
                        new StoneTraits.CuttingHardness(Set.of(Hardness.MEDIUM)),
                        new StoneTraits.CuttingHardness(Set.of(Hardness.HARD)),
                        new StoneTraits.CuttingHardness(EnumSet.allOf(Hardness.class)));
        assertThat(Facts.space(Equipment.MachineOnHand.class)).hasSize(3 * MachineClass.values().length);
        assertThat(Facts.space(Step.class)).hasSize(3 * 3 * 5 * 3 * 2 * 2).doesNotHaveDuplicates();
    }

    @Test
    void the_space_of_every_type_can_be_recorded_as_matched() {
        for (Class<?> type : Facts.types()) {
            assertThat(Facts.space(type)).isNotEmpty().allSatisfy(fact -> {
                MatchedFact matched = Facts.matched(fact);
                assertThat(matched.mayBe()).isNotEmpty();
                assertThat(matched.fields().isEmpty() && matched.topics().isEmpty())
                        .as("%s comes from somewhere", matched.name())
                        .isFalse();
            });
        }
    }

    @Test
    void a_type_that_is_not_in_the_table_is_refused() {
        assertThatThrownBy(() -> Facts.space(String.class))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("java.lang.String");
    }

    /** Common practice, no source: a quarter of a stone or half a topping, at least 2.5 mm for grinding. */
    @ParameterizedTest
    @CsvSource({
        "GRANITE, 10, AMPLE",
        "GRANITE, 9.99, SMALL",
        "GRANITE, 4.8, SMALL",
        "GRANITE, 4.79, TINY",
        "CEMENT_TERRAZZO, 5, AMPLE",
        "CEMENT_TERRAZZO, 4.99, SMALL",
        "CONCRETE, 10, AMPLE"
    })
    void the_removal_budget_is_a_quarter_of_a_stone_or_half_a_topping(
            Family family, double millimetres, BudgetClass budget) {
        FloorSurvey survey = FloorSurvey.builder("thin")
                .set(SurveyField.THICKNESS, Length.of(millimetres, Unit.MILLIMETRE))
                .build();
        assertThat(only(StoneTraits.RemovalBudget.class, situation(survey, family))
                        .mayBe())
                .containsExactly(budget);
    }

    @Test
    void a_thickness_that_is_enough_for_a_topping_and_not_for_a_stone_leaves_the_budget_open() {
        FloorSurvey survey = FloorSurvey.builder("thin")
                .set(SurveyField.THICKNESS, Length.of(5, Unit.MILLIMETRE))
                .build();
        assertThat(only(StoneTraits.RemovalBudget.class, situation(survey, Family.GRANITE, Family.CEMENT_TERRAZZO))
                        .mayBe())
                .containsExactly(BudgetClass.SMALL, BudgetClass.AMPLE);
    }

    @Test
    void an_unknown_thickness_leaves_the_budget_open() {
        assertThat(only(StoneTraits.RemovalBudget.class, situation(Floors.unknownStone(), Family.GRANITE))
                        .mayBe())
                .containsExactly(BudgetClass.TINY, BudgetClass.SMALL, BudgetClass.AMPLE);
    }

    @Test
    void a_ground_of_unknown_colour_may_be_green() {
        FloorSurvey unknown = FloorSurvey.builder("named only")
                .set(SurveyField.STONE_NAME, "grey-granite")
                .build();
        FloorSurvey mixed =
                unknown.toBuilder().set(SurveyField.COLOUR, StoneColour.MIXED).build();
        FloorSurvey green =
                unknown.toBuilder().set(SurveyField.COLOUR, StoneColour.GREEN).build();
        assertThat(fibres(unknown)).containsExactly(FibreRisk.NONE, FibreRisk.POSSIBLE);
        assertThat(fibres(mixed)).containsExactly(FibreRisk.NONE);
        assertThat(fibres(green)).containsExactly(FibreRisk.POSSIBLE);
    }

    private static Set<FibreRisk> fibres(FloorSurvey survey) {
        return only(StoneTraits.FibreSuspicion.class, situation(survey, Family.GRANITE))
                .mayBe();
    }

    @ParameterizedTest
    @CsvSource({
        "1, 2, AS_DRY_REFERENCE",
        "2, 2, AS_DRY_REFERENCE",
        "2.5, 2, AS_DRY_REFERENCE",
        "2.6, 2, ABOVE_REFERENCE",
        "1.1, 0.6, AS_DRY_REFERENCE"
    })
    void moisture_is_told_against_the_dry_reference_and_half_a_percent_is_allowed(
            double moisture, double reference, Damp damp) {
        FloorSurvey survey = FloorSurvey.builder("damp")
                .set(SurveyField.MOISTURE, Share.of(moisture, Unit.PERCENT))
                .set(SurveyField.DRY_REFERENCE, Share.of(reference, Unit.PERCENT))
                .build();
        assertThat(only(BuildUp.Moisture.class, situation(survey)).mayBe()).containsExactly(damp);
    }

    @Test
    void moisture_without_a_reference_tells_nothing() {
        FloorSurvey survey = FloorSurvey.builder("damp")
                .set(SurveyField.MOISTURE, Share.of(9, Unit.PERCENT))
                .build();
        assertThat(only(BuildUp.Moisture.class, situation(survey)).mayBe())
                .containsExactly(Damp.AS_DRY_REFERENCE, Damp.ABOVE_REFERENCE);
    }

    /** A circuit carries 80 % of its rating continuously: 120 V and 15 A give 1.44 kW. */
    @ParameterizedTest
    @CsvSource({
        "120, 15, LIGHT",
        "120, 15.62, LIGHT",
        "120, 15.63, STANDARD",
        "120, 20, STANDARD",
        "230, 16, STANDARD",
        "400, 12.5, STRONG",
        "400, 12.49, STANDARD",
        "400, 32, STRONG"
    })
    void a_supply_is_classed_by_what_it_carries_continuously(double volts, double amps, SupplyClass supply) {
        FloorSurvey survey = FloorSurvey.builder("supply")
                .set(SurveyField.VOLTS, Voltage.of(volts, Unit.VOLT))
                .set(SurveyField.AMPS, Current.of(amps, Unit.AMPERE))
                .build();
        assertThat(only(Site.PowerSupply.class, situation(survey)).mayBe()).containsExactly(supply);
    }

    @ParameterizedTest
    @CsvSource({"9.99, SMALL", "10, MIDDLE", "29.99, MIDDLE", "30, LARGE"})
    void a_floor_is_small_under_10_and_large_from_30_square_metres(double area, SizeClass size) {
        FloorSurvey survey = FloorSurvey.builder("size")
                .set(SurveyField.AREA, Area.of(area, Unit.SQUARE_METRE))
                .build();
        assertThat(only(Site.FloorSize.class, situation(survey)).mayBe()).containsExactly(size);
    }

    @ParameterizedTest
    @EnumSource(Finish.class)
    void a_goal_that_names_a_finish_wants_that_finish(Finish finish) {
        FloorSurvey survey = FloorSurvey.builder("goal")
                .set(SurveyField.GOAL, Goal.valueOf(finish.name()))
                .build();
        assertThat(only(Wishes.WantedFinish.class, situation(survey)).mayBe()).containsExactly(finish);
    }

    @ParameterizedTest
    @CsvSource({"14.9, HONE", "15, SATIN", "35, SEMI_GLOSS", "59.9, SEMI_GLOSS", "60, POLISH", "80, HIGH_GLOSS"})
    void a_sample_is_matched_by_its_gloss(double gloss, Finish finish) {
        FloorSurvey survey = FloorSurvey.builder("sample")
                .set(SurveyField.GOAL, Goal.MATCH_SAMPLE)
                .set(SurveyField.GOAL_GLOSS, Gloss.of(gloss, Unit.GLOSS_UNIT))
                .build();
        assertThat(only(Wishes.WantedFinish.class, situation(survey)).mayBe()).containsExactly(finish);
    }

    @Test
    void an_owner_who_only_wants_it_better_keeps_the_finish_and_has_it() {
        FloorSurvey survey = FloorSurvey.builder("better")
                .set(SurveyField.GOAL, Goal.JUST_BETTER)
                .set(SurveyField.FINISH_NOW, Finish.SATIN)
                .build();
        assertThat(only(Wishes.WantedFinish.class, situation(survey)).mayBe()).containsExactly(Finish.SATIN);
        assertThat(only(Wishes.FinishToGo.class, situation(survey)).mayBe()).containsExactly(FinishGap.MET);
    }

    @ParameterizedTest
    @CsvSource({"POLISH, POLISH, MET", "POLISH, HONE, NOT_MET", "HONE, POLISH, NOT_MET"})
    void the_finish_is_met_only_by_the_same_finish(Goal goal, Finish now, FinishGap gap) {
        FloorSurvey survey = FloorSurvey.builder("gap")
                .set(SurveyField.GOAL, goal)
                .set(SurveyField.FINISH_NOW, now)
                .build();
        assertThat(only(Wishes.FinishToGo.class, situation(survey)).mayBe()).containsExactly(gap);
    }

    @Test
    void a_finish_that_nobody_knows_may_be_the_wanted_one() {
        FloorSurvey survey =
                FloorSurvey.builder("gap").set(SurveyField.GOAL, Goal.POLISH).build();
        assertThat(only(Wishes.FinishToGo.class, situation(survey)).mayBe())
                .containsExactly(FinishGap.MET, FinishGap.NOT_MET);
    }

    @Test
    void an_unknown_finish_is_asked_for_where_the_owner_only_wants_it_better() {
        assertThat(Facts.fields(Wishes.WantedFinish.class)).contains(SurveyField.FINISH_NOW.name());
    }

    @Test
    void acid_drop_and_scriber_count_as_the_tests_that_identify() {
        FloorSurvey.Builder builder = FloorSurvey.builder("tests");
        assertThat(identified(builder)).isEqualTo(Identification.NOTHING);
        assertThat(identified(builder.set(SurveyField.STONE_NAME, "marble"))).isEqualTo(Identification.NAME_ONLY);
        assertThat(identified(builder.set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)))
                .isEqualTo(Identification.ONE_TEST);
        assertThat(identified(builder.set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)))
                .isEqualTo(Identification.TWO_TESTS);
    }

    @Test
    void a_stone_topic_without_a_decision_is_a_conflict() {
        assertThat(only(StoneTraits.Identified.class, situation(Floors.wornGranite()))
                        .known())
                .isEqualTo(Identification.CONFLICT);
    }

    @Test
    void a_name_that_covers_several_families_is_a_known_answer() {
        FloorSurvey survey = FloorSurvey.builder("name")
                .set(SurveyField.STONE_NAME, "marble")
                .build();
        StoneFacts.NamedAs name = only(StoneFacts.NamedAs.class, situation(survey));
        assertThat(name.mayBe()).hasSize(3);
        assertThat(Facts.matched(name).known()).isTrue();
    }

    @Test
    void machines_that_were_counted_are_there_or_not_and_uncounted_ones_may_be() {
        FloorSurvey counted = FloorSurvey.builder("machines")
                .set(SurveyField.MACHINES, Floors.machines(MachineClass.SINGLE_DISC))
                .build();
        assertThat(Facts.after(Optional.empty(), situation(counted)))
                .contains(
                        new Equipment.MachineOnHand(MachineClass.SINGLE_DISC, Set.of(Presence.PRESENT)),
                        new Equipment.MachineOnHand(MachineClass.PLANETARY, Set.of(Presence.NONE)));
        assertThat(Facts.after(Optional.empty(), situation(Floors.unknownStone())))
                .contains(new Equipment.MachineOnHand(MachineClass.PLANETARY, EnumSet.allOf(Presence.class)));
    }

    @ParameterizedTest
    @CsvSource({
        "50, COARSE",
        "99, COARSE",
        "100, MEDIUM",
        "399, MEDIUM",
        "400, FINE",
        "800, FINE",
        "801, POLISHING",
        "1999, POLISHING",
        "2000, FINEST"
    })
    void grit_numbers_fall_into_classes(int number, GritClass grit) {
        assertThat(StepFacts.gritClass(grade(number), Parameters.standard())).isEqualTo(grit);
    }

    private static AbrasiveGrade grade(int number) {
        return new AbrasiveGrade(Bond.RESIN, number, Range.of(new Length(0.01), new Length(0.02)));
    }

    @Test
    void steps_know_their_place_in_the_track() {
        List<Step> steps = Facts.steps(
                TrackKind.OPEN_FIELD,
                GritSequence.standard().grades().stream()
                        .filter(grade -> grade.key().matches("resin-(400|800|1500|3000)"))
                        .toList(),
                WorkMethod.DRY,
                Parameters.standard());
        assertThat(steps)
                .extracting(Step::order)
                .containsExactly(StepOrder.FIRST, StepOrder.SECOND, StepOrder.LATER, StepOrder.LATER);
        assertThat(steps)
                .extracting(Step::end)
                .containsExactly(StepEnd.NOT_LAST, StepEnd.NOT_LAST, StepEnd.NOT_LAST, StepEnd.LAST);
    }

    @Test
    void a_hold_over_a_floor_that_would_only_be_cleaned_permits_no_more_than_cleaning() {
        Situation situation = situation(Floors.wornGranite());
        assertThat(situation.permission()).isEqualTo(EnumSet.allOf(Verdict.class));
        situation.close(new Decision<>(
                Topics.VERDICT, Subject.FLOOR, List.of(Verdict.HOLD), List.of(), List.of(), List.of(), List.of()));
        assertThat(situation.permission()).containsExactly(Verdict.HOLD);
        assertThat(only(Decided.Permission.class, situation).known()).isEqualTo(Verdict.HOLD);
    }

    private static Identification identified(FloorSurvey.Builder builder) {
        Identification known = only(StoneTraits.Identified.class, situation(builder.build(), Family.CALCITE_MARBLE))
                .known();
        assertThat(known).isNotNull();
        return known;
    }

    private static <T extends Feature<?>> T only(Class<T> type, Situation situation) {
        return everyFact(situation).stream()
                .filter(type::isInstance)
                .map(type::cast)
                .findFirst()
                .orElseThrow();
    }

    private static List<Object> everyFact(Situation situation) {
        List<Object> facts = new ArrayList<>(Facts.after(Optional.empty(), situation));
        for (Stage stage : Stage.values()) {
            facts.addAll(Facts.after(Optional.of(stage), situation));
        }
        return facts;
    }

    private static Situation situation(FloorSurvey survey, Family... families) {
        Situation situation = new Situation(survey, Parameters.standard(), GritSequence.standard());
        if (families.length > 0) {
            situation.close(new Decision<>(
                    Topics.STONE, Subject.FLOOR, List.of(families), List.of(), List.of(), List.of(), List.of()));
        }
        return situation;
    }
}
