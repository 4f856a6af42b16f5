package stoneprocess.examples.command;

import java.util.Objects;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What a crew breathes, hears and lifts, slip, slurry, circuits: one sub-command a question. */
@Command(
        name = "exposure",
        description = "Holds noise, gas, dust, slip, slurry, a lift or a circuit against its limit.",
        footer = {"", "Quantities are one argument, a number and a unit: \"95 dBA\"."},
        mixinStandardHelpOptions = true,
        subcommands = {
            NoiseCommand.class,
            CarbonMonoxideCommand.class,
            SilicaCommand.class,
            SlipCommand.class,
            SlurryCommand.class,
            LiftingCommand.class,
            CircuitCommand.class,
            ExposureFileCommand.class
        })
final class ExposureCommand implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(
                Objects.requireNonNull(spec).commandLine(),
                "A question is missing: " + String.join(", ", spec.subcommands().keySet()));
    }
}
