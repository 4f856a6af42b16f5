package stoneprocess.rules.testkit.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Traffic;
import stoneprocess.core.survey.WaterDrop;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Shortfall;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Upkeep;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.Options;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.feature.Condition.Scratches;
import stoneprocess.rules.feature.Decided.Sealing;
import stoneprocess.rules.feature.Equipment.MachineOnHand;
import stoneprocess.rules.internal.engine.HandMadeRule;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.overlay.Overlay;
import stoneprocess.rules.space.Forgetting;
import stoneprocess.rules.space.Smallest;

/** Each law finds what it is meant to find: on a floor on which it holds, a spoilt rulebase or answer breaks it. */
class LawMutantTest {
    private static final Respondent SHIPPED = Respondent.of(Advisor.standard());
    private static final FloorSurvey MARBLE_TO_POLISH = Floors.calciteMarble(Floors.scratched(ScratchClass.SEEN, 60))
            .set(SurveyField.GOAL, Goal.POLISH)
            .set(SurveyField.FINISH_NOW, Finish.HONE)
            .build();

    @Test
    void a_path_without_its_middle_grade_is_illegal() {
        Respondent skipping = tampered(changedPath(path -> {
            if (path.size() > 2) {
                path.remove(1);
            }
            return path;
        }));

        assertKilled(Laws.GRIT_PATH_IS_LEGAL, skipping, MARBLE_TO_POLISH, "resin-400 to resin-1500 rises by more than");
        assertFound(Laws.GRIT_PATH_IS_LEGAL, skipping);
    }

    @Test
    void a_path_that_stops_early_is_illegal() {
        Respondent hasty = tampered(changedPath(path -> path.subList(0, path.size() - 1)));

        assertKilled(Laws.GRIT_PATH_IS_LEGAL, hasty, MARBLE_TO_POLISH, "ends at the resin grade nearest 3000");
    }

    @Test
    void a_path_that_starts_too_fine_is_illegal() {
        Respondent timid = tampered(changedPath(path -> path.subList(1, path.size())));

        assertKilled(Laws.GRIT_PATH_IS_LEGAL, timid, MARBLE_TO_POLISH, "starts at the resin grade nearest 400");
    }

    @Test
    void a_path_that_turns_back_is_illegal() {
        Respondent turning = tampered(changedPath(path -> {
            path.add(1, "metal-100");
            return path;
        }));

        assertKilled(Laws.GRIT_PATH_IS_LEGAL, turning, MARBLE_TO_POLISH, "goes back to a harder bond");
    }

    @Test
    void a_step_up_after_metal_is_illegal() {
        FloorSurvey deep =
                Floors.damaged(Floors.scratched(ScratchClass.DEEP, 60)).build();
        Respondent rising = tampered(changedPath(path -> new ArrayList<>(
                List.of("metal-50", "metal-100", "resin-200", "resin-400", "resin-800", "resin-1500", "resin-3000"))));

        assertKilled(Laws.GRIT_PATH_IS_LEGAL, rising, deep, "rises after metal");
    }

    @Test
    void a_rulebase_retuned_to_wider_steps_is_illegal() {
        Overlay wider = Overlay.none()
                .retune("step-ratio.most", new Share(900), "test", "spoilt")
                .retune("step-ratio.aim", new Share(900), "test", "spoilt");
        Respondent hurried = Respondent.of(Advisor.of(Rulebase.with(wider), Options.defaults()));

        assertKilled(Laws.GRIT_PATH_IS_LEGAL, hurried, MARBLE_TO_POLISH, "rises by more than 270 %");
    }

    @Test
    void a_grade_whose_number_hides_a_coarse_grain_leaves_a_coarser_scratch() {
        List<AbrasiveGrade> grades = GritSequence.standard().grades().stream()
                .map(grade -> grade.key().equals("resin-800")
                        ? new AbrasiveGrade(
                                grade.bond(),
                                grade.number(),
                                Range.of(Length.of(50, Unit.MICROMETRE), Length.of(60, Unit.MICROMETRE)))
                        : grade)
                .toList();
        Respondent mislabelled = Respondent.of(
                Advisor.of(Rulebase.standard(), Options.defaults().withSequence(GritSequence.of(grades))));
        FloorSurvey anyGrades =
                MARBLE_TO_POLISH.toBuilder().unknown(SurveyField.GRADES).build();

        assertKilled(
                Laws.SCRATCH_NEVER_GETS_COARSER,
                mislabelled,
                anyGrades,
                "resin-800 leaves no coarser scratch than resin-400");
    }

