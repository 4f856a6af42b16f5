package stoneprocess.rules.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.site.StepFigures;
import stoneprocess.core.stone.Family;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.WaterLevel;

/** The figures are common practice, no source, or from memory; the arithmetic on them is checked here by hand. */
class FiguresTest {
    private static final Parameters NUMBERS = Parameters.standard();

    @Test
    void what_may_be_hard_is_planned_as_hard_and_a_weak_binder_cuts_fast() {
        assertThat(cutting(Family.values())).isEqualTo(CuttingClass.HARD);
        assertThat(cutting(Family.ONYX, Family.SLATE)).isEqualTo(CuttingClass.MEDIUM);
        assertThat(cutting(Family.SANDSTONE)).isEqualTo(CuttingClass.WEAK_BINDER);
        assertThat(cutting(Family.SANDSTONE, Family.SLATE)).isEqualTo(CuttingClass.HARD);
    }

    private static CuttingClass cutting(Family... families) {
        return new KnownStone(Set.of(families), Optional.empty()).cutting();
    }

    @Test
    void a_grade_that_is_worked_dry_takes_no_water() {
        assertThat(StepFigures.litres(
                        grade("metal-50"), WaterLevel.NONE, Optional.of(Area.of(50, Unit.SQUARE_METRE)), NUMBERS))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "resin-50, coverage.resin-coarse",
        "resin-400, coverage.resin-coarse",
        "resin-800, coverage.resin-middle",
        "resin-1500, coverage.resin-middle",
        "resin-3000, coverage.resin-fine",
        "transition-100, coverage.resin-coarse",
        "metal-16, coverage.metal",
        "metal-200, coverage.metal"
    })
    void coverage_goes_by_bond_and_grit(String grade, String parameter) {
        assertThat(StepFigures.coverageParameter(grade(grade), NUMBERS)).isEqualTo(parameter);
    }

    @ParameterizedTest
    @CsvSource({"SCANT, 10, 17.5", "MODERATE, 10, 25", "GENEROUS, 17.5, 25"})
    void scant_water_is_the_lower_half_of_the_range_and_generous_water_the_upper(
            WaterLevel level, double low, double high) {
        Range<Volume> litres = StepFigures.litres(
                        grade("resin-200"), level, Optional.of(Area.of(50, Unit.SQUARE_METRE)), NUMBERS)
                .orElseThrow();
        assertThat(litres).isEqualTo(Range.of(new Volume(low), new Volume(high)));
    }

    @Test
    void without_an_area_there_are_no_litres() {
        assertThat(StepFigures.litres(grade("resin-200"), WaterLevel.MODERATE, Optional.empty(), NUMBERS))
                .isEmpty();
    }

    @Test
    void usual_weight_on_a_single_disc_is_15_to_30_kg_and_reduced_weight_a_quarter_less() {
        assertThat(StepFigures.mass(MachineClass.SINGLE_DISC, AddedWeight.USUAL, NUMBERS))
                .isEqualTo(Range.of(new Mass(15), new Mass(30)));
        assertThat(StepFigures.mass(MachineClass.SINGLE_DISC, AddedWeight.REDUCED, NUMBERS))
                .isEqualTo(Range.of(new Mass(11.25), new Mass(22.5)));
        assertThat(StepFigures.mass(MachineClass.SINGLE_DISC, AddedWeight.NONE, NUMBERS))
                .isEqualTo(Range.of(new Mass(0), new Mass(0)));
    }

    @ParameterizedTest
    @EnumSource(
            value = MachineClass.class,
            names = {"EDGE_TOOL", "BURNISHER", "SCRUBBER", "PROPANE_MACHINE"})
    void a_machine_that_takes_no_weight_gets_none(MachineClass machine) {
        assertThat(StepFigures.mass(machine, AddedWeight.USUAL, NUMBERS)).isEqualTo(Range.of(new Mass(0), new Mass(0)));
    }

    private static AbrasiveGrade grade(String key) {
        return GritSequence.standard().get(key, "grade");
    }
}
