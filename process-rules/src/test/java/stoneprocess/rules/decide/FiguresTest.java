package stoneprocess.rules.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.AddedWeight;
import stoneprocess.core.plan.WaterLevel;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;

/** The figures are common practice, no source; the arithmetic on them is checked here by hand. */
class FiguresTest {
    private static final Parameters NUMBERS = Parameters.standard();

    @Test
    void the_first_grade_takes_6_to_10_passes_and_each_later_one_8_to_10() {
        assertThat(Figures.passes(true, NUMBERS)).isEqualTo(Range.of(6, 10));
        assertThat(Figures.passes(false, NUMBERS)).isEqualTo(Range.of(8, 10));
    }

    @Test
    void passes_follow_a_retuned_parameter() {
        Parameters house = NUMBERS.with("passes.first.high", Count.of(12, Unit.COUNT));
        assertThat(Figures.passes(true, house)).isEqualTo(Range.of(6, 12));
    }

    @ParameterizedTest
    @CsvSource({
        "resin-50, coverage.resin-to-400",
        "resin-400, coverage.resin-to-400",
        "resin-800, coverage.resin-to-1500",
        "resin-1500, coverage.resin-to-1500",
        "resin-3000, coverage.resin-finest",
        "transition-100, coverage.resin-to-400",
        "metal-16, coverage.metal",
        "metal-200, coverage.metal"
    })
    void coverage_goes_by_bond_and_grit(String grade, String parameter) {
        assertThat(Figures.coverageParameter(grade(grade))).isEqualTo(parameter);
    }

    @ParameterizedTest
    @CsvSource({"SCANT, 10, 17.5", "MODERATE, 10, 25", "GENEROUS, 17.5, 25"})
    void scant_water_is_the_lower_half_of_the_range_and_generous_water_the_upper(
            WaterLevel level, double low, double high) {
        Range<Volume> litres = Figures.litres(
                        grade("resin-200"), level, Optional.of(Area.of(50, Unit.SQUARE_METRE)), NUMBERS)
                .orElseThrow();
        assertThat(litres).isEqualTo(Range.of(new Volume(low), new Volume(high)));
    }

    @Test
    void without_an_area_there_are_no_litres() {
        assertThat(Figures.litres(grade("resin-200"), WaterLevel.MODERATE, Optional.empty(), NUMBERS))
                .isEmpty();
    }

    @Test
    void usual_weight_on_a_single_disc_is_15_to_30_kg_and_reduced_weight_a_quarter_less() {
        assertThat(Figures.mass(MachineClass.SINGLE_DISC, AddedWeight.USUAL, NUMBERS))
                .isEqualTo(Range.of(new Mass(15), new Mass(30)));
        assertThat(Figures.mass(MachineClass.SINGLE_DISC, AddedWeight.REDUCED, NUMBERS))
                .isEqualTo(Range.of(new Mass(11.25), new Mass(22.5)));
        assertThat(Figures.mass(MachineClass.SINGLE_DISC, AddedWeight.NONE, NUMBERS))
                .isEqualTo(Range.of(new Mass(0), new Mass(0)));
    }

    @ParameterizedTest
    @EnumSource(
            value = MachineClass.class,
            names = {"EDGE_TOOL", "BURNISHER", "SCRUBBER", "PROPANE_MACHINE"})
    void a_machine_that_takes_no_weight_gets_none(MachineClass machine) {
        assertThat(Figures.mass(machine, AddedWeight.USUAL, NUMBERS)).isEqualTo(Range.of(new Mass(0), new Mass(0)));
    }

    private static AbrasiveGrade grade(String key) {
        return GritSequence.standard().get(key, "grade");
    }
}
