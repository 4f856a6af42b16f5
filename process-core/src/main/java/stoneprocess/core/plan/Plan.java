package stoneprocess.core.plan;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Acceptance;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Shortfall;
import stoneprocess.core.topic.SlurryRoute;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Upkeep;

/**
 * What is done, in its order. Floors that are only cleaned have no tracks. Immutable and safe to share between threads.
 *
 * <p>Lists are in the order of the work and may be empty; nothing is null. Rests are times, masses of added weight are
 * in kilograms, water in litres for one pass over the whole floor, passes are traverses of each bay: each quantity
 * carries its unit, and its figure and source stand in the parameters of the recommendation. Why a thing is done stands
 * in the recommendation's outcomes.
 *
 * @param preparation tasks before the first cut
 * @param acceptances what the owner accepts before the start
 * @param testArea whether a test area comes first
 * @param testCuts first cuts to try on the test area, in this order, until one clears the damage
 * @param repairs places that are repaired separately
 * @param finish the finish that is aimed at; empty when nothing is cut
 * @param tracks the cuts
 * @param starts where lanes are worked alone, the first grit of each; empty otherwise
 * @param shortfalls what the equipment on hand costs against the best
 * @param slurry where slurry goes
 * @param polishingAgent powder after the last grade
 * @param densifier densifier of a concrete slab
 * @param sealer protection
 * @param finishTasks what closes the job
 * @param upkeep the routine handed over
 */
public record Plan(
        List<Preparation> preparation,
        List<Acceptance> acceptances,
        TestArea testArea,
        List<AbrasiveGrade> testCuts,
        List<Repair> repairs,
        Optional<stoneprocess.core.survey.Finish> finish,
        List<Track> tracks,
        List<LaneStart> starts,
        List<Shortfall> shortfalls,
        List<SlurryRoute> slurry,
        PolishingAgent polishingAgent,
        Densifier densifier,
        Sealer sealer,
        List<FinishTask> finishTasks,
        List<Upkeep> upkeep) {
    /**
     * Copies the lists.
     *
     * @throws NullPointerException when a list or one of its members is null
     */
    public Plan {
        Refuse.nulls(
                Plan.class,
                preparation,
                acceptances,
                testArea,
                testCuts,
                repairs,
                finish,
                tracks,
                starts,
                shortfalls,
                slurry,
                polishingAgent,
                densifier,
                sealer,
                finishTasks,
                upkeep);
        preparation = List.copyOf(preparation);
        acceptances = List.copyOf(acceptances);
        testCuts = List.copyOf(testCuts);
        repairs = List.copyOf(repairs);
        tracks = List.copyOf(tracks);
        starts = List.copyOf(starts);
        shortfalls = List.copyOf(shortfalls);
        slurry = List.copyOf(slurry);
        finishTasks = List.copyOf(finishTasks);
        upkeep = List.copyOf(upkeep);
    }

    /** The tasks before the first cut, in their order. */
    public List<Task> tasks() {
        return preparation.stream().map(Preparation::task).toList();
    }

    /** The steps of a part of the floor, in their order; none where it is not cut. */
    public List<PlannedStep> steps(TrackKind kind) {
        return tracks.stream()
                .filter(track -> track.kind() == kind)
                .findFirst()
                .map(Track::steps)
                .orElse(List.of());
    }
}
