package stoneprocess.examples.command;

import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;

/** A value that a topic is asked to have, as the command line names it. */
final class AskedValue {
    @Mixin
    private AskedMatter matter = new AskedMatter();

    @Parameters(
            index = "2",
            paramLabel = "VALUE",
            description =
                    "A value of the topic that it does not have, for example resin-400 for first-cut or grit-path.")
    private String value = "";

    @Parameters(index = "3", arity = "0..1", paramLabel = "SUBJECT", description = AskedMatter.SUBJECT)
    private Optional<String> subject = Optional.empty();

    /** Name of the survey's file. */
    String survey() {
        return matter.survey();
    }

    /** The topic; one that there is not is refused. */
    Topic<?> topic() {
        return matter.topic();
    }

    /** The value's key. */
    String key() {
        return AskedFloor.value(topic(), value);
    }

    /** What it is asked about. */
    Subject subject(Recommendation plan) {
        return matter.subject(subject, plan);
    }
}
