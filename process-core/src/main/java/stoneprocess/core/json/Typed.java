package stoneprocess.core.json;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * A class with its type arguments.
 *
 * @param raw the class
 * @param arguments its type arguments; none where the class takes none
 */
record Typed(Class<?> raw, List<Typed> arguments) {
    static Typed of(Class<?> raw) {
        return new Typed(raw, List.of());
    }

    /** A type as it is declared in this class, whose type arguments take the places of its variables. */
    Typed resolve(Type declared) {
        if (declared instanceof Class<?> found) {
            return of(found);
        }
        if (declared instanceof ParameterizedType found) {
            return new Typed(
                    (Class<?>) found.getRawType(),
                    Arrays.stream(found.getActualTypeArguments())
                            .map(this::resolve)
                            .toList());
        }
        if (declared instanceof TypeVariable<?> variable) {
            int position = List.of(raw.getTypeParameters()).indexOf(variable);
            return arguments.isEmpty() ? resolve(variable.getBounds()[0]) : arguments.get(position);
        }
        return of(Object.class);
    }

    Typed argument(int position) {
        return arguments.get(position);
    }

    /** What the definition of this type is called. */
    String name() {
        return raw.getEnclosingClass() != null && raw.getSimpleName().startsWith("Of") ? longName() : simpleName();
    }

    private String simpleName() {
        return kebab(raw.getSimpleName())
                + arguments.stream()
                        .filter(argument -> argument.raw() != Object.class)
                        .map(argument -> "-of-" + argument.name())
                        .collect(Collectors.joining());
    }

    /** The same with the class or package around it. */
    String longName() {
        Class<?> around = raw.getEnclosingClass();
        String packageName = raw.getPackageName();
        return (around == null
                        ? packageName.substring(packageName.lastIndexOf('.') + 1)
                        : kebab(around.getSimpleName()))
                + "-" + simpleName();
    }

    /** The JSON schema of a type with a name of its own. */
    Map<String, Object> refer(Definitions definitions, Supplier<Map<String, Object>> schema) {
        return definitions.refer(name(), longName(), this, schema);
    }

    /** {@code mayBe} as {@code may-be}. */
    static String kebab(String name) {
        return name.replaceAll("(?<=[a-z0-9])([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }
}
