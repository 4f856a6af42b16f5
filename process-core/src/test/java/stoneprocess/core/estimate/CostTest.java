package stoneprocess.core.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.tool.MachineClass;

class CostTest {
    private static final Estimator ESTIMATOR = new Estimator(Jobs.STANDARD);
    private static final Estimate ESTIMATE = ESTIMATOR.estimate(Jobs.marble(Jobs.METAL_100, Jobs.RESIN_400));

    @Test
    void labour_is_person_hours_times_the_price_of_an_hour() {
        Cost cost = PriceList.empty("crowns").with(PriceItem.LABOUR_HOUR, "60").cost(ESTIMATE);
        assertThat(cost.lines()).singleElement().satisfies(line -> {
            assertThat(line.name()).isEqualTo("labour-hour");
            assertThat(line.amount().likely().amount().doubleValue())
                    .isCloseTo(ESTIMATE.personHours().likely().minutes(), within(0.001));
        });
    }

    @Test
    void what_has_no_price_is_listed_and_not_taken_as_free() {
        Cost cost = PriceList.empty("crowns").with(PriceItem.LABOUR_HOUR, "60").cost(ESTIMATE);
        assertThat(cost.unpriced())
                .containsExactly(
                        "machine-hour single-disc",
                        "metal-set",
                        "resin-set",
                        "water-cubic-metre",
                        "slurry-cubic-metre",
                        "energy-kilowatt-hour",
                        "mobilisation");
    }

    @Test
    void every_item_is_charged_by_its_unit() {
        PriceList one = PriceList.empty("crowns").withMachineHour(MachineClass.SINGLE_DISC, "1");
        for (PriceItem item : PriceItem.values()) {
            one = one.with(item, "1");
        }
        Job job = Jobs.marble(
                Jobs.METAL_100,
                Jobs.RESIN_400,
                JobStep.powder(Jobs.SINGLE_DISC, Range.of(4, 8), Jobs.RESIN_400.water()));
        Estimate estimate = ESTIMATOR.estimate(job);
        Cost cost = one.cost(estimate);
        assertThat(cost.unpriced()).containsExactlyElementsOf(List.of());
        assertThat(amount(cost, "water-cubic-metre"))
                .isCloseTo(
                        estimate.total(ConsumableKind.WATER)
                                        .orElseThrow()
                                        .likely()
                                        .kept()
                                / 1000,
                        near());
        assertThat(amount(cost, "slurry-cubic-metre"))
                .isCloseTo(
                        estimate.total(ConsumableKind.SLURRY)
                                        .orElseThrow()
                                        .likely()
                                        .kept()
                                / 1000,
                        near());
        assertThat(amount(cost, "powder-kilogram"))
                .isCloseTo(
                        estimate.total(ConsumableKind.POWDER)
                                .orElseThrow()
                                .likely()
                                .kept(),
                        near());
        assertThat(amount(cost, "energy-kilowatt-hour"))
                .isCloseTo(
                        estimate.total(ConsumableKind.ENERGY)
                                .orElseThrow()
                                .likely()
                                .kept(),
                        near());
        assertThat(amount(cost, "mobilisation")).isEqualTo(1);
        assertThat(amount(cost, "metal-set") + amount(cost, "resin-set"))
                .isCloseTo(
                        estimate.total(ConsumableKind.PAD_WEAR)
                                        .orElseThrow()
                                        .likely()
                                        .kept()
                                / 100,
                        near());
        assertThat(amount(one.withWholeSets().cost(estimate), "resin-set")).isEqualTo(1);
    }

    private static Offset<Double> near() {
        return Offset.offset(1e-4);
    }

    private static double amount(Cost cost, String name) {
        return cost.lines().stream()
                .filter(line -> line.name().equals(name))
                .findFirst()
                .orElseThrow()
                .amount()
                .likely()
                .amount()
                .doubleValue();
    }

    /** It is what a house asks at least, and no cost of its own; the price is in {@link PriceTest}. */
    @Test
    void a_minimum_charge_costs_the_house_nothing() {
        PriceList prices = PriceList.empty("crowns").with(PriceItem.LABOUR_HOUR, "1");
        assertThat(prices.withMinimumCharge("9999").cost(ESTIMATE)).isEqualTo(prices.cost(ESTIMATE));
    }

