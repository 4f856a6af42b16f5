package stoneprocess.rules.audit;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.problem.RulebaseException;

/**
 * Goes through every combination of a space exactly, however many there are. Facts are taken one after the other;
 * combinations that leave the same ways open and have had the same said so far are counted together and go on as one.
 * Ways that can make no difference any more are forgotten. So groups of facts that no way joins never multiply, and a
 * space of many billions comes down to some thousand states.
 *
 * @param <S> what is kept of what was said
 */
final class Sweep<S> {
    /** More states than this at once mean that the facts are too entangled to be gone through. */
    static final int MOST_STATES = 4_000_000;

    /**
     * What is kept of what was said.
     *
     * @param <S> its type; equal when all that follows would end alike
     */
    interface Tally<S> {
        S start();

        /** What is kept after a way fired; empty when the combination is of no interest. */
        Optional<S> add(S kept, FiringWay way);

        /** True when the way would change nothing, now and later. */
        boolean idle(S kept, FiringWay way);
    }

    /**
     * Combinations that end alike.
     *
     * @param kept what was said in them
     * @param count how many they are
     * @param classes one of them
     */
    record End<S>(S kept, BigInteger count, int[] classes) {}

    private record State<S>(BitSet open, S kept) {}

    /** One of the paths to a state, and how many there are. */
    private static final class Path {
        private final @Nullable Path before;
        private final int place;
        private final int chosen;
        private BigInteger count;

        Path(@Nullable Path before, int place, int chosen, BigInteger count) {
            this.before = before;
            this.place = place;
            this.chosen = chosen;
            this.count = count;
        }
    }

    private final WaySpace space;
    private final List<FiringWay> ways;
    private final Map<Integer, BitSet> only;
    private final Tally<S> tally;
    private long states;

    /**
     * @param space the space
     * @param ways those that count
     * @param only classes to which facts are narrowed, by the index of the fact
     * @param tally what is kept
     */
    Sweep(WaySpace space, List<FiringWay> ways, Map<Integer, BitSet> only, Tally<S> tally) {
        this.space = space;
        this.ways = ways;
        this.only = only;
        this.tally = tally;
    }

    /** How many states the last run went through. */
    long states() {
        return states;
    }

    /** All ends; none when every combination is of no interest. */
    List<End<S>> run() {
        Map<State<S>, Path> now = new LinkedHashMap<>();
        start().ifPresent(state -> now.put(state, new Path(null, -1, 0, BigInteger.ONE)));
        List<Integer> order = order();
        Map<State<S>, Path> last = now;
        for (int step = 0; step < order.size(); step++) {
            last = next(last, order, step);
            states += last.size();
        }
        return ends(last, order);
    }

    /** True when what is kept of some combination passes a test; goes no further than the first that does. */
    boolean ends(Predicate<S> test) {
        List<Integer> order = order();
        List<Taken> taken = new ArrayList<>();
        List<Set<State<S>>> failed = new ArrayList<>();
        for (int step = 0; step < order.size(); step++) {
            taken.add(taken(order, step));
            failed.add(new HashSet<>());
        }
        return start().filter(state -> ends(state, 0, taken, failed, test)).isPresent();
    }

    private boolean ends(State<S> state, int step, List<Taken> taken, List<Set<State<S>>> failed, Predicate<S> test) {
        if (step == taken.size()) {
            return test.test(state.kept());
        }
        if (failed.get(step).contains(state)) {
            return false;
        }
        List<State<S>> reached = new ArrayList<>();
        for (BitSet accepting : taken.get(step).alike().keySet()) {
            after(state, accepting, taken.get(step)).ifPresent(reached::add);
        }
        reached.sort(Comparator.comparing(after -> after.open().cardinality()));
        for (State<S> after : reached) {
            if (ends(after, step + 1, taken, failed, test)) {
                return true;
            }
        }
        failed.get(step).add(state);
        return false;
    }

    /** The state before any fact is taken; empty when ways without conditions make all of no interest. */
    private Optional<State<S>> start() {
        Optional<S> start = Optional.of(tally.start());
        for (FiringWay way : ways) {
            if (way.accepts().isEmpty()) {
                start = start.flatMap(kept -> tally.idle(kept, way) ? Optional.of(kept) : tally.add(kept, way));
            }
        }
        return start.map(kept -> new State<>(new BitSet(), kept));
    }

    /**
     * A fact that is taken.
     *
     * @param place its index
     * @param alike its classes, by the ways that accept them
     * @param touched the ways that read it
     * @param begins those of which it is the first fact
     * @param ends those of which it is the last
     */
    private record Taken(int place, Map<BitSet, int[]> alike, BitSet touched, BitSet begins, BitSet ends) {}

    private Taken taken(List<Integer> order, int step) {
        int place = order.get(step);
        Taken taken = new Taken(place, alike(place), new BitSet(), new BitSet(), new BitSet());
        for (int i = 0; i < ways.size(); i++) {
            Set<Integer> read = ways.get(i).accepts().keySet();
            if (read.contains(place)) {
                long before =
                        order.subList(0, step).stream().filter(read::contains).count();
                taken.touched().set(i);
                taken.begins().set(i, before == 0);
                taken.ends().set(i, before + 1 == read.size());
            }
        }
        return taken;
    }

