package stoneprocess.core.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.estimate.Estimator;
import stoneprocess.core.estimate.FloorMachine;
import stoneprocess.core.estimate.HighSpots;
import stoneprocess.core.estimate.Job;
import stoneprocess.core.estimate.JobStep;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.removal.Removal;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;

/**
 * What a planned job takes with one class of floor machine, all grits of the open field under it.
 *
 * @param machine the class
 * @param onHand whether the survey names it among the crew's machines
 * @param likely the likely person-hours of the whole job, by the defaults
 */
public record MachineHours(MachineClass machine, boolean onHand, TimeSpan likely) {
    public MachineHours {
        Refuse.nulls(MachineHours.class, machine, likely);
    }

    /**
     * The single disc and the planetary machine as far as the floor and the site allow them, on hand or not, the one with
     * fewer hours first. None where the survey does not name the machines, or no floor machine cuts.
     *
     * @param planned the job of that plan
     */
    public static List<MachineHours> of(Recommendation recommendation, PlannedJob planned) {
        Refuse.nulls(MachineHours.class, recommendation, planned);
        Optional<Set<MachineClass>> kit =
                recommendation.survey().answer(SurveyField.MACHINES).value();
        if (kit.isEmpty() || planned.job().steps().isEmpty()) {
            return List.of();
        }
        List<MachineHours> hours = new ArrayList<>();
        for (MachineClass machine : List.of(MachineClass.SINGLE_DISC, MachineClass.PLANETARY)) {
            if (isAllowed(machine, recommendation)) {
                Job job = with(machine, recommendation, planned);
                hours.add(new MachineHours(
                        machine, kit.get().contains(machine), new Estimator(planned.parameters()).likelyHours(job)));
            }
        }
        hours.sort(Comparator.comparing(MachineHours::likely));
        return hours;
    }

    /** The machine that is not on hand and would take fewer hours than those that are; empty where none would. */
    public static Optional<MachineHours> worthFetching(Recommendation recommendation, PlannedJob planned) {
        List<MachineHours> hours = of(recommendation, planned);
        return hours.stream()
                .limit(1)
                .filter(best -> !best.onHand()
                        && hours.stream()
                                .anyMatch(next -> next.onHand() && next.likely().compareTo(best.likely()) > 0))
                .findFirst();
    }

    /**
     * Likely person-hours of a floor too large for one walk-behind machine, with one to ride on whose path is {@code
     * machine.wide.path}. Common practice, no source; it is as heavy on each metre of the path as a usual planetary machine.
     *
     * @return empty below {@code machine.wide.from}, and where the floor or the site do not allow a planetary machine
     */
    public static Optional<TimeSpan> wide(Recommendation recommendation, PlannedJob planned) {
        Refuse.nulls(MachineHours.class, recommendation, planned);
        Parameters parameters = planned.parameters();
        if (!isTooLarge(planned) || !isAllowed(MachineClass.PLANETARY, recommendation)) {
            return Optional.empty();
        }
        FloorMachine wide = new FloorMachine(
                MachineClass.PLANETARY,
                parameters.get("machine.wide.path", Length.class),
                FloorMachine.usual(MachineClass.PLANETARY, parameters).power());
        Job job = with(MachineClass.PLANETARY, recommendation, planned);
        return Optional.of(new Estimator(parameters)
                .likelyHours(job.withSteps(
                        job.steps().stream().map(step -> step.withMachine(wide)).toList())));
    }

    /** Whether a floor is too large for one walk-behind machine: from {@code machine.wide.from} on, where a machine cuts. */
    public static boolean isTooLarge(PlannedJob planned) {
        Area from = Objects.requireNonNull(planned, "planned").parameters().get("machine.wide.from", Area.class);
        return !planned.job().steps().isEmpty() && planned.job().area().compareTo(from) >= 0;
    }

    /** No reason but that it is not on hand keeps the machine out at any grit of the open field. */
    private static boolean isAllowed(MachineClass machine, Recommendation recommendation) {
        return recommendation.outcomes().stream()
                .filter(outcome -> outcome.topic() == Topics.MACHINE
                        && outcome.subject().key().startsWith(TrackKind.OPEN_FIELD.key())
                        && outcome instanceof Decision<?>)
                .flatMap(outcome -> outcome.reasons().stream())
                .filter(reason -> reason.kind() == ContributionKind.VETO
                        && reason.values().contains(machine))
                .allMatch(reason -> reason.restsOnlyOn(SurveyField.MACHINES));
    }

    private static Job with(MachineClass machine, Recommendation recommendation, PlannedJob planned) {
        Parameters parameters = planned.parameters();
        Removal removal = new Removal(planned.job().stone(), parameters);
        FloorMachine walked = FloorMachine.usual(machine, parameters);
        List<PlannedStep> field = recommendation.steps(TrackKind.OPEN_FIELD);
        List<JobStep> steps = new ArrayList<>();
        for (JobStep step : planned.job().steps()) {
            Optional<PlannedStep> cut = field.stream()
                    .filter(grit -> List.of(
                                    grit.grade().key(),
                                    JobMaker.CUT_GROUT + grit.grade().key())
                            .contains(step.name()))
                    .findFirst();
            steps.add(cut.map(grit -> under(machine, grit, step, removal))
                    .orElse(step)
                    .withMachine(walked));
        }
        return planned.job().withSteps(steps);
    }

    private static JobStep under(MachineClass machine, PlannedStep grit, JobStep step, Removal removal) {
        Mass mass = StepFigures.middleMass(machine, grit.weight(), removal.parameters());
        Range<Integer> passes = removal.passes(grit.depth(), grit.grade(), machine, mass);
        return step.withPasses(passes)
                .withHighSpots(step.highSpots()
                        .map(spots -> new HighSpots(
                                spots.share(),
                                spots.depth(),
                                removal.passes(spots.depth(), grit.grade(), machine, mass))));
    }
}
