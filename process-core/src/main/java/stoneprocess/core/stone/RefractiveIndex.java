package stoneprocess.core.stone;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.source.EvidenceGrade;
import stoneprocess.core.term.Term;

/**
 * Principal refractive indices of a mineral in sodium light (589 nm).
 *
 * @param mineral the mineral
 * @param principal three indices, dimensionless; an index that holds in two directions is listed twice
 * @param grade how firmly the figures are known
 */
public record RefractiveIndex(Mineral mineral, List<Double> principal, EvidenceGrade grade) {
    private static final Map<Mineral, RefractiveIndex> ALL = load();

    public RefractiveIndex {
        principal = List.copyOf(principal);
    }

    public static RefractiveIndex of(Mineral mineral) {
        return ALL.get(mineral);
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
        return all;
    }
}
