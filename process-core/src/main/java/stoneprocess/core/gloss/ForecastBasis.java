package stoneprocess.core.gloss;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.source.Citation;

/**
 * What a prediction rests on.
 *
 * @param readings readings of this floor, 0 when it rests on defaults only
 * @param occasions how many times the floor was read
 * @param sources where the defaults come from
 */
public record ForecastBasis(int readings, int occasions, List<Citation> sources) {
    public ForecastBasis {
        Refuse.nulls(ForecastBasis.class, sources);
        sources = List.copyOf(sources);
    }

    /** True when nothing was read on this floor. */
    public boolean defaultsOnly() {
        return readings == 0;
    }
}
