package stoneprocess.core.estimate;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
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
     * @param clock hours that one person or machine takes
     * @param elapsed by how much it lengthens the time on the site; none for what is done beside the machine or elsewhere
     * @param personHours hours that are paid: of everybody on the site while it lasts, and on the road
     * @param basis what the hours rest on
     * @param assumptions the numbers behind it; none for what the crew timed or the job gave
     */
    record WorkLine(
            Work work,
            Optional<String> subject,
            Spread<TimeSpan> clock,
            Spread<TimeSpan> elapsed,
            Spread<TimeSpan> personHours,
            Basis basis,
            List<Assumption> assumptions)
            implements Line {
        public WorkLine {
            Refuse.nulls(WorkLine.class, work, subject, clock, elapsed, personHours, basis, assumptions);
            assumptions = List.copyOf(assumptions);
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
