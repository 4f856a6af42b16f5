package stoneprocess.core.stone;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.Sources;
import stoneprocess.core.term.Term;

/** The names that a survey may use for a floor, and the purchase limits of standards. Immutable. */
public final class StoneCatalogue {
    private static final StoneCatalogue STANDARD = new StoneCatalogue();

    private final Map<String, Stone> byName = new LinkedHashMap<>();

    private StoneCatalogue() {
        for (Tsv.Row row : Tsv.read(StoneCatalogue.class, "stones.tsv")) {
            EnumSet<Family> families = EnumSet.noneOf(Family.class);
            row.list("families").forEach(key -> families.add(Term.parse(Family.class, key, "families")));
            Stone stone =
                    new Stone(row.get("name"), families, Sources.standard().get(row.get("source")));
            if (byName.put(stone.name(), stone) != null) {
                throw new IllegalStateException("Stone " + stone.name() + " is listed twice");
            }
        }
    }

    public static StoneCatalogue standard() {
        return STANDARD;
    }

    public List<Stone> all() {
        return List.copyOf(byName.values());
    }

    /**
     * The stone with the given name.
     *
     * @throws InvalidInputException naming the field and the accepted names
     */
    public Stone get(String name, String field) {
        Stone stone = byName.get(name);
        if (stone == null) {
            throw new InvalidInputException(field, name, "one of " + String.join(", ", byName.keySet()));
        }
        return stone;
    }

    /**
     * Limits that a standard sets for buying new stone; an empty value means that the standard sets none.
     *
     * @param stone the stone in the standard's words
     * @param kind the standard's class
     * @param absorptionMaxPercent water absorption by mass, at most, in percent
     * @param densityMinKgPerM3 bulk density, at least, in kg/m3
     * @param compressiveMinMpa compressive strength, at least, in MPa
     * @param abrasionMinHa abrasion resistance Ha, at least; the inverse of the volume lost
     * @param source the standard
     */
    public record PurchaseLimit(
            String stone,
            String kind,
            OptionalDouble absorptionMaxPercent,
            OptionalDouble densityMinKgPerM3,
            OptionalDouble compressiveMinMpa,
            OptionalDouble abrasionMinHa,
            Citation source) {
        public PurchaseLimit {
            Refuse.nulls(
                    PurchaseLimit.class,
                    stone,
                    kind,
                    absorptionMaxPercent,
                    densityMinKgPerM3,
                    compressiveMinMpa,
                    abrasionMinHa,
                    source);
        }
    }

    /** Purchase limits of the ASTM stone standards. Never facts about a floor that lies. */
    public List<PurchaseLimit> purchaseLimits() {
        return Tsv.read(StoneCatalogue.class, "purchase-limits.tsv").stream()
                .map(row -> new PurchaseLimit(
                        row.get("stone"),
                        row.get("kind"),
                        optional(row, "absorption_max_percent"),
                        optional(row, "density_min_kg_m3"),
                        optional(row, "compressive_min_mpa"),
                        optional(row, "abrasion_min_ha"),
                        Sources.standard().get(row.get("source"))))
                .toList();
    }

    private static OptionalDouble optional(Tsv.Row row, String column) {
        return row.get(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(row.number(column));
    }
}
