package stoneprocess.examples.command;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stoneprocess.core.exposure.NoiseDay;
import stoneprocess.core.exposure.NoisePeriod;
import stoneprocess.core.quantity.SoundLevel;
import stoneprocess.core.quantity.TimeSpan;

/** Asks how a day's noise stands. */
@Command(name = "noise", description = "A day's noise by OSHA and NIOSH: time, dose, verdict.")
final class NoiseCommand extends ConsoleCommand {
    @SuppressWarnings("NullAway.Init")
    private static final class Period {
        @Option(
                names = "--level",
                required = true,
                paramLabel = "LEVEL",
                description = "Level at the ear, as \"95 dBA\"; may be repeated.")
        private SoundLevel level;

        @Option(
                names = "--time",
                required = true,
                paramLabel = "TIME",
                description = "How long in the day, as \"2 h\".")
        private TimeSpan time;
    }

    @ArgGroup(exclusive = false, multiplicity = "1..*")
    private List<Period> periods = new ArrayList<>();

    @Mixin
    private ExposureAnswer answer = new ExposureAnswer();

    @Override
    public Integer call() {
        List<NoisePeriod> day = periods.stream()
                .map(period -> new NoisePeriod(period.level, period.time))
                .toList();
        answer.print(console(), new NoiseDay(day));
        return ExitCode.DONE;
    }
}
