package stoneprocess.examples.command;

import java.util.Optional;
import picocli.CommandLine.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/** A floor, and one thing that its plan settles, as the command line names them. */
final class AskedMatter {
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

    /** What it is asked about. */
    Subject subject(Optional<String> named, Recommendation plan) {
        return AskedFloor.subject(topic(), named, plan);
    }
}
