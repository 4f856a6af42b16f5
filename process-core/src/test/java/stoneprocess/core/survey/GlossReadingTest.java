package stoneprocess.core.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.gloss.Fresnel;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;

class GlossReadingTest {
    @ParameterizedTest
    @EnumSource(Geometry.class)
    void a_reading_runs_from_zero_to_that_of_a_mirror(Geometry geometry) {
        Gloss mirror = Fresnel.mirror(geometry);
        assertThat(reading(geometry, new Gloss(0)).gloss()).isEqualTo(new Gloss(0));
        assertThat(reading(geometry, mirror).gloss()).isEqualTo(mirror);
        Gloss over = new Gloss(mirror.gloss() + 0.0001);
        assertThatThrownBy(() -> reading(geometry, over))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("gloss: '" + over.print() + "' is not accepted")
                .hasMessageContaining("a mirror at " + geometry.degrees() + " degrees");
    }

    /** The same figure is possible at one angle and impossible at another. */
    @ParameterizedTest
    @CsvSource({"170, DEG_85, DEG_60", "1200, DEG_60, DEG_20"})
    void the_limit_is_that_of_the_angle(double gloss, Geometry refused, Geometry accepted) {
        assertThatThrownBy(() -> reading(refused, new Gloss(gloss))).isInstanceOf(InvalidInputException.class);
        assertThat(reading(accepted, new Gloss(gloss)).geometry()).isEqualTo(accepted);
    }

    private static GlossReading reading(Geometry geometry, Gloss gloss) {
        return new GlossReading("lane", geometry, gloss, SurfaceState.CLEAN_DRY);
    }
}
