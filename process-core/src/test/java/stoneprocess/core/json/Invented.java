package stoneprocess.core.json;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import stoneprocess.core.estimate.Money;
import stoneprocess.core.estimate.Spread;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.Sources;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;

/** Invented values of any record, found from its components; texts are all the same, so that names fit together. */
final class Invented {
    private final Random random;

    Invented(long seed) {
        random = new Random(seed);
    }

    Object of(Typed type) throws ReflectiveOperationException {
        Class<?> raw = type.raw();
        if (raw == String.class) {
            return "x";
        }
        if (raw == boolean.class) {
            return random.nextBoolean();
        }
        if (raw == int.class || raw == Integer.class) {
            return 1 + random.nextInt(9);
        }
        if (raw == double.class) {
            return random.nextInt(1000) / 1000.0 + 1;
        }
        if (raw == BigDecimal.class) {
            return BigDecimal.valueOf(random.nextInt(100_000), 2);
        }
        if (raw == Parameters.class) {
            return Parameters.standard();
        }
        if (raw == Money.class) {
            return new Money(BigDecimal.valueOf(random.nextInt(100_000), 2), "crowns");
        }
        if (raw == Citation.class) {
            return one(List.copyOf(Sources.standard().all()));
        }
        if (raw == AbrasiveGrade.class) {
            return one(GritSequence.standard().grades());
        }
        if (raw.isEnum()) {
            return one(List.of(raw.getEnumConstants()));
        }
        if (Quantity.class.isAssignableFrom(raw)) {
            return quantity(raw);
        }
        if (raw == Range.class || raw == Spread.class) {
            Object[] figures = {of(type.argument(0)), of(type.argument(0)), of(type.argument(0))};
            if (type.argument(0).raw() == Quantity.class) {
                Arrays.fill(figures, figures[0]);
            }
            Arrays.sort(figures);
            return raw == Range.class ? range(figures) : spread(figures);
        }
        if (raw == Optional.class) {
            return random.nextBoolean() ? Optional.of(of(type.argument(0))) : Optional.empty();
        }
        if (raw == List.class) {
            return List.of(of(type.argument(0)));
        }
        if (raw == Set.class) {
            return Set.of(of(type.argument(0)));
        }
        if (raw == Map.class) {
            return Map.of(of(type.argument(0)), of(type.argument(1)));
        }
        if (raw.isSealed()) {
            return of(Typed.of(one(List.of(raw.getPermittedSubclasses()))));
        }
        return record(type);
    }

    private <T> T one(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    private Object record(Typed type) throws ReflectiveOperationException {
        RecordComponent[] components = type.raw().getRecordComponents();
        Object[] values = new Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            values[i] = of(type.resolve(components[i].getGenericType()));
            types[i] = components[i].getType();
        }
        return type.raw().getConstructor(types).newInstance(values);
    }

    private Object quantity(Class<?> raw) {
        boolean manyPercent = raw == Share.class && random.nextBoolean();
        BigDecimal value = BigDecimal.valueOf(1 + random.nextInt(140_000), manyPercent ? 2 : 4);
        List<Dimension> dimensions = Arrays.stream(Dimension.values())
                .filter(dimension -> raw.isAssignableFrom(dimension.type()))
                .toList();
        return Quantity.of(value, one(dimensions).unit());
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Object range(Object[] figures) {
        return Range.of((Comparable) figures[0], (Comparable) figures[2]);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Object spread(Object[] figures) {
        return new Spread((Comparable) figures[0], (Comparable) figures[1], (Comparable) figures[2]);
    }
}
