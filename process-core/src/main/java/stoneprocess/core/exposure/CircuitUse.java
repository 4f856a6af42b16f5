package stoneprocess.core.exposure;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Voltage;

/**
 * A single-phase circuit and its loads.
 *
 * @param volts voltage of the circuit, above zero and up to 1000 V
 * @param breaker rating of the breaker, above zero and up to 1000 A
 * @param loads everything that runs at once, other trades' machines included; may be empty
 */
public record CircuitUse(Voltage volts, Current breaker, List<Power> loads) implements ExposureInput {
    /**
     * Checks the ranges.
     *
     * @throws InvalidInputException for volts or amperes outside their range
     */
    public CircuitUse {
        Refuse.nulls(CircuitUse.class, volts, breaker, loads);
        if (volts.volts() <= 0 || volts.volts() > 1000) {
            throw new InvalidInputException("circuit.volts", volts.print(), "more than 0 and up to 1000 V");
        }
        if (breaker.amperes() <= 0 || breaker.amperes() > 1000) {
            throw new InvalidInputException("circuit.breaker", breaker.print(), "more than 0 and up to 1000 A");
        }
        loads = List.copyOf(loads);
    }
}
