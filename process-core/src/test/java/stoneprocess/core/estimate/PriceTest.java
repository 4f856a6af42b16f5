package stoneprocess.core.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.removal.CuttingClass;

/** Prices worked out by hand, by invented rates. */
class PriceTest {
    private static final Optional<Length> DISTANCE = Optional.of(Length.of(25, Unit.KILOMETRE));
    private static final PriceList PRICES = PriceList.empty("crowns")
            .with(PriceItem.LABOUR_HOUR, "40")
            .with(PriceItem.MOBILISATION, "60")
            .with(PriceItem.TRAVEL_KILOMETRE, "1.20");

    private static PriceTerms terms(double risk, double margin, double tax, String rounding) {
        return new PriceTerms(new Share(risk), new Share(margin), new Share(tax), new BigDecimal(rounding), 30);
    }

    private static Spread<TimeSpan> hours(double low, double likely, double high) {
        return Spread.of(new TimeSpan(60 * low), new TimeSpan(60 * likely), new TimeSpan(60 * high));
    }

    private static List<String> lines(Price.Lines lines) {
        return List.of(
                        lines.work(),
                        lines.risk(),
                        lines.margin(),
                        lines.travel(),
                        lines.upToMinimum(),
                        lines.net(),
                        lines.tax(),
                        lines.total())
                .stream()
                .map(PriceTest::amount)
                .toList();
    }

    private static String amount(Money money) {
        return money.amount().setScale(2).toPlainString();
    }

    private static List<String> band(Price price) {
        return List.of(
                amount(price.band().low()),
                amount(price.band().likely()),
                amount(price.band().high()));
    }

    /**
     * A visit of 2, 3 or 5 hours at 40 crowns.
     *
     * <pre>
     * work      3 h x 40                        120     rounded to 5: 120
     * risk      25 % of (5 h - 3 h) x 40         20     running 140 -> 140, so 20
     * margin    20 % of 140                      28     running 168 -> 170, so 30
     * travel    60 + 2 x 25 km x 1.20           120     running 288 -> 290, so 120
     * without tax                                       290
     * tax       19 % of 290                             55.10
     * to pay                                            345.10
     *
     * low       2 h: 80 + 20 % = 96, + 120 = 216 -> 215, tax 40.85    255.85
     * likely    3 h: 120 + 20 % = 144, + 120 = 264 -> 265, tax 50.35  315.35
     * high      5 h: 200 + 20 % = 240, + 120 = 360, tax 68.40         428.40
     * </pre>
     */
    @Test
    void a_visit_is_priced_as_by_hand() {
        Price price = PRICES.withTerms(terms(25, 20, 19, "5")).price(hours(2, 3, 5), DISTANCE);
        assertThat(lines(price.lines()))
                .containsExactly("120.00", "20.00", "30.00", "120.00", "0.00", "290.00", "55.10", "345.10");
        assertThat(band(price)).containsExactly("255.85", "315.35", "428.40");
    }

