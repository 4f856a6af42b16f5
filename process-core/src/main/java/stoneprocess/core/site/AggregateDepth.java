package stoneprocess.core.site;

import java.util.Objects;
import java.util.Optional;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.survey.AggregateShown;
import stoneprocess.core.survey.CementSurface;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;

/**
 * How deep concrete is cut until the aggregate shows that the owner wants. From memory of a chart that its association has
 * replaced; a trial on the slab decides.
 */
public final class AggregateDepth {
    private AggregateDepth() {}

    /**
     * From the depth of the next finer aggregate to its own, {@code aggregate-depth.*}; a slab that was ground before has
     * lost that of the fine.
     *
     * @return empty where none is to show, nobody told, or the floor may be no concrete
     */
    public static Optional<Range<Length>> of(FloorSurvey survey, KnownStone stone, Parameters parameters) {
        Objects.requireNonNull(survey, "survey");
        Objects.requireNonNull(stone, "stone");
        Objects.requireNonNull(parameters, "parameters");
        boolean ground = survey.answer(SurveyField.CEMENT_SURFACE).value().equals(Optional.of(CementSurface.GROUND));
        double gone = ground ? depth(AggregateShown.FINE, parameters) : 0;
        return survey.answer(SurveyField.AGGREGATE)
                .value()
                .filter(wanted -> wanted != AggregateShown.CREAM && stone.concrete())
                .map(wanted -> Range.of(
                        left(depth(AggregateShown.values()[wanted.ordinal() - 1], parameters), gone),
                        left(depth(wanted, parameters), gone)));
    }

    private static Length left(double millimetres, double gone) {
        return new Length(Math.max(0, millimetres - gone));
    }

    private static double depth(AggregateShown shown, Parameters parameters) {
        return shown == AggregateShown.CREAM
                ? 0
                : parameters.get("aggregate-depth." + shown.key(), Length.class).millimetres();
    }
}
