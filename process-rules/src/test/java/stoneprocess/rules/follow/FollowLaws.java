package stoneprocess.rules.follow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.follow.LogNote;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.log.EdgeLook;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.EventState;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.PadLook;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.log.Sign;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.internal.assemble.Assembler;
import stoneprocess.rules.internal.assemble.FollowUps;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.engine.StageRun;
import stoneprocess.rules.internal.review.LogReview;
import stoneprocess.rules.internal.run.Program;
import stoneprocess.rules.internal.run.Runner;

/** What must hold of every next move. */
public final class FollowLaws {
    /** The kind of {@link #worse} that makes lines worse. */
    static final int LINES = 0;

    private static final int KINDS = 7;
    private static final Engine ENGINE = new Engine(ShippedRules.load());

    private FollowLaws() {}

    /** All of them. */
    public static List<Law> all() {
        return List.of(
                FollowLaws::worseIsNeverBolder,
                FollowLaws::orderChangesNothing,
                FollowLaws::acceptedWhole,
                FollowLaws::stepBackWarns,
                FollowLaws::emptyIsFirstHoldPoint,
                FollowLaws::everyEntryCountsOrIsNoted);
    }

    /** Something that answers a log. */
    public record Follower(BiFunction<Recommendation, JobLog, NextMove> answer) {
        public static Follower of(BiFunction<Recommendation, JobLog, NextMove> answer) {
            return new Follower(answer);
        }

        /** One that answers each log of a plan once; the laws draw the same jobs. */
        static Follower remembering(BiFunction<Recommendation, JobLog, NextMove> answer) {
            Map<Recommendation, Map<JobLog, NextMove>> answers = new IdentityHashMap<>();
            return of((plan, log) -> answers.computeIfAbsent(plan, key -> new HashMap<>())
                    .computeIfAbsent(log, key -> answer.apply(plan, key)));
        }

        /** The rules, started for each log. */
        public static Follower of(Supplier<? extends StageRun> runs, List<LoadedRule> rules) {
            return of((plan, log) ->
                    FollowUps.answer(runs, rules, plan.rulebase(), LogReview.of(plan, log), UnaryOperator.identity()));
        }

        static Follower without(String... ids) {
            List<LoadedRule> rules = new ArrayList<>(ShippedRules.load());
            assertThat(rules.removeIf(rule -> Arrays.asList(ids).contains(rule.id())))
                    .isTrue();
            return of(new Engine(rules)::start, rules);
        }

        public NextMove follow(Recommendation plan, List<Entry> entries) {
            return answer.apply(plan, new JobLog("drawn", entries));
        }
    }

    /** Whether a law holds for a follower on a job drawn with a seed. */
    public interface Law {
        boolean holds(Follower follower, RandomJob job, Random random);
    }

    static boolean worseIsNeverBolder(Follower follower, RandomJob job, Random random) {
        return worseIsNeverBolder(follower, job, random, random.nextInt(KINDS));
    }

    static boolean worseIsNeverBolder(Follower follower, RandomJob job, Random random, int kind) {
        Optional<List<Entry>> worse = worse(job, random, kind);
        return worse.isEmpty()
                || boldness(follower.follow(job.plan(), worse.get()).move())
                        <= boldness(follower.follow(job.plan(), job.entries()).move());
    }

    /** How far a move leads forward; all that hold or go back are alike. */
    private static int boldness(Move move) {
        return switch (move) {
            case ACCEPT -> 2;
            case GO_ON -> 1;
            case STOP_AND_ASK,
                    RE_PLAN,
                    LOOK_FIRST,
                    MEND_AND_REPEAT,
                    START_COARSER,
                    BACK_TO_START,
                    TWO_GRADES_BACK,
                    ONE_GRADE_BACK,
                    MORE_PASSES,
                    EDGES_FIRST,
                    TOUCH_UP_LANES -> 0;
        };
    }

    /** The log with one thing in one look seen worse, or with an event that stands. */
    private static Optional<List<Entry>> worse(RandomJob job, Random random, int kind) {
        List<Entry> entries = new ArrayList<>(job.entries());
        List<Integer> looks = IntStream.range(0, entries.size())
                .filter(i -> entries.get(i) instanceof Entry.Looked)
                .boxed()
                .toList();
        if (looks.isEmpty()) {
            return Optional.empty();
        }
        int at = looks.get(looks.size() - 1 - random.nextInt(Math.min(3, looks.size())));
        Entry.Looked look = (Entry.Looked) entries.get(at);
        Optional<ScratchLook> scratches = look.scratches();
        Optional<Presence> film = look.film();
        Optional<PadLook> pad = look.pad();
        Optional<EdgeLook> edges = look.edges();
        Optional<Set<Sign>> signs = look.signs();
        FaceState face = look.face();
        switch (kind) {
            case LINES -> scratches = scratches.map(seen -> ScratchLook.values()[Math.min(3, seen.ordinal() + 1)]);
            case 1 -> film = Optional.of(Presence.PRESENT);
            case 2 -> pad = Optional.of(PadLook.CLOSED);
            case 3 -> edges = Optional.of(EdgeLook.BEHIND);
            case 4 -> face = FaceState.WET;
            case 5 -> {
                Set<Sign> more = EnumSet.noneOf(Sign.class);
                signs.ifPresent(more::addAll);
                more.add(Sign.values()[random.nextInt(Sign.values().length)]);
                signs = Optional.of(more);
            }
            default -> {
                EventKind event = EventKind.values()[random.nextInt(EventKind.values().length)];
                entries.add(new Entry.Happened(look.at(), event, look.zone(), EventState.OPEN));
            }
        }
        entries.set(at, new Entry.Looked(look.at(), look.zone(), face, scratches, film, pad, edges, signs));
        return Optional.of(entries);
    }

