package stoneprocess.core.removal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;

/** What a pass takes off, by hand, and the laws of passes. The numbers themselves are from memory. */
class RemovalTest {
    private static final Parameters STANDARD = Parameters.standard();
    private static final Removal MARBLE = new Removal(CuttingClass.MEDIUM, STANDARD);
    private static final Removal GRANITE = new Removal(CuttingClass.HARD, STANDARD);
    private static final Mass USUAL = new Mass(22.5);

    private static AbrasiveGrade grade(String key) {
        return GritSequence.standard().get(key, "grade");
    }

    private static Range<Length> depth(double millimetres) {
        return Range.of(new Length(millimetres), new Length(millimetres));
    }

    /**
     * By hand: resin 50 takes 15 to 30 micrometres on marble, 400 an eighth of that; on granite a third in the same time, and
     * as much with a pass that is walked at a third of the speed.
     */
    @Test
    void a_pass_takes_half_as_much_at_twice_the_number() {
        assertThat(MARBLE.takes(1000, grade("resin-400"), MachineClass.SINGLE_DISC, USUAL))
                .isEqualTo(Range.of(new Length(1.875), new Length(3.75)));
        assertThat(GRANITE.takes(1000, grade("resin-400"), MachineClass.SINGLE_DISC, USUAL))
                .isEqualTo(Range.of(new Length(1.875), new Length(3.75)));
    }

    /** By hand: 47.5 kg of machine and 22.5 kg on 430 mm; 300 kg and 30 kg on 700 mm. Preston (1927), memory. */
    @Test
    void what_presses_harder_on_its_path_takes_more() {
        assertThat(MARBLE.intensity(MachineClass.SINGLE_DISC, USUAL)).isEqualTo(new Share(100));
        assertThat(MARBLE.intensity(MachineClass.SINGLE_DISC, new Mass(0)).percent())
                .isCloseTo(100 * 47.5 / 70, within(1e-4));
        assertThat(MARBLE.intensity(MachineClass.PLANETARY, new Mass(30)).percent())
                .isCloseTo(100 * (330 / 700.0) / (70 / 430.0), within(1e-3));
        assertThat(MARBLE.intensity(MachineClass.EDGE_TOOL, new Mass(0))).isEqualTo(new Share(100));
    }

    /**
     * By hand: 400 has grains of 27.65 micrometres in the middle, a quarter of it 6.9; 800 takes 0.94 to 1.88. A floor machine
     * goes along and across (Concrete Decor magazine: scratches that all run one way show as stripes), a hand tool need not; a
     * slow pass on granite is three of the usual ones.
     */
    @Test
    void passes_are_the_depth_over_what_a_pass_takes() {
        assertThat(MARBLE.leaves(grade("resin-400"))).isEqualTo(new Length(0.0069));
        assertThat(MARBLE.passes(depth(0.0069), grade("resin-800"), MachineClass.SINGLE_DISC, USUAL))
                .isEqualTo(Range.of(4, 8));
        assertThat(MARBLE.passes(depth(0), grade("resin-800"), MachineClass.SINGLE_DISC, USUAL))
                .isEqualTo(Range.of(2, 2));
        assertThat(GRANITE.passes(depth(0), grade("resin-800"), MachineClass.SINGLE_DISC, USUAL))
                .isEqualTo(Range.of(1, 1));
        assertThat(MARBLE.passes(depth(0), grade("resin-800"), MachineClass.EDGE_TOOL, new Mass(0)))
                .isEqualTo(Range.of(1, 1));
    }

    /**
     * From memory: granite takes two to three times the hours of marble. A depth that both have to lose, such as lippage,
     * takes three times the walking; the scratches of the grit before, which are shallower in granite, less than that.
     */
    @Test
    void granite_takes_three_times_the_walking_for_one_depth_and_two_to_three_times_for_its_own_scratches() {
        double slower = 1 / STANDARD.part("walk-share.hard");
        for (String key : List.of("metal-50", "resin-100", "resin-800")) {
            assertThat(slower
                            * middle(GRANITE.passes(depth(0.5), grade(key), MachineClass.SINGLE_DISC, USUAL))
                            / middle(MARBLE.passes(depth(0.5), grade(key), MachineClass.SINGLE_DISC, USUAL)))
                    .isBetween(2.0, 3.2);
        }
        List<String> ladder = List.of("resin-100", "resin-200", "resin-400", "resin-800", "resin-1500", "resin-3000");
        double ratio = slower * passes(GRANITE, ladder) / passes(MARBLE, ladder);
        System.out.printf(Locale.ROOT, "walking on granite over marble, each grit after the one before: %.2f%n", ratio);
        assertThat(ratio).isBetween(2.0, 3.0);
    }

