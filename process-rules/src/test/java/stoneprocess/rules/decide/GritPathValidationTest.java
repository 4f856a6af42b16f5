package stoneprocess.rules.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static stoneprocess.rules.decide.GritPathTest.keys;
import static stoneprocess.rules.decide.GritPathTest.metal;
import static stoneprocess.rules.decide.GritPathTest.resin;
import static stoneprocess.rules.decide.GritPathTest.sequence;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.LastGrit;
import stoneprocess.core.topic.StepRule;
import stoneprocess.core.topic.TransitionUse;

/** Published sequences, each planned with the grades that it names. */
class GritPathValidationTest {
    /**
     * Second-hand: a third party's worksheet that cites a national analysis of public-works rates (2019). Plausibility
     * of order and ratio only.
     */
    @Test
    void the_terrazzo_rate_of_public_works_runs_60_120_320() {
        GritPath path = path(sequence(resin(60), resin(120), resin(320)), StepRule.NO_SKIP);
        assertThat(keys(path.plan(Cut.FINE_GRIND, LastGrit.G400).orElseThrow()))
                .containsExactly("resin-60", "resin-120", "resin-320");
    }

    /** Second-hand, the same worksheet. Plausibility of order and ratio only. */
    @Test
    void the_marble_rate_of_public_works_runs_80_150_320() {
        GritPath path = path(sequence(resin(80), resin(150), resin(320)), StepRule.NO_SKIP);
        assertThat(keys(path.plan(Cut.COARSE_HONE, LastGrit.G400).orElseThrow()))
                .containsExactly("resin-80", "resin-150", "resin-320");
    }

    /**
     * Concrete Construction magazine: metal 40 to 80, then 150, resin stages to 800, optionally 3000. The resin grades
     * below 800 are common practice, no source.
     */
    @Test
    void a_true_grind_and_polish_of_concrete_runs_metal_40_80_150_and_resin_to_800_or_3000() {
        GritSequence grades = sequence(
                metal(40),
                metal(80),
                metal(150),
                resin(100),
                resin(200),
                resin(400),
                resin(800),
                resin(1500),
                resin(3000));
        GritPath path = path(grades, StepRule.NO_SKIP);

        assertThat(keys(path.plan(Cut.GRIND, LastGrit.G800).orElseThrow()))
                .containsExactly(
                        "metal-40", "metal-80", "metal-150", "resin-100", "resin-200", "resin-400", "resin-800");
        assertThat(keys(path.plan(Cut.GRIND, LastGrit.G3000).orElseThrow()))
                .endsWith("resin-800", "resin-1500", "resin-3000");
    }

    /** Concrete Construction magazine: a crew without the 80 goes from metal 40 to 150, a ratio of 3.75. */
    @Test
    void concrete_may_go_from_metal_40_straight_to_150() {
        GritPath path =
                path(sequence(metal(40), metal(150), resin(100), resin(200), resin(400), resin(800)), StepRule.USUAL);
        assertThat(keys(path.plan(Cut.GRIND, LastGrit.G800).orElseThrow()))
                .startsWith("metal-40", "metal-150", "resin-100");
    }

    private static GritPath path(GritSequence sequence, StepRule rule) {
        return new GritPath(sequence, EnumSet.allOf(Bond.class), rule, TransitionUse.USE, Parameters.standard());
    }
}
