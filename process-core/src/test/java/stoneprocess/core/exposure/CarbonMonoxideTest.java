package stoneprocess.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Concentration;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.Volume;

class CarbonMonoxideTest {
    private final CarbonMonoxide carbonMonoxide = CarbonMonoxide.of(Parameters.standard());

    /** The laws draw sources up to 10 m3/h, five times a 5-hp engine's, and rooms from a closet to a hall. */
    @Property(seed = "1955")
    void more_ventilation_never_raises_carbon_monoxide(
            @ForAll @DoubleRange(min = 1, max = 20000) double volume,
            @ForAll @DoubleRange(max = 20000) double air,
            @ForAll @DoubleRange(max = 20000) double more,
            @ForAll @DoubleRange(min = 0.01, max = 10) double source,
            @ForAll @DoubleRange(max = 480) double minutes) {
        CarbonMonoxideBuildUp close = build(room(volume, air, 3), source, minutes);
        CarbonMonoxideBuildUp airy = build(room(volume, air + more, 3), source, minutes);
        assertThat(airy.atEnd()).isLessThanOrEqualTo(close.atEnd());
        assertThat(airy.shiftMean().partsPerMillion())
                .isLessThanOrEqualTo(close.shiftMean().partsPerMillion() * (1 + 1e-9) + 1e-4);
        assertThat(minutesToCeiling(airy)).isGreaterThanOrEqualTo(minutesToCeiling(close));
        assertThat(airy.verdict()).isLessThanOrEqualTo(close.verdict());
    }

    @Property(seed = "1955")
    void a_stronger_source_or_a_longer_run_never_lowers_carbon_monoxide(
            @ForAll @DoubleRange(min = 1, max = 20000) double volume,
            @ForAll @DoubleRange(max = 20000) double air,
            @ForAll @DoubleRange(min = 0.01, max = 10) double source,
            @ForAll @DoubleRange(max = 10) double stronger,
            @ForAll @DoubleRange(max = 240) double minutes,
            @ForAll @DoubleRange(max = 240) double longer) {
        CarbonMonoxideBuildUp mild = build(room(volume, air, 3), source, minutes);
        CarbonMonoxideBuildUp harsh = build(room(volume, air, 3), source + stronger, minutes + longer);
        assertThat(harsh.atEnd()).isGreaterThanOrEqualTo(mild.atEnd());
        assertThat(harsh.verdict()).isGreaterThanOrEqualTo(mild.verdict());
    }

    /** An independent route: the balance dC/dt = (G - Q (C - C0))/V in many small steps. */
    @ParameterizedTest
    @CsvSource({"100, 500, 2, 60", "50, 0, 1, 30", "2000, 3000, 4, 480", "20, 4000, 1.5, 5", "500, 0.01, 0.5, 120"})
    void the_formula_agrees_with_stepping_through_the_balance(
            double volume, double air, double source, double minutes) {
        int steps = 200_000;
        double hours = minutes / 60;
        double step = hours / steps;
        double rise = 0;
        double area = 0;
        for (int i = 0; i < steps; i++) {
            double slope = (source * 1e6 - air * rise) / volume;
            double middle = (source * 1e6 - air * (rise + slope * step / 2)) / volume;
            area += (rise + middle * step / 2) * step;
            rise += middle * step;
        }
        CarbonMonoxideBuildUp computed = build(room(volume, air, 5), source, minutes);
        assertThat(computed.atEnd().partsPerMillion()).isCloseTo(5 + rise, Offset.offset(1e-5 * rise));
        assertThat(computed.shiftMean().partsPerMillion()).isCloseTo(5 + area / 8, Offset.offset(1e-4 * area / 8));
    }

    /** The mean changes its way of computing where a thousandth of the room's air was changed: without a step. */
    @Test
    void the_mean_has_no_step_where_few_air_changes_turn_into_more() {
        double under = build(room(1000, 0.99999, 0), 1, 60).shiftMean().partsPerMillion();
        double over = build(room(1000, 1.00001, 0), 1, 60).shiftMean().partsPerMillion();
        assertThat(over).isCloseTo(under, Offset.offset(1e-4 * under));
    }

