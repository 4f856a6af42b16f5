package stoneprocess.examples.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.json.Json;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.rules.Advisor;

/** Says what differs between the plans of two surveys. */
@Command(
        name = "compare",
        description = "Plans the floors of two surveys and says what differs: in what they say and in what is advised.",
        mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
    private static final String STANDARD_INPUT = "-";

    private final Console console;

    @Parameters(index = "0", paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String first = "";

    @Parameters(index = "1", paramLabel = "OTHER", description = "Another survey in JSON; - reads standard input.")
    private String second = "";

    @Mixin
    private AnswerForm form = new AnswerForm();

    CompareCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (first.equals(STANDARD_INPUT) && second.equals(STANDARD_INPUT)) {
            throw new InvalidInputException(
                    "OTHER", second, "a file, when the first survey is read from standard input");
        }
        Advisor advisor = Advisor.standard();
        AskedFloor floor = new AskedFloor(console, advisor);
        Difference difference =
                Difference.between(advisor.recommend(floor.survey(first)), advisor.recommend(floor.survey(second)));
        form.print(
                console,
                advisor.rulebase(),
                () -> Json.DIFFERENCE.print(difference),
                answers -> answers.document(difference));
        return ExitCode.DONE;
    }
}
