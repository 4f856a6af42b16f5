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
import stoneprocess.core.quantity.Acidity;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Concentration;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Friction;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.PendulumValue;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.SoundLevel;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Voltage;
import stoneprocess.core.quantity.Volume;

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
        Conversions.quantity(line, Acidity.class, Dimension.ACIDITY);
        Conversions.quantity(line, Airflow.class, Dimension.AIRFLOW);
        Conversions.quantity(line, Angle.class, Dimension.ANGLE);
        Conversions.quantity(line, Concentration.class, Dimension.CONCENTRATION);
        Conversions.quantity(line, Current.class, Dimension.CURRENT);
        Conversions.quantity(line, Friction.class, Dimension.FRICTION);
        Conversions.quantity(line, Length.class, Dimension.LENGTH);
        Conversions.quantity(line, Mass.class, Dimension.MASS);
        Conversions.quantity(line, PendulumValue.class, Dimension.PENDULUM_VALUE);
        Conversions.quantity(line, Power.class, Dimension.POWER);
        Conversions.quantity(line, Share.class, Dimension.SHARE);
        Conversions.quantity(line, SoundLevel.class, Dimension.SOUND_LEVEL);
        Conversions.quantity(line, TimeSpan.class, Dimension.TIME);
        Conversions.quantity(line, Voltage.class, Dimension.VOLTAGE);
        Conversions.quantity(line, Volume.class, Dimension.VOLUME);
        Conversions.count(line);
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
