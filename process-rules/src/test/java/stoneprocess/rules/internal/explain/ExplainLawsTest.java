package stoneprocess.rules.internal.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.WhyNotKind;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.rules.Floors;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.space.SurveyGenerator;
import stoneprocess.rules.testkit.law.Respondent;

/**
 * All laws of answers over drawn surveys, judged in one run; how many is set by the property explain.surveys, and from
 * which on by explain.first, so that many can be judged in parts.
 */
class ExplainLawsTest {
    private static final int SURVEYS = Integer.getInteger("explain.surveys", 300);
    private static final int FIRST = Integer.getInteger("explain.first", 0);
    private static final double[] KNOWN = {100, 95, 80, 50};
    private static final List<String> COMPLAINTS = new ArrayList<>();
    private static final Map<WhyNotKind, Integer> KINDS = new EnumMap<>(WhyNotKind.class);
    private static final Map<Status, Integer> STATUSES = new EnumMap<>(Status.class);

    /** No grits lead from the first cut to the only one on hand, which few drawn floors that may be cut show. */
    private static final FloorSurvey FINEST_ALONE = Floors.damaged(Floors.scratched(ScratchClass.FELT_BY_NAIL, 40))
            .set(SurveyField.GRADES, List.of(GritSequence.standard().get("resin-3000", "")))
            .build();

    private static int neighbours;
    private static int woken;

    @BeforeAll
    static void judge_all_surveys() {
        List<LoadedRule> rules = ShippedRules.load();
        Engine engine = new Engine(rules);
        Explainer explainer = new Explainer(RuleMeanings.of(rules));
        Respondent respondent = Respondent.of(rules, Parameters.standard(), GritSequence.standard());
        for (int i = FIRST; i < FIRST + SURVEYS; i++) {
            if (i % 5_000 == 4_999) {
                System.err.printf("Answers judged up to survey %d, complaints: %d%n", i, COMPLAINTS.size());
            }
            SplittableRandom random = new SplittableRandom(1955 + i);
            FloorSurvey survey =
                    SurveyGenerator.of(new Share(KNOWN[i % KNOWN.length])).draw(random);
            judge("survey " + i, respondent.recommend(survey), rules, engine, explainer, random);
        }
        judge(
                "the finest grit alone",
                respondent.recommend(FINEST_ALONE),
                rules,
                engine,
                explainer,
                new SplittableRandom(1955));
    }

    private static void judge(
            String floor,
            Recommendation recommendation,
            List<LoadedRule> rules,
            Engine engine,
            Explainer explainer,
            SplittableRandom random) {
        ExplainLaws laws =
                new ExplainLaws(rules, engine, recommendation, Answers.of(explainer.explain(recommendation)), random);
        laws.judge();
        laws.complaints().forEach(complaint -> COMPLAINTS.add(floor + ", " + complaint));
        laws.kinds().forEach((kind, number) -> KINDS.merge(kind, number, Integer::sum));
        STATUSES.merge(recommendation.status(), 1, Integer::sum);
        neighbours += laws.neighbours();
        woken += laws.woken();
    }

    @Test
    void every_answer_holds_to_every_law() {
        assertThat(COMPLAINTS).isEmpty();
    }

    @Test
    void every_kind_of_answer_and_every_kind_of_plan_is_among_them() {
        assertThat(STATUSES).containsOnlyKeys(Status.values());
        assertThat(KINDS.keySet()).contains(WhyNotKind.values());
    }

    @Test
    void conditions_were_changed_and_silent_rules_woken_on_every_floor() {
        assertThat(neighbours).isGreaterThan(10 * SURVEYS);
        assertThat(woken).isGreaterThan(5 * SURVEYS);
    }
}
