package stoneprocess.rules.testkit.law;

import java.util.List;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;

/** Whose answers a law judges: an advisor, or rules put together for a check. */
public interface Respondent {
    /** The rules that it answers by. */
    List<LoadedRule> rules();

    /** The answer to a survey. */
    Recommendation recommend(FloorSurvey survey);

    /** The answer when rules and facts come in an order drawn from the seed. */
    Recommendation recommendInOrder(FloorSurvey survey, long seed);

    /** The answer with topics closed beforehand, whatever the rules say: what is done already. */
    Recommendation recommendPinned(FloorSurvey survey, List<Outcome> pins);

    /** Who answers anew each time, when this one remembers its answers. */
    default Respondent asking() {
        return this;
    }

    /**
     * One that remembers its latest answers, for laws that ask about the same surveys; safe to share between threads.
     *
     * @param respondent who is asked once for each survey
     * @param most how many answers are remembered, at least one
     */
    static Respondent remembering(Respondent respondent, int most) {
        return new RememberingRespondent(respondent, most);
    }

    /**
     * An advisor. In another order its rules are run past the facade.
     *
     * @throws RulebaseException when the advisor has a rule that is not a shipped one
     */
    static Respondent of(Advisor advisor) {
        RuleSet set = new RuleSet(
                ShippedRules.of(advisor.rulebase().cards()),
                advisor.rulebase().parameters(),
                advisor.options().sequence(),
                advisor.rulebase().stamp());
        return new Respondent() {
            @Override
            public List<LoadedRule> rules() {
                return set.rules();
            }

            @Override
            public Recommendation recommend(FloorSurvey survey) {
                return advisor.recommend(survey);
            }

            @Override
            public Recommendation recommendInOrder(FloorSurvey survey, long seed) {
                return set.recommendInOrder(survey, seed);
            }

            @Override
            public Recommendation recommendPinned(FloorSurvey survey, List<Outcome> pins) {
                return set.recommendPinned(survey, pins);
            }
        };
    }

    /** Any rules, also with a safety rule left out or a rule added; such a rulebase never leaves a check. */
    static Respondent of(List<LoadedRule> rules, Parameters parameters, GritSequence sequence) {
        return new RuleSet(
                rules, parameters, sequence, new RulebaseStamp("unreleased", "unstamped", List.of(), List.of()));
    }
}
