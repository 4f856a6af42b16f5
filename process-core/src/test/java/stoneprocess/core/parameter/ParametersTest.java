package stoneprocess.core.parameter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.LippageClass;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.WavinessClass;
import stoneprocess.core.term.Term;

class ParametersTest {
    private enum Size implements Term {
        TINY,
        SMALL,
        MIDDLE,
        LARGE
    }

    private enum Load implements Term {
        LIGHT,
        ORDINARY
    }

    private enum Supply implements Term {
        TOO_WEAK,
        LIGHT,
        STANDARD,
        STRONG
    }

    private enum Budget implements Term {
        TINY,
        SMALL,
        AMPLE
    }

    static Stream<Scale<?>> scales() {
        Parameters standard = Parameters.standard();
        return Stream.of(
                Scale.of("lippage", LippageClass.class, standard),
                Scale.of("waviness", WavinessClass.class, standard),
                Scale.of("finish", Finish.class, standard),
                Scale.of("floor-size", Size.class, standard),
                Scale.of("floor-load", Load.class, standard),
                Scale.of("supply", Supply.class, standard),
                Scale.of("removal-budget", Budget.class, standard),
                Scale.of(
                        "scratch-depth",
                        List.of(
                                ScratchClass.FELT_BY_NAIL,
                                ScratchClass.FELT_BY_COIN,
                                ScratchClass.DEEP,
                                ScratchClass.GOUGED),
                        standard));
    }

    @ParameterizedTest
    @MethodSource("scales")
    void each_limit_belongs_to_the_class_above_it(Scale<?> scale) {
        for (int i = 0; i < scale.limits().size(); i++) {
            Quantity limit = scale.limits().get(i);
            BigDecimal step = BigDecimal.ONE.movePointLeft(limit.dimension().decimals());
            Quantity below = Quantity.of(
                    limit.decimal().subtract(step, MathContext.DECIMAL64),
                    limit.dimension().unit());
            assertThat((Object) scale.classify(below))
                    .as(scale.name())
                    .isEqualTo(scale.classes().get(i));
            assertThat((Object) scale.classify(limit))
                    .as(scale.name())
                    .isEqualTo(scale.classes().get(i + 1));
        }
    }

    @Test
    void the_scales_under_test_use_every_number_that_bears_their_name() {
        List<String> limits = scales().flatMap(
                        scale -> scale.classes().stream().skip(1).map(next -> scale.name() + "." + next.key()))
                .toList();
        List<String> prefixes = scales().map(scale -> scale.name() + ".").toList();
        assertThat(Parameters.standard().all().stream()
                        .map(Parameter::name)
                        .filter(name -> !name.equals("supply.continuous"))
                        .filter(name -> prefixes.stream().anyMatch(name::startsWith)))
                .containsExactlyInAnyOrderElementsOf(limits);
    }

    @ParameterizedTest
    @MethodSource("scales")
    void a_scale_starts_at_zero_and_has_no_end(Scale<?> scale) {
        Dimension dimension = scale.limits().get(0).dimension();
        Quantity zero = Quantity.of(BigDecimal.ZERO, dimension.unit());
        Quantity huge = Quantity.of(BigDecimal.valueOf(1e12), dimension.unit());
        assertThat((Object) scale.classify(zero)).isEqualTo(scale.classes().get(0));
        assertThat((Object) scale.classify(huge))
                .isEqualTo(scale.classes().get(scale.classes().size() - 1));
    }

    @Test
    void a_value_of_another_dimension_is_not_classified() {
        Scale<LippageClass> scale = Scale.of("lippage", LippageClass.class, Parameters.standard());
        assertThatThrownBy(() -> scale.classify(new Mass(1))).isInstanceOf(InvalidInputException.class);
    }