    @Property(seed = "1955")
    void the_needed_air_holds_the_limit_and_less_air_does_not(
            @ForAll @DoubleRange(min = 1, max = 5000) double volume,
            @ForAll @DoubleRange(max = 30) double background,
            @ForAll @DoubleRange(min = 0.1, max = 10) double source) {
        NeededAir needed =
                carbonMonoxide.neededAir(room(volume, 0, background), air(source), CarbonMonoxideLimit.NIOSH_CEILING);
        double flow = needed.air().orElseThrow().cubicMetresPerHour();
        assertThat(minutesToCeiling(build(room(volume, flow * 1.001, background), source, 480)))
                .isInfinite();
        assertThat(minutesToCeiling(build(room(volume, flow * 0.999, background), source, 480)))
                .isFinite();
    }

    @Property(seed = "1955")
    void after_the_time_to_the_ceiling_the_room_is_at_the_ceiling(
            @ForAll @DoubleRange(min = 100, max = 5000) double volume,
            @ForAll @DoubleRange(max = 1000) double air,
            @ForAll @DoubleRange(min = 1, max = 5) double source) {
        TimeSpan time = build(room(volume, air, 2), source, 1).timeToCeiling().orElseThrow();
        if (time.minutes() <= 480) {
            assertThat(build(room(volume, air, 2), source, time.minutes())
                            .atEnd()
                            .partsPerMillion())
                    .isCloseTo(200, Offset.offset(0.1));
        }
    }

    /** What was built up decays by the same exponential: airing is the inverse of filling. */
    @Property(seed = "1955")
    void after_the_purge_time_the_room_is_at_the_limit(
            @ForAll @DoubleRange(min = 10, max = 5000) double volume,
            @ForAll @DoubleRange(min = 10, max = 5000) double air,
            @ForAll @DoubleRange(max = 30) double background,
            @ForAll @DoubleRange(min = 36, max = 5000) double start) {
        Purge purge = carbonMonoxide.purge(
                room(volume, air, background), new Concentration(start), CarbonMonoxideLimit.NIOSH_MEAN);
        double hours = purge.time().orElseThrow().minutes() / 60;
        double end = background + (start - background) * Math.exp(-air / volume * hours);
        assertThat(end).isCloseTo(35, Offset.offset(0.05));
    }

    @Property(seed = "1955")
    void units_do_not_matter(
            @ForAll @DoubleRange(min = 40, max = 5000) double volume,
            @ForAll @DoubleRange(min = 1, max = 5000) double air,
            @ForAll @DoubleRange(min = 0.1, max = 10) double source,
            @ForAll @DoubleRange(min = 0.1, max = 8) double hours) {
        CarbonMonoxideBuildUp metric = build(room(volume, air, 2), source, hours * 60);
        RoomAir us = new RoomAir(
                Volume.of(volume / 0.028316846592, Unit.CUBIC_FOOT),
                Airflow.of(air / 1.69901079552, Unit.CUBIC_FOOT_PER_MINUTE),
                new Concentration(2));
        CarbonMonoxideBuildUp same = carbonMonoxide.buildUp(
                us, Airflow.of(source / 1.69901079552, Unit.CUBIC_FOOT_PER_MINUTE), TimeSpan.of(hours, Unit.HOUR));
        assertThat(same.atEnd().partsPerMillion())
                .isCloseTo(
                        metric.atEnd().partsPerMillion(),
                        Offset.offset(1e-6 * metric.atEnd().partsPerMillion()));
    }

    /** By construction: the verdicts know no cleared engine, and no figure has room for a yes. */
    @Test
    void no_figure_can_say_that_an_engine_indoors_is_cleared() {
        assertThat(EngineVerdict.values())
                .containsExactly(EngineVerdict.NOT_CLEARED, EngineVerdict.OVER_MEAN, EngineVerdict.OVER_CEILING);
        for (Class<?> figure : EngineFigure.class.getPermittedSubclasses()) {
            Stream<Class<?>> types = Arrays.stream(figure.getRecordComponents()).map(RecordComponent::getType);
            assertThat(types.filter(type -> type == boolean.class || (type.isEnum() && type != EngineVerdict.class)))
                    .as(figure.getSimpleName())
                    .isEmpty();
        }
    }

    @Test
    void the_smallest_figure_still_carries_every_caution() {
        CarbonMonoxideBuildUp least = build(room(20000, 20000, 0), 0.0001, 0);
        assertThat(least.atEnd().partsPerMillion()).isZero();
        assertThat(least.verdict()).isEqualTo(EngineVerdict.NOT_CLEARED);
        Stream<EngineFigure> figures = Stream.of(
                least,
                carbonMonoxide.neededAir(room(50, 0, 0), air(1), CarbonMonoxideLimit.OSHA_MEAN),
                carbonMonoxide.purge(room(50, 0, 0), new Concentration(1), CarbonMonoxideLimit.OSHA_MEAN));
        assertThat(figures).allSatisfy(figure -> assertThat(figure.cautions()).containsExactly(EngineCaution.values()));
    }

