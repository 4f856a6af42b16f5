package stoneprocess.core.site;

import java.util.List;
import java.util.Objects;
import stoneprocess.core.log.Entry;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.removal.Removal;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.TrackKind;

/**
 * What a pass on one track takes off beside a pass of the usual single disc, by machine and weight, see
 * {@link Removal#intensity}. Plan, forecast and log count passes by it. Immutable.
 */
public final class TrackIntensity {
    private final Removal removal;
    private final List<PlannedStep> steps;

    /**
     * @param recommendation a plan
     * @param track one that it works; refused otherwise
     */
    public TrackIntensity(Recommendation recommendation, TrackKind track) {
        this.steps = recommendation.steps(Objects.requireNonNull(track, "track"));
        if (steps.isEmpty()) {
            throw new InvalidInputException("track", track.key(), "a track that the plan works");
        }
        this.removal = new Removal(KnownStone.of(recommendation).cutting(), recommendation.parameters());
    }

    /** With the machine of a step and the middle of its weight. */
    public Share of(PlannedStep step) {
        return removal.intensity(step.machine(), middle(step));
    }

    static Mass middle(PlannedStep step) {
        return new Mass(
                (step.addedMass().low().kilograms() + step.addedMass().high().kilograms()) / 2);
    }

    /** As planned for a resin grit; one that the plan leaves out is worked like the next coarser one, else the first. */
    public Share ofResin(int grit) {
        return of(nearest(Bond.RESIN, grit));
    }

    private PlannedStep nearest(Bond bond, int number) {
        return steps.stream()
                .filter(step -> step.grade().bond().compareTo(bond) < 0
                        || step.grade().bond() == bond && step.grade().number() <= number)
                .reduce((coarser, finer) -> finer)
                .orElse(steps.get(0));
    }

    /** Of noted work: another machine than planned counts with its usual weight; all else as planned. */
    public Share of(Entry.Worked worked) {
        PlannedStep planned = planned(worked);
        return worked.machine()
                .filter(machine -> machine != planned.machine())
                .map(this::usual)
                .orElseGet(() -> of(planned));
    }

    private Share usual(MachineClass machine) {
        Parameters parameters = removal.parameters();
        return removal.intensity(machine, StepFigures.middleMass(machine, AddedWeight.USUAL, parameters));
    }

    /** Noted passes as so many of the planned machine that they take off the same. */
    public double inPlannedPasses(List<Entry.Worked> worked) {
        return worked.stream()
                .mapToDouble(entry -> entry.passes()
                        * (of(entry).percent() / of(planned(entry)).percent()))
                .sum();
    }

    private PlannedStep planned(Entry.Worked worked) {
        return nearest(worked.grade().bond(), worked.grade().number());
    }

    /** The mean over all passes of noted work, at least one entry. */
    public Share mean(List<Entry.Worked> worked) {
        int passes = worked.stream().mapToInt(Entry.Worked::passes).sum();
        double sum = worked.stream()
                .mapToDouble(entry -> entry.passes() * of(entry).percent())
                .sum();
        return new Share(sum / passes);
    }
}
