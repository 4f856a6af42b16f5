package stoneprocess.rules.testkit.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import stoneprocess.core.plan.Status;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;

class LawsPropertyTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final Respondent RESPONDENT = Respondent.remembering(Respondent.of(ADVISOR), 200);

    /** Laws that look at one answer, which they share. */
    @Property(tries = 350, seed = "1955", shrinking = ShrinkingMode.OFF)
    void every_answer_keeps_the_laws_of_one_answer(@ForAll("surveys") FloorSurvey survey, @ForAll long seed) {
        Laws.ofOneAnswer().forEach(law -> holds(law, survey, seed));
    }

    /** Laws that ask again, of the same floor or of another one. */
    @Property(tries = 70, seed = "1955", shrinking = ShrinkingMode.OFF)
    void two_answers_keep_the_laws_of_two(@ForAll("surveys") FloorSurvey survey, @ForAll long seed) {
        Stream.concat(
                        Stream.of(
                                Laws.SAME_ANSWER_AGAIN,
                                Laws.JSON_IS_LOSSLESS,
                                WarningLaws.HAZARD_NEVER_SILENCES,
                                AnswerLaws.OFFER_TAKEN_IS_KEPT),
                        FloorLaws.ALL.stream())
                .forEach(law -> holds(law, survey, seed));
    }

    @Property(tries = 120, seed = "1955", shrinking = ShrinkingMode.OFF)
    void the_order_of_rules_and_facts_makes_no_difference(@ForAll("surveys") FloorSurvey survey, @ForAll long seed) {
        holds(Laws.ORDER_MAKES_NO_DIFFERENCE, survey, seed);
    }

    @Property(tries = 200, seed = "1955", shrinking = ShrinkingMode.OFF)
    void unknown_is_never_bolder(@ForAll("surveys") FloorSurvey survey, @ForAll long seed) {
        holds(Laws.UNKNOWN_IS_NEVER_BOLDER, survey, seed);
    }

    @Property(tries = 100, seed = "1955", shrinking = ShrinkingMode.OFF)
    void a_refusal_stands(@ForAll("refused") FloorSurvey survey, @ForAll long seed) {
        holds(Laws.REFUSAL_STANDS, survey, seed);
    }

    @Property(tries = 60, seed = "1955")
    void less_on_hand_is_never_better(@ForAll("surveys") FloorSurvey survey) {
        holds(Laws.LESS_ON_HAND_IS_NEVER_BETTER, survey, 0);
    }

    /** Floors as a crew meets them, with each answer forgotten in turn. */
    @Test
    void all_laws_hold_on_the_fixture_floors() {
        List<FloorSurvey> floors = List.of(
                Floors.unremarkable().build(),
                Floors.calciteMarble().build(),
                Floors.wornGranite(),
                Floors.unknownStone());
        for (FloorSurvey floor : floors) {
            Laws.all().forEach(law -> holds(law, floor, 1));
            holds(Laws.unknownIsNeverBolder(Integer.MAX_VALUE), floor, 1);
        }
    }

    @Provide
    Arbitrary<FloorSurvey> surveys() {
        return Surveys.drawn();
    }

    @Provide
    Arbitrary<FloorSurvey> refused() {
        return Surveys.drawn().filter(survey -> ADVISOR.recommend(survey).status() == Status.REFUSED);
    }

    private static void holds(Law law, FloorSurvey survey, long seed) {
        assertThat(law.violations(RESPONDENT, survey, seed))
                .as(() -> law.prose() + "; smallest survey that breaks it: "
                        + law.smallestViolation(RESPONDENT, survey, seed))
                .isEmpty();
    }
}
