package stoneprocess.core.exposure;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.SoundLevel;

/**
 * The noise of a day, compared with its limits.
 *
 * @param rule the rule by which it was counted
 * @param dose share of the noise allowed in a day; 100 % is the limit
 * @param mean the level that gives the same dose in 8 h, not below 0 dBA; empty when nothing reaches the threshold
 * @param verdict how the day compares with the limits
 * @param limit the level that an 8-hour mean may not exceed
 * @param ceiling the level that may not be exceeded for any time at all
 */
public record NoiseExposure(
        NoiseRule rule,
        Share dose,
        Optional<SoundLevel> mean,
        NoiseVerdict verdict,
        Limit<SoundLevel> limit,
        Limit<SoundLevel> ceiling) {
    public NoiseExposure {
        Refuse.nulls(NoiseExposure.class, rule, dose, mean, verdict, limit, ceiling);
    }
}
