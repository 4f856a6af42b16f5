package stoneprocess.core.decision;

import java.util.List;

/**
 * A topic that cannot be closed: no value meets all needs and escapes all vetoes.
 *
 * @param topic id of the topic
 * @param subject what it was to be decided for
 * @param needs the demands
 * @param vetoes the exclusions
 * @param untilKnown true when facts that nobody knows yet are among the causes, so that knowing them may end it
 */
public record Impasse(String topic, Subject subject, List<Reason> needs, List<Reason> vetoes, boolean untilKnown)
        implements Outcome {
    public Impasse {
        needs = List.copyOf(needs);
        vetoes = List.copyOf(vetoes);
    }
}
