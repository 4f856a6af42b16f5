package stoneprocess.core.gloss;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Mineral;
import stoneprocess.core.stone.RefractiveIndex;

/**
 * The gloss of a stone if it were perfectly smooth. No clean, dry floor of that stone reads more.
 *
 * @param at20 ceiling at 20 degrees
 * @param at60 ceiling at 60 degrees
 * @param at85 ceiling at 85 degrees
 */
public record GlossCeiling(Gloss at20, Gloss at60, Gloss at85) {
    private static final Map<Family, Optional<GlossCeiling>> BY_FAMILY = new EnumMap<>(Family.class);
    private static final GlossCeiling OF_ANY_STONE = each(geometry -> Stream.of(Mineral.values())
            .mapToDouble(mineral -> mean(mineral, geometry))
            .max()
            .orElseThrow());

    static {
        for (Family family : Family.values()) {
            BY_FAMILY.put(family, MineralShares.typical(family).map(GlossCeiling::of));
        }
    }

    public GlossCeiling {
        Refuse.nulls(GlossCeiling.class, at20, at60, at85);
    }

    /**
     * The mean of a smooth face's gloss over the principal indices of each mineral, weighted by the minerals' shares;
     * each crystal lies in a direction of its own. Indices of {@link RefractiveIndex}, gloss by {@link Fresnel}.
     */
    public static GlossCeiling of(MineralShares minerals) {
        return each(geometry -> weighted(minerals, geometry));
    }

    /** The ceiling of what the family usually consists of; empty where that is not known. */
    public static Optional<GlossCeiling> of(Family family) {
        return BY_FAMILY.get(Objects.requireNonNull(family, "family"));
    }

    /** The highest ceiling of any listed mineral, for a stone of which nothing is known. */
    public static GlossCeiling ofAnyStone() {
        return OF_ANY_STONE;
    }

    /** The ceiling at one angle. */
    public Gloss at(Geometry geometry) {
        return switch (geometry) {
            case DEG_20 -> at20;
            case DEG_60 -> at60;
            case DEG_85 -> at85;
        };
    }

    private static GlossCeiling each(Function<Geometry, Double> gloss) {
        return new GlossCeiling(
                new Gloss(gloss.apply(Geometry.DEG_20)),
                new Gloss(gloss.apply(Geometry.DEG_60)),
                new Gloss(gloss.apply(Geometry.DEG_85)));
    }

    private static double weighted(MineralShares minerals, Geometry geometry) {
        double sum = 0;
        double weights = 0;
        for (var entry : minerals.shares().entrySet()) {
            sum += entry.getValue().percent() * mean(entry.getKey(), geometry);
            weights += entry.getValue().percent();
        }
        return sum / weights;
    }

    private static double mean(Mineral mineral, Geometry geometry) {
        double sum = 0;
        for (double index : RefractiveIndex.of(mineral).principal()) {
            sum += Fresnel.gloss(index, geometry).gloss();
        }
        return sum / RefractiveIndex.of(mineral).principal().size();
    }
}
