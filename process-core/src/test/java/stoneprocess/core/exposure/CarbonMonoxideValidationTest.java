package stoneprocess.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Concentration;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.Volume;

/**
 * Carbon monoxide against the model study of a 5-hp petrol concrete saw in a room of 2,332 cubic feet by Earnest and
 * others of NIOSH (AIHA Journal 58, 787, 1997, and its conference abstract): the saw gave off 0.818 cfm of carbon
 * monoxide into 836 cfm of fresh air, which is 21.5 air changes an hour, and nearly 5000 cfm, 120 air changes an hour,
 * would have been needed to stay under 200 ppm.
 */
class CarbonMonoxideValidationTest {
    private static final double ROOM_CUBIC_FEET = 2332;

    private final CarbonMonoxide carbonMonoxide = CarbonMonoxide.of(Parameters.standard());

    /** The emission comes from another publication, 40 CFR 90.103 (519 g/kWh), so the figure is no circle. */
    @Test
    void a_five_horsepower_petrol_engine_needs_about_5000_cfm_to_stay_under_200_ppm() {
        Airflow source = carbonMonoxide.petrolEngine(Power.of(5, Unit.HORSEPOWER));
        NeededAir needed = carbonMonoxide.neededAir(room(0), source, CarbonMonoxideLimit.NIOSH_CEILING);
        double cfm = needed.air().orElseThrow().in(Unit.CUBIC_FOOT_PER_MINUTE).doubleValue();
        double changes = 60 / needed.oneChange().orElseThrow().minutes();
        System.out.printf("5 hp of petrol under 200 ppm: %.0f cfm, %.0f air changes an hour%n", cfm, changes);
        assertThat(cfm).isCloseTo(5000, Offset.offset(250.0));
        assertThat(changes).isCloseTo(120, Offset.offset(10.0));
    }

    /** The emission fitted on site is a fifth lower than the standard's: the model then asks for 4090 cfm. */
    @Test
    void the_emission_measured_on_site_asks_for_the_same_order_of_air() {
        Airflow measured = Airflow.of(0.818, Unit.CUBIC_FOOT_PER_MINUTE);
        assertThat(carbonMonoxide.petrolEngine(Power.of(5, Unit.HORSEPOWER)).cubicMetresPerHour())
                .isBetween(measured.cubicMetresPerHour(), 1.25 * measured.cubicMetresPerHour());
        double cfm = carbonMonoxide
                .neededAir(room(836), measured, CarbonMonoxideLimit.NIOSH_CEILING)
                .air()
                .orElseThrow()
                .in(Unit.CUBIC_FOOT_PER_MINUTE)
                .doubleValue();
        assertThat(cfm).isBetween(4000.0, 5000.0);
    }

    /** 836 cfm are 21.5 air changes an hour of that room; 120 changes are the "nearly 5000 cfm" of the abstract. */
    @ParameterizedTest
    @CsvSource({"836, 21.5, 0.05", "4664, 120, 0.1"})
    void air_changes_are_flow_over_volume(double cfm, double changes, double tolerance) {
        double source = 200e-6 * cfm;
        NeededAir needed = carbonMonoxide.neededAir(
                room(0), Airflow.of(source, Unit.CUBIC_FOOT_PER_MINUTE), CarbonMonoxideLimit.NIOSH_CEILING);
        assertThat(60 / needed.oneChange().orElseThrow().minutes()).isCloseTo(changes, Offset.offset(tolerance));
    }

    /**
     * The study: in a room of 10,000 cubic feet 1,200 ppm are reached in 7 minutes with 1 air change an hour and in 10
     * with 5. The source that does the one must do the other. (That source is 1.8 cfm: the 0.818 cfm of the abstract do
     * not lead to these times, so only their ratio is held here.)
     */
    @Test
    void what_takes_7_minutes_with_one_air_change_takes_10_with_five() {
        double oneCfm = after(1, 1, 7);
        double source = 1200 / oneCfm;
        System.out.printf("Source that makes 1,200 ppm in 7 minutes: %.2f cfm%n", source);
        assertThat(after(1, source, 7)).isCloseTo(1200, Offset.offset(0.5));
        assertThat(after(5, source, 9.5)).isLessThan(1200);
        assertThat(after(5, source, 10.5)).isGreaterThan(1200);
    }

    private double after(double changes, double cfm, double minutes) {
        RoomAir hall = new RoomAir(
                Volume.of(10_000, Unit.CUBIC_FOOT),
                Airflow.of(10_000 * changes / 60, Unit.CUBIC_FOOT_PER_MINUTE),
                new Concentration(0));
        return carbonMonoxide
                .buildUp(hall, Airflow.of(cfm, Unit.CUBIC_FOOT_PER_MINUTE), new TimeSpan(minutes))
                .atEnd()
                .partsPerMillion();
    }

    /** NIOSH recommends 35 ppm over 8 h and a ceiling of 200 ppm; 29 CFR 1910.1000 table Z-1 has 50 ppm over 8 h. */
    @ParameterizedTest
    @CsvSource({"NIOSH_CEILING, 200, NIOSH-REL-CO", "NIOSH_MEAN, 35, NIOSH-REL-CO", "OSHA_MEAN, 50, 29-CFR-1910.1000"})
    void limits_are_those_published(CarbonMonoxideLimit name, double partsPerMillion, String source) {
        Limit<Concentration> limit = carbonMonoxide.limit(name);
        assertThat(limit.value()).isEqualTo(new Concentration(partsPerMillion));
        assertThat(limit.sourceId()).isEqualTo(source);
        assertThat(limit.decides()).isEqualTo(Role.HYGIENIST);
    }

    private static RoomAir room(double cfm) {
        return new RoomAir(
                Volume.of(ROOM_CUBIC_FEET, Unit.CUBIC_FOOT),
                Airflow.of(cfm, Unit.CUBIC_FOOT_PER_MINUTE),
                new Concentration(0));
    }
}
