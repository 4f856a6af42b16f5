package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;

/**
 * The policies that close a topic over a domain of values: one, all, precedence, remains, ranked. Their outcome depends on the
 * set of contributions only, not on their order.
 */
public final class ValuePolicies {
    private ValuePolicies() {}

    /** Closes a topic for a subject by the topic's declared policy. */
    public static Outcome close(Topic<?> topic, Subject subject, List<Said> said) {
        if (topic instanceof Choice<?> choice) {
            return close(choice, subject, said);
        }
        throw new IllegalArgumentException(topic + " is not closed by a policy over values");
    }

    private static <V extends Term> Outcome close(Choice<V> topic, Subject subject, List<Said> said) {
        return switch (topic.policy()) {
            case ONE -> one(topic, subject, said);
            case ALL -> all(topic, subject, said);
            case PRECEDENCE -> precedence(topic, subject, said);
            case REMAINS -> remains(topic, subject, said);
            case RANKED -> ranked(topic, subject, said);
            case PATH, FEWEST_CHANGES, COMPUTED ->
                throw new IllegalArgumentException(topic + " is not closed by a policy over values");
        };
    }

    /** The values of the domain that all needs allow and no veto excludes, in the domain's order. */
    public static <V extends Term> List<V> allowed(Choice<V> topic, List<Said> said) {
        return topic.domain().stream()
                .filter(value -> said.stream().allMatch(one -> permits(one, value)))
                .toList();
    }

    static boolean permits(Said said, Term value) {
        boolean listed = said.contribution().values().contains(value);
        return switch (said.contribution().kind()) {
            case NEED -> listed;
            case VETO -> !listed;
            case WISH -> true;
        };
    }

    static List<Reason> reasons(List<Said> said, ContributionKind kind) {
        return said.stream()
                .filter(one -> one.contribution().kind() == kind)
                .map(Said::reason)
                .toList();
    }

    static <V extends Term> Impasse<V> impasse(Choice<V> topic, Subject subject, List<Said> said) {
        List<Said> certain = said.stream().filter(one -> one.reason().certain()).toList();
        return new Impasse<>(
                topic,
                subject,
                reasons(said, ContributionKind.NEED),
                reasons(said, ContributionKind.VETO),
                !allowed(topic, certain).isEmpty(),
                lacking(topic, said));
    }

    /** What would be allowed if it were on hand; any one of these would do. */
    private static <V extends Term> List<V> lacking(Choice<V> topic, List<Said> said) {
        List<Said> other = said.stream().filter(one -> !isAbsence(one)).toList();
        return other.size() == said.size() ? List.of() : allowed(topic, other);
    }

    /** An exclusion for no other reason than that a machine is not on hand. */
    private static boolean isAbsence(Said said) {
        return said.contribution().kind() == ContributionKind.VETO
                && said.reason().facts().stream()
                        .filter(fact -> !fact.fields().isEmpty())
                        .allMatch(fact -> fact.fields().equals(List.of(SurveyField.MACHINES.name())))
                && said.reason().facts().stream().anyMatch(fact -> fact.fields().contains(SurveyField.MACHINES.name()));
    }

    private static <V extends Term> Outcome one(Choice<V> topic, Subject subject, List<Said> said) {
        List<V> allowed = allowed(topic, said);
        if (allowed.isEmpty()) {
            return impasse(topic, subject, said);
        }
        int boldest = -1;
        for (Said one : said) {
            boldest = Math.max(boldest, pick(one, allowed).map(allowed::indexOf).orElse(-1));
        }
        V value = allowed.get(Math.max(boldest, 0));
        List<Reason> won = new ArrayList<>();
        List<Reason> outweighed = new ArrayList<>();
        List<Reason> vetoed = new ArrayList<>();
        for (Said one : said) {
            if (one.contribution().kind() != ContributionKind.WISH) {
                won.add(one.reason());
                continue;
            }
            Optional<V> picked = pick(one, allowed);
            if (picked.isEmpty()) {
                vetoed.add(one.reason());
            } else if (picked.get().equals(value)) {
                won.add(one.reason());
            } else {
                outweighed.add(one.reason());
            }
        }
        return new Decision<>(topic, subject, List.of(value), won, outweighed, vetoed, List.of());
    }

