package stoneprocess.core.estimate;

import stoneprocess.core.internal.input.Printable;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;

/** Checks of what is given to this room. */
final class Require {
    private Require() {}

    static void positive(String field, Quantity value) {
        if (!(value.kept() > 0)) {
            throw new InvalidInputException(field, value.print(), "more than zero");
        }
    }

    static void below100(String field, Share share) {
        if (share.percent() >= 100) {
            throw new InvalidInputException(field, share.print(), "less than 100 %");
        }
    }

    static void upTo100(String field, Share share) {
        if (share.percent() > 100) {
            throw new InvalidInputException(field, share.print(), "from 0 to 100 %");
        }
    }

    static void ordered(String field, Quantity first, Quantity second) {
        if (second.kept() < first.kept()) {
            throw new InvalidInputException(field, second.print(), "not before " + first.print());
        }
    }

    static void text(String field, String text) {
        Printable.require(field, text, 200, "a text");
    }
}
