package stoneprocess.examples.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.json.Json;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;

/** Says what is worth finding out. */
@Command(
        name = "what-else",
        description = "Says which unknown facts of a survey can change what is advised, and how to find them out.")
final class WhatElseCommand extends ConsoleCommand {
    @Parameters(paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Mixin
    private AnswerForm form = new AnswerForm();

    @Override
    public Integer call() {
        Advisor advisor = Advisor.standard();
        FloorSurvey floor = survey(survey);
        form.print(
                console(),
                Json.WHAT_ELSE,
                advisor.whatElse(floor),
                (text, found) -> text.document(found, advisor.recommend(floor)));
        return ExitCode.DONE;
    }
}
