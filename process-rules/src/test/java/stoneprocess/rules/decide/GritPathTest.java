package stoneprocess.rules.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.LastGrit;
import stoneprocess.core.topic.StepRule;
import stoneprocess.core.topic.TransitionUse;

class GritPathTest {
    private static final Set<Bond> EVERY_BOND = EnumSet.allOf(Bond.class);

    @ParameterizedTest
    @CsvSource({
        "REFRESH, resin-800 resin-1500 resin-3000",
        "FINE_HONE, resin-400 resin-800 resin-1500 resin-3000",
        "HONE, resin-200 resin-400 resin-800 resin-1500 resin-3000",
        "COARSE_HONE, resin-100 resin-200 resin-400 resin-800 resin-1500 resin-3000",
        "FINE_GRIND, resin-50 resin-100 resin-200 resin-400 resin-800 resin-1500 resin-3000"
    })
    void a_resin_cut_climbs_the_usual_ladder_rung_by_rung_to_a_polish(Cut cut, String ladder) {
        assertThat(usual(GritSequence.standard()).plan(cut, LastGrit.G3000).map(GritPathTest::keys))
                .contains(List.of(ladder.split(" ")));
    }

    /** Second-hand, trade press: metal cuts deeper than its number, so resin restarts at the same or a coarser one. */
    @ParameterizedTest
    @EnumSource(
            value = Cut.class,
            names = {"GRIND", "HEAVY_GRIND"})
    void after_metal_the_first_resin_grade_is_no_finer_than_the_last_metal_grade(Cut cut) {
        List<AbrasiveGrade> path = new GritPath(
                        GritSequence.standard(),
                        EVERY_BOND,
                        StepRule.NO_SKIP,
                        TransitionUse.SKIP,
                        Parameters.standard())
                .plan(cut, LastGrit.G3000)
                .orElseThrow();

        AbrasiveGrade lastMetal = last(path, Bond.METAL);
        AbrasiveGrade firstResin = path.stream()
                .filter(grade -> grade.bond() == Bond.RESIN)
                .findFirst()
                .orElseThrow();
        assertThat(path.get(0).key()).isEqualTo("metal-" + cut.number());
        assertThat(firstResin.number()).isLessThanOrEqualTo(lastMetal.number());
        assertThat(lastMetal.number()).isGreaterThanOrEqualTo(100);
        assertThat(path.get(path.size() - 1).key()).isEqualTo("resin-3000");
    }

    @Test
    void metal_is_not_left_before_it_has_become_fine_enough() {
        GritPath path = usual(GritSequence.standard());
        assertThat(path.legal(grade("metal-50"), grade("resin-50"))).isFalse();
        assertThat(path.legal(grade("metal-100"), grade("resin-50"))).isTrue();
        assertThat(path.legal(grade("metal-100"), grade("resin-100"))).isTrue();
        assertThat(path.legal(grade("metal-100"), grade("resin-200"))).isFalse();
    }

    @Test
    void a_crew_whose_finest_metal_is_coarse_leaves_metal_there() {
        GritSequence coarse = sequence(metal(30), metal(50), resin(50), resin(100), resin(200), resin(400));
        assertThat(keys(usual(coarse).plan(Cut.GRIND, LastGrit.G400).orElseThrow()))
                .containsExactly("metal-50", "resin-50", "resin-100", "resin-200", "resin-400");
    }

    @Test
    void no_bond_follows_a_finer_bond_backwards() {
        GritPath path = usual(GritSequence.standard());
        assertThat(path.legal(grade("resin-100"), grade("metal-200"))).isFalse();
        assertThat(path.legal(grade("resin-100"), grade("transition-200"))).isFalse();
        assertThat(path.legal(grade("transition-100"), grade("metal-200"))).isFalse();
    }

    /** The largest ratios published: 60-120-320 for resin, 40-150 for metal. */
    @Test
    void a_jump_is_legal_up_to_the_tolerated_ratio_and_not_beyond() {
        GritSequence resins = sequence(resin(100), resin(270), resin(271));
        assertThat(usual(resins).legal(resin(100), resin(270))).isTrue();
        assertThat(usual(resins).legal(resin(100), resin(271))).isFalse();

        GritSequence metals = sequence(metal(40), metal(150), metal(151), resin(100));
        assertThat(usual(metals).legal(metal(40), metal(150))).isTrue();
        assertThat(usual(metals).legal(metal(40), metal(151))).isFalse();
    }

