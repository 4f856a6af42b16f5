package stoneprocess.rules.internal.classify;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import stoneprocess.core.term.Term;
import stoneprocess.rules.feature.Feature;

/**
 * How a record of the feature room is built. Its only component is the set of its possible classes; a fact of which
 * there is one for each constant has that constant before it.
 *
 * @param type the record
 * @param classes the enum of its classes
 * @param constructor its canonical constructor
 */
record FeatureRecord<E extends Enum<E> & Term, F extends Feature<E>>(
        Class<F> type, Class<E> classes, Constructor<F> constructor) {
    static <E extends Enum<E> & Term, F extends Feature<E>> FeatureRecord<E, F> of(
            Class<F> type, Class<?>... components) {
        try {
            return new FeatureRecord<>(type, classesOf(type), type.getConstructor(components));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(type.getName() + " is not built from its possible classes", e);
        }
    }

    @SuppressWarnings("unchecked")
    private static <E extends Enum<E> & Term, F extends Feature<E>> Class<E> classesOf(Class<F> type) {
        for (Type parent : type.getGenericInterfaces()) {
            if (parent instanceof ParameterizedType feature
                    && Feature.class.isAssignableFrom((Class<?>) feature.getRawType())) {
                return (Class<E>) feature.getActualTypeArguments()[0];
            }
        }
        throw new IllegalStateException(type.getName() + " does not say which classes it has");
    }

    F make(Object... components) {
        try {
            return constructor.newInstance(components);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type.getName() + " cannot be built", e);
        }
    }
}
