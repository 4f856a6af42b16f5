package stoneprocess.core.exposure;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Concentration;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.Volume;

/**
 * Carbon monoxide of an engine in a room, fully mixed: C(t) = C0 + (G/Q)(1 - exp(-Qt/V)), with gas G and fresh air Q in
 * the same unit, volume V and background C0 (NIOSH 96-118; material balance of Earnest and others, 1997). No result of
 * this class clears an engine for use indoors. Immutable and safe to share between threads.
 */
public final class CarbonMonoxide {
    /** Molar mass of carbon monoxide in g/mol. */
    private static final double MOLAR_MASS = 28.010;

    /**
     * Molar volume of a gas in l/mol at 25 degrees Celsius and 101.325 kPa, where limits in ppm are defined (NIOSH).
     */
    private static final double MOLAR_VOLUME = 24.45;

    private static final double MILLION = 1e6;
    private static final TimeSpan SHIFT = TimeSpan.of(8, Unit.HOUR);

    private final Parameters parameters;

    private CarbonMonoxide(Parameters parameters) {
        this.parameters = parameters;
    }

    /** Reads its limits from the parameters named {@code carbon-monoxide.}. */
    public static CarbonMonoxide of(Parameters parameters) {
        return new CarbonMonoxide(Objects.requireNonNull(parameters, "parameters"));
    }

    /**
     * Carbon monoxide that a small four-stroke petrol engine may give off: 519 g for each kilowatt-hour of work, the
     * emission standard of 40 CFR 90.103 for engines that are not held in the hand, at 25 degrees Celsius. Worn or
     * choked engines give off more; prefer a measured figure.
     *
     * @param power mechanical power in use, above zero and up to 19 kW, where the standard ends
     * @throws InvalidInputException for a power outside that range
     */
    public Airflow petrolEngine(Power power) {
        requirePower(power);
        double kilograms = parameters
                .get("carbon-monoxide.petrol-per-kilowatt-hour", Mass.class)
                .kilograms();
        double litresPerHour = power.kilowatts() * kilograms * 1000 / MOLAR_MASS * MOLAR_VOLUME;
        return new Airflow(litresPerHour / 1000);
    }

    /**
     * Carbon monoxide after an engine has run for a while in air that started at the background.
     *
     * <p>The mean over 8 h is C0 + (G/Q)(1 - (1 - exp(-x))/x) t / 8 h with x = Qt/V. Without fresh air both formulas
     * take their limit for Q towards zero. Results are capped at a million ppm.
     *
     * @param source pure carbon monoxide that the engine gives off, above zero
     * @param time running time, up to 8 h
     * @throws InvalidInputException for no source or more than 8 h
     */
    public CarbonMonoxideBuildUp buildUp(RoomAir room, Airflow source, TimeSpan time) {
        requireSource(source);
        requireTime(time);
        double background = room.background().partsPerMillion();
        double changes = perMinute(room.outdoorAir()) * time.minutes() / cubicMetres(room.volume());
        double unventilated = perMinute(source) * time.minutes() / cubicMetres(room.volume()) * MILLION;
        Concentration atEnd = capped(background + unventilated * heldBack(changes));
        Concentration shiftMean =
                capped(background + unventilated * meanHeldBack(changes) * time.minutes() / SHIFT.minutes());
        Limit<Concentration> ceiling = limit(CarbonMonoxideLimit.NIOSH_CEILING);
        Limit<Concentration> niosh = limit(CarbonMonoxideLimit.NIOSH_MEAN);
        Limit<Concentration> osha = limit(CarbonMonoxideLimit.OSHA_MEAN);
        EngineVerdict verdict = EngineVerdict.NOT_CLEARED;
        if (atEnd.compareTo(ceiling.value()) > 0) {
            verdict = EngineVerdict.OVER_CEILING;
        } else if (shiftMean.compareTo(niosh.value()) > 0 || shiftMean.compareTo(osha.value()) > 0) {
            verdict = EngineVerdict.OVER_MEAN;
        }
        return new CarbonMonoxideBuildUp(
                atEnd, shiftMean, timeTo(ceiling.value(), room, source), verdict, List.of(ceiling, niosh, osha));
    }

