package stoneprocess.core.site;

import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import stoneprocess.core.estimate.Assumption;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.Estimator;
import stoneprocess.core.estimate.Job;
import stoneprocess.core.estimate.JobStep;
import stoneprocess.core.estimate.OtherWork;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Temperature;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Task;

/**
 * A plan as a job that can be estimated: steps with machine, passes, water, bond and grit; rests of the preparation;
 * hand work; powder; sealing with its waits.
 *
 * @param job the job
 * @param notes what a reader has to know, each once
 * @param takesHours names of the plan's work that takes hours of {@link JobOptions#times}
 * @param rates for other work by default, its name and the numbers behind it; work with given hours has none
 * @param extents how many pieces, or how much area, some other work is reckoned for
 * @param parameters the numbers that the plan was made with
 */
public record PlannedJob(
        Job job,
        Set<JobNote> notes,
        Set<String> takesHours,
        Map<String, List<Assumption>> rates,
        Map<String, Range<Quantity>> extents,
        Parameters parameters) {
    /** The version of the JSON form. */
    public static final String FORMAT = "planned-job/1";

    /** What nobody does where only places are repaired. */
    private static final Set<Task> OF_THE_WHOLE_FLOOR =
            EnumSet.of(Task.STRIP_COATING, Task.STRIP_NEARLY_DRY, Task.REMOVE_FILM, Task.ARRANGE_FRESH_AIR);

    public PlannedJob {
        Refuse.nulls(PlannedJob.class, job, notes, takesHours, rates, extents, parameters);
        extents = Collections.unmodifiableMap(new LinkedHashMap<>(extents));
        notes = Collections.unmodifiableSet(new TreeSet<>(notes));
        takesHours = Collections.unmodifiableSet(new TreeSet<>(takesHours));
        rates = Collections.unmodifiableMap(new LinkedHashMap<>(rates));
    }

    /**
     * The job of a plan. Steps, rests, water and passes are the plan's; rates come from the parameters named
     * {@code estimate.} with their sources. The area is the survey's in square metres, the edges are the options' in
     * millimetres or those of a square of that area. Safe to call from several threads; nothing given is changed.
     *
     * @param recommendation a recommendation with a plan that cuts or cleans
     * @param options what the plan does not know; {@link JobOptions#defaults} when nothing is
     * @throws NullPointerException naming the argument that is null
     * @throws InvalidInputException when there is no plan, when nothing is cut until questions are answered, when nobody knows the area or how much of a floor that is cut has a told damage, when the
     *     open field is cut with a machine other than single disc, planetary or hand tool, and for hours of work that
     *     the plan does not have
     */
    public static PlannedJob of(Recommendation recommendation, JobOptions options) {
        return new JobMaker(
                        Objects.requireNonNull(recommendation, "recommendation"),
                        Objects.requireNonNull(options, "options"))
                .make();
    }

    /**
     * Whether a recommendation has a plan that cuts or cleans, and where it cuts how much there is of each told damage, so
     * that there is a job to estimate.
     */
    public static boolean isThere(Recommendation recommendation) {
        return recommendation
                .plan()
                .filter(plan -> plan.tracks().isEmpty()
                        ? recommendation.status() == Status.PLANNED
                                && !plan.finishTasks().isEmpty()
                        : recommendation.withoutShare().isEmpty())
                .isPresent();
    }

    /**
     * The job of a plan beside another with the same options: of their hours, those that this plan's work takes. See {@link
     * #of}.
     */
    public static PlannedJob beside(Recommendation recommendation, JobOptions options) {
        Set<String> work = of(recommendation, options.withTimesOf(Set.of())).takesHours();
        return of(recommendation, options.withTimesOf(work));
    }

    /**
     * As much of the job as a variant takes.
     *
     * @param recommendation the plan that the job was made of
     */
    PlannedJob in(VariantScope scope, Recommendation recommendation) {
        return switch (scope) {
            case AS_PLANNED, WAVES_LEFT, HIRED_PLANETARY -> this;
            case UNSEALED -> withJob(unsealed());
            case REPAIRS_ONLY -> withJob(repairs(recommendation));
        };
    }

    /** The same job at a distance, or at one that nobody told. */
    PlannedJob at(Optional<Length> distance) {
        return withJob(job.withSite(job.site().withDistance(distance)));
    }

    private PlannedJob withJob(Job other) {
        return new PlannedJob(other, notes, takesHours, rates, extents, parameters);
    }

    /** What follows the sealer follows the last step. */
    private Job unsealed() {
        Optional<String> last = job.steps().stream().map(JobStep::name).reduce((before, next) -> next);
        return job.withoutSealing(
                job.steps(),
                job.others().stream()
                        .map(other -> other.after().equals(Optional.of(OtherWork.SEALING)) ? other.after(last) : other)
                        .toList());
    }

    /** Preparation, repairs and the hand-over; a coating stays but for the places of repair. */
    private Job repairs(Recommendation recommendation) {
        Plan plan = recommendation.plan().orElseThrow();
        Set<String> kept = new TreeSet<>(Set.of(FinishTask.HAND_OVER.key()));
        plan.preparation().forEach(task -> kept.add(task.task().key()));
        plan.repairs().forEach(repair -> kept.add(repair.key()));
        OF_THE_WHOLE_FLOOR.forEach(task -> kept.remove(task.key()));
        return job.withoutSealing(
                        List.of(),
                        job.others().stream()
                                .filter(other -> kept.contains(other.name()))
                                .map(other -> other.after(Optional.empty()))
                                .toList())
                .withoutTestArea();
    }

    /** The told temperature of a floor that is too cold for what cures on it; empty for every other. */
    public Optional<Temperature> coldFloor(FloorSurvey survey) {
        return notes.contains(JobNote.COLD_FLOOR)
                ? survey.answer(SurveyField.FLOOR_TEMPERATURE).value()
                : Optional.empty();
    }

    /** The estimate by the numbers that the plan was made with. */
    public Estimate estimate() {
        return new Estimator(parameters).estimate(job);
    }
}
