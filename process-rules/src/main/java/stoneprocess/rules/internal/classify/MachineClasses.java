package stoneprocess.rules.internal.classify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.estimate.Estimator;
import stoneprocess.core.estimate.FloorMachine;
import stoneprocess.core.estimate.HighSpots;
import stoneprocess.core.estimate.Job;
import stoneprocess.core.estimate.JobStep;
import stoneprocess.core.estimate.SiteConditions;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Coverage;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.removal.Removal;
import stoneprocess.core.site.AggregateDepth;
import stoneprocess.core.site.Levelling;
import stoneprocess.core.site.StepFigures;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.feature.DeadlineFit;
import stoneprocess.rules.feature.MachinePace;
import stoneprocess.rules.feature.MetalPace;

/** Floor machines side by side over the grits of the open field. */
final class MachineClasses {
    private static final Set<MachineClass> FLOOR_MACHINES =
            EnumSet.of(MachineClass.SINGLE_DISC, MachineClass.PLANETARY);

    /** A grit and the depth that it has to take off. */
    private record Grind(AbrasiveGrade grade, Range<Length> depth) {}

    private MachineClasses() {}

    /**
     * The machine with the fewest likely person-hours, each with its usual weight; on a floor of unknown size, over one
     * lane of a planetary machine.
     */
    static Set<MachinePace> quicker(Situation situation) {
        List<Grit> path = situation.values(Topics.GRIT_PATH, Subject.OPEN_FIELD);
        if (path.isEmpty()) {
            return EnumSet.of(MachinePace.EVEN);
        }
        List<Grind> cuts = cuts(path, situation);
        int order = hours(MachineClass.SINGLE_DISC, cuts, usualShift(situation), situation)
                .compareTo(hours(MachineClass.PLANETARY, cuts, usualShift(situation), situation));
        return EnumSet.of(order == 0 ? MachinePace.EVEN : order < 0 ? MachinePace.SINGLE_DISC : MachinePace.PLANETARY);
    }

    /**
     * Whether the coarsest metal in use and then that of about 50 take fewer likely person-hours than the latter alone,
     * under the quickest floor machine of the crew. On a floor that nobody found uneven there is nothing to reckon.
     */
    static Set<MetalPace> metal(Situation situation) {
        if (!isUneven(situation.survey())) {
            return EnumSet.of(MetalPace.USUAL);
        }
        Optional<AbrasiveGrade> usual = inUse(Cut.GRIND, situation);
        Optional<AbrasiveGrade> coarse = inUse(Cut.HEAVY_GRIND, situation)
                .filter(grade -> grade.number() < usual.orElseThrow().number());
        if (coarse.isEmpty() || situation.worked(TrackKind.OPEN_FIELD).isPresent()) {
            return EnumSet.of(MetalPace.USUAL);
        }
        Grind finer = cut(coarse, usual.orElseThrow(), situation);
        TimeSpan alone = quickest(List.of(cut(Optional.empty(), usual.get(), situation)), situation);
        TimeSpan both = quickest(List.of(cut(Optional.empty(), coarse.get(), situation), finer), situation);
        return EnumSet.of(both.compareTo(alone) < 0 ? MetalPace.COARSER : MetalPace.USUAL);
    }

    private static boolean isUneven(FloorSurvey survey) {
        return survey.zones().stream()
                .anyMatch(zone -> Stream.of(DamageKind.LIPPAGE, DamageKind.WAVINESS)
                        .anyMatch(kind -> zone.damage(kind)
                                .value()
                                .filter(found -> !found.equals(Damage.none(kind)))
                                .isPresent()));
    }

    private static Optional<AbrasiveGrade> inUse(Cut cut, Situation situation) {
        return situation.inUse().flatMap(grades -> grades.nearest(Bond.METAL, cut.number()));
    }

    /** Likely hours with that machine of the crew's that takes the fewest. */
    private static TimeSpan quickest(List<Grind> cuts, Situation situation) {
        Set<MachineClass> kit =
                situation.survey().answer(SurveyField.MACHINES).value().orElse(FLOOR_MACHINES);
        return FLOOR_MACHINES.stream()
                .filter(kit::contains)
                .map(machine -> hours(machine, cuts, usualShift(situation), situation))
                .min(Comparator.naturalOrder())
                .orElse(new TimeSpan(0));
    }

    private static Grind cut(Optional<AbrasiveGrade> before, AbrasiveGrade grade, Situation situation) {
        return new Grind(grade, situation.depth(TrackKind.OPEN_FIELD, before, grade));
    }

    private static TimeSpan usualShift(Situation situation) {
        return situation.parameters().get("estimate.shift", TimeSpan.class);
    }

