package stoneprocess.core.topic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.term.Term;

/**
 * A topic whose values are words. Rules contribute to it; its policy closes it.
 *
 * @param <V> the words it is chosen from
 */
@SuppressWarnings("varargs")
public final class Choice<V extends Term> extends Topic<V> {
    private final List<V> domain;
    private final Map<String, V> byKey = new HashMap<>();
    private final boolean cautiousFirst;
    private final boolean blocking;
    private final Optional<V> whenUncertain;

    private Choice(
            String id,
            Stage stage,
            Scope scope,
            PolicyKind policy,
            List<V> domain,
            boolean cautiousFirst,
            boolean blocking,
            Optional<V> whenUncertain) {
        super(id, stage, scope, policy);
        this.domain = domain;
        domain.forEach(value -> byKey.put(value.key(), value));
        this.cautiousFirst = cautiousFirst;
        this.blocking = blocking;
        this.whenUncertain = whenUncertain;
    }

    /** A topic whose domain is all constants of an enum, in their order. */
    public static <V extends Enum<V> & Term> Choice<V> of(
            String id, Stage stage, Scope scope, PolicyKind policy, Class<V> domain) {
        return new Choice<>(
                id, stage, scope, policy, List.of(domain.getEnumConstants()), false, false, Optional.empty());
    }

    /** The same topic, whose domain is declared to run from the most cautious to the boldest value. */
    public Choice<V> cautiousFirst() {
        return new Choice<>(id(), stage(), scope(), policy(), domain, true, blocking, whenUncertain);
    }

    /** The same topic, without which there is no plan: an impasse ends the planning. */
    public Choice<V> blocking() {
        return new Choice<>(id(), stage(), scope(), policy(), domain, cautiousFirst, true, whenUncertain);
    }

    /** The same topic, in which a value that is asked for because of an unknown fact counts as this one instead. */
    public Choice<V> whenUncertain(V value) {
        return new Choice<>(id(), stage(), scope(), policy(), domain, cautiousFirst, blocking, Optional.of(value));
    }

    @Override
    public Optional<V> whenUncertain() {
        return whenUncertain;
    }

    @Override
    public List<V> domain() {
        return domain;
    }

    @Override
    public boolean isCautiousFirst() {
        return cautiousFirst;
    }

    @Override
    public boolean isBlocking() {
        return blocking;
    }

    /**
     * The value with the given key.
     *
     * @throws InvalidInputException when the domain has none
     */
    public V value(String key) {
        return value(key, id());
    }

    private V value(String key, String field) {
        V value = byKey.get(key);
        if (value == null) {
            throw new InvalidInputException(field, key, "one of " + String.join(", ", Term.keys(domain)));
        }
        return value;
    }

    @Override
    public List<String> keys(List<? extends V> values) {
        return Term.keys(values);
    }

    @Override
    public List<V> parse(List<String> keys, String field) {
        return keys.stream().map(key -> value(key, field)).toList();
    }

    /** Contributions about another subject than the floor. */
    public About<V> on(Subject subject) {
        return new About<>(this, subject);
    }

    private About<V> onFloor() {
        return on(Subject.FLOOR);
    }

    @SafeVarargs
    public final Contribution need(V... allowed) {
        return onFloor().needOf(Arrays.asList(allowed));
    }

    /** The outcome must be one of these. */
    public Contribution need(Set<? extends V> allowed) {
        return onFloor().needOf(List.copyOf(allowed));
    }

    public Contribution needAtLeast(V value) {
        return onFloor().needAtLeast(value);
    }

    public Contribution needAtMost(V value) {
        return onFloor().needAtMost(value);
    }

    @SafeVarargs
    public final Contribution wish(V... ranked) {
        return onFloor().wishOf(Arrays.asList(ranked));
    }

    @SafeVarargs
    public final Contribution veto(V... excluded) {
        return onFloor().vetoOf(Arrays.asList(excluded));
    }

    public Contribution vetoAbove(V value) {
        return onFloor().vetoAbove(value);
    }

    /**
     * A topic and the subject that is spoken about.
     *
     * @param <V> the topic's values
     */
    public static final class About<V extends Term> {
        private final Choice<V> topic;
        private final Subject subject;

        private About(Choice<V> topic, Subject subject) {
            this.topic = topic;
            this.subject = subject;
        }

        /** The outcome must be one of these. */
        @SafeVarargs
        public final Contribution need(V... allowed) {
            return needOf(Arrays.asList(allowed));
        }

        /** The outcome must be this value or one that comes after it in the domain. */
        public Contribution needAtLeast(V value) {
            return make(ContributionKind.NEED, topic.domain.subList(position(value), topic.domain.size()));
        }

        /** The outcome must be this value or one that comes before it in the domain. */
        public Contribution needAtMost(V value) {
            return make(ContributionKind.NEED, topic.domain.subList(0, position(value) + 1));
        }

        /** These are preferred, the best first. */
        @SafeVarargs
        public final Contribution wish(V... ranked) {
            return wishOf(Arrays.asList(ranked));
        }

        /** The outcome must not be one of these. */
        @SafeVarargs
        public final Contribution veto(V... excluded) {
            return vetoOf(Arrays.asList(excluded));
        }

        /** The outcome must not come after this value in the domain. */
        public Contribution vetoAbove(V value) {
            return make(ContributionKind.VETO, topic.domain.subList(position(value) + 1, topic.domain.size()));
        }

        private Contribution needOf(List<? extends V> allowed) {
            return make(ContributionKind.NEED, inDomainOrder(allowed));
        }

        private Contribution wishOf(List<? extends V> ranked) {
            return make(ContributionKind.WISH, ranked);
        }

        private Contribution vetoOf(List<? extends V> excluded) {
            return make(ContributionKind.VETO, inDomainOrder(excluded));
        }

        private Contribution make(ContributionKind kind, List<? extends Term> values) {
            return new Contribution(kind, topic, subject, List.copyOf(values));
        }

        private List<V> inDomainOrder(List<? extends V> values) {
            Set<V> wanted = new HashSet<>(values);
            List<V> ordered = new ArrayList<>(topic.domain);
            ordered.retainAll(wanted);
            if (ordered.size() != wanted.size()) {
                throw new InvalidInputException(
                        topic.id(),
                        String.join(", ", Term.keys(values)),
                        "some of " + String.join(", ", Term.keys(topic.domain)));
            }
            return ordered;
        }

        private int position(V value) {
            int position = topic.domain.indexOf(value);
            if (position < 0) {
                throw new InvalidInputException(
                        topic.id(), value.key(), "one of " + String.join(", ", Term.keys(topic.domain)));
            }
            return position;
        }
    }
}
