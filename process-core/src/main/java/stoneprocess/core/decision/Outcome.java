package stoneprocess.core.decision;

/** How a topic was closed for one subject: a decision, or an impasse. */
public sealed interface Outcome permits Decision, Impasse {
    /** Id of the topic. */
    String topic();

    /** What it was closed for. */
    Subject subject();
}
