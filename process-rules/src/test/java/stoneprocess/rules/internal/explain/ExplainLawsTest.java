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
import stoneprocess.core.tool.GritSequence;
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
            Recommendation recommendation = respondent.recommend(
                    SurveyGenerator.of(new Share(KNOWN[i % KNOWN.length])).draw(random));
            ExplainLaws laws = new ExplainLaws(
                    rules, engine, recommendation, Answers.of(explainer.explain(recommendation)), random);
            laws.judge();
            for (String complaint : laws.complaints()) {
                COMPLAINTS.add("survey " + i + ", " + complaint);
            }
            laws.kinds().forEach((kind, number) -> KINDS.merge(kind, number, Integer::sum));
            STATUSES.merge(recommendation.status(), 1, Integer::sum);
            neighbours += laws.neighbours();
            woken += laws.woken();
        }
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
