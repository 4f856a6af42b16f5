package stoneprocess.examples.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.rules.Advisor;

/** Says what differs between the plans of two surveys. */
@Command(
        name = "compare",
        description = "Plans the floors of two surveys and says what differs: in what they say and in what is advised.")
final class CompareCommand extends ConsoleCommand {
    @Parameters(index = "0", paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String first = "";

    @Parameters(index = "1", paramLabel = "OTHER", description = "Another survey in JSON; - reads standard input.")
    private String second = "";

    @Mixin
    private AnswerForm form = new AnswerForm();

    @Override
    public Integer call() {
        requireOneStandardInput(first, second, "OTHER", "the first survey");
        Advisor advisor = Advisor.standard();
        form.print(console(), advisor.recommend(survey(first)), advisor.recommend(survey(second)));
        return ExitCode.DONE;
    }
}
