package stoneprocess.rules.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stoneprocess.core.problem.InvalidInputException;

class CoveringArrayTest {
    @Test
    void three_columns_need_every_row() {
        assertThat(CoveringArray.ofThree(2, 3, 4)).hasSize(24);
    }

    /**
     * Best sizes known for strength three, from the tables of covering arrays of C. J. Colbourn, from memory:
     * CAN(3,4,2) = 8, CAN(3,5,2) = 10, CAN(3,11,2) = 12, CAN(3,4,3) = 27. A greedy array may be larger, never smaller.
     */
    @Test
    void small_arrays_are_complete_and_not_much_larger_than_the_best_known() {
        near(8, 4, 2, 2);
        near(10, 5, 2, 1.6);
        near(12, 11, 2, 2);
        near(27, 4, 3, 1.5);
    }

    private static void near(int best, int columns, int values, double most) {
        int[] sizes = new int[columns];
        Arrays.fill(sizes, values);
        List<int[]> rows = CoveringArray.ofThree(sizes);
        System.out.printf("%d columns of %d: %d rows, best known %d%n", columns, values, rows.size(), best);
        assertThat(missing(rows, sizes)).isZero();
        assertThat(rows.size()).isBetween(best, (int) (most * best));
    }

    @Test
    void columns_of_any_sizes_are_complete_in_any_order() {
        int[] sizes = {2, 7, 1, 3, 5, 2, 4};
        List<int[]> rows = CoveringArray.ofThree(sizes);

        assertThat(missing(rows, sizes)).isZero();
        assertThat(rows.size()).isBetween(7 * 5 * 4, 2 * 3 * 5 * 7 * 2);
    }

    @Test
    void the_same_sizes_give_the_same_rows() {
        assertThat(CoveringArray.ofThree(3, 3, 4, 2, 5).stream().map(Arrays::toString))
                .containsExactlyElementsOf(CoveringArray.ofThree(3, 3, 4, 2, 5).stream()
                        .map(Arrays::toString)
                        .toList());
    }

    @Test
    void fewer_columns_and_empty_ones_are_refused() {
        assertThatThrownBy(() -> CoveringArray.ofThree(2, 2)).isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> CoveringArray.ofThree(2, 0, 2)).isInstanceOf(InvalidInputException.class);
    }

    /** How many combinations of three values no row has; counted by looking, without the array's own bookkeeping. */
    static long missing(List<int[]> rows, int[] sizes) {
        long missing = 0;
        for (int a = 0; a < sizes.length; a++) {
            for (int b = a + 1; b < sizes.length; b++) {
                for (int c = b + 1; c < sizes.length; c++) {
                    Set<Integer> seen = new HashSet<>();
                    for (int[] row : rows) {
                        seen.add((row[a] * 100 + row[b]) * 100 + row[c]);
                    }
                    missing += (long) sizes[a] * sizes[b] * sizes[c] - seen.size();
                }
            }
        }
        return missing;
    }
}
