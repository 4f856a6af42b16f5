package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.GritStage;
import stoneprocess.core.gloss.LevelReading;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.site.FloorForecast;
import stoneprocess.core.site.FloorGloss;
import stoneprocess.core.site.GlossQuestion;
import stoneprocess.core.site.GlossStart;
import stoneprocess.core.site.ReadingsNeeded;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.EtchClass;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.Acceptance;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.text.Detail;
import stoneprocess.rules.text.PlanText;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.sheet.GlossSheet;

/** What a start too fine leaves stays under the gloss. The floors are invented; that no pass brings it back is common practice. */
class StartAndFinishTest {
    private static final int FLOORS = 10;

    /** In GU; the grid drops weights that do not matter. */
    private static final double ROUNDING = 0.05;

    private static final Advisor ADVISOR = Advisor.standard();

    private static final GlossQuestion PLAIN =
            new GlossQuestion(Optional.empty(), new Gloss(2), Optional.empty(), List.of());

    private static Recommendation drawn(int seed) {
        Random random = new Random(seed);
        List<Damage> damages = new ArrayList<>();
        damages.add(Floors.dull(10 + random.nextInt(90)));
        ScratchClass[] scratches = ScratchClass.values();
        ScratchClass look = scratches[random.nextInt(scratches.length)];
        if (look != ScratchClass.NONE) {
            damages.add(Floors.scratched(look, 5 + random.nextInt(90)));
        }
        boolean marble = random.nextBoolean();
        if (marble && random.nextBoolean()) {
            damages.add(Floors.etched(EtchClass.GLOSS_LOST, 20));
        }
        Damage[] found = damages.toArray(Damage[]::new);
        Goal[] goals = {Goal.SATIN, Goal.SEMI_GLOSS, Goal.POLISH, Goal.HIGH_GLOSS, Goal.JUST_BETTER};
        FloorSurvey.Builder floor = marble ? Floors.calciteMarble(found) : Floors.damaged(found);
        floor.set(SurveyField.GOAL, goals[random.nextInt(goals.length)]);
        if (random.nextBoolean()) {
            floor.reading(new GlossReading(
                    "whole", Geometry.DEG_60, new Gloss(3 + random.nextInt(50)), SurfaceState.CLEAN_DRY));
        }
        return ADVISOR.recommend(floor.build());
    }

    private static Optional<FloorForecast> forecast(Recommendation plan, List<GritStage> done) {
        return FloorForecast.obstacles(plan, TrackKind.OPEN_FIELD).isEmpty()
                ? Optional.of(FloorForecast.of(
                        plan, TrackKind.OPEN_FIELD, FloorForecast.start(plan, TrackKind.OPEN_FIELD, "whole"), done))
                : Optional.empty();
    }

    /** The first pair of neighbours of which the coarser start brings less; empty when none does. */
    private static Optional<String> lowered(List<GlossStart> starts) {
        for (int i = 1; i < starts.size(); i++) {
            GlossPrediction coarser = starts.get(i - 1).end();
            GlossPrediction finer = starts.get(i).end();
            if (below(coarser.interval().low(), finer.interval().low())
                    || below(coarser.median(), finer.median())
                    || below(coarser.interval().high(), finer.interval().high())) {
                return Optional.of(starts.get(i - 1).grade().key() + " below "
                        + starts.get(i).grade().key());
            }
        }
        return Optional.empty();
    }

    private static boolean below(Gloss gloss, Gloss than) {
        return gloss.gloss() < than.gloss() - ROUNDING;
    }

    private static boolean isDeep(Recommendation plan) {
        return plan.survey().zones().get(0).damages().get(DamageKind.SCRATCHES).severity(plan.parameters())
                >= ScratchClass.FELT_BY_NAIL.ordinal();
    }

    @Test
    void a_coarser_start_never_lowers_the_final_gloss_and_raises_it_on_a_deeply_worn_floor() {
        holds(FLOORS);
    }

    @Tag("slow")
    @Test
    void a_coarser_start_never_lowers_the_final_gloss_of_many_floors() {
        holds(10 * FLOORS);
    }

    private static void holds(int floors) {
        int met = 0;
        int pairs = 0;
        int deep = 0;
        for (int seed = 0; seed < floors; seed++) {
            Recommendation plan = drawn(seed);
            Optional<FloorForecast> forecast = forecast(plan, List.of());
            List<GlossStart> starts = forecast.map(FloorForecast::starts).orElse(List.of());
            if (starts.size() < 2) {
                continue;
            }
            met++;
            pairs += starts.size() - 1;
            assertThat(lowered(starts)).as("floor %d", seed).isEmpty();
            GlossPrediction end = starts.stream()
                    .filter(GlossStart::planned)
                    .findFirst()
                    .orElseThrow()
                    .end();
            List<GlossPrediction> ends = forecast.orElseThrow().ends();
            assertThat(end).as("floor %d", seed).isEqualTo(ends.get(ends.size() - 1));
            GlossStart finest = starts.get(starts.size() - 1);
            if (isDeep(plan) && finest.damage().left().low().millimetres() > 0) {
                deep++;
                assertThat(end.median().gloss())
                        .as("floor %d", seed)
                        .isGreaterThan(1.2 * finest.end().median().gloss());
            }
        }
        System.out.printf("coarser and finer starts side by side: %d pairs on %d of %d floors%n", pairs, met, floors);
        assertThat(met).isGreaterThan(floors / 2);
        assertThat(pairs).isGreaterThanOrEqualTo(floors);
        assertThat(deep).isGreaterThan(floors / 5);
    }

