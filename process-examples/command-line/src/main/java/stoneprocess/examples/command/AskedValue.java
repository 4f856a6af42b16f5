package stoneprocess.examples.command;

import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;

/** A floor, and a value that a topic is asked to have, as the command line names them. */
final class AskedValue extends AskedMatter {
    @Parameters(
            index = "2",
            paramLabel = "VALUE",
            description =
                    "A value of the topic that it does not have, for example resin-400 for first-cut or grit-path.")
    private String value = "";

    @Parameters(index = "3", arity = "0..1", paramLabel = "SUBJECT", description = SUBJECT)
    private Optional<String> subject = Optional.empty();

    /** The value's key; a first cut may be named by its grit, such as {@code resin-400}. */
    String key() {
        return Stream.of(Cut.values())
                .filter(cut ->
                        topic() == Topics.FIRST_CUT && value.equals(cut.bond().key() + "-" + cut.number()))
                .filter(cut -> cut != Cut.REFRESH && cut != Cut.NONE)
                .map(Cut::key)
                .findFirst()
                .orElse(value);
    }

    /** What it is asked about. */
    Subject subject(Recommendation plan) {
        return subject(subject, plan);
    }
}
