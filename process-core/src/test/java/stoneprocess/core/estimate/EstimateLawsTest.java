package stoneprocess.core.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Coverage;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;

/** Laws that every estimate obeys, over drawn jobs. */
class EstimateLawsTest {
    private static final Estimator ESTIMATOR = new Estimator(Jobs.STANDARD);
    private static final PriceList PRICES = prices();

    private static PriceList prices() {
        PriceList prices = PriceList.empty("crowns")
                .withMachineHour(MachineClass.SINGLE_DISC, "4")
                .withMachineHour(MachineClass.PLANETARY, "15")
                .withMinimumCharge("300")
                .withNightFactor(new Share(150));
        for (PriceItem item : PriceItem.values()) {
            prices = prices.with(item, "40");
        }
        return prices;
    }

    @Provide
    Arbitrary<Job> jobs() {
        Arbitrary<Double> area =
                Arbitraries.doubles().between(1, 2000).ofScale(2).withoutEdgeCases();
        Arbitrary<Double> edges = Arbitraries.doubles().between(0, 500).ofScale(1);
        Arbitrary<CuttingClass> stone = Arbitraries.of(CuttingClass.class);
        Arbitrary<Integer> sequence =
                Arbitraries.integers().between(1, (1 << 9) - 1).withoutEdgeCases();
        Arbitrary<Boolean> planetary = Arbitraries.of(true, false);
        Arbitrary<Integer> passes = Arbitraries.integers().between(1, 12);
        Arbitrary<Boolean> extras = Arbitraries.of(true, false);
        Arbitrary<Double> night =
                Arbitraries.doubles().between(0, 100).ofScale(0).withoutEdgeCases();
        Arbitrary<Integer> people = Arbitraries.of(1, 2, 2, 3);
        return Combinators.combine(area, edges, stone, sequence, planetary, passes)
                .as(EstimateLawsTest::job)
                .flatMap(job -> Combinators.combine(extras, night, people)
                        .as((more, share, crew) -> onSite(more ? withExtras(job) : job, share, crew)));
    }

    private static Job job(double area, double edges, CuttingClass stone, int sequence, boolean planetary, int passes) {
        List<JobStep> steps = new ArrayList<>();
        List<AbrasiveGrade> grades = GritSequence.standard().grades();
        for (int i = 0; i < 9; i++) {
            if ((sequence & 1 << i) != 0) {
                steps.add(JobStep.of(
                        grades.get(i + 6),
                        Range.of(new Length(0.001 * passes), new Length(0.002 * passes)),
                        planetary ? Jobs.PLANETARY : Jobs.SINGLE_DISC,
                        Range.of(passes, passes + i % 3),
                        i % 4 == 3
                                ? Range.of(new Coverage(0), new Coverage(0))
                                : Range.of(new Coverage(0.2), new Coverage(0.5))));
            }
        }
        return Job.of(new Area(area), Length.of(edges, Unit.METRE), stone, steps, SiteConditions.usual(Jobs.STANDARD));
    }

    private static Job withExtras(Job job) {
        return job.withSealing(Sealing.usual(Jobs.STANDARD))
                .withOthers(List.of(new OtherWork(
                        "fills",
                        Range.of(new TimeSpan(60), new TimeSpan(120)),
                        Range.of(new TimeSpan(720), new TimeSpan(1440)),
                        Optional.of(job.steps().get(0).name()))));
    }

    private static Job onSite(Job job, double night, int people) {
        return job.withSite(job.site().withNight(new Share(night)).withPeople(people));
    }

    @Property(seed = "1955", tries = 300)
    void an_estimate_grows_with_the_area(
            @ForAll("jobs") Job job, @ForAll @DoubleRange(min = 0, max = 500) double more) {
        Statistics.label("steps").collect(job.steps().size() > 4 ? "many" : "few");
        Statistics.label("steps").coverage(drawn -> {
            drawn.check("many").percentage(share -> share > 15);
            drawn.check("few").percentage(share -> share > 15);
        });
        Estimate small = ESTIMATOR.estimate(job);
        Estimate large = ESTIMATOR.estimate(job.withArea(new Area(job.area().kept() + more)));
        requireNotLess(small, large);
        if (more >= 1) {
            assertThat(large.clock().likely()).isGreaterThan(small.clock().likely());
        }
    }

