package stoneprocess.core.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.estimate.Assumption;
import stoneprocess.core.estimate.ConsumableKind;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.JobStep;
import stoneprocess.core.estimate.Line;
import stoneprocess.core.estimate.OtherWork;
import stoneprocess.core.estimate.SiteConditions;
import stoneprocess.core.estimate.Spread;
import stoneprocess.core.estimate.Work;
import stoneprocess.core.estimate.WorkingTimes;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Coverage;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.EtchClass;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.LippageClass;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.TrackKind;

/** What a plan becomes when it is to be estimated. */
class PlannedJobTest {
    private static final JobOptions EDGES = JobOptions.defaults().withEdges(new Length(30_000));

    private static PlannedJob of(Plans plans) {
        return PlannedJob.of(plans.recommendation(), EDGES);
    }

    private static OtherWork other(PlannedJob planned, String name) {
        return planned.job().others().stream()
                .filter(work -> work.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static void set(Plans plans, Consumer<FloorSurvey.Builder> change) {
        FloorSurvey.Builder builder = plans.survey.toBuilder();
        change.accept(builder);
        plans.survey = builder.build();
    }

    @Test
    void a_step_keeps_grade_machine_depth_passes_and_water() {
        PlannedJob planned = of(Plans.marble());
        assertThat(planned.job().area()).isEqualTo(new Area(100));
        assertThat(planned.job().edges()).isEqualTo(Range.of(new Length(30_000), new Length(30_000)));
        assertThat(planned.job().steps()).extracting(JobStep::name).containsExactly("resin-200", "resin-400");
        JobStep step = planned.job().steps().get(0);
        assertThat(step.depth()).isEqualTo(Range.of(new Length(0.02), new Length(0.04)));
        assertThat(step.machine().kind()).isEqualTo(MachineClass.SINGLE_DISC);
        assertThat(step.passes()).isEqualTo(Range.of(6, 7));
        assertThat(step.water()).isEqualTo(Range.of(new Coverage(0.2), new Coverage(0.5)));
        assertThat(step.edges()).contains(Range.of(6, 7));
        assertThat(planned.job().sealing()).isEmpty();
        assertThat(planned.notes()).isEmpty();
    }

    /** By hand: a square of 100 m2 has 40 m; an outline of up to 160 % of that is common practice, no source. */
    @Test
    void edges_that_nobody_measured_are_longer_than_those_of_a_square_and_the_job_says_so() {
        PlannedJob planned = PlannedJob.of(Plans.marble().recommendation(), JobOptions.defaults());
        assertThat(planned.job().edges()).isEqualTo(Range.of(new Length(40_000), new Length(64_000)));
        assertThat(planned.notes()).containsExactly(JobNote.EDGES_FROM_AREA);
    }

    @Test
    void edges_that_the_survey_tells_count_unless_the_options_tell_others() {
        Plans plans = Plans.marble();
        set(plans, builder -> builder.set(SurveyField.EDGES, new Length(62_000)));
        PlannedJob surveyed = PlannedJob.of(plans.recommendation(), JobOptions.defaults());
        assertThat(surveyed.job().edges()).isEqualTo(Range.of(new Length(62_000), new Length(62_000)));
        assertThat(surveyed.notes()).isEmpty();
        JobOptions told = JobOptions.defaults().withEdges(new Length(48_000));
        assertThat(PlannedJob.of(plans.recommendation(), told).job().edges())
                .isEqualTo(Range.of(new Length(48_000), new Length(48_000)));
    }

    @Test
    void a_grade_of_the_field_alone_leaves_the_edges_out_and_one_of_the_edges_alone_is_hand_work() {
        Plans plans = Plans.marble();
        plans.track(TrackKind.EDGE, Plans.byHand("resin-100"), Plans.byHand("resin-200"), Plans.byHand("resin-800"));
        PlannedJob planned = of(plans);
        assertThat(planned.job().steps())
                .extracting(step -> step.edges().isPresent())
                .containsExactly(true, false);
        OtherWork first = other(planned, "edges-alone resin-100");
        assertThat(first.after()).isEmpty();
        // 30 m, the middle of 6 and 7 passes, at 2 to 4 m a minute.
        assertThat(first.work()).isEqualTo(Range.of(new TimeSpan(30 * 6.5 / 4), new TimeSpan(30 * 6.5 / 2)));
        assertThat(other(planned, "edges-alone resin-800").after()).contains("resin-400");
        assertThat(planned.notes()).containsExactly(JobNote.HAND_WORK_USES_UP_MORE);
    }

    @Test
    void a_plan_without_edge_work_takes_no_hours_at_the_edges() {
        PlannedJob planned = of(Plans.marble().track(TrackKind.EDGE));
        assertThat(planned.notes()).containsExactly(JobNote.NO_EDGE_WORK);
        assertThat(planned.estimate().work()).noneMatch(line -> line.work() == Work.EDGES);
    }

    @Test
    void rests_of_the_preparation_are_waited_for_before_the_first_step() {
        PlannedJob planned = of(Plans.marble().prepare(Task.MASK).prepare(Task.HEATING_OFF, 24, 48));
        OtherWork heating = other(planned, "heating-off");
        assertThat(heating.curing()).isEqualTo(Plans.hours(24, 48));
        assertThat(heating.after()).isEmpty();
        Estimate estimate = planned.estimate();
        assertThat(estimate.calendar().waiting().likely())
                .as("cooling, and two days for the signature")
                .isEqualTo(TimeSpan.of(36 + 48, Unit.HOUR));
    }

    /** From memory: 2 % of 100 m2 is 20 m of crack at 3 to 6 m an hour, 15 to 30 min around it, and as long to plan the bays. */
    @Test
    void work_without_a_published_rate_takes_its_usual_time_until_hours_are_given() {
        Plans plans = Plans.marble().prepare(Task.FILL_CRACKS, 12, 24).prepare(Task.PLAN_BAYS);
        damaged(plans, DamageKind.CRACKS, Presence.PRESENT, 2);
        assertThat(other(of(plans), "fill-cracks").work()).isEqualTo(Plans.hours(2 / 0.6 + 0.25, 2 / 0.3 + 0.5));
        assertThat(other(of(plans), "plan-bays").work()).isEqualTo(Plans.hours(0.25, 0.5));
        assertThat(of(plans).rates()).containsOnlyKeys("fill-cracks", "plan-bays");
        PlannedJob given = PlannedJob.of(
                plans.recommendation(),
                EDGES.withTime("fill-cracks", Plans.hours(2, 4)).withTime("plan-bays", Plans.hours(1, 1)));
        assertThat(given.takesHours()).containsExactly("fill-cracks", "plan-bays");
        assertThat(given.rates()).isEmpty();
        assertThat(other(given, "fill-cracks").work()).isEqualTo(Plans.hours(2, 4));
    }

    private static void damaged(Plans plans, DamageKind kind, Term look, double percent) {
        Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
        damages.put(kind, Damage.seen(kind, look, new Share(percent)));
        FloorSurvey.Builder builder = FloorSurvey.builder("Hall").set(SurveyField.AREA, new Area(100));
        plans.survey = builder.zone(new Zone("field", ZoneKind.FIELD, new Share(100), damages))
                .build();
    }

    /** Holes that a stone has everywhere are looked for over the floor. Common practice, no source: 15 to 40 m2 an hour. */
    @Test
    void holes_that_no_share_was_told_of_go_by_the_floor() {
        assertThat(other(of(Plans.marble().prepare(Task.FILL_CRACKS)), "fill-cracks")
                        .work())
                .isEqualTo(Plans.hours(100 / 40.0, 100 / 15.0));
    }

    /** What mends a told damage, the damage, and the look that it mends. */
    private static Stream<Arguments> mended() {
        return Stream.of(
                Arguments.of(Task.POULTICE_OIL, DamageKind.OIL_STAINS, Presence.PRESENT),
                Arguments.of(Task.POULTICE_ORGANIC, DamageKind.ORGANIC_STAINS, Presence.PRESENT),
                Arguments.of(Task.POULTICE_RUST, DamageKind.RUST_STAINS, Presence.PRESENT),
                Arguments.of(Task.DRY_CLEAN_SALTS, DamageKind.SALTS, Presence.PRESENT),
                Arguments.of(Task.FILL_CRACKS, DamageKind.CRACKS, Presence.PRESENT),
                Arguments.of(Task.FILL_CRACKS, DamageKind.SCRATCHES, ScratchClass.GOUGED),
                Arguments.of(Task.RELAY_LIPPED, DamageKind.LIPPAGE, LippageClass.HIGH),
                Arguments.of(Repair.LOCAL_SCRATCHES, DamageKind.SCRATCHES, ScratchClass.DEEP),
                Arguments.of(Repair.POWDER_FIRST, DamageKind.ETCHES, EtchClass.GLOSS_LOST),
                Arguments.of(Repair.LOCAL_ETCHES, DamageKind.ETCHES, EtchClass.GLOSS_LOST),
                Arguments.of(Repair.DEEP_ETCHES, DamageKind.ETCHES, EtchClass.ROUGH),
                Arguments.of(Repair.LOCAL_LIPPAGE, DamageKind.LIPPAGE, LippageClass.HIGH));
    }

    @ParameterizedTest
    @MethodSource("mended")
    void more_damage_takes_more_hours_and_ten_times_as_much_at_least_half_as_many_again(
            Term work, DamageKind damage, Term look) {
        for (boolean byHand : List.of(true, false)) {
            double before = 0;
            for (double percent : List.of(0.1, 0.5, 1.0, 2.0, 3.0, 4.9)) {
                double likely = likely(work, damage, look, percent, byHand);
                assertThat(likely).as(percent + " %").isGreaterThan(before);
                before = likely;
            }
            assertThat(likely(work, damage, look, 5, byHand))
                    .isGreaterThan(1.5 * likely(work, damage, look, 0.5, byHand));
        }
    }

    private static double likely(Term work, DamageKind damage, Term look, double percent, boolean byHand) {
        Plans plans = Plans.marble();
        damaged(plans, damage, look, percent);
        if (work instanceof Task task) {
            plans.prepare(task);
        } else {
            plans.repairs.add((Repair) work);
        }
        if (byHand) {
            plans.track(TrackKind.LOCAL_REPAIR, Plans.byHand("resin-400"), Plans.byHand("resin-800"));
        }
        PlannedJob planned = of(plans);
        assertThat(planned.notes()).contains(JobNote.REPAIRS_BY_SURVEY);
        Range<TimeSpan> hours = other(planned, work.key()).work();
        return (hours.low().minutes() + hours.high().minutes()) / 2;
    }

    /** From memory, as a senior estimator reckoned it: 1 to 1.5 h a piece; 6 to 10 pieces of marble on a square metre. */
    @Test
    void pieces_are_relaid_one_by_one_and_what_still_stands_proud_is_ground_by_hand() {
        Plans plans = Plans.marble().prepare(Task.RELAY_LIPPED);
        plans.repairs.add(Repair.LOCAL_LIPPAGE);
        damaged(plans, DamageKind.LIPPAGE, LippageClass.HIGH, 1);
        assertThat(other(of(plans), "relay-lipped").work()).isEqualTo(Plans.hours(1 / 0.16, 1.5 / 0.1));
        assertThat(of(plans).job().others()).hasSize(1);
        plans.track(TrackKind.LOCAL_REPAIR, Plans.byHand("resin-200"), Plans.byHand("resin-400"));
        // 1 m2 is a strip of 8 m, 13 passes at 2 to 4 m a minute, and 15 to 30 min around it.
        assertThat(other(of(plans), "local-lippage").work())
                .isEqualTo(Range.of(new TimeSpan(8 * 13 / 4.0 + 15), new TimeSpan(8 * 13 / 2.0 + 30)));
        damaged(plans, DamageKind.LIPPAGE, LippageClass.HIGH, 0.01);
        assertThat(other(of(plans), "relay-lipped").work()).isEqualTo(Plans.hours(1, 1.5));
    }

    /** From memory: half to two hundredths of a floor where nobody told; a few pieces that rock are as many. */
    @Test
    void places_that_nobody_measured_are_as_usual_and_the_job_says_so() {
        PlannedJob stained = of(Plans.marble().prepare(Task.POULTICE_OIL));
        assertThat(other(stained, "poultice-oil").work()).isEqualTo(Plans.hours(0.5 / 4 + 0.25, 2 / 2.0 + 0.5));
        assertThat(stained.notes()).containsExactly(JobNote.REPAIRS_AS_USUAL);
        assertThat(loose(Sounding.FEW_LOOSE)).isEqualTo(Plans.hours(0.5 / 0.16, 2 / 0.1 * 1.5));
        assertThat(loose(Sounding.LOOSE)).isEqualTo(Plans.hours(5 / 0.16, 5 / 0.1 * 1.5));
        assertThat(loose(Sounding.HOLLOW)).isEqualTo(Plans.hours(100 / 60.0, 100 / 20.0));
    }

    private static Range<TimeSpan> loose(Sounding sounding) {
        Plans plans = Plans.marble().prepare(Task.FIX_HOLLOW);
        set(plans, builder -> builder.set(SurveyField.SOUNDING, sounding));
        return other(of(plans), "fix-hollow").work();
    }

    /** A total that lacks half the job is no total. */
    @Test
    void every_task_of_a_plan_has_its_usual_time() {
        for (Task task : Task.values()) {
            Plans plans = Plans.marble().prepare(task);
            boolean within = task == Task.MASK
                    || task == Task.PROTECT_ROUTE
                    || task == Task.PLAN_EDGES // a tool that is brought
                    || task == Task.MEND_LEAK // a plumber's
                    || task == Task.SILENCE_DETECTORS; // the building manager's own
            assertThat(of(plans).job().others()).as(task.key()).hasSize(within ? 0 : 1);
        }
        for (FinishTask task : FinishTask.values()) {
            Plans plans = Plans.marble();
            plans.finishTasks.add(task);
            boolean within = task == FinishTask.SEAL_LATER || task == FinishTask.REOPEN;
            assertThat(of(plans).job().others()).as(task.key()).hasSize(within ? 0 : 1);
        }
        for (Repair repair : Repair.values()) {
            Plans plans = Plans.marble();
            plans.repairs.add(repair);
            assertThat(of(plans).job().others()).as(repair.key()).hasSize(1);
        }
    }

    /** Common practice, no source: a small floor takes less of what does not go by its area. */
    @Test
    void a_task_on_a_small_floor_takes_less() {
        Plans plans = Plans.marble().prepare(Task.PLAN_BAYS);
        set(plans, builder -> builder.set(SurveyField.AREA, new Area(5)));
        assertThat(other(of(plans), "plan-bays").work()).isEqualTo(Plans.hours(0.125, 0.25));
    }

    @Test
    void hours_for_work_that_the_plan_does_not_have_are_refused_by_name() {
        assertThatThrownBy(() -> PlannedJob.of(
                        Plans.marble().prepare(Task.PLAN_BAYS).recommendation(),
                        EDGES.withTime("regrout", Plans.hours(1, 2))))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("times: 'regrout'")
                .hasMessageContaining("plan-bays");
        Plans plans = Plans.marble().track(TrackKind.EDGE, Plans.byHand("resin-100"));
        assertThatThrownBy(() -> PlannedJob.of(
                        plans.recommendation(), EDGES.withTime("edges-alone resin-100", Plans.hours(1, 2))))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("no times");
        OtherWork strip = other(
                PlannedJob.of(
                        Plans.marble().prepare(Task.STRIP_COATING).recommendation(),
                        EDGES.withTime("strip-coating", Plans.hours(1, 2))),
                "strip-coating");
        assertThat(strip.work()).isEqualTo(Plans.hours(1, 2));
    }

    @Test
    void hours_can_be_kept_for_named_work_alone() {
        JobOptions both = EDGES.withTime("densify", Plans.hours(1, 2)).withTime("regrout", Plans.hours(3, 4));
        assertThat(both.withTimesOf(Set.of("regrout", "hand-over")))
                .isEqualTo(EDGES.withTime("regrout", Plans.hours(3, 4)));
    }

    /** From memory, as a senior estimator reckoned it: 4 to 7 paid hours for two rounds on the 48 m2 of a lobby. */
    @Test
    void a_coating_is_stripped_in_two_rounds_slower_where_it_built_up() {
        Plans plans = Plans.marble().prepare(Task.STRIP_COATING);
        set(plans, builder -> builder.set(SurveyField.AREA, new Area(48)));
        Range<TimeSpan> strip = other(of(plans), "strip-coating").work();
        // At 70 m2/h, halved with build-up; two rinses at 80 to 160 m2/h; 30 to 45 min of dwell; all of it twice.
        double fast = 2 * (60 * (48 / 70.0 + 2 * 48 / 160.0) + 30);
        double slow = 2 * (60 * (48 / 35.0 + 2 * 48 / 80.0) + 45);
        assertThat(strip.low().minutes()).isEqualTo(fast, Offset.offset(1e-3));
        assertThat(strip.high().minutes()).isEqualTo(slow, Offset.offset(1e-3));
        assertThat((fast + slow) / 2 / 60).isBetween(4.0, 7.0);
    }

    @Test
    void work_by_a_rate_says_which() {
        Plans plans = Plans.marble().prepare(Task.STRIP_COATING).prepare(Task.FILL_CRACKS, 12, 24);
        plans.repairs.add(Repair.LOCAL_ETCHES);
        plans.track(TrackKind.LOCAL_REPAIR, Plans.byHand("resin-400"));
        PlannedJob planned = PlannedJob.of(plans.recommendation(), EDGES.withTime("fill-cracks", Plans.hours(1, 2)));
        assertThat(planned.rates()).containsOnlyKeys("strip-coating", "local-etches");
        assertThat(planned.rates().get("strip-coating"))
                .filteredOn(rate -> rate.source().id().equals("CLEANING-TIMES"))
                .extracting(rate -> rate.value().low().print())
                .containsExactly("70 m2/h", "50 %");
        assertThat(planned.rates().get("local-etches"))
                .containsExactly(
                        Assumption.of("estimate.hand", Parameters.standard()),
                        Assumption.of("estimate.place", Parameters.standard()));
    }

    @Test
    void a_reading_that_ends_a_wait_is_told() {
        assertThat(of(Plans.marble().prepare(Task.LET_DRY)).notes()).containsExactly(JobNote.A_READING_ENDS_A_WAIT);
    }

    @Test
    void pits_are_grouted_after_the_cut_that_opened_them() {
        Plans plans = Plans.marble();
        plans.track(TrackKind.OPEN_FIELD, Plans.step("resin-200", Handling.REGROUT_PITS), Plans.step("resin-400"));
        PlannedJob planned = of(plans);
        OtherWork grout = other(planned, "regrout-pits resin-200");
        assertThat(grout.after()).contains("resin-200");
        assertThat(grout.curing()).isEqualTo(Parameters.standard().range("rest.regrout", TimeSpan.class));
    }

    @Test
    void local_repairs_are_as_large_as_the_survey_says() {
        Plans plans = Plans.marble();
        plans.repairs.add(Repair.LOCAL_SCRATCHES);
        plans.track(TrackKind.LOCAL_REPAIR, Plans.byHand("resin-200"), Plans.byHand("resin-400"));
        Map<DamageKind, Damage> lane = new EnumMap<>(DamageKind.class);
        lane.put(DamageKind.SCRATCHES, Damage.seen(DamageKind.SCRATCHES, ScratchClass.DEEP, new Share(2)));
        Map<DamageKind, Damage> rest = new EnumMap<>(DamageKind.class);
        rest.put(DamageKind.SCRATCHES, Damage.seen(DamageKind.SCRATCHES, ScratchClass.SEEN, new Share(60)));
        set(
                plans,
                builder -> builder.zone(new Zone("lane", ZoneKind.LANE, new Share(50), lane))
                        .zone(new Zone("rest", ZoneKind.FIELD, new Share(50), rest)));
        PlannedJob planned = of(plans);
        // 1 m2 is a strip of 8 m under a disc of 125 mm, 13 passes at 2 to 4 m a minute, and 15 to 30 min around it.
        assertThat(other(planned, "local-scratches").work().low().minutes()).isEqualTo(26 + 15, Offset.offset(1e-3));
        assertThat(other(planned, "local-scratches").work().high().minutes()).isEqualTo(52 + 30, Offset.offset(1e-3));
        assertThat(planned.notes()).containsExactly(JobNote.REPAIRS_BY_SURVEY, JobNote.HAND_WORK_USES_UP_MORE);
    }

    @Test
    void local_repairs_that_nobody_measured_range_up_to_the_share_that_would_govern() {
        Plans plans = Plans.marble();
        plans.repairs.add(Repair.LOCAL_ETCHES);
        plans.track(TrackKind.LOCAL_REPAIR, Plans.byHand("resin-400"));
        PlannedJob planned = of(plans);
        // 5 % of 100 m2 is a strip of 40 m, 6.5 passes at 2 m a minute; 15 to 30 min around the places.
        assertThat(other(planned, "local-etches").work())
                .isEqualTo(Range.of(new TimeSpan(15), new TimeSpan(40 * 6.5 / 2 + 30)));
        assertThat(planned.notes()).contains(JobNote.REPAIRS_BY_LIMIT);
    }

    @Test
    void a_floor_where_the_field_stays_is_hand_work_alone() {
        PlannedJob planned = of(Plans.marble().track(TrackKind.OPEN_FIELD));
        assertThat(planned.job().steps()).isEmpty();
        assertThat(planned.job().others())
                .extracting(OtherWork::name)
                .containsExactly("edges-alone resin-200", "edges-alone resin-400");
        assertThat(planned.estimate().consumables()).isEmpty();
        assertThatThrownBy(() -> planned.estimate().areaPerMachineDay())
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("job.steps: 'none'");
    }

    @Test
    void stairs_alone_go_by_their_area() {
        Plans plans = Plans.marble().track(TrackKind.OPEN_FIELD);
        set(plans, builder -> builder.zone(new Zone("treads", ZoneKind.STAIR, new Share(100), Map.of())));
        PlannedJob planned = PlannedJob.of(plans.recommendation(), JobOptions.defaults());
        assertThat(planned.notes()).contains(JobNote.HAND_WORK_BY_AREA);
        // 100 m2 is a strip of 800 m, 6.5 passes at 4 m a minute.
        assertThat(other(planned, "edges-alone resin-200").work().low().minutes())
                .isEqualTo(800 * 6.5 / 4, Offset.offset(0.01));
        assertThat(of(plans).notes()).contains(JobNote.STAIRS_ARE_NOT_IN_THE_EDGES);
    }

    @Test
    void a_landing_cut_with_the_hand_tool_goes_by_its_area() {
        Plans plans = Plans.marble();
        plans.track(TrackKind.OPEN_FIELD, Plans.byHand("resin-200"));
        PlannedJob planned = of(plans);
        assertThat(planned.job().steps()).isEmpty();
        assertThat(planned.job().others())
                .extracting(OtherWork::name)
                .containsExactly("by-hand resin-200", "edges-alone resin-200", "edges-alone resin-400");
    }

    @Test
    void a_machine_without_usual_figures_is_refused_by_name() {
        Plans plans = Plans.marble();
        plans.track(TrackKind.OPEN_FIELD, Plans.step("resin-200", MachineClass.PROPANE_MACHINE));
        assertThatThrownBy(() -> of(plans))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("machine.kind: 'propane-machine'");
    }

    @Test
    void powder_is_a_last_step_with_the_finest_steps_machine() {
        Plans plans = Plans.marble();
        plans.agent = PolishingAgent.NEUTRAL_OXIDE;
        PlannedJob planned = of(plans);
        JobStep powder = planned.job().steps().get(2);
        assertThat(powder.name()).isEqualTo("powder");
        assertThat(powder.machine()).isEqualTo(planned.job().steps().get(1).machine());
        assertThat(planned.notes()).containsExactly(JobNote.POWDER_AS_USUAL);
        assertThat(planned.estimate().total(ConsumableKind.POWDER)).isPresent();
    }

    @Test
    void sealing_waits_unless_it_is_done_later() {
        Plans plans = Plans.marble();
        plans.sealer = Sealer.IMPREGNATOR;
        assertThat(of(plans).job().sealing()).isPresent();
        assertThat(of(plans).notes()).isEmpty();
        set(plans, builder -> builder.set(SurveyField.REOPENS_AFTER, TimeSpan.of(3, Unit.DAY)));
        assertThat(of(plans).notes()).containsExactly(JobNote.OPENS_BEFORE_CURED);
        set(plans, builder -> builder.set(SurveyField.REOPENS_AFTER, TimeSpan.of(5, Unit.DAY)));
        assertThat(of(plans).notes()).isEmpty();
        plans.finishTasks.add(FinishTask.SEAL_LATER);
        assertThat(of(plans).job().sealing()).isEmpty();
        assertThat(of(plans).notes()).containsExactly(JobNote.SEALED_LATER);
    }

    @Test
    void densifying_stands_where_the_plan_has_it() {
        Plans plans = Plans.marble();
        plans.densifier = Densifier.AFTER_FINE_HONE;
        JobOptions given = EDGES.withTime("densify", Plans.hours(1, 2));
        assertThat(other(PlannedJob.of(plans.recommendation(), given), "densify")
                        .after())
                .contains("resin-400");
        plans.densifier = Densifier.BEFORE_CUTS;
        assertThat(other(PlannedJob.of(plans.recommendation(), given), "densify")
                        .after())
                .isEmpty();
        assertThat(other(PlannedJob.of(plans.recommendation(), given), "densify resin-400")
                        .after())
                .contains("resin-400");
    }

    @Test
    void the_stone_is_reckoned_as_hard_when_it_may_be() {
        Plans plans = Plans.marble();
        assertThat(of(plans).job().stone()).isEqualTo(CuttingClass.MEDIUM);
        plans.families = List.of(Family.GRANITE);
        assertThat(of(plans).job().stone()).isEqualTo(CuttingClass.HARD);
        assertThat(of(plans).notes()).isEmpty();
        plans.families = List.of(Family.SOAPSTONE);
        assertThat(of(plans).job().stone()).isEqualTo(CuttingClass.SOFT);
        plans.families = List.of(Family.CONCRETE);
        assertThat(of(plans).job().stone()).isEqualTo(CuttingClass.HARD);
        assertThat(of(plans).notes()).containsExactly(JobNote.STONE_MAY_BE_HARD);
        set(plans, builder -> builder.set(SurveyField.SCRIBER, ScriberTest.NOT_SCRATCHED));
        assertThat(of(plans).notes()).isEmpty();
        set(plans, builder -> builder.set(SurveyField.SCRIBER, ScriberTest.SCRATCHED));
        assertThat(of(plans).job().stone()).isEqualTo(CuttingClass.MEDIUM);
    }

    @Test
    void a_crew_of_another_size_than_reckoned_is_told() {
        Plans plans = Plans.marble();
        for (int people = 1; people <= 3; people++) {
            int crew = people;
            set(plans, builder -> builder.set(SurveyField.CREW, new Count(crew)));
            assertThat(of(plans).notes())
                    .isEqualTo(
                            crew == 1
                                    ? Set.of(JobNote.CREW_IS_SMALLER)
                                    : crew == 2 ? Set.of() : Set.of(JobNote.CREW_IS_LARGER));
        }
    }

    @Test
    void nights_and_times_that_are_given_are_kept() {
        WorkingTimes times = new WorkingTimes(TimeSpan.of(6, Unit.HOUR), 1, 6, 3, 2, 2, List.of());
        SiteConditions site = PlannedJob.of(
                        Plans.marble().recommendation(),
                        EDGES.withNight(new Share(50)).withWorked(times))
                .job()
                .site();
        assertThat(site.night()).isEqualTo(new Share(50));
        assertThat(site.times()).isEqualTo(times);
    }

    /** Common practice, no source: an owner takes 1 to 3 days to sign; a small job is shown and signed on the spot. */
    @Test
    void the_owner_takes_days_to_sign_but_on_a_small_job() {
        for (double area : new double[] {9.9, 10}) {
            Plans plans = Plans.marble();
            set(plans, builder -> builder.set(SurveyField.AREA, new Area(area)));
            assertThat(of(plans).job().site().signOff()).isEqualTo(area < 10 ? Plans.hours(0, 0) : Plans.hours(24, 72));
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Status.class,
            names = {"REFUSED", "UNDECIDED", "IMPASSE"})
    void without_a_plan_there_is_no_job(Status status) {
        Plans plans = Plans.marble();
        plans.status = status;
        assertThatThrownBy(() -> of(plans))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("recommendation.status: '" + status.key() + "'");
    }

    /** Common practice, no source: 50 to 100 m2 scrubbed and rinsed in an hour. */
    @Test
    void a_floor_that_is_only_cleaned_is_a_job_of_its_tasks() {
        Plans plans = new Plans();
        plans.testArea = TestArea.NOT_NEEDED;
        assertThatThrownBy(() -> of(plans))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("plan.tracks: 'none'");
        plans.finishTasks.add(FinishTask.SCRUB_AND_RINSE);
        PlannedJob planned = of(plans);
        assertThat(planned.job().steps()).isEmpty();
        assertThat(other(planned, "scrub-and-rinse").work()).isEqualTo(Plans.hours(1, 2));
        assertThat(planned.estimate().work()).extracting(Line::name).doesNotContain("test-area", "masking");
        assertThat(planned.estimate().calendar().waiting().high()).isEqualTo(new TimeSpan(0));
        plans.status = Status.PROVISIONAL;
        assertThatThrownBy(() -> of(plans)).hasMessageContaining("until the questions are answered");
    }

    @Test
    void without_an_area_there_is_no_job() {
        Plans plans = Plans.marble();
        set(plans, builder -> builder.unknown(SurveyField.AREA));
        assertThatThrownBy(() -> of(plans))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("site.area: 'unknown'");
    }

    @Test
    void a_provisional_plan_is_told() {
        Plans plans = Plans.marble();
        plans.status = Status.PROVISIONAL;
        assertThat(of(plans).notes()).containsExactly(JobNote.PLAN_IS_PROVISIONAL);
    }

    @Test
    void edges_of_no_length_are_refused() {
        assertThatThrownBy(() -> JobOptions.defaults().withEdges(new Length(0)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("edges: '0 mm'");
    }

    private static Estimate estimate(double area) {
        Plans plans = Plans.marble().prepare(Task.STRIP_COATING).prepare(Task.FILL_CRACKS, 12, 24);
        plans.sealer = Sealer.IMPREGNATOR;
        plans.agent = PolishingAgent.OXALIC_COMPOUND;
        plans.repairs.add(Repair.LOCAL_ETCHES);
        plans.track(TrackKind.LOCAL_REPAIR, Plans.byHand("resin-400"));
        set(plans, builder -> builder.set(SurveyField.AREA, new Area(area)));
        return PlannedJob.of(plans.recommendation(), JobOptions.defaults()).estimate();
    }

    private static List<ToDoubleFunction<Spread<? extends Quantity>>> figures() {
        return List.of(
                spread -> spread.low().kept(),
                spread -> spread.likely().kept(),
                spread -> spread.high().kept());
    }

    @Property(tries = 100)
    void a_larger_area_never_takes_less(
            @ForAll @DoubleRange(min = 1, max = 3000) double one,
            @ForAll @DoubleRange(min = 1, max = 3000) double two) {
        Estimate small = estimate(Math.min(one, two));
        Estimate large = estimate(Math.max(one, two));
        for (var figure : figures()) {
            assertThat(figure.applyAsDouble(large.personHours()))
                    .isGreaterThanOrEqualTo(figure.applyAsDouble(small.personHours()));
            assertThat(figure.applyAsDouble(large.calendar().days()))
                    .isGreaterThanOrEqualTo(
                            figure.applyAsDouble(small.calendar().days()));
        }
    }

    @Property(tries = 50)
    void totals_are_the_sum_of_their_lines(@ForAll @DoubleRange(min = 1, max = 3000) double area) {
        Estimate estimate = estimate(area);
        for (var figure : figures()) {
            double work = 0;
            double waits = 0;
            for (Line line : estimate.lines()) {
                if (line instanceof Line.WorkLine one) {
                    work += figure.applyAsDouble(one.personHours());
                } else if (line instanceof Line.WaitLine one) {
                    waits += figure.applyAsDouble(one.hours());
                }
            }
            assertThat(figure.applyAsDouble(estimate.personHours())).isEqualTo(work, Offset.offset(0.01));
            assertThat(figure.applyAsDouble(estimate.calendar().waiting())).isEqualTo(waits, Offset.offset(0.01));
        }
    }

    @Test
    void units_make_no_difference() {
        Plans metric = Plans.marble();
        Plans american = Plans.marble();
        set(american, builder -> builder.set(SurveyField.AREA, Area.of(1076.391041671, Unit.SQUARE_FOOT)));
        assertThat(PlannedJob.of(
                        american.recommendation(), JobOptions.defaults().withEdges(Length.of(100, Unit.FOOT))))
                .isEqualTo(PlannedJob.of(
                        metric.recommendation(), JobOptions.defaults().withEdges(Length.of(30.48, Unit.METRE))));
    }
}
