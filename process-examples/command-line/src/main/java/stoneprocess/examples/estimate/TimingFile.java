package stoneprocess.examples.estimate;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.estimate.CrewTiming;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Speed;

/** A crew's own times as lines {@code resin-800.field = 5-7 m2/h} and {@code resin-800.edges = 4 m/h}. */
public final class TimingFile {
    private static final String FIELD = ".field";
    private static final String EDGES = ".edges";

    private TimingFile() {}

    /**
     * Reads the times.
     *
     * @throws InvalidInputException for a line of another form
     */
    public static List<CrewTiming> read(String text) {
        Settings settings = Settings.read("timing", text);
        Set<String> steps = new LinkedHashSet<>();
        for (String name : settings.names()) {
            if (!name.endsWith(FIELD) && !name.endsWith(EDGES)) {
                throw new InvalidInputException(
                        "timing", name, "the key of a step with .field or .edges, for example resin-800.field");
            }
            steps.add(name.substring(0, name.length() - FIELD.length()));
        }
        return steps.stream()
                .map(step -> new CrewTiming(
                        step,
                        get(settings, step + FIELD, AreaRate.class, "5-7 m2/h"),
                        get(settings, step + EDGES, Speed.class, "4 m/h")))
                .toList();
    }

    private static <Q extends Quantity> Optional<Range<Q>> get(
            Settings settings, String name, Class<Q> type, String example) {
        return settings.get(name).map(text -> Amounts.range(text, settings.path(name), type, example));
    }
}
