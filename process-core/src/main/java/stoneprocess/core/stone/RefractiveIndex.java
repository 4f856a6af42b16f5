package stoneprocess.core.stone;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.source.EvidenceGrade;
import stoneprocess.core.term.Term;

/**
 * Principal refractive indices of a mineral in sodium light (589 nm).
 *
 * @param mineral the mineral
 * @param principal three indices from 1 to 4, dimensionless; an index that holds in two directions is listed twice
 * @param grade how firmly the figures are known
 */
public record RefractiveIndex(Mineral mineral, List<Double> principal, EvidenceGrade grade) {
    private static final Map<Mineral, RefractiveIndex> ALL = load();

    public RefractiveIndex {
        Refuse.nulls(RefractiveIndex.class, mineral, principal, grade);
        principal = List.copyOf(principal);
        if (principal.size() != 3 || !principal.stream().allMatch(index -> index >= 1 && index <= 4)) {
            throw new InvalidInputException(mineral.key(), principal.toString(), "three indices from 1 to 4");
        }
    }

    /** The indices of a mineral. */
    public static RefractiveIndex of(Mineral mineral) {
        return ALL.get(Objects.requireNonNull(mineral, "mineral"));
    }

    private static Map<Mineral, RefractiveIndex> load() {
        Map<Mineral, RefractiveIndex> all = new EnumMap<>(Mineral.class);
        for (Tsv.Row row : Tsv.read(RefractiveIndex.class, "minerals.tsv")) {
            Mineral mineral = Term.parse(Mineral.class, row.get("mineral"), "mineral");
            all.put(
                    mineral,
                    new RefractiveIndex(
                            mineral,
                            row.list("indices").stream().map(Double::valueOf).toList(),
                            Term.parse(EvidenceGrade.class, row.get("grade"), "grade")));
        }
        for (Mineral mineral : Mineral.values()) {
            if (!all.containsKey(mineral)) {
                throw new IllegalStateException("minerals.tsv has no line for " + mineral.key());
            }
        }
        return all;
    }
}
