package stoneprocess.rules.testkit.law;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.internal.engine.LoadedRule;

/** Keeps the latest answers of another respondent. */
final class RememberingRespondent implements Respondent {
    private final Respondent asking;
    private final Map<FloorSurvey, Recommendation> answers;

    RememberingRespondent(Respondent asking, int most) {
        this.asking = asking;
        this.answers = new LinkedHashMap<>() {
            @Override
            protected boolean removeEldestEntry(Map.Entry<FloorSurvey, Recommendation> eldest) {
                return size() > most;
            }
        };
    }

    @Override
    public List<LoadedRule> rules() {
        return asking.rules();
    }

    @Override
    public synchronized Recommendation recommend(FloorSurvey survey) {
        return answers.computeIfAbsent(survey, asking::recommend);
    }

    @Override
    public Recommendation recommendInOrder(FloorSurvey survey, long seed) {
        return asking.recommendInOrder(survey, seed);
    }

    @Override
    public Recommendation recommendPinned(FloorSurvey survey, List<Outcome> pins) {
        return asking.recommendPinned(survey, pins);
    }

    @Override
    public Respondent asking() {
        return asking;
    }
}
