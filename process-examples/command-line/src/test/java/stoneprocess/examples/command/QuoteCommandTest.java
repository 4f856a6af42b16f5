package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.site.FloorGloss;
import stoneprocess.core.site.GlossQuestion;
import stoneprocess.core.site.NotQuoted;
import stoneprocess.core.site.Quotation;
import stoneprocess.core.site.Quotation.QuotedVariant;
import stoneprocess.core.site.Quotation.VisitKind;
import stoneprocess.core.site.VariantScope;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.Extent;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.examples.command.CommandLineTest.Ran;
import stoneprocess.rules.Advisor;

/** What {@code quote} prints. */
class QuoteCommandTest {
    private static final Path PRICES = Path.of("prices", "harbour-crew.json");

    private static Ran quote(String name, Path prices, String... more) {
        List<String> arguments = List.of(
                "quote",
                Path.of("surveys", name + ".json").toString(),
                "--prices",
                prices.toString(),
                "--client",
                "The harbour trust",
                "--date",
                "2026-12-01");
        return Ran.command(
                "", Stream.concat(arguments.stream(), Arrays.stream(more)).toArray(String[]::new));
    }

    private static Quotation json(String name, String... more) {
        Ran ran = quote(
                name,
                PRICES,
                Stream.concat(Stream.of("--json"), Arrays.stream(more)).toArray(String[]::new));
        return Json.QUOTATION.read(ran.out());
    }

    private static BigDecimal total(QuotedVariant variant) {
        return variant.job().orElseThrow().price().lines().total().amount();
    }

    private static List<BigDecimal> figures(String page, String label) {
        String row = page.lines()
                .filter(line -> line.strip().startsWith(label))
                .findFirst()
                .orElseThrow();
        return Stream.of(row.strip().substring(label.length()).strip().split("\\s+"))
                .map(BigDecimal::new)
                .toList();
    }

    @Test
    void variants_stand_side_by_side_and_their_rows_add_up() {
        String[] asked = {
            "--variant", "as-planned", "--variant", "unsealed", "--variant", "semi-gloss", "--variant", "repairs-only"
        };
        String page = quote("customs-house-terrazzo", PRICES, asked).out();
        Quotation data = json("customs-house-terrazzo", asked);
        List<BigDecimal> totals = figures(page, "TO PAY");
        assertThat(totals).hasSize(4);
        for (int i = 0; i < 4; i++) {
            assertThat(totals.get(i)).isEqualByComparingTo(total(data.variants().get(i)));
            BigDecimal net = figures(page, "work and materials")
                    .get(i)
                    .add(figures(page, "travel and mobilisation").get(i))
                    .add(data.variants()
                            .get(i)
                            .job()
                            .orElseThrow()
                            .price()
                            .lines()
                            .upToMinimum()
                            .amount());
            assertThat(figures(page, "without tax").get(i)).isEqualByComparingTo(net);
            assertThat(totals.get(i))
                    .isEqualByComparingTo(net.add(figures(page, "tax 20 %").get(i)));
        }
        assertThat(figures(page, "added to the work as planned"))
                .singleElement()
                .satisfies(more ->
                        assertThat(more).isEqualByComparingTo(totals.get(2).subtract(totals.get(0))));
        assertThat(figures(page, "saving against the work as planned"))
                .usingComparatorForType(BigDecimal::compareTo, BigDecimal.class)
                .containsExactly(
                        totals.get(0).subtract(totals.get(1)), totals.get(0).subtract(totals.get(3)));
        assertThat(page).contains("2026-12-01. Valid for 30 days", "stone to replace", "tripper: charged at cost.");
        assertThat(page.indexOf("The price holds")).isLessThan(page.indexOf("Prices "));
    }

    @Test
    void own_cost_and_margin_are_for_the_house_alone() {
        assertThat(quote("customs-house-terrazzo", PRICES).out()).doesNotContain("margin", "own cost");
        String house = quote("customs-house-terrazzo", PRICES, "--calculation").out();
        BigDecimal sum = Stream.of(
                        "work and materials, own cost",
                        "for risk",
                        "margin, 15 % of cost and risk",
                        "travel and mobilisation")
                .map(label -> figures(house, label).get(0))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(figures(house, "without tax").get(0)).isEqualByComparingTo(sum);
    }

