package stoneprocess.examples;

import stoneprocess.core.audit.AuditReport;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.audit.Audit;
import stoneprocess.rules.audit.AuditDepth;
import stoneprocess.rules.audit.AuditProgress;

/** An audit of the shipped rules takes seconds; tests that look at its report share one. */
final class AuditedOnce {
    static final AuditReport REPORT =
            Audit.of(Advisor.standard()).run(AuditDepth.RECOMMENDATION, AuditProgress.silent());

    private AuditedOnce() {}
}
