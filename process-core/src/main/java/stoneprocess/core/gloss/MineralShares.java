package stoneprocess.core.gloss;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Mineral;
import stoneprocess.core.term.Term;

/**
 * What a stone consists of, by volume.
 *
 * @param shares share of each mineral; together 99 to 101 %, since tables round
 */
public record MineralShares(Map<Mineral, Share> shares) {
    private static final Map<Family, MineralShares> TYPICAL = load();

    public MineralShares {
        Refuse.nulls(MineralShares.class, shares);
        EnumMap<Mineral, Share> copy = new EnumMap<>(Mineral.class);
        copy.putAll(shares);
        double sum = copy.values().stream().mapToDouble(Share::percent).sum();
        if (!(sum >= 99 && sum <= 101)) {
            throw new InvalidInputException(
                    "minerals", sum + " % in all", "shares that make 100 % together, 1 % more or less");
        }
        shares = Collections.unmodifiableMap(copy);
    }

    /** Shares that make 99 to 101 % together; anything else is refused. */
    public static MineralShares of(Map<Mineral, Share> shares) {
        return new MineralShares(shares);
    }

    /** A stone of one mineral. */
    public static MineralShares pure(Mineral mineral) {
        return new MineralShares(Map.of(mineral, new Share(100)));
    }

    /**
     * What a family usually consists of; empty for man-made floors and for families that differ too much from stone to
     * stone. Common practice where no mineral names the family.
     */
    public static Optional<MineralShares> typical(Family family) {
        return Optional.ofNullable(TYPICAL.get(Objects.requireNonNull(family, "family")));
    }

    private static Map<Family, MineralShares> load() {
        Map<Family, Map<Mineral, Share>> rows = new EnumMap<>(Family.class);
        for (Tsv.Row row : Tsv.read(MineralShares.class, "compositions.tsv")) {
            rows.computeIfAbsent(
                            Term.parse(Family.class, row.get("family"), "family"), key -> new EnumMap<>(Mineral.class))
                    .put(
                            Term.parse(Mineral.class, row.get("mineral"), "mineral"),
                            new Share(row.number("share_percent")));
        }
        Map<Family, MineralShares> typical = new EnumMap<>(Family.class);
        rows.forEach((family, shares) -> typical.put(family, new MineralShares(shares)));
        return typical;
    }
}
