package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.List;
import stoneprocess.core.exposure.Limit;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.EvidenceGrade;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Precision;
import stoneprocess.rules.text.document.Wording;

/** What the sheets about exposure share: figures, sources, and who decides. */
final class ExposureWords {
    private ExposureWords() {}

    static Draft sheet(String titleKey) {
        return Draft.titled(phrase(titleKey), Parameters.standard());
    }

    /** What was given, or a limit. */
    static Wording given(Quantity quantity) {
        return Wording.amount(quantity, Precision.GIVEN);
    }

    /** A result of which less is safer to promise: a time allowed, a mass, a spare power. */
    static Wording atMost(Quantity result) {
        return Wording.amount(result, Precision.AT_MOST);
    }

    /** A result of which more is safer to expect or to provide: a dose, a gas, needed air. */
    static Wording atLeast(Quantity result) {
        return Wording.amount(result, Precision.AT_LEAST);
    }

    /** A limit's source, and a word where the figure was not read in it. */
    static Wording source(Limit<?> limit) {
        return source(limit.source());
    }

    static Wording source(Citation citation) {
        Wording source = Wording.source(citation);
        return citation.grade() == EvidenceGrade.MEMORY
                ? phrase("exposure.from-memory").with("source", source)
                : source;
    }

    /** Ends every sheet: who decides, and what holds for all. */
    static Document decidedBy(Draft draft, Role role) {
        return draft.section("exposure.who-decides")
                .group(Wording.of(role, "decides"), List.of())
                .section("closing.heading")
                .group(phrase("exposure.closing"), List.of())
                .document();
    }
}
