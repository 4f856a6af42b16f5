package stoneprocess.rules.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.decide.Policy;
import stoneprocess.rules.decide.Precedence;
import stoneprocess.rules.decide.Ranked;
import stoneprocess.rules.decide.Stated;

/** How a topic closes for one subject: which views its outcome has by its policy. */
final class OutcomeViews {
    private final Choice<?> topic;
    private final Policy policy;
    private final Subject subject;
    private final List<Term> domain;
    private final List<FiringWay> ways;
    private final List<List<Term>> wishes;
    private final Map<FiringWay, Long> permitted = new IdentityHashMap<>();

    /**
     * @param topic the topic
     * @param subject what it is closed for
     * @param ways all that may be said about the subject
     */
    OutcomeViews(Topic<?> topic, Subject subject, List<FiringWay> ways) {
        this.topic = (Choice<?>) topic;
        this.policy = Policy.of(this.topic);
        this.subject = subject;
        this.domain = List.copyOf(topic.domain());
        this.ways = ways;
        this.wishes = ways.stream()
                .filter(FiringWay::isWish)
                .<List<Term>>map(way -> List.copyOf(way.says().values()))
                .distinct()
                .toList();
    }

    /** The views that tell which values come of a combination. */
    List<View<?>> values() {
        if (policy.hasImpasse()) {
            return List.of(allowed());
        }
        return policy.isSingle()
                ? List.of(new FirstAsked())
                : domain.stream().<View<?>>map(OneValue::new).toList();
    }

    /** The views in which a way can make a difference. */
    List<View<?>> differences() {
        List<View<?>> views = new ArrayList<>(values());
        if (!policy.isLocal() && !policy.hasImpasse()) {
            for (int first = 0; first < domain.size(); first++) {
                for (int second = first + 1; second < domain.size(); second++) {
                    views.add(new TwoValues(domain.get(first), domain.get(second)));
                }
            }
        }
        return views;
    }

    /** What is left of the domain, for a policy that may leave nothing. */
    View<Left> allowed() {
        return new AllowedValues();
    }

    boolean excludes(FiringWay way, Term value) {
        return policy.excludes(way.says().kind(), way.says().values().contains(value));
    }

    private boolean asks(FiringWay way, Term value) {
        return policy.asks(way.says().kind()) && way.says().values().contains(value);
    }

    /** The whole domain as bits. */
    long all() {
        return domain.size() == Long.SIZE ? -1L : (1L << domain.size()) - 1;
    }

    /** The values that a demand or an exclusion leaves, as bits. */
    long permitted(FiringWay way) {
        return permitted.computeIfAbsent(way, this::findPermitted);
    }

    private long findPermitted(FiringWay way) {
        long bits = 0;
        for (int i = 0; i < domain.size(); i++) {
            if (!excludes(way, domain.get(i))) {
                bits |= 1L << i;
            }
        }
        return bits;
    }

