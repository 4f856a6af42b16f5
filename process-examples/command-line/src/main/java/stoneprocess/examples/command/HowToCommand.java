package stoneprocess.examples.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;

/** Says what would have to be otherwise for a topic to have a value. */
@Command(
        name = "how-to",
        description = "Finds the smallest changes of a survey, up to two, that give a topic a value.",
        mixinStandardHelpOptions = true)
final class HowToCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Parameters(index = "1", paramLabel = "TOPIC", description = "Id of a topic, for example verdict.")
    private String topic = "";

    @Parameters(index = "2", paramLabel = "VALUE", description = "The value that is wanted, for example go.")
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

    HowToCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Advisor advisor = Advisor.standard();
        Topic<?> asked = Topics.named(topic);
        FloorSurvey read = new AskedFloor(console, advisor).survey(survey);
        Recommendation recommendation = advisor.recommend(read);
        HowTo howTo = advisor.howTo(read, asked, AskedFloor.subject(asked, subject, recommendation), value);
        form.print(
                console,
                advisor.rulebase(),
                () -> Json.HOW_TO.print(howTo),
                answers -> answers.document(howTo, recommendation));
        return howTo.kind() == WayKind.NONE_WITHIN_TWO ? ExitCode.NO_PLAN : ExitCode.DONE;
    }
}
