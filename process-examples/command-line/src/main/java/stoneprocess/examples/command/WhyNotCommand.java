package stoneprocess.examples.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.Advisor;

/** Says why a matter was not decided otherwise. */
@Command(name = "why-not", description = "Plans the floor of a survey and says why a topic does not have a value.")
final class WhyNotCommand extends ConsoleCommand {
    @Mixin
    private AskedValue asked = new AskedValue();

    @Mixin
    private AnswerForm form = new AnswerForm();

    @Override
    public Integer call() {
        Advisor advisor = Advisor.standard();
        Topic<?> topic = asked.topic();
        Recommendation plan = advisor.recommend(survey(asked.survey()));
        WhyNot whyNot = advisor.whyNot(plan, topic, asked.subject(plan), asked.key());
        form.print(console(), Json.WHY_NOT, whyNot, (answers, answer) -> answers.document(answer, plan));
        return ExitCode.DONE;
    }
}
