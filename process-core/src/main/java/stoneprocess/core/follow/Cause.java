package stoneprocess.core.follow;

import java.util.List;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.Fault;

/**
 * A possible cause of what was seen.
 *
 * @param fault the cause
 * @param standing how it stands among the others
 * @param speaksFor what speaks for it
 * @param speaksAgainst what rules it out
 */
public record Cause(Fault fault, Standing standing, List<Reason> speaksFor, List<Reason> speaksAgainst) {
    public Cause {
        Refuse.nulls(Cause.class, fault, standing, speaksFor, speaksAgainst);
        speaksFor = List.copyOf(speaksFor);
        speaksAgainst = List.copyOf(speaksAgainst);
    }
}
