package stoneprocess.core.plan;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.Sources;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Hazard;

/**
 * What holds for a hazard wherever it is met; {@code hazards.tsv}. Immutable and safe to share between threads.
 *
 * @param precautions what is done against it, the first first
 * @param decides who decides
 * @param limitSources where the limit comes from that its text prints
 */
public record HazardSheet(List<Precaution> precautions, List<Role> decides, List<Citation> limitSources) {
    private static final Map<Hazard, HazardSheet> SHEETS = load();

    public HazardSheet {
        Refuse.nulls(HazardSheet.class, precautions, decides, limitSources);
        precautions = List.copyOf(precautions);
        decides = List.copyOf(decides);
        limitSources = List.copyOf(limitSources);
    }

    /** The sheet of a hazard. */
    public static HazardSheet of(Hazard hazard) {
        return SHEETS.get(Objects.requireNonNull(hazard, "hazard"));
    }

    private static Map<Hazard, HazardSheet> load() {
        Map<Hazard, HazardSheet> sheets = new EnumMap<>(Hazard.class);
        for (Tsv.Row row : Tsv.read(HazardSheet.class, "hazards.tsv")) {
            Hazard hazard = Term.parse(Hazard.class, row.get("hazard"), "hazard");
            sheets.put(
                    hazard,
                    new HazardSheet(
                            terms(row, "precautions", Precaution.class),
                            terms(row, "decides", Role.class),
                            row.list("limit-sources").stream()
                                    .map(Sources.standard()::get)
                                    .toList()));
        }
        if (sheets.size() != Hazard.values().length) {
            throw new IllegalStateException("Table hazards.tsv does not list every hazard");
        }
        return sheets;
    }

    private static <E extends Enum<E> & Term> List<E> terms(Tsv.Row row, String column, Class<E> type) {
        return row.list(column).stream()
                .map(key -> Term.parse(type, key, column))
                .toList();
    }
}
