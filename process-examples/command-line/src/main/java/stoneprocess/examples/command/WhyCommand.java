package stoneprocess.examples.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.answer.Why;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;

/** Says why a matter was decided as it was. */
@Command(
        name = "why",
        description = "Plans the floor of a survey and says why a topic was decided as it was.",
        mixinStandardHelpOptions = true)
final class WhyCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Parameters(index = "1", paramLabel = "TOPIC", description = "Id of a topic, for example first-cut.")
    private String topic = "";

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "SUBJECT",
            description = "floor, open-field, edge, local-repair, or a track with / and a grade, for example"
                    + " open-field/resin-800. Without it the floor, or the open field.")
    private Optional<String> subject = Optional.empty();

    @Mixin
    private AnswerForm form = new AnswerForm();

    WhyCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Advisor advisor = Advisor.standard();
        AskedFloor floor = new AskedFloor(console, advisor);
        Topic<?> asked = Topics.named(topic);
        Recommendation plan = advisor.recommend(floor.survey(survey));
        Why why = advisor.why(plan, asked, AskedFloor.subject(asked, subject, plan));
        form.print(console, advisor.rulebase(), () -> Json.WHY.print(why), answers -> answers.document(why));
        return ExitCode.DONE;
    }
}
