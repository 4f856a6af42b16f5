package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.estimate.Bar;
import stoneprocess.core.estimate.Schedule;
import stoneprocess.core.estimate.Wait;
import stoneprocess.core.estimate.Work;
import stoneprocess.core.estimate.WorkingTimes;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.quantity.Temperature;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.survey.Finish;
import stoneprocess.rules.text.Words;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Ledger;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** A schedule: on which days each task is done, and what is done by then. */
public final class ScheduleSheet {
    private ScheduleSheet() {}

    /**
     * A finish that the floor could have.
     *
     * @param done whether its work is done by the moment asked about
     * @param days calendar days until the floor is back in use, 1 or more
     */
    public record FinishBy(Finish finish, boolean done, int days) {
        public FinishBy {
            Objects.requireNonNull(finish, "finish");
        }
    }

    /**
     * The document of a schedule.
     *
     * @param recommendation the plan
     * @param times when the site is worked
     * @param schedule its schedule
     * @param done the tasks that are done by the moment asked about; empty when none was
     * @param finishes what the floor could have by that moment; none when none was
     */
    public static Document of(
            Recommendation recommendation,
            WorkingTimes times,
            Schedule schedule,
            Optional<List<Bar>> done,
            List<FinishBy> finishes) {
        Objects.requireNonNull(times, "times");
        Objects.requireNonNull(schedule, "schedule");
        Objects.requireNonNull(done, "done");
        Objects.requireNonNull(finishes, "finishes");
        Draft draft = Draft.titled(Wording.name(recommendation.survey().title()), recommendation.parameters())
                .paragraph(phrase(schedule.waitsFor().isPresent() ? "schedule.stops" : "schedule.summary")
                        .with("days", schedule.days())
                        .with("crews", times.crews())
                        .with("bays", times.bays())
                        .with("week", times.daysAWeek()));
        Map<String, List<Bar>> byTask = new LinkedHashMap<>();
        Map<String, List<Bar>> waits = new LinkedHashMap<>();
        schedule.bars()
                .forEach(bar -> (bar.isWait() ? waits : byTask)
                        .computeIfAbsent(bar.task(), task -> new ArrayList<>())
                        .add(bar));
        Ledger days = Ledger.headed(
                Stream.of("schedule.first-day", "schedule.last-day", "schedule.hours")
                        .map(Wording::phrase)
                        .toList(),
                EstimateWords.NOTHING);
        List<String> tasks = List.copyOf(byTask.keySet());
        byTask.forEach((task, bars) -> {
            double minutes = bars.stream()
                    .mapToDouble(bar -> bar.end().minutes() - bar.start().minutes())
                    .sum();
            days.row(EstimateWords.task(task), row(bars, Words.hours(new TimeSpan(minutes))), EstimateWords.NOTHING);
            if (waits.containsKey(task)) {
                int next = tasks.indexOf(task) + 1;
                Optional<String> following = next < tasks.size() ? Optional.of(tasks.get(next)) : Optional.empty();
                days.row(wait(task, following), row(waits.get(task), EstimateWords.NOTHING), EstimateWords.NOTHING);
            }
        });
        draft.section("schedule.tasks").add(days.table());
        schedule.waitsFor().ifPresent(warm -> draft.bullet(cold(schedule, warm)));
        done.ifPresent(bars -> done(draft, schedule, byTask, bars));
        draft.list(
                "schedule.finishes",
                finishes,
                could -> phrase(could.done() ? "schedule.finish.done" : "schedule.finish.late")
                        .with("finish", could.finish())
                        .with("days", could.days()));
        draft.section("exposure.cautions").bullet("schedule.likely");
        if (schedule.waitsFor().isEmpty()) {
            draft.bullet("schedule.no-temperature");
        }
        if (!recommendation.warnings().isEmpty()) {
            draft.section("estimate.hazards");
            for (SafetyWarning warning : recommendation.warnings()) {
                draft.bullet(Words.whoDecides(warning));
            }
        }
        return draft.section("closing.heading").paragraph("closing.deference").document();
    }

    private static Wording wait(String task, Optional<String> following) {
        if (task.equals(Work.TEST_AREA.key())) {
            return phrase("schedule.wait.test-area");
        }
        if (task.equals(Work.SEALING.key())) {
            return Wording.of(Wait.SEALER_CURING);
        }
        return following.equals(Optional.of(Work.SEALING.key()))
                ? Wording.of(Wait.DRYING)
                : phrase("schedule.wait").with("task", EstimateWords.task(task));
    }

    private static List<Wording> row(List<Bar> bars, Wording hours) {
        return List.of(
                Wording.number(bars.stream().mapToInt(Bar::firstDay).min().orElseThrow()),
                Wording.number(bars.stream().mapToInt(Bar::lastDay).max().orElseThrow()),
                hours);
    }

    private static Wording cold(Schedule schedule, Temperature warm) {
        Wording held = schedule.held().isEmpty()
                ? phrase("schedule.cold.in-use")
                : Wording.list(Joint.COMMA, schedule.held(), EstimateWords::task);
        return phrase("schedule.cold").with("warm", warm).with("held", held);
    }

    private static void done(Draft draft, Schedule schedule, Map<String, List<Bar>> byTask, List<Bar> done) {
        draft.section("schedule.done");
        byTask.forEach((task, bars) -> {
            long finished = bars.stream().filter(done::contains).count();
            draft.bullet(phrase(
                            finished == bars.size()
                                    ? "schedule.done.all"
                                    : finished == 0 ? "schedule.done.none" : "schedule.done.part")
                    .with("task", EstimateWords.task(task))
                    .with("finished", finished)
                    .with("bays", bars.size()));
        });
        schedule.waitsFor()
                .ifPresent(warm -> schedule.held().stream()
                        .filter(task -> !byTask.containsKey(task))
                        .forEach(task -> draft.bullet(phrase("schedule.done.cold")
                                .with("task", EstimateWords.task(task))
                                .with("warm", warm))));
    }
}
