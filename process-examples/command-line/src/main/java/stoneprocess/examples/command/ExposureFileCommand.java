package stoneprocess.examples.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.json.Json;

/** Asks all questions of a file. */
@Command(name = "file", description = "All questions of a file in JSON.", mixinStandardHelpOptions = true)
final class ExposureFileCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "FILE", description = "Questions in JSON; - reads standard input.")
    private String file = "";

    @Mixin
    private ExposureAnswer answer = new ExposureAnswer();

    ExposureFileCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        answer.print(console, Json.EXPOSURE.read(console.read(file)));
        return ExitCode.DONE;
    }
}