    @Property(seed = "1955", tries = 300)
    void an_estimate_grows_with_the_passes(@ForAll("jobs") Job job, @ForAll @IntRange(min = 0, max = 9) int more) {
        List<JobStep> steps = new ArrayList<>(job.steps());
        JobStep first = steps.get(0);
        steps.set(
                0,
                first.withPasses(
                        Range.of(first.passes().low() + more, first.passes().high() + more)));
        Estimate few = ESTIMATOR.estimate(job);
        Estimate many = ESTIMATOR.estimate(job.withSteps(steps));
        requireNotLess(few, many);
        if (more > 0) {
            assertThat(many.clock().likely()).isGreaterThan(few.clock().likely());
        }
    }

    @Property(seed = "1955", tries = 300)
    void one_step_more_never_makes_a_job_shorter_or_cheaper(@ForAll("jobs") Job job) {
        List<JobStep> steps = new ArrayList<>(job.steps());
        steps.add(JobStep.powder(Jobs.SINGLE_DISC, Range.of(4, 8), Jobs.RESIN_800.water()));
        requireNotLess(ESTIMATOR.estimate(job), ESTIMATOR.estimate(job.withSteps(steps)));
    }

    /** The precondition, a floor with edges at the first step, is counted. */
    @Property(seed = "1955", tries = 300)
    void more_passes_along_the_edges_are_never_faster(
            @ForAll("jobs") Job job, @ForAll @IntRange(min = 0, max = 9) int more) {
        Statistics.label("edges").collect(job.edges().high().kept() > 0);
        Statistics.label("edges").coverage(drawn -> drawn.check(true).percentage(share -> share > 80));
        List<JobStep> steps = new ArrayList<>(job.steps());
        steps.set(
                0,
                steps.get(0)
                        .withEdges(steps.get(0)
                                .edges()
                                .map(passes -> Range.of(passes.low() + more, passes.high() + more))));
        requireNotLess(ESTIMATOR.estimate(job), ESTIMATOR.estimate(job.withSteps(steps)));
    }

    /**
     * Likely hours a square metre rise with the area by no more than the setting up of one bay, at every step, and one more day
     * between any two waits.
     */
    @Property(seed = "1955", tries = 300)
    void a_square_metre_of_a_larger_floor_takes_no_longer_but_for_one_set_up(
            @ForAll("jobs") Job job, @ForAll @DoubleRange(min = 0, max = 500) double more) {
        double area = job.area().kept();
        double small = ESTIMATOR.estimate(job).personHours().likely().minutes() / area;
        double large = ESTIMATOR
                        .estimate(job.withArea(new Area(area + more)))
                        .personHours()
                        .likely()
                        .minutes()
                / new Area(area + more).kept();
        Statistics.label("larger").collect(more > 1);
        Statistics.label("larger").coverage(drawn -> drawn.check(true).percentage(share -> share > 50));
        long waits = Estimate.lines(ESTIMATOR.estimate(job).lines(), Line.WaitLine.class)
                .count();
        double oneSetUp =
                job.site().people() * (60 * (1 + waits) + 6 * job.steps().size()) / new Area(area + more).kept();
        assertThat(large).isLessThanOrEqualTo(small + oneSetUp + 1e-6);
    }

    @Property(seed = "1955", tries = 300)
    void totals_are_the_sums_of_their_lines(@ForAll("jobs") Job job) {
        Estimate estimate = ESTIMATOR.estimate(job);
        for (Case which : Case.values()) {
            double clock = estimate.work().stream()
                    .mapToDouble(line -> line.elapsed().at(which).minutes())
                    .sum();
            double people = estimate.work().stream()
                    .mapToDouble(line -> line.personHours().at(which).minutes())
                    .sum();
            assertThat(estimate.clock().at(which).minutes()).isCloseTo(clock, Percentage.withPercentage(0.01));
            assertThat(estimate.personHours().at(which).minutes()).isCloseTo(people, Percentage.withPercentage(0.01));
        }
    }

