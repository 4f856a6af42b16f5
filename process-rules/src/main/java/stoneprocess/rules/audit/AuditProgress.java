package stoneprocess.rules.audit;

import java.math.BigInteger;
import stoneprocess.core.topic.Topic;

/** Is told how far an audit has come; called on the thread that audits. */
@FunctionalInterface
public interface AuditProgress {
    /**
     * A topic is done.
     *
     * @param topic the topic
     * @param done how many topics are done, from 1
     * @param of how many there are
     * @param combinations how many combinations of facts the topic has
     */
    void done(Topic<?> topic, int done, int of, BigInteger combinations);

    /** Tells nobody. */
    static AuditProgress silent() {
        return (topic, done, of, combinations) -> {};
    }
}
