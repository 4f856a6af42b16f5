package stoneprocess.core.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Rotation;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;

/** Upkeep over years at the published rates. */
class MaintenanceValidationTest {
    private static final TimeSpan WEEK = TimeSpan.of(7, Unit.DAY);
    private static final TimeSpan YEAR = TimeSpan.of(365, Unit.DAY);

    /** Trade press, cleaning times: burnish 37 m2/h at 350 rpm, 206 at 2000 and over (doubted by crews). */
    @ParameterizedTest
    @CsvSource({"175, 37, false", "350, 37, false", "2000, 206, true", "2500, 206, true"})
    void burnishing_goes_at_the_published_rate_of_its_speed(double speed, double rate, boolean doubtful) {
        UpkeepTask task = UpkeepTask.burnish(new Rotation(speed), WEEK, Jobs.STANDARD);
        assertThat(task.rate()).isEqualTo(new AreaRate(rate));
        assertThat(task.doubtful()).isEqualTo(doubtful);
    }

    @Test
    void between_the_two_published_speeds_no_rate_is_made_up() {
        assertThatThrownBy(() -> UpkeepTask.burnish(new Rotation(1000), WEEK, Jobs.STANDARD))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("upkeep.burnish.speed: '1000 rpm'")
                .hasMessageContaining("up to 350 rpm, or 2000 rpm and over");
    }

    /** Trade press, cleaning times: 17 inch scrub 174 m2/h; strip 70 m2/h, half of that with build-up. */
    @Test
    void scrubbing_and_stripping_go_at_the_published_rates() {
        assertThat(UpkeepTask.scrub(WEEK, Jobs.STANDARD).rate()).isEqualTo(new AreaRate(174));
        assertThat(UpkeepTask.strip(false, YEAR, Jobs.STANDARD).rate()).isEqualTo(new AreaRate(70));
        assertThat(UpkeepTask.strip(true, YEAR, Jobs.STANDARD).rate()).isEqualTo(new AreaRate(35));
        assertThat(UpkeepTask.strip(true, YEAR, Jobs.STANDARD).doubtful()).isFalse();
    }

    private static Maintenance polished(int years) {
        return new Maintenance(
                "polished",
                new Area(700),
                years,
                List.of(
                        UpkeepTask.scrub(WEEK, Jobs.STANDARD),
                        UpkeepTask.burnish(new Rotation(2000), YEAR, Jobs.STANDARD)));
    }

    private static Maintenance coated(int years) {
        return new Maintenance(
                "coated",
                new Area(700),
                years,
                List.of(
                        UpkeepTask.scrub(WEEK, Jobs.STANDARD),
                        UpkeepTask.strip(false, YEAR, Jobs.STANDARD).withMaterial(Money.of("0.5", "crowns"))));
    }

    /** By hand: 260 weeks in 5 years, 700 m2 at 174 m2/h; 5 years of stripping 700 m2 at 70 m2/h are 50 h. */
    @Test
    void hours_over_years_are_times_area_over_rate() {
        List<Maintenance.UpkeepLine> lines = coated(5).lines();
        assertThat(lines.get(0).times()).isEqualTo(new Count(260));
        assertThat(lines.get(0).hours()).isEqualTo(TimeSpan.of(260 * 700 / 174.0, Unit.HOUR));
        assertThat(lines.get(1).times()).isEqualTo(new Count(5));
        assertThat(lines.get(1).hours()).isEqualTo(TimeSpan.of(50, Unit.HOUR));
        assertThat(lines.get(1).material()).contains(Money.of("1750", "crowns"));
    }

    @Test
    void polished_and_coated_differ_by_what_only_one_of_them_needs() {
        List<Difference<TimeSpan>> differences = polished(5).compare(coated(5));
        assertThat(differences).extracting(Difference::line).containsExactly("scrub", "burnish", "strip");
        assertThat(differences)
                .extracting(Difference::direction)
                .containsExactly(Difference.Direction.SAME, Difference.Direction.LESS, Difference.Direction.MORE);
        Money hour = Money.of("10", "crowns");
        Difference<Money> cost = polished(5).compareCost(coated(5), hour);
        assertThat(cost.direction()).isEqualTo(Difference.Direction.MORE);
        double burnish = 5 * 700 / 206.0;
        assertThat(cost.by().amount().doubleValue()).isCloseTo(10 * (50 - burnish) + 1750, Offset.offset(0.01));
        assertThat(coated(10).hours()).isGreaterThan(coated(5).hours());
    }

    @Test
    void two_floors_or_two_spans_are_not_compared() {
        assertThatThrownBy(() -> polished(5).compare(coated(6)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("maintenance: '700 m2, 6 years'");
        assertThatThrownBy(() -> coated(0))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("maintenance.years: '0'");
        assertThatThrownBy(() -> UpkeepTask.scrub(new TimeSpan(0), Jobs.STANDARD))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("upkeep.scrub.every: '0 min'");
    }
}
