package stoneprocess.core.exposure;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.SoundLevel;

/**
 * A day's noise.
 *
 * @param rule by which it was counted
 * @param dose share of what a day may hold; 100 % is the limit
 * @param mean the level that gives the same dose in 8 h, not below 0 dBA; empty when nothing reaches the threshold
 * @param verdict where that stands
 * @param limit the level that an 8-hour mean may not exceed
 * @param ceiling the level that is allowed for no time at all once exceeded
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
