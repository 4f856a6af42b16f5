package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;

/**
 * Chooses one value for each step of a track: among those allowed, the assignment with the fewest changes over the
 * track, then with the most wishes met, then the earliest in the domain.
 */
public final class FewestChanges {
    private FewestChanges() {}

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

    /** Closes the topic for all steps of a track, in their order. A step that allows nothing is an impasse. */
    public static <V extends Term> List<Outcome> close(
            Choice<V> topic, List<Subject> steps, Map<Subject, List<Said>> said) {
        List<Outcome> outcomes = new ArrayList<>();
        if (steps.isEmpty()) {
            return outcomes;
        }
        List<List<V>> allowed = steps.stream()
                .map(step -> ValuePolicies.allowed(topic, said.getOrDefault(step, List.of())))
                .toList();
        if (allowed.stream().anyMatch(List::isEmpty)) {
            for (int i = 0; i < steps.size(); i++) {
                if (allowed.get(i).isEmpty()) {
                    outcomes.add(
                            ValuePolicies.impasse(topic, steps.get(i), said.getOrDefault(steps.get(i), List.of())));
                }
            }
            return outcomes;
        }
        List<V> chosen = choose(topic, steps, allowed, said);
        for (int i = 0; i < steps.size(); i++) {
            outcomes.add(decision(topic, steps.get(i), chosen.get(i), said.getOrDefault(steps.get(i), List.of())));
        }
        return outcomes;
    }

    private static <V extends Term> List<V> choose(
            Choice<V> topic, List<Subject> steps, List<List<V>> allowed, Map<Subject, List<Said>> said) {
        List<Assignment<V>> best = List.of();
        for (int i = 0; i < steps.size(); i++) {
            List<Said> here = said.getOrDefault(steps.get(i), List.of());
            List<Assignment<V>> next = new ArrayList<>();
            for (V value : allowed.get(i)) {
                int wishes = (int)
                        here.stream().filter(one -> wishesFirst(one, value)).count();
                Assignment<V> top = null;
                for (Assignment<V> before : best) {
                    V last = before.values().get(before.values().size() - 1);
                    List<V> values = new ArrayList<>(before.values());
                    values.add(value);
                    Assignment<V> choice = new Assignment<>(
                            List.copyOf(values),
                            before.changes() + (last.equals(value) ? 0 : 1),
                            before.wishes() + wishes);
                    if (top == null || choice.betterThan(top, topic.domain())) {
                        top = choice;
                    }
                }
                next.add(top == null ? new Assignment<>(List.of(value), 0, wishes) : top);
            }
            best = next;
        }
        Assignment<V> winner = best.get(0);
        for (Assignment<V> choice : best) {
            if (choice.betterThan(winner, topic.domain())) {
                winner = choice;
            }
        }
        return winner.values();
    }

    private static boolean wishesFirst(Said said, Term value) {
        return said.contribution().kind() == ContributionKind.WISH
                && said.contribution().values().get(0).equals(value);
    }

    private static <V extends Term> Decision<V> decision(Choice<V> topic, Subject step, V value, List<Said> said) {
        List<Reason> won = new ArrayList<>();
        List<Reason> outweighed = new ArrayList<>();
        List<Reason> vetoed = new ArrayList<>();
        List<V> allowed = ValuePolicies.allowed(topic, said);
        for (Said one : said) {
            if (one.contribution().kind() != ContributionKind.WISH || wishesFirst(one, value)) {
                won.add(one.reason());
            } else if (allowed.contains(one.contribution().values().get(0))) {
                outweighed.add(one.reason());
            } else {
                vetoed.add(one.reason());
            }
        }
        return new Decision<>(topic, step, List.of(value), won, outweighed, vetoed, List.of());
    }

    /** Groups contributions by subject. */
    public static Map<Subject, List<Said>> bySubject(List<Said> said) {
        return said.stream()
                .collect(Collectors.groupingBy(one -> one.contribution().subject()));
    }
}
