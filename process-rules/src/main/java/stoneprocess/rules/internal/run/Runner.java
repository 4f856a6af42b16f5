package stoneprocess.rules.internal.run;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.decide.Formula;
import stoneprocess.rules.decide.Policy;
import stoneprocess.rules.decide.Stated;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.Firing;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.engine.StageRun;

/** Runs a program: stage by stage, facts in, contributions out, topics closed by their policies. */
public final class Runner {
    private static final Set<Stage> CUTTING =
            EnumSet.of(Stage.FIRST_CUT, Stage.SEQUENCE, Stage.EQUIPMENT, Stage.WATER_AND_PASSES);
    private static final List<TrackKind> TRACKS = List.of(TrackKind.values());
    private static final List<List<Subject>> FLOOR = List.of(List.of(Subject.FLOOR));
    private static final List<List<Subject>> TRACK =
            List.of(TRACKS.stream().<Subject>map(Subject.OfTrack::new).toList());

    private final Situation situation;
    private final List<Outcome> pins;
    private final UnaryOperator<List<Object>> order;
    private final Predicate<Class<?>> read;
    private final List<Object> facts = new ArrayList<>();
    private final Map<TrackKind, List<Step>> steps = new EnumMap<>(TrackKind.class);

    private Runner(
            Situation situation, List<Outcome> pins, UnaryOperator<List<Object>> order, Predicate<Class<?>> read) {
        this.situation = situation;
        this.pins = pins;
        this.order = order;
        this.read = read;
    }

    /**
     * Runs a program.
     *
     * @param rules starts a run of the rules
     * @param program which stages
     * @param situation the survey, numbers and grits; closed topics are added to it
     * @param pins topics that are closed beforehand, whatever the rules say
     * @param order the order in which facts are given to the engine; it must make no difference
     */
    public static Run run(
            Supplier<? extends StageRun> rules,
            Program program,
            Situation situation,
            List<Outcome> pins,
            UnaryOperator<List<Object>> order) {
        StageRun started = rules.get();
        try {
            return new Runner(situation, pins, order, type -> true)
                    .run(started, program.stages(), Facts.after(Optional.empty(), situation));
        } finally {
            // Where memory ends in the run and again here the machine throws one and the same error, which a resource
            // of
            // the try would fail to suppress by itself.
            started.close();
        }
    }

    /**
     * Runs the first stages of a recommendation without an engine.
     *
     * @param rules the rules; topics that they leave out close as if nothing were said
     * @param last the last stage to run
     * @param situation the survey, numbers and grits; closed topics are added to it
     * @param surveyed the facts of the survey
     */
    public static Run runTo(Stage last, FlatRules rules, Situation situation, List<Object> surveyed) {
        return runTo(last, rules, situation, List.of(), surveyed);
    }

    /** The same with topics closed beforehand, whatever the rules say. */
    public static Run runTo(
            Stage last, FlatRules rules, Situation situation, List<Outcome> pins, List<Object> surveyed) {
        List<Stage> stages = Program.RECOMMEND.stages();
        try (StageRun run = rules.start()) {
            return new Runner(situation, pins, UnaryOperator.identity(), rules::reads)
                    .run(run, stages.subList(0, stages.indexOf(last) + 1), surveyed);
        }
    }

    /** The facts that the rules could match when a floor was planned, from what was then decided. */
    public static List<Object> factsOf(Recommendation recommendation) {
        Situation situation =
                new Situation(recommendation.survey(), recommendation.parameters(), recommendation.sequence());
        try (StageRun silent = FlatRules.of(List.of()).start()) {
            return new Runner(situation, recommendation.outcomes(), UnaryOperator.identity(), type -> true)
                    .run(silent, Program.RECOMMEND.stages(), Facts.after(Optional.empty(), situation))
                    .facts();
        }
    }

