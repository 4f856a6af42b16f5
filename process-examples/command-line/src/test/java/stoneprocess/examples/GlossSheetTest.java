package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.site.GlossQuestion;
import stoneprocess.core.site.GritDone;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.StoneMix;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.sheet.GlossSheet;

class GlossSheetTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final GlossQuestion PLAIN =
            new GlossQuestion(Optional.empty(), new Gloss(2), Optional.empty(), List.of());
    private static final GlossQuestion SEMI_GLOSS =
            new GlossQuestion(Optional.of(new Gloss(35)), new Gloss(2), Optional.empty(), List.of());

    private static FloorSurvey sample(String name) {
        try {
            return Json.SURVEY.read(Files.readString(Path.of("surveys", name + ".json")));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static FloorSurvey ferryHall() {
        return sample("ferry-hall-granite");
    }

    /** The sheet with its line ends taken for spaces, so that a sentence can be looked for. */
    private static String sheet(FloorSurvey survey, GlossQuestion question) {
        return Texts.english()
                .page(GlossSheet.of(ADVISOR.recommend(survey), question))
                .replaceAll("\\s+", " ");
    }

    private static GlossQuestion done(GlossQuestion question, GritDone... done) {
        return new GlossQuestion(question.target(), question.within(), question.zone(), List.of(done));
    }

    private static GritDone read(int grit, double... gloss) {
        return new GritDone(grit, 8, Arrays.stream(gloss).mapToObj(Gloss::new).toList());
    }

    private static GlossReading lanes(double gloss, Geometry geometry, SurfaceState state) {
        return new GlossReading("lanes", geometry, new Gloss(gloss), state);
    }

    private static FloorSurvey ferryHallReading(double... gloss) {
        List<GlossReading> readings = new ArrayList<>();
        for (double one : gloss) {
            readings.add(lanes(one, Geometry.DEG_60, SurfaceState.CLEAN_DRY));
        }
        return ferryHall().toBuilder().readings(readings).build();
    }

    private static int number(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as(pattern + " in " + text).isTrue();
        return Integer.parseInt(matcher.group(1));
    }

    @Test
    void single_readings_of_worn_lanes_show_neither_interval_nor_gain() {
        assertThat(sheet(ferryHall(), PLAIN))
                .contains("lanes at 60 degrees: 1 reading, mean 9.4 GU, lowest 9.4 GU.")
                .contains("A single reading shows neither scatter nor gain: read at least once more.")
                .doesNotContain("The mean lies within");
        assertThat(sheet(ferryHall(), done(PLAIN, read(800, 10.9))))
                .contains(
                        "a gain of 1.5 GU, which shows nothing yet: 1 reading before and 1 reading after too few to know the scatter");
    }

    @Test
    void worn_lanes_tell_more_at_85_degrees_and_the_field_at_60() {
        String sheet = sheet(ferryHall(), PLAIN);
        assertThat(sheet)
                .contains(
                        "85 degrees is the better angle here: at 60 degrees it reads under 10 GU. It has not been read at that angle yet."
                                + " under the benches")
                .contains("60 degrees is the best angle here. - Not read at the survey: along the walls.");
        FloorSurvey both = ferryHall().toBuilder()
                .reading(lanes(22, Geometry.DEG_85, SurfaceState.CLEAN_DRY))
                .build();
        assertThat(sheet(both, PLAIN))
                .contains("at 85 degrees: 1 reading, mean 22 GU")
                .contains("85 degrees is the better angle here: at 60 degrees it reads under 10 GU. under the benches");
    }

    @Test
    void a_hard_floor_that_stays_dull_through_four_grits_never_gets_to_semi_gloss_by_polishing_grits() {
        String before = sheet(ferryHall(), SEMI_GLOSS);
        assertThat(before).contains("THE PLAN IS LIKELY TO REACH IT. The wanted gloss is 35 GU");
        String after = sheet(
                ferryHall(), done(SEMI_GLOSS, read(400, 4.5), read(800, 7.8), read(1500, 11.4), read(3000, 15.3)));
        assertThat(after)
                .contains("OUT OF REACH BY POLISHING GRITS ALONE. The wanted gloss is 35 GU")
                .contains(
                        "Out of reach (under 5 %), whichever polishing grit follows: at best resin 6000, with a chance of 1 %.")
                .contains("The floor was likely started too fine")
                .contains("Go back to a coarser start.")
                .contains("now, resin 3000 8 ")
                .contains("Based on 5 readings of this floor, taken on 5 occasions, and on common practice.");
    }

    @Test
    void each_grit_of_the_plan_has_an_interval_that_holds_its_middle() {
        String sheet = sheet(ferryHall(), PLAIN);
        for (int grit : new int[] {800, 1500, 3000}) {
            String row = "resin " + grit + " \\d+ ";
            int low = number(sheet, row + "(\\d+) to ");
            int high = number(sheet, row + "\\d+ to (\\d+) GU");
            int middle = number(sheet, row + "\\d+ to \\d+ GU (\\d+) GU");
            assertThat(low).isLessThan(middle);
            assertThat(middle).isLessThan(high);
            assertThat(high).isLessThanOrEqualTo(96);
        }
        assertThat(sheet).doesNotContain("resin 6000 8");
    }

    @Test
    void the_wanted_finish_gives_the_target_unless_a_gloss_is_asked_for() {
        assertThat(sheet(ferryHall(), PLAIN))
                .contains("Polish begins at 60 GU")
                .contains("Chance of 60 GU or more at the end of the plan, resin 3000: ");
        assertThat(sheet(ferryHall(), SEMI_GLOSS)).contains("Chance of 35 GU or more");
        FloorSurvey sampled = sample("reading-room-marble").toBuilder()
                .set(SurveyField.GOAL, Goal.MATCH_SAMPLE)
                .set(SurveyField.GOAL_GLOSS, new Gloss(66))
                .build();
        assertThat(sheet(sampled, PLAIN)).contains("The wanted gloss is 66 GU");
    }

    @Test
    void more_is_less_likely_and_both_places_tell_the_same_chance() {
        int least = 101;
        for (double target : new double[] {20, 35, 50, 70}) {
            GlossQuestion question =
                    new GlossQuestion(Optional.of(new Gloss(target)), new Gloss(2), Optional.empty(), List.of());
            String sheet = sheet(ferryHall(), question);
            int chance = number(sheet, "the last grit of the plan \\([^)]*\\), is (\\d+) %");
            assertThat(number(sheet, "at the end of the plan, resin 3000: (\\d+) %"))
                    .isEqualTo(chance);
            assertThat(chance).isLessThan(least);
            least = chance;
        }
    }

    @Test
    void a_grit_beyond_the_plan_is_named_as_such() {
        GlossQuestion asked = new GlossQuestion(Optional.of(new Gloss(50)), new Gloss(2), Optional.empty(), List.of());
        assertThat(sheet(ferryHall(), asked))
                .contains("A GRIT BEYOND THE PLAN IS LIKELY TO REACH IT.")
                .contains("to reach it is resin 6000, with ")
                .contains("; the plan stops before it.");
    }

    @Test
    void more_than_the_ceiling_is_refused_as_a_target() {
        GlossQuestion mirror =
                new GlossQuestion(Optional.of(new Gloss(120)), new Gloss(2), Optional.empty(), List.of());
        assertThat(sheet(ferryHall(), mirror))
                .contains("MORE THAN THE STONE CAN READ.")
                .contains("120 GU is more than the stone can read: 96 GU when perfectly smooth.")
                .doesNotContain("The chance of");
    }

    @Test
    void without_readings_the_forecast_rests_on_defaults_and_says_so() {
        assertThat(sheet(ferryHallReading(), PLAIN))
                .contains("Not read at the survey: lanes, under the benches, along the walls.")
                .contains("Based on common practice alone, without a reading of this floor")
                .contains("so the scatter is not known. Read three times, then ask again.")
                .doesNotContain("zone lanes");
        assertThat(sheet(ferryHall(), PLAIN)).contains("Based on 1 reading of this floor, taken on 1 occasion");
    }

    @Test
    void several_readings_give_mean_interval_lowest_and_the_scatter_to_plan_with() {
        // 3, 4, 5: mean 4, standard deviation 1, t(2; 0.975) = 4.303 (table of Student's t): 4 +- 2.48.
        String sheet = sheet(ferryHallReading(3, 4, 5), PLAIN);
        assertThat(sheet)
                .contains("3 readings, mean 4 GU, lowest 3 GU. The mean lies within 1.52 to 6.48 GU (95 %);"
                        + " single readings scatter by 1 GU.")
                // 4 readings: 3.182 / 2 = 1.59 GU; 3 readings: 2.48 GU.
                .contains("4 readings lanes: scatter 1 GU, from its own 3 readings");
    }

    @Test
    void a_gain_beyond_scatter_is_real_and_one_within_it_is_not() {
        FloorSurvey steady = ferryHallReading(9.3, 9.4, 9.5);
        assertThat(sheet(steady, done(PLAIN, read(800, 29, 30, 31)))).contains("real, beyond scatter and meter.");
        assertThat(sheet(steady, done(PLAIN, read(800, 9.2, 9.5, 9.8))))
                .contains("which does not stand out from scatter and meter.");
        assertThat(sheet(steady, done(PLAIN, read(800, 8.7, 8.8)))).contains("a loss of 0.65 GU");
    }

    @ParameterizedTest
    @CsvSource({"WET, wet: the meter reads the water film", "SOILED, soiled: the meter reads dirt or slurry"})
    void a_reading_of_no_use_is_set_aside_with_the_reason(SurfaceState state, String reason) {
        FloorSurvey survey = ferryHall().toBuilder()
                .reading(lanes(41, Geometry.DEG_60, state))
                .build();
        assertThat(sheet(survey, PLAIN))
                .contains("Set aside, lanes, 41 GU at 60 degrees: " + reason)
                .contains("lanes at 60 degrees: 1 reading, mean 9.4 GU");
    }

    @Test
    void more_than_the_stone_can_read_is_suspected_and_left_out() {
        String sheet = sheet(ferryHallReading(9.4, 110), PLAIN);
        assertThat(sheet)
                .contains("TOO HIGH FOR THE STONE: 110 GU. The stone reads 96 GU at most at 60 degrees.")
                .contains("Based on 1 reading of this floor");
    }

    @Test
    void a_coating_or_doubt_about_one_is_told() {
        FloorSurvey waxed =
                ferryHall().toBuilder().set(SurveyField.COATING, Coating.WAX).build();
        assertThat(sheet(waxed, PLAIN)).contains("FILM: the survey names a coating (wax).");
        FloorSurvey doubtful =
                ferryHall().toBuilder().unknown(SurveyField.COATING).build();
        assertThat(sheet(doubtful, PLAIN)).contains("Whether there is a coating on the surface is not known");
        assertThat(sheet(ferryHall(), PLAIN)).doesNotContain("coating");
    }

    @Test
    void more_than_a_grit_gives_makes_one_look_for_a_film() {
        String sheet = sheet(ferryHall(), done(PLAIN, read(200, 50)));
        assertThat(sheet)
                .contains("FILM: 50 GU is more than resin 200 gives")
                .contains("Look for water or coating and for residue");
        assertThat(sheet(ferryHall(), done(PLAIN, read(200, 5)))).doesNotContain("FILM");
    }

    @Test
    void a_floor_without_a_ceiling_uses_that_of_any_stone_and_says_so() {
        assertThat(sheet(sample("boat-shed-concrete"), PLAIN))
                .contains("139 GU 121 GU 101 GU the most that any stone reads; for concrete it is not known")
                .contains("The figures are for stone.");
        assertThat(sheet(ferryHall(), PLAIN))
                .contains("93 GU 96 GU 100 GU granite")
                .doesNotContain("any stone");
    }

    @Test
    void after_metal_the_old_reading_no_longer_counts_and_the_first_resin_grit_is_dull() {
        String sheet = sheet(sample("boat-shed-concrete"), PLAIN);
        assertThat(sheet).contains("Metal and transition grits grind the old surface away");
        assertThat(number(sheet, "resin 100 \\d+ \\d+ to \\d+ GU (\\d+) GU")).isLessThan(10);
        FloorSurvey concrete = sample("boat-shed-concrete");
        FloorSurvey read = concrete.toBuilder()
                .reading(new GlossReading("show floor", Geometry.DEG_60, new Gloss(40), SurfaceState.CLEAN_DRY))
                .build();
        assertThat(sheet(read, PLAIN)).contains("without a reading of this floor");
    }

    @ParameterizedTest
    @CsvSource({
        "soapstone, the stone is soft",
        "porcelain, the floor is machine-made",
        "quartzite, the material is not known well enough"
    })
    void a_soft_a_machine_made_and_an_unknown_stone_have_no_forecast(String stone, String why) {
        FloorSurvey survey =
                FloorSurvey.builder("Hall").set(SurveyField.STONE_NAME, stone).build();
        String sheet = sheet(survey, PLAIN);
        assertThat(sheet).startsWith("Hall: gloss =========== NO FORECAST. ");
        assertThat(sheet.toLowerCase(Locale.ROOT)).contains(why);
        assertThat(sheet).doesNotContain("half of them over").doesNotContain("The chance of");
    }

    @Test
    void hard_and_soft_side_by_side_have_no_forecast() {
        FloorSurvey mixed = ferryHall().toBuilder()
                .set(SurveyField.MIX, StoneMix.MIXED_HARDNESS)
                .build();
        assertThat(sheet(mixed, PLAIN))
                .contains("Hard and soft stones lie side by side: each has readings of its own.");
    }

    @ParameterizedTest
    @CsvSource({
        "market-arcade-limestone, the work is refused.",
        "pilot-house-bath, the floor and what is wanted conflict.",
        "guest-house-foyer, The plan does not cut the open field",
        "lighthouse-unknown-stone, The material is not known well enough"
    })
    void where_nothing_can_be_foretold_the_cause_is_told_and_the_rest_is_printed(String name, String cause) {
        assertThat(sheet(sample(name), PLAIN))
                .contains("NO FORECAST.")
                .contains(cause)
                .contains("What the floor could reach")
                .contains("Readings for a mean within 2 GU")
                .contains("Gloss says nothing about grip.");
    }

    @Test
    void a_hone_has_no_lower_limit() {
        assertThat(sheet(sample("customs-house-terrazzo"), PLAIN))
                .contains("FORECAST. A hone has no lower limit of gloss")
                .doesNotContain("The chance of");
    }

    @Test
    void the_dullest_zone_of_the_open_field_is_forecast_unless_another_is_asked_for() {
        GlossQuestion benches =
                new GlossQuestion(Optional.empty(), new Gloss(2), Optional.of("under the benches"), List.of());
        String lanes = sheet(ferryHall(), PLAIN);
        String other = sheet(ferryHall(), benches);
        assertThat(lanes).contains("60 degrees, lanes");
        assertThat(other).contains("60 degrees, under the benches");
        assertThat(number(other, "resin 800 \\d+ (\\d+) to")).isGreaterThan(number(lanes, "resin 800 \\d+ (\\d+) to"));
    }

    @Test
    void a_zone_that_the_survey_lacks_is_refused_by_name() {
        GlossQuestion roof = new GlossQuestion(Optional.empty(), new Gloss(2), Optional.of("roof"), List.of());
        assertThatThrownBy(() -> sheet(ferryHall(), roof))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("zone: 'roof' is not accepted; accepted: one of lanes, under the benches, along the walls");
    }

    @Test
    void a_half_width_that_no_meter_gives_is_refused() {
        GlossQuestion tiny = new GlossQuestion(Optional.empty(), new Gloss(0.0001), Optional.empty(), List.of());
        assertThatThrownBy(() -> sheet(ferryHall(), tiny))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("within: '0.0001 GU' is not accepted");
    }

    @Test
    void hold_points_of_one_grit_are_one_stage() {
        GritDone early = new GritDone(800, 3, List.of(new Gloss(12)));
        GritDone late = new GritDone(800, 6, List.of(new Gloss(18)));
        assertThat(sheet(ferryHall(), done(PLAIN, early, late)))
                .contains("after resin 800, 3 passes")
                .contains("now, resin 800 6 ")
                .contains("Based on 3 readings of this floor, taken on 3 occasions");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "boat-shed-concrete",
                "customs-house-terrazzo",
                "ferry-hall-granite",
                "guest-house-foyer",
                "lighthouse-unknown-stone",
                "market-arcade-limestone",
                "pilot-house-bath",
                "reading-room-marble"
            })
    void lines_are_short_and_both_unit_systems_read_the_same(String name) {
        Recommendation recommendation = ADVISOR.recommend(sample(name));
        String metric = Texts.english().page(GlossSheet.of(recommendation, PLAIN));
        assertThat(metric.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(96));
        assertThat(metric).endsWith(".\n").doesNotContain("\r", " \n", "null", "NaN");
        assertThat(Texts.english().in(UnitSystem.US).page(GlossSheet.of(recommendation, PLAIN)))
                .isEqualTo(metric);
    }
}