    @Property(seed = "1955", tries = 200)
    void an_estimate_is_equal_in_any_units(@ForAll("jobs") Job job) {
        Job american = new Job(
                in(job.area(), Unit.SQUARE_FOOT, Area.class),
                Range.of(
                        in(job.edges().low(), Unit.FOOT, Length.class),
                        in(job.edges().high(), Unit.FOOT, Length.class)),
                job.stone(),
                job.steps().stream().map(EstimateLawsTest::american).toList(),
                job.others().stream()
                        .map(other -> new OtherWork(
                                other.name(), inHours(other.work()), inHours(other.curing()), other.after()))
                        .toList(),
                job.testArea(),
                job.sealing().map(sealing -> new Sealing(inHours(sealing.drying()), inHours(sealing.curing()))),
                job.site()
                        .withSignOff(inHours(job.site().signOff()))
                        .withShift(in(job.site().shift(), Unit.HOUR, TimeSpan.class)));
        Estimate metric = ESTIMATOR.estimate(job);
        Estimate us = ESTIMATOR.estimate(american);
        assertThat(us).isEqualTo(metric);
        assertThat(PRICES.cost(us)).isEqualTo(PRICES.cost(metric));
    }

    private static JobStep american(JobStep step) {
        FloorMachine machine = step.machine();
        return new JobStep(
                step.name(),
                step.kind(),
                Range.of(
                        in(step.depth().low(), Unit.INCH, Length.class),
                        in(step.depth().high(), Unit.INCH, Length.class)),
                new FloorMachine(
                        machine.kind(),
                        in(machine.path(), Unit.INCH, Length.class),
                        in(machine.power(), Unit.KILOWATT, Power.class)),
                step.passes(),
                Range.of(
                        in(step.water().low(), Unit.US_FLUID_OUNCE_PER_SQUARE_FOOT, Coverage.class),
                        in(step.water().high(), Unit.US_FLUID_OUNCE_PER_SQUARE_FOOT, Coverage.class)),
                step.edges(),
                Optional.empty());
    }

    private static <Q extends Quantity> Q in(Q quantity, Unit unit, Class<Q> type) {
        return type.cast(Quantity.of(quantity.in(unit), unit));
    }

    private static Range<TimeSpan> inHours(Range<TimeSpan> range) {
        return Range.of(in(range.low(), Unit.HOUR, TimeSpan.class), in(range.high(), Unit.HOUR, TimeSpan.class));
    }

    @Property(seed = "1955", tries = 200)
    void a_timed_step_takes_the_crews_time_and_says_so_and_no_other_line_changes_its_basis(
            @ForAll("jobs") Job job,
            @ForAll @DoubleRange(min = 1, max = 20) double low,
            @ForAll @DoubleRange(min = 0, max = 10) double more) {
        String timed = job.steps().get(0).name();
        Estimate estimate = ESTIMATOR.estimate(
                job, List.of(CrewTiming.field(timed, Range.of(new AreaRate(low), new AreaRate(low + more)))));
        for (Line.WorkLine line : estimate.work()) {
            boolean replaced = line.work() == Work.OPEN_FIELD && line.subject().equals(Optional.of(timed));
            assertThat(line.basis() == Basis.CREW_TIMING).as(line.name()).isEqualTo(replaced);
            assertThat(line.assumptions().isEmpty())
                    .as(line.name())
                    .isEqualTo(replaced || line.work() == Work.OTHER_WORK);
        }
        double area = job.area().kept();
        Spread<TimeSpan> clock =
                estimate.work(Work.OPEN_FIELD, timed).orElseThrow().clock();
        assertThat(clock.high().minutes()).isCloseTo(60 * area / low, Percentage.withPercentage(0.01));
        assertThat(clock.low().minutes()).isCloseTo(60 * area / (low + more), Percentage.withPercentage(0.01));
    }

