package stoneprocess.rules.internal.classify;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.estimate.Estimator;
import stoneprocess.core.estimate.FloorMachine;
import stoneprocess.core.estimate.Job;
import stoneprocess.core.estimate.JobStep;
import stoneprocess.core.estimate.SiteConditions;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Coverage;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.removal.Removal;
import stoneprocess.core.site.StepFigures;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.feature.MachinePace;

/** Floor machines side by side over the grits of the open field. */
final class MachineClasses {
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
        int order = hours(MachineClass.SINGLE_DISC, path, situation)
                .compareTo(hours(MachineClass.PLANETARY, path, situation));
        return EnumSet.of(order == 0 ? MachinePace.EVEN : order < 0 ? MachinePace.SINGLE_DISC : MachinePace.PLANETARY);
    }

    private static TimeSpan hours(MachineClass machine, List<Grit> path, Situation situation) {
        Parameters parameters = situation.parameters();
        Removal removal = new Removal(situation.stone().cutting(), parameters);
        Mass weight = StepFigures.middleMass(machine, AddedWeight.USUAL, parameters);
        boolean dryMetal = situation.values(Topics.METAL_METHOD, Subject.FLOOR).contains(WorkMethod.DRY);
        List<JobStep> steps = new ArrayList<>();
        Optional<AbrasiveGrade> before = situation.worked(TrackKind.OPEN_FIELD);
        for (Grit grit : path) {
            AbrasiveGrade grade = situation.sequence().get(grit, Topics.GRIT_PATH.id());
            Range<Length> depth = situation.depth(TrackKind.OPEN_FIELD, before, grade);
            Coverage water = new Coverage(dryMetal && grade.bond() == Bond.METAL ? 0 : 1);
            steps.add(JobStep.of(
                    grade,
                    depth,
                    FloorMachine.usual(machine, parameters),
                    removal.passes(depth, grade, machine, weight),
                    Range.of(water, water)));
            before = Optional.of(grade);
        }
        Area area = situation
                .areaOf(TrackKind.OPEN_FIELD)
                .orElseGet(() -> parameters.get("estimate.bay-planetary", Area.class));
        Job job = Job.of(area, new Length(0), situation.stone().cutting(), steps, SiteConditions.usual(parameters));
        return new Estimator(parameters).likelyHours(job);
    }
}
