package stoneprocess.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.SoundLevel;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;

class NoiseTest {
    private final Noise noise = Noise.of(Parameters.standard());

    @Property(seed = "1955")
    void louder_never_allows_more_time(
            @ForAll @DoubleRange(max = 140) double one,
            @ForAll @DoubleRange(max = 140) double other,
            @ForAll NoiseRule rule) {
        assertThat(allowedMinutes(Math.max(one, other), rule))
                .isLessThanOrEqualTo(allowedMinutes(Math.min(one, other), rule));
    }

    @Property(seed = "1955")
    void a_louder_or_longer_day_never_has_a_smaller_dose_or_a_milder_verdict(
            @ForAll @DoubleRange(max = 130) double level,
            @ForAll @DoubleRange(max = 10) double louder,
            @ForAll @DoubleRange(max = 12) double hours,
            @ForAll @DoubleRange(max = 12) double longer,
            @ForAll NoiseRule rule) {
        NoiseExposure mild = noise.exposure(List.of(period(level, hours)), rule);
        NoiseExposure harsh = noise.exposure(List.of(period(level + louder, hours + longer)), rule);
        assertThat(harsh.dose()).isGreaterThanOrEqualTo(mild.dose());
        assertThat(harsh.verdict()).isGreaterThanOrEqualTo(mild.verdict());
    }

    /** NIOSH starts lower and halves sooner, so it never allows more. */
    @Property(seed = "1955")
    void niosh_never_allows_more_time_than_osha(@ForAll @DoubleRange(min = 80, max = 115) double level) {
        double niosh = allowedMinutes(level, NoiseRule.NIOSH);
        double osha = allowedMinutes(level, NoiseRule.OSHA);
        if (level >= 85) {
            assertThat(niosh).isLessThan(osha);
        }
        assertThat(niosh / 480 > 1).isEqualTo(level < 85);
    }

    @Property(seed = "1955")
    void eight_hours_at_one_level_have_that_level_as_their_mean(
            @ForAll @DoubleRange(min = 80, max = 115) double level, @ForAll NoiseRule rule) {
        assertThat(noise.exposure(List.of(period(level, 8)), rule)
                        .mean()
                        .orElseThrow()
                        .decibels())
                .isCloseTo(level, Offset.offset(2e-4));
    }

    @Property(seed = "1955")
    void the_allowed_time_is_a_dose_of_100_percent(
            @ForAll @DoubleRange(min = 85, max = 110) double level, @ForAll NoiseRule rule) {
        TimeSpan allowed = noise.allowedTime(new SoundLevel(level), rule).orElseThrow();
        NoiseExposure day = noise.exposure(List.of(new NoisePeriod(new SoundLevel(level), allowed)), rule);
        assertThat(day.dose().percent()).isCloseTo(100, Offset.offset(0.01));
    }

    @Property(seed = "1955")
    void the_unit_of_time_and_the_order_and_cutting_of_periods_do_not_matter(
            @ForAll @DoubleRange(min = 70, max = 115) double level,
            @ForAll @DoubleRange(max = 4) double hours,
            @ForAll NoiseRule rule) {
        SoundLevel sound = new SoundLevel(level);
        NoisePeriod inHours = new NoisePeriod(sound, TimeSpan.of(hours, Unit.HOUR));
        NoisePeriod inMinutes = new NoisePeriod(sound, TimeSpan.of(hours * 60, Unit.MINUTE));
        NoisePeriod other = period(92, 1);
        assertThat(noise.exposure(List.of(inHours, other), rule))
                .isEqualTo(noise.exposure(List.of(inMinutes, other), rule))
                .isEqualTo(noise.exposure(List.of(other, inMinutes), rule));
        NoisePeriod half = new NoisePeriod(sound, TimeSpan.of(hours / 2, Unit.HOUR));
        assertThat(noise.exposure(List.of(half, half), rule).dose().percent())
                .isCloseTo(noise.exposure(List.of(inHours), rule).dose().percent(), Offset.offset(0.05));
    }

