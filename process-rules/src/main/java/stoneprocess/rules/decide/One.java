package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.Subject;

/** One value among those allowed: the boldest that a wish asks for, else the most cautious. */
public final class One implements Policy {
    @Override
    public <V extends Term> Outcome close(Choice<V> topic, Subject subject, List<Stated> stated) {
        List<V> allowed = Allowed.of(topic, stated);
        if (allowed.isEmpty()) {
            return Allowed.impasse(topic, subject, stated);
        }
        int boldest = 0;
        for (Stated each : stated) {
            boldest = Math.max(boldest, best(each, allowed));
        }
        List<Reason> won = new ArrayList<>();
        List<Reason> outweighed = new ArrayList<>();
        List<Reason> vetoed = new ArrayList<>();
        for (Stated each : stated) {
            int wanted = best(each, allowed);
            if (!each.isWish() || wanted == boldest) {
                won.add(each.reason());
            } else {
                (wanted < 0 ? vetoed : outweighed).add(each.reason());
            }
        }
        return new Decision<>(topic, subject, List.of(allowed.get(boldest)), won, outweighed, vetoed, List.of());
    }

    /** The place among the allowed values of the best ranked value of a wish; negative where there is none. */
    private static int best(Stated stated, List<?> allowed) {
        int best = -1;
        if (stated.isWish()) {
            Iterator<? extends Term> ranked = stated.contribution().values().iterator();
            while (best < 0 && ranked.hasNext()) {
                best = allowed.indexOf(ranked.next());
            }
        }
        return best;
    }

    @Override
    public boolean isSingle() {
        return true;
    }
}
