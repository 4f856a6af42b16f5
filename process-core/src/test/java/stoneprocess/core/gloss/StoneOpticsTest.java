package stoneprocess.core.gloss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Mineral;

class StoneOpticsTest {
    private static final Parameters STANDARD = Parameters.standard();
    private static final GlossCeiling MARBLE =
            GlossCeiling.of(Family.CALCITE_MARBLE).orElseThrow();

    @Property(tries = 500, seed = "1955")
    void roughness_and_gloss_are_inverse(
            @ForAll @DoubleRange(min = 0.5, max = 104.9) double gloss, @ForAll Mineral mineral) {
        GlossCeiling ceiling = GlossCeiling.of(MineralShares.pure(mineral));
        for (Geometry geometry : Geometry.values()) {
            Gloss read = new Gloss(Math.min(gloss, ceiling.at(geometry).gloss()));
            assertThat(OpticalRoughness.of(read, ceiling, geometry)
                            .gloss(ceiling, geometry)
                            .gloss())
                    .isCloseTo(read.gloss(), Offset.offset(1.5e-4));
        }
    }

    @Property(tries = 500, seed = "1955")
    void no_roughness_reads_over_the_ceiling_and_more_never_reads_more(
            @ForAll @DoubleRange(min = 0, max = 2000) double one,
            @ForAll @DoubleRange(min = 0, max = 2000) double other,
            @ForAll Geometry geometry) {
        Gloss smoother = new OpticalRoughness(Math.min(one, other)).gloss(MARBLE, geometry);
        Gloss rougher = new OpticalRoughness(Math.max(one, other)).gloss(MARBLE, geometry);
        assertThat(smoother).isLessThanOrEqualTo(MARBLE.at(geometry));
        assertThat(rougher).isLessThanOrEqualTo(smoother);
    }

    @Test
    void a_rough_face_leaves_the_formula_at_60_degrees_before_85() {
        OpticalRoughness honed = OpticalRoughness.of(new Gloss(5), MARBLE, Geometry.DEG_60);
        assertThat(honed.smoothAt(Geometry.DEG_60)).isFalse();
        assertThat(honed.smoothAt(Geometry.DEG_85)).isTrue();
        assertThat(OpticalRoughness.of(new Gloss(60), MARBLE, Geometry.DEG_60).smoothAt(Geometry.DEG_60))
                .isTrue();
    }

    @Test
    void every_stone_of_known_minerals_lies_under_the_ceiling_of_any_stone() {
        for (Family family : Family.values()) {
            GlossCeiling.of(family)
                    .ifPresent(ceiling -> assertThat(ceiling.at60())
                            .isLessThanOrEqualTo(GlossCeiling.ofAnyStone().at60()));
        }
        assertThat(GlossCeiling.of(Family.RESIN_TERRAZZO)).isEmpty();
    }

    @Test
    void a_reading_over_the_ceiling_is_told_from_one_that_is_too_high_for_the_grit() {
        Range<Gloss> of400 = Range.of(new Gloss(5), new Gloss(25));
        assertThat(check(24, of400)).isEqualTo(new GlossCheck(GlossSuspicion.NONE, Set.of()));
        assertThat(check(50, of400)).isEqualTo(new GlossCheck(GlossSuspicion.FILM, Set.of(Film.WATER, Film.COATING)));
        assertThat(check(75, of400)).isEqualTo(new GlossCheck(GlossSuspicion.FILM, Set.of(Film.COATING)));
        assertThat(check(98, of400)).isEqualTo(new GlossCheck(GlossSuspicion.FILM, Set.of()));
        assertThat(check(110, of400).suspicion()).isEqualTo(GlossSuspicion.OVER_CEILING);
        assertThat(GlossCheck.of(new Gloss(107), Geometry.DEG_60, MARBLE, STANDARD)
                        .suspicion())
                .isEqualTo(GlossSuspicion.NONE);
        assertThat(GlossCheck.of(new Gloss(109), Geometry.DEG_60, MARBLE, STANDARD)
                        .suspicion())
                .isEqualTo(GlossSuspicion.OVER_CEILING);
    }

    private static GlossCheck check(double gloss, Range<Gloss> ofGrit) {
        return GlossCheck.of(new Gloss(gloss), Geometry.DEG_60, MARBLE, ofGrit, STANDARD);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 105.5})
    void a_gloss_that_no_roughness_explains_is_refused(double gloss) {
        assertThatThrownBy(() -> OpticalRoughness.of(new Gloss(gloss), MARBLE, Geometry.DEG_60))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("gloss: ")
                .hasMessageContaining("ceiling");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void a_roughness_that_is_no_number_is_refused(double nanometres) {
        assertThatThrownBy(() -> new OpticalRoughness(nanometres))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("roughness: ");
    }

    @Test
    void an_impossible_paleness_is_refused() {
        assertThatThrownBy(() -> DiffuseLight.most(new Share(101), Geometry.DEG_60, STANDARD))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("paleness: ");
    }

    @Test
    void shares_that_do_not_make_a_whole_are_refused() {
        assertThatThrownBy(() -> MineralShares.of(Map.of(Mineral.CALCITE, new Share(90))))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("minerals: '90.0 % in all'");
        assertThatThrownBy(() -> MineralShares.of(Map.of())).isInstanceOf(InvalidInputException.class);
        assertThat(MineralShares.of(Map.of(Mineral.CALCITE, new Share(99.5)))
                        .shares()
                        .get(Mineral.CALCITE))
                .isEqualTo(new Share(99.5));
    }
}
