package stoneprocess.rules.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.Volume;
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
    void the_reference_takes_3_to_12_passes_at_the_first_grade_and_6_to_12_at_each_later_one() {
        assertThat(reference(true)).isEqualTo(Range.of(3, 12));
        assertThat(reference(false)).isEqualTo(Range.of(6, 12));
    }

    /** Common practice, no source: 6 to 10 passes with the first grit of a hard floor, 8 to 10 with each later one. */
    @Test
    void the_reference_overlaps_what_crews_count() {
        assertThat(reference(true).low()).isLessThanOrEqualTo(10);
        assertThat(reference(true).high()).isGreaterThanOrEqualTo(6);
        assertThat(reference(false).low()).isLessThanOrEqualTo(8);
        assertThat(reference(false).high()).isGreaterThanOrEqualTo(10);
    }

    /**
     * The passes of the reference follow from what a pass removes and how deep scratches are. From memory: on stone of
     * middling hardness resin 50 takes off 15 to 30 micrometres in a pass, each finer grade half of that, and scratches
     * reach a quarter of the grain.
     */
    @Test
    void passes_are_depth_of_scratches_over_removal() {
        List<String> ladder = List.of("50", "100", "200", "400", "800", "1500", "3000");
        double own = 0;
        double coarser = 0;
        double most = 30;
        for (int i = 1; i < ladder.size(); i++) {
            most /= 2;
            own += scratch("resin-" + ladder.get(i)) / most;
            coarser += scratch("resin-" + ladder.get(i - 1)) / most;
        }
        double toReference = NUMBERS.get("cut-rate.medium", Share.class).percent() / 100 / (ladder.size() - 1);
        int fewestOnOwn = (int) Math.round(own * toReference);
        int fewestOnCoarser = (int) Math.round(coarser * toReference);
        // A slow pass takes off half of what a fast one does.
        int mostOnCoarser = (int) Math.round(2 * coarser * toReference);
        assertThat(reference(true)).isEqualTo(Range.of(fewestOnOwn, mostOnCoarser));
        assertThat(reference(false)).isEqualTo(Range.of(fewestOnCoarser, mostOnCoarser));
    }

    /** Micrometres, for the middle of the sizes that the number may stand for. */
    private static double scratch(String grade) {
        Range<Length> grains = grade(grade).grain();
        return Math.sqrt(grains.low().millimetres() * grains.high().millimetres()) * 1000 / 4;
    }

    private static Range<Integer> reference(boolean first) {
        return StepFigures.passes(first, "cut-rate.hard", MachineClass.SINGLE_DISC, AddedWeight.REDUCED, NUMBERS);
    }

    @ParameterizedTest
    @CsvSource({
        "cut-rate.hard, SINGLE_DISC, USUAL, 3, 11",
        "cut-rate.hard, SINGLE_DISC, REDUCED, 3, 12",
        "cut-rate.hard, SINGLE_DISC, NONE, 4, 15",
        "cut-rate.hard, PLANETARY, USUAL, 2, 8",
        "cut-rate.medium, SINGLE_DISC, REDUCED, 2, 8",
        "cut-rate.soft, SINGLE_DISC, NONE, 2, 8",
        "cut-rate.weak-binder, SINGLE_DISC, NONE, 2, 6"
    })
    void passes_go_by_cut_rate_machine_and_weight(
            String cutRate, MachineClass machine, AddedWeight weight, int low, int high) {
        assertThat(StepFigures.passes(true, cutRate, machine, weight, NUMBERS)).isEqualTo(Range.of(low, high));
    }

    @Test
    void what_may_be_hard_is_planned_as_hard_and_a_weak_binder_cuts_fast() {
        assertThat(cutRate(Family.values())).isEqualTo("cut-rate.hard");
        assertThat(cutRate(Family.ONYX, Family.SLATE)).isEqualTo("cut-rate.medium");
        assertThat(cutRate(Family.SANDSTONE)).isEqualTo("cut-rate.weak-binder");
        assertThat(cutRate(Family.SANDSTONE, Family.SLATE)).isEqualTo("cut-rate.hard");
    }

    private static String cutRate(Family... families) {
        return new KnownStone(Set.of(families), Optional.empty()).cutRate();
    }

    /** A lower cut rate never asks for fewer passes. */
    @Test
    void slower_stone_never_takes_fewer_passes() {
        for (MachineClass machine : MachineClass.values()) {
            for (AddedWeight weight : AddedWeight.values()) {
                int before = 0;
                for (String rate : List.of("weak-binder", "soft", "medium", "hard")) {
                    Range<Integer> passes = StepFigures.passes(true, "cut-rate." + rate, machine, weight, NUMBERS);
                    assertThat(passes.low()).isGreaterThanOrEqualTo(before);
                    before = passes.low();
                }
            }
        }
    }

    @Test
    void a_grade_that_is_worked_dry_takes_no_water() {
        assertThat(StepFigures.litres(
                        grade("metal-50"), WaterLevel.NONE, Optional.of(Area.of(50, Unit.SQUARE_METRE)), NUMBERS))
                .isEmpty();
    }

    @Test
    void passes_follow_a_retuned_parameter() {
        Parameters house = NUMBERS.with("passes.first.high", Count.of(15, Unit.COUNT));
        assertThat(StepFigures.passes(true, "cut-rate.hard", MachineClass.SINGLE_DISC, AddedWeight.REDUCED, house))
                .isEqualTo(Range.of(3, 15));
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

    @ParameterizedTest
    @CsvSource({
        "metal-100, 0.03",
        "transition-50, 0.01",
        "resin-100, 0.01",
        "resin-200, 0.004",
        "resin-400, 0.004",
        "resin-800, 0.001",
        "resin-3000, 0.001"
    })
    void a_finer_grade_takes_less_off_in_a_pass(String key, double millimetres) {
        assertThat(StepFigures.stock(grade(key), NUMBERS)).isEqualTo(Length.of(millimetres, Unit.MILLIMETRE));
    }
}
