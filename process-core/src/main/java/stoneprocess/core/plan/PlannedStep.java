package stoneprocess.core.plan;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Check;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.PickUp;
import stoneprocess.core.topic.WaterLevel;
import stoneprocess.core.topic.WorkMethod;

/**
 * One grit of one track, complete enough to be carried onto the site.
 *
 * @param grade bond and grit number
 * @param method wet or dry
 * @param machine the machine
 * @param weight how much weight is added, as a class
 * @param addedMass the same as a mass
 * @param water how wet the floor is kept, as a class
 * @param litresPerPass water for one pass over the track's area; empty when the area is not known or the grit
 *     is worked dry
 * @param passes traverses of a bay, from and to; the middle is the likely number, and the check decides
 * @param depth what the passes have to take off: the damage before the first grit, the scratches of the grit before
 * @param handling how the work is done
 * @param pickUp how slurry leaves the floor after the step
 * @param checks the hold point: what is looked at and measured before the next step
 */
public record PlannedStep(
        AbrasiveGrade grade,
        WorkMethod method,
        MachineClass machine,
        AddedWeight weight,
        Range<Mass> addedMass,
        WaterLevel water,
        java.util.Optional<Range<Volume>> litresPerPass,
        Range<Integer> passes,
        Range<Length> depth,
        List<Handling> handling,
        PickUp pickUp,
        List<Check> checks) {
    public PlannedStep {
        Refuse.nulls(
                PlannedStep.class,
                grade,
                method,
                machine,
                weight,
                addedMass,
                water,
                litresPerPass,
                passes,
                depth,
                handling,
                pickUp,
                checks);
        handling = List.copyOf(handling);
        checks = List.copyOf(checks);
    }
}
