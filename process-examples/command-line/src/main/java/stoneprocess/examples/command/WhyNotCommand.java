package stoneprocess.examples.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.Advisor;

/** Says why a matter was not decided otherwise. */
@Command(
        name = "why-not",
        description = "Plans the floor of a survey and says why a topic does not have a value.",
        mixinStandardHelpOptions = true)
final class WhyNotCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private AskedValue asked = new AskedValue();

    @Mixin
    private AnswerForm form = new AnswerForm();

    WhyNotCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Advisor advisor = Advisor.standard();
        Topic<?> topic = asked.topic();
        Recommendation plan = advisor.recommend(new AskedFloor(console, advisor).survey(asked.survey()));
        WhyNot whyNot = advisor.whyNot(plan, topic, asked.subject(plan), asked.key());
        form.print(console, advisor.rulebase(), () -> Json.WHY_NOT.print(whyNot), answers -> answers.document(whyNot));
        return ExitCode.DONE;
    }
}
