package stoneprocess.core.exposure;

import java.util.List;
import java.util.Objects;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Voltage;

/**
 * The load that a single-phase circuit carries for hours: volts x amperes x 80 %, the parameter {@code
 * supply.continuous}. Immutable and safe to share between threads.
 */
public final class Circuit {
    private final Parameters parameters;

    private Circuit(Parameters parameters) {
        this.parameters = parameters;
    }

    /** Reads the continuous share from the parameters. */
    public static Circuit of(Parameters parameters) {
        return new Circuit(Objects.requireNonNull(parameters, "parameters"));
    }

    /**
     * Compares loads with what a circuit carries. By their power factor motors draw more than their rated power, and
     * several times as much when they start: give the input in volt-amperes where the rating plate states it.
     *
     * @throws stoneprocess.core.problem.InvalidInputException for volts or amperes outside their range, see {@link
     *     CircuitUse}
     */
    public CircuitLoad load(Voltage volts, Current breaker, List<Power> loads) {
        return load(new CircuitUse(volts, breaker, loads));
    }

    /** As {@link #load(Voltage, Current, List)}, for a circuit with its loads. */
    public CircuitLoad load(CircuitUse use) {
        Limit<Share> limit = Limit.of(parameters, "supply.continuous", Share.class, Role.ELECTRICIAN);
        double share = limit.value().percent() / 100;
        Power continuous = new Power(use.volts().volts() * use.breaker().amperes() * share / 1000);
        double kilowatts = 0;
        for (Power power : use.loads()) {
            kilowatts += power.kilowatts();
        }
        Power load = new Power(kilowatts);
        Power spare = new Power(Math.max(0, continuous.kilowatts() - load.kilowatts()));
        boolean carries = load.compareTo(continuous) <= 0;
        return new CircuitLoad(
                continuous, load, spare, carries ? CircuitVerdict.WITHIN_LIMIT : CircuitVerdict.OVER_LIMIT, limit);
    }
}
