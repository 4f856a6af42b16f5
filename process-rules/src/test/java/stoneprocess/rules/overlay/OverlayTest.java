package stoneprocess.rules.overlay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.HouseRule;
import stoneprocess.core.plan.HouseRuleKind;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.AreaLoad;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.Options;
import stoneprocess.rules.Rulebase;

class OverlayTest {
    private static final String WHO = "master restorer";
    private static final String WHY = "our floors are like that";

    @Test
    void a_rule_that_is_switched_off_never_fires_and_stands_in_the_stamp() {
        Rulebase house = Rulebase.with(Overlay.none().switchOff("PRE-001", WHO, WHY));
        Recommendation usual = Advisor.standard().recommend(Floors.wornGranite());
        Recommendation changed = advisor(house).recommend(Floors.wornGranite());

        assertThat(usual.values(Topics.PREPARATION, Subject.FLOOR)).contains(Task.MASK);
        assertThat(changed.values(Topics.PREPARATION, Subject.FLOOR)).doesNotContain(Task.MASK);
        assertThat(rules(usual)).contains("PRE-001");
        assertThat(rules(changed)).doesNotContain("PRE-001");
        assertThat(house.cards()).extracting(Card::id).doesNotContain("PRE-001");
        assertThat(usual.rulebase().switchedOff()).isEmpty();
        assertThat(changed.rulebase().switchedOff()).containsExactly("PRE-001");
    }

    @Test
    void the_stamp_lists_rules_that_are_switched_off_once_and_in_order() {
        Overlay overlay = Overlay.none()
                .switchOff("UPK-003", WHO, WHY)
                .switchOff("PRE-001", WHO, WHY)
                .switchOff("UPK-003", "somebody else", "again");
        assertThat(Rulebase.with(overlay).stamp().switchedOff()).containsExactly("PRE-001", "UPK-003");
    }

    @Test
    void a_recommendation_tells_every_house_rule_and_who_answers_for_it() {
        Length four = Length.of(4, Unit.MILLIMETRE);
        Overlay overlay = Overlay.none()
                .retune("lippage.high", four, "floor manager", "our owners see less")
                .switchOff("PRE-001", "master restorer", "walls are masked by the painter");
        Recommendation answer = advisor(Rulebase.with(overlay)).recommend(Floors.wornGranite());
        assertThat(answer.rulebase().house())
                .containsExactly(
                        new HouseRule(
                                HouseRuleKind.SWITCHED_OFF,
                                "PRE-001",
                                "master restorer",
                                "walls are masked by the painter"),
                        new HouseRule(HouseRuleKind.RETUNED, "lippage.high", "floor manager", "our owners see less"));
        assertThat(Json.RECOMMENDATION.read(Json.RECOMMENDATION.print(answer))).isEqualTo(answer);
        assertThat(Rulebase.standard().stamp().house()).isEmpty();
    }

