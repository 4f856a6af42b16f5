package stoneprocess.examples.command;

import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import stoneprocess.core.exposure.Coupling;
import stoneprocess.core.exposure.GrindingTool;
import stoneprocess.core.exposure.SlipPlace;

/** What a crew breathes, hears and lifts, slip, slurry, circuits: one sub-command a question. */
@Command(
        name = "exposure",
        description = "Holds noise, gas, dust, slip, slurry, a lift or a circuit against its limit.",
        footer = {"", "Quantities are one argument, a number and a unit: \"95 dBA\"."},
        mixinStandardHelpOptions = true)
final class ExposureCommand implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    private ExposureCommand() {}

    /** The command with its questions and with converters for what they ask. */
    static CommandLine line(Console console) {
        CommandLine line = new CommandLine(new ExposureCommand());
        line.addSubcommand(new NoiseCommand(console));
        line.addSubcommand(new CarbonMonoxideCommand(console));
        line.addSubcommand(new SilicaCommand(console));
        line.addSubcommand(new SlipCommand(console));
        line.addSubcommand(new SlurryCommand(console));
        line.addSubcommand(new LiftingCommand(console));
        line.addSubcommand(new CircuitCommand(console));
        line.addSubcommand(new ExposureFileCommand(console));
        Conversions.quantities(line);
        Conversions.term(line, Coupling.class);
        Conversions.term(line, GrindingTool.class);
        Conversions.term(line, SilicaCommand.Dust.class);
        Conversions.term(line, SlipPlace.class);
        return line;
    }

    @Override
    public void run() {
        throw new ParameterException(
                Objects.requireNonNull(spec).commandLine(),
                "A question is missing: " + String.join(", ", spec.subcommands().keySet()));
    }
}
