package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.rules.text.document.Wording;

/** Words for a way out that a recommendation offers. */
final class OfferWords {
    private OfferWords() {}

    /** The offer and what the owner gives up for it. */
    static Wording offer(Recommendation recommendation, CounterOffer<?> offer) {
        Wording kind = PlanWords.clearedPhrase(Wording.key(offer.kind()), recommendation);
        return phrase("offers.offer")
                .with("offer", offer.values().isEmpty() ? kind : sentences(kind, offered(offer)))
                .with("loss", Wording.of(offer.kind(), "gives-up"));
    }

    private static <V> Wording offered(CounterOffer<V> offer) {
        if (offer.kind() == OfferKind.GET_GRADES) {
            return phrase("offers.missing").with("grits", ValueWords.values(offer.topic(), offer.values()));
        }
        if (offer.kind() == OfferKind.OTHER_MACHINE) {
            return phrase("offers.any-of").with("values", ValueWords.values(offer.topic(), offer.values()));
        }
        return phrase(offer.kind() == OfferKind.KEEP_THE_MARKS ? "offers.no-coarser" : "offers.up-to")
                .with("value", ValueWords.values(offer.topic(), offer.values().subList(0, 1)));
    }
}
