package stoneprocess.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Friction;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.PendulumValue;
import stoneprocess.core.quantity.Unit;

/** Slip classes against HSE's guidance, ANSI A326.3 (2021) and EN 16165 annex B. */
class WetSlipValidationTest {
    private final WetSlip slip = WetSlip.of(Parameters.standard());

    /** HSE: 0 to 24 high, 25 to 35 moderate, 36 and over low slip potential. */
    @ParameterizedTest
    @CsvSource({"0, HIGH", "24, HIGH", "25, MODERATE", "35, MODERATE", "36, LOW", "75, LOW"})
    void pendulum_classes_are_those_of_hse(double value, SlipPotential potential) {
        assertThat(slip.byPendulum(new PendulumValue(value)).potential()).isEqualTo(potential);
    }

    /** HSE, in clean water: Rz under 10 high, 10 to 20 moderate, over 20 micrometres low slip potential. */
    @ParameterizedTest
    @CsvSource({"0, HIGH", "9.9, HIGH", "10, MODERATE", "20, MODERATE", "20.1, LOW", "60, LOW"})
    void roughness_classes_are_those_of_hse(double micrometres, SlipPotential potential) {
        assertThat(slip.byRoughness(Length.of(micrometres, Unit.MICROMETRE)).potential())
                .isEqualTo(potential);
    }

    /** HSE: mu = 3 PTV / (330 - PTV); 36 is a coefficient of 0.37 and 50 one of 0.54. */
    @ParameterizedTest
    @CsvSource({"36, 0.37", "50, 0.54"})
    void a_pendulum_value_converts_to_friction(double value, double friction) {
        assertThat(WetSlip.friction(new PendulumValue(value)).friction()).isCloseTo(friction, Offset.offset(0.005));
    }

    /** ANSI A326.3: 0.42 inside dry and wet, 0.50 inside wet plus, 0.55 outside wet and under oils and greases. */
    @ParameterizedTest
    @CsvSource({
        "INTERIOR_DRY, 0.42",
        "INTERIOR_WET, 0.42",
        "INTERIOR_WET_PLUS, 0.50",
        "EXTERIOR_WET, 0.55",
        "OILS_AND_GREASES, 0.55"
    })
    void friction_limits_are_those_of_ansi_a326_3(SlipPlace place, double limit) {
        FrictionCheck at = slip.byFriction(new Friction(limit), place);
        assertThat(at.limit().value()).isEqualTo(new Friction(limit));
        assertThat(at.limit().sourceId()).isEqualTo("ANSI-A326.3");
        assertThat(at.meetsLimit()).isTrue();
        assertThat(slip.byFriction(new Friction(limit - 0.01), place).meetsLimit())
                .isFalse();
    }

    /** EN 16165 annex B: R9 from 6 degrees, R10 over 10, R11 over 19, R12 over 27, R13 over 35. */
    @ParameterizedTest
    @CsvSource({
        "5.9, UNCLASSED",
        "6, R9",
        "10, R9",
        "10.1, R10",
        "19, R10",
        "19.1, R11",
        "27, R11",
        "27.1, R12",
        "35, R12",
        "35.1, R13"
    })
    void ramp_classes_are_those_of_en_16165(double degrees, RampClass ramp) {
        assertThat(slip.byRamp(new Angle(degrees)).ramp()).isEqualTo(ramp);
    }

    /** HSE's border of low slip potential, 36, is a coefficient near the 0.36 that its guidance rests on (from memory). */
    @Test
    void low_slip_potential_starts_near_a_coefficient_of_0_36() {
        Limit<PendulumValue> low = slip.byPendulum(new PendulumValue(50)).limit();
        assertThat(low.value()).isEqualTo(new PendulumValue(36));
        assertThat(WetSlip.friction(low.value()).friction()).isCloseTo(0.36, Offset.offset(0.01));
    }
}
