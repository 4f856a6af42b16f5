package stoneprocess.examples.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stoneprocess.core.exposure.SlurrySample;
import stoneprocess.core.quantity.Acidity;

/** Asks where slurry water may go. */
@Command(name = "slurry", description = "Where slurry water may go by its pH.")
@SuppressWarnings("NullAway.Init")
final class SlurryCommand extends ConsoleCommand {
    @Option(names = "--ph", required = true, paramLabel = "PH", description = "Measured, as \"11.5 pH\".")
    private Acidity ph;

    @Mixin
    private ExposureAnswer answer = new ExposureAnswer();

    @Override
    public Integer call() {
        answer.print(console(), new SlurrySample(ph));
        return ExitCode.DONE;
    }
}
