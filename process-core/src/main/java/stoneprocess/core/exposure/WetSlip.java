package stoneprocess.core.exposure;

import java.util.List;
import java.util.Objects;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Friction;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.PendulumValue;

/**
 * Slip classes of values that were measured on the floor. They never come from gloss or grit: a polish says nothing
 * about slip, and a class is never inferred. Immutable and safe to share between threads.
 */
public final class WetSlip {
    private static final PendulumValue PENDULUM_END = new PendulumValue(150);
    private static final Friction FRICTION_END = new Friction(2.5);
    private static final Length ROUGHNESS_END = new Length(1);

    private final Parameters parameters;

    private WetSlip(Parameters parameters) {
        this.parameters = parameters;
    }

    /** Reads its limits from the parameters whose names start with {@code slip-}. */
    public static WetSlip of(Parameters parameters) {
        return new WetSlip(Objects.requireNonNull(parameters, "parameters"));
    }

    /**
     * Slip potential by pendulum: high below 25, moderate from 25, low from 36 (HSE). HSE gives 25 to 35 as moderate;
     * between 35 and 36 it counts as moderate too.
     *
     * @param value lowest mean of the directions tested, wet, from 0 to 150 PTV: hard slider for shoes, soft for bare
     *     feet
     * @throws InvalidInputException above 150 PTV
     */
    public SlipClass<PendulumValue> byPendulum(PendulumValue value) {
        requirePendulum(value);
        Limit<PendulumValue> low = Limit.of(parameters, "slip-pendulum.low", PendulumValue.class, Role.SLIP_TESTER);
        SlipPotential potential = SlipPotential.HIGH;
        if (value.compareTo(low.value()) >= 0) {
            potential = SlipPotential.LOW;
        } else if (value.compareTo(parameters.get("slip-pendulum.moderate", PendulumValue.class)) >= 0) {
            potential = SlipPotential.MODERATE;
        }
        return new SlipClass<>(value, potential, low, List.of(SlipCaution.LEVEL_AND_STRAIGHT_WALKING_ONLY));
    }

    /**
     * Slip potential by roughness Rz in clean water: high below 10 micrometres, moderate from 10 to 20, low above 20
     * (HSE). It supports a pendulum test and does not replace it.
     *
     * @param rz mean peak-to-valley height by stylus, from 0 to 1 mm
     * @throws InvalidInputException above 1 mm
     */
    public SlipClass<Length> byRoughness(Length rz) {
        requireRoughness(rz);
        Limit<Length> low = Limit.of(parameters, "slip-roughness.low-above", Length.class, Role.SLIP_TESTER);
        SlipPotential potential = SlipPotential.HIGH;
        if (rz.compareTo(low.value()) > 0) {
            potential = SlipPotential.LOW;
        } else if (rz.compareTo(parameters.get("slip-roughness.moderate-from", Length.class)) >= 0) {
            potential = SlipPotential.MODERATE;
        }
        return new SlipClass<>(
                rz, potential, low, List.of(SlipCaution.CLEAN_WATER_ONLY, SlipCaution.LEVEL_AND_STRAIGHT_WALKING_ONLY));
    }

    /**
     * Compares dynamic friction with the limit for the use of the floor (ANSI A326.3): 0.42 indoors dry or wet, 0.50
     * indoors wet with higher demands, 0.55 outdoors wet and under oil or grease. A value at the limit meets it.
     *
     * @param measured value by the method of that standard, from 0 to 2.5; dry for the dry place, otherwise wet
     * @throws InvalidInputException above 2.5
     */
    public FrictionCheck byFriction(Friction measured, SlipPlace place) {
        requireFriction(measured);
        Limit<Friction> limit = Limit.of(parameters, "slip-dcof." + place.key(), Friction.class, Role.SLIP_TESTER);
        return new FrictionCheck(
                place,
                measured,
                measured.compareTo(limit.value()) >= 0,
                limit,
                List.of(SlipCaution.MEETING_IT_IS_NO_PROMISE, SlipCaution.LEVEL_AND_STRAIGHT_WALKING_ONLY));
    }

    /**
     * Class of the shod ramp (EN 16165 annex B): R9 from 6 degrees, R10 above 10, R11 above 19, R12 above 27, R13 above
     * 35.
     *
     * @param slip mean angle of slip on oil, from 0 to 45 degrees
     * @throws InvalidInputException above 45 degrees
     */
    public RampResult byRamp(Angle slip) {
        requireRamp(slip);
        Limit<Angle> lowest = Limit.of(parameters, "slip-ramp.r9", Angle.class, Role.SLIP_TESTER);
        RampClass ramp = slip.compareTo(lowest.value()) >= 0 ? RampClass.R9 : RampClass.UNCLASSED;
        for (RampClass next : List.of(RampClass.R10, RampClass.R11, RampClass.R12, RampClass.R13)) {
            if (slip.compareTo(parameters.get("slip-ramp." + next.key(), Angle.class)) > 0) {
                ramp = next;
            }
        }
        return new RampResult(slip, ramp, lowest, List.of(SlipCaution.SPECIMEN_AS_NEW));
    }

    /**
     * Coefficient of friction of a pendulum value: mu = 3 PTV / (330 - PTV), from the energy that the slider takes up
     * (HSE).
     *
     * @param value pendulum value, from 0 to 150 PTV
     * @throws InvalidInputException above 150 PTV
     */
    public static Friction friction(PendulumValue value) {
        requirePendulum(value);
        return new Friction(3 * value.pendulumValue() / (330 - value.pendulumValue()));
    }

    /**
     * Pendulum value of a coefficient of friction: PTV = 330 mu / (3 + mu), the inverse of {@link #friction}.
     *
     * @param friction coefficient of friction, from 0 to 2.5
     * @throws InvalidInputException above 2.5
     */
    public static PendulumValue pendulumValue(Friction friction) {
        requireFriction(friction);
        return new PendulumValue(330 * friction.friction() / (3 + friction.friction()));
    }

    static void requirePendulum(PendulumValue value) {
        if (value.compareTo(PENDULUM_END) > 0) {
            throw new InvalidInputException("slip.pendulum", value.print(), "0 to " + PENDULUM_END.print());
        }
    }

    static void requireRoughness(Length rz) {
        if (rz.compareTo(ROUGHNESS_END) > 0) {
            throw new InvalidInputException("slip.rz", rz.print(), "0 to 1 mm");
        }
    }

    static void requireRamp(Angle slip) {
        if (slip.degrees() > 45) {
            throw new InvalidInputException("slip.ramp", slip.print(), "0 to 45 deg");
        }
    }

    static void requireFriction(Friction friction) {
        if (friction.compareTo(FRICTION_END) > 0) {
            throw new InvalidInputException("slip.friction", friction.print(), "0 to " + FRICTION_END.print());
        }
    }
}
