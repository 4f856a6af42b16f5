package stoneprocess.rules.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.ChipColour;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.CrackHarm;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.EtchClass;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.IdentifiedBy;
import stoneprocess.core.survey.Joints;
import stoneprocess.core.survey.LastWorked;
import stoneprocess.core.survey.LippageClass;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.StripLevel;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WavinessClass;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Acceptance;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.testkit.FloorSurveys;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Item;
import stoneprocess.rules.text.document.Section;
import stoneprocess.rules.text.document.StatedValue;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/** What the short and the full page of a plan hold, over drawn floors. */
class PlanTextTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final Texts TEXTS = Texts.english().with(ADVISOR.rulebase().parameters());
    private static final PlanText TEXT = new PlanText(ADVISOR.rulebase().cards());
    /** What is decided on the way to the plan and told only by its reasons. */
    private static final Set<Topic<?>> ON_THE_WAY = Set.of(
            Topics.STONE,
            Topics.BONDS,
            Topics.FIRST_CUT,
            Topics.LAST_GRIT,
            Topics.STEP_RULE,
            Topics.TRANSITION,
            Topics.METAL_METHOD);

    private static final int SCREEN = 24;
    /** More grits and coats than these make the first screen longer, a line each. */
    private static final int USUAL_ROWS = 8;

    @Provide
    Arbitrary<FloorSurvey> floors() {
        return FloorSurveys.any(
                ADVISOR.rulebase().parameters(), ADVISOR.options().sequence());
    }

    @Property(tries = 300, seed = "1955", shrinking = ShrinkingMode.OFF)
    void the_short_page_states_what_the_full_page_states_and_all_that_was_decided(
            @ForAll("floors") FloorSurvey survey) {
        Recommendation plan = ADVISOR.recommend(survey);
        Document brief = TEXT.document(plan, Detail.BRIEF);
        Document full = TEXT.document(plan, Detail.FULL);
        assertThat(brief.stated()).isEqualTo(full.stated()).containsAll(decided(plan));
    }

    /** What the decisions of a recommendation come to in its plan; without a plan its warnings alone. */
    private static List<StatedValue> decided(Recommendation recommendation) {
        List<StatedValue> decided = new ArrayList<>();
        for (Outcome outcome : recommendation.outcomes()) {
            if (outcome instanceof Decision<?> decision
                    && !ON_THE_WAY.contains(decision.topic())
                    && isInPlan(recommendation, decision)) {
                boolean range = decision.topic() == Topics.PASSES || decision.topic() == Topics.LITRES;
                List<String> keys = range && !decision.keys().isEmpty()
                        ? List.of(String.join(" ", decision.keys()))
                        : decision.keys();
                keys.forEach(key -> decided.add(new StatedValue(decision.topic(), decision.subject(), key)));
            }
        }
        return decided;
    }

    private static boolean isInPlan(Recommendation recommendation, Decision<?> decision) {
        if (decision.topic() == Topics.WARNINGS || decision.topic() == Topics.VERDICT) {
            return true;
        }
        if (recommendation.plan().isEmpty()) {
            return false;
        }
        Plan plan = recommendation.plan().get();
        if (isCutOpen(recommendation) && isOfTheCut(decision)) {
            return false;
        }
        if (decision.topic() == Topics.FINISH) {
            return !plan.tracks().isEmpty();
        }
        if (decision.topic() == Topics.TEST_AREA) {
            return plan.testArea() == TestArea.REQUIRED;
        }
        if (decision.topic() == Topics.TEST_CUTS) {
            return plan.testCuts().size() > 1 && plan.testArea() == TestArea.REQUIRED;
        }
        if (decision.topic() == Topics.POLISHING_AGENT) {
            return plan.polishingAgent() != PolishingAgent.NONE;
        }
        if (decision.topic() == Topics.DENSIFIER) {
            return plan.densifier() != Densifier.NONE;
        }
        if (decision.topic() == Topics.SEALER) {
            return !plan.finishTasks().contains(FinishTask.SEAL_LATER);
        }
        return true;
    }

    /** A damage has no share, so that the grits would leave it in, or nobody named a finish. */
    private static boolean isCutOpen(Recommendation recommendation) {
        return !recommendation.withoutShare().isEmpty()
                || recommendation.values(Topics.ACCEPTANCES, Subject.FLOOR).contains(Acceptance.FINISH_IS_ASSUMED);
    }

    /** What is not told while the cut is open. */
    private static boolean isOfTheCut(Decision<?> decision) {
        return !decision.subject().equals(Subject.FLOOR)
                || Set.of(Topics.FINISH, Topics.TEST_CUTS, Topics.DENSIFIER).contains(decision.topic());
    }

    @Property(tries = 300, seed = "1955", shrinking = ShrinkingMode.OFF)
    void no_grit_is_told_while_a_damage_has_no_share_or_no_finish_was_named(@ForAll("floors") FloorSurvey survey) {
        Recommendation plan = ADVISOR.recommend(survey);
        boolean open = isCutOpen(plan);
        boolean cuts = plan.plan().filter(known -> !known.tracks().isEmpty()).isPresent();
        Statistics.label("cut").collect(open ? "open" : "all told", cuts);
        assertThat(TEXT.document(plan, Detail.BRIEF).stated().stream()
                        .anyMatch(value -> value.topic() == Topics.GRIT_PATH))
                .isEqualTo(cuts && !open);
    }

    @Property(tries = 300, seed = "1955", shrinking = ShrinkingMode.OFF)
    void every_warning_stands_by_name_on_the_first_screen(@ForAll("floors") FloorSurvey survey) {
        Recommendation plan = ADVISOR.recommend(survey);
        Document brief = TEXT.document(plan, Detail.BRIEF);
        Document front = new Document(brief.title(), brief.line(), front(brief), brief.parameters());
        assertThat(front.stated())
                .containsAll(plan.warnings().stream()
                        .map(warning -> StatedValue.ofFloor(
                                Topics.WARNINGS, warning.hazard().key()))
                        .toList());
        String screen = Texts.english().page(front);
        assertThat(screen.lines()).as(screen).hasSizeLessThanOrEqualTo(SCREEN + Math.max(0, rows(front) - USUAL_ROWS));
        assertThat(page(plan, Detail.BRIEF).lines()).allMatch(line -> line.length() <= 96);
    }

    /** What has no heading, and the table. */
    private static List<Section> front(Document document) {
        Wording table = Wording.phrase("table.heading");
        return document.sections().stream()
                .filter(section -> section.heading()
                        .filter(heading -> !heading.equals(table))
                        .isEmpty())
                .toList();
    }

    private static int rows(Document front) {
        return front.sections().stream()
                .flatMap(section -> section.items().stream())
                .filter(Item.Table.class::isInstance)
                .mapToInt(table -> ((Item.Table) table).rows().size())
                .sum();
    }

    @Property(tries = 100, seed = "1955", shrinking = ShrinkingMode.OFF)
    void the_full_page_tells_limit_sources_and_who_decides_of_every_warning(@ForAll("floors") FloorSurvey survey) {
        Recommendation plan = ADVISOR.recommend(survey);
        String full = squeezed(page(plan, Detail.FULL));
        for (SafetyWarning warning : plan.warnings()) {
            assertThat(full)
                    .contains(
                            squeezed(TEXTS.word(Wording.sentences(warning.precautions()))),
                            "limit " + squeezed(TEXTS.word(Wording.of(warning.hazard(), "limit"))),
                            "decides " + squeezed(TEXTS.word(WarningWords.decides(warning))));
        }
    }

    /** Damage of which nobody told how much. */
    private static Damage told(DamageKind kind, Term look) {
        return new Damage(kind, Optional.of(look), Optional.empty(), Optional.empty());
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Example
    void the_short_page_is_what_is_rendered_unless_the_full_one_is_asked_for() {
        Recommendation plan = ADVISOR.recommend(Floors.unremarkable().build());
        assertThat(page(plan, Detail.FULL)).contains("\nDecisions and reasons\n");
        assertThat(page(plan, Detail.BRIEF)).doesNotContain("\nDecisions and reasons\n");
    }

    @Example
    void markdown_has_the_same_short_page_with_its_table() {
        Recommendation plan = ADVISOR.recommend(
                Floors.unremarkable().set(SurveyField.GOAL, Goal.POLISH).build());
        String page = Texts.english().markdown(TEXT.document(plan, Detail.BRIEF));
        assertThat(page.lines())
                .anyMatch(line -> line.matches("\\| grit \\| .*added weight, kg \\| open field \\| edges \\| .*"))
                .anyMatch(line -> line.startsWith("| resin 3000 |"));
    }

    @Example
    void a_small_floor_gets_small_tasks_and_a_small_test_area() {
        FloorSurvey large = Floors.unremarkable()
                .set(SurveyField.GOAL, Goal.POLISH)
                .set(SurveyField.AREA, Area.of(10, Unit.SQUARE_METRE))
                .build();
        FloorSurvey small = large.toBuilder()
                .set(SurveyField.AREA, Area.of(9.9, Unit.SQUARE_METRE))
                .build();
        String smallest = squeezed(page(ADVISOR.recommend(small), Detail.BRIEF));
        String larger = squeezed(page(ADVISOR.recommend(large), Detail.BRIEF));
        for (String key : List.of("TestArea.required", "Task.protect-route", "Task.close-off", "Upkeep.mats")) {
            String words = squeezed(TEXTS.word(Wording.phrase(key + ".small")));
            assertThat(smallest).contains(words);
            assertThat(larger).doesNotContain(words);
        }
    }

    @Example
    void a_large_floor_gets_a_trial_with_its_machine_in_two_places() {
        FloorSurvey large = Floors.unremarkable()
                .set(SurveyField.GOAL, Goal.POLISH)
                .set(SurveyField.AREA, Area.of(200, Unit.SQUARE_METRE))
                .build();
        FloorSurvey smaller = large.toBuilder()
                .set(SurveyField.AREA, Area.of(199, Unit.SQUARE_METRE))
                .build();
        String words = "4-10 m2 in two places, edge and lane, with the machine to be used";
        assertThat(squeezed(page(ADVISOR.recommend(large), Detail.BRIEF))).contains(words);
        assertThat(squeezed(page(ADVISOR.recommend(smaller), Detail.BRIEF))).doesNotContain(words);
    }

    @Example
    void grinding_flat_is_named_for_the_hollows_of_a_floor_only_where_it_is_not_historic() {
        for (Historic historic : Historic.values()) {
            FloorSurvey flags = Floors.damaged(
                            told(DamageKind.WAVINESS, WavinessClass.WAVY), told(DamageKind.LIPPAGE, LippageClass.HIGH))
                    .set(SurveyField.HISTORIC, historic)
                    .build();
            for (FloorSurvey survey : List.of(
                    flags,
                    flags.toBuilder()
                            .unknown(SurveyField.HISTORIC)
                            .unknown(SurveyField.LAID_AGO)
                            .build())) {
                String page = squeezed(page(ADVISOR.recommend(survey), Detail.BRIEF));
                assertThat(page).contains("Reported, not yet planned");
                String bare = page.replaceAll("if the floor is protected or historic, [^.]*; if it is not, [^.]*", "");
                boolean named = bare.matches(".*grinding (flat|the field flat).*");
                Optional<Historic> told = survey.answer(SurveyField.HISTORIC).value();
                assertThat(named).isEqualTo(told.equals(Optional.of(Historic.NO)));
                assertThat(bare.contains("history of the floor")).isEqualTo(told.equals(Optional.of(Historic.YES)));
                assertThat(bare.equals(page)).isEqualTo(told.isPresent());
            }
        }
    }

    @Example
    void what_cannot_wait_heads_the_page_whether_or_not_there_is_a_plan() {
        FloorSurvey slippery = Floors.unremarkable()
                .set(SurveyField.GOAL, Goal.POLISH)
                .set(SurveyField.SLIPPERY, Presence.PRESENT)
                .build();
        FloorSurvey loose =
                slippery.toBuilder().set(SurveyField.SOUNDING, Sounding.LOOSE).build();
        for (FloorSurvey survey : List.of(slippery, loose)) {
            String page = squeezed(page(ADVISOR.recommend(survey), Detail.BRIEF));
            assertThat(page.split("lay mats or grit tape", -1)).hasSize(2);
            assertThat(page).containsPattern("Today - .*lay mats or grit tape");
        }
    }

    /** A broken nose is pieced or the tread replaced, poured or not; common practice, no source. */
    @Example
    void noses_of_poured_stairs_are_not_filled() {
        Zone whole = Floors.zone(
                "flight",
                100,
                Map.of(DamageKind.CRACKS, Damage.seen(DamageKind.CRACKS, Presence.PRESENT, Share.of(3, Unit.PERCENT))));
        FloorSurvey stairs = Floors.unremarkable()
                .set(SurveyField.STONE_NAME, "cement-terrazzo")
                .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                .set(SurveyField.CRACK_HARM, CrackHarm.HARMFUL)
                .zones(List.of(new Zone(whole.name(), ZoneKind.STAIR, whole.share(), whole.damages())))
                .build();
        Recommendation planned = ADVISOR.recommend(stairs);
        assertThat(planned.values(Topics.PREPARATION, Subject.FLOOR)).contains(Task.FILL_CRACKS);
        assertThat(squeezed(page(planned, Detail.FULL))).contains("A broken nose is never filled");
    }

    /** An extent that nobody told withholds a cut, never a limit that is known; common practice, no source. */
    @Example
    void a_later_cut_keeps_the_limits_that_are_known() {
        Damage extentOpen = new Damage(
                DamageKind.SCRATCHES, Optional.of(ScratchClass.FELT_BY_NAIL), Optional.empty(), Optional.empty());
        FloorSurvey leftOff = Floors.calciteMarble(extentOpen)
                .set(SurveyField.LAST_WORKED, LastWorked.METAL)
                .set(SurveyField.GOAL, Goal.POLISH)
                .build();
        Recommendation held = ADVISOR.recommend(leftOff);
        assertThat(held.withoutShare()).isNotEmpty();
        assertThat(squeezed(page(held, Detail.BRIEF)))
                .contains(
                        "Known limits on any later cut - Start no finer than resin 50 where a job was left off at metal.")
                .contains("Once the work is released 1.")
                .contains("Keep diamond pads off this floor.")
                .doesNotContain("of the accepted reading");
    }

    /** Terrazzo with green chips that nobody has sampled, under wax: a licensed person comes before any tool. */
    @Example
    void a_sample_comes_before_every_step_that_opens_a_suspect_floor() {
        FloorSurvey green = Floors.unremarkable()
                .set(SurveyField.STONE_NAME, "cement-terrazzo")
                .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                .set(SurveyField.CHIPS, ChipColour.GREEN)
                .set(SurveyField.COATING, Coating.WAX)
                .set(SurveyField.STRIP_LEVEL, StripLevel.PROUD)
                .set(SurveyField.JOINTS, Joints.OPEN)
                .unknown(SurveyField.LABORATORY)
                .build();
        String page = squeezed(page(ADVISOR.recommend(green), Detail.BRIEF));
        assertThat(page).contains("Preparation 1. Have the licensed person take the sample, of a stone body and veins");
        for (String opening : List.of("Strip the coating", "Bring divider strips", "Rake out and regrout")) {
            assertThat(page).contains("Only once fibres and suspect layers are ruled out. " + opening);
        }
    }

    /** A satin ends at about 800 (common practice, no source), so that what a crew without 800 can give is not headed a satin. */
    @Example
    void a_satin_without_its_grit_is_headed_a_hone() {
        FloorSurvey satin = Floors.unremarkable()
                .set(SurveyField.GOAL, Goal.SATIN)
                .set(
                        SurveyField.GRADES,
                        GritSequence.standard().grades().stream()
                                .filter(grade -> grade.bond() == Bond.RESIN && grade.number() <= 400)
                                .toList())
                .build();
        String page = squeezed(page(ADVISOR.recommend(satin), Detail.BRIEF));
        assertThat(page)
                .contains("Finish: a hone; a satin only once resin 800 is here.")
                .doesNotContain("Finish: satin");
    }

    /** A blister in a topping is injected or cut out and cast again; common practice, no source. */
    @Example
    void no_piece_of_a_poured_floor_is_bedded_or_relaid() {
        for (String stone : List.of("resin-terrazzo", "concrete")) {
            for (Sounding sounding : List.of(Sounding.FEW_HOLLOW, Sounding.HOLLOW)) {
                FloorSurvey poured = Floors.damaged(Floors.lipped(3, 40))
                        .set(SurveyField.STONE_NAME, stone)
                        .set(SurveyField.IDENTIFIED_BY, IdentifiedBy.PETROGRAPHER)
                        .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                        .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                        .set(SurveyField.SOUNDING, sounding)
                        .build();
                assertThat(squeezed(page(ADVISOR.recommend(poured), Detail.FULL)))
                        .as(stone + ", " + sounding)
                        .doesNotContainIgnoringCase("rebed")
                        .doesNotContainIgnoringCase("bedded")
                        .doesNotContainIgnoringCase("relay")
                        .doesNotContainIgnoringCase("relaid")
                        .doesNotContainIgnoringCase("every piece");
            }
        }
    }

    @Example
    void a_deadline_is_told_where_no_hours_are() {
        FloorSurvey held = Floors.calciteMarble(Floors.etched(EtchClass.ROUGH, 2))
                .set(SurveyField.HAZARDOUS_LAYER, HazardousLayer.UNTESTED)
                .set(SurveyField.DEADLINE, TimeSpan.of(4, Unit.DAY))
                .build();
        assertThat(squeezed(page(ADVISOR.recommend(held), Detail.BRIEF)))
                .contains("The floor is wanted back in 4 days.");
    }

    /** A powder polishes; on a hone it leaves a shiny spot. Common practice, no source. */
    @Example
    void etches_that_wait_get_powder_only_in_a_polish() {
        FloorSurvey held = Floors.calciteMarble(Floors.etched(EtchClass.ROUGH, 2))
                .set(SurveyField.FINISH_NOW, Finish.HONE)
                .set(SurveyField.GOAL, Goal.HONE)
                .set(SurveyField.HAZARDOUS_LAYER, HazardousLayer.UNTESTED)
                .build();
        assertThat(squeezed(page(ADVISOR.recommend(held), Detail.BRIEF)))
                .contains("Etches:")
                .contains("powder only where it is polished");
    }

    /** Where the meter reads dry, where moisture comes from can change nothing that a crew does now. */
    @Example
    void nobody_is_asked_where_the_moisture_of_a_dry_floor_comes_from() {
        FloorSurvey dry = Floors.unremarkable()
                .set(SurveyField.GOAL, Goal.POLISH)
                .unknown(SurveyField.DAMP)
                .build();
        FloorSurvey unread = dry.toBuilder().unknown(SurveyField.MOISTURE).build();
        assertThat(ADVISOR.recommend(dry).questions())
                .extracting(Question::field)
                .doesNotContain("condition.damp");
        assertThat(ADVISOR.recommend(unread).questions())
                .extracting(Question::field)
                .contains("condition.damp");
    }

    @Example
    void a_film_is_looked_for_before_a_densifier_is_tried() {
        assertThat(Task.TEST_FOR_FILM).isLessThan(Task.TRY_DENSIFIER);
        assertThat(Task.REMOVE_FILM).isLessThan(Task.TRY_DENSIFIER);
        assertThat(Task.TRY_ON_RESIN).isLessThan(Task.CLEANING_TRIAL);
    }

    @Example
    void totals_stand_in_one_line_where_the_area_is_known() {
        FloorSurvey known = Floors.unremarkable()
                .set(SurveyField.GOAL, Goal.POLISH)
                .set(SurveyField.AREA, Area.of(60, Unit.SQUARE_METRE))
                .build();
        assertThat(PlanTotals.of(ADVISOR.recommend(known)).words()).isPresent();
        assertThat(page(ADVISOR.recommend(known), Detail.BRIEF))
                .containsPattern("\nIn all\nLikely [0-9]+ person-hours \\(");
        FloorSurvey unknown = known.toBuilder().unknown(SurveyField.AREA).build();
        assertThat(page(ADVISOR.recommend(unknown), Detail.BRIEF)).doesNotContain("\nIn all\n");
    }

    @Example
    void every_hazard_has_a_line_of_its_own_and_few_stop_the_work() {
        Set<String> lines = new TreeSet<>();
        int stopping = 0;
        for (Hazard hazard : Hazard.values()) {
            SafetyWarning found = new SafetyWarning(hazard, List.of(), List.of(), List.of(), List.of(), true);
            SafetyWarning open = new SafetyWarning(hazard, List.of(), List.of(), List.of(), List.of(), false);
            boolean stops = HazardRank.of(found) == HazardRank.STOPS_THE_WORK;
            assertThat(HazardRank.of(open) == HazardRank.SETTLE_FIRST)
                    .as(hazard.key())
                    .isEqualTo(stops);
            stopping += stops ? 1 : 0;
            lines.add(TEXTS.word(Wording.of(hazard, "brief")));
        }
        assertThat(stopping).isBetween(1, 5);
        assertThat(lines).hasSize(Hazard.values().length);
    }

    private static String page(Recommendation plan, Detail detail) {
        return Texts.english().page(TEXT.document(plan, detail));
    }
}
