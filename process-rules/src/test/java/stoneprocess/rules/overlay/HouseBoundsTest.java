package stoneprocess.rules.overlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.parameter.HouseBound;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.rules.Floors;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.FlatRule;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.space.SurveyGenerator;

/** The numbers behind safety rules are found by trying every number on drawn surveys, not by a list. */
class HouseBoundsTest {
    private static final List<LoadedRule> LOCKED =
            ShippedRules.load().stream().filter(rule -> rule.card().locked()).toList();
    private static final List<Reach> CONDITIONS =
            LOCKED.stream().flatMap(rule -> Reach.of(rule)).toList();
    private static final Set<Class<?>> READ =
            CONDITIONS.stream().map(reach -> reach.condition().type()).collect(Collectors.toSet());

    /**
     * A condition of a safety rule, with what the rule says, the fields that the condition reads and the classes that it
     * accepts: a few gouges and gouges over the floor are told apart by a number, and the same is said of both.
     */
    private record Reach(FactPattern condition, String name) {
        static Stream<Reach> of(LoadedRule rule) {
            List<Object> witness = rule.conditions().stream()
                    .map(condition -> Facts.space(condition.type()).stream()
                            .filter(condition::matches)
                            .findFirst()
                            .orElseThrow())
                    .toList();
            String says = FlatRule.of(rule).contribution(witness).toString();
            return rule.conditions().stream()
                    .map(condition -> new Reach(
                            condition, says + " for " + Facts.fields(condition.type()) + " " + accepted(condition)));
        }

        private static List<Object> accepted(FactPattern condition) {
            return Facts.space(condition.type()).stream()
                    .filter(condition::matches)
                    .map(fact -> fact instanceof Feature<?> feature ? feature.mayBe() : fact)
                    .toList();
        }
    }

    /** Drawn floors, and floors near the limits that are rarely drawn. */
    private static final List<FloorSurvey> SURVEYS = Stream.of(
                    LongStream.range(0, 30)
                            .mapToObj(seed -> SurveyGenerator.of(new Share(95)).draw(new SplittableRandom(seed))),
                    DoubleStream.of(2.3, 2.47, 2.53, 2.8).mapToObj(HouseBoundsTest::damp),
                    DoubleStream.of(32, 55, 58, 65, 75, 85).mapToObj(HouseBoundsTest::wanted),
                    DoubleStream.of(6, 7, 8).mapToObj(HouseBoundsTest::supplied),
                    DoubleStream.of(12, 19, 25).mapToObj(HouseBoundsTest::laid))
            .flatMap(surveys -> surveys)
            .toList();

    private static final List<List<Object>> FACTS =
            SURVEYS.stream().map(survey -> facts(survey, Parameters.standard())).toList();
    private static final List<Set<String>> SHIPPED =
            FACTS.stream().map(HouseBoundsTest::met).toList();

    @Test
    void every_number_that_moves_a_floor_into_or_out_of_a_safety_rule_has_a_bound() {
        Set<String> moving = new TreeSet<>();
        for (Parameter parameter : Parameters.standard().all()) {
            List<Parameters> tried = tries(parameter);
            assertThat(tried.isEmpty())
                    .as(parameter.name())
                    .isEqualTo(parameter.house() == HouseBound.FIXED
                            || parameter.value().kept() == 0);
            if (tried.stream().anyMatch(HouseBoundsTest::moves)) {
                moving.add(parameter.name());
            }
        }
        assertThat(moving)
                .containsExactly(
                        "age.asbestos-years",
                        "crew.several",
                        "finish.polish",
                        "floor-load.ordinary",
                        "slip-pendulum.low",
                        "supply.continuous",
                        "supply.light")
                .allSatisfy(
                        name -> assertThat(Parameters.standard().parameter(name).house())
                                .as(name)
                                .isNotEqualTo(HouseBound.FREE));
    }

    @Test
    void what_a_house_may_set_never_takes_a_floor_out_of_the_reach_of_a_safety_rule() {
        for (Parameter parameter : Parameters.standard().all()) {
            if (parameter.house() == HouseBound.FREE) {
                continue;
            }
            for (Parameters house : tries(parameter)) {
                for (int i = 0; i < SURVEYS.size(); i++) {
                    assertThat(met(i, house)).as(parameter.name()).containsAll(SHIPPED.get(i));
                }
            }
        }
    }

    private static boolean moves(Parameters house) {
        for (int i = 0; i < SURVEYS.size(); i++) {
            if (!met(i, house).equals(SHIPPED.get(i))) {
                return true;
            }
        }
        return false;
    }

    /** Sets with one number moved a little and a lot, as far as a house may. */
    private static List<Parameters> tries(Parameter parameter) {
        List<Parameters> tries = new ArrayList<>();
        for (String factor : List.of("0.5", "0.85", "1.15", "2")) {
            Quantity value = Quantity.of(
                    parameter.value().decimal().multiply(new BigDecimal(factor)),
                    parameter.value().dimension().unit());
            try {
                Parameters house = Parameters.standard().with(parameter.name(), value);
                Facts.requireScales(house);
                if (!house.retuned().isEmpty()) {
                    tries.add(house);
                }
            } catch (InvalidInputException e) {
                assertThat(e.accepted()).containsAnyOf("or more", "or less", "only", "limit below it");
            }
        }
        return tries;
    }

    private static List<Object> facts(FloorSurvey survey, Parameters parameters) {
        return Facts.after(
                Optional.empty(), new Situation(survey, parameters, GritSequence.standard()), READ::contains);
    }

    /** What a floor meets by the numbers of a house; numbers that change no fact change nothing. */
    private static Set<String> met(int floor, Parameters house) {
        List<Object> facts = facts(SURVEYS.get(floor), house);
        return facts.equals(FACTS.get(floor)) ? SHIPPED.get(floor) : met(facts);
    }

    /** What safety rules say of which fields, by the conditions that a floor meets. */
    private static Set<String> met(List<Object> facts) {
        return CONDITIONS.stream()
                .filter(reach -> facts.stream().anyMatch(reach.condition()::matches))
                .map(Reach::name)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static FloorSurvey damp(double percent) {
        return Floors.unremarkable()
                .set(SurveyField.MOISTURE, new Share(percent))
                .build();
    }

    private static FloorSurvey supplied(double amperes) {
        return Floors.unremarkable()
                .set(SurveyField.AMPS, Current.of(amperes, Unit.AMPERE))
                .build();
    }

    private static FloorSurvey laid(double years) {
        return Floors.unremarkable()
                .unknown(SurveyField.HAZARDOUS_LAYER)
                .set(SurveyField.LAID_AGO, TimeSpan.of(years, Unit.YEAR))
                .build();
    }

    private static FloorSurvey wanted(double gloss) {
        return Floors.unremarkable()
                .set(SurveyField.GOAL, Goal.MATCH_SAMPLE)
                .set(SurveyField.GOAL_GLOSS, new Gloss(gloss))
                .build();
    }
}