    /**
     * Likely hours of the open field with the machine of its first grit, shared by the crew, and the longest rest of the
     * preparation, against the deadline; a shift that nobody told may last the whole day.
     */
    static Set<DeadlineFit> deadlineFit(Situation situation) {
        FloorSurvey survey = situation.survey();
        Optional<TimeSpan> deadline = survey.answer(SurveyField.DEADLINE).value();
        if (deadline.isEmpty()) {
            return EnumSet.allOf(DeadlineFit.class);
        }
        double longestRest = situation.values(Topics.PREPARATION).stream()
                .flatMap(task -> StepFigures.rest(task, survey, situation.stone(), situation.parameters()).stream())
                .mapToDouble(range -> range.low().minutes())
                .max()
                .orElse(0);
        TimeSpan day = TimeSpan.of(1, Unit.DAY);
        Optional<TimeSpan> shift = survey.answer(SurveyField.SHIFT).value();
        Optional<Count> crew = survey.answer(SurveyField.CREW).value();
        double work = crew.map(people -> hours(situation, shift.orElse(day)).minutes() / people.number())
                .orElse(0.0);
        double shifts = StrictMath.ceil(work / shift.orElse(day).minutes());
        if (longestRest + shifts * day.minutes() > deadline.get().minutes()) {
            return EnumSet.of(DeadlineFit.TOO_SHORT);
        }
        boolean told =
                shift.isPresent() && crew.isPresent() && survey.workedArea().isPresent();
        return told ? EnumSet.of(DeadlineFit.FITS) : EnumSet.allOf(DeadlineFit.class);
    }

    /** Likely hours of the open field with the machine of its first grit; none where no floor machine cuts it. */
    private static TimeSpan hours(Situation situation, TimeSpan shift) {
        List<Grit> path = situation.values(Topics.GRIT_PATH, Subject.OPEN_FIELD);
        Optional<MachineClass> machine = path.stream()
                .limit(1)
                .map(grit -> situation.sequence().get(grit, Topics.GRIT_PATH.id()))
                .flatMap(grade ->
                        situation
                                .values(Topics.MACHINE, new Subject.OfStep(TrackKind.OPEN_FIELD, grade.key()))
                                .stream())
                .filter(FLOOR_MACHINES::contains)
                .findFirst();
        boolean reckoned =
                machine.isPresent() && situation.areaOf(TrackKind.OPEN_FIELD).isPresent();
        return reckoned ? hours(machine.get(), cuts(path, situation), shift, situation) : new TimeSpan(0);
    }

    /** What each grit of a path has to take off, whichever machine turns it. */
    private static List<Grind> cuts(List<Grit> path, Situation situation) {
        List<Grind> cuts = new ArrayList<>();
        Optional<AbrasiveGrade> before = situation.worked(TrackKind.OPEN_FIELD);
        for (Grit grit : path) {
            AbrasiveGrade grade = situation.sequence().get(grit, Topics.GRIT_PATH.id());
            cuts.add(new Grind(grade, situation.depth(TrackKind.OPEN_FIELD, before, grade)));
            before = Optional.of(grade);
        }
        return cuts;
    }

    private static TimeSpan hours(MachineClass machine, List<Grind> cuts, TimeSpan shift, Situation situation) {
        Parameters parameters = situation.parameters();
        Removal removal = new Removal(situation.stone().cutting(), parameters);
        Mass weight = StepFigures.middleMass(machine, AddedWeight.USUAL, parameters);
        boolean dryMetal = situation.values(Topics.METAL_METHOD, Subject.FLOOR).contains(WorkMethod.DRY);
        Levelling levelling = new Levelling(
                situation.survey(),
                situation.sequence(),
                removal,
                AggregateDepth.of(situation.survey(), situation.stone(), parameters));
        List<JobStep> steps = new ArrayList<>();
        for (Grind cut : cuts) {
            AbrasiveGrade grade = cut.grade();
            Coverage water = new Coverage(dryMetal && grade.bond() == Bond.METAL ? 0 : 1);
            JobStep step = JobStep.of(
                    grade,
                    cut.depth(),
                    FloorMachine.usual(machine, parameters),
                    removal.passes(cut.depth(), grade, machine, weight),
                    Range.of(water, water));
            Optional<HighSpots> proud =
                    steps.isEmpty() ? levelling.of(grade, cut.depth(), machine, weight) : Optional.empty();
            steps.add(step.withHighSpots(proud));
        }
        Area area = situation
                .areaOf(TrackKind.OPEN_FIELD)
                .orElseGet(() -> parameters.get("estimate.bay-planetary", Area.class));
        SiteConditions site = SiteConditions.usual(parameters).withShift(shift);
        Job job = Job.of(area, new Length(0), situation.stone().cutting(), steps, site)
                .withoutTestArea();
        return new Estimator(parameters).likelyHours(job);
    }
}
