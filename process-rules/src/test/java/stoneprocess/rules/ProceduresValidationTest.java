package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static stoneprocess.rules.TradeFloors.field;
import static stoneprocess.rules.TradeFloors.grades;
import static stoneprocess.rules.TradeFloors.plan;
import static stoneprocess.rules.TradeFloors.recommend;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.source.Sources;
import stoneprocess.core.survey.CleaningTrial;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Check;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.LastGrit;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.SlurryRoute;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/** Published procedures and limits, each held against the plan of a floor that it speaks of. */
class ProceduresValidationTest {
    /** Concrete Construction magazine: metal 40 to 80, then 150, then resin to 800 and optionally 3000. */
    @Test
    void uneven_concrete_is_ground_with_metal_first_then_transition_then_resin() {
        Plan plan = plan(TradeFloors.unevenConcrete());
        List<PlannedStep> steps = field(plan);

        assertThat(steps.get(0).grade().bond()).isEqualTo(Bond.METAL);
        assertThat(steps.get(0).grade().number()).isBetween(40, 80);
        assertThat(steps.stream().map(step -> step.grade().bond()).distinct())
                .containsExactly(Bond.METAL, Bond.TRANSITION, Bond.RESIN);
        assertThat(grades(steps)).endsWith("resin-800");
        assertThat(steps).extracting(PlannedStep::machine).containsOnly(MachineClass.PLANETARY);
        assertCites(recommend(TradeFloors.unevenConcrete()), Topics.FIRST_CUT, "Concrete Construction");
    }

    /** Concrete Decor magazine: a hard slab is densified after about 400. */
    @Test
    void concrete_is_densified_and_stone_and_resin_are_not() {
        assertThat(plan(TradeFloors.unevenConcrete()).densifier()).isEqualTo(Densifier.AFTER_FINE_HONE);
        assertThat(plan(TradeFloors.etchedMarble()).densifier()).isEqualTo(Densifier.NONE);
        assertThat(plan(TradeFloors.waxedTerrazzo()).densifier()).isEqualTo(Densifier.NONE);
        assertCites(recommend(TradeFloors.unevenConcrete()), Topics.DENSIFIER, "Concrete Decor");
    }

    /** NTMA technical seminar, 2012: the traditional finish is 120 to 200; NTMA, optional finishes: a penetrating sealer. */
    @Test
    void the_traditional_finish_of_terrazzo_ends_at_120_to_200_and_is_sealed() {
        Recommendation answer =
                recommend(TradeFloors.waxedTerrazzo().set(SurveyField.CLEANING_TRIAL, CleaningTrial.NOT_ENOUGH));
        Plan plan = answer.plan().orElseThrow();

        List<PlannedStep> steps = field(plan);
        assertThat(steps.get(steps.size() - 1).grade().number()).isBetween(120, 200);
        assertThat(answer.values(Topics.LAST_GRIT, Subject.FLOOR)).containsExactly(LastGrit.G200);
        assertThat(plan.sealer()).isEqualTo(Sealer.IMPREGNATOR);
        assertCites(answer, Topics.LAST_GRIT, "Traditional care of terrazzo flooring");
        assertCites(answer, Topics.SEALER, "Optional finishes for terrazzo");
    }

    /** GSA technical procedure 0940010R: regrinding is for when stripping and cleaning fail. */
    @Test
    void terrazzo_waits_for_a_trial_of_stripping_and_cleaning_before_it_is_reground() {
        Recommendation before = recommend(TradeFloors.waxedTerrazzo());
        assertThat(before.status()).isEqualTo(Status.PROVISIONAL);
        assertThat(before.plan().orElseThrow().tasks()).containsSubsequence(Task.CLEANING_TRIAL, Task.STRIP_COATING);
        assertThat(before.decision(Topics.VERDICT, Subject.FLOOR).orElseThrow().won())
                .extracting(Reason::rule)
                .containsExactly("GON-013");
        assertCites(before, Topics.VERDICT, "0940010R");

        Recommendation failed =
                recommend(TradeFloors.waxedTerrazzo().set(SurveyField.CLEANING_TRIAL, CleaningTrial.NOT_ENOUGH));
        assertThat(failed.status()).isEqualTo(Status.PLANNED);
        assertThat(failed.plan().orElseThrow().tracks()).isNotEmpty();
    }

