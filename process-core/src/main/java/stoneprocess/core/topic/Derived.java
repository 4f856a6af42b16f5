package stoneprocess.core.topic;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Grit;

/**
 * A topic whose value follows from a formula over other topics, the survey and parameters. Rules say nothing about it.
 *
 * @param <V> what is derived
 */
public final class Derived<V> extends Topic<V> {
    private final Function<List<? extends V>, List<String>> print;
    private final BiFunction<List<String>, String, List<V>> read;

    private Derived(
            String id,
            Stage stage,
            Scope scope,
            PolicyKind policy,
            Function<List<? extends V>, List<String>> print,
            BiFunction<List<String>, String, List<V>> read) {
        super(id, stage, scope, policy);
        this.print = print;
        this.read = read;
    }

    /** Grits in the order of the work. */
    static Derived<Grit> grits(String id, Stage stage, Scope scope, PolicyKind policy) {
        return new Derived<>(
                id,
                stage,
                scope,
                policy,
                grits -> grits.stream().map(Grit::key).toList(),
                (keys, field) ->
                        keys.stream().map(key -> Grit.parse(key, field)).toList());
    }

    /** A range of whole numbers. */
    static Derived<Range<Integer>> counts(String id, Stage stage, Scope scope, PolicyKind policy) {
        return range(id, stage, scope, policy, String::valueOf, Derived::whole);
    }

    /** A range of volumes; none where an input is not known. */
    static Derived<Range<Volume>> volumes(String id, Stage stage, Scope scope, PolicyKind policy) {
        return range(id, stage, scope, policy, Volume::print, Derived::volume);
    }

    private static <T extends Comparable<? super T>> Derived<Range<T>> range(
            String id,
            Stage stage,
            Scope scope,
            PolicyKind policy,
            Function<T, String> print,
            BiFunction<String, String, T> read) {
        return new Derived<>(
                id,
                stage,
                scope,
                policy,
                ranges -> {
                    List<String> ends = new ArrayList<>();
                    ranges.forEach(range -> {
                        ends.add(print.apply(range.low()));
                        ends.add(print.apply(range.high()));
                    });
                    return List.copyOf(ends);
                },
                (keys, field) -> {
                    if (keys.isEmpty()) {
                        return List.of();
                    }
                    if (keys.size() != 2) {
                        throw new InvalidInputException(field, String.join(", ", keys), "a lower and an upper end");
                    }
                    T low = read.apply(keys.get(0), field);
                    T high = read.apply(keys.get(1), field);
                    try {
                        return List.of(Range.of(low, high));
                    } catch (InvalidInputException e) {
                        throw new InvalidInputException(field, e.value(), e.accepted());
                    }
                });
    }

    private static Integer whole(String key, String field) {
        try {
            return Integer.valueOf(key);
        } catch (NumberFormatException e) {
            throw new InvalidInputException(field, key, "a whole number");
        }
    }

    private static Volume volume(String key, String field) {
        if (Quantity.parse(key, field) instanceof Volume volume) {
            return volume;
        }
        throw new InvalidInputException(
                field, key, "a volume in " + Dimension.VOLUME.unit().symbol());
    }

    /** None: the value is no word. */
    @Override
    public List<? extends Term> domain() {
        return List.of();
    }

    @Override
    public boolean isCautiousFirst() {
        return false;
    }

    /** True of a path, without which there are no steps. */
    @Override
    public boolean isBlocking() {
        return policy() == PolicyKind.PATH;
    }

    @Override
    public Optional<? extends Term> whenUncertain() {
        return Optional.empty();
    }

    @Override
    public List<String> keys(List<? extends V> values) {
        return print.apply(values);
    }

    @Override
    public List<V> parse(List<String> keys, String field) {
        return read.apply(keys, field);
    }
}
