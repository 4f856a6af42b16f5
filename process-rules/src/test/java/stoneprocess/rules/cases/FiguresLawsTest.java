package stoneprocess.rules.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.Estimator;
import stoneprocess.core.estimate.Job;
import stoneprocess.core.estimate.JobStep;
import stoneprocess.core.estimate.Line;
import stoneprocess.core.estimate.StepKind;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.Advisor;

/** What holds between the figures of plans, over drawn floors. */
class FiguresLawsTest {
    private static final Advisor ADVISOR = Advisor.standard();
    /** How many drawn floors have to meet what a law asks for before it says something. */
    private static final int LEAST_MET = 100;

    /** Floors of the expert cases that are cut when they are scratched; a drawn floor is seldom cut at all. */
    private static final List<FloorSurvey> CUT = ExpertCase.all().stream()
            .map(ExpertCase::survey)
            .filter(survey -> PlannedJob.isThere(ADVISOR.recommend(damaged(survey, DamageKind.SCRATCHES, 0.2, 80))))
            .toList();

    /** Those of hard stone. */
    private static final List<FloorSurvey> HARD = CUT.stream()
            .filter(survey -> KnownStone.of(ADVISOR.recommend(survey)).cutting() == CuttingClass.HARD)
            .toList();

    /** A floor that stands proud, and how. */
    private record Proud(FloorSurvey survey, DamageKind kind) {
        /** From as little as still counts to as much as still is ground down, by a part of 0 to 1. */
        FloorSurvey at(double part, double percent) {
            double millimetres = kind == DamageKind.WAVINESS ? 5 + 7 * part : 1.7 + 1.2 * part;
            return over(damaged(survey, kind, millimetres, 300), kind, millimetres, percent);
        }

        static Stream<Proud> of(List<FloorSurvey> floors) {
            return floors.stream()
                    .flatMap(survey ->
                            Stream.of(DamageKind.WAVINESS, DamageKind.LIPPAGE).map(kind -> new Proud(survey, kind)));
        }
    }

    /** Floors that metal takes down where they stand proud, whether little does or much. */
    private static final List<Proud> PROUD = Proud.of(CUT)
            .filter(floor -> isTakenDown(floor.at(0, 11)) && isTakenDown(floor.at(1, 30)))
            .limit(20)
            .toList();

    /** Floors that coarser metal on the van changes, whether little of them stands proud or much. */
    private static final List<Proud> COARSER = Proud.of(HARD)
            .filter(floor -> isCutCoarser(floor.at(0, 40)) && isCutCoarser(floor.at(1, 100)))
            .limit(20)
            .toList();

    private static boolean isTakenDown(FloorSurvey floor) {
        return estimate(ADVISOR.recommend(floor))
                .filter(any -> any.job().steps().stream()
                        .anyMatch(step -> step.highSpots().isPresent()))
                .isPresent();
    }

    private static boolean isCutCoarser(FloorSurvey floor) {
        Recommendation with = withMetal(floor, 0);
        Recommendation without = withMetal(floor, 50);
        return estimate(with).isPresent()
                && estimate(without).isPresent()
                && !method(with).equals(method(without));
    }

    /** Planned with all grits but metal coarser than a number. */
    private static Recommendation withMetal(FloorSurvey floor, int coarsest) {
        return ADVISOR.recommend(floor.toBuilder()
                .set(
                        SurveyField.GRADES,
                        GritSequence.standard().grades().stream()
                                .filter(grade -> grade.bond() != Bond.METAL || grade.number() >= coarsest)
                                .toList())
                .build());
    }

    /** A floor of one zone that has one kind of damage, so deep. */
    private static FloorSurvey floor(int seed, DamageKind kind, double millimetres, double area) {
        return damaged(CUT.get(seed % CUT.size()), kind, millimetres, area);
    }

    private static FloorSurvey damaged(FloorSurvey survey, DamageKind kind, double millimetres, double area) {
        Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
        for (DamageKind any : DamageKind.values()) {
            damages.put(any, Damage.none(any));
        }
        damages.put(kind, Damage.measured(kind, new Length(millimetres), new Share(60)));
        return survey.toBuilder()
                .readings(List.of())
                .zones(List.of(new Zone("whole", ZoneKind.FIELD, new Share(100), damages)))
                .set(SurveyField.AREA, new Area(area))
                .build();
    }

