package stoneprocess.core.stone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.source.EvidenceGrade;

/** Refractive indices in sodium light against university optical mineralogy tables and, where so marked, memory. */
class RefractiveIndexValidationTest {
    /** Lowest and highest principal index. */
    @ParameterizedTest
    @CsvSource({
        "CALCITE, 1.486, 1.486, 1.658, 1.658, PUBLISHED",
        "DOLOMITE, 1.500, 1.500, 1.679, 1.681, PUBLISHED",
        "QUARTZ, 1.544, 1.544, 1.553, 1.553, PUBLISHED",
        "ANTIGORITE, 1.56, 1.57, 1.56, 1.57, PUBLISHED",
        "ORTHOCLASE, 1.518, 1.518, 1.523, 1.523, MEMORY",
        "ALBITE, 1.528, 1.528, 1.538, 1.538, MEMORY",
        "LABRADORITE, 1.56, 1.57, 1.56, 1.57, MEMORY",
        "MUSCOVITE, 1.56, 1.56, 1.60, 1.60, MEMORY",
        "BIOTITE, 1.58, 1.58, 1.62, 1.62, MEMORY",
        "AUGITE, 1.69, 1.69, 1.72, 1.72, MEMORY",
        "GYPSUM, 1.520, 1.520, 1.530, 1.530, MEMORY",
    })
    void the_principal_indices_are_those_of_the_tables(
            Mineral mineral, double lowFrom, double lowTo, double highFrom, double highTo, EvidenceGrade grade) {
        RefractiveIndex index = RefractiveIndex.of(mineral);
        double low = index.principal().stream().min(Double::compare).orElseThrow();
        double high = index.principal().stream().max(Double::compare).orElseThrow();
        assertThat(low).isBetween(lowFrom, lowTo);
        assertThat(high).isBetween(highFrom, highTo);
        assertThat(index.grade()).isEqualTo(grade);
    }

    /** Optical mineralogy: in calcite, dolomite and quartz two directions in three share the ordinary index. */
    @ParameterizedTest
    @CsvSource({"CALCITE, 1.658", "DOLOMITE, 1.680", "QUARTZ, 1.544"})
    void the_ordinary_index_of_a_uniaxial_mineral_counts_twice(Mineral mineral, double ordinary) {
        assertThat(RefractiveIndex.of(mineral).principal())
                .filteredOn(index -> index == ordinary)
                .hasSize(2);
    }

    @ParameterizedTest
    @EnumSource(Mineral.class)
    void every_mineral_has_three_indices(Mineral mineral) {
        assertThat(RefractiveIndex.of(mineral).mineral()).isEqualTo(mineral);
        assertThat(RefractiveIndex.of(mineral).principal()).hasSize(3);
    }

    @Test
    void indices_that_no_mineral_can_have_are_refused() {
        for (List<Double> indices :
                List.of(List.<Double>of(), List.of(1.5, 1.5), List.of(1.5, 1.5, 0.9), List.of(1.5, 1.5, Double.NaN))) {
            assertThatThrownBy(() -> new RefractiveIndex(Mineral.QUARTZ, indices, EvidenceGrade.MEMORY))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageStartingWith("quartz: '" + indices + "' is not accepted");
        }
    }
}