    /** GSA technical procedure 0940010R, the other way out: where cleaning is enough nothing is cut. */
    @Test
    void terrazzo_without_lines_for_which_cleaning_was_enough_is_not_cut() {
        Plan plan = plan(TradeFloors.waxedTerrazzo()
                .zones(List.of(Floors.zone("whole", 100, java.util.Map.of())))
                .set(SurveyField.CLEANING_TRIAL, CleaningTrial.ENOUGH));
        assertThat(plan.tracks()).isEmpty();
        assertThat(plan.tasks()).contains(Task.STRIP_COATING);
    }

    /**
     * Adv. Mater. Sci. Eng. 2018, article 6514785: 1.25 bar to grade 800, 1.0 bar after it, a fifth less. Crews drop
     * 20 to 30 %: common practice, no source.
     */
    @Test
    void the_load_drops_after_grade_800_by_no_less_than_on_the_published_line() {
        double published = (1.25 - 1.0) / 1.25 * 100;
        double ours = Parameters.standard().get("weight.reduction", Share.class).percent();
        assertThat(ours).isBetween(published, 30.0);

        Recommendation answer = recommend(Floors.damaged(Floors.scratched(ScratchClass.FELT_BY_COIN, 20)));
        for (PlannedStep step : field(answer.plan().orElseThrow())) {
            assertThat(step.weight())
                    .as(step.grade().key())
                    .isEqualTo(step.grade().number() <= 800 ? AddedWeight.USUAL : AddedWeight.REDUCED);
        }
        assertCites(answer, Topics.ADDED_WEIGHT, "Polishing line on limestone");
    }

    /** GSA technical procedure 0445508R: cracks are filled before the first finishing grade. */
    @Test
    void cracks_are_filled_and_cured_before_the_first_grade() {
        Recommendation answer = recommend(Floors.damaged(Floors.dull(80), TradeFloors.cracked()));
        Plan plan = answer.plan().orElseThrow();
        assertThat(plan.tasks()).containsSubsequence(Task.FILL_CRACKS);
        assertThat(plan.tracks()).isNotEmpty();
        assertCites(answer, Topics.PREPARATION, "0445508R");
    }

    static Stream<Arguments> citedHazards() {
        return Stream.of(
                Arguments.of(Hazard.SILICA_DUST, "29-CFR-1926.1153", "29 CFR 1926.1153"),
                Arguments.of(Hazard.WET_FLOOR, "29-CFR-1910.22", "29 CFR 1910.22"),
                Arguments.of(Hazard.ELECTRICITY, "29-CFR-1926.404", "29 CFR 1926.404"),
                Arguments.of(Hazard.NOISE, "29-CFR-1910.95", "29 CFR 1910.95"),
                Arguments.of(Hazard.SLURRY, "40-CFR-403.5", "40 CFR 403.5"),
                Arguments.of(Hazard.ALKALINE_SLURRY, "40-CFR-261.22", "40 CFR 261.22"));
    }

    @ParameterizedTest
    @MethodSource("citedHazards")
    void each_warning_of_a_wet_cut_on_concrete_cites_its_regulation(Hazard hazard, String source, String citation) {
        Recommendation answer = recommend(TradeFloors.unevenConcrete());
        assertThat(answer.warnings())
                .filteredOn(warning -> warning.hazard() == hazard)
                .singleElement()
                .satisfies(warning -> {
                    assertThat(warning.sources()).contains(source);
                    assertThat(warning.certain()).isTrue();
                });
        assertThat(Sources.standard().get(source).publisher()).contains(citation);
    }

