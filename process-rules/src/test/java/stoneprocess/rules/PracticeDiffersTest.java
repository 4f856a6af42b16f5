package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.survey.CleaningTrial;
import stoneprocess.core.survey.Extractor;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Acceptance;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.LastGrit;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.StepRule;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Upkeep;
import stoneprocess.core.topic.WaterLevel;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.overlay.Overlay;

/** Where the trade's own sources disagree, a named rule decides and says what others do. Common practice, no source. */
class PracticeDiffersTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final Map<String, Card> CARDS =
            ADVISOR.rulebase().cards().stream().collect(Collectors.toMap(Card::id, card -> card));

    /**
     * @param what what some do against what others do
     * @param floor a floor on which it shows
     * @param ours what the plan has there by the rule
     */
    private record Disagreement(String what, String rule, FloorSurvey.Builder floor, Topic<?> topic, Term ours) {
        @Override
        public String toString() {
            return what + ", " + rule;
        }
    }

    static Stream<Disagreement> disagreements() {
        FloorSurvey.Builder honed = marble().set(SurveyField.GOAL, Goal.HONE);
        FloorSurvey.Builder polished = marble().set(SurveyField.GOAL, Goal.POLISH);
        FloorSurvey.Builder dullGranite = Floors.damaged(Floors.dull(80))
                .set(SurveyField.GOAL, Goal.POLISH)
                .reading(new GlossReading("whole", Geometry.DEG_60, new Gloss(8), SurfaceState.CLEAN_DRY));
        FloorSurvey.Builder slab = TradeFloors.concrete(Floors.scratched(ScratchClass.FELT_BY_NAIL, 20))
                .set(SurveyField.FINISH_NOW, Finish.HONE)
                .set(SurveyField.GOAL, Goal.POLISH);
        return Stream.of(
                new Disagreement(
                        "lippage of 0.8 mm ground away against 3 mm left alone",
                        "CUT-011",
                        Floors.calciteMarble(Floors.lipped(0.8, 20))
                                .set(SurveyField.FINISH_NOW, Finish.HONE)
                                .set(SurveyField.GOAL, Goal.POLISH),
                        Topics.FIRST_CUT,
                        Cut.HONE),
                new Disagreement("start at 220 against 50", "CUT-003", polished, Topics.FIRST_CUT, Cut.HONE),
                new Disagreement(
                        "terrazzo 120 and a sealer against 800 and finer",
                        "END-010",
                        TradeFloors.waxedTerrazzo().set(SurveyField.CLEANING_TRIAL, CleaningTrial.NOT_ENOUGH),
                        Topics.LAST_GRIT,
                        LastGrit.G200),
                new Disagreement(
                        "polished by the name of the last grit against by what is read",
                        "ACC-017",
                        polished,
                        Topics.ACCEPTANCES,
                        Acceptance.FINISH_IS_MEASURED),
                new Disagreement(
                        "gloss as one number against gain and spread",
                        "ACC-018",
                        polished,
                        Topics.ACCEPTANCES,
                        Acceptance.GAIN_OVER_BASELINE),
                new Disagreement("honed from 80 against from 180", "END-001", honed, Topics.LAST_GRIT, LastGrit.G400),
                new Disagreement(
                        "satin as gloss against satin as image clarity",
                        "END-002",
                        marble().set(SurveyField.GOAL, Goal.SATIN),
                        Topics.LAST_GRIT,
                        LastGrit.G800),
                new Disagreement(
                        "three millimetres flattened against relaid",
                        "CUT-014",
                        Floors.damaged(Floors.lipped(3, 20)).set(SurveyField.GOAL, Goal.HONE),
                        Topics.FIRST_CUT,
                        Cut.HEAVY_GRIND),
                new Disagreement(
                        "a low reading: start finer and add passes against start coarser",
                        "CUT-029",
                        dullGranite,
                        Topics.FIRST_CUT,
                        Cut.HONE),
                new Disagreement(
                        "diamond pads every night against as often as traffic asks",
                        "UPK-004",
                        dullGranite,
                        Topics.UPKEEP,
                        Upkeep.LAST_PAD_UPKEEP),
                new Disagreement(
                        "diamond pads every night on soft stone against none",
                        "UPK-006",
                        polished,
                        Topics.UPKEEP,
                        Upkeep.NO_NIGHTLY_DIAMOND),
                new Disagreement(
                        "densifier before against after the cuts",
                        "DEN-001",
                        slab,
                        Topics.DENSIFIER,
                        Densifier.AFTER_FINE_HONE),
                new Disagreement(
                        "acid powder against neutral oxide",
                        "POW-001",
                        polished,
                        Topics.POLISHING_AGENT,
                        PolishingAgent.NEUTRAL_OXIDE),
                new Disagreement(
                        "more against less water at 800", "WAT-002", polished, Topics.WATER_LEVEL, WaterLevel.MODERATE),
                new Disagreement(
                        "concrete ground dry wherever there is an extractor against only without water",
                        "MET-001",
                        TradeFloors.unevenConcrete()
                                .set(SurveyField.EXTRACTOR, Extractor.HEPA)
                                .set(SurveyField.WATER_SUPPLY, Presence.NONE),
                        Topics.METAL_METHOD,
                        WorkMethod.DRY));
    }

    private static FloorSurvey.Builder marble() {
        return Floors.calciteMarble(Floors.scratched(ScratchClass.FELT_BY_NAIL, 20));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("disagreements")
    void a_plan_takes_a_side_by_a_rule_that_says_what_others_do_and_another_without_it(Disagreement one) {
        Recommendation answer = ADVISOR.recommend(one.floor().build());
        Recommendation without = Advisor.of(
                        Rulebase.with(Overlay.none().switchOff(one.rule(), "foreman", "others do it otherwise")),
                        Options.defaults())
                .recommend(one.floor().build());

        assertThat(CARDS.get(one.rule()).differs()).isPresent();
        assertThat(values(answer, one.topic())).contains(one.ours());
        assertThat(won(answer, one.topic())).contains(one.rule());
        assertThat(values(without, one.topic())).isNotEqualTo(values(answer, one.topic()));
    }

    /** The usual steps are what holds anyway; the rule is there to say so, and what others do. */
    @Test
    void a_plan_says_that_others_double_the_number_at_each_grit() {
        Recommendation answer =
                ADVISOR.recommend(marble().set(SurveyField.GOAL, Goal.HONE).build());

        assertThat(CARDS.get("SEQ-004").differs()).isPresent();
        assertThat(values(answer, Topics.STEP_RULE)).containsExactly(StepRule.USUAL);
        assertThat(won(answer, Topics.STEP_RULE)).containsExactly("SEQ-004");
    }

    private static List<Term> values(Recommendation answer, Topic<?> topic) {
        return decisions(answer, topic)
                .flatMap(decision -> decision.values().stream())
                .map(Term.class::cast)
                .toList();
    }

    private static List<String> won(Recommendation answer, Topic<?> topic) {
        return decisions(answer, topic)
                .flatMap(decision -> decision.won().stream())
                .map(Reason::rule)
                .toList();
    }

    private static Stream<Decision<?>> decisions(Recommendation answer, Topic<?> topic) {
        return answer.outcomes().stream()
                .filter(outcome -> outcome.topic() == topic)
                .filter(Decision.class::isInstance)
                .map(outcome -> (Decision<?>) outcome);
    }

    @Test
    void what_others_do_is_said_in_a_full_sentence_of_its_own() {
        List<Card> differing = CARDS.values().stream()
                .filter(card -> card.differs().isPresent())
                .toList();
        assertThat(differing)
                .allSatisfy(card -> assertThat(card.differs().orElseThrow())
                        .as(card.id())
                        .startsWith("Some ")
                        .isNotEqualTo(card.because()));
    }
}