    @Test
    void the_night_share_is_paid_at_the_night_factor() {
        PriceList prices =
                PriceList.empty("crowns").with(PriceItem.LABOUR_HOUR, "100").withNightFactor(new Share(150));
        SiteConditions day = ESTIMATE.job().site();
        SiteConditions half = day.withNight(new Share(50));
        Estimate byNight = ESTIMATOR.estimate(ESTIMATE.job().withSite(half));
        assertThat(costOfAnHour(prices, ESTIMATE)).isCloseTo(100, Offset.offset(1e-3));
        assertThat(costOfAnHour(prices, byNight)).isCloseTo(125, Offset.offset(1e-3));
    }

    private static double costOfAnHour(PriceList prices, Estimate estimate) {
        double hours = estimate.paidHours().likely().minutes() / 60;
        return prices.cost(estimate).total().likely().amount().doubleValue() / hours;
    }

    /** By hand: half of the work by day, one person at the barrier for so long, at the price of a helper by day. */
    @Test
    void who_watches_the_barrier_is_a_line_of_its_own_by_day() {
        PriceList prices = PriceList.empty("crowns")
                .with(PriceItem.LABOUR_HOUR, "100")
                .with(PriceItem.HELPER_HOUR, "40")
                .withNightFactor(new Share(150));
        SiteConditions half = ESTIMATE.job().site().withNight(new Share(50));
        Estimate alone = ESTIMATOR.estimate(ESTIMATE.job().withSite(half));
        Estimate watched = ESTIMATOR.estimate(ESTIMATE.job().withSite(half.withAtBarrier(1)));
        double hours = watched.personHours(Work.BARRIER).likely().minutes() / 60;
        assertThat(hours).isPositive();
        assertThat(prices.cost(watched).lines())
                .filteredOn(line -> line.name().equals(Work.BARRIER.key()))
                .singleElement()
                .satisfies(line -> assertThat(line.amount().likely().amount().doubleValue())
                        .isCloseTo(40 * hours, Offset.offset(0.01)));
        assertThat(prices.cost(watched).lines())
                .filteredOn(line -> !line.name().equals(Work.BARRIER.key()))
                .isEqualTo(prices.cost(alone).lines());
    }

    @Test
    void exclusions_come_with_the_cost_in_the_embedders_words() {
        List<String> exclusions = List.of("moving furniture", "power supply");
        assertThat(PriceList.empty("crowns")
                        .withExclusions(exclusions)
                        .cost(ESTIMATE)
                        .exclusions())
                .isEqualTo(exclusions);
    }

