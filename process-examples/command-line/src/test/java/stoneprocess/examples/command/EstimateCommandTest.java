package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.estimate.Schedule;
import stoneprocess.core.json.Json;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.examples.command.CommandLineTest.Ran;

/** What {@code estimate} prints. */
class EstimateCommandTest {
    private static final String PRICES = Path.of("prices", "harbour-crew.json").toString();

    private static String sample(String name) {
        return Path.of("surveys", name + ".json").toString();
    }

    private static Ran estimate(String name, String... more) {
        String[] arguments = Stream.concat(Stream.of("estimate", sample(name)), Arrays.stream(more))
                .toArray(String[]::new);
        return Ran.command("", arguments);
    }

    /** The lines between a heading and the next empty line. */
    private static List<String> section(String text, String heading) {
        List<String> lines = text.lines().toList();
        int start = 0;
        while (!lines.get(start).startsWith(heading)) {
            start++;
        }
        int end = start;
        while (end < lines.size() && !lines.get(end).isEmpty()) {
            end++;
        }
        return lines.subList(start + 1, end);
    }

    private static double[] figures(String row) {
        return Arrays.stream(row.substring(44).strip().split("\\s+"))
                .limit(3)
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    /** Hours are printed to two digits. */
    private static double hoursRoundedTo(double hours) {
        return hours < 9.95 ? 0.1 : Math.pow(10, Math.floor(Math.log10(hours)) - 1);
    }

    /** Money is printed without cents from ten up. */
    private static double moneyRoundedTo(double money) {
        return money < 9.995 ? 0.01 : 1;
    }

    private static void assertThatAllIsTheSum(List<String> lines, DoubleUnaryOperator roundedTo) {
        double[] sum = new double[3];
        double[] lost = new double[3];
        int added = 0;
        for (String line : lines) {
            double[] row = figures(line);
            if (line.startsWith("  all ")) {
                for (int i = 0; i < 3; i++) {
                    assertThat(row[i])
                            .as(line)
                            .isEqualTo(sum[i], Offset.offset(lost[i] + roundedTo.applyAsDouble(row[i]) / 2 + 1e-9));
                }
                assertThat(added).isPositive();
                return;
            }
            for (int i = 0; i < 3; i++) {
                sum[i] += row[i];
                lost[i] += roundedTo.applyAsDouble(row[i]) / 2;
            }
            added++;
        }
        throw new AssertionError("no row for all of them");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"ferry-hall-granite", "reading-room-marble", "customs-house-terrazzo", "boat-shed-concrete"})
    void totals_are_the_sum_of_the_lines_that_are_printed(String name) {
        Ran ran = estimate(name, "--prices", PRICES);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isZero();
        assertThatAllIsTheSum(section(ran.out(), "Person-hours"), EstimateCommandTest::hoursRoundedTo);
        assertThatAllIsTheSum(section(ran.out(), "Cost, crowns"), EstimateCommandTest::moneyRoundedTo);
        if (ran.out().contains("\nWaiting time")) {
            assertThatAllIsTheSum(section(ran.out(), "Waiting time"), hours -> 1);
        }
    }

    @Test
    void every_step_of_the_plan_has_its_lines() {
        List<String> hours = section(estimate("ferry-hall-granite").out(), "Person-hours");
        for (String step : List.of("resin 800", "resin 1500", "resin 3000", "powder")) {
            for (String part : List.of("open field", "rinsing", "setting up", "rework")) {
                assertThat(hours).anyMatch(line -> line.startsWith("  " + step + ", " + part + " "));
            }
        }
        assertThat(estimate("ferry-hall-granite").out().replaceAll("\\s+", " "))
                .contains("Done beside the machine, within the hours of the open field: resin 100, edges ");
        assertThat(estimate("ferry-hall-granite").out())
                .contains(
                        "  pad sets to bring, resin 800 ",
                        "  water ",
                        "  slurry to take away ",
                        "  electricity ",
                        "  polishing powder ",
                        "  shifts on site ",
                        "  days until back in use, at 5 days a week ");
    }