    private static List<String> method(Recommendation plan) {
        return plan.plan().orElseThrow().tracks().stream()
                .flatMap(track -> track.steps().stream()
                        .map(step -> track.kind() + " " + step.grade().key() + " " + step.machine() + " "
                                + step.weight() + " " + step.method()))
                .toList();
    }

    private static Optional<Estimate> estimate(Recommendation plan) {
        boolean reckoned = PlannedJob.isThere(plan)
                && plan.steps(TrackKind.OPEN_FIELD).stream()
                        .allMatch(step -> List.of("single-disc", "planetary", "edge-tool")
                                .contains(step.machine().key()));
        return reckoned ? Optional.of(PlannedJob.of(plan, JobOptions.defaults()).estimate()) : Optional.empty();
    }

    /** Floors with the same finish, tracks and method; how often a drawn pair is such a one is counted. */
    @Property(tries = 350, seed = "1927")
    void deeper_damage_never_takes_fewer_passes_or_hours(
            @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
            @ForAll boolean scratched,
            @ForAll @DoubleRange(min = 0.01, max = 3) double depth,
            @ForAll @DoubleRange(min = 0, max = 0.3) double deeper) {
        DamageKind kind = scratched ? DamageKind.SCRATCHES : DamageKind.LIPPAGE;
        Recommendation less = ADVISOR.recommend(floor(seed, kind, depth, 80));
        Recommendation more = ADVISOR.recommend(floor(seed, kind, depth + deeper, 80));
        boolean alike = PlannedJob.isThere(less)
                && PlannedJob.isThere(more)
                && less.plan().flatMap(plan -> plan.finish()).equals(more.plan().flatMap(plan -> plan.finish()))
                && method(less).equals(method(more));
        Statistics.label("alike").collect(alike);
        Statistics.label("alike").coverage(share -> share.check(true).count(met -> met >= LEAST_MET));
        if (!alike) {
            return;
        }
        for (Track track : less.plan().orElseThrow().tracks()) {
            List<PlannedStep> others = more.steps(track.kind());
            for (int i = 0; i < others.size(); i++) {
                PlannedStep shallow = track.steps().get(i);
                assertThat(others.get(i).passes().low())
                        .isGreaterThanOrEqualTo(shallow.passes().low());
                assertThat(others.get(i).passes().high())
                        .isGreaterThanOrEqualTo(shallow.passes().high());
                assertThat(others.get(i).depth().high())
                        .isGreaterThanOrEqualTo(shallow.depth().high());
            }
        }
        estimate(less)
                .ifPresent(shallow -> assertThat(
                                estimate(more).orElseThrow().clock().likely())
                        .isGreaterThanOrEqualTo(shallow.clock().likely()));
    }

    /** What metal takes down is taken down where it stands proud; elsewhere the same grit makes fewer passes. */
    @Property(tries = 150, seed = "1927")
    void more_of_a_floor_that_stands_proud_never_takes_fewer_hours(
            @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
            @ForAll @DoubleRange(min = 0, max = 1) double part,
            @ForAll @DoubleRange(min = 11, max = 30) double share) {
        Proud floor = PROUD.get(seed % PROUD.size());
        Recommendation less = ADVISOR.recommend(floor.at(part, share));
        Recommendation more = ADVISOR.recommend(floor.at(part, 3 * share));
        boolean alike = isTakenDown(less.survey()) && method(less).equals(method(more));
        Statistics.label("proud").collect(alike);
        Statistics.label("proud").coverage(found -> found.check(true).count(met -> met >= LEAST_MET));
        if (alike) {
            assertThat(estimate(more).orElseThrow().personHours().likely())
                    .isGreaterThan(estimate(less).orElseThrow().personHours().likely());
        }
    }

