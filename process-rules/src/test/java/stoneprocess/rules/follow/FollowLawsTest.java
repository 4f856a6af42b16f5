package stoneprocess.rules.follow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
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
import stoneprocess.rules.Advisor;
import stoneprocess.rules.internal.assemble.Assembler;
import stoneprocess.rules.internal.assemble.FollowUps;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.review.LogReview;
import stoneprocess.rules.internal.run.Program;
import stoneprocess.rules.internal.run.Runner;

/** What must hold of every next move, on logs drawn at random; and a spoilt follower for each law that breaks it. */
class FollowLawsTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final Follower SHIPPED = Follower.remembering(ADVISOR::followUp);
    private static final Engine ENGINE = new Engine(ShippedRules.load());
    private static final int LOGS = 100;
    private static final int LINES = 0;
    private static final int KINDS = 7;

    /** Something that answers a log. */
    private record Follower(BiFunction<Recommendation, JobLog, NextMove> answer) {
        static Follower of(BiFunction<Recommendation, JobLog, NextMove> answer) {
            return new Follower(answer);
        }

        /** One that answers each log of a plan once; the laws draw the same jobs. */
        static Follower remembering(BiFunction<Recommendation, JobLog, NextMove> answer) {
            Map<Recommendation, Map<JobLog, NextMove>> answers = new IdentityHashMap<>();
            return of((plan, log) -> answers.computeIfAbsent(plan, key -> new HashMap<>())
                    .computeIfAbsent(log, key -> answer.apply(plan, key)));
        }

        static Follower without(String... ids) {
            List<LoadedRule> rules = new ArrayList<>(ShippedRules.load());
            assertThat(rules.removeIf(rule -> Arrays.asList(ids).contains(rule.id())))
                    .isTrue();
            Engine engine = new Engine(rules);
            return of((plan, log) -> FollowUps.answer(
                    engine, rules, plan.rulebase(), LogReview.of(plan, log), UnaryOperator.identity()));
        }

        NextMove follow(Recommendation plan, List<Entry> entries) {
            return answer.apply(plan, new JobLog("drawn", entries));
        }
    }

    /** Whether a law holds for a follower on a job drawn with a seed. */
    private interface Law {
        boolean holds(Follower follower, RandomJob job, Random random);
    }

    private static Optional<RandomJob> broken(Law law, Follower follower, int logs, boolean lined) {
        return IntStream.range(0, logs)
                .mapToObj(seed -> new RandomJob(seed, lined))
                .filter(job -> !law.holds(follower, job, new Random(job.seed())))
                .findFirst();
    }

    private static void assertHolds(Law law) {
        assertThat(broken(law, SHIPPED, LOGS, false)).isEmpty();
    }

    private static void assertKills(Law law, Follower spoilt) {
        assertThat(broken(law, spoilt, 10 * LOGS, false)).isPresent();
    }

    @Test
    void a_bad_look_never_makes_the_move_bolder() {
        assertHolds(FollowLawsTest::worseIsNeverBolder);
        Law olderLines = (follower, job, random) -> worseIsNeverBolder(follower, job, random, LINES);
        assertThat(broken(olderLines, SHIPPED, LOGS, true)).isEmpty();
        Follower blindToOlderLines = Follower.without("MOV-008", "MOV-009", "MOV-012");
        assertThat(broken(olderLines, blindToOlderLines, 10 * LOGS, true)).isPresent();
    }

    private static boolean worseIsNeverBolder(Follower follower, RandomJob job, Random random) {
        return worseIsNeverBolder(follower, job, random, random.nextInt(KINDS));
    }

    private static boolean worseIsNeverBolder(Follower follower, RandomJob job, Random random, int kind) {
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

    @Test
    void the_order_of_what_happened_at_one_moment_changes_nothing() {
        assertHolds(FollowLawsTest::orderChangesNothing);
        Follower hasty = Follower.of((plan, log) -> {
            Set<Object> seen = new HashSet<>();
            return ADVISOR.followUp(
                    plan,
                    new JobLog(
                            log.title(),
                            log.entries().stream()
                                    .filter(entry -> seen.add(List.of(entry.at(), entry.getClass())))
                                    .toList()));
        });
        assertKills(FollowLawsTest::orderChangesNothing, hasty);
    }

    private static boolean orderChangesNothing(Follower follower, RandomJob job, Random random) {
        List<Entry> shuffled = new ArrayList<>(job.entries());
        Collections.shuffle(shuffled, random);
        shuffled.sort((one, other) -> one.at().compareTo(other.at()));
        NextMove as = follower.follow(job.plan(), job.entries());
        NextMove mixed = follower.follow(job.plan(), shuffled);
        return withoutNotes(as).equals(withoutNotes(mixed))
                && notes(as, job.entries()).equals(notes(mixed, shuffled));
    }

    private static NextMove withoutNotes(NextMove next) {
        return withNotes(next, List.of());
    }

    private static NextMove withNotes(NextMove next, List<LogNote> notes) {
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
                next.ahead());
    }

    private static List<String> notes(NextMove next, List<Entry> entries) {
        return next.notes().stream()
                .map((LogNote note) -> entries.get(note.entry()) + " " + note.kind() + " " + note.effect())
                .sorted()
                .toList();
    }

    @Test
    void accepting_needs_a_clean_look_at_every_zone() {
        assertHolds(FollowLawsTest::acceptedWhole);
        assertKills(FollowLawsTest::acceptedWhole, Follower.without("MOV-025"));
        assertKills(FollowLawsTest::acceptedWhole, Follower.without("MOV-005"));
        assertThat(IntStream.range(0, 10 * LOGS)
                        .mapToObj(seed -> new RandomJob(seed, false))
                        .anyMatch(
                                job -> SHIPPED.follow(job.plan(), job.entries()).move() == Move.ACCEPT))
                .as("the law speaks of something")
                .isTrue();
    }

    private static boolean acceptedWhole(Follower follower, RandomJob job, Random random) {
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

    @Test
    void a_step_back_brings_the_warnings_of_planning_it_anew() {
        assertHolds(FollowLawsTest::stepBackWarns);
        Follower silent = Follower.of((plan, log) -> {
            NextMove next = SHIPPED.answer().apply(plan, log);
            Recommendation ahead = next.ahead();
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
                    next.notes(),
                    next.unknown(),
                    next.outcomes(),
                    new Recommendation(
                            ahead.status(),
                            ahead.plan(),
                            ahead.refusals(),
                            plan.warnings().stream().skip(1).toList(),
                            ahead.questions(),
                            ahead.counterOffers(),
                            ahead.outcomes(),
                            ahead.survey(),
                            ahead.sequence(),
                            ahead.parameters(),
                            ahead.rulebase()));
        });
        assertKills(FollowLawsTest::stepBackWarns, silent);
    }

    private static boolean stepBackWarns(Follower follower, RandomJob job, Random random) {
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
                Runner.run(ENGINE, Program.RECOMMEND, situation, pins, UnaryOperator.identity()),
                ShippedRules.load(),
                job.plan().rulebase());
        return next.ahead().warnings().equals(anew.warnings());
    }

    @Test
    void an_empty_log_is_the_first_hold_point_of_the_plan() {
        assertHolds(FollowLawsTest::emptyIsFirstHoldPoint);
        assertKills(FollowLawsTest::emptyIsFirstHoldPoint, Follower.without("MOV-001"));
    }

    private static boolean emptyIsFirstHoldPoint(Follower follower, RandomJob job, Random random) {
        NextMove next = follower.follow(job.plan(), List.of());
        return next.move() == Move.GO_ON
                && next.at().isEmpty()
                && next.ahead().plan().equals(job.plan().plan())
                && next.ahead().warnings().equals(job.plan().warnings());
    }

    @Test
    void nothing_in_a_log_is_dropped_silently() {
        assertHolds(FollowLawsTest::everyEntryCountsOrIsNoted);
        assertKills(FollowLawsTest::everyEntryCountsOrIsNoted, Follower.of(FollowLawsTest::blindToReadings));
        assertKills(FollowLawsTest::everyEntryCountsOrIsNoted, Follower.of(FollowLawsTest::blindToLooks));
        assertKills(
                FollowLawsTest::everyEntryCountsOrIsNoted,
                Follower.of((plan, log) -> withoutNotes(SHIPPED.answer().apply(plan, log))));
    }

    /**
     * A look or a reading of which no note speaks bears on the answer: the look is of the hold point, and without the
     * reading the answer is another one.
     */
    private static boolean everyEntryCountsOrIsNoted(Follower follower, RandomJob job, Random random) {
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

    private static NextMove blindToReadings(Recommendation plan, JobLog log) {
        return blindTo(Entry.Read.class, plan, log);
    }

    private static NextMove blindToLooks(Recommendation plan, JobLog log) {
        return blindTo(Entry.Looked.class, plan, log);
    }

    /** Drops entries of a kind and says nothing of it; the notes on the others stand. */
    private static NextMove blindTo(Class<? extends Entry> kind, Recommendation plan, JobLog log) {
        List<Integer> kept = IntStream.range(0, log.entries().size())
                .filter(i -> !kind.isInstance(log.entries().get(i)))
                .boxed()
                .toList();
        NextMove next = SHIPPED.answer()
                .apply(
                        plan,
                        new JobLog(
                                log.title(),
                                kept.stream().map(log.entries()::get).toList()));
        return withNotes(
                next,
                next.notes().stream()
                        .map(note -> new LogNote(kept.get(note.entry()), note.kind(), note.effect()))
                        .toList());
    }
}
