package stoneprocess.core.source;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.term.Term;

/** All sources that the shipped tables and rules cite. Immutable and safe to share between threads. */
public final class Sources {
    private static final Sources STANDARD = new Sources(Tsv.read(Sources.class, "sources.tsv").stream()
            .map(row -> new Citation(
                    row.get("id"),
                    Term.parse(SourceKind.class, row.get("kind"), "kind"),
                    Term.parse(EvidenceGrade.class, row.get("grade"), "grade"),
                    row.get("title"),
                    row.get("publisher"),
                    row.get("year"),
                    row.get("clause")))
            .collect(Collectors.toList()));

    private final Map<String, Citation> byId = new LinkedHashMap<>();

    private Sources(List<Citation> citations) {
        for (Citation citation : citations) {
            if (byId.put(citation.id(), citation) != null) {
                throw new IllegalStateException("Source " + citation.id() + " is listed twice");
            }
        }
    }

    /** The sources of the shipped tables and rules. */
    public static Sources standard() {
        return STANDARD;
    }

    public List<Citation> all() {
        return List.copyOf(byId.values());
    }

    /**
     * The source with the given id.
     *
     * @throws InvalidInputException when no such source is listed
     */
    public Citation get(String id) {
        Citation citation = byId.get(id);
        if (citation == null) {
            throw new InvalidInputException("source", id, "an id listed in sources.tsv");
        }
        return citation;
    }
}
