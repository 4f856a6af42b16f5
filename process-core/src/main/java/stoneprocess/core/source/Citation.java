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
 * @param year the year of the edition that is meant, {@code undated} where the publication bears none; empty where it is
 *     not known, which no published source may be
 * @param clause the clause, table, section or page that bears out what is taken from it; a published source has one
 */
public record Citation(
        String id, SourceKind kind, EvidenceGrade grade, String title, String publisher, String year, String clause) {
    public Citation {
        Refuse.nulls(Citation.class, id, kind, grade, title, publisher, year, clause);
        require("id", id);
        require("title", title);
        if (kind != SourceKind.PRACTICE) {
            require("publisher", publisher);
        }
        if (grade == EvidenceGrade.PUBLISHED) {
            require("year", year);
            require("clause", clause);
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

    /** True where what is taken from it was read in the publication or a reprint; false for anything less firm. */
    public boolean published() {
        return grade == EvidenceGrade.PUBLISHED;
    }

    /** True for what names no publication at all: common practice, the house, what is worked out from memory. */
    public boolean practice() {
        return kind == SourceKind.PRACTICE;
    }

    /** One line for a page or a screen. */
    public String print() {
        if (practice()) {
            return title;
        }
        return publisher + ", " + title + (clause.isEmpty() ? "" : ", " + clause)
                + (year.isEmpty() ? "" : " (" + year + ")");
    }
}