    @Test
    void a_scale_whose_limits_are_not_listed_is_refused() {
        assertThatThrownBy(() -> Scale.of("lippage", Finish.class, Parameters.standard()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("parameter: 'lippage.satin' is not accepted");
    }

    @Test
    void equal_limits_and_a_first_limit_of_zero_are_refused() {
        Parameters equal = Parameters.standard().with("lippage.moderate", new Length(0.8));
        assertThatThrownBy(() -> Scale.of("lippage", LippageClass.class, equal))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage(
                        "lippage.moderate: '0.8 mm' is not accepted; accepted: more than 0.8 mm, the limit below it");
        Parameters zero = Parameters.standard().with("lippage.slight", new Length(0));
        assertThatThrownBy(() -> Scale.of("lippage", LippageClass.class, zero))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("lippage.slight: '0 mm' is not accepted; accepted: more than zero");
    }

    @Test
    void a_range_runs_from_low_to_high_and_a_crossed_one_is_refused_by_name() {
        assertThat(Parameters.standard().range("test-area", Area.class)).isEqualTo(Range.of(new Area(1), new Area(4)));
        Parameters crossed = Parameters.standard().with("test-area.low", new Area(5));
        assertThatThrownBy(() -> crossed.range("test-area", Area.class))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("test-area.range: '5 m2 to 4 m2' is not accepted");
    }

    @Test
    void every_low_end_of_the_shipped_set_has_a_high_end_that_is_not_below_it() {
        List<String> lows = Parameters.standard().all().stream()
                .map(Parameter::name)
                .filter(name -> name.endsWith(".low"))
                .filter(name -> !name.equals("slip-pendulum.low")) // where the class of low potential begins
                .map(name -> name.substring(0, name.length() - ".low".length()))
                .toList();
        assertThat(lows).hasSizeGreaterThan(8).allSatisfy(name -> {
            Range<Quantity> range = Parameters.standard().range(name, Quantity.class);
            assertThat(range.low().dimension()).isEqualTo(range.high().dimension());
        });
    }

    @Test
    void a_value_is_given_as_the_type_asked_for() {
        assertThat(Parameters.standard().get("lippage.high", Length.class)).isEqualTo(new Length(3));
        assertThatThrownBy(() -> Parameters.standard().get("lippage.high", Mass.class))
                .isInstanceOf(ClassCastException.class);
        assertThatThrownBy(() -> Parameters.standard().get("lippage.none", Length.class))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("parameter: 'lippage.none'");
    }

    @Test
    void sets_with_equal_numbers_are_equal_and_retuning_leaves_the_old_set_alone() {
        Parameters one = Parameters.standard().with("finish.satin", new Gloss(20));
        Parameters other = Parameters.standard().with("finish.satin", new Gloss(20));
        assertThat(one).isEqualTo(other).hasSameHashCodeAs(other).isNotEqualTo(Parameters.standard());
        assertThat(one.with("finish.satin", new Gloss(15))).isEqualTo(Parameters.standard());
        assertThat(Parameters.standard().get("finish.satin", Gloss.class)).isEqualTo(new Gloss(15));
    }

    @Test
    void limits_that_do_not_rise_are_refused() {
        Parameters crossed = Parameters.standard().with("lippage.moderate", new Length(0.5));
        assertThatThrownBy(() -> Scale.of("lippage", LippageClass.class, crossed))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("lippage.moderate")
                .hasMessageContaining("0.8 mm");
    }

    @Test
    void a_retuned_number_moves_the_limit_and_is_listed() {
        Parameters retuned = Parameters.standard().with("finish.polish", new Gloss(55));
        assertThat(Scale.of("finish", Finish.class, retuned).classify(new Gloss(58)))
                .isEqualTo(Finish.POLISH);
        assertThat(retuned.retuned()).containsOnlyKeys("finish.polish");
        assertThat(retuned.parameter("finish.polish").source().id()).isEqualTo("house");
        assertThat(retuned.with("finish.polish", new Gloss(60))).isEqualTo(Parameters.standard());
        assertThat(Parameters.standard().retuned()).isEmpty();
    }

    @Test
    void an_unknown_name_and_a_wrong_dimension_are_refused() {
        assertThatThrownBy(() -> Parameters.standard().with("lippage.huge", new Length(9)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("lippage.huge");
        assertThatThrownBy(() -> Parameters.standard().with("lippage.high", new Mass(9)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("a value in mm");
    }

    @Test
    void a_number_behind_a_safety_rule_moves_to_the_careful_side_only() {
        for (Parameter parameter : Parameters.standard().all()) {
            Quantity shipped = parameter.value();
            BigDecimal step = BigDecimal.ONE.movePointLeft(shipped.dimension().decimals());
            Quantity more =
                    Quantity.of(shipped.decimal().add(step), shipped.dimension().unit());
            assertThat(accepts(parameter.name(), shipped)).as(parameter.name()).isTrue();
            assertThat(accepts(parameter.name(), more))
                    .as(parameter.name())
                    .isEqualTo(parameter.house() == HouseBound.FREE || parameter.house() == HouseBound.AT_LEAST);
            if (shipped.kept() > 0) {
                Quantity less = Quantity.of(
                        shipped.decimal().subtract(step), shipped.dimension().unit());
                assertThat(accepts(parameter.name(), less))
                        .as(parameter.name())
                        .isEqualTo(parameter.house() == HouseBound.FREE || parameter.house() == HouseBound.AT_MOST);
            }
        }
        assertThatThrownBy(() -> Parameters.standard().with("silica.filter", new Share(98)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("silica.filter: '98 %' is not accepted; accepted: 99 % or more; "
                        + "a safety rule or limit stands on it");
        assertThatThrownBy(() -> Parameters.standard().with("noise.day", new TimeSpan(600)))
                .hasMessageContaining("accepted: 480 min only");
    }

    private static boolean accepts(String name, Quantity value) {
        try {
            Parameters.standard().with(name, value);
            return true;
        } catch (InvalidInputException e) {
            assertThat(e.field()).isEqualTo(name);
            return false;
        }
    }

    /** Limits of a regulation or a safety guide never belong to the house; retuned they would still bear its name. */
    @Test
    void every_number_of_the_exposure_limits_has_a_bound() {
        List<String> exposure = List.of("noise.", "carbon-monoxide.", "silica.", "slip-", "slurry-ph.", "lifting.");
        assertThat(Parameters.standard().all())
                .filteredOn(parameter -> exposure.stream().anyMatch(parameter.name()::startsWith))
                .hasSizeGreaterThan(35)
                .allSatisfy(parameter ->
                        assertThat(parameter.house()).as(parameter.name()).isNotEqualTo(HouseBound.FREE));
    }

    @Test
    void a_finished_set_has_no_crossed_range_though_it_may_be_crossed_for_a_moment() {
        Parameters crossed = Parameters.standard().with("test-area.low", new Area(5));
        assertThatThrownBy(crossed::requireRanges)
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("test-area.range: '5 m2 to 4 m2' is not accepted");
        assertThat(crossed.with("test-area.high", new Area(6)).requireRanges().retuned())
                .containsOnlyKeys("test-area.low", "test-area.high");
    }

    @Test
    void every_number_says_where_it_comes_from() {
        long published = Parameters.standard().all().stream()
                .filter(parameter -> parameter.source().published())
                .count();
        long all = Parameters.standard().all().size();
        System.out.printf(
                "Parameters: %d of %d published (%.0f %%), the rest less firm%n",
                published, all, 100.0 * published / all);
        assertThat(Parameters.standard().all())
                .allSatisfy(parameter -> assertThat(parameter.source()).isNotNull());
        assertThat(published).isPositive();
    }
}
