package stoneprocess.examples.command;

import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stoneprocess.core.exposure.RoomAir;
import stoneprocess.core.exposure.RunningEngine;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Concentration;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Volume;

/** Asks what an engine does to the air of a room. */
@Command(name = "carbon-monoxide", description = "An engine in a room: gas, air, airing. Never clears it.")
@SuppressWarnings("NullAway.Init")
final class CarbonMonoxideCommand extends ConsoleCommand {
    private static final class Engine {
        @Option(names = "--engine", paramLabel = "POWER", description = "Power of a small petrol engine, as \"5 hp\".")
        private Optional<Power> power = Optional.empty();

        @Option(names = "--source", paramLabel = "FLOW", description = "Gas it gives off, as \"1.4 m3/h\".")
        private Optional<Airflow> source = Optional.empty();
    }

    @Option(names = "--room", required = true, paramLabel = "VOLUME", description = "The empty room, as \"66 m3\".")
    private Volume room;

    @Option(
            names = "--air",
            paramLabel = "FLOW",
            defaultValue = "0 m3/h",
            description = "Fresh air known to come in; else none.")
    private Airflow air;

    @Option(
            names = "--background",
            paramLabel = "GAS",
            defaultValue = "0 ppm",
            description = "Gas in that air, as \"9 ppm\"; else none.")
    private Concentration background;

    @ArgGroup(multiplicity = "1")
    private Engine engine;

    @Option(names = "--running", required = true, paramLabel = "TIME", description = "Running time, up to \"8 h\".")
    private TimeSpan running;

    @Mixin
    private ExposureAnswer answer = new ExposureAnswer();

    @Override
    public Integer call() {
        RoomAir roomAir = new RoomAir(room, air, background);
        answer.print(console(), new RunningEngine(roomAir, engine.power, engine.source, running));
        return ExitCode.DONE;
    }
}
