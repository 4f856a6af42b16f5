package stoneprocess.core.follow;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.topic.Ask;
import stoneprocess.core.topic.Finding;
import stoneprocess.core.topic.Mend;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.SiteCheck;

/**
 * The answer to a job log. It holds keys and arguments, never sentences. The same recommendation, log and rulebase give
 * an equal answer.
 *
 * @param move what comes next
 * @param at where the work stands; empty before the first pass
 * @param findings what the log shows
 * @param causes what may lie behind the signs, the likeliest first; those ruled out last
 * @param checks what is looked at or measured now, in the order in which it is done
 * @param mends what is put right
 * @param asks who is asked
 * @param morePasses how many more passes, when more passes are the move
 * @param progress what the readings tell, zone by zone
 * @param notes what is to be said about entries of the log; an entry without a note counts as it stands
 * @param unknown names of what the log leaves open and a decision hangs on, such as {@code look.film}
 * @param outcomes how the topics of following up were closed
 * @param ahead the plan from here on, with what was done pinned: grits to come, their machines, water, passes and hold
 *     points, new preparation, warnings, what the owner accepts; made of the survey with what happened entered
 */
public record NextMove(
        Move move,
        Optional<HoldPoint> at,
        List<Finding> findings,
        List<Cause> causes,
        List<SiteCheck> checks,
        List<Mend> mends,
        List<Ask> asks,
        Optional<Range<Integer>> morePasses,
        List<ZoneProgress> progress,
        List<LogNote> notes,
        List<String> unknown,
        List<Outcome> outcomes,
        Recommendation ahead) {
    /** Version of the answer's JSON form. */
    public static final String FORMAT = "next-move/1";

    public NextMove {
        Refuse.nulls(
                NextMove.class,
                move,
                at,
                findings,
                causes,
                checks,
                mends,
                asks,
                morePasses,
                progress,
                notes,
                unknown,
                outcomes,
                ahead);
        findings = List.copyOf(findings);
        causes = List.copyOf(causes);
        checks = List.copyOf(checks);
        mends = List.copyOf(mends);
        asks = List.copyOf(asks);
        progress = List.copyOf(progress);
        notes = List.copyOf(notes);
        unknown = List.copyOf(unknown);
        outcomes = List.copyOf(outcomes);
    }
}
