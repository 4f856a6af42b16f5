package stoneprocess.core.estimate;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;

/** One entry of a job's course, in the order in which the job runs. */
public sealed interface Line {
    /** A name for the line that is the same in every estimate of such work. */
    String name();

    /**
     * Hours of work.
     *
     * @param work what is done
     * @param subject the step or the other work; empty for what concerns the whole job
     * @param clock hours by the clock
     * @param helper share of the hours that a helper, who serves several, works along
     * @param basis what the hours rest on
     * @param assumptions the numbers behind it; none for what the crew timed or the job gave
     */
    record WorkLine(
            Work work,
            Optional<String> subject,
            Spread<TimeSpan> clock,
            Share helper,
            Basis basis,
            List<Assumption> assumptions)
            implements Line {
        public WorkLine {
            Refuse.nulls(WorkLine.class, work, subject, clock, helper, basis, assumptions);
            assumptions = List.copyOf(assumptions);
        }

        /** Hours by the clock and the helper's. */
        public Spread<TimeSpan> personHours() {
            return Case.spread(
                    which -> (1 + helper.percent() / 100) * clock.at(which).minutes(), TimeSpan::new);
        }

        @Override
        public String name() {
            return work.key() + subject.map(of -> " " + of).orElse("");
        }
    }

    /**
     * Time in which nobody works.
     *
     * @param reason what is waited for
     * @param subject the other work; empty for what concerns the whole job
     * @param hours hours by the clock, day and night
     */
    record WaitLine(Wait reason, Optional<String> subject, Spread<TimeSpan> hours) implements Line {
        public WaitLine {
            Refuse.nulls(WaitLine.class, reason, subject, hours);
        }

        @Override
        public String name() {
            return reason.key() + subject.map(of -> " " + of).orElse("");
        }
    }
}
