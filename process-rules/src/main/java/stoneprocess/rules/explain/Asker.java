package stoneprocess.rules.explain;

import java.util.List;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.Subject;
import stoneprocess.rules.feature.Step;

/**
 * A rule that can say something about a topic.
 *
 * @param rule id of the rule
 * @param contribution what it says; where that follows from a fact it matches, what it says of the facts that the
 *     conditions accept
 * @param values keys of the values that it names
 * @param conditions what has to hold for it to say so
 * @param readsStep whether it speaks of the steps that it matches
 */
record Asker(
        String rule, Contribution contribution, List<String> values, List<AskCondition> conditions, boolean readsStep) {
    Asker(String rule, Contribution contribution, List<AskCondition> conditions) {
        this(
                rule,
                contribution,
                Term.keys(contribution.values()),
                conditions,
                conditions.stream().anyMatch(condition -> condition.type() == Step.class));
    }

    Asker {
        values = List.copyOf(values);
        conditions = List.copyOf(conditions);
    }

    /** True when what it says about the floor, a track or a step is said of the subject too. */
    boolean concerns(Subject subject) {
        Subject about = contribution.subject();
        if (about instanceof Subject.OfStep || about.equals(subject)) {
            return true;
        }
        return about.equals(Subject.FLOOR)
                && subject instanceof Subject.OfTrack
                && !subject.equals(Subject.LOCAL_REPAIR);
    }
}