    @Property(seed = "1955", tries = 200)
    void night_work_is_never_cheaper(@ForAll("jobs") Job job) {
        SiteConditions day = job.site().withNight(new Share(0));
        assertThat(PRICES.cost(ESTIMATOR.estimate(job)).total().likely())
                .isGreaterThanOrEqualTo(PRICES.cost(ESTIMATOR.estimate(job.withSite(day)))
                        .total()
                        .likely());
    }

    @Property(seed = "1955", tries = 200)
    void a_longer_shift_never_takes_more_days(
            @ForAll("jobs") Job job, @ForAll @DoubleRange(min = 4, max = 12) double hours) {
        Calendar shorter = calendar(job, hours);
        Calendar longer = calendar(job, hours + 2);
        assertThat(longer.workingDays().likely())
                .isLessThanOrEqualTo(shorter.workingDays().likely());
        assertThat(shorter.days().likely())
                .isGreaterThanOrEqualTo(shorter.workingDays().likely());
    }

    private static Calendar calendar(Job job, double hours) {
        SiteConditions site = job.site();
        return ESTIMATOR
                .estimate(job.withSite(site.withShift(TimeSpan.of(hours, Unit.HOUR))))
                .calendar();
    }

    /** Every total of the second is as much as the first's or more, at low, likely and high. */
    private static void requireNotLess(Estimate first, Estimate second) {
        requireNotLess("clock", first.clock(), second.clock());
        requireNotLess("person-hours", first.personHours(), second.personHours());
        requireNotLess(
                "working days",
                first.calendar().workingDays(),
                second.calendar().workingDays());
        requireNotLess("days", first.calendar().days(), second.calendar().days());
        for (ConsumableKind kind : ConsumableKind.values()) {
            if (first.total(kind).isPresent()) {
                requireNotLess(
                        kind.key(), first.total(kind).get(), second.total(kind).orElseThrow());
            }
        }
        requireNotLess("cost", PRICES.cost(first).total(), PRICES.cost(second).total());
    }

    private static <T extends Comparable<? super T>> void requireNotLess(
            String what, Spread<T> first, Spread<T> second) {
        for (Case which : Case.values()) {
            assertThat(second.at(which).compareTo(first.at(which)))
                    .as("%s, %s: %s against %s", what, which, second.at(which), first.at(which))
                    .isNotNegative();
        }
    }

    private static PriceTerms terms(int risk, int margin, int tax, int hundredths) {
        return new PriceTerms(
                new Share(risk), new Share(margin), new Share(tax), BigDecimal.valueOf(hundredths, 2), 30);
    }

    /** The lines add up, tax is on their sum once, and the price lies where the house's share for risk puts it. */
    @Property(seed = "1955", tries = 300)
    void a_price_is_the_sum_of_its_lines_and_lies_in_its_band(
            @ForAll("jobs") Job job,
            @ForAll @IntRange(max = 100) int risk,
            @ForAll @IntRange(max = 50) int margin,
            @ForAll @IntRange(max = 30) int tax,
            @ForAll @IntRange(min = 1, max = 5000) int hundredths) {
        PriceTerms terms = terms(risk, margin, tax, hundredths);
        Price price = PRICES.withTerms(terms).price(ESTIMATOR.estimate(job));
        Price.Lines lines = price.lines();
        BigDecimal net =
                List.of(lines.work(), lines.risk(), lines.margin(), lines.travel(), lines.upToMinimum()).stream()
                        .map(Money::amount)
                        .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(net.remainder(terms.rounding())).isEqualByComparingTo(BigDecimal.ZERO);
        assertThat(net).isGreaterThanOrEqualTo(new BigDecimal("300"));
        BigDecimal taxed = net.multiply(BigDecimal.valueOf(100 + tax)).movePointLeft(2);
        assertThat(lines.total().amount().subtract(taxed).abs()).isLessThanOrEqualTo(new BigDecimal("0.005"));
        assertThat(lines.total()).isBetween(price.band().likely(), price.band().high());
        assertThat(price.band().low()).isLessThanOrEqualTo(price.band().likely());
        boolean minimum = lines.upToMinimum().amount().signum() > 0;
        Statistics.label("minimum").collect(minimum);
        Statistics.label("minimum").coverage(drawn -> drawn.check(false).percentage(share -> share > 50));
        if (!minimum) {
            BigDecimal exact = price.cost()
                    .work()
                    .likely()
                    .amount()
                    .multiply(BigDecimal.valueOf(100 - risk))
                    .add(price.cost().work().high().amount().multiply(BigDecimal.valueOf(risk)))
                    .multiply(BigDecimal.valueOf(100 + margin))
                    .movePointLeft(4)
                    .add(price.cost().travel().likely().amount());
            assertThat(net.subtract(exact).abs().multiply(BigDecimal.valueOf(2)))
                    .isLessThanOrEqualTo(terms.rounding());
        }
    }