    /** The best ranked value of a wish that is allowed. */
    private static <V extends Term> Optional<V> pick(Said said, List<V> allowed) {
        if (said.contribution().kind() != ContributionKind.WISH) {
            return Optional.empty();
        }
        List<? extends Term> ranked = said.contribution().values();
        return ranked.stream()
                .flatMap(wanted -> allowed.stream().filter(value -> value.equals(wanted)))
                .findFirst();
    }

    private static <V extends Term> Outcome all(Choice<V> topic, Subject subject, List<Said> said) {
        Set<Term> asked = new LinkedHashSet<>();
        Set<Term> excluded = new LinkedHashSet<>();
        for (Said one : said) {
            boolean veto = one.contribution().kind() == ContributionKind.VETO;
            (veto ? excluded : asked).addAll(one.contribution().values());
        }
        List<V> stand = topic.domain().stream()
                .filter(asked::contains)
                .filter(value -> !excluded.contains(value))
                .toList();
        List<Reason> won = new ArrayList<>();
        List<Reason> vetoed = new ArrayList<>();
        for (Said one : said) {
            boolean lost = one.contribution().kind() != ContributionKind.VETO
                    && excluded.containsAll(one.contribution().values());
            (lost ? vetoed : won).add(one.reason());
        }
        return new Decision<>(topic, subject, stand, won, List.of(), vetoed, List.of());
    }

    private static <V extends Term> Outcome precedence(Choice<V> topic, Subject subject, List<Said> said) {
        V value = topic.domain().get(topic.domain().size() - 1);
        for (Said one : said) {
            V asked = asked(topic, one);
            if (topic.domain().indexOf(asked) < topic.domain().indexOf(value)) {
                value = asked;
            }
        }
        List<Reason> won = new ArrayList<>();
        List<Reason> outweighed = new ArrayList<>();
        for (Said one : said) {
            (asked(topic, one).equals(value) ? won : outweighed).add(one.reason());
        }
        return new Decision<>(topic, subject, List.of(value), won, outweighed, List.of(), List.of());
    }

    /** What one contribution asks for: its first value, or the stand-in when it rests on an unknown fact. */
    @SuppressWarnings("unchecked")
    private static <V extends Term> V asked(Choice<V> topic, Said said) {
        V first = (V) said.contribution().values().get(0);
        if (said.reason().certain() || topic.whenUncertain().isEmpty()) {
            return first;
        }
        return topic.whenUncertain().get();
    }

    private static <V extends Term> Outcome remains(Choice<V> topic, Subject subject, List<Said> said) {
        List<V> allowed = allowed(topic, said);
        if (allowed.isEmpty()) {
            return impasse(topic, subject, said);
        }
        List<Reason> won = said.stream()
                .filter(one -> one.contribution().kind() != ContributionKind.WISH)
                .map(Said::reason)
                .toList();
        List<Reason> outweighed = reasons(said, ContributionKind.WISH);
        return new Decision<>(topic, subject, allowed, won, outweighed, List.of(), List.of());
    }

    private static <V extends Term> Outcome ranked(Choice<V> topic, Subject subject, List<Said> said) {
        Map<String, Integer> weights = weights(said.stream().map(Said::reason).toList());
        List<V> stand = allowed(topic, said).stream()
                .filter(value -> weights.containsKey(value.key()))
                .sorted(Comparator.comparing(value -> -weights.get(value.key())))
                .toList();
        List<Reason> won = new ArrayList<>();
        List<Reason> vetoed = new ArrayList<>();
        for (Said one : said) {
            boolean lost = one.contribution().kind() == ContributionKind.WISH
                    && one.contribution().values().stream().noneMatch(stand::contains);
            (lost ? vetoed : won).add(one.reason());
        }
        return new Decision<>(topic, subject, stand, won, List.of(), vetoed, List.of());
    }

    /**
     * How much speaks for each value of a ranked topic: three for a first rank, two for a second, one for others, times
     * the number of facts that a rule rests on, so that what two facts bear out counts twice.
     */
    public static Map<String, Integer> weights(List<Reason> reasons) {
        Map<String, Integer> weights = new LinkedHashMap<>();
        for (Reason reason : reasons) {
            if (reason.kind() == ContributionKind.WISH) {
                for (int rank = 0; rank < reason.values().size(); rank++) {
                    weights.merge(
                            reason.values().get(rank),
                            Math.max(1, 3 - rank) * reason.facts().size(),
                            Integer::sum);
                }
            }
        }
        return weights;
    }
}