    @ParameterizedTest
    @EnumSource(NoiseRule.class)
    void what_lies_under_80_dba_does_not_count(NoiseRule rule) {
        NoiseExposure quiet = noise.exposure(List.of(period(79.9999, 24)), rule);
        assertThat(quiet.dose().percent()).isZero();
        assertThat(quiet.mean()).isEmpty();
        assertThat(quiet.verdict()).isEqualTo(NoiseVerdict.BELOW_ACTION);
        assertThat(noise.allowedTime(new SoundLevel(79.9999), rule)).isEmpty();
        assertThat(noise.allowedTime(new SoundLevel(80), rule)).isPresent();
    }

    @ParameterizedTest
    @CsvSource({"OSHA, 115, 115.0001", "NIOSH, 139.9999, 140"})
    void the_ceiling_itself_may_be_heard_and_more_for_no_time(NoiseRule rule, double level, double next) {
        assertThat(noise.allowedTime(new SoundLevel(level), rule).orElseThrow().minutes())
                .isPositive();
        double more =
                noise.allowedTime(new SoundLevel(next), rule).orElseThrow().minutes();
        assertThat(more == 0).isEqualTo(rule == NoiseRule.OSHA);
        assertThat(noise.exposure(List.of(period(next, 0.001)), rule).verdict() == NoiseVerdict.OVER_CEILING)
                .isEqualTo(rule == NoiseRule.OSHA);
    }

    @ParameterizedTest
    @CsvSource({"OSHA, 90, OVER_LIMIT", "NIOSH, 85, OVER_LIMIT"})
    void the_limit_itself_is_kept_and_a_minute_more_is_not(NoiseRule rule, double level, NoiseVerdict over) {
        assertThat(noise.exposure(List.of(period(level, 8)), rule).verdict()).isEqualTo(NoiseVerdict.HEARING_PROGRAMME);
        assertThat(noise.exposure(List.of(period(level, 8.02)), rule).verdict()).isEqualTo(over);
    }

    @Test
    void the_answer_names_limit_source_and_who_decides() {
        NoiseExposure day = noise.exposure(List.of(period(90, 1)), NoiseRule.OSHA);
        assertThat(day.limit().value()).isEqualTo(new SoundLevel(90));
        assertThat(day.limit().sourceId()).isEqualTo("29-CFR-1910.95");
        assertThat(day.limit().decides()).isEqualTo(Role.HYGIENIST);
        assertThat(noise.exposure(List.of(period(90, 1)), NoiseRule.NIOSH)
                        .limit()
                        .sourceId())
                .isEqualTo("NIOSH-98-126");
    }

    @Test
    void a_stricter_house_limit_is_obeyed_and_cites_the_house() {
        Parameters strict = Parameters.standard().with("noise.osha.criterion", new SoundLevel(80));
        NoiseExposure day = Noise.of(strict).exposure(List.of(period(85, 8)), NoiseRule.OSHA);
        assertThat(day.dose().percent()).isEqualTo(200);
        assertThat(day.limit().sourceId()).isEqualTo("house");
        assertThatThrownBy(() -> strict.with("noise.niosh.exchange", new SoundLevel(0)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("noise.niosh.exchange: '0 dBA' is not accepted; accepted: 3 dBA only");
    }

    @Test
    void what_cannot_be_a_day_of_noise_is_refused() {
        assertThatThrownBy(() -> period(140.0001, 1))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("noise.level: '140.0001 dBA' is not accepted; accepted: 0 to 140 dBA");
        assertThatThrownBy(() -> period(90, 24.1))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("noise.time: ");
        assertThatThrownBy(() -> noise.exposure(List.of(), NoiseRule.OSHA))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("noise.periods: ");
        assertThatThrownBy(() -> noise.exposure(List.of(period(90, 13), period(80, 12)), NoiseRule.OSHA))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("together up to 24 h");
        assertThatThrownBy(() -> noise.allowedTime(new SoundLevel(141), NoiseRule.OSHA))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("noise.level: ");
    }

    private double allowedMinutes(double level, NoiseRule rule) {
        return noise.allowedTime(new SoundLevel(level), rule)
                .map(TimeSpan::minutes)
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static NoisePeriod period(double decibels, double hours) {
        return new NoisePeriod(new SoundLevel(decibels), TimeSpan.of(hours, Unit.HOUR));
    }
}
