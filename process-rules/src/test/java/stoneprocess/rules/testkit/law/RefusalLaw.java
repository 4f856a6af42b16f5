package stoneprocess.rules.testkit.law;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.space.Forgetting;
import stoneprocess.rules.space.SurveyGenerator;

/** Changes what a refusal does not rest on. */
final class RefusalLaw {
    private static final SurveyGenerator GENERATOR = SurveyGenerator.of(new Share(70));

    private RefusalLaw() {}

    static List<Violation> lifted(Respondent respondent, FloorSurvey survey, long seed) {
        Recommendation refused = respondent.recommend(survey);
        if (refused.status() != Status.REFUSED) {
            return List.of();
        }
        Set<String> refusing = new TreeSet<>();
        refused.refusals().stream().map(Reason::rule).forEach(refusing::add);
        SplittableRandom random = new SplittableRandom(seed);
        List<String> changed = new ArrayList<>(Forgetting.names());
        changed.removeAll(reads(respondent.rules(), refusing));
        changed.removeIf(name -> random.nextInt(3) == 0);
        FloorSurvey other = GENERATOR.redraw(survey, changed, random);
        Recommendation again = respondent.recommend(other);
        Set<String> still = new TreeSet<>();
        again.refusals().stream().map(Reason::rule).forEach(still::add);
        if (again.status() == Status.REFUSED && still.containsAll(refusing)) {
            return List.of();
        }
        return List.of(new Violation(
                Laws.REFUSAL_STANDS.id(),
                Topics.VERDICT.id(),
                Subject.FLOOR,
                "a refusal by " + refusing + " after other answers to " + changed,
                again.status().key() + " by " + still,
                survey));
    }

    /** What the rules read, directly or through topics that are closed before, and what identifies the stone. */
    private static Set<String> reads(List<LoadedRule> rules, Set<String> ids) {
        Set<String> fields = new HashSet<>();
        Set<String> topics = new HashSet<>(Set.of(Topics.STONE.id()));
        Set<String> done = new HashSet<>();
        boolean more = true;
        while (more) {
            more = false;
            for (LoadedRule rule : rules) {
                boolean asked = ids.contains(rule.id())
                        || topics.contains(rule.card().topic().id());
                if (asked && done.add(rule.id())) {
                    more = true;
                    for (FactPattern condition : rule.conditions()) {
                        fields.addAll(Facts.fields(condition.type()));
                        Facts.topics(condition.type()).forEach(topic -> topics.add(topic.id()));
                    }
                }
            }
        }
        return fields;
    }
}
