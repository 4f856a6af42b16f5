package stoneprocess.examples.gloss;

import java.util.List;
import stoneprocess.core.gloss.GlossChange;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.UnitSystem;

/** Figures of gloss as words. What was read keeps its digits; what is foretold is whole gloss units. */
final class Figures {
    private final UnitSystem units;

    Figures(UnitSystem units) {
        this.units = units;
    }

    /** What was read or given. */
    String read(Gloss gloss) {
        return units.print(gloss);
    }

    String read(Range<Gloss> range) {
        return units.number(range.low()) + " to " + read(range.high());
    }

    /** A gain or a loss. */
    String change(GlossChange change) {
        if (change.glossUnits() == 0) {
            return "no change";
        }
        return (change.glossUnits() < 0 ? "a loss of " : "a gain of ") + read(new Gloss(Math.abs(change.glossUnits())));
    }

    String change(Range<GlossChange> range) {
        return signed(range.low()) + " to " + signed(range.high()) + " GU";
    }

    private String signed(GlossChange change) {
        String number = units.number(new Gloss(Math.abs(change.glossUnits())));
        return (change.glossUnits() < 0 ? "-" : "") + number;
    }

    /** A computed gloss, to the whole unit. */
    static String whole(Gloss gloss) {
        return StrictMath.round(gloss.gloss()) + " GU";
    }

    /** A foretold interval, rounded outwards. */
    static String outwards(Range<Gloss> range) {
        return (long) StrictMath.floor(range.low().gloss()) + " to "
                + (long) StrictMath.ceil(range.high().gloss()) + " GU";
    }

    /** A probability; nothing is sure. */
    static String chance(Share share) {
        if (share.percent() < 1) {
            return "less than 1 %";
        }
        return share.percent() > 99 ? "more than 99 %" : StrictMath.round(share.percent()) + " %";
    }

    static String count(int number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    /** Names in a row, the last after "or". */
    static String or(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }
}
