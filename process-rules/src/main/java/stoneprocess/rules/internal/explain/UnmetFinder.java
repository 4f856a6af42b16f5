package stoneprocess.rules.internal.explain;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import stoneprocess.core.answer.Unmet;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.meaning.ConditionMeaning;
import stoneprocess.rules.internal.meaning.StepPart;

/** Finds what one condition of a rule lacks to hold. Safe to share between threads. */
final class UnmetFinder {
    /**
     * What one fact makes of the condition.
     *
     * @param holds true when it meets it
     * @param unmet what is lacking; nothing of a fact about another constant
     */
    private record Against(boolean holds, List<Unmet> unmet) {}

    private final ConditionMeaning condition;
    private final List<Unmet> withoutFact;
    private final Map<Seen, Against> against = new ConcurrentHashMap<>();

    UnmetFinder(ConditionMeaning condition) {
        this.condition = condition;
        this.withoutFact = condition.wanted().entrySet().stream()
                .limit(1)
                .map(wanted -> unmet(wanted.getKey(), List.of(), wanted.getValue(), farthest()))
                .toList();
    }

    /** The type of fact that the condition reads. */
    Class<?> type() {
        return condition.type();
    }

    /** What does not hold, none when it does: of a step a part for each, of other facts the one that is nearest. */
    List<Unmet> unmet(List<Seen> facts) {
        List<Unmet> nearest = List.of();
        for (Seen fact : facts) {
            Against found = against(fact);
            if (found.holds()) {
                return List.of();
            }
            if (nearest.isEmpty()
                    || !found.unmet().isEmpty()
                            && found.unmet().get(0).steps() < nearest.get(0).steps()) {
                nearest = found.unmet();
            }
        }
        return nearest.isEmpty() ? withoutFact : nearest;
    }

    private Against against(Seen seen) {
        Against known = against.get(seen);
        return known == null ? against.computeIfAbsent(seen, key -> against(key.fact())) : known;
    }

    private Against against(Object fact) {
        if (condition.holds(fact)) {
            return new Against(true, List.of());
        }
        if (fact instanceof Step step) {
            return new Against(false, differing(step));
        }
        List<Term> wanted = condition.wanted().get(Facts.name(fact));
        return new Against(false, wanted == null ? List.of() : List.of(unmet(fact, wanted)));
    }

    /** What has to be known so that a condition that holds of something unknown holds for certain. */
    Optional<Unmet> uncertain(List<Seen> facts) {
        for (Seen seen : facts) {
            Object fact = seen.fact();
            if (!(fact instanceof Step)
                    && condition.holds(fact)
                    && ConditionMeaning.classes(fact).size() > 1) {
                List<Term> wanted = condition.wanted().getOrDefault(Facts.name(fact), List.of());
                return Optional.of(unmet(
                        fact,
                        wanted.stream()
                                .filter(ConditionMeaning.classes(fact)::contains)
                                .toList()));
            }
        }
        return Optional.empty();
    }

    private Unmet unmet(Object fact, List<Term> wanted) {
        Collection<Term> actual = ConditionMeaning.classes(fact);
        return unmet(Facts.name(fact), actual, wanted, wanted.isEmpty() ? farthest() : distance(actual, wanted));
    }

    private Unmet unmet(String fact, Collection<Term> actual, List<Term> wanted, int steps) {
        return new Unmet(
                fact,
                Term.keys(actual),
                Term.keys(wanted),
                steps,
                Facts.fields(type()),
                List.copyOf(Facts.topics(type())));
    }

    /** Farther than any two classes are apart. */
    private int farthest() {
        return Facts.space(type()).size();
    }

    private static int distance(Collection<Term> actual, List<Term> wanted) {
        int least = Integer.MAX_VALUE;
        for (Term from : actual) {
            for (Term to : wanted) {
                least = Math.min(least, Math.abs(((Enum<?>) from).ordinal() - ((Enum<?>) to).ordinal()));
            }
        }
        return least;
    }

    /** The parts in which a step differs from the accepted one that is most like it. */
    private List<Unmet> differing(Step step) {
        List<StepPart> fewest = List.of(StepPart.values());
        for (Object accepted : condition.accepted()) {
            List<StepPart> parts = Stream.of(StepPart.values())
                    .filter(part -> part.of(step) != part.of(accepted))
                    .toList();
            if (parts.size() < fewest.size()) {
                fewest = parts;
            }
        }
        List<StepPart> parts = fewest;
        List<Object> alike = condition.accepted().stream()
                .filter(accepted -> Stream.of(StepPart.values())
                        .allMatch(part -> parts.contains(part) || part.of(step) == part.of(accepted)))
                .toList();
        return parts.stream()
                .map(part -> {
                    List<Term> actual = List.of(part.of(step));
                    List<Term> wanted = alike.stream().map(part::of).distinct().toList();
                    return new Unmet(
                            part.fact(),
                            Term.keys(actual),
                            Term.keys(wanted),
                            distance(actual, wanted),
                            List.of(),
                            List.of(Topics.GRIT_PATH));
                })
                .toList();
    }
}
