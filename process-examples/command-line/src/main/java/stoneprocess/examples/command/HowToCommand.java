package stoneprocess.examples.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.Advisor;

/** Says what would have to be otherwise for a topic to have a value. */
@Command(
        name = "how-to",
        description = "Finds the smallest changes of a survey, up to two, that give a topic a value.",
        mixinStandardHelpOptions = true)
final class HowToCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private AskedValue asked = new AskedValue();

    @Mixin
    private AnswerForm form = new AnswerForm();

    HowToCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Advisor advisor = Advisor.standard();
        Topic<?> topic = asked.topic();
        FloorSurvey survey = new AskedFloor(console, advisor).survey(asked.survey());
        Recommendation recommendation = advisor.recommend(survey);
        HowTo howTo = advisor.howTo(survey, topic, asked.subject(recommendation), asked.key());
        form.print(
                console,
                advisor.rulebase(),
                () -> Json.HOW_TO.print(howTo),
                answers -> answers.document(howTo, recommendation));
        return howTo.kind() == WayKind.NONE_WITHIN_TWO ? ExitCode.NO_PLAN : ExitCode.DONE;
    }
}
