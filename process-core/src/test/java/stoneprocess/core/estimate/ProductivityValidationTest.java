package stoneprocess.core.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.source.EvidenceGrade;
import stoneprocess.core.tool.Bond;

/** Output by the way a machine is walked against what crews and public works reckon with. */
class ProductivityValidationTest {
    private static final Productivity PRODUCTIVITY = new Productivity(Jobs.STANDARD);

    /** By hand: 430 mm, half overlapped, walks of 4 m in 1 min and 6 s to turn, 6 passes, a fifth lost. */
    @Test
    void area_an_hour_follows_from_path_overlap_speed_and_passes() {
        Kinematics walked = new Kinematics(
                new Length(430), new Share(50), new Speed(4), 6, new Length(4000), new TimeSpan(0.1), new Share(20));
        assertThat(walked.rate().squareMetresPerHour()).isCloseTo(0.43 * 0.5 * 4 / 1.1 * 60 / 6 * 0.8, within(1e-5));
    }

    /**
     * Common practice, no source, one technician a step: metal on marble 1.5-4 m2/h, on granite 0.5-1.5; resin on
     * marble 8-15, on granite 4-8.
     */
    @ParameterizedTest
    @CsvSource({
        "METAL, 100, marble, 1.5, 4",
        "METAL, 100, granite, 0.5, 1.5",
        "RESIN, 100, marble, 8, 15",
        "RESIN, 400, marble, 8, 15",
        "RESIN, 100, granite, 4, 8",
        "RESIN, 400, granite, 4, 8",
    })
    void the_walked_route_agrees_with_the_bands_of_practice(
            Bond bond, int grit, String stone, double low, double high) {
        FloorStone cut = stone.equals("marble") ? FloorStone.marble() : FloorStone.granite();
        RouteCheck check = PRODUCTIVITY.check(Jobs.step(bond, grit, Jobs.SINGLE_DISC), cut);
        System.out.printf(
                "Two routes, %s %d on %s: walked %.2f / %.2f / %.2f m2/h, practice %.1f-%.1f%n",
                bond,
                grit,
                stone,
                check.walked().low().kept(),
                check.walked().likely().kept(),
                check.walked().high().kept(),
                low,
                high);
        assertThat(check.practice()).contains(Range.of(new AreaRate(low), new AreaRate(high)));
        assertThat(check.walked().likely().kept()).isBetween(low, high);
        assertThat(check.agreement()).isEqualTo(RouteCheck.Agreement.AGREE);
        assertThat(check.walked().low().kept()).isLessThan(high);
        assertThat(check.walked().high().kept()).isGreaterThan(low);
        assertThat(check.departures()).isEmpty();
    }

    @Test
    void a_wider_machine_leaves_the_band_and_the_path_explains_it() {
        RouteCheck check = PRODUCTIVITY.check(Jobs.step(Bond.METAL, 100, Jobs.PLANETARY), FloorStone.marble());
        assertThat(check.walked().likely()).isGreaterThan(new AreaRate(4));
        assertThat(check.agreement()).isEqualTo(RouteCheck.Agreement.EXPLAINED);
        assertThat(check.departures()).singleElement().satisfies(departure -> {
            assertThat(departure.cause()).isEqualTo(RouteCheck.Cause.PATH_WIDTH);
            assertThat(departure.factor().percent()).isCloseTo(100 * 700.0 / 430, within(1e-3));
        });
    }

    @Test
    void twice_the_passes_and_a_slower_cut_explain_a_low_rate_factor_by_factor() {
        JobStep slow = Jobs.METAL_100.withPasses(Range.of(15, 15)).withCutRate(new Share(50));
        RouteCheck check = PRODUCTIVITY.check(slow, FloorStone.marble());
        assertThat(check.walked().likely()).isLessThan(new AreaRate(1.5));
        assertThat(check.agreement()).isEqualTo(RouteCheck.Agreement.EXPLAINED);
        assertThat(check.departures())
                .extracting(RouteCheck.Departure::cause)
                .containsExactly(RouteCheck.Cause.PASSES, RouteCheck.Cause.CUT_RATE);
        assertThat(check.departures().get(0).factor()).isEqualTo(new Share(50));
        assertThat(check.departures().get(1).factor().percent()).isBetween(50.0, 55.0);
        double usual = PRODUCTIVITY
                .walked(Jobs.METAL_100, FloorStone.marble())
                .likely()
                .kept();
        double product = check.departures().stream()
                .mapToDouble(departure -> departure.factor().percent() / 100)
                .reduce(1, (one, other) -> one * other);
        assertThat(check.walked().likely().kept()).isCloseTo(usual * product, within(1e-4));
    }

    @Test
    void a_speed_that_practice_knows_nothing_of_stays_unexplained_and_the_estimate_says_so() {
        Parameters running = Jobs.STANDARD
                .with("estimate.walk.metal.high", new Speed(20))
                .with("estimate.walk.metal.low", new Speed(15));
        RouteCheck check = new Productivity(running).check(Jobs.METAL_100, FloorStone.marble());
        assertThat(check.agreement()).isEqualTo(RouteCheck.Agreement.NOT_EXPLAINED);
        Job job = Jobs.marble(Jobs.METAL_100);
        assertThat(new Estimator(running).estimate(job).remarks()).contains(Remark.ROUTES_DISAGREE);
        assertThat(new Estimator(Jobs.STANDARD).estimate(job).remarks()).doesNotContain(Remark.ROUTES_DISAGREE);
    }

