package stoneprocess.rules.internal.classify;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.follow.HoldPoint;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.feature.WayBack;
import stoneprocess.rules.internal.review.LogReview;

/** Whether a job may go back to a coarser grit. */
final class WaysBack {
    private WaysBack() {}

    /**
     * Going back is barred when there is no grit so coarse on hand, when the floor excludes the cut or the bond, or when
     * it would take more stone than may be taken off. A bar that rests on an unknown fact may not hold.
     */
    static Set<WayBack> of(Situation situation, Move move) {
        LogReview review = situation.log().orElseThrow();
        Optional<GritSequence> inUse = situation.inUse();
        Optional<AbrasiveGrade> restart = inUse.flatMap(grades -> review.restart(move, grades))
                .filter(grade -> inUse.get().grades().contains(grade));
        if (restart.isEmpty()
                || !situation.values(Topics.BONDS).contains(restart.get().bond())) {
            return EnumSet.of(WayBack.BARRED);
        }
        Cut cut = Cut.of(restart.get());
        TrackKind track = review.at().map(HoldPoint::track).orElse(review.governing());
        List<Reason> bars = situation.decision(Topics.FIRST_CUT, new Subject.OfTrack(track)).stream()
                .flatMap(decision -> decision.won().stream())
                .filter(reason -> bars(reason, cut))
                .toList();
        Set<WayBack> byStock = byStock(situation, review, restart.get(), inUse.orElseThrow());
        if (bars.stream().anyMatch(Reason::certain)) {
            return EnumSet.of(WayBack.BARRED);
        }
        return bars.isEmpty() ? byStock : EnumSet.allOf(WayBack.class);
    }

    /** A veto of the cut, or a demand for finer ones only. */
    private static boolean bars(Reason reason, Cut cut) {
        if (reason.kind() == ContributionKind.VETO) {
            return reason.values().contains(cut);
        }
        return reason.kind() == ContributionKind.NEED
                && reason.values().stream().map(Cut.class::cast).allMatch(allowed -> allowed.compareTo(cut) < 0);
    }

    private static Set<WayBack> byStock(
            Situation situation, LogReview review, AbrasiveGrade restart, GritSequence inUse) {
        Optional<Length> most = RemovalClasses.mostRemoval(situation);
        if (most.isEmpty()) {
            boolean grinding = restart.bond() != Bond.RESIN || restart.number() < Cut.COARSE_HONE.number();
            return grinding ? EnumSet.allOf(WayBack.class) : EnumSet.of(WayBack.OPEN);
        }
        double needed = review.removed().millimetres()
                + review.stockFrom(restart, inUse).millimetres();
        return EnumSet.of(needed > most.get().millimetres() ? WayBack.BARRED : WayBack.OPEN);
    }
}
