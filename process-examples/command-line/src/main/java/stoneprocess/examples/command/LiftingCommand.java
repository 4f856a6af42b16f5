package stoneprocess.examples.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stoneprocess.core.exposure.Coupling;
import stoneprocess.core.exposure.Lift;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.TimeSpan;

/** Asks whether one person may lift a load so. */
@Command(name = "lifting", description = "A lift by one person against its recommended limit.")
@SuppressWarnings("NullAway.Init")
final class LiftingCommand extends ConsoleCommand {
    @Option(names = "--load", required = true, paramLabel = "MASS", description = "The load, as \"20 kg\".")
    private Mass load;

    @Option(names = "--reach", required = true, paramLabel = "LENGTH", description = "Hands to ankles, level.")
    private Length reach;

    @Option(names = "--height", required = true, paramLabel = "LENGTH", description = "Hands above the floor.")
    private Length height;

    @Option(names = "--travel", required = true, paramLabel = "LENGTH", description = "Way up or down.")
    private Length travel;

    @Option(
            names = "--turn",
            paramLabel = "ANGLE",
            defaultValue = "0 deg",
            description = "Turn of the body; else none.")
    private Angle turn;

    @Option(names = "--lifts", required = true, paramLabel = "NUMBER", description = "Lifts that were counted.")
    private Count lifts;

    @Option(
            names = "--counted",
            paramLabel = "TIME",
            defaultValue = "15 min",
            description = "Counted over; else \"15 min\".")
    private TimeSpan counted;

    @Option(names = "--duration", required = true, paramLabel = "TIME", description = "Of the task, up to \"8 h\".")
    private TimeSpan duration;

    @Option(names = "--hold", required = true, paramLabel = "HOLD", description = "good, fair or poor.")
    private Coupling hold;

    @Mixin
    private ExposureAnswer answer = new ExposureAnswer();

    @Override
    public Integer call() {
        answer.print(console(), new Lift(load, reach, height, travel, turn, lifts, counted, duration, hold));
        return ExitCode.DONE;
    }
}
