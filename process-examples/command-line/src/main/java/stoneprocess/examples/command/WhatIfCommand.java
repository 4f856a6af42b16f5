package stoneprocess.examples.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.json.Json;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;

/** Says what other facts would bring. */
@Command(
        name = "what-if",
        description = "Plans the floor of a survey, and plans it again with other facts, and says what differs.",
        footer = {
            "",
            "FIELD=VALUE is for example owner.goal=hone, build-up.thickness=\"30 mm\","
                    + " equipment.machines=single-disc,edge-tool, lanes/damages.scratches=\"seen, 40 %%\"."
                    + " unknown forgets an answer, none empties a list."
        },
        mixinStandardHelpOptions = true)
final class WhatIfCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "FIELD=VALUE",
            description = "A fact made another; may be repeated.")
    private List<String> changes = new ArrayList<>();

    @Mixin
    private AnswerForm form = new AnswerForm();

    WhatIfCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Advisor advisor = Advisor.standard();
        List<FieldChange> read = changes.stream().map(FieldChange::parse).toList();
        FloorSurvey before = new AskedFloor(console, advisor).survey(survey);
        FloorSurvey after = before;
        for (FieldChange change : read) {
            after = change.in(after, advisor.options().sequence());
        }
        Difference difference = Difference.between(advisor.recommend(before), advisor.recommend(after));
        form.print(
                console,
                advisor.rulebase(),
                () -> Json.DIFFERENCE.print(difference),
                answers -> answers.document(difference));
        return ExitCode.DONE;
    }
}
