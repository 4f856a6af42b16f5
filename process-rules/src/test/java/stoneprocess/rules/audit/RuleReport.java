package stoneprocess.rules.audit;

import java.util.List;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.Stage;

/**
 * Which facts make one rule fire, and what it then says, alone and in company.
 *
 * @param card the rule's card
 * @param stage the stage in which it fires
 * @param conditions what it accepts, one entry for each type of fact that it reads
 * @param witness facts that make it fire, one for each entry of {@code conditions} in the same order
 * @param neighbours facts one class away from the witness that keep it from firing
 * @param alone what it said on the witness as the only rule
 * @param together what it said on the witness beside all rules of its chapter
 * @param firedOnNeighbours neighbours on which the engine fired it all the same; none when engine and conditions agree
 */
public record RuleReport(
        Card card,
        Stage stage,
        List<ConditionReport> conditions,
        List<Object> witness,
        List<Neighbour> neighbours,
        List<Contribution> alone,
        List<Contribution> together,
        List<Neighbour> firedOnNeighbours) {

    /**
     * What a rule accepts of one type of fact.
     *
     * @param type the type
     * @param accepted facts of that type with which the rule may fire
     * @param refused facts of that type with which it never fires
     */
    public record ConditionReport(Class<?> type, List<Object> accepted, List<Object> refused) {
        public ConditionReport {
            accepted = List.copyOf(accepted);
            refused = List.copyOf(refused);
        }
    }

    /**
     * The witness with one fact replaced by one that differs in one class.
     *
     * @param position which fact of the witness is replaced
     * @param fact the fact in its place, with which the rule does not fire
     */
    public record Neighbour(int position, Object fact) {}

    public RuleReport {
        conditions = List.copyOf(conditions);
        witness = List.copyOf(witness);
        neighbours = List.copyOf(neighbours);
        alone = List.copyOf(alone);
        together = List.copyOf(together);
        firedOnNeighbours = List.copyOf(firedOnNeighbours);
    }

    /** True when the rule fires once on its witness, says the same alone and together, and on no neighbour. */
    public boolean sound() {
        return alone.size() == 1 && alone.equals(together) && firedOnNeighbours.isEmpty();
    }
}
