package stoneprocess.core.exposure;

import java.util.List;
import java.util.Objects;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Voltage;

/**
 * What a single-phase circuit carries for hours: volts x amperes x 80 %, the number {@code supply.continuous}. Immutable
 * and safe to share between threads.
 */
public final class Circuit {
    private final Parameters parameters;

    private Circuit(Parameters parameters) {
        this.parameters = parameters;
    }

    /** Circuits by the given numbers. */
    public static Circuit of(Parameters parameters) {
        return new Circuit(Objects.requireNonNull(parameters, "parameters"));
    }

    /**
     * Holds loads against a circuit. Motors draw more than their power says by their power factor, and several times as
     * much on starting: give the input in volt-amperes where the plate states it.
     *
     * @throws stoneprocess.core.problem.InvalidInputException for volts or amperes outside their range, see {@link
     *     CircuitUse}
     */
    public CircuitLoad load(Voltage volts, Current breaker, List<Power> loads) {
        return load(new CircuitUse(volts, breaker, loads));
    }

    /** The same for a circuit and its loads. */
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
