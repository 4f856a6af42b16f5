package stoneprocess.rules.internal.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.Closing;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.MatterDifference;
import stoneprocess.core.answer.SilentRule;
import stoneprocess.core.answer.Unmet;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.answer.WhyNotKind;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.Options;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.overlay.Overlay;

/** Answers about floors that a trainer would show. Common practice, no source. */
class ExplanationTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final FloorSurvey SCRATCHED_MARBLE = Floors.calciteMarble(
                    Floors.scratched(ScratchClass.FELT_BY_NAIL, 60))
            .set(SurveyField.GOAL, Goal.POLISH)
            .set(SurveyField.FINISH_NOW, Finish.HONE)
            .build();
    private static final Recommendation MARBLE = ADVISOR.recommend(SCRATCHED_MARBLE);
    private static final Subject FIRST_STEP = new Subject.OfStep(TrackKind.OPEN_FIELD, "resin-200");

    @Test
    void why_200_rests_on_the_scratches_that_a_nail_feels() {
        Why why = ADVISOR.why(MARBLE, Topics.FIRST_CUT, Subject.OPEN_FIELD);

        assertThat(why.outcome())
                .isEqualTo(MARBLE.decision(Topics.FIRST_CUT, Subject.OPEN_FIELD).orElseThrow());
        assertThat(why.card("CUT-003").title()).contains("nail");
        assertThat(why.card("CUT-003").source().id()).isEqualTo("practice");
        assertThat(why.answers()).contains(FieldAnswer.of(SCRATCHED_MARBLE, "damages.scratches"));
        assertThat(why.grounds())
                .<Topic<?>>extracting(ground -> ground.matter().topic())
                .containsExactly(Topics.FIRST_CUT, Topics.FINISH);
    }

    @Test
    void why_not_400_names_the_rule_that_needs_a_coarser_start() {
        WhyNot whyNot = ADVISOR.whyNot(MARBLE, Topics.FIRST_CUT, Subject.OPEN_FIELD, "fine-hone");

        assertThat(whyNot.kind()).isEqualTo(WhyNotKind.VETOED);
        assertThat(whyNot.by()).extracting(Reason::rule).containsExactly("CUT-003");
        assertThat(whyNot.asked()).extracting(Reason::rule).containsExactly("CUT-028");
    }

    @Test
    void why_not_coarser_names_the_nearest_condition_with_what_it_is_and_what_it_would_have_to_be() {
        WhyNot whyNot = ADVISOR.whyNot(MARBLE, Topics.FIRST_CUT, Subject.OPEN_FIELD, "coarse-hone");

        assertThat(whyNot.kind()).isEqualTo(WhyNotKind.NOT_ASKED);
        assertThat(whyNot.silent())
                .filteredOn(silent -> silent.rule().equals("CUT-005"))
                .singleElement()
                .extracting(SilentRule::nearest)
                .isEqualTo(new Unmet(
                        "Scratches",
                        List.of("felt-by-nail"),
                        List.of("felt-by-coin"),
                        1,
                        List.of("damages.scratches"),
                        List.of()));
        assertThat(whyNot.answers()).contains(FieldAnswer.of(SCRATCHED_MARBLE, "damages.scratches"));
    }

    @Test
    void a_rule_that_raises_the_start_to_one_grade_is_not_said_to_ask_for_a_coarser_one() {
        assertThat(ADVISOR.whyNot(MARBLE, Topics.FIRST_CUT, Subject.OPEN_FIELD, "heavy-grind")
                        .silent())
                .extracting(SilentRule::rule)
                .doesNotContain("CUT-005");
    }

    @Test
    void a_milder_value_is_outweighed_by_the_wish_that_won() {
        WhyNot whyNot = ADVISOR.whyNot(MARBLE, Topics.WATER_LEVEL, FIRST_STEP, "moderate");

        assertThat(whyNot.kind()).isEqualTo(WhyNotKind.OUTWEIGHED);
        assertThat(whyNot.by()).extracting(Reason::rule).containsExactly("WAT-014");
    }

    @Test
    void a_machine_that_is_allowed_and_not_taken_is_told_from_one_that_is_excluded() {
        assertThat(ADVISOR.whyNot(MARBLE, Topics.MACHINE, FIRST_STEP, "single-disc")
                        .kind())
                .isEqualTo(WhyNotKind.OTHER_STEPS);
        assertThat(ADVISOR.whyNot(MARBLE, Topics.MACHINE, FIRST_STEP, "propane-machine")
                        .by())
                .extracting(Reason::rule)
                .contains("MAC-004");
    }

    @Test
    void an_unknown_fact_makes_a_refusal_count_as_a_hold_and_the_answer_says_what_has_to_be_known() {
        FloorSurvey untapped =
                SCRATCHED_MARBLE.toBuilder().unknown(SurveyField.SOUNDING).build();

        WhyNot whyNot = ADVISOR.whyNot(ADVISOR.recommend(untapped), Topics.VERDICT, Subject.FLOOR, "refuse");

        assertThat(whyNot.kind()).isEqualTo(WhyNotKind.UNCERTAIN);
        assertThat(whyNot.asked()).extracting(Reason::rule).containsExactly("GON-001");
        assertThat(whyNot.silent())
                .singleElement()
                .extracting(SilentRule::nearest)
                .isEqualTo(new Unmet(
                        "TapSound",
                        List.of("sound", "few-hollow", "few-loose", "hollow", "loose"),
                        List.of("loose"),
                        0,
                        List.of("build-up.sounding"),
                        List.of()));
    }

    @Test
    void a_path_says_which_decisions_shape_it_and_what_keeps_a_grade_out() {
        Why why = ADVISOR.why(MARBLE, Topics.GRIT_PATH, Subject.OPEN_FIELD);

        assertThat(why.grounds().get(0).policy()).isEqualTo(PolicyKind.PATH);
        assertThat(why.grounds().get(0).restsOn())
                .extracting(Matter::topic)
                .containsExactly(Topics.FIRST_CUT, Topics.LAST_GRIT, Topics.BONDS, Topics.STEP_RULE, Topics.TRANSITION);
        assertThat(why.numbers()).containsEntry("step-ratio.most", new Share(270));
        assertThat(grade(MARBLE, "resin-100")).isEqualTo(WhyNotKind.BEFORE_START);
        assertThat(grade(MARBLE, "resin-6000")).isEqualTo(WhyNotKind.AFTER_END);
        Recommendation few = ADVISOR.recommend(SCRATCHED_MARBLE.toBuilder()
                .set(
                        SurveyField.GRADES,
                        GritSequence.standard().grades().stream()
                                .filter(grade -> grade.number() != 6000)
                                .toList())
                .build());
        assertThat(grade(few, "resin-6000")).isEqualTo(WhyNotKind.NOT_ON_HAND);
    }

    private static WhyNotKind grade(Recommendation recommendation, String grade) {
        return ADVISOR.whyNot(recommendation, Topics.GRIT_PATH, Subject.OPEN_FIELD, grade)
                .kind();
    }

    @Test
    void passes_rest_on_machine_weight_and_stone_down_to_the_scriber() {
        Why why = ADVISOR.why(MARBLE, Topics.PASSES, FIRST_STEP);

        assertThat(why.grounds().get(0).restsOn())
                .extracting(Matter::topic)
                .containsExactlyInAnyOrder(Topics.GRIT_PATH, Topics.STONE, Topics.MACHINE, Topics.ADDED_WEIGHT);
        assertThat(why.numbers()).containsKeys("removal.resin.low", "removal.resin.high", "cut-rate.medium");
        assertThat(why.answers()).extracting(FieldAnswer::field).contains("stone.scriber", "equipment.machines");
        assertThat(ADVISOR.whyNot(MARBLE, Topics.PASSES, FIRST_STEP, "3").kind())
                .isEqualTo(WhyNotKind.COMPUTED);
    }

    @Test
    void an_impasse_answers_with_what_it_is_made_of() {
        Recommendation noGrades = ADVISOR.recommend(
                SCRATCHED_MARBLE.toBuilder().set(SurveyField.GRADES, List.of()).build());

        Why why = ADVISOR.why(noGrades, Topics.GRIT_PATH, Subject.OPEN_FIELD);
        assertThat(why.outcome()).isInstanceOf(Impasse.class);
        assertThat(why.answers()).contains(new FieldAnswer("equipment.grades", true, List.of()));
        assertThat(grade(noGrades, "resin-200")).isEqualTo(WhyNotKind.NOT_ON_HAND);
    }

    @Test
    void what_does_not_fit_is_refused_with_what_would() {
        assertThatThrownBy(() -> ADVISOR.why(MARBLE, Topics.SEALER, Subject.EDGE))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("sealer.subject: 'edge' is not accepted; accepted: floor");
        assertThatThrownBy(
                        () -> ADVISOR.why(MARBLE, Topics.MACHINE, new Subject.OfStep(TrackKind.OPEN_FIELD, "metal-16")))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith(
                        "machine.subject: 'open-field/metal-16' is not accepted; accepted: one that this"
                                + " recommendation came to: open-field/resin-200");
        assertThatThrownBy(() -> ADVISOR.whyNot(MARBLE, Topics.SEALER, Subject.FLOOR, "wax"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith(
                        "sealer.value: 'wax' is not accepted; accepted: a value that the outcome does not"
                                + " have, one of");
        assertThatThrownBy(() -> ADVISOR.whyNot(MARBLE, Topics.SEALER, Subject.FLOOR, "none"))
                .isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> ADVISOR.whyNot(MARBLE, Topics.PASSES, FIRST_STEP, "few"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage(
                        "passes.value: 'few' is not accepted; accepted: a whole number of passes, from 0 to 1000000");
        Choice<Sealer> foreign = Choice.of("sealer", Stage.FINISHING, Scope.FLOOR, PolicyKind.ONE, Sealer.class);
        assertThatThrownBy(() -> ADVISOR.why(MARBLE, foreign, Subject.FLOOR)).isInstanceOf(InvalidInputException.class);
    }

    @Test
    void a_matter_that_a_refused_floor_never_came_to_is_named_with_the_status() {
        Recommendation refused = ADVISOR.recommend(SCRATCHED_MARBLE.toBuilder()
                .set(SurveyField.SOUNDING, Sounding.LOOSE)
                .build());

        assertThatThrownBy(() -> ADVISOR.why(refused, Topics.FIRST_CUT, Subject.EDGE))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("whose status is refused: stone, verdict");
    }

    @Test
    void a_recommendation_of_another_rulebase_is_not_explained() {
        Advisor house = Advisor.of(
                Rulebase.with(Overlay.none().switchOff("CUT-003", "the master", "we start finer")), Options.defaults());

        assertThatThrownBy(() -> house.why(MARBLE, Topics.FIRST_CUT, Subject.EDGE))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("recommendation.rulebase");
    }

    @Test
    void a_rule_switched_off_shows_in_the_difference_by_its_id() {
        Advisor house = Advisor.of(
                Rulebase.with(Overlay.none().switchOff("CUT-003", "the master", "we start finer")), Options.defaults());

        Difference difference = Difference.between(MARBLE, house.recommend(SCRATCHED_MARBLE));

        MatterDifference cut = difference.matters().stream()
                .filter(matter -> matter.matter().equals(new Matter(Topics.FIRST_CUT, Subject.OPEN_FIELD)))
                .findFirst()
                .orElseThrow();
        assertThat(cut.one().keys()).containsExactly("hone");
        assertThat(cut.one().rules()).containsExactly("CUT-003");
        assertThat(cut.other().keys()).containsExactly("fine-hone");
        assertThat(difference.tracks()).isNotEmpty();
        assertThat(difference.answers().isEmpty()).isTrue();
        assertThat(difference.rulebases().one())
                .containsExactly(ADVISOR.rulebase().stamp().hash());
    }

    @Test
    void another_answer_shows_with_all_that_follows_from_it_and_the_same_survey_with_nothing() {
        Recommendation refused = ADVISOR.recommend(SCRATCHED_MARBLE.toBuilder()
                .set(SurveyField.SOUNDING, Sounding.LOOSE)
                .build());

        Difference difference = Difference.between(MARBLE, refused);

        assertThat(difference.one()).isEqualTo(Status.PLANNED);
        assertThat(difference.other()).isEqualTo(Status.REFUSED);
        assertThat(difference.answers().other()).containsExactly(FieldAnswer.of(refused.survey(), "build-up.sounding"));
        assertThat(difference.matters())
                .filteredOn(matter -> matter.matter().topic() == Topics.GRIT_PATH)
                .isNotEmpty()
                .allSatisfy(matter -> assertThat(matter.other().closing()).isEqualTo(Closing.NOT_REACHED));
        assertThat(difference.preparation().one()).isNotEmpty();
        Difference none = Difference.between(MARBLE, ADVISOR.recommend(SCRATCHED_MARBLE));
        assertThat(none.isEmpty()).isTrue();
        assertThat(Set.of(none)).contains(Difference.between(MARBLE, MARBLE));
    }
}
