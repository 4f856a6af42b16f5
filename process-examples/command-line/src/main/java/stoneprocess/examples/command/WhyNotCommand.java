package stoneprocess.examples.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;

/** Says why a matter was not decided otherwise. */
@Command(
        name = "why-not",
        description = "Plans the floor of a survey and says why a topic does not have a value.",
        mixinStandardHelpOptions = true)
final class WhyNotCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Parameters(index = "1", paramLabel = "TOPIC", description = "Id of a topic, for example first-cut.")
    private String topic = "";

    @Parameters(
            index = "2",
            paramLabel = "VALUE",
            description = "A value of the topic that it does not have, for example fine-hone; a grade for grit-path.")
    private String value = "";

    @Parameters(
            index = "3",
            arity = "0..1",
            paramLabel = "SUBJECT",
            description = "floor, open-field, edge, local-repair, or a track with / and a grade, for example"
                    + " open-field/resin-800. Without it the floor, or the open field.")
    private Optional<String> subject = Optional.empty();

    @Mixin
    private AnswerForm form = new AnswerForm();

    WhyNotCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Advisor advisor = Advisor.standard();
        AskedFloor floor = new AskedFloor(console, advisor);
        Topic<?> asked = Topics.named(topic);
        Recommendation plan = advisor.recommend(floor.survey(survey));
        WhyNot whyNot = advisor.whyNot(plan, asked, AskedFloor.subject(asked, subject, plan), value);
        form.print(console, advisor.rulebase(), () -> Json.WHY_NOT.print(whyNot), answers -> answers.document(whyNot));
        return ExitCode.DONE;
    }
}
