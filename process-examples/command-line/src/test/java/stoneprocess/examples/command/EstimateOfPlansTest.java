package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.estimate.Assumption;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.Spread;
import stoneprocess.core.estimate.Work;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.sheet.EstimateSheet;

/** What holds for the estimates of real plans. */
class EstimateOfPlansTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final List<Goal> COARSE_TO_FINE =
            List.of(Goal.HONE, Goal.SATIN, Goal.SEMI_GLOSS, Goal.POLISH, Goal.HIGH_GLOSS);

    private static FloorSurvey sample(String name) throws IOException {
        return Json.SURVEY.read(Files.readString(Path.of("surveys", name + ".json")));
    }

    private static Optional<Estimate> estimate(FloorSurvey survey) {
        Recommendation recommendation = ADVISOR.recommend(survey);
        return recommendation
                .plan()
                .filter(plan -> !plan.tracks().isEmpty())
                .map(plan ->
                        PlannedJob.of(recommendation, JobOptions.defaults()).estimate());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"ferry-hall-granite", "reading-room-marble", "customs-house-terrazzo", "boat-shed-concrete"})
    void a_finer_finish_of_the_same_floor_never_takes_less(String name) throws IOException {
        List<Estimate> estimates = new ArrayList<>();
        for (Goal goal : COARSE_TO_FINE) {
            estimate(sample(name).toBuilder()
                            .set(SurveyField.GOAL, goal)
                            .unknown(SurveyField.GOAL_GLOSS)
                            .unknown(SurveyField.GRADES)
                            .build())
                    .ifPresent(estimates::add);
        }
        assertThat(estimates).as("finishes that can be planned").isNotEmpty();
        for (int i = 1; i < estimates.size(); i++) {
            Estimate lower = estimates.get(i - 1);
            Estimate finer = estimates.get(i);
            // A hone has pits grouted whose cure takes one more visit, and a visit is begun and ended; the grout is cut
            // off by
            // its last grit once more, where a finer finish goes on to the next.
            boolean waitsAlike =
                    finer.calendar().waiting().equals(lower.calendar().waiting());
            for (Function<Spread<TimeSpan>, TimeSpan> figure :
                    List.<Function<Spread<TimeSpan>, TimeSpan>>of(Spread::low, Spread::likely, Spread::high)) {
                assertThat(hours(finer, figure, waitsAlike)).isGreaterThanOrEqualTo(hours(lower, figure, waitsAlike));
            }
            // A polish may do without the sealer that a hone waits for.
            if (waitsAlike) {
                assertThat(finer.calendar().days().likely())
                        .isGreaterThanOrEqualTo(lower.calendar().days().likely());
            }
        }
    }

    private static double hours(Estimate estimate, Function<Spread<TimeSpan>, TimeSpan> figure, boolean withDaily) {
        return estimate.work().stream()
                .filter(line ->
                        withDaily || line.work() != Work.DAILY && !line.name().contains("cut-grout"))
                .mapToDouble(line -> figure.apply(line.personHours()).minutes())
                .sum();
    }

    @Test
    void at_least_one_floor_has_three_finishes_of_which_each_takes_more() throws IOException {
        List<Double> hours = new ArrayList<>();
        for (Goal goal : COARSE_TO_FINE) {
            estimate(sample("reading-room-marble").toBuilder()
                            .set(SurveyField.GOAL, goal)
                            .build())
                    .map(one -> one.personHours().likely().minutes())
                    .filter(minutes -> !hours.contains(minutes))
                    .ifPresent(hours::add);
        }
        assertThat(hours).hasSizeGreaterThanOrEqualTo(3).isSorted();
    }

    /** A larger floor may bring a wider machine or more weight, and then it may well take less. */
    @ParameterizedTest
    @ValueSource(
            strings = {"ferry-hall-granite", "reading-room-marble", "customs-house-terrazzo", "boat-shed-concrete"})
    void a_larger_floor_with_the_same_machines_and_passes_never_takes_less(String name) throws IOException {
        List<Estimate> estimates = new ArrayList<>();
        for (double area : new double[] {2, 3.9, 4, 5, 9, 12, 29, 31, 100, 400, 2000}) {
            estimate(sample(name).toBuilder()
                            .set(SurveyField.AREA, new Area(area))
                            .build())
                    .ifPresent(estimates::add);
        }
        int compared = 0;
        for (int i = 1; i < estimates.size(); i++) {
            Estimate smaller = estimates.get(i - 1);
            Estimate larger = estimates.get(i);
            if (tools(smaller).equals(tools(larger))) {
                compared++;
                assertThat(larger.personHours().low())
                        .isGreaterThanOrEqualTo(smaller.personHours().low());
                assertThat(larger.personHours().likely())
                        .isGreaterThanOrEqualTo(smaller.personHours().likely());
                assertThat(larger.personHours().high())
                        .isGreaterThanOrEqualTo(smaller.personHours().high());
                assertThat(larger.calendar().days().likely())
                        .isGreaterThanOrEqualTo(smaller.calendar().days().likely());
            }
        }
        assertThat(compared).isGreaterThanOrEqualTo(4);
    }

    private static List<Object> tools(Estimate estimate) {
        return estimate.job().steps().stream()
                .<Object>map(step -> List.of(step.name(), step.machine(), step.passes(), step.edges()))
                .toList();
    }

    @Test
    void units_make_no_difference() throws IOException {
        FloorSurvey metric = sample("ferry-hall-granite");
        Area feet = Area.of(180 / 0.09290304, Unit.SQUARE_FOOT);
        FloorSurvey american = metric.toBuilder().set(SurveyField.AREA, feet).build();
        assertThat(feet).isEqualTo(new Area(180));
        assertThat(estimate(american)).isEqualTo(estimate(metric)).isPresent();
    }

    @Test
    void the_job_reads_the_topic_that_says_what_the_stone_is() throws IOException {
        assertThat(Topics.STONE.id()).isEqualTo("stone");
        Recommendation granite = ADVISOR.recommend(sample("ferry-hall-granite"));
        assertThat(granite.outcomes()).anyMatch(outcome -> outcome.topic().id().equals("stone"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"ferry-hall-granite", "reading-room-marble", "customs-house-terrazzo", "boat-shed-concrete"})
    void every_number_behind_a_figure_has_words(String name) throws IOException {
        Estimate estimate = estimate(sample(name)).orElseThrow();
        assertThat(estimate.work())
                .flatExtracting(line -> line.assumptions())
                .extracting(Assumption::name)
                .allMatch(parameter -> Language.english().has("parameter." + parameter));
        assertThat(estimate.consumables())
                .flatExtracting(line -> line.assumptions())
                .extracting(Assumption::name)
                .allMatch(parameter -> Language.english().has("parameter." + parameter));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ferry-hall-granite", "customs-house-terrazzo", "boat-shed-concrete"})
    void no_line_of_the_text_is_wider_than_96_characters_in_any_units(String name) throws IOException {
        Recommendation recommendation = ADVISOR.recommend(sample(name));
        PlannedJob planned = PlannedJob.of(recommendation, JobOptions.defaults());
        for (UnitSystem units : UnitSystem.values()) {
            String text = Texts.english()
                    .in(units)
                    .page(EstimateSheet.of(
                            recommendation, planned, planned.estimate(), Optional.empty(), Optional.empty()));
            assertThat(text.lines()).allMatch(line -> line.length() <= 96).noneMatch(line -> line.endsWith(" "));
            assertThat(text).endsWith(".\n");
        }
    }
}