    private static <T> List<T> at(long bits, List<T> all) {
        List<T> chosen = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if ((bits >> i & 1) == 1) {
                chosen.add(all.get(i));
            }
        }
        return chosen;
    }

    /**
     * The values that are still allowed, and which wishes were said; both as sets of bits.
     *
     * @param allowed by the place in the domain
     * @param wished by the place among the wishes that differ
     */
    record Left(long allowed, long wished) {}

    /** Allowed values and wishes; the policy itself makes the outcome of them. */
    private final class AllowedValues implements View<Left> {
        private final Map<FiringWay, Long> wished = new IdentityHashMap<>();

        @Override
        public Left start() {
            return new Left(all(), 0);
        }

        @Override
        public Optional<Left> add(Left left, FiringWay way) {
            return Optional.of(with(left, way));
        }

        @Override
        public boolean idle(Left left, FiringWay way) {
            return left.allowed() == 0
                    || (way.isWish() ? (wished(way) & ~left.wished()) == 0 : (left.allowed() & ~permitted(way)) == 0);
        }

        private Left with(Left left, FiringWay way) {
            return way.isWish()
                    ? new Left(left.allowed(), left.wished() | wished(way))
                    : new Left(left.allowed() & permitted(way), left.wished());
        }

        private long wished(FiringWay way) {
            return wished.computeIfAbsent(way, this::findWished);
        }

        private long findWished(FiringWay way) {
            int place = policy.isSingle() ? wishes.indexOf(way.says().values()) : -1;
            return place < 0 ? 0 : 1L << place;
        }

        @Override
        public List<String> outcome(Left left) {
            return left.allowed() == 0 ? List.of() : closed(at(left.allowed(), domain), at(left.wished(), wishes));
        }

        /** Where other steps count too, one step alone does not show it: every narrowing and every choice matters. */
        @Override
        public boolean canChange(Left left, FiringWay way) {
            if (policy.isLocal()) {
                return !idle(left, way);
            }
            if (way.isWish()) {
                long wanted = 1L << domain.indexOf(way.says().values().get(0));
                return (left.allowed() & wanted) != 0 && left.allowed() != wanted;
            }
            return (left.allowed() & ~permitted(way)) != 0;
        }

        @Override
        public boolean changes(Left left, FiringWay way) {
            return policy.isLocal() ? View.super.changes(left, way) : canChange(left, way);
        }
    }

    private List<String> closed(List<Term> allowed, List<List<Term>> wished) {
        List<Stated> stated = Stream.concat(
                        Stream.of(stated(ContributionKind.NEED, allowed)),
                        wished.stream().map(values -> stated(ContributionKind.WISH, values)))
                .toList();
        return ((Decision<?>) policy.close(topic, subject, stated)).keys();
    }

    private Stated stated(ContributionKind kind, List<Term> values) {
        return new Stated(new Contribution(kind, topic, subject, values), new Reason(kind, "", values, List.of()));
    }

    /** The first value asked for under precedence, by its place in the domain. */
    private final class FirstAsked implements View<Integer> {
        private final Map<FiringWay, Integer> asked = new IdentityHashMap<>();

        @Override
        public Integer start() {
            return domain.size() - 1;
        }

        @Override
        public Optional<Integer> add(Integer first, FiringWay way) {
            return Optional.of(Math.min(first, asked(way)));
        }

        @Override
        public boolean idle(Integer first, FiringWay way) {
            return asked(way) >= first;
        }

        /** What asks for less keeps nothing from it. */
        @Override
        public boolean countsBeside(FiringWay looked, FiringWay way) {
            return asked(way) <= asked(looked);
        }

        private int asked(FiringWay way) {
            return asked.computeIfAbsent(way, this::place);
        }

        private int place(FiringWay way) {
            return domain.indexOf(Precedence.asked(topic, way.says().values().get(0), way.certain()));
        }

        @Override
        public List<String> outcome(Integer first) {
            return List.of(domain.get(first).key());
        }
    }

    /**
     * How one value of a topic stands in which values stand or fall by themselves.
     *
     * @param asked true when a rule asks for it
     * @param out true when a rule excludes it
     */
    private record Stand(boolean asked, boolean out) {}

    /** One value alone. */
    private final class OneValue implements View<Stand> {
        private final Term value;
        private final Set<FiringWay> asking = Collections.newSetFromMap(new IdentityHashMap<>());
        private final Set<FiringWay> excluding = Collections.newSetFromMap(new IdentityHashMap<>());

        private OneValue(Term value) {
            this.value = value;
            ways.stream().filter(way -> asks(way, value)).forEach(asking::add);
            ways.stream().filter(way -> excludes(way, value)).forEach(excluding::add);
        }

        @Override
        public Stand start() {
            return new Stand(false, false);
        }

        @Override
        public Optional<Stand> add(Stand stand, FiringWay way) {
            return Optional.of(
                    stand.out() || excluding.contains(way)
                            ? new Stand(false, true)
                            : new Stand(stand.asked() || asking.contains(way), false));
        }

        @Override
        public boolean isAbout(FiringWay way) {
            return asking.contains(way) || excluding.contains(way);
        }

        @Override
        public boolean idle(Stand stand, FiringWay way) {
            return stand.out() || !excluding.contains(way) && (stand.asked() || !asking.contains(way));
        }

        @Override
        public List<String> outcome(Stand stand) {
            return stand.asked() ? List.of(value.key()) : List.of();
        }
    }

    /**
     * Which of two values comes first.
     *
     * @param lead what speaks for the first, less what speaks for the second
     * @param first true when the first is asked for at all
     * @param second true when the second is
     */
    private record Lead(int lead, boolean first, boolean second) {}

    /** Two values of which what is suggested oftener comes first, for combinations that exclude neither. */
    private final class TwoValues implements View<Lead> {
        private final Term first;
        private final Term second;

        private TwoValues(Term first, Term second) {
            this.first = first;
            this.second = second;
        }

        @Override
        public Lead start() {
            return new Lead(0, false, false);
        }

        @Override
        public Optional<Lead> add(Lead lead, FiringWay way) {
            if (excludes(way, first) || excludes(way, second)) {
                return Optional.empty();
            }
            int forFirst = weight(way, first);
            int forSecond = weight(way, second);
            return Optional.of(new Lead(
                    lead.lead() + forFirst - forSecond, lead.first() || forFirst > 0, lead.second() || forSecond > 0));
        }

        @Override
        public boolean isAbout(FiringWay way) {
            return weight(way, first) != 0 || weight(way, second) != 0 || excludes(way, first) || excludes(way, second);
        }

        @Override
        public boolean idle(Lead lead, FiringWay way) {
            return false;
        }

        @Override
        public boolean canChange(Lead lead, FiringWay way) {
            return way.isWish() && isAbout(way);
        }

        /** Which of them stand is for {@link OneValue} to tell. */
        @Override
        public List<String> outcome(Lead lead) {
            if (!lead.first() || !lead.second()) {
                return List.of();
            }
            return Term.keys(lead.lead() >= 0 ? List.of(first, second) : List.of(second, first));
        }
    }

    private static int weight(FiringWay way, Term value) {
        int rank = way.isWish() ? way.says().values().indexOf(value) : -1;
        return rank < 0 ? 0 : Ranked.weight(rank, way.rule().conditions().size());
    }
}
