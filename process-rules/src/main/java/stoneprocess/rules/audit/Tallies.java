package stoneprocess.rules.audit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.decide.Policy;

/** What has to be kept of what was said on a topic, so that its outcome follows, by policy. */
final class Tallies {
    private final Topic<?> topic;
    private final Policy policy;
    private final List<Term> domain;
    private final List<List<Term>> wishes;

    /**
     * @param topic the topic
     * @param ways all that may be said for one subject
     */
    Tallies(Topic<?> topic, List<Way> ways) {
        this.topic = topic;
        this.policy = Policy.of((Choice<?>) topic);
        this.domain = List.copyOf(topic.domain());
        Set<List<Term>> ranked = new LinkedHashSet<>();
        ways.stream()
                .filter(Way::isWish)
                .forEach(way -> ranked.add(List.copyOf(way.says().values())));
        this.wishes = List.copyOf(ranked);
    }

    /**
     * The values that are still allowed, and which wishes were said; both as sets of bits.
     *
     * @param allowed by the place in the domain
     * @param wished by the place among the wishes that differ
     */
    record Kept(long allowed, long wished) {}

    /** Allowed values and wishes. */
    Sweep.Tally<Kept> values() {
        return new Sweep.Tally<>() {
            @Override
            public Kept start() {
                return new Kept(all(), 0);
            }

            @Override
            public Optional<Kept> add(Kept kept, Way way) {
                return Optional.of(with(kept, way));
            }

            @Override
            public boolean idle(Kept kept, Way way) {
                return kept.allowed() == 0 || with(kept, way).equals(kept);
            }
        };
    }

    Kept with(Kept kept, Way way) {
        if (way.isWish()) {
            int place = wishes.indexOf(List.copyOf(way.says().values()));
            return place < 0 ? kept : new Kept(kept.allowed(), kept.wished() | 1L << place);
        }
        return new Kept(kept.allowed() & permitted(way), kept.wished());
    }

    long all() {
        return domain.size() == Long.SIZE ? -1L : (1L << domain.size()) - 1;
    }

    /** The values that a demand or an exclusion leaves. */
    long permitted(Way way) {
        long bits = 0;
        for (int i = 0; i < domain.size(); i++) {
            if (!way.excludes(domain.get(i))) {
                bits |= 1L << i;
            }
        }
        return bits;
    }

    /** Places in the domain of what comes of it; none for an impasse. */
    List<Integer> outcome(Kept kept) {
        List<Integer> allowed = new ArrayList<>();
        for (int i = 0; i < domain.size(); i++) {
            if ((kept.allowed() >> i & 1) == 1) {
                allowed.add(i);
            }
        }
        return switch (topic.policy()) {
            case REMAINS -> allowed;
            case ONE -> allowed.isEmpty() ? List.of() : List.of(boldest(kept, allowed));
            case FEWEST_CHANGES -> allowed.isEmpty() ? List.of() : List.of(onItsOwn(kept, allowed));
            default -> throw new IllegalArgumentException(topic.id() + " is not closed over allowed values");
        };
    }

    private int boldest(Kept kept, List<Integer> allowed) {
        int boldest = allowed.get(0);
        for (int i = 0; i < wishes.size(); i++) {
            if ((kept.wished() >> i & 1) == 1) {
                for (Term wanted : wishes.get(i)) {
                    int place = domain.indexOf(wanted);
                    if (allowed.contains(place)) {
                        boldest = Math.max(boldest, place);
                        break;
                    }
                }
            }
        }
        return boldest;
    }

    /** What a track of one step would get: a value that is wished for first, else the earliest. */
    private int onItsOwn(Kept kept, List<Integer> allowed) {
        for (int place : allowed) {
            for (int i = 0; i < wishes.size(); i++) {
                if ((kept.wished() >> i & 1) == 1
                        && domain.get(place).equals(wishes.get(i).get(0))) {
                    return place;
                }
            }
        }
        return allowed.get(0);
    }

    /** The place in the domain of what a way asks for under precedence. */
    int asked(Way way) {
        boolean standsIn = !way.certain() && topic.whenUncertain().isPresent();
        return domain.indexOf(
                standsIn ? topic.whenUncertain().get() : way.says().values().get(0));
    }

    /** The first value asked for under precedence. */
    Sweep.Tally<Integer> first() {
        return new Sweep.Tally<>() {
            @Override
            public Integer start() {
                return domain.size() - 1;
            }

            @Override
            public Optional<Integer> add(Integer kept, Way way) {
                return Optional.of(Math.min(kept, asked(way)));
            }

            @Override
            public boolean idle(Integer kept, Way way) {
                return asked(way) >= kept;
            }
        };
    }

    /**
     * How one value of a topic stands in which values stand or fall by themselves.
     *
     * @param asked true when a rule asks for it
     * @param out true when a rule excludes it
     */
    record Stand(boolean asked, boolean out) {
        boolean stands() {
            return asked && !out;
        }
    }

    /** One value alone. */
    Sweep.Tally<Stand> value(Term value) {
        return new Sweep.Tally<>() {
            @Override
            public Stand start() {
                return new Stand(false, false);
            }

            @Override
            public Optional<Stand> add(Stand kept, Way way) {
                return Optional.of(
                        excludes(way, value)
                                ? new Stand(false, true)
                                : new Stand(!kept.out() && (kept.asked() || asks(way, value)), kept.out()));
            }

            @Override
            public boolean idle(Stand kept, Way way) {
                return kept.out() || !excludes(way, value) && (kept.asked() || !asks(way, value));
            }
        };
    }

    /** As the topic's policy reads it: under all stand, a need asks for its values and leaves the others alone. */
    boolean excludes(Way way, Term value) {
        return policy.excludes(way.says().kind(), way.says().values().contains(value));
    }

    boolean asks(Way way, Term value) {
        return policy.asks(way.says().kind()) && way.says().values().contains(value);
    }
}
