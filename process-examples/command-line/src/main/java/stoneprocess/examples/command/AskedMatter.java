package stoneprocess.examples.command;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Parameters;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/** A floor, and one thing that its plan settles, as the command line names them. */
class AskedMatter {
    /** How a subject is named. */
    static final String SUBJECT = "floor, open-field, edge, local-repair, or a track with / and a grit, for example"
            + " open-field/resin-800. Without it the floor, or the open field.";

    @Parameters(index = "0", paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Parameters(index = "1", paramLabel = "TOPIC", description = "Id of a topic, for example first-cut.")
    private String topic = "";

    /** Name of the survey's file. */
    String survey() {
        return survey;
    }

    /** The topic; one that there is not is refused. */
    Topic<?> topic() {
        return Topics.named(topic);
    }

    /** The subject that is named; without a name the floor, or the open field. */
    Subject subject(Optional<String> named, Recommendation plan) {
        if (named.isPresent()) {
            return Subject.parse(named.get(), "SUBJECT");
        }
        if (topic().scope() == Scope.STEP) {
            List<String> reached = plan.outcomes().stream()
                    .filter(outcome -> outcome.topic() == topic())
                    .map(Outcome::subject)
                    .map(Subject::key)
                    .toList();
            throw new InvalidInputException(
                    "SUBJECT",
                    "missing",
                    reached.isEmpty() ? "a plan with grits to work" : "one of " + String.join(", ", reached));
        }
        return topic().scope() == Scope.FLOOR ? Subject.FLOOR : Subject.OPEN_FIELD;
    }
}
