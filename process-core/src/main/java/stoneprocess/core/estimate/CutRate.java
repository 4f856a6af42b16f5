package stoneprocess.core.estimate;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Share;

/**
 * How fast a step cuts, compared with the usual machine of its class, at its usual load and speed, on marble of the
 * purchase minimum of ASTM C503.
 *
 * @param share the ratio; 100 % cuts as fast
 * @param removal Preston's ratio with its reference stated; empty when the crew's own rate was given
 */
public record CutRate(Share share, Optional<RelativeRemoval> removal) {
    public CutRate {
        Refuse.nulls(CutRate.class, share, removal);
    }
}