    @Test
    void prices_in_two_currencies_negative_ones_and_a_cheap_night_are_refused() {
        assertThatThrownBy(() -> Money.of("1", "crowns").compareTo(Money.of("1", "pounds")))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("money.currency: 'pounds'");
        assertThatThrownBy(() -> Money.of("-1", "crowns"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("money.amount: '-1'");
        assertThatThrownBy(() -> Money.of("dear", "crowns"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("money.amount: 'dear'");
        assertThatThrownBy(() -> Money.of("1", " ")).isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> PriceList.empty("crowns").withNightFactor(new Share(90)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("night-factor: '90 %'");
        assertThatThrownBy(() -> new PriceList(
                        "crowns",
                        Map.of(),
                        Map.of(),
                        new BigDecimal("-1"),
                        new Share(100),
                        false,
                        List.of(),
                        Optional.empty()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("minimum-charge: '-1'");
        assertThatThrownBy(() -> PriceList.empty(" ")).isInstanceOf(InvalidInputException.class);
    }

    @Test
    void a_finer_finish_shows_its_steps_as_lines_of_its_own() {
        EstimateComparison comparison = EstimateComparison.of(
                Alternative.of("hone", Jobs.marble(Jobs.METAL_100, Jobs.RESIN_400)),
                Alternative.of("satin", Jobs.marble(Jobs.METAL_100, Jobs.RESIN_400, Jobs.RESIN_800)),
                ESTIMATOR,
                PriceList.empty("crowns").with(PriceItem.LABOUR_HOUR, "60"));
        assertThat(comparison.work())
                .filteredOn(line -> line.line().endsWith("resin-800"))
                .extracting(EstimateDifference::line)
                .containsExactly(
                        "open-field resin-800", "rinsing resin-800", "setting-up resin-800", "rework resin-800");
        assertThat(comparison.work())
                .filteredOn(line -> line.line().endsWith("resin-800"))
                .allSatisfy(line -> {
                    assertThat(line.first()).isEmpty();
                    assertThat(line.direction()).isEqualTo(EstimateDifference.Direction.MORE);
                    assertThat(line.by()).isEqualTo(line.second().orElseThrow().likely());
                });
        assertThat(comparison.work())
                .filteredOn(line -> line.line().equals(Work.DAILY.key()))
                .singleElement()
                .satisfies(line -> assertThat(line.direction()).isNotEqualTo(EstimateDifference.Direction.LESS));
        assertThat(comparison.work())
                .filteredOn(line -> line.line().equals(Work.TEST_AREA.key()))
                .as("the test area shows one grit more")
                .singleElement()
                .satisfies(line -> assertThat(line.direction()).isEqualTo(EstimateDifference.Direction.MORE));
        assertThat(comparison.work())
                .filteredOn(line -> !line.line().endsWith("resin-800")
                        && !List.of(Work.DAILY.key(), Work.TEST_AREA.key()).contains(line.line()))
                .allSatisfy(line -> assertThat(line.direction()).isEqualTo(EstimateDifference.Direction.SAME));
        double sum = comparison.work().stream()
                .mapToDouble(line -> line.by().minutes())
                .sum();
        assertThat(comparison.personHours().by().minutes()).isCloseTo(sum, Offset.offset(0.01));
        assertThat(comparison.total()).hasValueSatisfying(total -> {
            assertThat(total.direction()).isEqualTo(EstimateDifference.Direction.MORE);
            assertThat(total.by().amount().doubleValue()).isCloseTo(sum, Offset.offset(0.02));
        });
    }

    @Test
    void another_machine_changes_the_open_field_and_leaves_the_edges() {
        EstimateComparison comparison = EstimateComparison.of(
                Alternative.of("single disc", Jobs.marble(Jobs.METAL_100)),
                Alternative.of("planetary", Jobs.marble(Jobs.METAL_100.withMachine(Jobs.PLANETARY))),
                ESTIMATOR);
        assertThat(direction(comparison, "open-field metal-100")).isEqualTo(EstimateDifference.Direction.LESS);
        assertThat(comparison.second().work(Work.EDGES, "metal-100"))
                .isEqualTo(comparison.first().work(Work.EDGES, "metal-100"));
        assertThat(comparison.costs()).isEmpty();
        assertThat(comparison.total()).isEmpty();
    }

    private static EstimateDifference.Direction direction(EstimateComparison comparison, String line) {
        return comparison.work().stream()
                .filter(difference -> difference.line().equals(line))
                .findFirst()
                .orElseThrow()
                .direction();
    }

    @Test
    void powder_against_pads_trades_pads_for_powder() {
        EstimateComparison comparison = EstimateComparison.of(
                Alternative.of("pads", Jobs.marble(Jobs.RESIN_400, Jobs.RESIN_800)),
                Alternative.of(
                        "powder",
                        Jobs.marble(
                                Jobs.RESIN_400,
                                JobStep.powder(Jobs.SINGLE_DISC, Range.of(4, 8), Jobs.RESIN_800.water()))),
                ESTIMATOR);
        assertThat(comparison.consumables())
                .filteredOn(line -> line.line().equals("powder powder"))
                .singleElement()
                .satisfies(line -> assertThat(line.direction()).isEqualTo(EstimateDifference.Direction.MORE));
        assertThat(comparison.consumables())
                .filteredOn(line -> line.line().equals("pad-wear resin-800"))
                .singleElement()
                .satisfies(line -> assertThat(line.direction()).isEqualTo(EstimateDifference.Direction.LESS));
    }

    @Test
    void each_option_brings_its_own_timings() {
        AreaRate slow = new AreaRate(1);
        Job job = Jobs.marble(Jobs.RESIN_400).withArea(new Area(10));
        EstimateComparison comparison = EstimateComparison.of(
                Alternative.of("default", job),
                new Alternative("timed", job, List.of(CrewTiming.field("resin-400", Range.of(slow, slow)))),
                ESTIMATOR);
        assertThat(direction(comparison, "open-field resin-400")).isEqualTo(EstimateDifference.Direction.MORE);
    }
}
