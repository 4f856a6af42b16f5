package stoneprocess.rules.text;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;

/**
 * Answers about a stone that contradict each other, such as a marble on which acid does not fizz. Which answer is wrong comes
 * before everything that a plan of one stone or another would fall out about.
 */
final class StoneConflict {
    private static final Set<OfferKind> WAYS_OUT =
            EnumSet.of(OfferKind.TEST_STONE, OfferKind.LOOK_AGAIN, OfferKind.LEAVE_IT);

    private StoneConflict() {}

    /** Tells which answers contradict each other and how to find out which is wrong; false where none do. */
    static boolean write(Draft draft, Recommendation recommendation) {
        Optional<Impasse<?>> stone = stone(recommendation);
        stone.ifPresent(impasse -> {
            List<Wording> said = impasse.needs().stream()
                    .filter(Reason::certain)
                    .flatMap(reason -> reason.facts().stream())
                    .filter(MatchedFact::known)
                    .map(FactWords::so)
                    .distinct()
                    .toList();
            draft.section("stone-conflict.heading").bullets(said, each -> each);
            if (recommendation.values(Topics.PREPARATION, Subject.FLOOR).contains(Task.TEST_STONE)) {
                boolean suspected = recommendation.warnings().stream()
                        .anyMatch(warning -> warning.hazard() == Hazard.FIBROUS_STONE);
                draft.bullet(
                        suspected
                                ? Wording.sentences(Wording.phrase("preparation.gate"), Wording.of(Task.TEST_STONE))
                                : Wording.of(Task.TEST_STONE));
            }
        });
        return stone.isPresent();
    }

    static boolean isThere(Recommendation recommendation) {
        return stone(recommendation).isPresent();
    }

    private static Optional<Impasse<?>> stone(Recommendation recommendation) {
        return recommendation.impasses().stream()
                .filter(impasse -> impasse.topic() == Topics.STONE)
                .findFirst();
    }

    /** What cannot be had whichever of the answers is wrong. */
    static List<Impasse<?>> besides(Recommendation recommendation) {
        return recommendation.impasses().stream()
                .filter(impasse -> impasse.topic().isBlocking() && impasse.topic() != Topics.STONE)
                .filter(impasse -> !impasse.untilKnown())
                .toList();
    }

    /** The options that say which answer is wrong. */
    static void waysOut(Draft draft, Recommendation recommendation) {
        draft.list(
                "offers.heading",
                recommendation.counterOffers().stream()
                        .filter(offer -> WAYS_OUT.contains(offer.kind()))
                        .toList(),
                offer -> OfferWords.offer(recommendation, offer));
    }
}
