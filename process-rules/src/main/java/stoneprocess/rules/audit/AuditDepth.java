package stoneprocess.rules.audit;

/** How much an audit looks at. */
public enum AuditDepth {
    /** The topics that a recommendation decides; some seconds. */
    RECOMMENDATION,

    /** All topics, those of the job log too; up to some minutes. */
    WHOLE
}