    /** The house answers for its own shift, people and equipment, and the price is told for its shift. */
    @Test
    void what_nobody_knows_is_told_with_what_it_may_cost() {
        Quotation quotation = json("customs-house-terrazzo");
        BigDecimal now = total(quotation.variants().get(0));
        assertThat(quotation.unknowns()).isNotEmpty().allSatisfy(unknown -> {
            assertThat(unknown.least().amount()).isLessThanOrEqualTo(now);
            assertThat(unknown.most().amount()).isGreaterThanOrEqualTo(now);
        });
        assertThat(quotation.unknowns())
                .extracting(Quotation.Unknown::field)
                .doesNotContain("site.shift", "site.crew")
                .noneMatch(field -> field.startsWith("equipment."));
        assertThat(quote("customs-house-terrazzo", PRICES).out())
                .contains("shifts of 8 h on 5 days a week")
                .contains("The lanes alone: ")
                .contains("In the early morning the floor's coldest corner reads 10 C or more");
        assertThat(quote("customs-house-terrazzo", PRICES, "--shift", "6 h", "--days-a-week", "4")
                        .out())
                .contains("shifts of 6 h on 4 days a week", "at 4 days a week");
    }

    /** Nobody has said how much aggregate is to show; with paste only there is nothing to grind for. */
    @Test
    void a_sum_beside_an_answer_that_ends_the_work_is_told_on_a_condition() {
        Quotation quotation = json("boat-shed-concrete");
        assertThat(quotation.unknowns())
                .filteredOn(unknown -> unknown.field().equals("owner.aggregate"))
                .singleElement()
                .satisfies(aggregate -> {
                    assertThat(aggregate.mayStop()).isTrue();
                    assertThat(aggregate.answers())
                            .filteredOn(answer -> answer.total().isEmpty())
                            .extracting(Quotation.Answer::from)
                            .containsExactly("cream");
                    // Superseded chart of the polishers' association, second hand: 1.6, 3 and 6 mm to fine, medium and
                    // coarse.
                    // A coarse exposure of 320 m2 takes 150 to 250 hours more than a fine one, a medium one 40 to 80
                    // (memory);
                    // the list has 38 crowns an hour, so that each step is thousands and not tens.
                    double fine = total(aggregate, "fine");
                    double medium = total(aggregate, "medium");
                    double coarse = total(aggregate, "coarse");
                    assertThat(medium).isGreaterThan(fine + 500);
                    assertThat(coarse).isGreaterThan(medium + 3000);
                });
        String page = quote("boat-shed-concrete", PRICES).out().replaceAll("\\s+", " ");
        assertThat(page).contains("With paste only this price no longer applies", "TO PAY, on the conditions above");
        assertThat(quote("ferry-hall-granite", PRICES).out()).contains("TO PAY ");
    }

    private static double total(Quotation.Unknown unknown, String answer) {
        return unknown.answers().stream()
                .filter(any -> any.from().equals(answer))
                .findFirst()
                .orElseThrow()
                .total()
                .orElseThrow()
                .amount()
                .doubleValue();
    }

    @Test
    void the_test_area_is_that_of_the_plan_and_the_supply_is_named() {
        String shed = quote("boat-shed-concrete", PRICES).out().replaceAll("\\s+", " ");
        // By hand: 7.5 kW are 7500 / (1.732 x 400) = 10.8 A on each of three phases, 7500 / 230 = 32.6 A in one.
        assertThat(shed)
                .contains(
                        "A test area of 4-10 m2 in two places",
                        "7.5 kW: 11 A per phase at 400 V three-phase, or 33 A at 230 V single-phase");
        assertThat(quote("customs-house-terrazzo", PRICES).out().replaceAll("\\s+", " "))
                .contains("A test area of 1-4 m2", "1.5 kW: 2 A per phase");
    }

    /** What a client orders, in the order of the work; how a crew plans its bays is no business of his. */
    @Test
    void the_work_is_listed_in_a_clients_words() {
        String page = quote("customs-house-terrazzo", PRICES, "--variant", "as-planned", "--variant", "unsealed")
                .out()
                .replaceAll("\\s+", " ");
        assertThat(page)
                .containsSubsequence(
                        "The coating is stripped",
                        "Cracks, chips and holes are filled",
                        "A test area",
                        "with resin 200 (finish: hone)",
                        "Slurry is picked up",
                        "Unsealed. Spills stain sooner",
                        "Left out: item 15",
                        "Prices")
                .doesNotContain("planning the bays");
    }