    /**
     * CDC, MMWR 42(9), 1993: one propane burnisher poisoned nine of ten staff. NIOSH 96-118: open doors do not make it safe.
     * NIOSH, Oregon case 04OR037: electric machines in place of propane indoors.
     */
    @Test
    void a_propane_machine_on_hand_is_warned_of_and_not_used_indoors() {
        Recommendation answer = recommend(TradeFloors.with(
                Floors.unremarkable(), MachineClass.PROPANE_MACHINE, MachineClass.SINGLE_DISC, MachineClass.EDGE_TOOL));
        assertThat(answer.warnings())
                .filteredOn(warning -> warning.hazard() == Hazard.CARBON_MONOXIDE)
                .singleElement()
                .extracting(SafetyWarning::sources)
                .asInstanceOf(InstanceOfAssertFactories.list(String.class))
                .contains("CDC-MMWR-1992", "NIOSH-96-118");
        assertThat(field(answer.plan().orElseThrow()))
                .extracting(PlannedStep::machine)
                .containsOnly(MachineClass.SINGLE_DISC);
        assertCites(answer, Topics.MACHINE, "04OR037");
    }

    /** 40 CFR 261.22: corrosive from pH 12.5; EPA 833-F-11-006: wash water of concrete has a pH near 12. */
    @Test
    void the_ph_of_cement_slurry_is_checked_and_that_of_granite_need_not_be() {
        assertThat(plan(TradeFloors.unevenConcrete()).slurry()).contains(SlurryRoute.CHECK_PH);
        assertThat(plan(Floors.unremarkable()).slurry())
                .containsExactly(SlurryRoute.COLLECT_AND_SETTLE, SlurryRoute.NOTHING_TO_STORM_DRAIN);
    }

    /** ASTM D523: 60 degrees first, 20 where 60 gives more than 70 GU, 85 where it gives less than 10 GU. */
    @Test
    void gloss_is_read_at_60_degrees_and_at_20_or_85_where_the_finish_lies_beyond_70_or_under_10_units() {
        Parameters numbers = Parameters.standard();
        assertThat(numbers.get("finish.high-gloss", Gloss.class).gloss())
                .as("a polish lies between 60 and 80 units and may pass 70")
                .isGreaterThan(70);
        assertThat(numbers.get("finish.satin", Gloss.class).gloss())
                .as("a satin starts above 10 units")
                .isGreaterThan(10);

        assertThat(last(Goal.HONE)).contains(Check.READ_60, Check.READ_85).doesNotContain(Check.READ_20);
        assertThat(last(Goal.SATIN)).contains(Check.READ_60).doesNotContain(Check.READ_20, Check.READ_85);
        assertThat(last(Goal.SEMI_GLOSS)).contains(Check.READ_60).doesNotContain(Check.READ_20, Check.READ_85);
        assertThat(last(Goal.POLISH)).contains(Check.READ_60, Check.READ_20).doesNotContain(Check.READ_85);
        assertThat(last(Goal.HIGH_GLOSS)).contains(Check.READ_60, Check.READ_20).doesNotContain(Check.READ_85);
    }

    private static List<Check> last(Goal goal) {
        FloorSurvey.Builder floor =
                Floors.damaged(Floors.scratched(ScratchClass.FELT_BY_NAIL, 20)).set(SurveyField.GOAL, goal);
        List<PlannedStep> steps = field(plan(floor));
        return steps.get(steps.size() - 1).checks();
    }

    /** A rule that speaks to the topic on this floor rests on the publication. */
    private static void assertCites(Recommendation answer, Topic<?> topic, String publication) {
        Set<String> speaking = answer.outcomes().stream()
                .filter(outcome -> outcome.topic() == topic)
                .flatMap(outcome -> outcome.reasons().stream())
                .map(Reason::rule)
                .collect(Collectors.toSet());
        assertThat(Rulebase.standard().cards().stream()
                        .filter(card -> speaking.contains(card.id()))
                        .map(card ->
                                card.source().title() + ", " + card.source().publisher()))
                .as("what is cited for " + topic.id())
                .anyMatch(cited -> cited.contains(publication));
    }
}
