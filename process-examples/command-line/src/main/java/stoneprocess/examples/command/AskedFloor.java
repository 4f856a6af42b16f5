package stoneprocess.examples.command;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.Advisor;

/**
 * The floor that a question is about, and what of it.
 *
 * @param console where the survey is read
 * @param advisor who plans
 */
record AskedFloor(Console console, Advisor advisor) {
    FloorSurvey survey(String name) {
        return Json.SURVEY.with(advisor.options().sequence()).read(console.read(name));
    }

    /** The subject that is named; without a name the floor, or the open field. */
    static Subject subject(Topic<?> topic, Optional<String> named, Recommendation recommendation) {
        if (named.isPresent()) {
            return Subject.parse(named.get(), "SUBJECT");
        }
        if (topic.scope() == Scope.STEP) {
            List<String> reached = recommendation.outcomes().stream()
                    .filter(outcome -> outcome.topic() == topic)
                    .map(Outcome::subject)
                    .map(Subject::key)
                    .toList();
            throw new InvalidInputException(
                    "SUBJECT",
                    "missing",
                    reached.isEmpty() ? "a plan with grits to work" : "one of " + String.join(", ", reached));
        }
        return topic.scope() == Scope.FLOOR ? Subject.FLOOR : Subject.OPEN_FIELD;
    }
}
