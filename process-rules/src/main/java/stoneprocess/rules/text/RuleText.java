package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.List;
import stoneprocess.core.answer.RuleContent;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Subject;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** What a rule says, in words. {@link RuleContent} holds the same as data. */
public final class RuleText {
    private RuleText() {}

    /** On which facts the rule speaks, without a full stop. */
    public static Wording when(RuleContent rule) {
        if (rule.conditions().isEmpty()) {
            return phrase(rule.says().topic().scope() == Scope.STEP ? "rule.when-every-grit" : "rule.when-always");
        }
        List<Wording> conditions = rule.conditions().stream()
                .map(condition -> FactWords.condition(
                        condition.facts(),
                        Term.keys(condition.classes()),
                        Term.keys(condition.others()),
                        condition.orNotKnown()))
                .toList();
        return Wording.list(Joint.SEMICOLON, conditions);
    }

    /** What it then asks for, without a full stop. */
    public static Wording then(RuleContent rule) {
        Contribution says = rule.says();
        Wording outcome = rule.follows()
                .<Wording>map(
                        fact -> phrase("rule.follows." + says.kind().key()).with("fact", FactWords.name(fact)))
                .orElseGet(() -> ValueWords.says(says.topic(), says.kind(), says.values()));
        return says.subject() instanceof Subject.OfTrack track
                ? phrase("rule.on-track")
                        .with("track", ValueWords.track(track.track()))
                        .with("what", outcome)
                : outcome;
    }
}
