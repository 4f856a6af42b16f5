package stoneprocess.core.gloss;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Hardness;

/**
 * A hard floor that was started at 800 and read once after each grit: 3.7, 4.8 and 7.8 GU at 60 degrees. Common
 * practice, no source.
 */
class HardFloorTest {
    private static final Parameters STANDARD = Parameters.standard();
    private static final GlossCeiling GRANITE = GlossCeiling.of(Family.GRANITE).orElseThrow();
    private static final Gloss SEMI_GLOSS = STANDARD.get("finish.semi-gloss", Gloss.class);
    private static final List<Gloss> READ = List.of(new Gloss(3.7), new Gloss(4.8), new Gloss(7.8));
    private static final int[] GRITS = {800, 1500, 3000};

    private static ReadingSet single(Gloss gloss) {
        return ReadingSet.of(
                List.of(new Reading("mid", "field", Direction.ALONG, Geometry.DEG_60, gloss, FaceState.CLEAN_DRY)),
                Geometry.DEG_60);
    }

    private static GlossForecast afterGrits(int count) {
        List<GritStage> stages = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            stages.add(GritStage.readAtEnd(GRITS[i], 8, single(READ.get(i))));
        }
        return GlossForecast.of(new WorkSoFar(Hardness.HARD, GRANITE, Optional.empty(), stages), STANDARD);
    }

    @Test
    void single_readings_prove_none_of_its_gains() {
        for (int i = 1; i < READ.size(); i++) {
            Gain gain = Gain.of(List.of(READ.get(i - 1)), List.of(READ.get(i)), STANDARD);
            assertThat(gain.verdict()).isEqualTo(GainVerdict.NOT_ENOUGH_READINGS);
            assertThat(gain.change().glossUnits()).isPositive();
            assertThat(List.of(gain.missingBefore(), gain.missingAfter())).containsExactly(1, 1);
        }
    }

    @Test
    void all_its_readings_lie_where_85_degrees_resolves_better() {
        assertThat(READ)
                .allSatisfy(gloss ->
                        assertThat(GeometryAdvice.best(gloss, STANDARD)).isEqualTo(Geometry.DEG_85));
    }

    @Test
    void before_the_work_semi_gloss_was_likely() {
        GlossForecast before = GlossForecast.of(WorkSoFar.none(Hardness.HARD, GRANITE), STANDARD);
        List<PlannedGrit> plan = List.of(new PlannedGrit(800, 8), new PlannedGrit(1500, 8), new PlannedGrit(3000, 8));
        assertThat(before.basis().defaultsOnly()).isTrue();
        assertThat(before.outlook(SEMI_GLOSS, plan).verdict()).isEqualTo(TargetVerdict.FINER_GRIT);
        assertThat(before.outlook(SEMI_GLOSS, plan).startedTooFine()).isFalse();
    }

    @Test
    void semi_gloss_is_out_of_reach_whatever_the_passes() {
        GlossForecast forecast = afterGrits(3);
        for (int more : new int[] {0, 1, 5, 20, 100, 1000}) {
            assertThat(forecast.probability(SEMI_GLOSS, List.of(new PlannedGrit(3000, more))))
                    .isLessThan(new Share(1));
        }
        TargetOutlook outlook = forecast.outlook(SEMI_GLOSS, List.of(new PlannedGrit(6000, 20)));
        assertThat(outlook.verdict()).isEqualTo(TargetVerdict.OUT_OF_REACH);
        assertThat(outlook.reachedBy()).isEmpty();
        assertThat(outlook.best().orElseThrow().probability()).isLessThan(new Share(1));
    }

    @Test
    void so_the_floor_was_started_too_fine() {
        TargetOutlook outlook = afterGrits(3).outlook(SEMI_GLOSS, List.of());
        assertThat(outlook.startedTooFine()).isTrue();
        assertThat(outlook.oldDamage()).isGreaterThan(new Share(95));
        assertThat(outlook.basis().readings()).isEqualTo(3);
        assertThat(outlook.basis().occasions()).isEqualTo(3);
    }

    @Test
    void each_reading_makes_the_trouble_surer() {
        List<PlannedGrit> finest = List.of(new PlannedGrit(6000, 8));
        Share one = afterGrits(1).outlook(SEMI_GLOSS, finest).oldDamage();
        Share two = afterGrits(2).outlook(SEMI_GLOSS, finest).oldDamage();
        Share three = afterGrits(3).outlook(SEMI_GLOSS, finest).oldDamage();
        assertThat(List.of(one, two, three)).isSorted().doesNotHaveDuplicates();
    }

    @Test
    void a_floor_that_reads_as_usual_was_not_started_too_fine() {
        GlossForecast usual = GlossForecast.of(
                new WorkSoFar(
                        Hardness.HARD,
                        GRANITE,
                        Optional.empty(),
                        List.of(GritStage.readAtEnd(800, 8, single(new Gloss(30))))),
                STANDARD);
        TargetOutlook outlook = usual.outlook(SEMI_GLOSS, List.of(new PlannedGrit(1500, 8), new PlannedGrit(3000, 8)));
        assertThat(outlook.verdict()).isEqualTo(TargetVerdict.FINER_GRIT);
        assertThat(outlook.startedTooFine()).isFalse();
        assertThat(outlook.oldDamage()).isLessThan(new Share(5));
    }

    /** The example of decision 10, with invented readings. */
    @Test
    void without_old_damage_the_next_grit_would_still_promise_semi_gloss() {
        int[] grits = {400, 800, 1500, 3000};
        double[] read = {4.5, 7.8, 11.4, 15.3};
        List<GritStage> stages = new ArrayList<>();
        for (int i = 0; i < grits.length; i++) {
            stages.add(GritStage.readAtEnd(grits[i], 8, single(new Gloss(read[i]))));
        }
        WorkSoFar work = new WorkSoFar(Hardness.HARD, GRANITE, Optional.empty(), stages);
        Parameters noDamage = STANDARD.with("gloss-start.too-fine", new Share(0));
        List<PlannedGrit> finest = List.of(new PlannedGrit(6000, 20));
        Share without = GlossForecast.of(work, noDamage).probability(SEMI_GLOSS, finest);
        Share with = GlossForecast.of(work, STANDARD).probability(SEMI_GLOSS, finest);
        assertThat(without).isBetween(new Share(65), new Share(70));
        assertThat(with).isBetween(new Share(3), new Share(4));
    }
}