    /**
     * Twelve hours of filling on 50 m2 by one person alone, shifts of 8 h; the usual 1 to 3 h of loading, 0.75 to 1.25 h of
     * a test area without grits, as much for each day after the first, 30 km away at 1.2 to 1.6 min a kilometre. A day is
     * paid as 4 h at least: of the last high one, 1.5 h of work and 1.25 h of beginning and ending it, 1.25 h are missing.
     *
     * <pre>
     *           hours                                                 days
     * low       1 + 0.75 + 12 + 1 x 0.75 + 2 x 1.2        = 16.9      2
     * likely    2 + 1    + 12 + 1 x 1    + 2 x 1.4        = 18.8      2
     * high      3 + 1.25 + 12 + 2 x 1.25 + 3 x 1.6 + 1.25 = 24.8      3
     *
     * work      18.8 x 40                        752    rounded to 10: 750
     * risk      25 % of (24.8 - 18.8) x 40        60    running 812 -> 810, so 60
     * margin    20 % of 812                      162.40 running 974.40 -> 970, so 160
     * travel    60 + 2 days x 60 km x 1.20       204    running 1178.40 -> 1180, so 210
     * minimum   1200                                    20
     * without tax                                       1200
     * tax       19 %                                    228
     * to pay                                            1428
     *
     * low       676 x 1.2 + 204 = 1015.20, so 1200, + 228                    1428
     * likely    752 x 1.2 + 204 = 1106.40, so 1200, + 228                   1428
     * high      992 x 1.2 + 60 + 3 x 72 = 1466.40 -> 1470, + 279.30         1749.30
     * </pre>
     */
    @Test
    void a_job_is_priced_as_by_hand() {
        TimeSpan twelve = new TimeSpan(720);
        TimeSpan none = new TimeSpan(0);
        Job job = new Job(
                new Area(50),
                Range.of(new Length(0), new Length(0)),
                CuttingClass.MEDIUM,
                List.of(),
                List.of(new OtherWork("fill", Range.of(twelve, twelve), Range.of(none, none), Optional.empty())),
                true,
                Optional.empty(),
                SiteConditions.usual(Jobs.STANDARD)
                        .withPeople(1)
                        .withDistance(Optional.of(Length.of(30, Unit.KILOMETRE))));
        Price price = PRICES.withMinimumCharge("1200")
                .withTerms(terms(25, 20, 19, "10"))
                .price(new Estimator(Jobs.STANDARD).estimate(job));
        assertThat(lines(price.lines()))
                .containsExactly("750.00", "60.00", "160.00", "210.00", "20.00", "1200.00", "228.00", "1428.00");
        assertThat(band(price)).containsExactly("1428.00", "1428.00", "1749.30");
    }

    /** Two people on 50 m2: half of the hours at 30 in place of 40. */
    @Test
    void a_helper_is_paid_by_a_price_of_his_own() {
        Estimate estimate = new Estimator(Jobs.STANDARD).estimate(Jobs.marble(Jobs.RESIN_400));
        double helper = estimate.paidHours().likely().minutes() / 2;
        assertThat(helper).isGreaterThan(0);
        double alike = PRICES.cost(estimate).total().likely().amount().doubleValue();
        Cost cost = PRICES.with(PriceItem.HELPER_HOUR, "30").cost(estimate);
        assertThat(alike - cost.total().likely().amount().doubleValue())
                .isCloseTo(helper / 60 * 10, Offset.offset(0.001));
        assertThat(PRICES.cost(estimate).unpriced()).doesNotContain("helper-hour");
    }

    @Test
    void a_distance_without_a_price_is_listed_and_a_list_without_terms_is_refused() {
        PriceList priceless = PriceList.empty("crowns").withTerms(terms(0, 0, 0, "1"));
        assertThat(priceless.price(hours(1, 1, 1), DISTANCE).cost().unpriced())
                .containsExactly("labour-hour", "mobilisation", "travel-kilometre");
        assertThatThrownBy(() -> PRICES.price(hours(1, 1, 1), DISTANCE))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("terms: 'none' is not accepted; accepted: a price list with risk, margin, tax");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "101 | 0   | 0   | 1      | 30  | terms.risk: '101 %' is not accepted; accepted: from 0 to 100 %",
                "0   | 501 | 0   | 1      | 30  | terms.margin: '501 %' is not accepted; accepted: from 0 to 500 %",
                "0   | 0   | 101 | 1      | 30  | terms.tax: '101 %' is not accepted; accepted: from 0 to 100 %",
                "0   | 0   | 0   | 0      | 30  | terms.rounding: '0' is not accepted; accepted: from 0.01 to 10000",
                "0   | 0   | 0   | 10001  | 30  | terms.rounding: '10001' is not accepted; accepted: from 0.01 to 10000",
                "0   | 0   | 0   | 1      | 0   | terms.valid-days: '0' is not accepted; accepted: from 1 to 365",
                "0   | 0   | 0   | 1      | 366 | terms.valid-days: '366' is not accepted; accepted: from 1 to 365"
            })
    void terms_outside_their_limits_are_refused_by_name(
            double risk, double margin, double tax, String rounding, int days, String message) {
        assertThatThrownBy(() -> new PriceTerms(
                        new Share(risk), new Share(margin), new Share(tax), new BigDecimal(rounding), days))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage(message);
    }
}
