package stoneprocess.core.survey;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.NamedScale;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Range;

/** What kind of answer a field takes. */
public sealed interface FieldKind {
    /** One constant of an enum. */
    record Choice(Class<? extends Enum<?>> type) implements FieldKind {
        public Choice {
            Refuse.nulls(Choice.class, type);
        }
    }

    /** Any number of constants of an enum; none is a known answer. */
    record Choices(Class<? extends Enum<?>> type) implements FieldKind {
        public Choices {
            Refuse.nulls(Choices.class, type);
        }
    }

    /**
     * A quantity; {@code limits} are in the dimension's kept unit, both ends belong to it. {@code scale} makes classes of
     * it for the rules; empty when it is classified only together with other answers.
     */
    record Measure(Dimension dimension, Range<Double> limits, Optional<NamedScale<?>> scale) implements FieldKind {
        public Measure {
            Refuse.nulls(Measure.class, dimension, limits, scale);
        }
    }

    /** A name of the stone catalogue. */
    record StoneName() implements FieldKind {}

    /** Grits of the sequence in use; none is a known answer. */
    record Grades() implements FieldKind {}
}
