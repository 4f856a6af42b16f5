package stoneprocess.rules.internal.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.Comparison;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.Options;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.overlay.Overlay;

class ComparingTest {
    private static final Advisor SHIPPED = Advisor.standard();
    private static final List<FloorSurvey> FLOORS = List.of(
            Floors.unremarkable().build(),
            Floors.calciteMarble(Floors.lipped(3.5, 40)).build(),
            Floors.unknownStone());

    private static Advisor house(Overlay overlay) {
        return Advisor.of(Rulebase.with(overlay), Options.defaults());
    }

    @Test
    void a_rulebase_differs_in_nothing_from_itself() {
        Comparison comparison = SHIPPED.compare(Advisor.standard(), FLOORS);
        assertThat(comparison.floors()).isEqualTo(3);
        assertThat(comparison.differing()).isEmpty();
    }

    @Test
    void a_rule_switched_off_is_named_where_its_advice_is_missing() {
        Advisor house = house(Overlay.none().switchOff("PRE-001", "master restorer", "the painter masks the walls"));
        Comparison comparison = SHIPPED.compare(house, FLOORS);
        assertThat(comparison.one()).isEqualTo(SHIPPED.rulebase().stamp());
        assertThat(comparison.other()).isEqualTo(house.rulebase().stamp());
        assertThat(comparison.differing()).isNotEmpty().allSatisfy(floor -> {
            FloorSurvey survey = FLOORS.get(floor.index());
            assertThat(floor.title()).isEqualTo(survey.title());
            assertThat(floor.decisions()).singleElement().satisfies(differs -> {
                assertThat(differs.topic()).isEqualTo(Topics.PREPARATION);
                assertThat(differs.rulesOfOne()).containsExactly("PRE-001");
                assertThat(differs.rulesOfOther()).isEmpty();
                assertThat(differs.one().keys())
                        .isEqualTo(SHIPPED.recommend(survey)
                                .decision(Topics.PREPARATION, Subject.FLOOR)
                                .map(Decision::keys)
                                .orElseThrow());
            });
        });
    }

    /**
     * Lippage of 3.5 mm of soft stone is high at the shipped limit and not at 4 mm, so that other rules speak; on hard stone
     * metal 30 is the quicker start either way. Passes follow the limit itself, by which the depth of a class is reckoned.
     */
    @Test
    void a_number_retuned_is_seen_through_the_rules_that_speak_or_fall_silent() {
        Advisor house = house(Overlay.none().retune("lippage.high", new Length(4), "floor manager", "owners see less"));
        Comparison comparison = SHIPPED.compare(house, FLOORS);
        assertThat(comparison.differing()).extracting(Comparison.Floor::index).containsExactly(1);
        assertThat(comparison.differing().get(0).decisions())
                .filteredOn(differs -> differs.topic() != Topics.PASSES)
                .isNotEmpty()
                .allSatisfy(differs -> assertThat(differs.rulesOfOne().size()
                                + differs.rulesOfOther().size()
                                + differs.through().size())
                        .as("%s", differs)
                        .isPositive());
    }
}
