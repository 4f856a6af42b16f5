package stoneprocess.examples.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import stoneprocess.core.json.Json;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.FloorSurvey;

/** A command. It reads and prints through the console of the command line that it belongs to. */
@Command(mixinStandardHelpOptions = true)
abstract class ConsoleCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    final Console console() {
        return ((FloorCommand) spec.root().userObject()).console();
    }

    /** The survey of a file, or of standard input when the name is a hyphen. */
    final FloorSurvey survey(String name) {
        return Json.SURVEY.read(console().read(name));
    }

    /** Refuses a second file from standard input, which holds one of the two. */
    static void requireOneStandardInput(String first, String second, String parameter, String firstIs) {
        if (first.equals("-") && second.equals("-")) {
            throw new InvalidInputException(
                    parameter, second, "a file, when " + firstIs + " is read from standard input");
        }
    }
}
