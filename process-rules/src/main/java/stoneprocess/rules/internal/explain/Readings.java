package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.decide.Computed;
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

    /** Names of the topics, fields and parameters that went into a computed outcome; none when rules made it. */
    static List<String> inputs(Outcome outcome) {
        List<String> inputs = new ArrayList<>(outcome instanceof Decision<?> decision ? decision.inputs() : List.of());
        if (outcome.topic() == Topics.GRIT_PATH && inputs.isEmpty()) {
            inputs.addAll(Computed.pathInputs());
        }
        if (outcome.topic() == Topics.PASSES) {
            inputs.add(SurveyField.SCRIBER.name());
        }
        return inputs;
    }
}
