package stoneprocess.examples.command;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import stoneprocess.core.estimate.Bar;
import stoneprocess.core.estimate.Schedule;
import stoneprocess.core.estimate.WorkingTimes;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.TimeSpan;

/** The options that lay a job on the days of a calendar. */
final class ScheduleOptions {
    private static final String SHIFTS = " shifts";
    private static final String EXAMPLES = "a date such as 2026-12-18, or a number of shifts such as \"12 shifts\"";

    @Option(names = "--schedule", description = "Print on which days each task is done, in place of the estimate.")
    private boolean asked;

    @Option(names = "--bars", description = "Print the schedule as JSON for a bar chart and nothing else.")
    private boolean bars;

    @Option(
            names = "--until",
            paramLabel = "DATE|SHIFTS",
            description =
                    "Say what is done by then: a date with --start, or a number of shifts, such as \"12 shifts\".")
    private Optional<String> until = Optional.empty();

    @Option(names = "--start", paramLabel = "DATE", description = "First day of the work; else a Monday.")
    private Optional<String> start = Optional.empty();

    @Option(names = "--crews", paramLabel = "COUNT", description = "Crews with a machine each.", defaultValue = "1")
    private int crews = 1;

    @Option(names = "--bays", paramLabel = "COUNT", description = "Parts of the floor.", defaultValue = "1")
    private int bays = 1;

    @Option(names = "--shift", paramLabel = "HOURS", description = "Length of a shift, such as \"6 h\".")
    private Optional<String> shift = Optional.empty();

    @Option(names = "--shifts-a-day", paramLabel = "COUNT", description = "Shifts of a day.", defaultValue = "1")
    private int shiftsADay = 1;

    @Option(
            names = "--days-a-week",
            paramLabel = "COUNT",
            description = "Working days from Monday on.",
            defaultValue = "5")
    private int daysAWeek = 5;

    @Option(
            names = "--closed",
            paramLabel = "BAY:DAYS",
            description = "Days on which a bay is closed, counted from the first day, such as 2:3-5.")
    private List<String> closed = new ArrayList<>();

    boolean isAsked() {
        return asked || bars || until.isPresent();
    }

    boolean isJson() {
        return bars;
    }

    WorkingTimes times(Parameters parameters) {
        TimeSpan length = shift.map(text -> Amounts.quantity(text, "--shift", TimeSpan.class, "6 h"))
                .orElseGet(() -> parameters.get("estimate.shift", TimeSpan.class));
        int first = start.map(text -> date(text, "--start").getDayOfWeek().getValue())
                .orElse(1);
        return new WorkingTimes(
                length,
                shiftsADay,
                daysAWeek,
                first,
                crews,
                bays,
                closed.stream().map(ScheduleOptions::closure).toList());
    }

    private static WorkingTimes.Closure closure(String text) {
        if (!text.matches("\\d{1,4}:\\d{1,4}(-\\d{1,4})?")) {
            throw new InvalidInputException("--closed", text, "a bay and its days, such as 2:3-5");
        }
        String[] parts = text.split("[:-]");
        return new WorkingTimes.Closure(
                Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), Integer.parseInt(parts[parts.length - 1]));
    }

    /** The tasks that are done by the moment asked about; empty when none was. */
    Optional<List<Bar>> done(Schedule schedule) {
        return until.map(text -> {
            if (text.endsWith(SHIFTS)) {
                String number = text.substring(0, text.length() - SHIFTS.length());
                if (!number.matches("\\d{1,4}")) {
                    throw new InvalidInputException("--until", text, EXAMPLES);
                }
                return schedule.doneBy(
                        new TimeSpan(Integer.parseInt(number) * schedule.shift().minutes()));
            }
            LocalDate last = date(text, "--until");
            LocalDate first = start.map(given -> date(given, "--start"))
                    .orElseThrow(() -> new InvalidInputException("--start", "none", "the first day, for a date"));
            long days = ChronoUnit.DAYS.between(first, last) + 1;
            if (days < 1 || days > Integer.MAX_VALUE) {
                throw new InvalidInputException("--until", text, "a day not before " + first);
            }
            return schedule.doneBy((int) days);
        });
    }

    private static LocalDate date(String text, String field) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new InvalidInputException(field, text, field.equals("--until") ? EXAMPLES : "a date: 2026-12-01");
        }
    }
}
