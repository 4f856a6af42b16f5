package stoneprocess.rules.internal.run;

import java.util.List;
import stoneprocess.core.decision.Outcome;
import stoneprocess.rules.internal.classify.Situation;

/**
 * A finished run.
 *
 * @param situation the situation with all closed topics
 * @param facts every fact that the rules could match
 * @param cutsPlanned true when the stages that plan cuts ran
 */
public record Run(Situation situation, List<Object> facts, boolean cutsPlanned) {
    public Run {
        facts = List.copyOf(facts);
    }

    public List<Outcome> outcomes() {
        return situation.outcomes();
    }
}
