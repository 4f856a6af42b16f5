package stoneprocess.core.gloss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.problem.InvalidInputException;
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

    /** University optical mineralogy tables: calcite 1.658 and 1.486; the mean over the indices is about 105 GU. */
    @Test
    void smooth_calcite_marble_reads_about_105_at_60_degrees() {
        List<Double> indices = RefractiveIndex.of(Mineral.CALCITE).principal();
        assertThat(indices).containsExactly(1.658, 1.658, 1.486);
        double mean = indices.stream()
                .mapToDouble(index -> Fresnel.gloss(index, Geometry.DEG_60).gloss())
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(105.0, Offset.offset(0.5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.9, 4.1, Double.NaN})
    void an_index_outside_its_range_is_refused(double index) {
        assertThatThrownBy(() -> Fresnel.reflectance(index, Geometry.DEG_60))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("1 to 4");
    }
}
