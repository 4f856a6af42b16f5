package stoneprocess.rules.internal.explain;

import java.util.List;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.meaning.Saying;
import stoneprocess.rules.internal.run.Runner;

/**
 * Something that a rule can say about a topic.
 *
 * @param saying what it says, and when
 * @param conditions what has to hold for it to say so
 * @param readsStep whether it speaks of the steps that it matches
 */
record Asker(Saying saying, List<UnmetFinder> conditions, boolean readsStep) {
    static Asker of(Saying saying) {
        return new Asker(
                saying,
                saying.conditions().stream().map(UnmetFinder::new).toList(),
                saying.conditions().stream().anyMatch(condition -> condition.type() == Step.class));
    }

    String rule() {
        return saying.rule();
    }

    List<? extends Term> values() {
        return saying.says().values();
    }

    ContributionKind kind() {
        return saying.says().kind();
    }

    /** True when what it says about the floor, a track or a step is said of the subject too. */
    boolean concerns(Subject subject) {
        return saying.says().subject() instanceof Subject.OfStep || Runner.concerns(saying.says(), subject);
    }
}
