package stoneprocess.rules.explain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.answer.Unmet;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.OneOfMany;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FactPattern;

/** One condition of a rule together with the facts that meet it. */
final class AskCondition {
    private static final Term ONLY = () -> "";

    /** One of the things that a rule can see of a step. */
    private record Part(String name, Function<Step, Term> read) {
        Term of(Object step) {
            return read.apply((Step) step);
        }

        boolean isAlike(Object one, Object other) {
            return of(one).equals(of(other));
        }
    }

    private static final List<Part> PARTS = List.of(
            new Part("track", Step::track),
            new Part("bond", Step::bond),
            new Part("grit", Step::grit),
            new Part("order", Step::order),
            new Part("end", Step::end),
            new Part("method", Step::method));

    /**
     * What one fact makes of a condition.
     *
     * @param holds true when it meets it
     * @param unmet what is wanting; none too of a fact about another constant
     */
    private record Against(boolean holds, List<Unmet> unmet) {}

    private final FactPattern pattern;
    private final List<Object> accepted;
    private final boolean all;
    private final Map<Term, List<Term>> required = new HashMap<>();
    private final List<Unmet> missing;
    private final Map<Seen, Against> against = new ConcurrentHashMap<>();

    /**
     * @param pattern the condition
     * @param accepted of all facts that there can be, those that meet it
     * @param all false when these are only some of those that meet it, since of others the rule says something else
     */
    AskCondition(FactPattern pattern, Collection<Object> accepted, boolean all) {
        this.pattern = pattern;
        this.accepted = List.copyOf(accepted);
        this.all = all;
        if (pattern.type() != Step.class) {
            this.accepted.forEach(fact -> {
                List<Term> classes = required.computeIfAbsent(which(fact), key -> new ArrayList<>());
                if (classes(fact).size() == 1) {
                    classes.add(classes(fact).iterator().next());
                }
            });
        }
        this.missing = List.of(new Unmet(
                type().getSimpleName(),
                List.of(),
                required.isEmpty()
                        ? List.of()
                        : Term.keys(required.values().iterator().next()),
                farthest(),
                Facts.fields(type()),
                topics()));
    }

    Class<?> type() {
        return pattern.type();
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
        return nearest.isEmpty() ? missing : nearest;
    }

    private Against against(Seen seen) {
        Against known = against.get(seen);
        return known == null ? against.computeIfAbsent(seen, key -> against(key.fact())) : known;
    }

    private Against against(Object fact) {
        if (pattern.matches(fact) && (all || accepted.contains(fact))) {
            return new Against(true, List.of());
        }
        if (fact instanceof Step step) {
            return new Against(false, differing(step));
        }
        List<Term> wanted = required.get(which(fact));
        return new Against(false, wanted == null ? List.of() : List.of(unmet(fact, wanted)));
    }

    /** What has to be known so that a condition that holds of something unknown holds for certain. */
    @Nullable
    Unmet uncertain(List<Seen> facts) {
        for (Seen seen : facts) {
            Object fact = seen.fact();
            List<Term> wanted = required.getOrDefault(which(fact), List.of());
            if (pattern.matches(fact)
                    && fact instanceof Feature<?> feature
                    && feature.mayBe().size() > 1) {
                return unmet(
                        fact, wanted.stream().filter(feature.mayBe()::contains).toList());
            }
        }
        return null;
    }

    private Unmet unmet(Object fact, List<Term> wanted) {
        return new Unmet(
                Facts.matched(fact).name(),
                Term.keys(classes(fact)),
                Term.keys(wanted),
                wanted.isEmpty() ? farthest() : distance(classes(fact), wanted),
                Facts.fields(type()),
                topics());
    }

    /** Farther than any two classes are apart. */
    private int farthest() {
        return Facts.space(type()).size();
    }

    private List<String> topics() {
        return Facts.topics(type()).stream().map(Topic::id).toList();
    }

    private static int distance(Collection<Term> actual, List<Term> wanted) {
        int least = Integer.MAX_VALUE;
        for (Term here : actual) {
            for (Term there : wanted) {
                least = Math.min(least, Math.abs(ordinal(here) - ordinal(there)));
            }
        }
        return least;
    }

    private static int ordinal(Term term) {
        return ((Enum<?>) term).ordinal();
    }

    /** The parts in which a step differs from the accepted one that is most like it. */
    private List<Unmet> differing(Step step) {
        List<Part> fewest = PARTS;
        for (Object other : accepted) {
            List<Part> parts =
                    PARTS.stream().filter(part -> !part.isAlike(step, other)).toList();
            if (parts.size() < fewest.size()) {
                fewest = parts;
            }
        }
        List<Part> parts = fewest;
        List<Object> alike = accepted.stream()
                .filter(other -> PARTS.stream()
                        .filter(part -> !parts.contains(part))
                        .allMatch(part -> part.isAlike(step, other)))
                .toList();
        return parts.stream()
                .map(part -> {
                    List<Term> actual = List.of(part.of(step));
                    List<Term> wanted = alike.stream().map(part::of).distinct().toList();
                    return new Unmet(
                            "Step." + part.name(),
                            Term.keys(actual),
                            Term.keys(wanted),
                            distance(actual, wanted),
                            List.of(),
                            List.of(Topics.GRIT_PATH.id()));
                })
                .toList();
    }

    private static Term which(Object fact) {
        return fact instanceof OneOfMany<?> one ? one.which() : ONLY;
    }

    @SuppressWarnings("unchecked")
    private static Set<Term> classes(Object fact) {
        return (Set<Term>) (Set<?>) ((Feature<?>) fact).mayBe();
    }
}
