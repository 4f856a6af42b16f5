package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.Collection;
import java.util.List;
import stoneprocess.core.gloss.GlossChange;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.rules.text.Words;
import stoneprocess.rules.text.document.Precision;
import stoneprocess.rules.text.document.Wording;

/** Figures of gloss. What was read keeps its digits; what is foretold is whole gloss units. */
final class GlossFigures {
    private GlossFigures() {}

    /** A computed gloss, to the whole unit. */
    static Wording whole(Gloss gloss) {
        return Wording.amount(new Gloss(StrictMath.round(gloss.gloss())));
    }

    static Wording range(Range<Gloss> range) {
        return range(Wording.amount(range.low(), Precision.NUMBER), Wording.amount(range.high()));
    }

    /** A foretold interval, rounded outwards. */
    static Wording outwards(Range<Gloss> range) {
        return range(Range.of(
                new Gloss(StrictMath.floor(range.low().gloss())),
                new Gloss(StrictMath.ceil(range.high().gloss()))));
    }

    /** A gain or a loss. */
    static Wording change(GlossChange change) {
        if (change.glossUnits() == 0) {
            return phrase("gloss-sheet.no-change");
        }
        return phrase(change.glossUnits() < 0 ? "gloss-sheet.loss" : "gloss-sheet.gain")
                .with("size", size(change));
    }

    static Wording changes(Range<GlossChange> range) {
        return range(signed(range.low(), Precision.NUMBER), signed(range.high(), Precision.USUAL));
    }

    private static Wording range(Wording low, Wording high) {
        return phrase("gloss-sheet.range").with("low", low).with("high", high);
    }

    /** Up to the next tenth of a gloss unit: a meter shows no more, and scatter is not told too small. */
    static Wording tenths(Gloss gloss) {
        return Wording.amount(new Gloss(StrictMath.ceil(10 * gloss.gloss()) / 10));
    }

    private static Wording signed(GlossChange change, Precision precision) {
        Wording size = Wording.amount(size(change), precision);
        return change.glossUnits() < 0 ? phrase("gloss-sheet.minus").with("size", size) : size;
    }

    private static Gloss size(GlossChange change) {
        return new Gloss(Math.abs(change.glossUnits()));
    }

    static Wording resin(int grit) {
        return Words.grade(Bond.RESIN, grit);
    }

    static Wording readings(List<Gloss> readings) {
        return Wording.list(Wording.Joint.COMMA, readings, Wording::amount);
    }

    static Wording anyOf(Collection<? extends Term> terms) {
        return Wording.list(Wording.Joint.OR, terms, Wording::of);
    }

    /** How sure means and gains are. */
    static Share confidence(Recommendation recommendation) {
        return recommendation.parameters().get("gloss-gain.confidence", Share.class);
    }
}