    @Test
    void rests_and_curing_are_waited_for_and_other_work_is_listed() {
        Ran ran = estimate("customs-house-terrazzo");
        assertThat(section(ran.out(), "Waiting time"))
                .anyMatch(line -> line.startsWith("  after filling cracks "))
                .anyMatch(line -> line.startsWith("  after regrouting pits, resin 200 "))
                .anyMatch(line -> line.startsWith("  curing of the sealer "));
        assertThat(section(ran.out(), "Person-hours"))
                .anyMatch(line -> line.startsWith("  stripping the coating ") && !line.endsWith(" second hand"))
                .anyMatch(line -> line.startsWith("  local scratches "))
                .anyMatch(line -> line.startsWith("  filling cracks "));
    }

    @Test
    void given_hours_and_own_times_are_counted_and_named(@TempDir Path folder) throws IOException {
        Path timing = Files.writeString(folder.resolve("timing"), """
                {"format": "crew-times/1", "times":
                  [{"step": "resin-200", "field": {"low": 10, "high": 10, "unit": "m2/h"}}]}
                """);
        Ran ran = estimate(
                "customs-house-terrazzo",
                "--edges",
                "28 m",
                "--work",
                "fill-cracks=3-5 h",
                "--timing",
                timing.toString());
        List<String> hours = section(ran.out(), "Person-hours");
        assertThat(hours)
                .anyMatch(line -> line.startsWith("  filling cracks ")
                        && Arrays.equals(figures(line), new double[] {3, 4, 5})
                        && line.endsWith(" given"))
                // 48 m2 at 10 m2/h, two people.
                .anyMatch(line -> line.startsWith("  resin 200, open field ")
                        && Arrays.equals(figures(line), new double[] {9.6, 9.6, 9.6})
                        && line.endsWith(" own timing"));
        assertThat(ran.out()).contains("Own timing: the crew's file");
    }

    @Test
    void edges_are_those_given_or_taken_from_a_square_and_the_text_says_so() {
        assertThat(estimate("customs-house-terrazzo").out().replaceAll("\\s+", " "))
                .contains(
                        "with 28-44 m of edges",
                        "The edges have not been measured: their length is taken from 100-160 % of that of a square");
        assertThat(estimate("customs-house-terrazzo", "--edges", "48 m").out())
                .contains("with 48 m of edges")
                .doesNotContain("The edges have not been measured");
    }

    /** Somebody watches the barrier of a lobby that is used by day; nobody needs to in an empty shed or at night. */
    @Test
    void who_watches_the_barrier_of_occupied_premises_is_in_the_hours() {
        assertThat(section(estimate("customs-house-terrazzo").out(), "Person-hours"))
                .anyMatch(line -> line.startsWith("  watching the barrier ") && figures(line)[1] > 3);
        assertThat(estimate("customs-house-terrazzo", "--night", "100 %").out()).doesNotContain("watching the barrier");
        assertThat(estimate("boat-shed-concrete").out()).doesNotContain("watching the barrier");
    }

    @Test
    void what_has_no_price_is_listed_and_never_free(@TempDir Path folder) throws IOException {
        Path prices = Files.writeString(folder.resolve("prices"), """
                {"format": "price-list/1", "currency": "shells", "prices": {"labour-hour": 10}}
                """);
        Ran ran = estimate("ferry-hall-granite", "--prices", prices.toString());
        List<String> cost = section(ran.out(), "Cost, shells");
        assertThat(cost.get(0)).startsWith("  labour ");
        assertThat(cost.get(1)).startsWith("  all ");
        assertThat(String.join(" ", cost).replaceAll("\\s+", " "))
                .contains(
                        "Not in the cost, because the list has no price for it: single disc, resin pads, powder, water, slurry disposal,"
                                + " electricity, mobilisation.");
        assertThat(estimate("ferry-hall-granite").out()).doesNotContain("Cost");
    }

