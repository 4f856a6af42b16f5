package stoneprocess.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Voltage;

/** Continuous load of a circuit against the rule of 80 % (US National Electrical Code, NFPA 70, 210.20, from memory). */
class CircuitValidationTest {
    private final Circuit circuit = Circuit.of(Parameters.standard());

    /** NFPA 70, from memory: 80 % of 120 V and 15 A are 1.44 kW, of 20 A 1.92 kW; 230 V and 16 A by the same rule. */
    @ParameterizedTest
    @CsvSource({"120, 15, 1.44", "120, 20, 1.92", "230, 16, 2.944"})
    void a_circuit_carries_80_percent_for_hours(double volts, double amperes, double kilowatts) {
        CircuitLoad empty = load(volts, amperes);
        assertThat(empty.continuous()).isEqualTo(new Power(kilowatts));
        assertThat(empty.spare()).isEqualTo(new Power(kilowatts));
        assertThat(empty.verdict()).isEqualTo(CircuitVerdict.WITHIN_LIMIT);
        assertThat(empty.limit().decides()).isEqualTo(Role.ELECTRICIAN);
    }

    @Test
    void a_machine_and_a_vacuum_share_one_circuit() {
        CircuitLoad full = load(120, 15, 1.1, 0.34);
        assertThat(full.load()).isEqualTo(new Power(1.44));
        assertThat(full.verdict()).isEqualTo(CircuitVerdict.WITHIN_LIMIT);
        CircuitLoad over = load(120, 15, 1.1, 0.3401);
        assertThat(over.verdict()).isEqualTo(CircuitVerdict.OVER_LIMIT);
        assertThat(over.spare()).isEqualTo(new Power(0));
    }

    @Property(seed = "1955")
    void more_load_or_a_smaller_breaker_never_turns_over_into_within(
            @ForAll @DoubleRange(min = 6, max = 63) double amperes,
            @ForAll @DoubleRange(max = 10) double load,
            @ForAll @DoubleRange(max = 5) double more) {
        assertThat(load(230, amperes, load, more).verdict())
                .isGreaterThanOrEqualTo(load(230, amperes, load).verdict());
        assertThat(load(230, amperes / 2, load).verdict())
                .isGreaterThanOrEqualTo(load(230, amperes, load).verdict());
    }

    @Test
    void what_cannot_be_a_circuit_is_refused() {
        for (double bad : new double[] {0, 1000.1}) {
            assertThatThrownBy(() -> load(bad, 15))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageStartingWith("circuit.volts: ");
            assertThatThrownBy(() -> load(120, bad))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageStartingWith("circuit.breaker: ");
        }
    }

    private CircuitLoad load(double volts, double amperes, double... kilowatts) {
        List<Power> loads = Arrays.stream(kilowatts).mapToObj(Power::new).toList();
        return circuit.load(new Voltage(volts), new Current(amperes), loads);
    }
}
