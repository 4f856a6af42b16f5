package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Subject;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.run.Runner;

/** The facts that the rules could match when a recommendation was made. */
final class FloorFacts {
    private final Map<Class<?>, List<Seen>> byType = new HashMap<>();
    private final Map<Subject, List<Seen>> steps = new HashMap<>();

    FloorFacts(Recommendation recommendation, Seen.All seen) {
        for (Object fact : Runner.factsOf(recommendation)) {
            if (fact instanceof Step step) {
                steps.put(step.subject(), List.of(seen.of(step)));
            } else {
                byType.computeIfAbsent(fact.getClass(), type -> new ArrayList<>())
                        .add(seen.of(fact));
            }
        }
    }

    /** The facts of a type that a rule which speaks about the subject may match; none when none was concluded. */
    List<Seen> of(Class<?> type, Subject subject) {
        return type == Step.class ? step(subject) : byType.getOrDefault(type, List.of());
    }

    /** The step that a subject names; none when it names none. */
    List<Seen> step(Subject subject) {
        return steps.getOrDefault(subject, List.of());
    }
}
