package stoneprocess.rules.internal.assemble;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Input;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.follow.Cause;
import stoneprocess.core.follow.HoldPoint;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.follow.Standing;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.decide.GritPath;
import stoneprocess.rules.feature.PassCount;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.StageRun;
import stoneprocess.rules.internal.review.AfterEvents;
import stoneprocess.rules.internal.review.LogReview;
import stoneprocess.rules.internal.run.Program;
import stoneprocess.rules.internal.run.Run;
import stoneprocess.rules.internal.run.Runner;

/**
 * Answers a job log: runs the program that ends with the next move, then plans the rest of the work anew, from the stone
 * to the warnings, with the first cuts and the grits that the move leaves pinned.
 */
public final class FollowUps {
    private final Supplier<? extends StageRun> runs;
    private final List<LoadedRule> rules;
    private final RulebaseStamp stamp;
    private final UnaryOperator<List<Object>> order;
    private final Recommendation plan;
    private final LogReview review;
    private final FloorSurvey survey;

    private FollowUps(
            Supplier<? extends StageRun> runs,
            List<LoadedRule> rules,
            RulebaseStamp stamp,
            LogReview review,
            UnaryOperator<List<Object>> order) {
        this.runs = runs;
        this.rules = rules;
        this.stamp = stamp;
        this.review = review;
        this.order = order;
        this.plan = review.plan();
        this.survey = AfterEvents.enter(plan.survey(), review.events());
    }

    /**
     * The next move.
     *
     * @param runs starts a run of the rules
     * @param rules the same rules
     * @param stamp which rulebase that is
     * @param review the log, read for following up or for a diagnosis
     * @param order the order in which facts are given to the engine; it must make no difference
     */
    public static NextMove answer(
            Supplier<? extends StageRun> runs,
            List<LoadedRule> rules,
            RulebaseStamp stamp,
            LogReview review,
            UnaryOperator<List<Object>> order) {
        return new FollowUps(runs, rules, stamp, review, order).answer();
    }

    private NextMove answer() {
        Program program = review.followsUp() ? Program.FOLLOW_UP : Program.DIAGNOSE;
        Situation situation = situation(Optional.of(review));
        Run run = Runner.run(runs, program, situation, List.of(), order);
        Move move = situation.values(Topics.MOVE).get(0);
        return new NextMove(
                move,
                review.at(),
                situation.values(Topics.FINDINGS),
                causes(situation),
                situation.values(Topics.SITE_CHECKS),
                situation.values(Topics.MENDS),
                situation.values(Topics.ASKS),
                move == Move.MORE_PASSES ? Optional.of(morePasses()) : Optional.empty(),
                review.progress(),
                review.notes(),
                unknown(run),
                followed(run),
                ahead(move));
    }

    private Situation situation(Optional<LogReview> log) {
        return new Situation(survey, plan.parameters(), plan.sequence(), log);
    }

    private static List<Cause> causes(Situation situation) {
        Optional<Decision<Fault>> decision = situation.decision(Topics.CAUSES, Subject.FLOOR);
        if (decision.isEmpty()) {
            return List.of();
        }
        List<Reason> reasons = Stream.concat(decision.get().won().stream(), decision.get().vetoed().stream())
                .toList();
        List<Fault> named = new ArrayList<>(situation.values(Topics.CAUSES));
        Stream.of(Fault.values()).filter(fault -> !named.contains(fault)).forEach(named::add);
        List<Cause> causes = new ArrayList<>();
        for (Fault fault : named) {
            Standing standing = Facts.standing(decision.get(), fault);
            if (standing != Standing.NOT_SUGGESTED) {
                causes.add(new Cause(
                        fault,
                        standing,
                        about(fault, ContributionKind.WISH, reasons),
                        about(fault, ContributionKind.VETO, reasons)));
            }
        }
        causes.sort(Comparator.comparing(Cause::standing));
        return causes;
    }

    private static List<Reason> about(Fault fault, ContributionKind kind, List<Reason> reasons) {
        return reasons.stream()
                .filter(reason -> reason.kind() == kind && reason.values().contains(fault))
                .toList();
    }

    private Range<Integer> morePasses() {
        Optional<PlannedStep> planned = review.plannedStep();
        int done = review.at().orElseThrow().passes();
        if (review.passes() == PassCount.FEWER && planned.isPresent()) {
            Range<Integer> passes = planned.get().passes();
            return Range.of(passes.low() - done, passes.high() - done);
        }
        Optional<Integer> toTarget = review.passesToTarget();
        if (toTarget.isPresent()) {
            return Range.of(toTarget.get(), toTarget.get());
        }
        Parameters parameters = plan.parameters();
        Range<Count> usual = parameters.range("follow.more-passes", Count.class);
        return Range.of((int) usual.low().number(), (int) usual.high().number());
    }

