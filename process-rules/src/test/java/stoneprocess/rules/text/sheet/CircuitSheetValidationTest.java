package stoneprocess.rules.text.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Voltage;
import stoneprocess.rules.text.document.Texts;

/** What the sheet of a circuit prints against the rule of 80 % (US National Electrical Code, NFPA 70, 210.20, from memory). */
class CircuitSheetValidationTest {
    /** NFPA 70, from memory: 80 % of 120 V and 15 A are 1.44 kW, of 20 A 1.92 kW; 230 V and 16 A, 2.944 kW, round down. */
    @ParameterizedTest
    @CsvSource({"120, 15, 1.44 kW", "120, 20, 1.92 kW", "230, 16, 2.94 kW"})
    void a_circuit_carries_80_percent_for_hours(double volts, double amperes, String carries) {
        String sheet = sheet(volts, amperes);
        assertThat(Printed.row(sheet, "carries continuously")).containsExactly(carries);
        assertThat(Printed.row(sheet, "connected load")).containsExactly("0 kW");
        assertThat(Printed.row(sheet, "left to add")).containsExactly(carries);
    }

    @Test
    void loads_are_summed_and_judged() {
        assertThat(sheet(120, 15, 1.1, 0.34)).contains("WITHIN THE LIMIT");
        String over = sheet(120, 15, 1.1, 0.3401);
        assertThat(over).contains("OVER THE LIMIT");
        assertThat(Printed.row(over, "connected load")).containsExactly("1.45 kW");
        assertThat(Printed.row(over, "left to add")).containsExactly("0 kW");
    }

    @Test
    void the_rule_is_named_as_practice_and_an_electrician_decides() {
        assertThat(Printed.joined(sheet(230, 16)))
                .contains("80 % of volts times amperes")
                .contains("Common practice, no source")
                .contains("Motors draw several times as much on starting")
                .contains("A licensed electrician.");
    }

    private static String sheet(double volts, double amperes, double... kilowatts) {
        List<Power> loads = Arrays.stream(kilowatts).mapToObj(Power::new).toList();
        return Texts.english().page(CircuitSheet.of(new Voltage(volts), new Current(amperes), loads));
    }
}
