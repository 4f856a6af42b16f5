package stoneprocess.rules.text.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.exposure.SlipPlace;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Friction;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.PendulumValue;
import stoneprocess.core.quantity.Unit;
import stoneprocess.rules.text.document.Texts;

/** What the sheet of slip prints against HSE's guidance, ANSI A326.3 (2021) and EN 16165 annex B. */
class SlipSheetValidationTest {
    /** HSE: 0 to 24 high, 25 to 35 moderate, 36 and over low slip potential. */
    @ParameterizedTest
    @CsvSource({"24, high", "25, moderate", "35, moderate", "36, low"})
    void pendulum_classes_are_those_of_hse(double value, String potential) {
        String sheet = Texts.english().page(SlipSheet.ofPendulum(new PendulumValue(value)));
        assertThat(Printed.row(sheet, "slip potential")).containsExactly(potential);
        assertThat(sheet).contains("Moderate from 25 PTV, low from 36 PTV, high below both (UK Health");
    }

    /** HSE: mu = 3 PTV / (330 - PTV); 36 is a coefficient of 0.37 and 50 one of 0.54. The sheet rounds down. */
    @ParameterizedTest
    @CsvSource({"36, 0.37", "50, 0.54"})
    void the_coefficient_of_a_pendulum_value_is_printed(double value, double friction) {
        String cell = Printed.row(
                        Texts.english().page(SlipSheet.ofPendulum(new PendulumValue(value))), "coefficient of friction")
                .get(0);
        assertThat(Double.parseDouble(cell.substring(0, cell.indexOf(',')))).isCloseTo(friction, Offset.offset(0.0051));
    }

    /** HSE, in clean water: Rz under 10 high, 10 to 20 moderate, over 20 micrometres low slip potential. */
    @ParameterizedTest
    @CsvSource({"9.9, high", "10, moderate", "20, moderate", "20.1, low"})
    void roughness_classes_are_those_of_hse(double micrometres, String potential) {
        String sheet = Texts.english().page(SlipSheet.ofRoughness(Length.of(micrometres, Unit.MICROMETRE)));
        assertThat(Printed.row(sheet, "slip potential")).containsExactly(potential + ", in clean water");
        assertThat(Printed.joined(sheet)).contains("Roughness supports a pendulum test and does not replace it.");
    }

    /** ANSI A326.3: 0.42 inside dry and wet, 0.50 inside wet plus, 0.55 outside wet and under oils and greases. */
    @ParameterizedTest
    @CsvSource({
        "INTERIOR_DRY, 0.42",
        "INTERIOR_WET, 0.42",
        "INTERIOR_WET_PLUS, 0.5",
        "EXTERIOR_WET, 0.55",
        "OILS_AND_GREASES, 0.55"
    })
    void friction_limits_are_those_of_ansi_a326_3(SlipPlace place, String limit) {
        double value = Double.parseDouble(limit);
        String met = Texts.english().page(SlipSheet.ofFriction(new Friction(value), place));
        assertThat(Printed.row(met, "minimum here")).containsExactly(limit);
        assertThat(met).contains("LIMIT MET for this use.").contains("ANSI A326.3");
        assertThat(Printed.joined(met)).contains("Meeting the limit does not mean that nobody slips");
        assertThat(Texts.english().page(SlipSheet.ofFriction(new Friction(value - 0.01), place)))
                .contains("BELOW THE LIMIT for this use.");
    }

    /** EN 16165 annex B: R9 from 6 degrees, R10 over 10, R11 over 19, R12 over 27, R13 over 35. */
    @ParameterizedTest
    @CsvSource({"5.9, none", "6, R9", "10, R9", "10.1, R10", "19.1, R11", "27.1, R12", "35.1, R13"})
    void ramp_classes_are_those_of_en_16165(double degrees, String ramp) {
        String sheet = Texts.english().page(SlipSheet.ofRamp(new Angle(degrees)));
        assertThat(Printed.row(sheet, "class")).containsExactly(ramp);
        assertThat(Printed.joined(sheet))
                .contains(
                        "R9 from 6 degrees, R10 over 10 degrees, R11 over 19 degrees, R12 over 27 degrees, R13 over 35 degrees (CEN, EN");
    }

    @Test
    void a_class_never_comes_from_gloss_and_a_slip_tester_decides() {
        assertThat(Printed.joined(Texts.english().page(SlipSheet.ofPendulum(new PendulumValue(40)))))
                .contains("Slip is never inferred from gloss or grit.")
                .contains("Level floor and straight walking only")
                .contains("A person qualified in slip testing, who measures the floor.");
    }
}