    @Test
    void a_grade_never_follows_itself_or_a_finer_one_of_its_bond() {
        GritPath path = usual(GritSequence.standard());
        assertThat(path.legal(grade("resin-400"), grade("resin-400"))).isFalse();
        assertThat(path.legal(grade("resin-400"), grade("resin-200"))).isFalse();
    }

    @Test
    void close_grades_are_skipped_usually_and_used_where_no_grade_may_be_skipped() {
        GritSequence close = sequence(resin(100), resin(150), resin(200), resin(300), resin(400));
        assertThat(keys(usual(close).plan(Cut.COARSE_HONE, LastGrit.G400).orElseThrow()))
                .containsExactly("resin-100", "resin-200", "resin-400");
        GritPath noSkip = new GritPath(close, EVERY_BOND, StepRule.NO_SKIP, TransitionUse.SKIP, Parameters.standard());
        assertThat(keys(noSkip.plan(Cut.COARSE_HONE, LastGrit.G400).orElseThrow()))
                .containsExactly("resin-100", "resin-150", "resin-200", "resin-300", "resin-400");
    }

    @Test
    void fewer_wide_jumps_come_before_fewer_grades() {
        GritSequence sequence = sequence(resin(100), resin(200), resin(250), resin(500));
        assertThat(keys(usual(sequence).plan(Cut.COARSE_HONE, LastGrit.G400).orElseThrow()))
                .as("100-250-500 has fewer grades but a jump of 2.5")
                .containsExactly("resin-100", "resin-200", "resin-250", "resin-500");
    }

    @Test
    void a_transition_bond_stands_between_metal_and_resin_where_it_is_asked_for_and_there_is_one() {
        GritPath path = new GritPath(
                GritSequence.standard(), EVERY_BOND, StepRule.NO_SKIP, TransitionUse.USE, Parameters.standard());
        List<Bond> bonds = path.plan(Cut.GRIND, LastGrit.G800).orElseThrow().stream()
                .map(AbrasiveGrade::bond)
                .distinct()
                .toList();
        assertThat(bonds).containsExactly(Bond.METAL, Bond.TRANSITION, Bond.RESIN);
        assertThat(path.legal(grade("metal-100"), grade("resin-100"))).isFalse();
    }

    @Test
    void without_a_transition_bond_in_the_sequence_resin_follows_metal_even_where_one_is_asked_for() {
        GritSequence none = sequence(metal(50), metal(100), resin(100), resin(200), resin(400));
        GritPath path = new GritPath(none, EVERY_BOND, StepRule.USUAL, TransitionUse.USE, Parameters.standard());
        assertThat(keys(path.plan(Cut.GRIND, LastGrit.G400).orElseThrow()))
                .containsExactly("metal-50", "metal-100", "resin-100", "resin-200", "resin-400");
    }

    @Test
    void a_bond_that_the_floor_does_not_stand_is_not_in_the_path() {
        GritPath path = new GritPath(
                GritSequence.standard(),
                EnumSet.of(Bond.RESIN),
                StepRule.USUAL,
                TransitionUse.USE,
                Parameters.standard());
        assertThat(path.plan(Cut.GRIND, LastGrit.G400)).isEmpty();
        assertThat(path.plan(Cut.FINE_GRIND, LastGrit.G400).map(GritPathTest::keys))
                .contains(List.of("resin-50", "resin-100", "resin-200", "resin-400"));
    }

    @Test
    void a_gap_in_what_is_on_hand_leaves_no_path() {
        assertThat(usual(sequence(resin(100), resin(800))).plan(Cut.COARSE_HONE, LastGrit.G800))
                .isEmpty();
        assertThat(usual(sequence(resin(800), resin(3000))).plan(Cut.REFRESH, LastGrit.G3000))
                .isEmpty();
    }

    @Test
    void a_cut_finer_than_the_last_grade_is_not_made_and_its_grade_not_missed() {
        GritPath path = new GritPath(
                sequence(resin(50), resin(200)),
                GritSequence.standard(),
                EVERY_BOND,
                StepRule.USUAL,
                TransitionUse.SKIP,
                Parameters.standard());
        assertThat(keys(path.plan(Cut.FINE_HONE, LastGrit.G200).orElseThrow())).containsExactly("resin-200");
        assertThat(path.plan(Cut.FINE_HONE, LastGrit.G400)).isEmpty();
    }