    @Test
    void a_path_that_goes_back_a_grade_leaves_a_coarser_scratch() {
        Respondent backwards = tampered(changedPath(path -> {
            if (path.size() > 2) {
                Collections.swap(path, 1, 2);
            }
            return path;
        }));

        assertKilled(
                Laws.SCRATCH_NEVER_GETS_COARSER,
                backwards,
                MARBLE_TO_POLISH,
                "resin-800 leaves no coarser scratch than resin-1500");
        assertFound(Laws.SCRATCH_NEVER_GETS_COARSER, backwards);
    }

    @Test
    void a_rule_that_heeds_the_first_fact_only_makes_the_order_matter() {
        AtomicInteger asked = new AtomicInteger();
        Respondent hasty =
                withRule(HandMadeRule.of("BAD-001", Topics.UPKEEP, MachineOnHand.class, machine -> true, machine -> {
                    Upkeep[] all = Upkeep.values();
                    boolean first = asked.getAndIncrement() % 6 == 0;
                    return Topics.UPKEEP.need(first ? all[machine.machine().ordinal()] : all[0]);
                }));

        assertThat(firstSeedKilling(Laws.ORDER_MAKES_NO_DIFFERENCE, hasty, MARBLE_TO_POLISH))
                .isPresent();
        assertHolds(Laws.ORDER_MAKES_NO_DIFFERENCE, SHIPPED, MARBLE_TO_POLISH);
    }

    @Test
    void a_rule_that_reads_unknown_scratches_as_deep_is_bolder() {
        Respondent bold = withRule(HandMadeRule.of(
                "BAD-001",
                Topics.FIRST_CUT,
                Scratches.class,
                scratches -> scratches.mayBe().size() > 1,
                scratches -> Topics.FIRST_CUT.on(Subject.FLOOR).needAtLeast(Cut.COARSE_HONE)));

        assertKilled(everyAnswer(), bold, MARBLE_TO_POLISH, "at most fine-hone");
        assertFound(Laws.UNKNOWN_IS_NEVER_BOLDER, bold);
    }

    @Test
    void a_shortfall_that_goes_with_the_machine_is_found() {
        FloorSurvey floor = Floors.calciteMarble(Floors.dull(80)).build();
        List<LoadedRule> rules = without();
        rules.add(HandMadeRule.of(
                "BAD-002",
                Topics.SHORTFALLS,
                MachineOnHand.class,
                machine -> machine.machine() == MachineClass.PLANETARY && machine.known() == Presence.PRESENT,
                machine -> Topics.SHORTFALLS.need(Shortfall.NO_PLANETARY)));

        assertKilled(Laws.LESS_ON_HAND_IS_NEVER_BETTER, of(rules), floor, "no shortfall less");
        assertFound(Laws.LESS_ON_HAND_IS_NEVER_BETTER, of(rules));
        assertHolds(Laws.LESS_ON_HAND_IS_NEVER_BETTER, SHIPPED, floor);
    }

    @Test
    void a_rule_that_warns_of_what_is_planned_only_takes_the_warning_away() {
        FloorSurvey thirsty = MARBLE_TO_POLISH.toBuilder()
                .set(SurveyField.WATER_DROP, WaterDrop.DARKENS_SLOWLY)
                .build();
        List<LoadedRule> rules = without("SAF-011", "SAF-021");
        rules.add(HandMadeRule.of(
                "BAD-001",
                Topics.WARNINGS,
                Sealing.class,
                sealing -> sealing.mayBe().contains(Sealer.IMPREGNATOR),
                sealing -> Topics.WARNINGS.need(Hazard.SEALER_VAPOUR)));

        assertKilled(everyAnswer(), of(rules), thirsty, "a warning of sealer-vapour");
    }