    private static double passes(Removal stone, List<String> ladder) {
        double passes = 0;
        for (int i = 1; i < ladder.size(); i++) {
            Length left = stone.leaves(grade(ladder.get(i - 1)));
            passes += middle(stone.passes(Range.of(left, left), grade(ladder.get(i)), MachineClass.SINGLE_DISC, USUAL));
        }
        return passes;
    }

    private static double middle(Range<Integer> passes) {
        return (passes.low() + passes.high()) / 2.0;
    }

    /** Common practice, no source: on hard floors restorers count 4 to 6 slow passes with each later grit. */
    @Test
    void later_grits_on_granite_take_what_crews_count() {
        for (String[] pair : new String[][] {{"resin-400", "resin-800"}, {"resin-800", "resin-1500"}}) {
            Length before = GRANITE.leaves(grade(pair[0]));
            Range<Integer> passes =
                    GRANITE.passes(Range.of(before, before), grade(pair[1]), MachineClass.SINGLE_DISC, USUAL);
            assertThat(passes.low()).isBetween(3, 5);
            assertThat(passes.high()).isBetween(5, 8);
        }
    }

    /** Common practice, no source: 2 mm of lippage are dozens of passes of metal at the usual speed on granite, or none: relay. */
    @Test
    void two_millimetres_of_lippage_on_granite_are_dozens_of_passes_of_metal() {
        Range<Integer> passes = GRANITE.passes(
                depth(2 / STANDARD.part("removal.high-spots")), grade("metal-30"), MachineClass.SINGLE_DISC, USUAL);
        double slower = 1 / STANDARD.part("walk-share.hard");
        assertThat(slower * passes.low()).isGreaterThanOrEqualTo(15);
        assertThat(slower * passes.high()).isLessThanOrEqualTo(60);
    }

    @Property
    void more_to_take_off_never_takes_fewer_passes(
            @ForAll @DoubleRange(max = 5) double depth,
            @ForAll @DoubleRange(max = 5) double more,
            @ForAll CuttingClass stone,
            @ForAll @IntRange(max = 17) int which,
            @ForAll @DoubleRange(max = 60) double added) {
        AbrasiveGrade grade = GritSequence.standard().grades().get(which % 17);
        Removal removal = new Removal(stone, STANDARD);
        Range<Integer> less = removal.passes(depth(depth), grade, MachineClass.SINGLE_DISC, new Mass(added));
        Range<Integer> deeper = removal.passes(depth(depth + more), grade, MachineClass.SINGLE_DISC, new Mass(added));
        Range<Integer> heavier = removal.passes(depth(depth), grade, MachineClass.SINGLE_DISC, new Mass(added + 10));
        assertThat(less.low())
                .isLessThanOrEqualTo(less.high())
                .isGreaterThanOrEqualTo(stone == CuttingClass.HARD ? 1 : 2);
        assertThat(deeper.low()).isGreaterThanOrEqualTo(less.low());
        assertThat(deeper.high()).isGreaterThanOrEqualTo(less.high());
        assertThat(heavier.high()).isLessThanOrEqualTo(less.high());
    }

    @Test
    void a_bond_that_takes_nothing_is_refused_by_name() {
        Parameters none = STANDARD.with("cut-rate.hard", new Share(0));
        assertThat(grade("resin-400").bond()).isEqualTo(Bond.RESIN);
        assertThatThrownBy(() -> new Removal(CuttingClass.HARD, none)
                        .passes(depth(1), grade("resin-400"), MachineClass.SINGLE_DISC, USUAL))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("removal.resin.high: '0.03 mm'");
    }
}
