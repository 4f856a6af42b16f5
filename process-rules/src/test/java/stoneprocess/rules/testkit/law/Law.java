package stoneprocess.rules.testkit.law;

import java.util.List;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.space.Smallest;

/**
 * A statement that holds for every survey, whatever the rules. A law knows the trade and the design, not the rules.
 *
 * @param id permanent id in lower case with hyphens
 * @param prose the law in plain words
 * @param reason why it must hold
 * @param check finds where it does not
 */
public record Law(String id, String prose, String reason, Check check) {
    /** Looks for violations. */
    @FunctionalInterface
    public interface Check {
        /**
         * @param respondent whose answers are judged
         * @param survey the survey that is answered
         * @param seed chooses among variations of the survey or of the run; the same seed, the same variation
         * @return the violations; none when the law holds
         */
        List<Violation> violations(Respondent respondent, FloorSurvey survey, long seed);
    }

    /** Where an advisor's answer breaks the law; none when it holds. */
    public List<Violation> violations(Advisor advisor, FloorSurvey survey, long seed) {
        return violations(Respondent.of(advisor), survey, seed);
    }

    /** Where an answer breaks the law; none when it holds. */
    public List<Violation> violations(Respondent respondent, FloorSurvey survey, long seed) {
        return check.violations(respondent, survey, seed);
    }

    /**
     * The smallest survey that still breaks the law.
     *
     * @param survey one that breaks it; it is given back as it is when it breaks nothing
     */
    public FloorSurvey smallestViolation(Respondent respondent, FloorSurvey survey, long seed) {
        return Smallest.of(survey, less -> !violations(respondent, less, seed).isEmpty());
    }

    @Override
    public String toString() {
        return id;
    }
}
