package stoneprocess.core.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Unit;

/** Grain sizes against FEPA P (ISO 6344), ANSI/CAMI and FEPA F (ISO 8486-2, from memory). */
class GrainSizeValidationTest {
    @Test
    void the_published_size_of_each_number_lies_inside_the_grades_interval() {
        List<Tsv.Row> published = Tsv.read(GrainSizeValidationTest.class, "published-grain-sizes.tsv");
        assertThat(published).hasSizeGreaterThan(8);
        for (Tsv.Row row : published) {
            AbrasiveGrade grade = GritSequence.standard().get("resin-" + row.get("number"), "number");
            Length size = Length.of(row.number("um"), Unit.MICROMETRE);
            assertThat(grade.grain().contains(size))
                    .as("%s %s, %s um, in %s", row.get("scale"), row.get("number"), row.get("um"), grade.grain())
                    .isTrue();
        }
    }

    /** ISO 6344 lists P180 at 82 and P220 at 68 micrometres; a pad sold as 200 lies between or beside them. */
    @Test
    void grade_200_spans_the_published_neighbours_of_its_number() {
        AbrasiveGrade grade = GritSequence.standard().get("resin-200", "grade");
        assertThat(grade.grain().contains(Length.of(82, Unit.MICROMETRE))).isTrue();
        assertThat(grade.grain().contains(Length.of(68, Unit.MICROMETRE))).isTrue();
    }

    @Test
    void within_a_bond_grains_get_finer_as_numbers_rise() {
        for (Bond bond : Bond.values()) {
            List<AbrasiveGrade> grades = GritSequence.standard().grades(bond);
            for (int i = 1; i < grades.size(); i++) {
                assertThat(grades.get(i).grain().high())
                        .isLessThan(grades.get(i - 1).grain().high());
                assertThat(grades.get(i).grain().low())
                        .isLessThan(grades.get(i - 1).grain().low());
            }
        }
    }
}
