package stoneprocess.core.gloss;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.stone.Hardness;

/**
 * One zone of a floor and the work done on it.
 *
 * @param hardness how hard the stone is, medium or hard
 * @param ceiling what the stone would read if it were smooth
 * @param start what was read at 60 degrees before the first pass; empty when it is not known
 * @param stages resin grits in the order worked; a grit that follows itself is refused, since that is one stage
 */
public record WorkSoFar(Hardness hardness, GlossCeiling ceiling, Optional<LevelReading> start, List<GritStage> stages) {
    /**
     * Checks the parts.
     *
     * @throws InvalidInputException for soft stone, a ceiling of 0 GU, a start after the first pass, a repeated grit
     * @throws NullPointerException naming the part, when one is null; an unknown start is empty
     */
    public WorkSoFar {
        Refuse.nulls(WorkSoFar.class, hardness, ceiling, start, stages);
        Objects.requireNonNull(start, "start");
        stages = List.copyOf(stages);
        if (!GritPrior.CLASSES.contains(hardness)) {
            throw new InvalidInputException("hardness", hardness.key(), "medium or hard");
        }
        if (ceiling.at60().equals(new Gloss(0))) {
            throw new InvalidInputException("ceiling", ceiling.at60().print(), "a ceiling over 0 GU");
        }
        if (start.isPresent() && start.get().passes() > 0) {
            throw new InvalidInputException(
                    "start.passes", Integer.toString(start.get().passes()), "0, before the first pass");
        }
        for (int i = 1; i < stages.size(); i++) {
            if (stages.get(i).grit() == stages.get(i - 1).grit()) {
                throw new InvalidInputException(
                        "stages." + i, Integer.toString(stages.get(i).grit()), "one stage for passes in a row");
            }
        }
    }

    /** A floor of which nothing is read and on which no grit has run. */
    public static WorkSoFar none(Hardness hardness, GlossCeiling ceiling) {
        return new WorkSoFar(hardness, ceiling, Optional.empty(), List.of());
    }
}
