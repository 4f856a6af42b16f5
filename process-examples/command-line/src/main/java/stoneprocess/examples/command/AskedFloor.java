package stoneprocess.examples.command;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
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

    /** The key of a value; a first cut may be named by its grit, such as {@code resin-400}. */
    static String value(Topic<?> topic, String named) {
        return Stream.of(Cut.values())
                .filter(cut ->
                        topic == Topics.FIRST_CUT && named.equals(cut.bond().key() + "-" + cut.number()))
                .filter(cut -> cut != Cut.REFRESH && cut != Cut.NONE)
                .map(Cut::key)
                .findFirst()
                .orElse(named);
    }
}
