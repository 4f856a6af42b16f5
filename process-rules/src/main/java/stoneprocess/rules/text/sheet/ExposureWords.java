package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.Arrays;
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

/**
 * What the sheets about exposure share: the answer, what was given, the result, the limit with its source, what the figures
 * rest on, cautions, who decides.
 */
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

    static List<Wording> row(String labelKey, Wording... cells) {
        return row(phrase(labelKey), cells);
    }

    static List<Wording> row(Wording label, Wording... cells) {
        List<Wording> row = new ArrayList<>(List.of(label));
        row.addAll(Arrays.asList(cells));
        return row;
    }

    /** A section of rows of as many cells each. */
    static void rows(Draft draft, Wording heading, List<List<Wording>> rows) {
        draft.section(heading).rows(rows);
    }

    static void given(Draft draft, List<List<Wording>> rows) {
        rows(draft, phrase("exposure.given"), rows);
    }

    static void result(Draft draft, List<List<Wording>> rows) {
        rows(draft, phrase("exposure.result"), rows);
    }

    static void items(Draft draft, String headingKey, List<? extends Wording> items) {
        draft.section(headingKey);
        items.forEach(draft::bullet);
    }

    static void limit(Draft draft, Wording... limits) {
        items(draft, limits.length == 1 ? "exposure.limit" : "exposure.limits", List.of(limits));
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

    /** Ends every sheet: what the figures rest on, cautions, who decides. */
    static Document close(Draft draft, List<? extends Wording> rests, List<? extends Wording> cautions, Role decides) {
        items(draft, "exposure.rests-on", rests);
        items(draft, "exposure.cautions", cautions);
        return draft.section("exposure.who-decides")
                .group(Wording.of(decides, "decides"), List.of())
                .section("closing.heading")
                .group(phrase("exposure.closing"), List.of())
                .document();
    }
}
