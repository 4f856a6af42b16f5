package stoneprocess.core.estimate;

import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;

/** Which of the three figures is computed. */
enum Case {
    LOW,
    LIKELY,
    HIGH;

    /** The end of a range that belongs to this case, in the kept unit; the middle for the likely one. */
    double of(Range<? extends Quantity> range) {
        return between(range.low().kept(), range.high().kept());
    }

    double ofWhole(Range<Integer> range) {
        return between(range.low(), range.high());
    }

    private double between(double low, double high) {
        return switch (this) {
            case LOW -> low;
            case LIKELY -> (low + high) / 2;
            case HIGH -> high;
        };
    }

    Case opposite() {
        return switch (this) {
            case LOW -> HIGH;
            case LIKELY -> LIKELY;
            case HIGH -> LOW;
        };
    }

    static <T extends Comparable<? super T>> Spread<T> spread(ToDoubleFunction<Case> value, DoubleFunction<T> make) {
        return new Spread<>(
                make.apply(value.applyAsDouble(LOW)),
                make.apply(value.applyAsDouble(LIKELY)),
                make.apply(value.applyAsDouble(HIGH)));
    }
}