    @Test
    void a_start_that_brings_less_than_a_finer_one_is_found() {
        List<GlossStart> starts =
                forecast(deeplyWorn(Goal.POLISH), List.of()).orElseThrow().starts();
        List<GlossStart> spoilt = new ArrayList<>(starts);
        GlossStart coarser = starts.get(0);
        GlossStart finest = starts.get(starts.size() - 1);
        spoilt.set(0, new GlossStart(coarser.grade(), false, coarser.damage(), finest.end()));
        assertThat(lowered(spoilt)).isPresent();
        assertThat(lowered(starts)).isEmpty();
    }

    private static Recommendation deeplyWorn(Goal goal) {
        return ADVISOR.recommend(Floors.calciteMarble(Floors.dull(80), Floors.scratched(ScratchClass.FELT_BY_NAIL, 80))
                .set(SurveyField.GOAL, goal)
                .build());
    }

    @Test
    void work_that_began_at_800_on_a_deeply_worn_floor_promises_less_than_work_that_began_at_200() {
        Recommendation plan = deeplyWorn(Goal.POLISH);
        double from200 = chance(plan, 200);
        double from800 = chance(plan, 800);
        assertThat(from200).isGreaterThan(40);
        assertThat(from800).isLessThan(from200 / 2);
    }

    private static double chance(Recommendation plan, int start) {
        List<GritStage> done = List.of(new GritStage(start, 8, List.of()));
        return forecast(plan, done).orElseThrow().chance(new Gloss(60)).percent();
    }

    @Test
    void low_readings_after_a_fine_start_make_a_coarser_one_worth_while() {
        Recommendation plan = ADVISOR.recommend(Floors.wornGranite());
        List<GritStage> dull = List.of(read(800, 4), read(1500, 7), read(3000, 10));
        List<GritStage> bright = List.of(read(800, 25), read(1500, 45), read(3000, 65));
        assertThat(gain(plan, dull)).isGreaterThan(10);
        assertThat(gain(plan, bright)).isLessThan(3);
    }

    private static GritStage read(int grit, double gloss) {
        return new GritStage(grit, 8, List.of(new LevelReading(8, new Gloss(gloss), 3)));
    }

    /** What the coarsest start brings over what the floor reads now. */
    private static double gain(Recommendation plan, List<GritStage> done) {
        FloorForecast forecast = forecast(plan, done).orElseThrow();
        return forecast.starts().get(0).end().median().gloss()
                - forecast.now().orElseThrow().median().gloss();
    }

    @Test
    void only_better_than_now_is_not_headlined_as_a_polish_and_warns_of_a_start_that_is_too_fine() {
        Recommendation plan = justBetter(6);
        assertThat(plan.values(Topics.ACCEPTANCES, Subject.FLOOR)).contains(Acceptance.OLD_DAMAGE_STAYS);
        String front = Texts.english().page(new PlanText(ADVISOR.rulebase().cards()).document(plan, Detail.BRIEF));
        assertThat(front).contains("Finish: only better than now.").doesNotContain("Finish: polish");
        assertThat(Texts.english().page(GlossSheet.of(plan, PLAIN)))
                .contains("ONLY BETTER THAN NOW")
                .doesNotContain("LIKELY TO REACH IT");
        assertThat(justBetter(45).values(Topics.ACCEPTANCES, Subject.FLOOR))
                .doesNotContain(Acceptance.OLD_DAMAGE_STAYS);
    }

    private static Recommendation justBetter(double reads) {
        return ADVISOR.recommend(Floors.damaged(Floors.dull(60))
                .set(SurveyField.GOAL, Goal.JUST_BETTER)
                .reading(new GlossReading("whole", Geometry.DEG_60, new Gloss(reads), SurfaceState.CLEAN_DRY))
                .build());
    }

    @Test
    void no_more_than_nine_readings_are_asked_for_and_what_they_cannot_show_is_told() {
        int beyond = 0;
        Random random = new Random(19);
        for (int i = 0; i < 60; i++) {
            List<Double> reads =
                    random.doubles(1 + random.nextInt(5), 2, 60).boxed().toList();
            FloorSurvey.Builder floor = Floors.damaged(Floors.dull(60));
            reads.forEach(gloss -> floor.reading(
                    new GlossReading("whole", Geometry.DEG_60, new Gloss(gloss), SurfaceState.CLEAN_DRY)));
            ReadingsNeeded needed = needed(floor.build());
            assertThat(needed.number()).isBetween(2, 9);
            assertThat(needed.known()).isEqualTo(needed.shows().gloss() <= 2);
            beyond += needed.known() ? 0 : 1;
        }
        assertThat(beyond).isBetween(15, 59);
    }

    private static ReadingsNeeded needed(FloorSurvey floor) {
        FloorSurvey held =
                floor.toBuilder().set(SurveyField.STONE_NAME, "porcelain").build();
        return FloorGloss.of(ADVISOR.recommend(held), PLAIN).needed().get(0);
    }
}
