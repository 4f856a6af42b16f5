package stoneprocess.rules.follow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.follow.LogNote;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Move;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.follow.FollowLaws.Follower;
import stoneprocess.rules.follow.FollowLaws.Law;

/** What must hold of every next move, on logs drawn at random; and a spoilt follower for each law that breaks it. */
class FollowLawsTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final Follower SHIPPED = Follower.remembering(ADVISOR::followUp);
    private static final int LOGS = 100;

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
        assertHolds(FollowLaws::worseIsNeverBolder);
        Law olderLines =
                (follower, job, random) -> FollowLaws.worseIsNeverBolder(follower, job, random, FollowLaws.LINES);
        assertThat(broken(olderLines, SHIPPED, LOGS, true)).isEmpty();
        Follower blindToOlderLines = Follower.without("MOV-008", "MOV-009", "MOV-012");
        assertThat(broken(olderLines, blindToOlderLines, 10 * LOGS, true)).isPresent();
    }

    @Test
    void the_order_of_what_happened_at_one_moment_changes_nothing() {
        assertHolds(FollowLaws::orderChangesNothing);
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
        assertKills(FollowLaws::orderChangesNothing, hasty);
    }

    @Test
    void accepting_needs_a_clean_look_at_every_zone() {
        assertHolds(FollowLaws::acceptedWhole);
        assertKills(FollowLaws::acceptedWhole, Follower.without("MOV-025"));
        assertKills(FollowLaws::acceptedWhole, Follower.without("MOV-005"));
        assertThat(IntStream.range(0, 10 * LOGS)
                        .mapToObj(seed -> new RandomJob(seed, false))
                        .anyMatch(
                                job -> SHIPPED.follow(job.plan(), job.entries()).move() == Move.ACCEPT))
                .as("the law speaks of something")
                .isTrue();
    }

    @Test
    void a_step_back_brings_the_warnings_of_planning_it_anew() {
        assertHolds(FollowLaws::stepBackWarns);
        Follower silent = Follower.of((plan, log) -> {
            NextMove next = SHIPPED.answer().apply(plan, log);
            Recommendation ahead = next.ahead();
            return FollowLaws.with(
                    next,
                    next.notes(),
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
        assertKills(FollowLaws::stepBackWarns, silent);
    }

    @Test
    void an_empty_log_is_the_first_hold_point_of_the_plan() {
        assertHolds(FollowLaws::emptyIsFirstHoldPoint);
        assertKills(FollowLaws::emptyIsFirstHoldPoint, Follower.without("MOV-001"));
    }

    @Test
    void nothing_in_a_log_is_dropped_silently() {
        assertHolds(FollowLaws::everyEntryCountsOrIsNoted);
        assertKills(FollowLaws::everyEntryCountsOrIsNoted, Follower.of(FollowLawsTest::blindToReadings));
        assertKills(FollowLaws::everyEntryCountsOrIsNoted, Follower.of(FollowLawsTest::blindToLooks));
        assertKills(
                FollowLaws::everyEntryCountsOrIsNoted,
                Follower.of(
                        (plan, log) -> FollowLaws.withoutNotes(SHIPPED.answer().apply(plan, log))));
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
        return FollowLaws.withNotes(
                next,
                next.notes().stream()
                        .map(note -> new LogNote(kept.get(note.entry()), note.kind(), note.effect()))
                        .toList());
    }
}
