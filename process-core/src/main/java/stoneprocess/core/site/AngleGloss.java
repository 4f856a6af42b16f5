package stoneprocess.core.site;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.ZoneStatistics;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.stone.Family;

/**
 * Readings of one zone at one angle, clean and dry.
 *
 * @param geometry the angle
 * @param statistics count, mean and scatter
 * @param meanWithin where the mean lies, cut off at the highest ceiling of what the stone may be; empty for a single
 *     reading
 * @param impossible readings over every ceiling that the stone may have
 * @param excluded where nothing is impossible, the families that cannot read as much
 */
public record AngleGloss(
        Geometry geometry,
        ZoneStatistics statistics,
        Optional<Range<Gloss>> meanWithin,
        List<Gloss> impossible,
        Set<Family> excluded) {
    public AngleGloss {
        Refuse.nulls(AngleGloss.class, geometry, statistics, meanWithin, impossible, excluded);
        impossible = List.copyOf(impossible);
        excluded = KnownStone.inOrder(excluded);
    }
}
