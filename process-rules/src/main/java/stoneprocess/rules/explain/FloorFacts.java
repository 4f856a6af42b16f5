package stoneprocess.rules.explain;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Stage;
import stoneprocess.core.decision.Subject;
import stoneprocess.core.decision.TrackKind;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.rules.decide.Topics;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.run.Program;

/** The facts that the rules could match when a recommendation was made, read again from its survey and its outcomes. */
final class FloorFacts {
    private final Map<Class<?>, List<Object>> byType = new HashMap<>();
    private final Map<Subject, Step> steps = new LinkedHashMap<>();

    FloorFacts(Recommendation recommendation) {
        Situation situation =
                new Situation(recommendation.survey(), recommendation.parameters(), recommendation.sequence());
        Set<Stage> reached = EnumSet.noneOf(Stage.class);
        for (Outcome outcome : recommendation.outcomes()) {
            situation.close(outcome);
            reached.add(Topics.named(outcome.topic()).stage());
        }
        add(Facts.after(Optional.empty(), situation));
        for (Stage stage : Program.RECOMMEND.stages()) {
            if (reached.contains(stage)) {
                add(Facts.after(Optional.of(stage), situation));
            }
        }
        for (TrackKind track : TrackKind.values()) {
            situation
                    .decision(Topics.GRIT_PATH, new Subject.OfTrack(track))
                    .ifPresent(path -> addSteps(situation, track, path));
        }
    }

    private void addSteps(Situation situation, TrackKind track, Decision path) {
        List<Step> made = Facts.steps(
                track,
                path.values().stream()
                        .map(key -> situation.sequence().get(key, Topics.GRIT_PATH.id()))
                        .toList(),
                situation.values(Topics.METAL_METHOD).get(0));
        made.forEach(step -> steps.put(step.subject(), step));
    }

    private void add(List<Object> facts) {
        facts.forEach(fact -> byType.computeIfAbsent(fact.getClass(), type -> new ArrayList<>())
                .add(fact));
    }

    /** The facts of a type that a rule which speaks about the subject may match; none when none was concluded. */
    List<Object> of(Class<?> type, Subject subject) {
        if (type == Step.class) {
            Step step = steps.get(subject);
            return step == null ? List.of() : List.of(step);
        }
        return byType.getOrDefault(type, List.of());
    }

    /** Every fact, the steps included. */
    List<Object> all() {
        List<Object> all = new ArrayList<>();
        byType.values().forEach(all::addAll);
        all.addAll(steps.values());
        return all;
    }
}
