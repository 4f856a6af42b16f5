package stoneprocess.rules.testkit;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.WeakHashMap;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.testkit.law.Law;
import stoneprocess.rules.testkit.law.Laws;
import stoneprocess.rules.testkit.law.Respondent;
import stoneprocess.rules.testkit.law.Violation;

/**
 * What every rulebase has to keep, as properties of jqwik. A test class implements it and says whose rules are tested; a
 * law that is broken is told with the smallest survey that breaks it.
 */
public interface RulebaseContract {
    /** Who answers. The same one each time, best from a constant: to build a rulebase takes a while. */
    Advisor advisor();

    /** Drawn surveys of all kinds that are accepted. */
    @Provide
    default Arbitrary<FloorSurvey> floorSurveys() {
        return FloorSurveys.any(
                advisor().rulebase().parameters(), advisor().options().sequence());
    }

    /** Surveys that cannot be. */
    @Provide
    default Arbitrary<InvalidSurveys.Attempt> invalidSurveys() {
        return FloorSurveys.invalid();
    }

    /** Each answer by itself keeps the laws of one answer. */
    @Property(tries = 200, seed = "1955")
    default void every_answer_keeps_the_laws(@ForAll("floorSurveys") FloorSurvey survey, @ForAll long seed) {
        Kept.require(Laws.ofOneAnswer(), advisor(), survey, seed);
    }

    /** Answers to a floor and to floors that differ in one thing keep the laws of several answers. */
    @Property(tries = 15, seed = "1955")
    default void answers_beside_each_other_keep_the_laws(
            @ForAll("floorSurveys") FloorSurvey survey, @ForAll long seed) {
        Kept.require(Laws.ofSeveralAnswers(), advisor(), survey, seed);
    }

    /** What cannot be is refused by the name of its field. */
    @Property(tries = 200, seed = "1955")
    default void an_invalid_survey_is_refused_by_name(@ForAll("invalidSurveys") InvalidSurveys.Attempt attempt) {
        try {
            advisor().recommend(attempt.survey().get());
        } catch (InvalidInputException refused) {
            if (refused.field().endsWith(attempt.field())) {
                return;
            }
            throw new AssertionError(attempt + " was refused as " + refused.getMessage(), refused);
        }
        throw new AssertionError(attempt + " was accepted");
    }

    /** Remembers whom it asked, since jqwik makes an instance of a test class for each try. */
    final class Kept {
        private static final int REMEMBERED = 100;
        private static final Map<Advisor, Respondent> RESPONDENTS = Collections.synchronizedMap(new WeakHashMap<>());

        private Kept() {}

        static void require(List<Law> laws, Advisor advisor, FloorSurvey survey, long seed) {
            Respondent respondent = RESPONDENTS.computeIfAbsent(
                    advisor, asked -> Respondent.remembering(Respondent.of(asked), REMEMBERED));
            for (Law law : laws) {
                List<Violation> violations = law.violations(respondent, survey, seed);
                if (!violations.isEmpty()) {
                    Violation first = violations.get(0);
                    throw new AssertionError(law.id() + ": " + law.prose() + ". On " + first.topic() + " of "
                            + first.subject().key() + " expected " + first.expected() + ", found " + first.found());
                }
            }
        }
    }
}
