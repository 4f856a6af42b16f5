package stoneprocess.core.gloss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.stone.Mineral;
import stoneprocess.core.stone.RefractiveIndex;

/** Specular gloss against its definition in ISO 2813: 100 GU is black glass of index 1.567 at the same geometry. */
class FresnelValidationTest {
    @ParameterizedTest
    @EnumSource(Geometry.class)
    void black_glass_reads_100_at_every_geometry(Geometry geometry) {
        assertThat(Fresnel.gloss(1.567, geometry).gloss()).isEqualTo(100);
    }

    /** Fresnel's formula, computed by hand from ISO 2813's index. */
    @ParameterizedTest
    @CsvSource({"DEG_20, 0.049078", "DEG_60, 0.100056", "DEG_85, 0.619148"})
    void black_glass_reflects_what_the_formula_says(Geometry geometry, double reflectance) {
        assertThat(Fresnel.reflectance(1.567, geometry)).isCloseTo(reflectance, Offset.offset(5e-7));
    }

    /** ISO 2813: metallic mirrors read about 2000, 1000 and 160 GU at 20, 60 and 85 degrees. */
    @ParameterizedTest
    @CsvSource({"DEG_20, 2000, 50", "DEG_60, 1000, 10", "DEG_85, 160, 3"})
    void a_perfect_mirror_reads_the_end_of_the_scale(Geometry geometry, double gloss, double tolerance) {
        assertThat(Fresnel.mirror(geometry).gloss()).isCloseTo(gloss, Offset.offset(tolerance));
    }

    /** Gloss at 60 degrees by index, computed from the same definition. */
    @ParameterizedTest
    @CsvSource({
        "1.333, 59.7",
        "1.40, 71.9",
        "1.46, 82.4",
        "1.50, 89.1",
        "1.54, 95.7",
        "1.60, 105.2",
        "1.65, 112.8",
        "1.70, 120.3",
        "1.80, 134.6"
    })
    void gloss_at_60_degrees_rises_with_the_index(double index, double gloss) {
        assertThat(Fresnel.gloss(index, Geometry.DEG_60).gloss()).isCloseTo(gloss, Offset.offset(0.06));
    }

    /**
     * Mean gloss over the principal indices of university optical mineralogy tables, computed from the same definition:
     * the ceiling of a smooth polycrystal. The tables give dolomite's ordinary index as 1.679 to 1.681, worth 0.2 GU.
     */
    @ParameterizedTest
    @CsvSource({"CALCITE, 105.0, 0.06", "DOLOMITE, 107.8, 0.2", "QUARTZ, 96.8, 0.06"})
    void a_smooth_polycrystal_reads_the_mean_over_its_indices(Mineral mineral, double gloss, double tolerance) {
        assertThat(mean(mineral)).isCloseTo(gloss, Offset.offset(tolerance));
    }

    /** 30 % quartz, 35 % orthoclase, 25 % plagioclase and 10 % biotite read about 96.2; albite stands for oligoclase. */
    @Test
    void a_smooth_granite_reads_the_mean_over_its_minerals() {
        double granite = 0.30 * mean(Mineral.QUARTZ)
                + 0.35 * mean(Mineral.ORTHOCLASE)
                + 0.25 * mean(Mineral.ALBITE)
                + 0.10 * mean(Mineral.BIOTITE);
        assertThat(granite).isCloseTo(96.2, Offset.offset(1.0));
    }

    private static double mean(Mineral mineral) {
        return RefractiveIndex.of(mineral).principal().stream()
                .mapToDouble(index -> Fresnel.gloss(index, Geometry.DEG_60).gloss())
                .average()
                .orElseThrow();
    }

    /** At right angles Fresnel's formula is ((n - 1) / (n + 1))^2; at 20 degrees it is less than 2 % off. */
    @ParameterizedTest
    @ValueSource(doubles = {1.333, 1.5, 1.567, 1.658, 2.4})
    void near_the_upright_reflection_is_that_at_right_angles(double index) {
        double upright = StrictMath.pow((index - 1) / (index + 1), 2);
        assertThat(Fresnel.reflectance(index, Geometry.DEG_20)).isCloseTo(upright, Offset.offset(0.02 * upright));
    }

    @Test
    void a_face_of_the_index_of_air_reflects_nothing() {
        assertThat(Fresnel.reflectance(1, Geometry.DEG_20)).isZero();
        assertThat(Fresnel.gloss(1, Geometry.DEG_85)).isEqualTo(new Gloss(0));
    }

    /** ISO 2813 and ASTM D523 measure at 20, 60 and 85 degrees. */
    @Test
    void meters_read_at_20_60_and_85_degrees() {
        assertThat(Geometry.values()).extracting(Geometry::degrees).containsExactly(20, 60, 85);
        assertThat(Geometry.values()).extracting(Geometry::key).containsExactly("20", "60", "85");
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 4})
    void both_ends_of_the_range_of_the_index_are_accepted(double index) {
        assertThat(Fresnel.reflectance(index, Geometry.DEG_60)).isBetween(0.0, 1.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.9, 0.9999, 4.0001, 4.1, -1.5, Double.NaN, Double.POSITIVE_INFINITY})
    void an_index_outside_its_range_is_refused(double index) {
        assertThatThrownBy(() -> Fresnel.reflectance(index, Geometry.DEG_60))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("1 to 4");
    }
}