    /** Everybody is paid while the site is worked, all hours of work find a place in them, and in the days of the calendar. */
    @Property(seed = "1955", tries = 300)
    void the_paid_hours_are_those_of_all_people_on_the_site_and_hold_all_work(@ForAll("jobs") Job job) {
        Estimate estimate = ESTIMATOR.estimate(job);
        int people = job.site().people();
        Statistics.label("people").collect(people > 1);
        Statistics.label("people").coverage(drawn -> drawn.check(true).percentage(share -> share > 50));
        double shift = job.site().shift().minutes();
        for (Case which : Case.values()) {
            double paid = estimate.personHours().at(which).minutes();
            double work = estimate.work().stream()
                    .mapToDouble(line -> line.clock().at(which).minutes())
                    .sum();
            assertThat(paid)
                    .isCloseTo(people * estimate.clock().at(which).minutes(), Percentage.withPercentage(0.01))
                    .isGreaterThanOrEqualTo(work * (1 - 1e-6));
            assertThat(estimate.clock().at(which).minutes())
                    .isLessThanOrEqualTo(
                            shift * estimate.calendar().workingDays().at(which).kept() + 1);
        }
    }

    @Property(seed = "1955", tries = 200)
    void one_person_more_never_takes_more_days(@ForAll("jobs") Job job) {
        Estimate fewer = ESTIMATOR.estimate(job);
        Estimate more =
                ESTIMATOR.estimate(job.withSite(job.site().withPeople(job.site().people() + 1)));
        assertThat(more.clock().likely()).isLessThanOrEqualTo(fewer.clock().likely());
        assertThat(more.calendar().workingDays().likely())
                .isLessThanOrEqualTo(fewer.calendar().workingDays().likely());
    }

    /** Neither margin nor risk is on the kilometres; the hours on the road are paid like all hours. */
    @Property(seed = "1955", tries = 300)
    void a_longer_way_costs_its_kilometres_and_the_hours_on_the_road(
            @ForAll("jobs") Job job,
            @ForAll @IntRange(max = 50) int margin,
            @ForAll @IntRange(min = 1, max = 400) int kilometres) {
        PriceList prices = PRICES.withMinimumCharge("0")
                .with(PriceItem.TRAVEL_KILOMETRE, "2")
                .withNightFactor(new Share(100))
                .withTerms(terms(0, margin, 20, 1));
        Job away = job.withSite(job.site().withDistance(Optional.of(Length.of(kilometres, Unit.KILOMETRE))));
        Estimate near = ESTIMATOR.estimate(job);
        Estimate far = ESTIMATOR.estimate(away);
        assertThat(far.calendar()).isEqualTo(near.calendar());
        double driven = 2 * kilometres * far.calendar().workingDays().likely().kept();
        double hours = driven * 1.4 / 60 * job.site().people();
        assertThat((far.personHours().likely().minutes()
                                - near.personHours().likely().minutes())
                        / 60)
                .isCloseTo(hours, Percentage.withPercentage(0.1));
        double more = prices.price(far)
                .lines()
                .net()
                .amount()
                .subtract(prices.price(near).lines().net().amount())
                .doubleValue();
        assertThat(more).isCloseTo(2 * driven + 40 * hours * (1 + margin / 100.0), Offset.offset(0.02));
    }
}
