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
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.LippageClass;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.WavinessClass;

class ParametersTest {
    static Stream<Scale<?>> scales() {
        Parameters standard = Parameters.standard();
        return Stream.of(
                Scale.of("lippage", LippageClass.class, standard),
                Scale.of("waviness", WavinessClass.class, standard),
                Scale.of("finish", Finish.class, standard),
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
    void limits_that_do_not_rise_are_refused() {
        Parameters crossed = Parameters.standard().with("lippage.moderate", new Length(0.5));
        assertThatThrownBy(() -> Scale.of("lippage", LippageClass.class, crossed))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("lippage.moderate")
                .hasMessageContaining("0.8 mm");
    }

    @Test
    void a_retuned_number_moves_the_limit_and_is_listed() {
        Parameters retuned = Parameters.standard().with("finish.polish", new Gloss(65));
        assertThat(Scale.of("finish", Finish.class, retuned).classify(new Gloss(62)))
                .isEqualTo(Finish.SEMI_GLOSS);
        assertThat(retuned.retuned()).containsOnlyKeys("finish.polish");
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
    void every_number_says_where_it_comes_from() {
        long published = Parameters.standard().all().stream()
                .filter(parameter -> parameter.source().published())
                .count();
        long all = Parameters.standard().all().size();
        System.out.printf("Parameters: %d, of which %d published, the rest common practice%n", all, published);
        assertThat(Parameters.standard().all())
                .allSatisfy(parameter -> assertThat(parameter.source()).isNotNull());
        assertThat(published).isPositive();
    }
}
