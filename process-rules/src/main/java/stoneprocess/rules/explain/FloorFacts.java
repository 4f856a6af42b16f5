package stoneprocess.rules.explain;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.run.Program;

/** The facts that the rules could match when a recommendation was made, read again from its survey and its outcomes. */
final class FloorFacts {
    private final Map<Class<?>, List<Seen>> byType = new HashMap<>();
    private final Map<Subject, List<Seen>> steps = new HashMap<>();
    private final List<Object> all = new ArrayList<>();
    private final Seen.All seen;

    FloorFacts(Recommendation recommendation, Seen.All seen) {
        this.seen = seen;
        Situation situation =
                new Situation(recommendation.survey(), recommendation.parameters(), recommendation.sequence());
        Set<Stage> reached = EnumSet.noneOf(Stage.class);
        for (Outcome outcome : recommendation.outcomes()) {
            situation.close(outcome);
            reached.add(outcome.topic().stage());
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

    private void addSteps(Situation situation, TrackKind track, Decision<Grit> path) {
        List<Step> made = Facts.steps(
                track,
                path.values().stream()
                        .map(grit -> situation.sequence().get(grit, Topics.GRIT_PATH.id()))
                        .toList(),
                situation.values(Topics.METAL_METHOD).get(0),
                situation.parameters());
        all.addAll(made);
        made.forEach(step -> steps.put(step.subject(), List.of(seen.of(step))));
    }

    private void add(List<Object> facts) {
        all.addAll(facts);
        facts.forEach(fact -> byType.computeIfAbsent(fact.getClass(), type -> new ArrayList<>())
                .add(seen.of(fact)));
    }

    /** The facts of a type that a rule which speaks about the subject may match; none when none was concluded. */
    List<Seen> of(Class<?> type, Subject subject) {
        return type == Step.class ? step(subject) : byType.getOrDefault(type, List.of());
    }

    /** The step that a subject names; none when it names none. */
    List<Seen> step(Subject subject) {
        return steps.getOrDefault(subject, List.of());
    }

    /** Every fact, the steps included. */
    List<Object> all() {
        return all;
    }
}
