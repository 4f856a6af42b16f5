package stoneprocess.examples.command;

import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stoneprocess.core.exposure.DustControl;
import stoneprocess.core.exposure.GrindingTool;
import stoneprocess.core.exposure.SilicaTask;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.term.Term;

/** Asks whether grinding meets Table 1 of the silica rule. */
@Command(name = "silica", description = "Dust of grinding by Table 1: met, or what is missing.")
@SuppressWarnings("NullAway.Init")
final class SilicaCommand extends ConsoleCommand {
    /** How dust is kept down, as the command line says it. */
    enum Dust implements Term {
        WATER_FED,
        BUCKET,
        DRY,
        COLLECTOR
    }

    @Option(names = "--tool", required = true, paramLabel = "TOOL", description = "floor-grinder or hand-grinder.")
    private GrindingTool tool;

    @Option(
            names = "--dust",
            required = true,
            paramLabel = "CONTROL",
            description = "water-fed, bucket, dry or collector.")
    private Dust dust;

    @Option(names = "--wheel", required = true, paramLabel = "SIZE", description = "Wheel or pad, as \"5 in\".")
    private Length wheel;

    @Option(names = "--time", required = true, paramLabel = "TIME", description = "In one shift, as \"4 h\".")
    private TimeSpan time;

    @Option(names = "--outdoors", description = "In the open; else indoors.")
    private boolean outdoors;

    @Option(names = "--vacuum-between", description = "Vacuumed (HEPA) between passes; else not.")
    private boolean vacuumBetween;

    @Option(names = "--shroud", description = "Collector: the shroud made for the tool is on.")
    private boolean shroud;

    @Option(names = "--airflow", paramLabel = "FLOW", description = "Collector: what it draws, as \"125 cfm\".")
    private Optional<Airflow> airflow = Optional.empty();

    @Option(names = "--makers-airflow", paramLabel = "FLOW", description = "Collector: what the maker asks for.")
    private Optional<Airflow> makersAirflow = Optional.empty();

    @Option(names = "--filter", paramLabel = "SHARE", description = "Collector: held back, as \"99 %%\".")
    private Optional<Share> filter = Optional.empty();

    @Option(names = "--filter-cleaning", description = "Collector: cleans its filter, or has a cyclone.")
    private boolean filterCleaning;

    @Mixin
    private ExposureAnswer answer = new ExposureAnswer();

    @Override
    public Integer call() {
        answer.print(console(), new SilicaTask(tool, control(), wheel, !outdoors, time, vacuumBetween));
        return ExitCode.DONE;
    }

    private DustControl control() {
        boolean collectorTold = shroud
                || filterCleaning
                || Stream.of(airflow, makersAirflow, filter).anyMatch(Optional::isPresent);
        if (dust != Dust.COLLECTOR && collectorTold) {
            throw new InvalidInputException(
                    "--dust", dust.key(), "collector, when its shroud, airflow, filter or cleaning is given");
        }
        return switch (dust) {
            case WATER_FED -> new DustControl.WaterFed();
            case BUCKET -> new DustControl.BucketWater();
            case DRY -> new DustControl.Nothing();
            case COLLECTOR ->
                new DustControl.Collector(
                        shroud,
                        airflow.orElse(new Airflow(0)),
                        makersAirflow,
                        filter.orElse(new Share(0)),
                        filterCleaning);
        };
    }
}
