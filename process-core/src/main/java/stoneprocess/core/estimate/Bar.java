package stoneprocess.core.estimate;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.TimeSpan;

/**
 * One bar of a schedule's chart: a task in a bay, or the wait after it.
 *
 * @param task name of the step, of the other work or of the work on the whole floor
 * @param bay the bay, from 1 on; 0 for the whole floor
 * @param crew the crew at work, from 1 on; 0 while the bay waits and nobody works in it
 * @param start shift hours worked on the site before it begins
 * @param end shift hours worked on the site when it ends, not before the start
 * @param firstDay calendar day on which it begins, from 1 on
 * @param lastDay calendar day on which it ends
 */
public record Bar(String task, int bay, int crew, TimeSpan start, TimeSpan end, int firstDay, int lastDay) {
    public Bar {
        Refuse.nulls(Bar.class, task, start, end);
        Require.text("bar.task", task);
        Require.ordered("bar.end", start, end);
    }

    /** Whether it is a wait. */
    public boolean isWait() {
        return crew == 0;
    }
}
