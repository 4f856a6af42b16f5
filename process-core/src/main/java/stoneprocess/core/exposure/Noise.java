package stoneprocess.core.exposure;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.SoundLevel;
import stoneprocess.core.quantity.TimeSpan;

/**
 * Noise of a working day, by 29 CFR 1910.95 with its appendix A and by NIOSH 98-126.
 *
 * <p>With criterion level Lc, exchange rate q and day Tc of 8 h, a level L may last T = Tc / 2^((L - Lc)/q). The dose
 * of periods C at levels L is D = 100 sum(C/T), in percent, and the mean over 8 h is Lc + q log2(D/100), which is the
 * published 16.61 log10(D/100) + 90 with q of 5 dB. Levels below the threshold of 80 dBA do not count. The rule counts
 * from 80 dBA for hearing tests; that never gives a lower dose than counting from 90 dBA. Immutable and safe to share
 * between threads.
 */
public final class Noise {
    private final Parameters parameters;

    private Noise(Parameters parameters) {
        this.parameters = parameters;
    }

    /** Reads its limits from the parameters named {@code noise.}. */
    public static Noise of(Parameters parameters) {
        return new Noise(Objects.requireNonNull(parameters, "parameters"));
    }

    /**
     * How long a level may last in a day that is otherwise quiet: T = 8 h / 2^((L - Lc)/q).
     *
     * @param level A-weighted level at the ear, slow, from 0 to 140 dBA
     * @return the time, zero above the ceiling; empty below the threshold, where time is not limited
     * @throws stoneprocess.core.problem.InvalidInputException for a level above 140 dBA
     */
    public Optional<TimeSpan> allowedTime(SoundLevel level, NoiseRule rule) {
        NoisePeriod.requireLevel(level);
        if (level.compareTo(number(rule, "threshold")) < 0) {
            return Optional.empty();
        }
        boolean tooLoud = level.compareTo(number(rule, "ceiling")) > 0;
        return Optional.of(new TimeSpan(tooLoud ? 0 : referenceMinutes(level, rule)));
    }

    /**
     * Dose, mean and verdict of a day.
     *
     * <p>A dose of more than 100 % is over the limit; the hearing programme starts at the action level itself.
     *
     * @param periods the parts of the day, together up to 24 h; what is not listed counts as quiet
     * @throws stoneprocess.core.problem.InvalidInputException when no period is given or they make more than 24 h
     */
    public NoiseExposure exposure(List<NoisePeriod> periods, NoiseRule rule) {
        SoundLevel threshold = number(rule, "threshold");
        double parts = 0;
        boolean tooLoud = false;
        for (NoisePeriod period : new NoiseDay(periods).periods()) {
            if (period.time().minutes() > 0 && period.level().compareTo(threshold) >= 0) {
                parts += period.time().minutes() / referenceMinutes(period.level(), rule);
                tooLoud |= period.level().compareTo(number(rule, "ceiling")) > 0;
            }
        }
        Share dose = new Share(100 * parts);
        Optional<SoundLevel> mean = parts > 0 ? Optional.of(mean(parts, rule)) : Optional.empty();
        boolean action = mean.isPresent() && mean.get().compareTo(number(rule, "action")) >= 0;
        NoiseVerdict verdict = NoiseVerdict.BELOW_ACTION;
        if (tooLoud) {
            verdict = NoiseVerdict.OVER_CEILING;
        } else if (dose.percent() > 100) {
            verdict = NoiseVerdict.OVER_LIMIT;
        } else if (action) {
            verdict = NoiseVerdict.HEARING_PROGRAMME;
        }
        return new NoiseExposure(rule, dose, mean, verdict, limit(rule, "criterion"), limit(rule, "ceiling"));
    }

    private double referenceMinutes(SoundLevel level, NoiseRule rule) {
        double over = level.decibels() - number(rule, "criterion").decibels();
        double halvings = over / number(rule, "exchange").decibels();
        return parameters.get("noise.day", TimeSpan.class).minutes() / StrictMath.pow(2, halvings);
    }

    private SoundLevel mean(double parts, NoiseRule rule) {
        double doublings = StrictMath.log10(parts) / StrictMath.log10(2);
        double level =
                number(rule, "criterion").decibels() + number(rule, "exchange").decibels() * doublings;
        return new SoundLevel(Math.max(0, level));
    }

    private SoundLevel number(NoiseRule rule, String name) {
        return parameters.get(name(rule, name), SoundLevel.class);
    }

    private Limit<SoundLevel> limit(NoiseRule rule, String name) {
        return Limit.of(parameters, name(rule, name), SoundLevel.class, Role.HYGIENIST);
    }

    private static String name(NoiseRule rule, String name) {
        return "noise." + rule.key() + "." + name;
    }
}
