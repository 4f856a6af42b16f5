package stoneprocess.core.decision;

import java.util.List;
import stoneprocess.core.topic.Subject;

/** How a topic was closed for one subject: a decision, or an impasse. */
public sealed interface Outcome permits Decision, Impasse {
    /** Id of the topic. */
    String topic();

    /** What it was closed for. */
    Subject subject();

    /** Every reason: what won, was outweighed and was vetoed; the needs and vetoes of an impasse. */
    List<Reason> reasons();
}