    /** The state after a fact is of a class that some ways accept; empty when it is of no interest. */
    private Optional<State<S>> after(State<S> state, BitSet accepting, Taken taken) {
        BitSet open = (BitSet) state.open().clone();
        open.andNot(taken.touched());
        S kept = state.kept();
        for (int i = accepting.nextSetBit(0); i >= 0; i = accepting.nextSetBit(i + 1)) {
            boolean alive = (taken.begins().get(i) || state.open().get(i)) && !tally.idle(kept, ways.get(i));
            if (alive && taken.ends().get(i)) {
                Optional<S> more = tally.add(kept, ways.get(i));
                if (more.isEmpty()) {
                    return Optional.empty();
                }
                kept = more.get();
            } else if (alive) {
                open.set(i);
            }
        }
        if (kept != state.kept()) {
            for (int i = open.nextSetBit(0); i >= 0; i = open.nextSetBit(i + 1)) {
                if (tally.idle(kept, ways.get(i))) {
                    open.clear(i);
                }
            }
        }
        return Optional.of(new State<>(open, kept));
    }

    private Map<State<S>, Path> next(Map<State<S>, Path> now, List<Integer> order, int step) {
        Taken taken = taken(order, step);
        Map<State<S>, Path> after = new LinkedHashMap<>();
        now.forEach((state, path) -> taken.alike()
                .forEach((accepting, chosen) -> after(state, accepting, taken).ifPresent(reached -> {
                    BigInteger count = path.count.multiply(BigInteger.valueOf(chosen[1]));
                    Path known = after.get(reached);
                    if (known == null) {
                        after.put(reached, new Path(path, taken.place(), chosen[0], count));
                    } else {
                        known.count = known.count.add(count);
                    }
                })));
        if (after.size() > MOST_STATES) {
            throw new RulebaseException("The facts of topic " + space.topic().id() + " are too entangled: more than "
                    + MOST_STATES + " states at once");
        }
        return after;
    }

    /** Classes of a fact that the same ways accept: the first of them and how many they are. */
    private Map<BitSet, int[]> alike(int place) {
        Map<BitSet, int[]> alike = new LinkedHashMap<>();
        for (int index = 0; index < space.dimensions().get(place).classes().size(); index++) {
            if (only.containsKey(place) && !only.get(place).get(index)) {
                continue;
            }
            BitSet accepting = new BitSet();
            for (int i = 0; i < ways.size(); i++) {
                BitSet accepted = ways.get(i).accepts().get(place);
                if (accepted != null && accepted.get(index)) {
                    accepting.set(i);
                }
            }
            int first = index;
            alike.computeIfAbsent(accepting, key -> new int[] {first, 0})[1]++;
        }
        return alike;
    }

    /** Takes next the fact that leaves the fewest states, by the ways that it leaves open or by the classes left. */
    private List<Integer> order() {
        Map<Integer, List<FiringWay>> reading = new TreeMap<>();
        ways.forEach(way -> way.accepts()
                .keySet()
                .forEach(place ->
                        reading.computeIfAbsent(place, key -> new ArrayList<>()).add(way)));
        Map<Integer, Integer> bits = new TreeMap<>();
        reading.keySet()
                .forEach(place -> bits.put(
                        place,
                        Integer.SIZE - Integer.numberOfLeadingZeros(alike(place).size() - 1)));
        Set<Integer> taken = new LinkedHashSet<>();
        while (taken.size() < reading.size()) {
            int best = -1;
            int fewest = Integer.MAX_VALUE;
            for (int place : reading.keySet()) {
                if (taken.add(place)) {
                    int left = left(taken, reading, bits);
                    if (left < fewest) {
                        fewest = left;
                        best = place;
                    }
                    taken.remove(place);
                }
            }
            taken.add(best);
        }
        return List.copyOf(taken);
    }

    private static int left(Set<Integer> taken, Map<Integer, List<FiringWay>> reading, Map<Integer, Integer> bits) {
        Set<FiringWay> open = Collections.newSetFromMap(new IdentityHashMap<>());
        int behind = 0;
        for (int place : taken) {
            boolean needed = false;
            for (FiringWay way : reading.get(place)) {
                if (!taken.containsAll(way.accepts().keySet())) {
                    open.add(way);
                    needed = true;
                }
            }
            behind += needed ? bits.get(place) : 0;
        }
        return Math.min(open.size(), behind);
    }

    private List<End<S>> ends(Map<State<S>, Path> last, List<Integer> order) {
        BigInteger free = BigInteger.ONE;
        int[] first = new int[space.dimensions().size()];
        for (int place = 0; place < first.length; place++) {
            BitSet allowed = only.get(place);
            int size = space.dimensions().get(place).classes().size();
            if (allowed != null) {
                first[place] = allowed.nextSetBit(0);
                size = allowed.cardinality();
            }
            if (!order.contains(place)) {
                free = free.multiply(BigInteger.valueOf(size));
            }
        }
        Map<S, Path> byKept = new LinkedHashMap<>();
        Map<S, BigInteger> counts = new LinkedHashMap<>();
        last.forEach((state, path) -> {
            byKept.putIfAbsent(state.kept(), path);
            counts.merge(state.kept(), path.count, BigInteger::add);
        });
        List<End<S>> ends = new ArrayList<>();
        for (Map.Entry<S, Path> entry : byKept.entrySet()) {
            int[] classes = first.clone();
            for (Path path = entry.getValue(); path != null && path.place >= 0; path = path.before) {
                classes[path.place] = path.chosen;
            }
            ends.add(new End<>(entry.getKey(), counts.get(entry.getKey()).multiply(free), classes));
        }
        return ends;
    }
}
