package stoneprocess.core.gloss;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Mineral;
import stoneprocess.core.stone.RefractiveIndex;

/** Ceilings, attenuation, receptors and the choice of angle against publications. */
class StoneOpticsValidationTest {
    private static final Parameters STANDARD = Parameters.standard();
    private static final double SODIUM_UM = 0.5893;

    /** Ghosh, Optics Communications 163 (1999) 95: n^2 - 1 = C1 + C2 L^2 / (L^2 - C3) + C4 L^2 / (L^2 - C5). */
    private static final Map<String, double[]> GHOSH_1999 = Map.of(
            "calcite-o", new double[] {0.73358749, 0.96464345, 0.0194325203, 1.82831454, 120},
            "calcite-e", new double[] {0.35859695, 0.82427830, 0.0106689543, 0.14429128, 120},
            "quartz-o", new double[] {0.28604141, 1.07044083, 0.0100585997, 1.10202242, 100},
            "quartz-e", new double[] {0.28851804, 1.09509924, 0.0102101864, 1.15662475, 100});

    private static double sellmeier(String ray, double micrometres) {
        double[] c = GHOSH_1999.get(ray);
        double square = micrometres * micrometres;
        return StrictMath.sqrt(1 + c[0] + c[1] * square / (square - c[2]) + c[3] * square / (square - c[4]));
    }

    /** The sodium-light table of university optical mineralogy agrees with Ghosh's dispersion to the third decimal. */
    @ParameterizedTest
    @CsvSource({"CALCITE, calcite-o, 0", "CALCITE, calcite-e, 2", "QUARTZ, quartz-o, 0", "QUARTZ, quartz-e, 2"})
    void the_sodium_table_agrees_with_published_dispersion(Mineral mineral, String ray, int direction) {
        assertThat(RefractiveIndex.of(mineral).principal().get(direction))
                .isCloseTo(sellmeier(ray, SODIUM_UM), Offset.offset(0.0007));
    }

    /** Taking indices in sodium light instead of the eye's green (555 nm) moves a ceiling by less than 0.5 GU. */
    @ParameterizedTest
    @CsvSource({"CALCITE, calcite", "QUARTZ, quartz"})
    void the_colour_of_light_hardly_moves_a_ceiling(Mineral mineral, String name) {
        double green = List.of(name + "-o", name + "-o", name + "-e").stream()
                .mapToDouble(ray ->
                        Fresnel.gloss(sellmeier(ray, 0.555), Geometry.DEG_60).gloss())
                .average()
                .orElseThrow();
        assertThat(GlossCeiling.of(MineralShares.pure(mineral)).at60().gloss()).isCloseTo(green, Offset.offset(0.5));
    }

    /**
     * Ceilings computed from the definition of ISO 2813 and optical mineralogy tables. Albite stands for oligoclase and
     * augite for the gabbro's 5 % of hornblende.
     */
    @ParameterizedTest
    @CsvSource({
        "CALCITE_MARBLE, 105.0, 0.06",
        "DOLOMITE_MARBLE, 107.8, 0.2",
        "QUARTZITE, 96.8, 0.06",
        "GRANITE, 96.2, 1.0",
        "BASALT_GABBRO, 108.9, 1.0"
    })
    void a_smooth_stone_reads_its_ceiling(Family family, double gloss, double tolerance) {
        assertThat(GlossCeiling.of(family).orElseThrow().at(Geometry.DEG_60).gloss())
                .isCloseTo(gloss, Offset.offset(tolerance));
    }

    /** ISO 2813's definition with the index of water and of acrylic resin: 59.7 and 89 GU at 60 degrees. */
    @ParameterizedTest
    @CsvSource({"WATER, 59.7", "COATING, 89.1"})
    void a_film_reads_at_most_the_gloss_of_its_own_index(Film film, double gloss) {
        assertThat(film.cap(Geometry.DEG_60).gloss()).isCloseTo(gloss, Offset.offset(0.06));
    }

    /** Bennett and Porteus (1961) with the angles of ISO 2813: ln g20 / ln g60 = 3.5321, ln g60 / ln g85 = 32.91. */
    @ParameterizedTest
    @CsvSource({"20", "60", "120"})
    void the_angles_of_a_meter_are_tied_to_one_another(double nanometres) {
        GlossCeiling ceiling = GlossCeiling.of(MineralShares.pure(Mineral.CALCITE));
        OpticalRoughness face = new OpticalRoughness(nanometres);
        double g20 = attenuation(face, ceiling, Geometry.DEG_20);
        double g60 = attenuation(face, ceiling, Geometry.DEG_60);
        double g85 = attenuation(face, ceiling, Geometry.DEG_85);
        assertThat(g20 / g60).isCloseTo(3.5321, Offset.offset(0.005));
        assertThat(g60 / g85).isCloseTo(32.91, Offset.offset(0.2));
    }

    private static double attenuation(OpticalRoughness face, GlossCeiling ceiling, Geometry geometry) {
        return StrictMath.log(
                face.gloss(ceiling, geometry).gloss() / ceiling.at(geometry).gloss());
    }

    /** Bennett and Porteus (1961): at sigma cos t of lambda / 4 pi a face keeps 1/e of its specular light. */
    @Test
    void at_the_unit_of_the_formula_a_face_keeps_one_part_in_e() {
        GlossCeiling ceiling = GlossCeiling.of(MineralShares.pure(Mineral.QUARTZ));
        double sigma = OpticalRoughness.WAVELENGTH_NM / (4 * StrictMath.PI * 0.5);
        assertThat(new OpticalRoughness(sigma).gloss(ceiling, Geometry.DEG_60).gloss())
                .isCloseTo(ceiling.at60().gloss() / StrictMath.E, Offset.offset(1e-3));
    }

    /** Operative Dentistry 38(3) E9: surfaces with Sq near 750 nm read 30 GU; the formula would give nothing. */
    @Test
    void a_measured_height_scatter_is_no_optical_roughness() {
        GlossCeiling ceiling = GlossCeiling.of(MineralShares.pure(Mineral.QUARTZ));
        assertThat(new OpticalRoughness(750).gloss(ceiling, Geometry.DEG_60).gloss())
                .isLessThan(0.01);
        assertThat(OpticalRoughness.of(new Gloss(30), ceiling, Geometry.DEG_60).nanometres())
                .isLessThan(100);
    }

    /** A Lambertian white and the receptors of ISO 2813 (from memory): at most 1.2, 2.5 and 0.03 GU. */
    @ParameterizedTest
    @CsvSource({"DEG_20, 1.2, 0.05", "DEG_60, 2.5, 0.05", "DEG_85, 0.03, 0.005"})
    void a_white_face_adds_little_by_scattering(Geometry geometry, double gloss, double tolerance) {
        assertThat(DiffuseLight.most(new Share(100), geometry, STANDARD).gloss())
                .isCloseTo(gloss, Offset.offset(tolerance));
    }

    /** ASTM D523: 60 degrees first; 20 over 70 GU; 85 under 10 GU. */
    @ParameterizedTest
    @CsvSource({"0, DEG_85", "9.9999, DEG_85", "10, DEG_60", "70, DEG_60", "70.0001, DEG_20", "104, DEG_20"})
    void the_first_reading_chooses_the_angle(double at60, Geometry best) {
        assertThat(GeometryAdvice.FIRST).isEqualTo(Geometry.DEG_60);
        assertThat(GeometryAdvice.best(new Gloss(at60), STANDARD)).isEqualTo(best);
    }
}
