package stoneprocess.examples.command;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stoneprocess.core.exposure.CircuitUse;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Voltage;

/** Asks what a circuit carries for hours. */
@Command(name = "circuit", description = "What a single-phase circuit carries for hours.")
@SuppressWarnings("NullAway.Init")
final class CircuitCommand extends ConsoleCommand {
    @Option(names = "--volts", required = true, paramLabel = "VOLTS", description = "As \"230 V\".")
    private Voltage volts;

    @Option(names = "--breaker", required = true, paramLabel = "AMPS", description = "As \"16 A\".")
    private Current breaker;

    @Option(names = "--load", paramLabel = "POWER", description = "As \"1.5 kW\"; may be repeated.")
    private List<Power> loads = new ArrayList<>();

    @Mixin
    private ExposureAnswer answer = new ExposureAnswer();

    @Override
    public Integer call() {
        answer.print(console(), new CircuitUse(volts, breaker, loads));
        return ExitCode.DONE;
    }
}
