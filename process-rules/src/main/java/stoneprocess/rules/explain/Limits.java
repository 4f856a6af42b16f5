package stoneprocess.rules.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.parameter.Scale;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.rules.feature.BudgetClass;
import stoneprocess.rules.feature.CrewClass;
import stoneprocess.rules.feature.LoadClass;
import stoneprocess.rules.feature.ReopenClass;
import stoneprocess.rules.feature.SizeClass;
import stoneprocess.rules.feature.SupplyClass;

/**
 * Where the classes of measured answers meet, in the unit in which a quantity is kept, while the other answers stay as
 * they are. Good to a step of the quantity; which side a limit belongs to is for the facts to say.
 */
public final class Limits {
    private final Parameters parameters;
    private final FloorSurvey survey;
    private final Map<SurveyField<?>, Supplier<List<Double>>> byField = new HashMap<>();

    /**
     * @param survey whose other answers stay
     * @param parameters the numbers that part the classes
     */
    public Limits(FloorSurvey survey, Parameters parameters) {
        this.survey = survey;
        this.parameters = parameters;
        byField.put(SurveyField.AREA, () -> scale("floor-size", SizeClass.class));
        byField.put(SurveyField.FLOOR_LOAD, () -> scale("floor-load", LoadClass.class));
        byField.put(SurveyField.CREW, () -> scale("crew", CrewClass.class));
        byField.put(SurveyField.REOPENS_AFTER, () -> scale("reopening", ReopenClass.class));
        byField.put(SurveyField.GOAL_GLOSS, () -> scale("finish", Finish.class));
        byField.put(SurveyField.VOLTS, () -> supply(SurveyField.AMPS));
        byField.put(SurveyField.AMPS, () -> supply(SurveyField.VOLTS));
        byField.put(SurveyField.MOISTURE, () -> shifted(SurveyField.DRY_REFERENCE, 1));
        byField.put(SurveyField.DRY_REFERENCE, () -> shifted(SurveyField.MOISTURE, -1));
        byField.put(SurveyField.THICKNESS, this::thickness);
    }

    /** The limits of a field; none for one whose value no rule classifies. */
    public List<Double> of(SurveyField<?> field) {
        return byField.getOrDefault(field, List::of).get();
    }

    private <E extends Enum<E> & Term> List<Double> scale(String name, Class<E> classes) {
        return Scale.of(name, classes, parameters).limits().stream()
                .map(Quantity::kept)
                .toList();
    }

    private Optional<Double> kept(SurveyField<? extends Quantity> field) {
        return survey.answer(field).value().map(Quantity::kept);
    }

    private double part(String parameter) {
        return parameters.get(parameter, Share.class).percent() / 100;
    }

    private List<Double> supply(SurveyField<? extends Quantity> other) {
        return kept(other).stream()
                .flatMap(factor -> scale("supply", SupplyClass.class).stream()
                        .map(kilowatts -> kilowatts * 1000 / (factor * part("supply.continuous"))))
                .toList();
    }

    private List<Double> shifted(SurveyField<Share> other, int sign) {
        double tolerance = part("moisture.above-reference") * 100;
        return kept(other).map(value -> value + sign * tolerance).filter(value -> value >= 0).stream()
                .toList();
    }

    private List<Double> thickness() {
        List<Double> most = new ArrayList<>(scale("removal-budget", BudgetClass.class));
        Stream.of(DamageKind.SCRATCHES, DamageKind.LIPPAGE)
                .flatMap(kind ->
                        survey.zones().stream().map(zone -> zone.damages().get(kind)))
                .filter(Objects::nonNull)
                .flatMap(damage -> damage.depth().stream())
                .forEach(depth -> most.add(depth.millimetres()));
        return DoubleStream.of(part("removal-share.topping"), part("removal-share.stone"))
                .boxed()
                .flatMap(share -> most.stream().map(removal -> removal / share))
                .toList();
    }
}