    @Test
    void verdicts_follow_ceiling_and_means() {
        assertThat(build(room(100, 0, 0), 2, 60).verdict()).isEqualTo(EngineVerdict.OVER_CEILING);
        assertThat(build(room(1000, 10000, 0), 1, 480).verdict()).isEqualTo(EngineVerdict.OVER_MEAN);
        assertThat(build(room(1000, 10000, 0), 0.1, 480).verdict()).isEqualTo(EngineVerdict.NOT_CLEARED);
        assertThat(build(room(1000, 10000, 0), 1, 480).limits())
                .extracting(limit -> limit.value().partsPerMillion())
                .containsExactly(200.0, 35.0, 50.0);
    }

    @Test
    void without_fresh_air_the_gas_only_gathers_and_is_never_aired_out() {
        CarbonMonoxideBuildUp closed = build(room(100, 0, 0), 1, 60);
        assertThat(closed.atEnd()).isEqualTo(new Concentration(10000));
        assertThat(closed.shiftMean()).isEqualTo(new Concentration(625));
        assertThat(closed.timeToCeiling()).contains(new TimeSpan(1.2));
        assertThat(build(room(1, 0, 0), 10, 480).atEnd()).isEqualTo(new Concentration(1_000_000));
        assertThat(carbonMonoxide
                        .purge(room(100, 0, 0), new Concentration(500), CarbonMonoxideLimit.OSHA_MEAN)
                        .time())
                .isEmpty();
    }

    @Test
    void foul_air_from_outside_cannot_hold_a_limit() {
        RoomAir street = room(100, 1000, 35);
        assertThat(carbonMonoxide
                        .neededAir(street, air(1), CarbonMonoxideLimit.NIOSH_MEAN)
                        .air())
                .isEmpty();
        assertThat(carbonMonoxide
                        .purge(street, new Concentration(36), CarbonMonoxideLimit.NIOSH_MEAN)
                        .time())
                .isEmpty();
        assertThat(build(room(100, 1000, 200), 0.0001, 0).timeToCeiling()).contains(new TimeSpan(0));
    }

    @Test
    void a_room_at_the_limit_needs_no_airing_time() {
        assertThat(carbonMonoxide
                        .purge(room(100, 0, 0), new Concentration(50), CarbonMonoxideLimit.OSHA_MEAN)
                        .time())
                .contains(new TimeSpan(0));
    }

    @Test
    void what_cannot_be_an_engine_in_a_room_is_refused() {
        for (double power : List.of(0.0, 19.1)) {
            assertThatThrownBy(() -> carbonMonoxide.petrolEngine(new Power(power)))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageStartingWith("engine.power: ");
        }
        assertThatThrownBy(() -> room(0.999, 1, 0))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("room.volume: '999 l' is not accepted; accepted: 1000 l or more");
        assertThatThrownBy(() -> build(room(10, 1, 0), 0, 5))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("engine.carbon-monoxide: ");
        assertThatThrownBy(() -> build(room(10, 1, 0), 1, 480.1))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("engine.time: ");
        assertThatThrownBy(() -> carbonMonoxide.neededAir(room(10, 1, 0), air(0), CarbonMonoxideLimit.OSHA_MEAN))
                .isInstanceOf(InvalidInputException.class);
    }

    private CarbonMonoxideBuildUp build(RoomAir room, double source, double minutes) {
        return carbonMonoxide.buildUp(room, air(source), new TimeSpan(minutes));
    }

    private static double minutesToCeiling(CarbonMonoxideBuildUp buildUp) {
        return buildUp.timeToCeiling().map(TimeSpan::minutes).orElse(Double.POSITIVE_INFINITY);
    }

    private static Airflow air(double cubicMetresPerHour) {
        return new Airflow(cubicMetresPerHour);
    }

    private static RoomAir room(double cubicMetres, double cubicMetresPerHour, double background) {
        return new RoomAir(
                Volume.of(cubicMetres, Unit.CUBIC_METRE), air(cubicMetresPerHour), new Concentration(background));
    }
}