    @Test
    void grades_on_hand_that_do_not_reach_the_first_cut_or_the_last_grade_leave_no_path() {
        GritSequence fine = sequence(resin(800), resin(1500), resin(3000));
        assertThat(usual(fine).plan(Cut.FINE_HONE, LastGrit.G3000)).isEmpty();
        GritSequence coarse = sequence(resin(50), resin(100), resin(200), resin(400));
        assertThat(usual(coarse).plan(Cut.HONE, LastGrit.G3000)).isEmpty();
        assertThat(usual(coarse).plan(Cut.GRIND, LastGrit.G400))
                .as("no metal at all")
                .isEmpty();
    }

    /** Common practice, no source: a number that the sequence lacks means the nearest that it has. */
    @Test
    void numbers_map_to_the_nearest_of_the_sequence_in_use() {
        GritSequence standard = GritSequence.standard();
        assertThat(standard.nearest(Bond.RESIN, 220)).contains(grade("resin-200"));
        assertThat(standard.nearest(Bond.RESIN, 120)).contains(grade("resin-100"));

        GritSequence other = sequence(resin(60), resin(120), resin(220), resin(400), resin(800));
        assertThat(keys(usual(other).plan(Cut.HONE, LastGrit.G800).orElseThrow()))
                .containsExactly("resin-220", "resin-400", "resin-800");
        assertThat(keys(usual(other).plan(Cut.COARSE_HONE, LastGrit.G200).orElseThrow()))
                .containsExactly("resin-120", "resin-220");
        assertThat(keys(usual(standard).plan(Cut.COARSE_HONE, LastGrit.G120).orElseThrow()))
                .containsExactly("resin-100");
    }

    /** Common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "G400, resin-400",
        "G800, resin-400 resin-800",
        "G1500, resin-400 resin-800 resin-1500",
        "G3000, resin-800 resin-1500 resin-3000",
        "G6000, resin-1500 resin-3000 resin-6000"
    })
    void a_refresh_is_the_last_three_grades_and_starts_no_coarser_than_400(LastGrit last, String grades) {
        assertThat(usual(GritSequence.standard()).plan(Cut.REFRESH, last).map(GritPathTest::keys))
                .contains(List.of(grades.split(" ")));
    }

    @Test
    void a_first_cut_finer_than_the_last_grade_is_the_last_grade_alone() {
        assertThat(usual(GritSequence.standard())
                        .plan(Cut.FINE_HONE, LastGrit.G200)
                        .map(GritPathTest::keys))
                .contains(List.of("resin-200"));
    }

    @Test
    void a_path_may_start_from_any_grade_in_use_and_from_no_other() {
        List<AbrasiveGrade> some = GritSequence.standard().grades().stream()
                .filter(grade -> grade.bond() == Bond.RESIN && grade.number() != 400)
                .toList();

        assertThat(usual(GritSequence.standard())
                        .from(grade("resin-400"), LastGrit.G1500)
                        .map(GritPathTest::keys))
                .contains(List.of("resin-400", "resin-800", "resin-1500"));
        assertThat(usual(GritSequence.of(some)).from(grade("resin-400"), LastGrit.G1500))
                .isEmpty();
        assertThat(usual(GritSequence.standard()).from(grade("resin-1500"), LastGrit.G400))
                .isEmpty();
    }

    private static GritPath usual(GritSequence sequence) {
        return new GritPath(sequence, EVERY_BOND, StepRule.USUAL, TransitionUse.SKIP, Parameters.standard());
    }

    private static AbrasiveGrade grade(String key) {
        return GritSequence.standard().get(key, "grade");
    }

    static AbrasiveGrade resin(int number) {
        return made(Bond.RESIN, number);
    }

    static AbrasiveGrade metal(int number) {
        return made(Bond.METAL, number);
    }

    private static AbrasiveGrade made(Bond bond, int number) {
        return new AbrasiveGrade(
                bond, number, Range.of(Length.of(1, Unit.MICROMETRE), Length.of(1000, Unit.MICROMETRE)));
    }

    static GritSequence sequence(AbrasiveGrade... grades) {
        return GritSequence.of(Arrays.asList(grades));
    }

    static List<String> keys(List<AbrasiveGrade> path) {
        return path.stream().map(AbrasiveGrade::key).toList();
    }

    private static AbrasiveGrade last(List<AbrasiveGrade> path, Bond bond) {
        Stream<AbrasiveGrade> members = path.stream().filter(grade -> grade.bond() == bond);
        Optional<AbrasiveGrade> last = members.reduce((first, second) -> second);
        return last.orElseThrow();
    }
}
