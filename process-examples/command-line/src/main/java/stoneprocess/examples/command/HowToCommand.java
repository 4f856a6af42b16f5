package stoneprocess.examples.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.Advisor;

/** Says what would have to be otherwise for a topic to have a value. */
@Command(name = "how-to", description = "Finds the smallest changes of a survey, up to two, that give a topic a value.")
final class HowToCommand extends ConsoleCommand {
    @Mixin
    private AskedValue asked = new AskedValue();

    @Mixin
    private AnswerForm form = new AnswerForm();

    @Override
    public Integer call() {
        Advisor advisor = Advisor.standard();
        Topic<?> topic = asked.topic();
        FloorSurvey survey = survey(asked.survey());
        Recommendation recommendation = advisor.recommend(survey);
        HowTo howTo = advisor.howTo(survey, topic, asked.subject(recommendation), asked.key());
        form.print(console(), Json.HOW_TO, howTo, (answers, way) -> answers.document(way, recommendation));
        return howTo.kind().isNone() ? ExitCode.NO_PLAN : ExitCode.DONE;
    }
}
