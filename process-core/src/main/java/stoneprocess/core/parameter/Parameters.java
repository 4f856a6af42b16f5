package stoneprocess.core.parameter;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.source.Sources;
import stoneprocess.core.term.Term;

/**
 * The set of numbers that a recommendation is made with. Immutable; retuning one gives a new set. Passed in, never
 * static, so that two rulebases with different numbers live side by side.
 */
public final class Parameters {
    private static final String LOW = ".low";
    private static final Parameters STANDARD = load();

    private final Map<String, Parameter> byName;
    private final Map<String, Range<Quantity>> ranges = new ConcurrentHashMap<>();

    private Parameters(Map<String, Parameter> byName) {
        this.byName = byName;
    }

    /** The shipped numbers. */
    public static Parameters standard() {
        return STANDARD;
    }

    private static Parameters load() {
        Map<String, Parameter> byName = new LinkedHashMap<>();
        for (Tsv.Row row : Tsv.read(Parameters.class, "parameters.tsv")) {
            String name = row.get("name");
            Parameter parameter = new Parameter(
                    name,
                    Quantity.parse(row.get("value"), name),
                    Sources.standard().get(row.get("source")),
                    Term.parse(HouseBound.class, row.get("house"), name));
            if (byName.put(name, parameter) != null) {
                throw new IllegalStateException("Parameter " + name + " is listed twice");
            }
        }
        return new Parameters(byName);
    }

    public Collection<Parameter> all() {
        return List.copyOf(byName.values());
    }

    /** True when a parameter of that name is listed. */
    public boolean has(String name) {
        return byName.containsKey(Objects.requireNonNull(name, "name"));
    }

    /**
     * The value of a parameter, as the type asked for.
     *
     * @throws InvalidInputException when there is no such parameter
     * @throws ClassCastException when the parameter is of another type
     */
    public <Q extends Quantity> Q get(String name, Class<Q> type) {
        return type.cast(parameter(name).value());
    }

    /**
     * A share as a part of one: 0.25 for 25 %.
     *
     * @throws InvalidInputException when there is no such parameter
     */
    public double part(String name) {
        return get(name, Share.class).percent() / 100;
    }

    /**
     * The range from parameter {@code name.low} to {@code name.high}.
     *
     * @throws InvalidInputException when there is no such parameter or the lower end is above the upper end
     */
    public <Q extends Quantity> Range<Q> range(String name, Class<Q> type) {
        Range<Quantity> range = ranges.computeIfAbsent(name, this::findRange);
        return Range.of(type.cast(range.low()), type.cast(range.high()));
    }

    private Range<Quantity> findRange(String name) {
        Quantity low = get(name + LOW, Quantity.class);
        Quantity high = get(name + ".high", Quantity.class);
        try {
            return Range.of(low, high);
        } catch (InvalidInputException e) {
            throw e.within(name);
        }
    }

    /**
     * The parameter with its source.
     *
     * @throws InvalidInputException when there is no such parameter
     */
    public Parameter parameter(String name) {
        Parameter parameter = byName.get(name);
        if (parameter == null) {
            throw new InvalidInputException("parameter", name, "a name listed in parameters.tsv");
        }
        return parameter;
    }

    /**
     * The same set with one value changed. A value that is not the shipped one cites the house, not the shipped source.
     * A number that stands behind a safety rule or a published limit moves to the careful side only, see
     * {@link Parameter#house()}.
     *
     * @throws InvalidInputException for an unknown name, a value of another dimension, or a value that no house may set
     */
    public Parameters with(String name, Quantity value) {
        Parameter old = parameter(name);
        if (old.value().dimension() != value.dimension()) {
            throw new InvalidInputException(
                    name,
                    value.print(),
                    "a value in " + old.value().dimension().unit().symbol());
        }
        Parameter shipped = STANDARD.parameter(name);
        HouseBound house = shipped.house();
        if (!house.allows(value, shipped.value())) {
            throw new InvalidInputException(
                    name, value.print(), house.accepted(shipped.value()) + "; a safety rule or limit stands on it");
        }
        Map<String, Parameter> changed = new LinkedHashMap<>(byName);
        boolean asShipped = shipped.value().equals(value);
        changed.put(
                name,
                asShipped
                        ? shipped
                        : new Parameter(name, value, Sources.standard().get("house"), house));
        return new Parameters(changed);
    }

    /**
     * Checks every pair {@code name.low} and {@code name.high}. Values are set one by one, so that a set may be crossed
     * for a moment; whoever takes it as finished asks this.
     *
     * @return this set
     * @throws InvalidInputException naming the first range whose lower end is above its upper end
     */
    public Parameters requireRanges() {
        byName.keySet().stream()
                .filter(name -> name.endsWith(LOW))
                .map(name -> name.substring(0, name.length() - LOW.length()))
                .filter(name -> byName.containsKey(name + ".high"))
                .forEach(name -> range(name, Quantity.class));
        return this;
    }

    /** Names and values that differ from the shipped set, in the shipped order. */
    public Map<String, Quantity> retuned() {
        Map<String, Quantity> retuned = new LinkedHashMap<>();
        byName.forEach((name, parameter) -> {
            if (!STANDARD.byName.get(name).value().equals(parameter.value())) {
                retuned.put(name, parameter.value());
            }
        });
        return retuned;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Parameters that && byName.equals(that.byName);
    }

    @Override
    public int hashCode() {
        return Objects.hash(byName);
    }
}
