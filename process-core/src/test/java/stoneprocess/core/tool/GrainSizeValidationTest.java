package stoneprocess.core.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Unit;

/**
 * Grain sizes against FEPA P (ISO 6344), ANSI/CAMI, FEPA F (ISO 8486-2, from memory) and the sieves of ASTM E11 (coarse
 * ones from memory). The table beside this test has each figure with its source and mark.
 */
class GrainSizeValidationTest {
    private static final List<Tsv.Row> PUBLISHED = Tsv.read(GrainSizeValidationTest.class, "published-grain-sizes.tsv");

    /** Each grade with each published size that bears its number. */
    static Stream<Arguments> sizes() {
        GritSequence standard = GritSequence.standard();
        return Stream.concat(standard.grades().stream(), standard.ofOtherLadders().stream())
                .flatMap(grade -> PUBLISHED.stream()
                        .filter(row -> row.number("number") == grade.number())
                        .map(row -> Arguments.of(
                                grade.key(), row.get("scale"), row.number("um"), row.get("source"), row.get("mark"))));
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void the_size_of_a_grades_number_lies_inside_its_interval(
            String grade, String scale, double micrometres, String source, String mark) {
        assertThat(contains(grade, micrometres))
                .as("%s in %s, %s (%s, %s)", micrometres, grade, scale, source, mark)
                .isTrue();
    }

    /** Common practice, no source: the numbers that a crew works with; no table has 16, 30, 3000 or 6000. */
    @Test
    void every_number_that_a_published_table_has_is_checked() {
        assertThat(sizes().map(arguments -> arguments.get()[0] + " " + arguments.get()[1]))
                .containsExactlyInAnyOrder(
                        "metal-50 E11",
                        "metal-100 P",
                        "metal-100 CAMI",
                        "metal-100 E11",
                        "metal-200 E11",
                        "transition-50 E11",
                        "transition-100 P",
                        "transition-100 CAMI",
                        "transition-100 E11",
                        "transition-200 E11",
                        "resin-50 E11",
                        "resin-100 P",
                        "resin-100 CAMI",
                        "resin-100 E11",
                        "resin-200 E11",
                        "resin-400 P",
                        "resin-400 CAMI",
                        "resin-400 F",
                        "resin-400 E11",
                        "resin-800 P",
                        "resin-800 CAMI",
                        "resin-800 F",
                        "resin-1500 P",
                        "metal-40 P",
                        "metal-60 P",
                        "metal-60 CAMI",
                        "metal-60 E11",
                        "metal-80 P",
                        "metal-80 E11",
                        "metal-120 P",
                        "metal-120 E11",
                        "metal-150 P",
                        "metal-150 CAMI",
                        "resin-60 P",
                        "resin-60 CAMI",
                        "resin-60 E11",
                        "resin-120 P",
                        "resin-120 E11",
                        "resin-220 P",
                        "resin-220 CAMI",
                        "resin-320 P",
                        "resin-320 CAMI",
                        "resin-320 F",
                        "resin-600 P",
                        "resin-600 CAMI",
                        "resin-600 F",
                        "resin-1000 P",
                        "resin-1000 CAMI",
                        "resin-1000 F",
                        "resin-2000 P");
    }

    /** ISO 6344: P180 82 and P220 68 micrometres, the neighbours of a number that no scale of grains has. */
    @ParameterizedTest
    @EnumSource(Bond.class)
    void grade_200_spans_the_published_neighbours_of_its_number(Bond bond) {
        assertThat(contains(bond.key() + "-200", 82)).isTrue();
        assertThat(contains(bond.key() + "-200", 68)).isTrue();
    }

    /** Numbers that no table here has, against P16 1324, P30 642 and P50 336 micrometres of ISO 6344, from memory. */
    @ParameterizedTest
    @CsvSource({"metal-16, 1324", "metal-30, 642", "metal-50, 336", "transition-30, 642", "resin-50, 336"})
    void coarse_grades_hold_the_sizes_remembered_of_their_numbers(String grade, double micrometres) {
        assertThat(contains(grade, micrometres)).isTrue();
    }

    /** ISO 6344 ends at P2500 with 8.4 and ISO 8486-2 at F1200 with 3.0 micrometres: finer numbers are finer still. */
    @ParameterizedTest
    @CsvSource({"resin-3000", "resin-6000"})
    void grades_finer_than_the_tables_are_finer_than_their_last_sizes(String grade) {
        assertThat(GritSequence.standard().get(grade, "grade").grain().high())
                .isLessThan(Length.of(8.4, Unit.MICROMETRE));
        assertThat(GritSequence.standard().get(grade, "grade").grain().low())
                .isLessThan(Length.of(3.0, Unit.MICROMETRE));
    }

    @ParameterizedTest
    @CsvSource({"P, 20", "CAMI, 9", "F, 8", "E11, 12"})
    void the_published_tables_get_finer_as_numbers_rise(String scale, int size) {
        TreeMap<Double, Double> byNumber = new TreeMap<>();
        PUBLISHED.stream()
                .filter(row -> row.get("scale").equals(scale))
                .forEach(row -> byNumber.put(row.number("number"), row.number("um")));
        assertThat(byNumber).hasSize(size);
        assertThat(List.copyOf(byNumber.values())).isSortedAccordingTo((coarse, fine) -> Double.compare(fine, coarse));
    }

    @ParameterizedTest
    @EnumSource(Bond.class)
    void within_a_bond_grains_get_finer_as_numbers_rise(Bond bond) {
        List<AbrasiveGrade> grades = GritSequence.standard().grades(bond);
        assertThat(grades).hasSizeGreaterThan(1);
        for (int i = 1; i < grades.size(); i++) {
            assertThat(grades.get(i).grain().high())
                    .isLessThan(grades.get(i - 1).grain().high());
            assertThat(grades.get(i).grain().low())
                    .isLessThan(grades.get(i - 1).grain().low());
        }
    }

    private static boolean contains(String grade, double micrometres) {
        return GritSequence.standard().get(grade, "grade").grain().contains(Length.of(micrometres, Unit.MICROMETRE));
    }
}
