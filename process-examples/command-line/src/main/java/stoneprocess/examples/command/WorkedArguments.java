package stoneprocess.examples.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import stoneprocess.core.estimate.WorkingTimes;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;

/** The options that tell when a site is worked, and by how many crews. */
final class WorkedArguments {
    @Option(names = "--start", paramLabel = "DATE", description = "First day of the work; else a Monday.")
    private Optional<String> start = Optional.empty();

    @Option(names = "--crews", paramLabel = "COUNT", description = "Crews with a machine each.", defaultValue = "1")
    private int crews = 1;

    @Option(
            names = "--bays",
            paramLabel = "COUNT",
            description = "Parts of the floor, worked side by side; else one for each crew.")
    private Optional<Integer> bays = Optional.empty();

    @Option(names = "--shift", paramLabel = "HOURS", description = "Length of a shift, such as \"6 h\".")
    private Optional<String> shift = Optional.empty();

    @Option(names = "--shifts-a-day", paramLabel = "COUNT", description = "Shifts of a day.", defaultValue = "1")
    private int shiftsADay = 1;

    @Option(
            names = "--days-a-week",
            paramLabel = "COUNT",
            description = "Working days from Monday on, such as 5; else those of the house.")
    private Optional<Integer> daysAWeek = Optional.empty();

    @Option(
            names = "--closed",
            paramLabel = "BAY:DAYS",
            description = "Days on which a bay is closed, counted from the first day, such as 2:3-5.")
    private List<String> closed = new ArrayList<>();

    /** The first day of the work, where it was given. */
    Optional<LocalDate> start() {
        return start.map(given -> Amounts.date(given, "--start", "a date: 2026-12-01"));
    }

    /** The times given; else those of the house, and the shift of the survey where it tells one. */
    WorkingTimes times(FloorSurvey survey, Parameters parameters) {
        TimeSpan length = shift.map(text -> Amounts.quantity(text, "--shift", TimeSpan.class, "6 h"))
                .or(() -> survey.answer(SurveyField.SHIFT).value())
                .orElseGet(() -> parameters.get("estimate.shift", TimeSpan.class));
        return new WorkingTimes(
                length,
                shiftsADay,
                daysAWeek.orElseGet(() -> (int)
                        parameters.get("estimate.days-a-week", Count.class).number()),
                start().map(day -> day.getDayOfWeek().getValue()).orElse(1),
                crews,
                bays.orElse(crews),
                closed.stream().map(WorkedArguments::closure).toList());
    }

    private static WorkingTimes.Closure closure(String text) {
        if (!text.matches("\\d{1,4}:\\d{1,4}(-\\d{1,4})?")) {
            throw new InvalidInputException("--closed", text, "a bay and its days, such as 2:3-5");
        }
        String[] parts = text.split("[:-]");
        return new WorkingTimes.Closure(
                Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), Integer.parseInt(parts[parts.length - 1]));
    }
}
