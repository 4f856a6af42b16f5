package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.Subject;

/**
 * One value for each step of a track: among those allowed, the assignment with the fewest changes over the track, then
 * with the most wishes met, then the earliest in the domain.
 */
public final class FewestChanges implements Policy {
    private record Assignment<V>(List<V> values, int changes, int wishes) {
        boolean betterThan(Assignment<V> other, List<V> domain) {
            if (changes != other.changes) {
                return changes < other.changes;
            }
            if (wishes != other.wishes) {
                return wishes > other.wishes;
            }
            return order(domain) < other.order(domain);
        }

        private int order(List<V> domain) {
            return values.stream().mapToInt(domain::indexOf).sum();
        }
    }

    /** A step on its own, as if its track had no other. */
    @Override
    public <V extends Term> Outcome close(Choice<V> topic, Subject step, List<Stated> stated) {
        return closeTrack(topic, List.of(step), subject -> stated).get(0);
    }

    /** Closes the topic for all steps of a track. Where a step allows nothing, only the impasses are closed. */
    @Override
    public <V extends Term> List<Outcome> closeTrack(
            Choice<V> topic, List<Subject> steps, Function<Subject, List<Stated>> about) {
        if (steps.isEmpty()) {
            return List.of();
        }
        List<List<Stated>> stated = steps.stream().map(about).toList();
        List<List<V>> allowed =
                stated.stream().map(ofStep -> Allowed.of(topic, ofStep)).toList();
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            if (allowed.get(i).isEmpty()) {
                outcomes.add(Allowed.impasse(topic, steps.get(i), stated.get(i)));
            }
        }
        if (outcomes.isEmpty()) {
            List<V> chosen = choose(topic, allowed, stated);
            for (int i = 0; i < steps.size(); i++) {
                outcomes.add(decision(topic, steps.get(i), chosen.get(i), allowed.get(i), stated.get(i)));
            }
        }
        return outcomes;
    }

    private static <V extends Term> List<V> choose(Choice<V> topic, List<List<V>> allowed, List<List<Stated>> stated) {
        List<Assignment<V>> best = List.of();
        for (int i = 0; i < allowed.size(); i++) {
            List<Stated> ofStep = stated.get(i);
            List<Assignment<V>> next = new ArrayList<>();
            for (V value : allowed.get(i)) {
                int wishes = (int)
                        ofStep.stream().filter(each -> wishesFirst(each, value)).count();
                Assignment<V> top = null;
                for (Assignment<V> before : best) {
                    V last = before.values().get(before.values().size() - 1);
                    List<V> values = new ArrayList<>(before.values());
                    values.add(value);
                    Assignment<V> longer = new Assignment<>(
                            List.copyOf(values),
                            before.changes() + (last.equals(value) ? 0 : 1),
                            before.wishes() + wishes);
                    if (top == null || longer.betterThan(top, topic.domain())) {
                        top = longer;
                    }
                }
                next.add(top == null ? new Assignment<>(List.of(value), 0, wishes) : top);
            }
            best = next;
        }
        Assignment<V> winner = best.get(0);
        for (Assignment<V> whole : best) {
            if (whole.betterThan(winner, topic.domain())) {
                winner = whole;
            }
        }
        return winner.values();
    }

    private static boolean wishesFirst(Stated stated, Term value) {
        return stated.isWish() && stated.contribution().values().get(0).equals(value);
    }

    private static <V extends Term> Decision<V> decision(
            Choice<V> topic, Subject step, V value, List<V> allowed, List<Stated> stated) {
        List<Reason> won = new ArrayList<>();
        List<Reason> outweighed = new ArrayList<>();
        List<Reason> vetoed = new ArrayList<>();
        for (Stated each : stated) {
            if (!each.isWish() || wishesFirst(each, value)) {
                won.add(each.reason());
            } else if (allowed.contains(each.contribution().values().get(0))) {
                outweighed.add(each.reason());
            } else {
                vetoed.add(each.reason());
            }
        }
        return new Decision<>(topic, step, List.of(value), won, outweighed, vetoed, List.of());
    }

    @Override
    public boolean isSingle() {
        return true;
    }

    /** What is stated about other steps of the track counts too. */
    @Override
    public boolean isLocal() {
        return false;
    }
}