    static boolean orderChangesNothing(Follower follower, RandomJob job, Random random) {
        List<Entry> shuffled = new ArrayList<>(job.entries());
        Collections.shuffle(shuffled, random);
        shuffled.sort((one, other) -> one.at().compareTo(other.at()));
        NextMove as = follower.follow(job.plan(), job.entries());
        NextMove mixed = follower.follow(job.plan(), shuffled);
        return withoutNotes(as).equals(withoutNotes(mixed))
                && notes(as, job.entries()).equals(notes(mixed, shuffled));
    }

    static NextMove withoutNotes(NextMove next) {
        return withNotes(next, List.of());
    }

    static NextMove withNotes(NextMove next, List<LogNote> notes) {
        return with(next, notes, next.ahead());
    }

    /** The same answer with other notes, and another plan of what is ahead. */
    static NextMove with(NextMove next, List<LogNote> notes, Recommendation ahead) {
        return new NextMove(
                next.move(),
                next.at(),
                next.findings(),
                next.causes(),
                next.checks(),
                next.mends(),
                next.asks(),
                next.morePasses(),
                next.progress(),
                notes,
                next.unknown(),
                next.outcomes(),
                ahead);
    }

    private static List<String> notes(NextMove next, List<Entry> entries) {
        return next.notes().stream()
                .map((LogNote note) -> entries.get(note.entry()) + " " + note.kind() + " " + note.effect())
                .sorted()
                .toList();
    }

    static boolean acceptedWhole(Follower follower, RandomJob job, Random random) {
        if (follower.follow(job.plan(), job.entries()).move() != Move.ACCEPT) {
            return true;
        }
        List<Entry.Looked> last = looksSinceLastWork(job.entries());
        boolean edgesTold = last.stream().anyMatch(look -> look.edges().isPresent());
        boolean clean = last.stream()
                .allMatch(look -> look.film().equals(Optional.of(Presence.NONE)) && look.face() == FaceState.CLEAN_DRY);
        return clean
                && job.plan().survey().zones().stream()
                        .filter(zone -> !(edgesTold && RandomJob.isEdge(zone)))
                        .map(Zone::name)
                        .allMatch(zone ->
                                last.stream().anyMatch(look -> look.zone().equals(zone)));
    }

    private static List<Entry.Looked> looksSinceLastWork(List<Entry> entries) {
        int last = IntStream.range(0, entries.size())
                .filter(i -> entries.get(i) instanceof Entry.Worked)
                .max()
                .orElse(-1);
        return entries.stream()
                .skip(last + 1L)
                .filter(Entry.Looked.class::isInstance)
                .map(Entry.Looked.class::cast)
                .toList();
    }

    static boolean stepBackWarns(Follower follower, RandomJob job, Random random) {
        NextMove next = follower.follow(job.plan(), job.entries());
        boolean back = EnumSet.range(Move.START_COARSER, Move.ONE_GRADE_BACK).contains(next.move());
        if (!back) {
            return true;
        }
        List<Outcome> pins = next.ahead().outcomes().stream()
                .filter(outcome -> Stream.of(Topics.GRIT_PATH, Topics.FIRST_CUT, Topics.TEST_CUTS)
                        .anyMatch(topic -> topic == outcome.topic()))
                .filter(Decision.class::isInstance)
                .toList();
        Situation situation = new Situation(
                next.ahead().survey(), job.plan().parameters(), job.plan().sequence());
        Recommendation anew = Assembler.assemble(
                Runner.run(ENGINE::start, Program.RECOMMEND, situation, pins, UnaryOperator.identity()),
                ShippedRules.load(),
                job.plan().rulebase());
        return next.ahead().warnings().equals(anew.warnings());
    }

    static boolean emptyIsFirstHoldPoint(Follower follower, RandomJob job, Random random) {
        NextMove next = follower.follow(job.plan(), List.of());
        return next.move() == Move.GO_ON
                && next.at().isEmpty()
                && next.ahead().plan().equals(job.plan().plan())
                && next.ahead().warnings().equals(job.plan().warnings());
    }

    /**
     * A look or a reading of which no note speaks bears on the answer: the look is of the hold point, and without the
     * reading the answer is another one.
     */
    static boolean everyEntryCountsOrIsNoted(Follower follower, RandomJob job, Random random) {
        NextMove next = follower.follow(job.plan(), job.entries());
        for (int i = 0; i < job.entries().size(); i++) {
            int position = i;
            Entry entry = job.entries().get(i);
            boolean noted = next.notes().stream().anyMatch(note -> note.entry() == position);
            boolean dropped = entry instanceof Entry.Looked
                            && !looksSinceLastWork(job.entries()).contains(entry)
                    || entry instanceof Entry.Read && !changes(follower, job, position, next);
            if (dropped && !noted) {
                return false;
            }
        }
        return true;
    }

    private static boolean changes(Follower follower, RandomJob job, int position, NextMove next) {
        List<Entry> without = new ArrayList<>(job.entries());
        without.remove(position);
        return !withoutNotes(follower.follow(job.plan(), without)).equals(withoutNotes(next));
    }
}