    /** Names of what is not known and was read cautiously by a rule that decides the move. */
    private static List<String> unknown(Run run) {
        Set<String> fields = new LinkedHashSet<>();
        run.situation().decision(Topics.MOVE, Subject.FLOOR).stream()
                .flatMap(decision -> Stream.concat(decision.won().stream(), decision.outweighed().stream()))
                .flatMap(reason -> reason.facts().stream())
                .filter(fact -> !fact.known())
                .forEach(fact -> fields.addAll(fact.fields()));
        return List.copyOf(fields);
    }

    private static List<Outcome> followed(Run run) {
        Set<Topic<?>> own =
                Set.of(Topics.FINDINGS, Topics.CAUSES, Topics.MOVE, Topics.SITE_CHECKS, Topics.MENDS, Topics.ASKS);
        return run.outcomes().stream()
                .filter(outcome -> own.contains(outcome.topic()))
                .toList();
    }

    private Recommendation ahead(Move move) {
        List<Outcome> pins = new ArrayList<>();
        Map<TrackKind, AbrasiveGrade> worked = new EnumMap<>(TrackKind.class);
        for (TrackKind track : review.tracks()) {
            Subject subject = new Subject.OfTrack(track);
            List<AbrasiveGrade> grades = grades(move, track);
            pins.add(pinned(
                    Topics.GRIT_PATH,
                    subject,
                    grades.stream().map(AbrasiveGrade::grit).toList()));
            if (!grades.isEmpty()) {
                review.workedBefore(track, grades.get(0)).ifPresent(coarser -> worked.put(track, coarser));
            }
            Cut before = plan.values(Topics.FIRST_CUT, subject).get(0);
            Cut now = grades.isEmpty() ? before : Cut.of(grades.get(0));
            pins.add(pinned(Topics.FIRST_CUT, subject, List.of(now.compareTo(before) > 0 ? now : before)));
        }
        pins.add(pinned(Topics.TEST_CUTS, Subject.FLOOR, plan.values(Topics.TEST_CUTS, Subject.FLOOR)));
        boolean lanes = move == Move.TOUCH_UP_LANES;
        if (lanes) {
            pins.add(pinned(Topics.FINISH, Subject.FLOOR, plan.values(Topics.FINISH, Subject.FLOOR)));
        }
        FloorSurvey worn = lanes ? AfterEvents.lanesDull(survey) : survey;
        Situation rest = new Situation(worn, plan.parameters(), plan.sequence(), worked);
        Run run = Runner.run(runs, Program.RECOMMEND, rest, pins, order);
        return Assembler.assemble(run, rules, stamp);
    }

    private static <V> Decision<V> pinned(Topic<V> topic, Subject subject, List<V> values) {
        return new Decision<>(
                topic, subject, values, List.of(), List.of(), List.of(), List.of(new Input.OfTopic(Topics.MOVE)));
    }

    /** The grits of a track that are still to be worked once the move is made. */
    private List<AbrasiveGrade> grades(Move move, TrackKind track) {
        boolean holds = review.at().filter(point -> point.track() == track).isPresent();
        if (move == Move.STOP_AND_ASK || move == Move.ACCEPT) {
            return List.of();
        }
        if (move == Move.TOUCH_UP_LANES) {
            boolean surveyed =
                    survey.zones().stream().anyMatch(zone -> zone.kind().isTrodden());
            return track == TrackKind.OPEN_FIELD && surveyed
                    ? restart(move).map(List::of).orElse(List.of())
                    : List.of();
        }
        if (review.provenStart().isPresent() && move == Move.GO_ON && track == review.governing()) {
            return pathFrom(review.provenStart().get());
        }
        boolean taken = holds && move != Move.GO_ON && move != Move.EDGES_FIRST || move == Move.START_COARSER;
        return taken ? restart(move).map(this::pathFrom).orElseGet(() -> review.after(track)) : review.after(track);
    }

    private Optional<AbrasiveGrade> restart(Move move) {
        return inUse().flatMap(grades -> review.restart(move, grades));
    }

    private Optional<GritSequence> inUse() {
        return situation(Optional.empty()).inUse();
    }

    /** The planned grits from one on; a path of its own when the plan does not hold the grit. */
    private List<AbrasiveGrade> pathFrom(AbrasiveGrade start) {
        List<AbrasiveGrade> planned =
                review.planned(review.at().map(HoldPoint::track).orElse(review.governing()));
        if (planned.contains(start)) {
            return planned.subList(planned.indexOf(start), planned.size());
        }
        GritPath path = new GritPath(
                inUse().orElseThrow(),
                Set.copyOf(plan.values(Topics.BONDS, Subject.FLOOR)),
                plan.values(Topics.STEP_RULE, Subject.FLOOR).get(0),
                plan.values(Topics.TRANSITION, Subject.FLOOR).get(0),
                plan.parameters());
        return path.from(start, plan.values(Topics.LAST_GRIT, Subject.FLOOR).get(0))
                .orElseGet(() -> {
                    List<AbrasiveGrade> onward = new ArrayList<>(List.of(start));
                    planned.stream()
                            .filter(grade -> AbrasiveGrade.IN_ORDER.compare(grade, start) > 0)
                            .forEach(onward::add);
                    return onward;
                });
    }
}
