package stoneprocess.rules.internal.classify;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.parameter.NamedScale;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.stone.Body;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.rules.feature.BudgetClass;
import stoneprocess.rules.feature.SupplyClass;

/**
 * A figure computed from measured answers before limits part it into classes. It is linear in each of its answers, so
 * that the answer at which it meets a limit can be computed back.
 *
 * @param answers the fields that it is computed from
 * @param formula the figure from the kept values of the answers
 * @param limits where its classes meet, in the kept unit
 */
record DerivedFigure(
        List<SurveyField<? extends Quantity>> answers,
        BiFunction<List<Double>, Parameters, Double> formula,
        BiFunction<FloorSurvey, Parameters, List<Double>> limits) {
    /** Kinds of damage that may have to be ground out. */
    static final List<DamageKind> GROUND_OUT = List.of(DamageKind.SCRATCHES, DamageKind.LIPPAGE);

    /** Makes classes of {@link #SUPPLY}. */
    static final NamedScale<SupplyClass> SUPPLY_SCALE = new NamedScale<>("supply", SupplyClass.class);

    /** Makes classes of {@link #removal}. */
    static final NamedScale<BudgetClass> BUDGET_SCALE = new NamedScale<>("removal-budget", BudgetClass.class);

    /** Kilowatts that a circuit carries without a break: volts times amperes, less what is kept in reserve. */
    static final DerivedFigure SUPPLY = new DerivedFigure(
            List.of(SurveyField.VOLTS, SurveyField.AMPS),
            (values, parameters) -> values.get(0) * values.get(1) * parameters.part("supply.continuous") / 1000,
            (survey, parameters) -> kept(SUPPLY_SCALE, parameters));

    /** Percent by which a floor reads moister than the dry reference; below zero when it reads drier. */
    static final DerivedFigure MOISTURE_ABOVE_REFERENCE = new DerivedFigure(
            List.of(SurveyField.MOISTURE, SurveyField.DRY_REFERENCE),
            (values, parameters) -> values.get(0) - values.get(1),
            (survey, parameters) -> List.of(parameters.part("moisture.above-reference") * 100));

    /** Millimetres of edge beyond those of a narrow floor of the same area; below zero when there are fewer. */
    static final DerivedFigure EDGES_BEYOND_NARROW = new DerivedFigure(
            List.of(SurveyField.EDGES, SurveyField.AREA),
            (values, parameters) -> values.get(0)
                    - values.get(1)
                            * 1_000_000
                            / parameters.get("edges.narrow", Length.class).millimetres(),
            (survey, parameters) -> List.of(0.0));

    private static final List<DerivedFigure> ALL =
            List.of(SUPPLY, MOISTURE_ABOVE_REFERENCE, EDGES_BEYOND_NARROW, removal(Body.STONE), removal(Body.CEMENT));

    /** Millimetres that may be taken off a body in the life of the floor: a share of the thickness. */
    static DerivedFigure removal(Body body) {
        String share = body == Body.CEMENT ? "removal-share.topping" : "removal-share.stone";
        return new DerivedFigure(
                List.of(SurveyField.THICKNESS),
                (values, parameters) -> values.get(0) * parameters.part(share),
                (survey, parameters) -> Stream.concat(kept(BUDGET_SCALE, parameters).stream(), depths(survey))
                        .toList());
    }

    private static Stream<Double> depths(FloorSurvey survey) {
        return GROUND_OUT.stream()
                .flatMap(kind ->
                        survey.zones().stream().map(zone -> zone.damages().get(kind)))
                .filter(Objects::nonNull)
                .flatMap(damage -> damage.depth().stream())
                .map(Quantity::kept);
    }

    private static List<Double> kept(NamedScale<?> scale, Parameters parameters) {
        return scale.in(parameters).limits().stream().map(Quantity::kept).toList();
    }

    /** The figure of a survey; empty when one of its answers is not known. */
    Optional<Double> of(FloorSurvey survey, Parameters parameters) {
        return of(answer -> survey.answer(answer).value().map(Quantity::kept), parameters);
    }

    private Optional<Double> of(
            Function<SurveyField<? extends Quantity>, Optional<Double>> values, Parameters parameters) {
        List<Double> known = answers.stream()
                .flatMap(answer -> values.apply(answer).stream())
                .toList();
        return known.size() == answers.size() ? Optional.of(formula.apply(known, parameters)) : Optional.empty();
    }

    /** Where classes of a measured answer meet, by its own scale or by figures that are derived from it. */
    static List<Double> limits(SurveyField<?> field, FloorSurvey survey, Parameters parameters) {
        Stream<Double> own = field.scale().stream().flatMap(scale -> kept(scale, parameters).stream());
        Stream<Double> derived = ALL.stream()
                .filter(figure -> figure.answers().contains(field))
                .flatMap(figure -> figure.met(field, survey, parameters));
        return Stream.concat(own, derived).toList();
    }

    /** The values of an answer at which the figure meets its limits; none while another answer is not known. */
    private Stream<Double> met(SurveyField<?> field, FloorSurvey survey, Parameters parameters) {
        Optional<Double> atZero = with(field, 0, survey, parameters);
        Optional<Double> atOne = with(field, 1, survey, parameters);
        return atZero.stream()
                .flatMap(zero -> limits.apply(survey, parameters).stream()
                        .map(limit -> (limit - zero) / (atOne.orElseThrow() - zero)));
    }

    private Optional<Double> with(SurveyField<?> field, double value, FloorSurvey survey, Parameters parameters) {
        return of(
                answer -> answer.equals(field)
                        ? Optional.of(value)
                        : survey.answer(answer).value().map(Quantity::kept),
                parameters);
    }

    /** The scales that part derived figures into classes. */
    static List<NamedScale<?>> scales() {
        return List.of(SUPPLY_SCALE, BUDGET_SCALE);
    }
}