    /**
     * Coarser metal on the van is used where it saves hours on the floor, and only there; the test area, which shows one grit
     * more, is left out.
     */
    @Property(tries = 150, seed = "1927")
    void coarser_metal_in_use_never_takes_more_likely_hours(
            @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
            @ForAll @DoubleRange(min = 0, max = 1) double part,
            @ForAll @DoubleRange(min = 40, max = 100) double share) {
        Proud floor = COARSER.get(seed % COARSER.size());
        Recommendation with = withMetal(floor.at(part, share), 0);
        Recommendation without = withMetal(floor.at(part, share), 50);
        boolean coarser = isCutCoarser(floor.at(part, share));
        Statistics.label("coarser").collect(coarser);
        Statistics.label("coarser").coverage(found -> found.check(true).count(met -> met >= LEAST_MET));
        if (coarser) {
            assertThat(onTheFloor(with)).isLessThan(onTheFloor(without));
        }
    }

    private static double onTheFloor(Recommendation plan) {
        Job job = PlannedJob.of(plan, JobOptions.defaults()).job().withoutTestArea();
        return new Estimator(plan.parameters()).likelyHours(job).minutes();
    }

    private static FloorSurvey over(FloorSurvey floor, DamageKind kind, double millimetres, double percent) {
        Zone zone = floor.zones().get(0);
        Damage damage = Damage.measured(kind, new Length(millimetres), new Share(percent));
        return floor.toBuilder().zones(List.of(zone.with(damage))).build();
    }

    /** Plan, estimate and what follows an empty log tell one figure for one thing. */
    @Property(tries = 180, seed = "1927")
    void plan_estimate_and_follow_tell_the_same_passes(
            @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
            @ForAll @DoubleRange(min = 0.01, max = 1) double depth) {
        Recommendation plan = ADVISOR.recommend(floor(seed, DamageKind.SCRATCHES, depth, 80));
        boolean cut = plan.plan().filter(work -> !work.tracks().isEmpty()).isPresent();
        Statistics.label("cut").collect(cut);
        Statistics.label("cut").coverage(share -> share.check(true).count(met -> met >= LEAST_MET));
        if (!cut) {
            return;
        }
        List<PlannedStep> field = plan.steps(TrackKind.OPEN_FIELD);
        estimate(plan).ifPresent(estimate -> {
            for (JobStep step : estimate.job().steps()) {
                if (step.kind() != StepKind.POWDER && step.depth().high().millimetres() == 0) {
                    // The last grit once more, which cuts the grout off and no stone.
                    PlannedStep last = field.get(field.size() - 1);
                    assertThat(step.name()).endsWith(last.grade().key());
                    assertThat(step.passes().high())
                            .isLessThanOrEqualTo(last.passes().high());
                } else if (step.kind() != StepKind.POWDER) {
                    PlannedStep planned = field.stream()
                            .filter(any -> any.grade().key().equals(step.name()))
                            .findFirst()
                            .orElseThrow();
                    assertThat(step.passes()).isEqualTo(planned.passes());
                    assertThat(step.depth()).isEqualTo(planned.depth());
                }
            }
        });
        NextMove move = ADVISOR.followUp(plan, new JobLog("none yet", List.of(), Map.of()));
        for (Track track : move.ahead().plan().map(ahead -> ahead.tracks()).orElse(List.of())) {
            for (PlannedStep step : track.steps()) {
                plan.steps(track.kind()).stream()
                        .filter(planned -> planned.grade().equals(step.grade())
                                && planned.machine() == step.machine()
                                && planned.weight() == step.weight())
                        .forEach(planned -> assertThat(step.passes()).isEqualTo(planned.passes()));
            }
        }
    }

    private static FloorSurvey with(FloorSurvey survey, MachineClass... machines) {
        return survey.toBuilder()
                .set(SurveyField.MACHINES, EnumSet.copyOf(List.of(machines)))
                .build();
    }

    private static List<String> grits(Recommendation plan) {
        return plan.plan().orElseThrow().tracks().stream()
                .flatMap(track -> track.steps().stream()
                        .map(step -> track.kind() + " " + step.grade().key() + " " + step.method()))
                .toList();
    }

