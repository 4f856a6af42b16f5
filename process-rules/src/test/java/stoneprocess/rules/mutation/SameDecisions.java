package stoneprocess.rules.mutation;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.audit.TopicSpace;
import stoneprocess.rules.decide.Policy;
import stoneprocess.rules.decide.Stated;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.Firing;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.RuleMutant;
import stoneprocess.rules.internal.engine.StageRun;

/**
 * Proves that a mutant decides nothing otherwise: over every combination of facts that the rules of its topic, the mutant
 * among them, can tell apart, the topic closes with the same values. Reasons may differ.
 */
final class SameDecisions {
    private static final BigInteger MOST = BigInteger.valueOf(400_000);

    private SameDecisions() {}

    /** True when it is proved; false when a combination differs or when there are too many to try. */
    static boolean proved(RuleMutant mutant, List<LoadedRule> rules) {
        Choice<?> topic = (Choice<?>) mutant.original().card().topic();
        if (topic.scope() == Scope.STEP || !closesByValue(topic)) {
            return false;
        }
        List<LoadedRule> both = Stream.concat(
                        rules.stream(),
                        mutant.mutated().isPresent()
                                ? mutant.loaded(rules).stream()
                                        .filter(rule -> rule.id().equals(mutant.id()))
                                : Stream.empty())
                .toList();
        TopicSpace space = TopicSpace.of(topic, both);
        if (space.size().compareTo(MOST) > 0) {
            return false;
        }
        FlatRules before = FlatRules.of(rules).onTopics(topic::equals);
        FlatRules after = mutant.among(rules).onTopics(topic::equals);
        return space.combinations()
                .allMatch(facts -> closed(topic, before, facts).equals(closed(topic, after, facts)));
    }

    /** True when a policy is proved to decide as the topic's own does. */
    static boolean proved(PolicyFault fault, List<LoadedRule> rules) {
        Choice<?> topic = fault.topic();
        TopicSpace space = TopicSpace.of(topic, rules);
        if (topic.scope() == Scope.STEP || space.size().compareTo(MOST) > 0) {
            return false;
        }
        FlatRules flat = FlatRules.of(rules).onTopics(topic::equals);
        return space.combinations().allMatch(facts -> {
            List<Object> own = closed(topic, flat, facts);
            try {
                return own.equals(fault.during(() -> closed(topic, flat, facts)));
            } catch (RuntimeException e) {
                return false;
            }
        });
    }

    private static boolean closesByValue(Choice<?> topic) {
        return switch (topic.policy()) {
            case ONE, ALL, PRECEDENCE, REMAINS, RANKED -> true;
            case PATH, FEWEST_CHANGES, COMPUTED -> false;
        };
    }

    private static List<Object> closed(Choice<?> topic, FlatRules rules, List<Object> facts) {
        List<Stated> said = new ArrayList<>();
        try (StageRun run = rules.start()) {
            facts.forEach(run::insert);
            run.fire(topic.stage()).stream()
                    .map(SameDecisions::said)
                    .distinct()
                    .sorted(Comparator.comparing(one -> one.reason().toString()))
                    .forEach(said::add);
        }
        List<Object> outcomes = new ArrayList<>();
        for (Subject subject : subjects(topic)) {
            // What is said of the floor holds for its field and edges; places repaired by themselves hear vetoes only.
            Outcome outcome = Policy.of(topic)
                    .close(
                            topic,
                            subject,
                            said.stream()
                                    .filter(one -> one.contribution().subject().equals(subject)
                                            || one.contribution().subject().equals(Subject.FLOOR)
                                                    && (!subject.equals(Subject.LOCAL_REPAIR)
                                                            || one.contribution()
                                                                            .kind()
                                                                    == ContributionKind.VETO))
                                    .toList());
            outcomes.add(
                    outcome instanceof Decision<?> decision
                            ? decision.keys()
                            : outcome.getClass().getSimpleName());
        }
        return outcomes;
    }

    private static List<Subject> subjects(Topic<?> topic) {
        return topic.scope() == Scope.FLOOR
                ? List.of(Subject.FLOOR)
                : Stream.of(TrackKind.values())
                        .map(track -> (Subject) new Subject.OfTrack(track))
                        .toList();
    }

    private static Stated said(Firing firing) {
        List<MatchedFact> facts = firing.facts().stream().map(Facts::matched).toList();
        return new Stated(
                firing.contribution(),
                new Reason(
                        firing.contribution().kind(),
                        firing.card().id(),
                        firing.contribution().values(),
                        facts));
    }
}
