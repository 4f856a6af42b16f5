package stoneprocess.rules.text.sheet;

import java.util.Optional;
import stoneprocess.core.estimate.EstimateComparison;
import stoneprocess.core.internal.check.Refuse;

/**
 * Another way to do a job, beside its estimate.
 *
 * @param name what the reader calls that way
 * @param comparison the two ways; empty when that way has no plan that cuts
 */
public record ComparedWay(String name, Optional<EstimateComparison> comparison) {
    public ComparedWay {
        Refuse.nulls(ComparedWay.class, name, comparison);
    }
}