    @Test
    void a_night_share_without_prices_is_told_to_have_no_effect() {
        String said = "50 % of the work is done at night: the night rate is not in this estimate";
        assertThat(estimate("ferry-hall-granite", "--night", "50 %").out().replaceAll("\\s+", " "))
                .contains(said);
        assertThat(estimate("ferry-hall-granite", "--prices", PRICES, "--night", "50 %")
                        .out()
                        .replaceAll("\\s+", " "))
                .doesNotContain(said);
        assertThat(estimate("ferry-hall-granite", "--night", "0 %").out().replaceAll("\\s+", " "))
                .doesNotContain("night rates");
    }

    /** Half of the hours at 150 %, and in half of the shifts of 8 h some half an hour to hand the floor back at dawn. */
    @Test
    void night_work_costs_more_by_the_lists_factor_and_each_dawn() {
        double day = figures(section(
                        estimate("boat-shed-concrete", "--prices", PRICES, "--night", "0 %")
                                .out(),
                        "Cost, crowns")
                .get(0))[1];
        double night = figures(section(
                        estimate("boat-shed-concrete", "--prices", PRICES, "--night", "50 %")
                                .out(),
                        "Cost, crowns")
                .get(0))[1];
        assertThat(night / day).isBetween(1.25 * 1.02, 1.25 * 1.06);
    }

    @Test
    void another_finish_is_compared_line_by_line() {
        Ran ran = estimate("reading-room-marble", "--finish", "satin", "--prices", PRICES);
        assertThat(ran.exit()).isZero();
        List<String> lines = section(ran.out(), "Compared with satin");
        double apart = 0;
        for (String line : lines) {
            if (line.startsWith("  person-hours ")) {
                String[] cells = line.substring(44).strip().split("\\s+");
                assertThat(line)
                        .containsAnyOf(
                                "resin 1500", "resin 3000", "powder", "local lippage", "test area", "ending each day");
                assertThat(cells[1].equals("-"))
                        .isNotEqualTo(line.contains("ending each day")
                                || line.contains("local lippage")
                                || line.contains("test area"));
                apart += Double.parseDouble(cells[2]);
            }
        }
        String all = lines.stream()
                .filter(line -> line.startsWith("  all person-hours "))
                .findFirst()
                .orElseThrow();
        assertThat(figures(all)[2]).isNegative().isEqualTo(apart, Offset.offset(0.6));
        assertThat(figures(all)[0] + figures(all)[2]).isEqualTo(figures(all)[1], Offset.offset(0.11));
        assertThat(lines).anyMatch(line -> line.startsWith("  all costs ") && line.endsWith("crowns"));
    }

    @Test
    void the_same_finish_makes_no_difference() {
        List<String> lines =
                section(estimate("reading-room-marble", "--finish", "polish").out(), "Compared with");
        assertThat(lines).hasSize(3);
        assertThat(lines.get(0)).contains("lines are the same");
        assertThat(lines.get(1)).startsWith("  all person-hours").endsWith(" 0.0  h");
    }

    @Test
    void another_survey_is_compared_too() {
        Ran ran = estimate(
                "ferry-hall-granite", "--compare", sample("customs-house-terrazzo"), "--work", "plan-bays=1 h");
        assertThat(ran.exit()).isZero();
        assertThat(section(ran.out(), "Compared with"))
                .anyMatch(line -> line.startsWith("  person-hours other work stripping the coating"))
                .noneMatch(line -> line.contains("planning the bays"));
    }

