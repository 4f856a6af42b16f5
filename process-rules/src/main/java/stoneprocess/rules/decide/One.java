package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        int boldest = stated.stream()
                .mapToInt(wish -> best(wish, allowed).map(allowed::indexOf).orElse(0))
                .max()
                .orElse(0);
        V value = allowed.get(boldest);
        List<Reason> won = new ArrayList<>();
        List<Reason> outweighed = new ArrayList<>();
        List<Reason> vetoed = new ArrayList<>();
        for (Stated each : stated) {
            Optional<V> wanted = best(each, allowed);
            if (!each.isWish() || wanted.equals(Optional.of(value))) {
                won.add(each.reason());
            } else {
                (wanted.isEmpty() ? vetoed : outweighed).add(each.reason());
            }
        }
        return new Decision<>(topic, subject, List.of(value), won, outweighed, vetoed, List.of());
    }

    /** The best ranked value of a wish that is allowed. */
    private static <V extends Term> Optional<V> best(Stated stated, List<V> allowed) {
        if (!stated.isWish()) {
            return Optional.empty();
        }
        return stated.contribution().values().stream()
                .flatMap(wanted -> allowed.stream().filter(value -> value.equals(wanted)))
                .findFirst();
    }

    @Override
    public boolean isSingle() {
        return true;
    }
}
