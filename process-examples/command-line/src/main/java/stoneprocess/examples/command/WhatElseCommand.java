package stoneprocess.examples.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.json.Json;
import stoneprocess.rules.Advisor;

/** Says what is worth finding out. */
@Command(
        name = "what-else",
        description = "Says which unknown facts of a survey can change what is advised, and how to find them out.",
        mixinStandardHelpOptions = true)
final class WhatElseCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Mixin
    private AnswerForm form = new AnswerForm();

    WhatElseCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Advisor advisor = Advisor.standard();
        WhatElse whatElse = advisor.whatElse(new AskedFloor(console, advisor).survey(survey));
        form.print(
                console,
                advisor.rulebase(),
                () -> Json.WHAT_ELSE.print(whatElse),
                answers -> answers.document(whatElse));
        return ExitCode.DONE;
    }
}
