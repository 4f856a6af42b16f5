package stoneprocess.core.source;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;

/**
 * A source that rules and figures point to.
 *
 * @param id permanent id, for example {@code ASTM-D523}; {@code practice} is common practice without a source
 * @param kind what sort of publication it is
 * @param grade how firmly what is taken from it is known
 * @param title the publication's title, or what the passage is about
 * @param publisher who published it; empty for what is no publication
 * @param year the year of the edition that is meant; empty when the current edition is meant
 */
public record Citation(String id, SourceKind kind, EvidenceGrade grade, String title, String publisher, String year) {
    public Citation {
        Refuse.nulls(Citation.class, id, kind, grade, title, publisher, year);
        require("id", id);
        require("title", title);
        if (kind != SourceKind.PRACTICE) {
            require("publisher", publisher);
        }
        if (!fits(kind, grade)) {
            throw new InvalidInputException(
                    "source.grade",
                    grade.key(),
                    "common-practice or memory for practice, anything but common-practice for a publication");
        }
    }

    private static boolean fits(SourceKind kind, EvidenceGrade grade) {
        return kind == SourceKind.PRACTICE
                ? grade == EvidenceGrade.COMMON_PRACTICE || grade == EvidenceGrade.MEMORY
                : grade != EvidenceGrade.COMMON_PRACTICE;
    }

    private static void require(String part, String text) {
        if (text.isBlank()) {
            throw new InvalidInputException("source." + part, text, "a text");
        }
    }

    /** True for a publication, false for common practice and for what is worked out from memory. */
    public boolean published() {
        return kind != SourceKind.PRACTICE;
    }

    /** One line for a page or a screen. */
    public String print() {
        if (!published()) {
            return title;
        }
        return publisher + ", " + title + (year.isEmpty() ? "" : " (" + year + ")");
    }
}
