package stoneprocess.rules.text;

import java.util.List;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.RuleContent;

/** What a rule says, in plain words. Never parse it: {@link RuleContent} holds the same as data. */
public final class RuleText {
    private final Phrases phrases;
    private final FactWords facts;
    private final ValueWords values;

    public RuleText(Phrases phrases) {
        this.phrases = phrases;
        this.facts = new FactWords(phrases);
        this.values = new ValueWords(phrases);
    }

    /** On which facts the rule speaks, without a full stop. */
    public String when(RuleContent rule) {
        if (rule.conditions().isEmpty()) {
            return phrases.get(rule.says().topic().scope() == Scope.STEP ? "rule.when-every-grit" : "rule.when-always");
        }
        List<String> conditions = rule.conditions().stream()
                .map(condition -> facts.condition(
                        condition.facts(),
                        Term.keys(condition.classes()),
                        Term.keys(condition.others()),
                        condition.orNotKnown()))
                .toList();
        return String.join("; ", conditions);
    }

    /** What it then asks for, without a full stop. */
    public String then(RuleContent rule) {
        Contribution says = rule.says();
        Topic<?> topic = says.topic();
        String about = says.subject() instanceof Subject.OfTrack track ? values.track(track.track()) + ": " : "";
        if (rule.follows().isPresent()) {
            return about
                    + phrases.get("rule.follows." + says.kind().key())
                            .formatted(facts.name(rule.follows().get()));
        }
        return about + values.says(topic, says.kind(), says.values());
    }

    /** The texts that do not come from an enum; a test keeps the bundle complete. */
    static List<String> fixedKeys() {
        return List.of(
                "rule.when-every-grit",
                "rule.when-always",
                "rule.follows." + ContributionKind.NEED.key(),
                "rule.follows." + ContributionKind.WISH.key(),
                "rule.follows." + ContributionKind.VETO.key());
    }
}
