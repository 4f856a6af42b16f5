package stoneprocess.examples.command;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.answer.Why;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.Advisor;

/** Says why a matter was decided as it was. */
@Command(name = "why", description = "Plans the floor of a survey and says why a topic was decided as it was.")
final class WhyCommand extends ConsoleCommand {
    @Mixin
    private AskedMatter asked = new AskedMatter();

    @Parameters(index = "2", arity = "0..1", paramLabel = "SUBJECT", description = AskedMatter.SUBJECT)
    private Optional<String> subject = Optional.empty();

    @Mixin
    private AnswerForm form = new AnswerForm();

    @Override
    public Integer call() {
        Advisor advisor = Advisor.standard();
        Topic<?> topic = asked.topic();
        Recommendation plan = advisor.recommend(survey(asked.survey()));
        Why why = advisor.why(plan, topic, asked.subject(subject, plan));
        form.print(console(), Json.WHY, why, (answers, answer) -> answers.document(answer, plan));
        return ExitCode.DONE;
    }
}
