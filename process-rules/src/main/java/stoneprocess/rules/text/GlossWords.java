package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import stoneprocess.core.quantity.Share;
import stoneprocess.rules.text.document.Wording;

/** Words for what gloss texts share. */
public final class GlossWords {
    private static final int PERCENT = 100;

    private GlossWords() {}

    /** So many readings. */
    public static Wording readings(int count) {
        return phrase("gloss.readings").with("count", count);
    }

    /** A share that claims no more than a forecast can: nothing is certain or impossible. */
    public static Wording chance(Share share) {
        if (share.percent() < 1) {
            return phrase("gloss.less-than").with("share", new Share(1));
        }
        return share.percent() > PERCENT - 1
                ? phrase("gloss.more-than").with("share", new Share(PERCENT - 1))
                : Wording.amount(new Share(StrictMath.round(share.percent())));
    }
}
