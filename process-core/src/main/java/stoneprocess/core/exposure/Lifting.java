package stoneprocess.core.exposure;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;

/**
 * The revised lifting equation (NIOSH 94-110), metric form: RWL = 23 kg x HM x VM x DM x AM x FM x CM.
 *
 * <p>It holds for smooth two-handed lifting on a firm, dry floor. It does not hold for lifting with one hand, sitting,
 * kneeling or in tight places, nor for unstable loads, barrows or shovels. On wet stone floors lift less. Immutable and
 * safe to share between threads.
 */
public final class Lifting {
    private static final List<Tsv.Row> FREQUENCIES = Tsv.read(Lifting.class, "lifting-frequency.tsv");

    /** Height of the hands, in centimetres, at which the vertical multiplier is 1. */
    private static final double KNUCKLE_HEIGHT = 75;

    private final Parameters parameters;

    private Lifting(Parameters parameters) {
        this.parameters = parameters;
    }

    /** Reads the equation's constants from the parameters named {@code lifting.}. */
    public static Lifting of(Parameters parameters) {
        return new Lifting(Objects.requireNonNull(parameters, "parameters"));
    }

    /**
     * Compares a lift with its limit.
     *
     * <p>With centimetres and degrees: HM = 25/H, 1 under 25 and 0 above 63; VM = 1 - 0.003 |V - 75|, 0 above 175; DM =
     * 0.82 + 4.5/D, 1 under 25 and 0 above 175; AM = 1 - 0.0032 A, 0 above 135; FM from the table, at the next higher
     * frequency, 0 above 15 lifts a minute; CM by grip: a fair one takes off 5 % below 75 cm only, a poor one 10 %.
     */
    public LiftingLimit limit(Lift lift) {
        Limit<Mass> constant = Limit.of(parameters, "lifting.load-constant", Mass.class, Role.ERGONOMIST);
        LiftMultipliers multipliers = multipliers(lift);
        Mass recommended = new Mass(constant.value().kilograms() * multipliers.product());
        Optional<Share> index = recommended.kilograms() > 0
                ? Optional.of(new Share(100 * lift.load().kilograms() / recommended.kilograms()))
                : Optional.empty();
        return new LiftingLimit(recommended, index, multipliers, verdict(lift, recommended, index), constant);
    }

    private LiftVerdict verdict(Lift lift, Mass recommended, Optional<Share> index) {
        Share farOver = parameters.get("lifting.far-over", Share.class);
        if (index.isEmpty() || index.get().compareTo(farOver) > 0) {
            return LiftVerdict.FAR_OVER_LIMIT;
        }
        return lift.load().compareTo(recommended) > 0 ? LiftVerdict.OVER_LIMIT : LiftVerdict.WITHIN_LIMIT;
    }

    private LiftMultipliers multipliers(Lift lift) {
        double reach = centimetres(lift.reach());
        double height = centimetres(lift.height());
        double travel = centimetres(lift.travel());
        double turn = lift.turn().degrees();
        double horizontal = reach > 63 ? 0 : Math.min(1, 25 / reach);
        double vertical = height > 175 ? 0 : 1 - 0.003 * Math.abs(height - KNUCKLE_HEIGHT);
        double distance = travel > 175 ? 0 : Math.min(1, 0.82 + 4.5 / travel);
        double asymmetry = turn > 135 ? 0 : 1 - 0.0032 * turn;
        return new LiftMultipliers(horizontal, vertical, distance, asymmetry, frequency(lift), coupling(lift));
    }

    private static double frequency(Lift lift) {
        double hours = lift.duration().in(Unit.HOUR).doubleValue();
        String duration = hours <= 1 ? "1" : hours <= 2 ? "2" : "8";
        String column = (isLow(lift) ? "low-" : "high-") + duration;
        for (Tsv.Row row : FREQUENCIES) {
            if (lift.liftsPerMinute() <= row.number("frequency")) {
                return row.number(column);
            }
        }
        return 0;
    }

    private double coupling(Lift lift) {
        return switch (lift.coupling()) {
            case GOOD -> 1;
            case FAIR -> isLow(lift) ? parameters.part("lifting.coupling-fair-low") : 1;
            case POOR -> parameters.part("lifting.coupling-poor");
        };
    }

    private static boolean isLow(Lift lift) {
        return centimetres(lift.height()) < KNUCKLE_HEIGHT;
    }

    private static double centimetres(Length length) {
        return length.millimetres() / 10;
    }
}
