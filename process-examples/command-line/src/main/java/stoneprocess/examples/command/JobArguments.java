package stoneprocess.examples.command;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stoneprocess.core.estimate.CrewTiming;
import stoneprocess.core.json.Json;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.survey.FloorSurvey;

/** The options that tell what a plan does not know about a job. */
final class JobArguments {
    @Option(
            names = "--edges",
            paramLabel = "LENGTH",
            description = "Length of walls and fittings, such as \"48 m\"; else the survey's or a square's.")
    private Optional<String> edges = Optional.empty();

    @Option(
            names = "--night",
            paramLabel = "SHARE",
            description = "Share of the work at night rates, such as \"50 %%\".")
    private Optional<String> night = Optional.empty();

    @Option(
            names = "--work",
            paramLabel = "NAME=HOURS",
            description = "Hours of one person for a task, in place of the usual ones, such as \"fill-cracks=3-5 h\".")
    private Map<String, String> work = new LinkedHashMap<>();

    @Option(
            names = "--timing",
            paramLabel = "FILE",
            description = "The crew's own times in JSON, instead of the defaults.")
    private Optional<String> timing = Optional.empty();

    @Mixin
    private WorkedArguments worked = new WorkedArguments();

    /** The first day of the work, where it was given. */
    Optional<LocalDate> start() {
        return worked.start();
    }

    List<CrewTiming> timings(Console console) {
        return timing.map(console::read)
                .map(text -> Json.CREW_TIMES.read(text).times())
                .orElse(List.of());
    }

    JobOptions options(FloorSurvey survey, Parameters parameters) {
        JobOptions options = JobOptions.defaults().withWorked(worked.times(survey, parameters));
        if (edges.isPresent()) {
            options = options.withEdges(Amounts.quantity(edges.get(), "--edges", Length.class, "48 m"));
        }
        if (night.isPresent()) {
            options = options.withNight(Amounts.quantity(night.get(), "--night", Share.class, "50 %"));
        }
        for (Map.Entry<String, String> task : work.entrySet()) {
            options = options.withTime(
                    task.getKey(), Amounts.range(task.getValue(), "--work." + task.getKey(), TimeSpan.class, "3-5 h"));
        }
        return options;
    }
}
