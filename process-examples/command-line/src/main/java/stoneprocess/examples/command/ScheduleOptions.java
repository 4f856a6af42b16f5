package stoneprocess.examples.command;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import stoneprocess.core.estimate.Bar;
import stoneprocess.core.estimate.Schedule;
import stoneprocess.core.problem.InvalidInputException;

/** The options that lay a job on the days of a calendar. */
final class ScheduleOptions {
    private static final String SHIFTS = " shifts";
    private static final String DAYS = " days";
    private static final String EXAMPLES =
            "a date such as 2026-12-18, a number of days such as \"20 days\", or of shifts such as \"12 shifts\"";

    @Option(names = "--schedule", description = "Print on which days each task is done, in place of the estimate.")
    private boolean asked;

    @Option(names = "--bars", description = "Print the schedule as JSON for a bar chart and nothing else.")
    private boolean bars;

    @Option(
            names = "--until",
            paramLabel = "DATE|DAYS|SHIFTS",
            description =
                    "Say what is done by then, and which finishes could be: a date with --start, or a number such as \"20 days\" or \"12 shifts\".")
    private Optional<String> until = Optional.empty();

    boolean isAsked() {
        return asked || bars || until.isPresent();
    }

    boolean isUntil() {
        return until.isPresent();
    }

    boolean isJson() {
        return bars;
    }

    /** The tasks that are done by the moment asked about; empty when none was. */
    Optional<List<Bar>> done(Schedule schedule, Optional<LocalDate> start) {
        return until.map(text -> {
            if (text.endsWith(SHIFTS)) {
                return schedule.doneByShift(number(text, SHIFTS));
            }
            if (text.endsWith(DAYS)) {
                return schedule.doneBy(number(text, DAYS));
            }
            LocalDate last = Amounts.date(text, "--until", EXAMPLES);
            LocalDate first =
                    start.orElseThrow(() -> new InvalidInputException("--start", "none", "the first day, for a date"));
            long days = ChronoUnit.DAYS.between(first, last) + 1;
            if (days < 1 || days > Integer.MAX_VALUE) {
                throw new InvalidInputException("--until", text, "a day not before " + first);
            }
            return schedule.doneBy((int) days);
        });
    }

    private static int number(String text, String unit) {
        String number = text.substring(0, text.length() - unit.length());
        if (!number.matches("\\d{1,4}")) {
            throw new InvalidInputException("--until", text, EXAMPLES);
        }
        return Integer.parseInt(number);
    }
}
