package stoneprocess.core.tool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
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

    @ParameterizedTest
    @CsvSource({"100, 50", "101, 200", "282, 200", "283, 400", "600, 400", "601, 900"})
    void of_two_numbers_as_near_by_ratio_the_coarser_is_taken(int asked, int found) {
        GritSequence own = GritSequence.of(List.of(
                new AbrasiveGrade(Bond.RESIN, 50, GRAIN),
                new AbrasiveGrade(Bond.RESIN, 200, GRAIN),
                new AbrasiveGrade(Bond.RESIN, 400, GRAIN),
                new AbrasiveGrade(Bond.RESIN, 900, GRAIN)));
        assertThat(own.nearest(Bond.RESIN, asked))
                .hasValueSatisfying(grade -> assertThat(grade.number()).isEqualTo(found));
    }

    @Test
    void the_ends_of_the_sequence_answer_for_all_that_lies_beyond() {
        GritSequence standard = GritSequence.standard();
        assertThat(standard.nearest(Bond.METAL, 1)).contains(standard.get("metal-16", "grade"));
        assertThat(standard.nearest(Bond.RESIN, Integer.MAX_VALUE)).contains(standard.get("resin-6000", "grade"));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -200, Integer.MIN_VALUE})
    void a_number_below_one_is_nearest_to_nothing_and_refused(int number) {
        assertThatThrownBy(() -> GritSequence.standard().nearest(Bond.RESIN, number))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("number: '" + number + "' is not accepted; accepted: a grit number of 1 or more");
    }

    /** Common practice of the trade, no source. */
    @Test
    void the_standard_sequence_runs_metal_transition_resin_each_coarse_to_fine() {
        assertThat(GritSequence.standard())
                .hasToString("[metal-16, metal-30, metal-50, metal-100, metal-200,"
                        + " transition-30, transition-50, transition-100, transition-200,"
                        + " resin-50, resin-100, resin-200, resin-400, resin-800, resin-1500, resin-3000, resin-6000]");
    }

    /** Common practice, no source: crews own 60, 120 and 220 as often as 50, 100 and 200. */
    @Test
    void grades_of_another_ladder_take_the_place_of_those_that_they_stand_for() {
        GritSequence standard = GritSequence.standard();
        List<AbrasiveGrade> owned = Stream.of("resin-60", "resin-120", "resin-200", "resin-220", "metal-40")
                .map(key -> standard.get(key, "grades"))
                .toList();
        assertThat(standard.with(owned))
                .hasToString("[metal-16, metal-40, metal-100, metal-200,"
                        + " transition-30, transition-50, transition-100, transition-200,"
                        + " resin-60, resin-120, resin-200, resin-220, resin-400, resin-800, resin-1500, resin-3000,"
                        + " resin-6000]");
    }

    @Test
    void a_crew_whose_grades_are_all_of_the_sequence_changes_nothing() {
        GritSequence standard = GritSequence.standard();
        assertThat(standard.with(List.of())).isSameAs(standard);
        assertThat(standard.with(standard.grades(Bond.RESIN))).isSameAs(standard);
    }

    @Test
    void a_sequence_of_the_callers_own_knows_no_other_ladder() {
        GritSequence own = GritSequence.of(List.of(new AbrasiveGrade(Bond.RESIN, 100, GRAIN)));
        AbrasiveGrade other = GritSequence.standard().get("resin-120", "grades");
        assertThat(own.ofOtherLadders()).isEmpty();
        assertThat(own.knows(other)).isFalse();
        assertThat(own.with(List.of(other))).isSameAs(own);
    }

    @Test
    void an_unknown_grade_is_refused_with_those_of_every_ladder() {
        assertThatThrownBy(() -> GritSequence.standard().get("resin-77", "equipment.grades[0]"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("resin-6000; of other ladders metal-40, metal-60, metal-80, metal-120, metal-150,"
                        + " resin-60, resin-120, resin-220, resin-320, resin-600, resin-1000, resin-2000");
    }

    @Test
    void one_number_may_stand_in_several_bonds() {
        GritSequence own = GritSequence.of(
                List.of(new AbrasiveGrade(Bond.RESIN, 100, GRAIN), new AbrasiveGrade(Bond.METAL, 100, GRAIN)));
        assertThat(own.grades()).extracting(AbrasiveGrade::bond).containsExactly(Bond.METAL, Bond.RESIN);
        assertThat(own.grades(Bond.TRANSITION)).isEmpty();
    }

    @Test
    void sequences_of_equal_grades_are_equal_in_whatever_order_they_were_given() {
        AbrasiveGrade coarse = new AbrasiveGrade(Bond.RESIN, 120, GRAIN);
        AbrasiveGrade fine = new AbrasiveGrade(Bond.RESIN, 320, GRAIN);
        GritSequence one = GritSequence.of(List.of(coarse, fine));
        assertThat(one)
                .isEqualTo(GritSequence.of(List.of(fine, coarse)))
                .hasSameHashCodeAs(GritSequence.of(List.of(fine, coarse)))
                .isNotEqualTo(GritSequence.standard());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1, 30_001})
    void a_grade_whose_number_is_out_of_range_is_refused(int number) {
        assertThatThrownBy(() -> new AbrasiveGrade(Bond.RESIN, number, GRAIN))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("grade.number: '" + number + "' is not accepted");
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
    }
}
