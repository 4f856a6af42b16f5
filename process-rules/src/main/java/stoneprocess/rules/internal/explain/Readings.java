package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Input;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.rules.decide.Formula;
import stoneprocess.rules.feature.StoneTraits;
import stoneprocess.rules.internal.classify.Facts;

/** What facts and computed values are read from, as far as a decision record does not tell. */
final class Readings {
    private Readings() {}

    /** The survey fields behind a fact. */
    static List<String> of(MatchedFact fact) {
        if (!fact.name().equals(StoneTraits.RemovalBudget.class.getSimpleName())) {
            return fact.fields();
        }
        // What is measured deeper than may be taken off makes the budget small.
        List<String> fields = new ArrayList<>(fact.fields());
        fields.add(Facts.damage(DamageKind.SCRATCHES));
        fields.add(Facts.damage(DamageKind.LIPPAGE));
        return fields;
    }

    /** What went into a computed outcome; nothing when rules made it. */
    static List<Input> inputs(Outcome outcome) {
        List<Input> inputs = new ArrayList<>(outcome instanceof Decision<?> decision ? decision.inputs() : List.of());
        Formula.of(outcome.topic()).ifPresent(formula -> {
            if (inputs.isEmpty()) {
                inputs.addAll(formula.inputs());
            }
            inputs.addAll(formula.untold());
        });
        return inputs;
    }
}
