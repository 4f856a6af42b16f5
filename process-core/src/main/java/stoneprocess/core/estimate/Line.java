package stoneprocess.core.estimate;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
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
     * @param people how many are needed at once, 1 or more
     * @param basis what the hours rest on
     * @param assumptions the numbers behind it; none for what the crew timed or the job gave
     */
    record WorkLine(
            Work work,
            Optional<String> subject,
            Spread<TimeSpan> clock,
            int people,
            Basis basis,
            List<Assumption> assumptions)
            implements Line {
        public WorkLine {
            Refuse.nulls(WorkLine.class, work, subject, clock, basis, assumptions);
            if (people < 1) {
                throw new InvalidInputException("people", Integer.toString(people), "1 or more");
            }
            assumptions = List.copyOf(assumptions);
        }

        /** Hours by the clock times the people. */
        public Spread<TimeSpan> personHours() {
            return Case.spread(which -> people * clock.at(which).minutes(), TimeSpan::new);
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