    @Test
    void a_rulebase_in_which_loose_pieces_stop_the_work_only_in_quiet_rooms_lifts_refusals() {
        FloorSurvey loose = Floors.unremarkable()
                .set(SurveyField.SOUNDING, Sounding.LOOSE)
                .set(SurveyField.TRAFFIC, Traffic.LIGHT)
                .build();
        Respondent deaf = respondent(
                survey -> SHIPPED.recommend(
                        survey.answer(SurveyField.TRAFFIC).value().equals(Optional.of(Traffic.LIGHT))
                                ? survey
                                : survey.toBuilder()
                                        .set(SurveyField.SOUNDING, Sounding.SOUND)
                                        .build()),
                SHIPPED::recommendInOrder);

        assertThat(firstSeedKilling(Laws.REFUSAL_STANDS, deaf, loose)).isPresent();
        assertHolds(Laws.REFUSAL_STANDS, SHIPPED, loose);
    }

    @Test
    void a_rule_that_changes_its_mind_gives_another_answer_again() {
        AtomicInteger asked = new AtomicInteger();
        Respondent moody = withRule(HandMadeRule.of(
                "BAD-001",
                Topics.UPKEEP,
                Scratches.class,
                scratches -> true,
                scratches -> Topics.UPKEEP.need(
                        asked.getAndIncrement() % 2 == 0 ? Upkeep.KEEP_COATING : Upkeep.NO_FLUORIDE)));

        assertKilled(Laws.SAME_ANSWER_AGAIN, moody, MARBLE_TO_POLISH, "Decision[topic=upkeep");
        assertFound(Laws.SAME_ANSWER_AGAIN, moody);
    }

    @Test
    void a_path_with_a_grade_of_another_sequence_is_not_read_back() {
        Respondent foreign = respondent(
                survey -> {
                    Recommendation answer = SHIPPED.recommend(survey);
                    return new Recommendation(
                            answer.status(),
                            answer.plan(),
                            answer.refusals(),
                            answer.warnings(),
                            answer.questions(),
                            answer.counterOffers(),
                            answer.outcomes(),
                            answer.survey(),
                            GritSequence.of(GritSequence.standard().grades(Bond.METAL)),
                            answer.parameters(),
                            answer.rulebase());
                },
                SHIPPED::recommendInOrder);

        assertThat(Laws.JSON_IS_LOSSLESS.violations(foreign, MARBLE_TO_POLISH, 0))
                .singleElement()
                .satisfies(violation -> assertThat(violation.found()).contains("not accepted"));
        assertHolds(Laws.JSON_IS_LOSSLESS, SHIPPED, MARBLE_TO_POLISH);
        assertFound(Laws.JSON_IS_LOSSLESS, foreign);
    }

    @Test
    void the_smallest_survey_still_breaks_the_law_and_nothing_more_can_be_forgotten() {
        Respondent hasty = tampered(changedPath(path -> path.subList(0, path.size() - 1)));

        FloorSurvey smallest = Laws.GRIT_PATH_IS_LEGAL.smallestViolation(hasty, MARBLE_TO_POLISH, 0);

        assertThat(Laws.GRIT_PATH_IS_LEGAL.violations(hasty, smallest, 0)).isNotEmpty();
        assertThat(smallest.zones()).isEmpty();
        assertThat(Forgetting.known(smallest))
                .hasSizeLessThan(Forgetting.known(MARBLE_TO_POLISH).size());
    }

    @Test
    void what_has_to_be_known_becomes_unremarkable() {
        FloorSurvey odd = MARBLE_TO_POLISH.toBuilder()
                .set(SurveyField.TRAFFIC, Traffic.LIGHT)
                .set(SurveyField.WATER_DROP, WaterDrop.DARKENS_AT_ONCE)
                .build();

        FloorSurvey smallest = Smallest.of(
                odd,
                survey -> survey.answer(SurveyField.TRAFFIC).isKnown()
                        && survey.answer(SurveyField.WATER_DROP)
                                .value()
                                .equals(Optional.of(WaterDrop.DARKENS_AT_ONCE)));

        assertThat(Forgetting.known(smallest)).containsExactlyInAnyOrder("site.traffic", "stone.water-drop");
        assertThat(smallest.answer(SurveyField.TRAFFIC).value()).contains(Traffic.HEAVY);
    }

