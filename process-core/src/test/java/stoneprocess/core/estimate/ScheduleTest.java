package stoneprocess.core.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Temperature;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;

/** Jobs on the days of a calendar. */
class ScheduleTest {
    private static final TimeSpan EIGHT_HOURS = TimeSpan.of(8, Unit.HOUR);
    private static final double ROUNDING = 0.02;

    private static Estimate estimate(double area, double curingHours) {
        TimeSpan curing = TimeSpan.of(curingHours, Unit.HOUR);
        OtherWork fill = new OtherWork(
                "fill-cracks",
                Range.of(EIGHT_HOURS, EIGHT_HOURS),
                Range.of(curing, curing),
                Optional.of(Jobs.METAL_100.name()));
        return new Estimator(Jobs.STANDARD)
                .estimate(Jobs.marble(Jobs.METAL_100, Jobs.RESIN_400)
                        .withArea(new Area(area))
                        .withOthers(List.of(fill)));
    }

    private static WorkingTimes times(int crews, int bays, WorkingTimes.Closure... closures) {
        return new WorkingTimes(EIGHT_HOURS, 1, 5, 1, crews, bays, List.of(closures));
    }

    private static WorkingTimes everyDay(int bays) {
        return new WorkingTimes(EIGHT_HOURS, 1, 7, 1, 1, bays, List.of());
    }

    private static Schedule schedule(Estimate estimate, WorkingTimes times) {
        return Schedule.of(at(times, estimate.job()), Jobs.STANDARD);
    }

    private static Estimate at(WorkingTimes times, Job job) {
        return new Estimator(Jobs.STANDARD).estimate(job.withSite(job.site().withTimes(times)));
    }

    @Test
    void a_wait_runs_beside_the_work_in_other_bays() {
        Estimate estimate = estimate(400, 72);

        Schedule alone = schedule(estimate, everyDay(1));
        Schedule four = schedule(estimate, everyDay(4));

        assertThat(four.days()).isLessThan(alone.days());
        List<Bar> waits = four.bars().stream().filter(Bar::isWait).toList();
        assertThat(waits).hasSize(4).allMatch(wait -> wait.task().equals("fill-cracks"));
        assertThat(four.bars())
                .as("work in another bay while the first one cures")
                .anyMatch(bar -> !bar.isWait()
                        && bar.bay() != waits.get(0).bay()
                        && bar.start().compareTo(waits.get(0).end()) < 0
                        && bar.end().compareTo(waits.get(0).start()) > 0);
    }

    @Test
    void two_crews_take_fewer_days_than_one_and_weekends_more_than_none() {
        Estimate estimate = estimate(400, 24);
        int one = schedule(estimate, times(1, 4)).days();

        assertThat(schedule(estimate, times(2, 4)).days()).isLessThan(one);
        assertThat(schedule(estimate, new WorkingTimes(EIGHT_HOURS, 1, 7, 1, 1, 4, List.of()))
                        .days())
                .isLessThan(one);
        assertThat(schedule(estimate, new WorkingTimes(EIGHT_HOURS, 2, 5, 1, 1, 4, List.of()))
                        .days())
                .isLessThan(one);
    }

    @Test
    void nobody_works_at_the_weekend_or_in_a_closed_bay() {
        WorkingTimes times = new WorkingTimes(EIGHT_HOURS, 1, 5, 4, 1, 2, List.of(new WorkingTimes.Closure(2, 1, 9)));
        Schedule schedule = schedule(estimate(200, 0), times);

        assertThat(schedule.bars()).allMatch(bar -> bar.bay() != 2 || bar.firstDay() > 9);
        assertThat(schedule.bars())
                .as("Saturday and Sunday are the third and fourth day")
                .noneMatch(bar -> bar.firstDay() % 7 == 3 || bar.firstDay() % 7 == 4);
    }

