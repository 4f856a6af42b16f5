package stoneprocess.rules.testkit.law;

import java.util.List;
import java.util.function.Predicate;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.space.Smallest;

/**
 * A statement that holds for every survey, whatever the rules. A law knows the trade and the design, not the rules.
 *
 * @param id permanent id in lower case with hyphens
 * @param prose the law in plain words
 * @param reason why it must hold
 * @param meeting where it has something to say; a law that hardly meets a floor has hardly been tried
 * @param check finds where it does not
 */
public record Law(String id, String prose, String reason, Meeting meeting, Check check) {
    /** What a law presumes. It weakens no law: a breach counts wherever it is found. */
    @FunctionalInterface
    public interface Meeting {
        /** Every survey is met. */
        Meeting ALWAYS = (respondent, survey, seed) -> true;

        /** True where the survey, varied by the seed as in the check, is one of which the law speaks. */
        boolean isMet(Respondent respondent, FloorSurvey survey, long seed);

        /** Met where the answer is of a kind. */
        static Meeting where(Predicate<Recommendation> answer) {
            return (respondent, survey, seed) -> answer.test(respondent.recommend(survey));
        }
    }

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

    /** True where the law has something to say. */
    public boolean meets(Respondent respondent, FloorSurvey survey, long seed) {
        return meeting.isMet(respondent, survey, seed);
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