    /**
     * On floors of 10 m2 and more, with the same grits. On a smaller one a heavy machine has no room to turn, and the
     * single disc is asked for whatever the hours.
     */
    @Property(tries = 250, seed = "1927")
    void one_more_machine_never_takes_more_likely_hours(
            @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
            @ForAll boolean scratched,
            @ForAll @DoubleRange(min = 0.05, max = 2.5) double depth,
            @ForAll @DoubleRange(min = 10, max = 500) double area,
            @ForAll boolean planetaryAlone) {
        FloorSurvey drawn = floor(seed, scratched ? DamageKind.SCRATCHES : DamageKind.LIPPAGE, depth, area);
        MachineClass alone = planetaryAlone ? MachineClass.PLANETARY : MachineClass.SINGLE_DISC;
        Recommendation fewer = ADVISOR.recommend(with(drawn, MachineClass.EDGE_TOOL, alone));
        Recommendation more = ADVISOR.recommend(
                with(drawn, MachineClass.EDGE_TOOL, MachineClass.SINGLE_DISC, MachineClass.PLANETARY));
        boolean alike = PlannedJob.isThere(fewer)
                && PlannedJob.isThere(more)
                && grits(fewer).equals(grits(more));
        Statistics.label("same grits").collect(alike);
        Statistics.label("same grits").coverage(share -> share.check(true).count(met -> met >= LEAST_MET));
        if (!alike) {
            return;
        }
        boolean changed = !method(fewer).equals(method(more));
        Statistics.label("other machine").collect(changed);
        Statistics.label("other machine").coverage(share -> share.check(true).percentage(percent -> percent > 10));
        Optional<Estimate> before = estimate(fewer);
        Optional<Estimate> after = estimate(more);
        if (before.isPresent() && after.isPresent()) {
            assertThat(after.get().personHours().likely())
                    .isLessThanOrEqualTo(before.get().personHours().likely());
        }
    }

    /** Among floors with the same method; what may be added is one bay a grit, and one day's beginning and end. */
    @Property(tries = 300, seed = "1927")
    void more_area_never_takes_fewer_hours_nor_more_a_square_metre_than_one_set_up(
            @ForAll @IntRange(min = 0, max = 1_000_000) int seed,
            @ForAll boolean scratched,
            @ForAll @DoubleRange(min = 0.05, max = 2.5) double depth,
            @ForAll @DoubleRange(min = 1, max = 400) double area,
            @ForAll @DoubleRange(min = 1, max = 5) double times) {
        DamageKind kind = scratched ? DamageKind.SCRATCHES : DamageKind.LIPPAGE;
        Recommendation small = ADVISOR.recommend(floor(seed, kind, depth, area));
        Recommendation large = ADVISOR.recommend(floor(seed, kind, depth, area * times));
        boolean alike = PlannedJob.isThere(small)
                && PlannedJob.isThere(large)
                && method(small).equals(method(large));
        Statistics.label("same method").collect(alike);
        Statistics.label("same method").coverage(share -> share.check(true).count(met -> met >= LEAST_MET));
        Optional<Estimate> before = alike ? estimate(small) : Optional.empty();
        Optional<Estimate> after = alike ? estimate(large) : Optional.empty();
        if (before.isEmpty() || after.isEmpty()) {
            return;
        }
        double less = before.get().personHours().likely().minutes();
        double more = after.get().personHours().likely().minutes();
        Parameters parameters = small.parameters();
        int people = before.get().job().site().people();
        long waits = before.get().lines().stream()
                .filter(Line.WaitLine.class::isInstance)
                .count();
        double setUp =
                people * (large.steps(TrackKind.OPEN_FIELD).size() + 1) * middle(parameters, "estimate.bay-set-up");
        double night = before.get().job().site().night().percent() / 100;
        double day = people * (middle(parameters, "estimate.daily") + night * middle(parameters, "estimate.hand-back"));
        assertThat(more).isGreaterThanOrEqualTo(less);
        assertThat(more).isLessThanOrEqualTo(less * times + setUp + (times + waits) * day);
    }

    private static double middle(Parameters parameters, String name) {
        Range<TimeSpan> range = parameters.range(name, TimeSpan.class);
        return (range.low().minutes() + range.high().minutes()) / 2;
    }
}