    @Test
    void what_is_done_by_a_day_and_by_a_number_of_shifts() {
        Schedule schedule = schedule(estimate(400, 24), times(1, 4));
        long tasks = schedule.bars().stream().filter(bar -> !bar.isWait()).count();

        assertThat(schedule.doneBy(schedule.days())).hasSize((int) tasks);
        assertThat(schedule.doneByShift(schedule.days())).hasSize((int) tasks);
        assertThat(schedule.doneBy(1)).isNotEmpty().hasSizeLessThan((int) tasks);
        assertThat(schedule.doneByShift(1)).isEqualTo(schedule.doneBy(1));
        assertThat(schedule.doneByShift(0)).isEmpty();
    }

    @Test
    void times_that_make_no_sense_are_refused_by_name() {
        assertThatThrownBy(() -> times(0, 1))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("times.crews")
                .hasMessageContaining("from 1 to 50");
        assertThatThrownBy(() -> times(1, 2, new WorkingTimes.Closure(3, 1, 2)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("closure.bay")
                .hasMessageContaining("from 1 to 2");
        assertThatThrownBy(() -> new WorkingTimes(TimeSpan.of(9, Unit.HOUR), 3, 5, 1, 1, 1, List.of()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("24 h");
    }

    /** As the estimate has it: beginning and ending a day never take more than half of a shift. */
    @Test
    void half_of_a_short_shift_is_left_for_work() {
        Schedule schedule = schedule(estimate(20, 0), new WorkingTimes(new TimeSpan(30), 1, 5, 1, 1, 1, List.of()));
        assertThat(schedule.shift()).isEqualTo(new TimeSpan(15));
        assertThat(schedule.firstShift()).isEqualTo(new TimeSpan(30));
    }

    /** Common practice, no source: nobody waits for mortar in one place to make the test area in another. */
    @Test
    void what_cures_in_places_runs_beside_other_places_and_the_test_area() {
        Schedule one = schedule(prepared("relay-lipped"), everyDay(1));
        Schedule two = schedule(prepared("relay-lipped", "poultice-oil"), everyDay(1));
        Schedule dried = schedule(prepared("let-dry"), everyDay(1));

        assertThat(bar(one, "test-area").start())
                .isEqualTo(bar(one, "relay-lipped").end());
        assertThat(one.days()).isLessThan(dried.days());
        assertThat(two.days()).as("two waits of three days beside one another").isEqualTo(one.days());
        assertThat(bar(two, "local-lippage").firstDay())
                .as("ground once it has cured and the owner has signed")
                .isGreaterThan(wait(two, "poultice-oil").lastDay())
                .isGreaterThan(wait(two, "test-area").lastDay());
        assertThat(bar(two, Jobs.METAL_100.name()).start())
                .isGreaterThanOrEqualTo(bar(two, "local-lippage").end());
    }

    /** Common practice, no source: for a week's cure the machines go elsewhere. */
    @Test
    void a_long_wait_is_another_visit_that_takes_hours_and_has_its_price() {
        Estimate few = new Estimator(Jobs.STANDARD).estimate(signedIn(TimeSpan.of(2, Unit.DAY)));
        Estimate week = new Estimator(Jobs.STANDARD).estimate(signedIn(TimeSpan.of(7, Unit.DAY)));

        assertThat(few.calendar().returns().high().number()).isZero();
        assertThat(week.calendar().returns().low().number()).isEqualTo(1);
        assertThat(week.calendar().returns().high().number()).isEqualTo(1);
        assertThat(few.lines()).noneMatch(ScheduleTest::isComingBack);
        assertThat(week.lines()).filteredOn(ScheduleTest::isComingBack).hasSize(1);
    }

    private static boolean isComingBack(Line line) {
        return line instanceof Line.WorkLine work && work.work() == Work.COMING_BACK;
    }

    private static Job signedIn(TimeSpan signature) {
        Job job = Jobs.marble(Jobs.METAL_100, Jobs.RESIN_400).withArea(new Area(60));
        return job.withSite(job.site().withSignOff(Range.of(signature, signature)));
    }

    /** Places that take an hour each and three days to cure, ground by hand later. */
    private static Estimate prepared(String... names) {
        TimeSpan hour = TimeSpan.of(1, Unit.HOUR);
        TimeSpan days = TimeSpan.of(3, Unit.DAY);
        List<OtherWork> others = new ArrayList<>();
        for (String name : names) {
            others.add(new OtherWork(name, Range.of(hour, hour), Range.of(days, days), Optional.empty()));
        }
        TimeSpan none = new TimeSpan(0);
        others.add(new OtherWork(
                "local-lippage", Range.of(hour, hour), Range.of(none, none), Optional.of(OtherWork.TEST_AREA)));
        return new Estimator(Jobs.STANDARD)
                .estimate(signedIn(TimeSpan.of(2, Unit.DAY)).withOthers(others));
    }

    private static Bar bar(Schedule schedule, String task) {
        return named(schedule, task, false);
    }

    private static Bar wait(Schedule schedule, String task) {
        return named(schedule, task, true);
    }

    private static Bar named(Schedule schedule, String task, boolean wait) {
        return schedule.bars().stream()
                .filter(bar -> bar.task().equals(task) && bar.isWait() == wait)
                .findFirst()
                .orElseThrow();
    }

    /** A foreman and an owner read one figure. */
    @Property(tries = 200, seed = "1931")
    void one_crew_in_one_bay_takes_the_days_of_the_estimate(
            @ForAll @DoubleRange(min = 1, max = 3000) double area,
            @ForAll @DoubleRange(min = 0, max = 200) double curing,
            @ForAll @IntRange(min = 1, max = 2) int shifts,
            @ForAll @IntRange(min = 1, max = 7) int week,
            @ForAll @IntRange(min = 1, max = 7) int first) {
        Estimate estimate = at(
                new WorkingTimes(EIGHT_HOURS, shifts, week, first, 1, 1, List.of()),
                estimate(area, curing).job());
        assertThat((double) Schedule.of(estimate, Jobs.STANDARD).days())
                .isEqualTo(estimate.calendar().days().likely().kept());
        Statistics.label("waits").collect(curing > 1);
    }

    /** The week of the hand-made example: two days, the weekend, and the third on Monday, which is day five. */
    @Test
    void a_weekend_is_part_of_the_days_until_the_floor_is_used() {
        Estimate fromThursday = at(
                new WorkingTimes(EIGHT_HOURS, 1, 5, 4, 1, 1, List.of()),
                estimate(50, 0).job());
        Estimate everyDay = at(
                new WorkingTimes(EIGHT_HOURS, 1, 7, 4, 1, 1, List.of()),
                estimate(50, 0).job());
        int shifts = (int) everyDay.calendar().days().likely().number();
        assertThat(shifts).isGreaterThan(2).isLessThan(8);
        assertThat(fromThursday.calendar().days().likely().number()).isEqualTo(shifts + 2L);
        assertThat(fromThursday.calendar().workingDays())
                .isEqualTo(everyDay.calendar().workingDays());
    }

    @Property(tries = 200, seed = "1927")
    void a_task_follows_what_it_waits_for_and_nobody_is_in_two_places(
            @ForAll @DoubleRange(min = 5, max = 3000) double area,
            @ForAll @DoubleRange(min = 0, max = 72) double curing,
            @ForAll @IntRange(min = 1, max = 4) int crews,
            @ForAll @IntRange(min = 1, max = 8) int bays,
            @ForAll @IntRange(min = 1, max = 2) int shifts,
            @ForAll @IntRange(min = 1, max = 7) int week,
            @ForAll @IntRange(min = 1, max = 20) int closed,
            @ForAll @IntRange(min = 1, max = 7) int first) {
        Estimate estimate = estimate(area, curing);
        WorkingTimes times = new WorkingTimes(
                EIGHT_HOURS,
                shifts,
                week,
                first,
                crews,
                bays,
                List.of(new WorkingTimes.Closure(1, closed, closed + 2)));
        Schedule schedule = schedule(estimate, times);
        Statistics.label("waits beside work").collect(bays > 1 && curing > 1);

        Map<Integer, List<Bar>> byBay = new HashMap<>();
        Map<Integer, List<Bar>> byCrew = new HashMap<>();
        for (Bar bar : schedule.bars()) {
            byBay.computeIfAbsent(bar.bay(), bay -> new ArrayList<>()).add(bar);
            if (!bar.isWait()) {
                byCrew.computeIfAbsent(bar.crew(), crew -> new ArrayList<>()).add(bar);
            }
        }
        byBay.values().forEach(ScheduleTest::requireOneAfterAnother);
        byCrew.values().forEach(ScheduleTest::requireOneAfterAnother);
        double prepared = byBay.get(0).get(byBay.get(0).size() - 1).end().minutes();
        List<String> course = byBay.get(1).stream().map(Bar::task).distinct().toList();
        assertThat(course).containsExactly("metal-100", "fill-cracks", "resin-400");
        for (int bay = 1; bay <= bays; bay++) {
            assertThat(byBay.get(bay).get(0).start().minutes()).isGreaterThanOrEqualTo(prepared - ROUNDING);
            assertThat(byBay.get(bay).stream().map(Bar::task).distinct().toList())
                    .isEqualTo(course);
        }
        double worked = schedule.bars().stream()
                .filter(bar -> !bar.isWait())
                .mapToDouble(bar -> bar.end().minutes() - bar.start().minutes())
                .sum();
        double reckoned = estimate.work().stream()
                .filter(line -> line.work() != Work.DAILY)
                .mapToDouble(line -> line.elapsed().likely().minutes())
                .sum();
        assertThat(worked).as("the bars add up to the hours").isCloseTo(reckoned, within(ROUNDING * 100));
        assertThat(schedule.end().minutes()).isGreaterThanOrEqualTo(reckoned / crews - ROUNDING);
        assertThat(schedule.bars())
                .allMatch(bar -> bar.firstDay() <= bar.lastDay() && bar.lastDay() <= schedule.days());
    }

    private static void requireOneAfterAnother(List<Bar> bars) {
        for (int i = 1; i < bars.size(); i++) {
            assertThat(bars.get(i).start().minutes())
                    .isGreaterThanOrEqualTo(bars.get(i - 1).end().minutes() - ROUNDING);
        }
    }

    private static Schedule at(double celsius, String task) {
        TimeSpan day = TimeSpan.of(1, Unit.DAY);
        Job job = Jobs.marble(Jobs.RESIN_400, Jobs.RESIN_800)
                .withOthers(List.of(new OtherWork(
                        task,
                        Range.of(TimeSpan.of(1, Unit.HOUR), TimeSpan.of(1, Unit.HOUR)),
                        Range.of(day, day),
                        Optional.of("resin-400"))));
        return Schedule.of(
                at(WorkingTimes.everyDay(EIGHT_HOURS), job), Optional.of(new Temperature(celsius)), Jobs.STANDARD);
    }

    /** 10 degrees Celsius is warm enough, common practice; a poultice dwells and needs none. */
    @Test
    void a_fill_does_not_cure_on_a_cold_floor() {
        Schedule warm = at(10, "fill-cracks");
        assertThat(warm.waitsFor()).isEmpty();
        assertThat(warm.held()).isEmpty();
        assertThat(warm.bars()).extracting(Bar::task).contains("resin-800");

        Schedule cold = at(9.9, "fill-cracks");
        assertThat(cold.waitsFor()).contains(new Temperature(10));
        assertThat(cold.held()).containsExactly("resin-800");
        assertThat(cold.bars()).extracting(Bar::task).contains("fill-cracks").doesNotContain("resin-800");
        assertThat(cold.bars()).noneMatch(Bar::isWait);
        assertThat(cold.doneBy(1000)).extracting(Bar::task).doesNotContain("resin-800");

        assertThat(at(9.9, "poultice-oil").bars())
                .isEqualTo(at(10, "poultice-oil").bars());
    }

    @Test
    void a_sealer_on_a_cold_floor_holds_up_its_use_and_what_follows() {
        Estimate estimate = at(
                WorkingTimes.everyDay(EIGHT_HOURS),
                Jobs.marble(Jobs.RESIN_400).withSealing(Sealing.usual(Jobs.STANDARD)));
        Schedule cold = Schedule.of(estimate, Optional.of(new Temperature(4)), Jobs.STANDARD);
        assertThat(cold.waitsFor()).isPresent();
        assertThat(cold.held()).isEmpty();
        assertThat(cold.bars()).extracting(Bar::task).contains("sealing");
    }
}
