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
import stoneprocess.core.estimate.WorkingTimes;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.rules.text.Words;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Ledger;
import stoneprocess.rules.text.document.Wording;

/** A schedule: on which days each task is done, and what is done by then. */
public final class ScheduleSheet {
    private ScheduleSheet() {}

    /**
     * The document of a schedule.
     *
     * @param recommendation the plan
     * @param times when the site is worked
     * @param schedule its schedule
     * @param done the tasks that are done by the moment asked about; empty when none was
     */
    public static Document of(
            Recommendation recommendation, WorkingTimes times, Schedule schedule, Optional<List<Bar>> done) {
        Objects.requireNonNull(times, "times");
        Objects.requireNonNull(schedule, "schedule");
        Objects.requireNonNull(done, "done");
        Draft draft = Draft.titled(Wording.name(recommendation.survey().title()), recommendation.parameters())
                .paragraph(phrase("schedule.summary")
                        .with("days", schedule.days())
                        .with("crews", times.crews())
                        .with("bays", times.bays())
                        .with("week", times.daysAWeek()));
        Map<String, List<Bar>> byTask = new LinkedHashMap<>();
        schedule.bars().stream()
                .filter(bar -> !bar.isWait())
                .forEach(bar -> byTask.computeIfAbsent(bar.task(), task -> new ArrayList<>())
                        .add(bar));
        Ledger days = Ledger.headed(
                Stream.of("schedule.first-day", "schedule.last-day", "schedule.hours")
                        .map(Wording::phrase)
                        .toList(),
                EstimateWords.NOTHING);
        byTask.forEach((task, bars) -> days.row(
                EstimateWords.task(task),
                List.of(
                        Wording.number(
                                bars.stream().mapToInt(Bar::firstDay).min().orElseThrow()),
                        Wording.number(
                                bars.stream().mapToInt(Bar::lastDay).max().orElseThrow()),
                        EstimateWords.hours(new TimeSpan(bars.stream()
                                .mapToDouble(
                                        bar -> bar.end().minutes() - bar.start().minutes())
                                .sum()))),
                EstimateWords.NOTHING));
        draft.section("schedule.tasks").add(days.table());
        done.ifPresent(bars -> done(draft, byTask, bars));
        draft.section("exposure.cautions").bullet("schedule.likely").bullet("schedule.no-temperature");
        if (!recommendation.warnings().isEmpty()) {
            draft.section("estimate.hazards");
            for (SafetyWarning warning : recommendation.warnings()) {
                draft.bullet(Words.whoDecides(warning));
            }
        }
        return draft.section("closing.heading").paragraph("closing.deference").document();
    }

    private static void done(Draft draft, Map<String, List<Bar>> byTask, List<Bar> done) {
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
    }
}
