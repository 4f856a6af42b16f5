package stoneprocess.examples.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.json.Json;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.text.AnswerText;

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
        WhatElse whatElse = advisor.whatElse(survey(survey));
        form.print(console(), Json.WHAT_ELSE, whatElse, AnswerText::document);
        return ExitCode.DONE;
    }
}