    @Test
    void an_unknown_rule_is_refused_by_name() {
        assertThatThrownBy(() -> Rulebase.with(Overlay.none().switchOff("CUT-999", WHO, WHY)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("overlay.rule")
                .hasMessageContaining("CUT-999");
    }

    static Stream<String> lockedRules() {
        return Rulebase.standard().cards().stream().filter(Card::locked).map(Card::id);
    }

    @ParameterizedTest
    @MethodSource("lockedRules")
    void no_safety_rule_can_be_switched_off(String id) {
        assertThatThrownBy(() -> Rulebase.with(Overlay.none().switchOff(id, WHO, WHY)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining(id)
                .hasMessageContaining("safety rule");
    }

    @Test
    void the_hash_changes_with_every_change_and_is_the_same_for_the_same_rulebase() {
        String standard = Rulebase.standard().stamp().hash();
        String switchedOff = Rulebase.with(Overlay.none().switchOff("PRE-001", WHO, WHY))
                .stamp()
                .hash();
        String retuned = Rulebase.with(lippage(4)).stamp().hash();

        assertThat(List.of(standard, switchedOff, retuned)).doesNotHaveDuplicates();
        assertThat(Rulebase.with(Overlay.none()).stamp().hash())
                .isEqualTo(standard)
                .matches("[0-9a-f]{64}");
        assertThat(Rulebase.with(lippage(4)).stamp().hash()).isEqualTo(retuned);
    }

    @Test
    void a_retuned_limit_changes_the_outcome_of_the_same_compiled_rules() {
        FloorSurvey floor = Floors.calciteMarble(Floors.lipped(3.2, 50)).build();
        assertThat(Advisor.standard().recommend(floor).values(Topics.FIRST_CUT, Subject.OPEN_FIELD))
                .containsExactly(Cut.HEAVY_GRIND);

        Recommendation house = advisor(Rulebase.with(lippage(4))).recommend(floor);
        assertThat(house.values(Topics.FIRST_CUT, Subject.OPEN_FIELD)).containsExactly(Cut.GRIND);
        assertThat(house.parameters().retuned())
                .containsOnlyKeys("lippage.high")
                .containsEntry("lippage.high", Length.of(4, Unit.MILLIMETRE));
    }

    @Test
    void an_unknown_parameter_is_refused_by_name() {
        assertThatThrownBy(() ->
                        Rulebase.with(Overlay.none().retune("lippage.huge", Length.of(4, Unit.MILLIMETRE), WHO, WHY)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("lippage.huge");
    }

    @Test
    void a_value_in_the_wrong_unit_is_refused_with_the_unit_that_is_wanted() {
        assertThatThrownBy(() ->
                        Rulebase.with(Overlay.none().retune("lippage.high", Share.of(4, Unit.PERCENT), WHO, WHY)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("lippage.high")
                .hasMessageContaining("4 %")
                .hasMessageContaining("mm");
    }

    @Test
    void limits_that_no_longer_rise_are_refused_by_name() {
        assertThatThrownBy(() -> advisor(Rulebase.with(lippage(1)))
                        .recommend(Floors.damaged(Floors.lipped(2, 50)).build()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("lippage.high")
                .hasMessageContaining("1.5 mm");
    }

    @Test
    void a_number_behind_a_safety_rule_is_not_loosened() {
        Overlay loose = Overlay.none()
                .retune("floor-load.ordinary", AreaLoad.of(2, Unit.KILONEWTON_PER_SQUARE_METRE), WHO, WHY);
        assertThatThrownBy(() -> Rulebase.with(loose))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("floor-load.ordinary: '2 kN/m2' is not accepted; accepted: 3 kN/m2 or more; "
                        + "a safety rule or limit stands on it");
        Overlay strict = Overlay.none()
                .retune("floor-load.ordinary", AreaLoad.of(4, Unit.KILONEWTON_PER_SQUARE_METRE), WHO, WHY);
        assertThat(Rulebase.with(strict).parameters().retuned()).containsOnlyKeys("floor-load.ordinary");
    }

    @Test
    void a_range_whose_low_end_is_above_its_high_end_is_refused_before_any_floor_is_asked_about() {
        Overlay crossed = Overlay.none().retune("rest.regrout.low", TimeSpan.of(100, Unit.HOUR), WHO, WHY);
        assertThatThrownBy(() -> Rulebase.with(crossed))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("rest.regrout.range: ");
        Overlay both = crossed.retune("rest.regrout.high", TimeSpan.of(120, Unit.HOUR), WHO, WHY);
        assertThat(Rulebase.with(both).parameters().retuned()).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t"})
    void every_change_says_who_and_why(String blank) {
        Length four = Length.of(4, Unit.MILLIMETRE);
        assertThatThrownBy(() -> Overlay.none().switchOff("PRE-001", blank, WHY))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("overlay.PRE-001.who");
        assertThatThrownBy(() -> Overlay.none().switchOff("PRE-001", WHO, blank))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("overlay.PRE-001.why");
        assertThatThrownBy(() -> Overlay.none().retune("lippage.high", four, blank, WHY))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("overlay.lippage.high.who");
        assertThatThrownBy(() -> Overlay.none().retune("lippage.high", four, WHO, blank))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("overlay.lippage.high.why");
    }

    @Test
    void an_overlay_is_never_changed_by_adding_to_it() {
        Overlay none = Overlay.none();
        Overlay more = none.switchOff("PRE-001", WHO, WHY);
        assertThat(none.switchedOff()).isEmpty();
        assertThat(more.switchedOff("PRE-001")).map(Overlay.SwitchedOff::who).contains(WHO);
        assertThat(more.switchedOff("PRE-002")).isEmpty();
    }

    private static Overlay lippage(double millimetres) {
        return Overlay.none().retune("lippage.high", Length.of(millimetres, Unit.MILLIMETRE), WHO, WHY);
    }

    private static Advisor advisor(Rulebase rulebase) {
        return Advisor.of(rulebase, Options.defaults());
    }

    private static List<String> rules(Recommendation recommendation) {
        return recommendation.outcomes().stream()
                .map(Outcome::reasons)
                .flatMap(List::stream)
                .map(Reason::rule)
                .distinct()
                .toList();
    }
}
