package stoneprocess.rules.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.gloss.Direction;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.log.EdgeLook;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.EventState;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Moment;
import stoneprocess.core.log.PadLook;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.log.Sign;
import stoneprocess.core.log.TrialResult;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Track;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Ask;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/** What a crew reads of an answer. Floors, logs and readings are invented. */
class FollowTextTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final FollowText TEXT = new FollowText(ADVISOR.rulebase().cards());
    private static final Recommendation PLAN = ADVISOR.recommend(Floors.unremarkable()
            .set(SurveyField.GOAL, Goal.POLISH)
            .set(SurveyField.MACHINES, EnumSet.of(MachineClass.SINGLE_DISC, MachineClass.EDGE_TOOL))
            .build());
    private static final String ZONE = PLAN.survey().zones().get(0).name();
    private static final Texts TEXTS = Texts.english().with(ADVISOR.rulebase().parameters());

    private static String said(String key) {
        return TEXTS.word(Wording.phrase(key));
    }

    private static String said(Term term) {
        return TEXTS.word(Wording.of(term));
    }

    private static String said(Wording wording) {
        return TEXTS.word(wording);
    }

    private static JobLog log(Entry... entries) {
        return new JobLog("Customs hall, first week", List.of(entries));
    }

    private static String page(UnitSystem units, Document document) {
        return Texts.english().in(units).page(document);
    }

    private static String follow(JobLog log) {
        return page(UnitSystem.METRIC, TEXT.document(PLAN, log, ADVISOR.followUp(PLAN, log)));
    }

    private static Entry worked(int hour, TrackKind track, String grade, int passes) {
        AbrasiveGrade worked = GritSequence.standard().get(grade, "grade");
        return new Entry.Worked(
                new Moment(1, 60 * hour),
                track,
                worked,
                passes,
                Optional.of(MachineClass.SINGLE_DISC),
                Optional.of(new Mass(20)));
    }

    private static Entry looked(int hour, FaceState face, ScratchLook scratches) {
        return new Entry.Looked(
                new Moment(1, 60 * hour + 20),
                ZONE,
                face,
                Optional.of(scratches),
                Optional.of(Presence.NONE),
                Optional.of(PadLook.OPEN),
                Optional.of(EdgeLook.AS_FIELD),
                Optional.of(Set.of()));
    }

    private static Entry read(int hour, String place, double gloss, FaceState state) {
        return new Entry.Read(
                new Moment(1, 60 * hour + 30),
                new Reading(place, ZONE, Direction.ALONG, Geometry.DEG_60, new Gloss(gloss), state));
    }

    private static Entry happened(EventKind kind) {
        return new Entry.Happened(new Moment(1, 900), kind, ZONE, EventState.OPEN);
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private static void assertSays(String text, String... parts) {
        for (String part : parts) {
            assertThat(squeezed(text)).contains(squeezed(part));
        }
    }

    @Test
    void the_move_stands_first_with_its_rules_and_the_facts_that_they_cite() {
        JobLog log =
                log(worked(8, TrackKind.OPEN_FIELD, "resin-800", 8), looked(9, FaceState.CLEAN_DRY, ScratchLook.OLDER));
        NextMove next = ADVISOR.followUp(PLAN, log);
        String text = follow(log);
        assertThat(text).startsWith("Customs hall, first week\n=====");
        assertSays(text.lines().skip(2).limit(3).reduce("", String::concat), said(next.move()));
        assertSays(text, "Done so far: 8 passes of resin 800, open field; the plan has 2-6.");
        Decision<?> move = decision(next);
        assertThat(move.won()).isNotEmpty();
        move.won().forEach(reason -> {
            Card card = ADVISOR.rulebase().cards().stream()
                    .filter(one -> one.id().equals(reason.rule()))
                    .findFirst()
                    .orElseThrow();
            assertSays(text, card.title() + ". ", card.because() + ".", "(" + reason.rule() + ")");
        });
        assertSays(text, "older scratches show");
    }

    private static Decision<?> decision(NextMove next) {
        return next.outcomes().stream()
                .filter(outcome -> outcome.topic() == Topics.MOVE)
                .map(Decision.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void readings_tell_their_units_and_what_is_missing() {
        JobLog log = log(
                worked(8, TrackKind.OPEN_FIELD, "resin-800", 8),
                read(8, "middle", 6.2, FaceState.CLEAN_DRY),
                worked(10, TrackKind.OPEN_FIELD, "resin-1500", 8),
                read(10, "middle", 8.9, FaceState.CLEAN_DRY));
        assertSays(
                follow(log),
                ": 8.9 GU on average from 1 reading, lowest 8.9 GU. One reading does not show how far readings scatter.",
                "2.7 GU more than a grit earlier. There are too few readings to tell whether the difference is real.",
                "To know the scatter, 1 more before the step and 1 more after it are needed.",
                "Read at 85 degrees too",
                "of this floor on 2 occasions");
    }

    @Test
    void several_readings_tell_scatter_and_gain() {
        JobLog log = log(
                worked(8, TrackKind.OPEN_FIELD, "resin-800", 8),
                read(8, "middle", 9.1, FaceState.CLEAN_DRY),
                read(8, "by the door", 9.5, FaceState.CLEAN_DRY),
                worked(10, TrackKind.OPEN_FIELD, "resin-1500", 8),
                read(10, "middle", 22, FaceState.CLEAN_DRY),
                read(10, "by the door", 22.4, FaceState.CLEAN_DRY));
        assertSays(
                follow(log),
                ": 22.2 GU on average from 2 readings, lowest 22 GU. The true average lies within ",
                ", with 95 % confidence.",
                "12.9 GU more than a grit earlier. The difference is larger than scatter and meter explain.");
        assertThat(squeezed(follow(log))).doesNotContain("To know the scatter");
    }

    @Test
    void entries_of_which_the_same_is_said_stand_together() {
        JobLog log = log(
                worked(8, TrackKind.OPEN_FIELD, "resin-800", 8),
                looked(8, FaceState.CLEAN_DRY, ScratchLook.NONE),
                worked(10, TrackKind.OPEN_FIELD, "resin-1500", 8),
                read(11, "by the door", 30, FaceState.WET),
                read(12, "by the stair", 31, FaceState.WET));
        assertSays(
                follow(log),
                "Entries 4 (day 1, 11:30), 5 (day 1, 12:30): The surface was wet, so the meter read water, not stone.");
        assertThat(follow(log)).doesNotContain("From a grit that has since been followed by another");
    }

    @Test
    void entries_that_do_not_count_are_named_by_number_and_moment() {
        JobLog log = log(
                new Entry.Tried(
                        new Moment(1, 420),
                        GritSequence.standard().get("resin-800", "grade"),
                        TrialResult.CLEARED,
                        true),
                worked(8, TrackKind.OPEN_FIELD, "resin-800", 8),
                read(8, "by the door", 55, FaceState.WET),
                looked(8, FaceState.SOILED, ScratchLook.NONE));
        assertSays(
                follow(log),
                "Entry 3, day 1, 08:30, by the door in " + ZONE + ", 55 GU at 60 degrees: "
                        + "The surface was wet, so the meter read water, not stone. Does not count at this hold point.",
                "Entry 4, day 1, 08:20, look at " + ZONE
                        + ", the surface was soiled, no scratches show, the pads are open");
    }

    @Test
    void what_is_not_noted_is_listed() {
        JobLog log = log(worked(8, TrackKind.OPEN_FIELD, "resin-800", 8));
        NextMove next = ADVISOR.followUp(PLAN, log);
        assertThat(next.unknown()).contains("look.scratches", "look.film");
        assertSays(follow(log), "The log does not say ", said("log.look.film"), said("log.look.scratches"));
    }

    @Test
    void grades_to_come_tell_machine_weight_water_and_passes_of_the_first() {
        JobLog log = log();
        Track field = PLAN.plan().orElseThrow().tracks().get(0);
        PlannedStep first = field.steps().get(0);
        assertSays(
                follow(log),
                said("follow.not-begun"),
                said(ValueWords.grade(first.grade())) + ", " + said(first.machine()) + ", "
                        + said(StepWords.weight(first)),
                said(StepWords.water(field.kind(), first)),
                said(StepWords.passes(first)));
        assertThat(follow(log)).doesNotContain(said("follow.changes"));
    }

    @ParameterizedTest
    @EnumSource(EventKind.class)
    void an_event_is_told_with_what_it_changes_and_who_is_asked(EventKind kind) {
        JobLog log = log(worked(8, TrackKind.OPEN_FIELD, "resin-800", 8), happened(kind));
        NextMove next = ADVISOR.followUp(PLAN, log);
        String text = follow(log);
        assertSays(text, said(next.move()));
        for (Ask ask : next.asks()) {
            assertSays(text, ask == Ask.OWNER ? "the owner" : "Ask " + said(ValueWords.name(ask)) + ".");
        }
        boolean cited = decision(next).won().stream()
                .flatMap(reason -> reason.facts().stream())
                .anyMatch(fact -> fact.name().equals("EventStands:" + kind.key()));
        assertThat(squeezed(text).toLowerCase(Locale.ROOT).contains(said(kind).toLowerCase(Locale.ROOT)))
                .isEqualTo(cited);
        next.ahead()
                .plan()
                .ifPresent(ahead -> ahead.tasks().stream()
                        .filter(task -> !PLAN.plan().orElseThrow().tasks().contains(task))
                        .forEach(task -> assertSays(text, "Prepare: " + said(task))));
        if (next.ahead().status() != PLAN.status()) {
            assertSays(text, said(next.ahead().status()));
        }
    }

    @Test
    void a_lost_fill_shows_the_new_preparation() {
        JobLog log = log(worked(8, TrackKind.OPEN_FIELD, "resin-800", 8), happened(EventKind.FILL_OUT));
        assertThat(ADVISOR.followUp(PLAN, log).move()).isEqualTo(Move.RE_PLAN);
        assertSays(follow(log), "Prepare: ");
    }

    @ParameterizedTest
    @EnumSource(Sign.class)
    void a_diagnosis_names_the_signs_and_every_cause_with_its_standing(Sign sign) {
        JobLog log =
                log(worked(8, TrackKind.OPEN_FIELD, "resin-800", 8), looked(9, FaceState.CLEAN_DRY, ScratchLook.NONE));
        Diagnosis diagnosis = ADVISOR.diagnose(PLAN, EnumSet.of(sign), log);
        String text = page(UnitSystem.METRIC, TEXT.document(PLAN, log, diagnosis));
        assertSays(text, "Seen: " + said(sign));
        diagnosis.causes().forEach(cause -> {
            assertThat(squeezed(text))
                    .containsPattern("(Likely, and the checks tell which|"
                            + said(cause.standing()).replaceFirst(".", "(?i:.)") + "): [^.]*\\Q"
                            + said(ValueWords.name(cause.fault())));
            RuleWords.rules(cause.speaksFor()).forEach(rule -> assertSays(text, "(" + rule + ")"));
            RuleWords.rules(cause.speaksAgainst()).forEach(rule -> assertSays(text, "(" + rule + ")"));
        });
    }

    @Test
    void what_the_plan_said_on_safety_is_not_said_again_and_stays_in_force() {
        JobLog log = log(worked(8, TrackKind.OPEN_FIELD, "resin-800", 8));
        NextMove next = ADVISOR.followUp(PLAN, log);
        assertThat(next.ahead().warnings()).isNotEmpty();
        String text = squeezed(follow(log));
        for (SafetyWarning warning : next.ahead().warnings()) {
            assertThat(PLAN.warnings()).contains(warning);
            assertThat(text).doesNotContain(squeezed(said(Wording.sentences(warning.precautions()))));
        }
        assertSays(text, said("closing.beside-plan"));
    }

    @Test
    void a_hazard_that_the_plan_did_not_have_is_told_in_full() {
        JobLog log = log(worked(8, TrackKind.OPEN_FIELD, "resin-800", 8), happened(EventKind.UNKNOWN_LAYER));
        NextMove next = ADVISOR.followUp(PLAN, log);
        assertThat(next.move()).isEqualTo(Move.STOP_AND_ASK);
        List<SafetyWarning> added = next.ahead().warnings().stream()
                .filter(warning -> PLAN.warnings().stream().noneMatch(planned -> planned.hazard() == warning.hazard()))
                .toList();
        assertThat(added).isNotEmpty();
        added.forEach(warning -> assertSays(follow(log), said(Words.warning(warning))));
        assertSays(follow(log), said("closing.beside-plan"));
    }

    @Test
    void lines_fit_the_page_and_weights_are_in_the_readers_units() {
        JobLog log =
                log(worked(8, TrackKind.OPEN_FIELD, "resin-800", 2), looked(9, FaceState.CLEAN_DRY, ScratchLook.NONE));
        NextMove next = ADVISOR.followUp(PLAN, log);
        String metric = page(UnitSystem.METRIC, TEXT.document(PLAN, log, next));
        String us = page(UnitSystem.US, TEXT.document(PLAN, log, next));
        assertThat(metric.lines()).allMatch(line -> line.length() <= 96);
        assertThat(us.lines()).allMatch(line -> line.length() <= 96);
        assertThat(metric).contains(" kg added").doesNotContain(" lb ").endsWith(".\n");
        assertThat(us).contains(" lb added").doesNotContain(" kg added");
    }

    @Test
    void more_passes_are_told_as_more_and_not_as_the_whole_grade() {
        JobLog log = log(
                worked(8, TrackKind.OPEN_FIELD, "resin-800", 8),
                worked(9, TrackKind.EDGE, "resin-800", 10),
                worked(10, TrackKind.OPEN_FIELD, "resin-1500", 3),
                looked(10, FaceState.CLEAN_DRY, ScratchLook.OF_THE_LAST));
        NextMove next = ADVISOR.followUp(PLAN, log);
        assertThat(next.move()).isEqualTo(Move.MORE_PASSES);
        int low = next.morePasses().orElseThrow().low();
        assertSays(
                follow(log),
                said(Move.MORE_PASSES) + " " + low,
                "resin 1500, low-speed single-disc machine",
                "passes: " + low);
    }

    @Test
    void before_the_look_nothing_says_that_the_grade_is_repeated() {
        JobLog log = log(worked(8, TrackKind.OPEN_FIELD, "resin-800", 8), looked(8, FaceState.WET, ScratchLook.NONE));
        assertThat(ADVISOR.followUp(PLAN, log).move()).isEqualTo(Move.LOOK_FIRST);
        assertSays(follow(log), "The check decides whether resin 800 is repeated.");
    }

    @Test
    void without_work_in_the_log_a_diagnosis_says_that_the_floor_is_taken_as_finished() {
        Diagnosis diagnosis = ADVISOR.diagnose(PLAN, EnumSet.of(Sign.HAZE), log());
        assertSays(
                page(UnitSystem.METRIC, TEXT.document(PLAN, log(), diagnosis)),
                "The log is empty, so the floor is taken as finished to plan, open field: resin 3000, "
                        + said(ValueWords.name(PLAN.plan().orElseThrow().polishingAgent())));
    }

    @Test
    void while_an_answer_is_awaited_no_grade_is_to_come() {
        JobLog log = log(worked(8, TrackKind.OPEN_FIELD, "resin-800", 8), happened(EventKind.AGGREGATE_SHOWS));
        assertThat(ADVISOR.followUp(PLAN, log).move()).isEqualTo(Move.STOP_AND_ASK);
        assertSays(
                follow(log), "Grits to come - None until the people asked have answered.", said("follow.checks-later"));
        assertThat(follow(log)).doesNotContain("\n" + said("follow.checks") + "\n");
    }

    @Test
    void after_an_alarm_nothing_is_checked_or_mended() {
        JobLog log = log(worked(8, TrackKind.OPEN_FIELD, "resin-800", 8), happened(EventKind.ALARM));
        NextMove next = ADVISOR.followUp(PLAN, log);
        assertThat(next.checks()).isEmpty();
        assertThat(next.mends()).isEmpty();
        assertThat(follow(log)).doesNotContain(said("follow.checks-later"));
    }

    @Test
    void a_note_of_another_log_is_refused() {
        JobLog log = log(worked(8, TrackKind.OPEN_FIELD, "resin-3000", 8));
        NextMove next = ADVISOR.followUp(PLAN, log);
        assertThat(next.notes()).isNotEmpty();
        assertThatThrownBy(() -> TEXT.document(PLAN, log(), next))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("notes.entry: '0'");
    }
}
