package stoneprocess.core.tool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;

class GritSequenceTest {
    private static final Range<Length> GRAIN = Range.of(new Length(0.01), new Length(0.02));

    /** Common practice, no source: numbers that are not in the sequence map to the nearest one that is. */
    @ParameterizedTest
    @CsvSource({"220, 200", "120, 100", "60, 50", "3500, 3000", "6000, 6000"})
    void numbers_outside_the_sequence_map_to_the_nearest(int asked, int found) {
        assertThat(GritSequence.standard().nearest(Bond.RESIN, asked))
                .hasValueSatisfying(grade -> assertThat(grade.number()).isEqualTo(found));
    }

    @Test
    void an_embedder_brings_a_sequence_of_their_own_in_any_order() {
        GritSequence own = GritSequence.of(
                List.of(new AbrasiveGrade(Bond.RESIN, 320, GRAIN), new AbrasiveGrade(Bond.RESIN, 120, GRAIN)));
        assertThat(own.grades()).extracting(AbrasiveGrade::key).containsExactly("resin-120", "resin-320");
        assertThat(own.nearest(Bond.METAL, 50)).isEmpty();
    }

    @Test
    void an_empty_sequence_a_double_number_and_an_unknown_grade_are_refused() {
        AbrasiveGrade grade = new AbrasiveGrade(Bond.RESIN, 120, GRAIN);
        assertThatThrownBy(() -> GritSequence.of(List.of())).isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> GritSequence.of(List.of(grade, grade)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("resin-120");
        assertThatThrownBy(() -> GritSequence.standard().get("resin-700", "equipment.grades"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("equipment.grades: 'resin-700' is not accepted")
                .hasMessageContaining("resin-800");
        assertThatThrownBy(() -> new AbrasiveGrade(Bond.RESIN, 0, GRAIN)).isInstanceOf(InvalidInputException.class);
    }
}