    /**
     * Fresh air that keeps the room at a limit however long the engine runs: Q = G / (C - C0). Imperfect mixing takes
     * several times as much.
     *
     * @param source pure carbon monoxide that the engine gives off, above zero
     * @param room its volume and background are used, its fresh air is not
     * @throws InvalidInputException for no source
     */
    public NeededAir neededAir(RoomAir room, Airflow source, CarbonMonoxideLimit aim) {
        requireSource(source);
        Limit<Concentration> limit = limit(aim);
        double rise = limit.value().partsPerMillion() - room.background().partsPerMillion();
        if (rise <= 0) {
            return new NeededAir(Optional.empty(), Optional.empty(), limit);
        }
        double air = source.cubicMetresPerHour() * MILLION / rise;
        double minutes = cubicMetres(room.volume()) / (air / 60);
        return new NeededAir(Optional.of(new Airflow(air)), Optional.of(new TimeSpan(minutes)), limit);
    }

    /**
     * Time to air an empty room with the engine off: t = (V/Q) ln((C - C0)/(limit - C0)); zero when the room is at the
     * limit or below it already. Dead corners take longer: measure before anyone goes in.
     *
     * @param start carbon monoxide in the room now
     * @return the time; empty when no fresh air comes in or that air is itself at the limit or above it
     */
    public Purge purge(RoomAir room, Concentration start, CarbonMonoxideLimit aim) {
        Limit<Concentration> limit = limit(aim);
        if (start.compareTo(limit.value()) <= 0) {
            return new Purge(Optional.of(new TimeSpan(0)), limit);
        }
        double background = room.background().partsPerMillion();
        double air = perMinute(room.outdoorAir());
        double margin = limit.value().partsPerMillion() - background;
        if (air <= 0 || margin <= 0) {
            return new Purge(Optional.empty(), limit);
        }
        double oneChange = cubicMetres(room.volume()) / air;
        double minutes = oneChange * StrictMath.log((start.partsPerMillion() - background) / margin);
        return new Purge(Optional.of(new TimeSpan(minutes)), limit);
    }

    /** The limit with its source: 200 ppm ceiling and 35 ppm mean of NIOSH, 50 ppm mean of OSHA, unless retuned. */
    public Limit<Concentration> limit(CarbonMonoxideLimit limit) {
        return Limit.of(parameters, "carbon-monoxide." + limit.key(), Concentration.class, Role.HYGIENIST);
    }

    private static Optional<TimeSpan> timeTo(Concentration ceiling, RoomAir room, Airflow source) {
        double rise = (ceiling.partsPerMillion() - room.background().partsPerMillion()) / MILLION;
        if (rise <= 0) {
            return Optional.of(new TimeSpan(0));
        }
        double unventilated = rise * cubicMetres(room.volume()) / perMinute(source);
        double share = rise * room.outdoorAir().cubicMetresPerHour() / source.cubicMetresPerHour();
        if (share >= 1) {
            return Optional.empty();
        }
        double minutes = share == 0 ? unventilated : unventilated * -StrictMath.log1p(-share) / share;
        return Optional.of(new TimeSpan(minutes));
    }

    /** (1 - exp(-x))/x: share of the unventilated rise that is left after x air changes. */
    private static double heldBack(double x) {
        return x == 0 ? 1 : -StrictMath.expm1(-x) / x;
    }

    /**
     * (x - 1 + exp(-x))/x^2, the mean of {@link #heldBack} over time; small x take the series, which loses no digits.
     */
    private static double meanHeldBack(double x) {
        if (x < 1e-3) {
            return 0.5 - x / 6 + x * x / 24;
        }
        return (x + StrictMath.expm1(-x)) / (x * x);
    }

    private static Concentration capped(double partsPerMillion) {
        return new Concentration(Math.min(MILLION, partsPerMillion));
    }

    private static double perMinute(Airflow air) {
        return air.cubicMetresPerHour() / 60;
    }

    private static double cubicMetres(Volume volume) {
        return volume.litres() / 1000;
    }

    static void requirePower(Power power) {
        if (power.kilowatts() <= 0 || power.kilowatts() > 19) {
            throw new InvalidInputException("engine.power", power.print(), "more than 0 and up to 19 kW");
        }
    }

    static void requireTime(TimeSpan time) {
        if (time.compareTo(SHIFT) > 0) {
            throw new InvalidInputException("engine.time", time.print(), "0 to 8 h");
        }
    }

    static void requireSource(Airflow source) {
        if (source.cubicMetresPerHour() <= 0) {
            throw new InvalidInputException("engine.carbon-monoxide", source.print(), "more than 0 m3/h");
        }
    }
}