    @Test
    void an_answer_changes_the_price_within_what_was_told(@TempDir Path folder) throws IOException {
        Quotation open = json("customs-house-terrazzo");
        Quotation.Unknown extent = open.unknowns().stream()
                .filter(unknown -> unknown.field().equals(SurveyField.EXTENT.name()))
                .findFirst()
                .orElseThrow();
        var survey = Json.SURVEY.read(Files.readString(Path.of("surveys", "customs-house-terrazzo.json"))).toBuilder()
                .set(SurveyField.EXTENT, Extent.LANES_ALONE)
                .build();
        Path answered = Files.writeString(folder.resolve("answered.json"), Json.SURVEY.print(survey));
        assertThat(total(quoted(answered).variants().get(0)))
                .isEqualByComparingTo(extent.least().amount());
    }

    @Test
    void a_held_floor_has_no_price_but_a_visit_and_a_test_area_to_come() {
        Ran ran = quote("lighthouse-unknown-stone", PRICES);
        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.out())
                .contains("Until then", "A visit to answer the open questions on site:", "only after", "laboratory")
                .doesNotContain("TO PAY");
        assertThat(json("lighthouse-unknown-stone").variants()).singleElement().satisfies(variant -> {
            assertThat(variant.status()).isEqualTo(Status.PROVISIONAL);
            assertThat(variant.notQuoted()).contains(NotQuoted.HELD);
            assertThat(variant.before())
                    .extracting(Quotation.Visit::kind)
                    .containsExactly(VisitKind.SURVEY, VisitKind.TEST_AREA);
        });
    }

    /** There are grits for a damage only once somebody has told how much of the floor has it. */
    @Test
    void a_floor_whose_damage_has_no_share_waits_for_an_answer(@TempDir Path folder) throws IOException {
        FloorSurvey told = Json.SURVEY.read(Files.readString(Path.of("surveys", "ferry-hall-granite.json")));
        Zone zone = told.zones().stream()
                .filter(part -> part.damages().values().stream()
                        .anyMatch(damage -> damage.share().isPresent()))
                .findFirst()
                .orElseThrow();
        Damage worn = zone.damages().values().stream()
                .filter(damage -> damage.share().isPresent())
                .findFirst()
                .orElseThrow();
        Zone untold = zone.with(new Damage(worn.kind(), worn.look(), worn.depth(), Optional.empty()));
        Path open = Files.writeString(
                folder.resolve("open.json"),
                Json.SURVEY.print(told.toBuilder().replace(zone, untold).build()));
        Ran ran = Ran.command(
                "", "quote", open.toString(), "--prices", PRICES.toString(), "--client", "x", "--date", "x", "--json");
        assertThat(Json.QUOTATION.read(ran.out()).variants().get(0).notQuoted()).contains(NotQuoted.HELD);
    }

    @Test
    void a_refused_floor_has_no_price_and_no_test_area() {
        assertThat(json("market-arcade-limestone").variants()).singleElement().satisfies(variant -> {
            assertThat(variant.notQuoted()).contains(NotQuoted.NO_PLAN);
            assertThat(variant.before()).extracting(Quotation.Visit::kind).containsExactly(VisitKind.SURVEY);
        });
    }

    @Test
    void what_a_plan_does_not_have_is_not_priced() {
        Quotation quotation = json(
                "counting-house-granite",
                "--variant",
                "as-planned",
                "--variant",
                "unsealed",
                "--variant",
                "repairs-only");
        assertThat(quotation.variants())
                .extracting(variant -> variant.notQuoted().orElse(null))
                .containsExactly(null, NotQuoted.NOT_SEALED, NotQuoted.NO_REPAIRS);
    }

    /** Cleaning is a day's work that is sold like any other; nothing is proven, so nobody waits for a signature. */
    @Test
    void a_floor_that_is_only_cleaned_has_a_price() {
        assertThat(json("guest-house-foyer").variants().get(0).job()).hasValueSatisfying(job -> {
            assertThat(job.steps()).isEmpty();
            assertThat(job.work()).contains("scrub-and-rinse").doesNotContain("test-area", "open-field");
            assertThat(job.price().lines().withMargin().amount()).isPositive();
        });
        assertThat(quote("guest-house-foyer", PRICES).out().replaceAll("\\s+", " "))
                .contains("The floor is scrubbed, rinsed and vacuumed dry.")
                .doesNotContain("signed");
    }

    private static List<VariantScope> scopes(Quotation quotation) {
        return quotation.variants().stream()
                .map(variant -> variant.variant().scope())
                .toList();
    }

    /** 4 mm waves of a slab are left as a rule, or taken out for a price of their own: common practice, no source. */
    @Test
    void waves_may_be_left_for_less() {
        Quotation quotation = json("boat-shed-concrete");
        assertThat(scopes(quotation))
                .containsExactly(VariantScope.AS_PLANNED, VariantScope.WAVES_LEFT, VariantScope.UNSEALED);
        List<QuotedVariant> variants = quotation.variants();
        assertThat(variants.get(0).job().orElseThrow().work()).contains(Quotation.WAVES);
        assertThat(variants.get(1).job().orElseThrow().work()).doesNotContain(Quotation.WAVES);
        assertThat(total(variants.get(1))).isLessThan(total(variants.get(0)));
        assertThat(json("ferry-hall-granite", "--variant", "waves-left")
                        .variants()
                        .get(0)
                        .notQuoted())
                .contains(NotQuoted.NO_WAVES);
    }

    /** One figure for one thing: the quotation tells the chance that the sheet of the gloss tells. */
    @Test
    void the_chance_of_the_finish_is_that_of_the_forecast() throws IOException {
        Share told = json("reading-room-marble").variants().get(0).chance().orElseThrow();
        FloorSurvey survey = Json.SURVEY.read(Files.readString(Path.of("surveys", "reading-room-marble.json")));
        assertThat(FloorGloss.of(
                                Advisor.standard().recommend(survey),
                                new GlossQuestion(Optional.empty(), new Gloss(1), Optional.empty(), List.of()))
                        .planned()
                        .orElseThrow()
                        .toTarget()
                        .orElseThrow()
                        .chance())
                .isEqualTo(told);
        assertThat(quote("reading-room-marble", PRICES).out().replaceAll("\\s+", " "))
                .contains("That is a forecast, not a promise.");
        assertThat(json("boat-shed-concrete").variants().get(0).chance())
                .as("concrete is named by its last grit")
                .isEmpty();
    }

    @Test
    void a_planetary_machine_is_hired_where_that_saves_much() {
        Quotation quotation = json("ferry-hall-granite");
        assertThat(scopes(quotation)).containsExactly(VariantScope.AS_PLANNED, VariantScope.HIRED_PLANETARY);
        assertThat(total(quotation.variants().get(1)))
                .isLessThan(total(quotation.variants().get(0)));
        assertThat(quotation.variants())
                .extracting(variant -> variant.job().orElseThrow().price().cost().lines().stream()
                        .anyMatch(line -> line.name().equals("hire-day")))
                .containsExactly(false, true);
        assertThat(json("boat-shed-concrete", "--variant", "hired-planetary")
                        .variants()
                        .get(0)
                        .notQuoted())
                .as("on hand already")
                .contains(NotQuoted.NO_USE_OF_A_PLANETARY);
    }

    @Test
    void what_is_relaid_or_repaired_is_counted_in_the_scope() {
        assertThat(quote("reading-room-marble", PRICES).out().replaceAll("\\s+", " "))
                .containsPattern("lifted and relaid\\. The price allows for \\d+-\\d+ pieces\\.");
    }

    @Test
    void two_crews_take_fewer_days_and_the_page_says_whose_days_they_are() {
        double alone = likelyDays(json("boat-shed-concrete"));
        assertThat(likelyDays(json("boat-shed-concrete", "--crews", "2"))).isLessThan(alone);
        assertThat(likelyDays(json("boat-shed-concrete", "--days-a-week", "7"))).isLessThan(alone);
        assertThat(quote("boat-shed-concrete", PRICES, "--crews", "2").out()).contains("2 crews at work side by side");
    }

    private static double likelyDays(Quotation quotation) {
        return quotation.variants().get(0).job().orElseThrow().days().likely().kept();
    }

    /** An owner, a foreman and an estimator read one figure. */
    @ParameterizedTest
    @ValueSource(strings = {"customs-house-terrazzo", "ferry-hall-granite", "boat-shed-concrete"})
    void quotation_estimate_and_schedule_tell_the_same_days(String name) {
        String[] times = {"--days-a-week", "6", "--shift", "7 h"};
        double quoted = likelyDays(json(name, times));
        String survey = Path.of("surveys", name + ".json").toString();
        String estimate = Ran.command("", "estimate", survey, times[0], times[1], times[2], times[3])
                .out()
                .replaceAll("\\s+", " ");
        assertThat(estimate)
                .contains("Back in use after " + (long) quoted + " calendar days, at 6 working days a week");
        assertThat(Ran.command("", "estimate", survey, "--schedule", times[0], times[1], times[2], times[3])
                        .out())
                .contains((long) quoted + " days until the floor is back in use");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--variant  | mirror      | --variant: 'mirror' is not accepted; accepted: a finish, one of hone, satin",
                "--variant  | hone,polish | --variant: 'hone,polish' is not accepted",
                "--variant  | unsealed,hone | --variant: 'unsealed,hone' is not accepted",
                "--distance | 2001 km     | distance: '2001000000 mm' is not accepted; accepted: 2000 km or less",
                "--distance | far         | --distance: 'far' is not accepted",
                "--work     | dusting=1 h | times: 'dusting' is not accepted; accepted: one of"
            })
    void what_is_not_accepted_is_refused_in_one_line(String option, String value, String message) {
        Ran ran = quote("customs-house-terrazzo", PRICES, option, value);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).startsWith(message).hasLineCount(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"rounding\": 5      | \"rounding\": 0      | terms.rounding: '0' is not accepted; accepted: from 0.01 to 10000",
                "\"valid-days\": 30   | \"valid-days\": 400  | terms.valid-days: '400' is not accepted; accepted: from 1 to 365",
                "\"valid-days\": 30   | \"valid-days\": \"\" | terms.valid-days: '' is not accepted; accepted: a number",
                "\"risk\"             | \"hazard\"           | terms.hazard: there is no such field under terms; accepted: risk, margin, tax"
            })
    void terms_that_are_not_accepted_are_refused_in_one_line(
            String right, String wrong, String message, @TempDir Path folder) throws IOException {
        String list = Files.readString(PRICES);
        assertThat(list).contains(right);
        Path prices = Files.writeString(folder.resolve("prices.json"), list.replace(right, wrong));
        Ran ran = quote("customs-house-terrazzo", prices);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).startsWith(message).hasLineCount(1);
    }

    /** The ferry hall may be worked at night alone: labour at 150 %, and of 7 h some half an hour to hand it back. */
    @Test
    void night_work_is_paid_at_the_night_rate(@TempDir Path folder) throws IOException {
        String hall = Files.readString(Path.of("surveys", "ferry-hall-granite.json"));
        // Nobody but the crew is in it, so that nobody watches a barrier by day.
        String night = hall.replace("\"occupied\": \"yes\"", "\"occupied\": \"no\"");
        assertThat(night).isNotEqualTo(hall);
        BigDecimal atNight = labour(quoted(Files.writeString(folder.resolve("night.json"), night)));
        BigDecimal atDay =
                labour(quoted(Files.writeString(folder.resolve("day.json"), night.replace("\"night\"", "\"day\""))));
        assertThat(atNight.doubleValue() / atDay.doubleValue()).isBetween(1.5 * 1.06, 1.5 * 1.1);
        assertThat(quote("ferry-hall-granite", PRICES).out().replaceAll("\\s+", " "))
                .contains("All the work is done at night");
    }

    private static Quotation quoted(Path survey) {
        return Json.QUOTATION.read(Ran.command(
                        "",
                        "quote",
                        survey.toString(),
                        "--prices",
                        PRICES.toString(),
                        "--client",
                        "x",
                        "--date",
                        "2026-12-01",
                        "--json")
                .out());
    }

    private static BigDecimal labour(Quotation quotation) {
        return quotation.variants().get(0).job().orElseThrow().price().cost().lines().stream()
                .filter(line -> line.name().equals("labour-hour"))
                .findFirst()
                .orElseThrow()
                .amount()
                .likely()
                .amount();
    }

    @Test
    void a_calculation_says_that_it_is_not_for_the_client_and_an_owner_sees_no_band() {
        assertThat(quote("customs-house-terrazzo", PRICES, "--calculation").out())
                .contains("CALCULATION, not for the client", "if all figures come out low", "for risk");
        assertThat(quote("customs-house-terrazzo", PRICES).out())
                .contains("QUOTATION for The harbour trust", "floor, m2", "edges, m")
                .doesNotContain("come out low", "for risk");
    }
}