    private Run run(StageRun rules, List<Stage> stages, List<Object> surveyed) {
        insert(rules, surveyed);
        for (Stage stage : stages) {
            if (!runs(stage)) {
                continue;
            }
            List<Firing> firings = rules.fire(stage);
            close(stage, new Ledger(firings));
            List<Object> concluded = new ArrayList<>(Facts.after(Optional.of(stage), situation, read));
            if (stage == Stage.SEQUENCE) {
                concluded.addAll(makeSteps());
            }
            insert(rules, concluded);
        }
        return new Run(situation, facts, cutsAllowed());
    }

    private void insert(StageRun rules, List<Object> more) {
        for (Object fact : order.apply(more)) {
            rules.insert(fact);
        }
        facts.addAll(more);
    }

    private boolean runs(Stage stage) {
        if (CUTTING.contains(stage)) {
            return cutsAllowed() && !situation.isBlocked();
        }
        return stage != Stage.FINISHING || !situation.values(Topics.VERDICT).contains(Verdict.REFUSE);
    }

    private boolean cutsAllowed() {
        Set<Verdict> permission = situation.permission();
        return permission.contains(Verdict.GO) || permission.contains(Verdict.HOLD);
    }

    private void close(Stage stage, Ledger ledger) {
        for (Topic<?> topic : Topics.of(stage)) {
            if (topic instanceof Choice<?> choice) {
                closeChoice(choice, ledger.about(choice));
            } else {
                Formula.of(topic).orElseThrow().close(situation).forEach(this::settle);
            }
        }
    }

    private void closeChoice(Choice<?> topic, List<Stated> stated) {
        for (List<Subject> track : tracks(topic.scope())) {
            Policy.of(topic)
                    .closeTrack(topic, track, subject -> about(subject, stated))
                    .forEach(this::settle);
        }
    }

    private static List<Stated> about(Subject subject, List<Stated> stated) {
        List<Stated> about = new ArrayList<>();
        for (Stated each : stated) {
            if (concerns(each.contribution(), subject)) {
                about.add(each);
            }
        }
        return about;
    }

    /** The subjects of a scope; those of steps by track, in the order of the work. */
    private List<List<Subject>> tracks(Scope scope) {
        return switch (scope) {
            case FLOOR -> FLOOR;
            case TRACK -> TRACK;
            case STEP ->
                steps.values().stream()
                        .map(members -> members.stream()
                                .map(step -> (Subject) step.subject())
                                .toList())
                        .toList();
        };
    }

    /**
     * What is said about the floor counts for its field and its edges. Places repaired separately have demands of
     * their own; what is excluded on the floor is excluded there too.
     */
    public static boolean concerns(Contribution contribution, Subject subject) {
        Subject about = contribution.subject();
        if (about.equals(subject)) {
            return true;
        }
        boolean aboutAllTracks = about.equals(Subject.FLOOR) && subject instanceof Subject.OfTrack;
        return aboutAllTracks
                && (!subject.equals(Subject.LOCAL_REPAIR) || contribution.kind() == ContributionKind.VETO);
    }

    /** Keeps an outcome, unless the topic is pinned for its subject. */
    private void settle(Outcome outcome) {
        for (Outcome pin : pins) {
            if (pin.closes(outcome.topic(), outcome.subject())) {
                situation.close(pin);
                return;
            }
        }
        situation.close(outcome);
    }

    private List<Step> makeSteps() {
        for (TrackKind track : TRACKS) {
            Optional<Decision<Grit>> path = situation.decision(Topics.GRIT_PATH, new Subject.OfTrack(track));
            path.ifPresent(decision -> steps.put(
                    track,
                    Facts.steps(
                            track,
                            decision.values().stream()
                                    .map(grit -> situation.sequence().get(grit, Topics.GRIT_PATH.id()))
                                    .toList(),
                            situation.values(Topics.METAL_METHOD).get(0),
                            situation.parameters())));
        }
        List<Step> all = new ArrayList<>();
        steps.values().forEach(all::addAll);
        return all;
    }
}