    @Test
    void no_band_is_named_for_powder_and_transition() {
        JobStep powder = JobStep.powder(Jobs.SINGLE_DISC, Range.of(4, 8), Jobs.RESIN_800.water());
        for (JobStep step : List.of(powder, Jobs.step(Bond.TRANSITION, 100, Jobs.SINGLE_DISC))) {
            RouteCheck check = PRODUCTIVITY.check(step, FloorStone.marble());
            assertThat(check.agreement()).isEqualTo(RouteCheck.Agreement.NO_BAND);
            assertThat(check.practice()).isEmpty();
        }
    }

    /**
     * Third party's worksheet citing a national analysis of rates, 2019, second-hand, square metres a machine-day:
     * cement terrazzo in three cuts (60, 120, 320) 10, marble slabs (80, 150, 320) 12.5, hard limestone 12.5. Concrete
     * Construction magazine: floor grinding of 1955, 36 to 48.
     */
    @ParameterizedTest
    @CsvSource({
        "CEMENT_TERRAZZO, 10, 10",
        "MARBLE_SLABS, 12.5, 12.5",
        "HARD_LIMESTONE, 12.5, 12.5",
        "FLOOR_GRINDING, 36, 48",
    })
    void public_works_figures_lie_between_low_and_high_and_the_likely_one_in_their_band(
            PublicWork like, double low, double high) {
        Plausibility plausibility =
                Plausibility.of(new Estimator(Jobs.STANDARD).estimate(jobLike(like)), like, Jobs.STANDARD);
        Spread<Area> estimated = plausibility.estimated();
        System.out.printf(
                "Public works, %s: estimated %.1f / %.1f / %.1f m2 a machine-day, published %.1f-%.1f%n",
                like.key(),
                estimated.low().kept(),
                estimated.likely().kept(),
                estimated.high().kept(),
                low,
                high);
        assertThat(plausibility.band()).isEqualTo(Range.of(new Area(low / 2), new Area(high * 2)));
        assertThat(plausibility.plausible()).isTrue();
        assertThat(estimated.low().kept()).isLessThan(low);
        assertThat(estimated.high().kept()).isGreaterThan(high);
    }

    private static Job jobLike(PublicWork like) {
        return switch (like) {
            case CEMENT_TERRAZZO, MARBLE_SLABS, HARD_LIMESTONE ->
                Jobs.marble(Jobs.METAL_100, Jobs.RESIN_200, Jobs.RESIN_400);
            case FLOOR_GRINDING -> Jobs.marble(Jobs.step(Bond.METAL, 50, Jobs.PLANETARY));
        };
    }

    @Test
    void an_estimate_off_by_its_order_is_not_plausible() {
        Job job = Jobs.marble(Jobs.METAL_100.withCutRate(new Share(10)), Jobs.RESIN_200, Jobs.RESIN_400);
        Plausibility plausibility =
                Plausibility.of(new Estimator(Jobs.STANDARD).estimate(job), PublicWork.MARBLE_SLABS, Jobs.STANDARD);
        assertThat(plausibility.plausible()).isFalse();
    }

    @ParameterizedTest
    @EnumSource(PublicWork.class)
    void a_public_works_figure_says_how_firmly_it_is_known(PublicWork like) {
        Plausibility plausibility =
                Plausibility.of(new Estimator(Jobs.STANDARD).estimate(jobLike(like)), like, Jobs.STANDARD);
        assertThat(plausibility.source().published()).isTrue();
        assertThat(plausibility.source().grade() == EvidenceGrade.SECOND_HAND)
                .isEqualTo(like != PublicWork.FLOOR_GRINDING);
    }

    @Test
    void the_cut_rate_states_its_reference() {
        FloorMachine loaded = Jobs.SINGLE_DISC.withAdded(new Mass(70));
        CutRate rate = PRODUCTIVITY.cutRate(Jobs.METAL_100.withMachine(loaded), FloorStone.granite());
        assertThat(rate.removal()).hasValueSatisfying(removal -> {
            assertThat(removal.referenceContact()).isEqualTo(Jobs.SINGLE_DISC.contact());
            assertThat(removal.referenceResistance().source().id()).isEqualTo("ASTM-C503");
            assertThat(removal.resistance().source().id()).isEqualTo("ASTM-C615");
        });
        assertThat(rate.share().percent()).isCloseTo(100 * (47.5 + 70) / (47.5 + 22.5) * 10 / 25, within(1e-3));
        assertThat(PRODUCTIVITY.cutRate(Jobs.METAL_100.withCutRate(new Share(80)), FloorStone.granite()))
                .isEqualTo(new CutRate(new Share(80), Optional.empty()));
    }

    @Test
    void a_way_of_walking_that_cannot_be_is_refused() {
        Length path = new Length(430);
        TimeSpan turn = new TimeSpan(0.1);
        Share half = new Share(50);
        assertThatThrownBy(() -> new Kinematics(path, new Share(100), new Speed(4), 6, path, turn, half))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("kinematics.overlap: '100 %'");
        assertThatThrownBy(() -> new Kinematics(path, half, new Speed(0), 6, path, turn, half))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("kinematics.walk: '0 m/min'");
        assertThatThrownBy(() -> new Kinematics(path, half, new Speed(1), 0.5, path, turn, half))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("kinematics.passes: '0.5'");
        assertThatThrownBy(() -> new Kinematics(path, half, new Speed(1), 2, path, turn, new Share(100)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("kinematics.handling");
    }
}
