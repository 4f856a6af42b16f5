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
import stoneprocess.core.decision.Topic;
import stoneprocess.core.term.Term;
import stoneprocess.rules.decide.Topics;
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

    private final FactPattern pattern;
    private final List<Object> accepted;
    private final boolean all;
    private final Map<Term, List<Term>> required = new HashMap<>();
    // There are no more steps that differ to a rule than the space of steps has.
    private final Map<List<Term>, List<Unmet>> ofSteps = new ConcurrentHashMap<>();
    // Nor are there more facts that differ than the space of their type has.
    private final Map<Object, Unmet> ofFacts = new ConcurrentHashMap<>();

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
    }

    Class<?> type() {
        return pattern.type();
    }

    /** Facts of which any one would meet the condition. */
    List<Object> accepted() {
        return accepted;
    }

    boolean holds(List<Object> facts) {
        for (Object fact : facts) {
            if (pattern.matches(fact) && (all || accepted.contains(fact))) {
                return true;
            }
        }
        return false;
    }

    /** What does not hold: of a step a part for each, of other facts the one that is nearest. */
    List<Unmet> unmet(List<Object> facts) {
        if (type() == Step.class) {
            return facts.isEmpty() ? List.of(missing("Step", List.of())) : unmetParts((Step) facts.get(0));
        }
        Unmet nearest = null;
        for (Object fact : facts) {
            List<Term> wanted = required.get(which(fact));
            if (wanted != null) {
                Unmet found = ofFacts.computeIfAbsent(fact, key -> unmet(key, wanted));
                if (nearest == null || found.steps() < nearest.steps()) {
                    nearest = found;
                }
            }
        }
        return List.of(
                nearest == null
                        ? missing(
                                type().getSimpleName(),
                                required.values().iterator().next())
                        : nearest);
    }

    /** What has to be known so that a condition that holds of something unknown holds for certain. */
    @Nullable
    Unmet uncertain(List<Object> facts) {
        for (Object fact : facts) {
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

    private Unmet missing(String name, List<Term> wanted) {
        return new Unmet(name, List.of(), Term.keys(wanted), farthest(), Facts.fields(type()), topics());
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

    private List<Unmet> unmetParts(Step step) {
        List<Term> seen = List.of(step.track(), step.bond(), step.grit(), step.order(), step.end(), step.method());
        return ofSteps.computeIfAbsent(seen, key -> differing(step));
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
