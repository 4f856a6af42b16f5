package stoneprocess.rules.space;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import stoneprocess.core.problem.InvalidInputException;

/**
 * Rows in which every combination of values of any three columns appears at least once, far fewer than all rows. Grown
 * column by column: each row takes the value that covers most combinations still missing, then rows are added for the
 * rest (in-parameter-order; Y. Lei and K. C. Tai 1998 for pairs and Y. Lei et al. 2007 for more, from memory).
 * The same sizes give the same rows. Immutable and safe to share between threads.
 */
public final class CoveringArray {
    private static final int ANY = -1;

    private final int[] sizes;
    private final int[] order;
    private final int[] ordered;
    private final List<int[]> rows = new ArrayList<>();

    private CoveringArray(int[] sizes) {
        this.sizes = sizes.clone();
        this.order = IntStream.range(0, sizes.length)
                .boxed()
                .sorted(Comparator.comparing((Integer column) -> -sizes[column]))
                .mapToInt(Integer::intValue)
                .toArray();
        this.ordered = IntStream.of(order).map(column -> sizes[column]).toArray();
    }

    /**
     * The rows for columns of the given numbers of values.
     *
     * @param sizes how many values each column has, 1 or more; three columns or more
     * @return rows of value numbers, counted from zero, one for each column in the order given
     * @throws InvalidInputException for fewer columns and for a column without a value
     */
    public static List<int[]> ofThree(int... sizes) {
        if (sizes.length < 3 || Arrays.stream(sizes).anyMatch(size -> size < 1)) {
            throw new InvalidInputException(
                    "sizes", Arrays.toString(sizes), "three columns or more, each with a value or more");
        }
        return new CoveringArray(sizes).grow();
    }

    private List<int[]> grow() {
        for (int one = 0; one < size(0); one++) {
            for (int two = 0; two < size(1); two++) {
                for (int three = 0; three < size(2); three++) {
                    int[] row = new int[sizes.length];
                    Arrays.fill(row, ANY);
                    row[0] = one;
                    row[1] = two;
                    row[2] = three;
                    rows.add(row);
                }
            }
        }
        for (int column = 3; column < sizes.length; column++) {
            Missing missing = new Missing(column);
            widen(column, missing);
            lengthen(column, missing);
        }
        return rows.stream().map(this::inOrderGiven).toList();
    }

    private int size(int column) {
        return ordered[column];
    }

    private void widen(int column, Missing missing) {
        int[] used = new int[size(column)];
        for (int[] row : rows) {
            int best = 0;
            int most = -1;
            for (int value = 0; value < size(column); value++) {
                int covers = missing.count(row, value);
                if (covers > most || covers == most && used[value] < used[best]) {
                    best = value;
                    most = covers;
                }
            }
            row[column] = best;
            used[best]++;
            missing.cover(row);
        }
    }

    /** Puts what is still missing where a row leaves room for it, else into a new row. */
    private void lengthen(int column, Missing missing) {
        List<int[]> roomy = new ArrayList<>(rows.stream()
                .filter(row -> IntStream.range(0, column).anyMatch(i -> row[i] == ANY))
                .toList());
        for (int one = 0; one < column; one++) {
            for (int two = one + 1; two < column; two++) {
                BitSet left = missing.of(one, two);
                for (int bit = left.nextSetBit(0); bit >= 0; bit = left.nextSetBit(bit + 1)) {
                    int value = bit % size(column);
                    int second = bit / size(column) % size(two);
                    int first = bit / size(column) / size(two);
                    int[] row = roomFor(roomy, one, first, two, second, column, value);
                    row[one] = first;
                    row[two] = second;
                    row[column] = value;
                }
                left.clear();
            }
        }
    }

    private int[] roomFor(List<int[]> roomy, int one, int first, int two, int second, int column, int value) {
        for (int[] row : roomy) {
            if (fits(row[one], first) && fits(row[two], second) && fits(row[column], value)) {
                return row;
            }
        }
        int[] row = new int[sizes.length];
        Arrays.fill(row, ANY);
        rows.add(row);
        roomy.add(row);
        return row;
    }

    private static boolean fits(int cell, int value) {
        return cell == ANY || cell == value;
    }

    private int[] inOrderGiven(int[] row) {
        int[] given = new int[row.length];
        for (int i = 0; i < row.length; i++) {
            given[order[i]] = Math.max(row[i], 0);
        }
        return given;
    }

    /** The combinations of two columns before a column with a value of it that no row has yet. */
    private final class Missing {
        private final int column;
        private final BitSet[][] left;

        Missing(int column) {
            this.column = column;
            this.left = new BitSet[column][column];
            for (int one = 0; one < column; one++) {
                for (int two = one + 1; two < column; two++) {
                    BitSet all = new BitSet();
                    all.set(0, size(one) * size(two) * size(column));
                    left[one][two] = all;
                }
            }
        }

        BitSet of(int one, int two) {
            return left[one][two];
        }

        private int bit(int[] row, int one, int two, int value) {
            return (row[one] * size(two) + row[two]) * size(column) + value;
        }

        int count(int[] row, int value) {
            int count = 0;
            for (int one = 0; one < column; one++) {
                for (int two = one + 1; row[one] != ANY && two < column; two++) {
                    if (row[two] != ANY && left[one][two].get(bit(row, one, two, value))) {
                        count++;
                    }
                }
            }
            return count;
        }

        void cover(int[] row) {
            for (int one = 0; one < column; one++) {
                for (int two = one + 1; row[one] != ANY && two < column; two++) {
                    if (row[two] != ANY) {
                        left[one][two].clear(bit(row, one, two, row[column]));
                    }
                }
            }
        }
    }
}