    @Test
    void a_way_that_has_no_plan_is_said_to_have_none() {
        Ran ran = estimate("ferry-hall-granite", "--compare", sample("pilot-house-bath"));
        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.out())
                .contains("ESTIMATE for 180 m2", "Nothing to compare with: no cut is planned on that basis.");
    }

    @ParameterizedTest
    @CsvSource({"market-arcade-limestone,there is no plan,REFUSED.", "pilot-house-bath,there is no plan,Options"})
    void without_a_plan_there_is_no_estimate_and_the_answer_is_the_plans(String name, String why, String answer) {
        Ran ran = estimate(name);
        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).startsWith("NO ESTIMATE: " + why).contains(answer);
    }

    @Test
    void cleaning_alone_has_hours_and_a_cost() {
        Ran ran = estimate("guest-house-foyer", "--prices", PRICES);
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).contains("the floor is cleaned and nothing is cut", "scrubbing and rinsing", "labour");
    }

    @Test
    void a_provisional_plan_without_the_extent_of_its_damage_has_no_estimate_and_says_so() {
        Ran ran = estimate("lighthouse-unknown-stone");
        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.out())
                .startsWith("NO ESTIMATE: nothing is cut until the questions of the plan are answered.")
                .contains("PROVISIONAL PLAN.");
    }

    /** Only a slab carries by what is ground off it. */
    @Test
    void a_slab_has_an_engineer_say_how_much_it_may_lose() {
        String engineer = "A structural engineer says how much the slab may lose.";
        assertThat(estimate("boat-shed-concrete").out().replaceAll("\\s+", " ")).contains(engineer);
        assertThat(estimate("ferry-hall-granite").out()).doesNotContain("structural engineer says");
    }

    @Test
    void what_it_rests_on_cautions_and_deciders_are_always_told() {
        String text = estimate("ferry-hall-granite").out().replaceAll("\\s+", " ");
        assertThat(text)
                .contains(
                        "The floor cuts like hard stone.",
                        "Common practice of the trade, no source:",
                        "No rate is published for this stone or machine",
                        "Local codes, product safety data sheets");
    }

    @Test
    void units_change_the_figures_print_and_nothing_else() {
        String metric = estimate("ferry-hall-granite").out();
        String american = estimate("ferry-hall-granite", "--units", "us").out();
        assertThat(section(american, "Person-hours")).isEqualTo(section(metric, "Person-hours"));
        assertThat(section(american, "Calendar")).isEqualTo(section(metric, "Calendar"));
        assertThat(american).contains("1938 ft2 with 236 ft of edges").doesNotContain(" m2", " kg", " l\n");
        double litres = figures(waterOf(metric))[1];
        double gallons = figures(waterOf(american))[1];
        assertThat(gallons * 3.785411784).isEqualTo(litres, Offset.offset(4.0));
    }

    private static String waterOf(String text) {
        return section(text, "Consumables").stream()
                .filter(line -> line.startsWith("  water "))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--edges|48|--edges: '48'",
                "--edges|48 m2|--edges: '48 m2'",
                "--edges|0 m|edges: '0 mm'",
                "--night|150 %|site.night: '150 %'",
                "--night|2 h|--night: '2 h'",
                "--work|regrout=3 h|times: 'regrout'",
                "--work|plan-bays=3 m|--work.plan-bays: '3 m'",
                "--finish|mirror|--finish: 'mirror'",
                "--prices|no-such-file|file: 'no-such-file'",
                "--timing|no-such-file|file: 'no-such-file'"
            })
    void bad_input_exits_with_2_and_one_line(String option, String value, String message) {
        Ran ran = estimate("ferry-hall-granite", option, value);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith(message).contains("accepted: ");
        assertThat(ran.err().lines()).hasSize(1);
    }

    @Test
    void times_of_a_step_that_the_plan_lacks_are_refused(@TempDir Path folder) throws IOException {
        Path timing = Files.writeString(folder.resolve("timing"), """
                {"format": "crew-times/1", "times":
                  [{"step": "metal-30", "field": {"low": 2, "high": 2, "unit": "m2/h"}}]}
                """);
        Ran ran = estimate("ferry-hall-granite", "--timing", timing.toString());
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).startsWith("timing.step: 'metal-30'").contains("resin-800");
    }

    @Test
    void a_file_of_another_form_is_refused_with_the_version_that_is_read() {
        Ran ran = estimate("ferry-hall-granite", "--prices", sample("ferry-hall-granite"));
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err().strip()).isEqualTo("format: 'floor-survey/2' is not accepted; accepted: price-list/1");
    }

    @Test
    void the_job_is_printed_and_can_be_estimated_by_who_reads_it() {
        PlannedJob job = Json.PLANNED_JOB.read(
                estimate("customs-house-terrazzo", "--job", "--edges", "30 m").out());
        assertThat(job.job().edges()).isEqualTo(Range.of(new Length(30_000), new Length(30_000)));
        String hours =
                String.format("%.0f", job.estimate().personHours().likely().minutes() / 60);
        assertThat(estimate("customs-house-terrazzo", "--edges", "30 m").out())
                .contains("Likely " + hours + " person-hours");
    }

    @Test
    void a_floor_of_unknown_area_is_asked_for_it() throws IOException {
        String survey =
                Files.readString(Path.of(sample("ferry-hall-granite"))).replaceFirst("\"area\": \\{[^}]*},", "");
        Ran ran = Ran.command(survey, "estimate", "-");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).startsWith("site.area: 'unknown'");
    }

    @Test
    void finish_and_compare_exclude_each_other() {
        Ran ran = estimate("ferry-hall-granite", "--finish", "satin", "--compare", sample("pilot-house-bath"));
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err().lines()).hasSize(1);
    }

    @Test
    void a_schedule_tells_days_and_what_is_done_by_then() {
        Ran ran = estimate(
                "boat-shed-concrete",
                "--crews=2",
                "--bays=4",
                "--closed=1:3-5",
                "--start=2026-12-01",
                "--until=2026-12-11");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).contains("2 crews in 4 bays on 5 days a week");
        List<String> done = section(ran.out(), "Done by then");
        assertThat(done).contains("  - mobilisation: done.", "  - sealing: not done.");
        assertThat(estimate("boat-shed-concrete", "--until=900 shifts").out()).doesNotContain("not done");
    }

    /** The finer the finish, the later; what is not done in a week may be in ten. */
    @Test
    void what_can_be_done_by_a_date_is_told_for_each_finish() {
        List<String> soon =
                section(estimate("boat-shed-concrete", "--until=7 days").out(), "What could be done by then");
        assertThat(soon).isNotEmpty().allMatch(line -> line.contains(": not done by then"));
        List<String> later =
                section(estimate("boat-shed-concrete", "--until=70 days").out(), "What could be done by then");
        assertThat(later).hasSameSizeAs(soon).anyMatch(line -> line.startsWith("  - satin: the work is done by then"));
        assertThat(estimate("boat-shed-concrete", "--schedule").out()).doesNotContain("What could be done by then");
        assertThat(estimate("boat-shed-concrete", "--until=some days").err()).startsWith("--until: 'some days'");
    }

    @Test
    void the_bars_of_a_schedule_are_its_form() {
        Schedule schedule = Json.SCHEDULE.read(
                estimate("boat-shed-concrete", "--bars", "--bays=3").out());
        assertThat(schedule.bars()).anyMatch(bar -> bar.bay() == 3);
    }

    @Test
    void a_moment_that_is_none_is_refused_in_one_line() {
        assertThat(estimate("boat-shed-concrete", "--until=soon").err()).startsWith("--until: 'soon'");
        assertThat(estimate("boat-shed-concrete", "--until=many shifts").err()).startsWith("--until: 'many shifts'");
        assertThat(estimate("boat-shed-concrete", "--until=2026-12-18").err()).startsWith("--start: 'none'");
        assertThat(estimate("boat-shed-concrete", "--until=2026-12-01", "--start=2026-12-02")
                        .err())
                .startsWith("--until: '2026-12-01'");
        assertThat(estimate("boat-shed-concrete", "--schedule", "--closed=2").err())
                .startsWith("--closed: '2'");
        assertThat(estimate("boat-shed-concrete", "--schedule", "--crews=0").err())
                .startsWith("times.crews: '0'");
    }
}
