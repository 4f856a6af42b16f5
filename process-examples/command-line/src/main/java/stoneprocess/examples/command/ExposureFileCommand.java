package stoneprocess.examples.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.json.Json;

/** Asks all questions of a file. */
@Command(name = "file", description = "All questions of a file in JSON.")
final class ExposureFileCommand extends ConsoleCommand {
    @Parameters(paramLabel = "FILE", description = "Questions in JSON; - reads standard input.")
    private String file = "";

    @Mixin
    private ExposureAnswer answer = new ExposureAnswer();

    @Override
    public Integer call() {
        answer.print(console(), Json.EXPOSURE.read(console().read(file)));
        return ExitCode.DONE;
    }
}