    private static void assertKilled(Law law, Respondent mutant, FloorSurvey survey, String expected) {
        assertHolds(law, SHIPPED, survey);
        assertThat(law.violations(mutant, survey, 0))
                .extracting(Violation::expected)
                .anyMatch(found -> found.contains(expected));
    }

    /** Among the floors on which the laws are tried, and no more of them. */
    private static void assertFound(Law law, Respondent mutant) {
        assertThat(LawFloors.finds(law, mutant)).as("a floor of the normal run").isPresent();
    }

    private static void assertHolds(Law law, Respondent respondent, FloorSurvey survey) {
        assertThat(law.violations(respondent, survey, 0)).isEmpty();
    }

    private static Optional<Long> firstSeedKilling(Law law, Respondent mutant, FloorSurvey survey) {
        assertFound(law, mutant);
        return LongStream.range(0, 20)
                .filter(seed -> !law.violations(mutant, survey, seed).isEmpty())
                .boxed()
                .findFirst();
    }

    private static Law everyAnswer() {
        return Laws.unknownIsNeverBolder(Integer.MAX_VALUE);
    }

    private static Respondent withRule(LoadedRule added) {
        List<LoadedRule> rules = new ArrayList<>(ShippedRules.load());
        rules.add(added);
        return of(rules);
    }

    private static List<LoadedRule> without(String... ids) {
        List<LoadedRule> rules = new ArrayList<>(ShippedRules.load());
        rules.removeIf(rule -> Arrays.asList(ids).contains(rule.id()));
        return rules;
    }

    private static Respondent of(List<LoadedRule> rules) {
        return Respondent.of(rules, Parameters.standard(), GritSequence.standard());
    }

    private static Respondent tampered(UnaryOperator<Recommendation> change) {
        return respondent(
                survey -> change.apply(SHIPPED.recommend(survey)),
                (survey, seed) -> change.apply(SHIPPED.recommendInOrder(survey, seed)));
    }

    private static Respondent respondent(
            Function<FloorSurvey, Recommendation> answer, BiFunction<FloorSurvey, Long, Recommendation> inOrder) {
        return new Respondent() {
            @Override
            public List<LoadedRule> rules() {
                return SHIPPED.rules();
            }

            @Override
            public Recommendation recommend(FloorSurvey survey) {
                return answer.apply(survey);
            }

            @Override
            public Recommendation recommendInOrder(FloorSurvey survey, long seed) {
                return inOrder.apply(survey, seed);
            }

            @Override
            public Recommendation recommendPinned(FloorSurvey survey, List<Outcome> pins) {
                return SHIPPED.recommendPinned(survey, pins);
            }
        };
    }

    private static UnaryOperator<Recommendation> changedPath(UnaryOperator<List<String>> change) {
        Subject openField = new Subject.OfTrack(TrackKind.OPEN_FIELD);
        return recommendation -> {
            List<Outcome> outcomes = recommendation.outcomes().stream()
                    .map(outcome -> outcome instanceof Decision<?> decision
                                    && decision.topic() == Topics.GRIT_PATH
                                    && decision.subject().equals(openField)
                            ? withValues(decision, change.apply(new ArrayList<>(decision.keys())))
                            : outcome)
                    .toList();
            return new Recommendation(
                    recommendation.status(),
                    Optional.empty(),
                    recommendation.refusals(),
                    recommendation.warnings(),
                    recommendation.questions(),
                    recommendation.counterOffers(),
                    outcomes,
                    recommendation.survey(),
                    recommendation.sequence(),
                    recommendation.parameters(),
                    recommendation.rulebase());
        };
    }

    private static <V> Outcome withValues(Decision<V> decision, List<String> keys) {
        return new Decision<>(
                decision.topic(),
                decision.subject(),
                decision.topic().parse(keys, "values"),
                decision.won(),
                decision.outweighed(),
                decision.vetoed(),
                decision.inputs());
    }
}
