package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;

/** What needs and vetoes leave of a domain, and the impasse when they leave nothing. */
final class Allowed {
    private Allowed() {}

    /** The values of the domain that all needs allow and no veto excludes, in the domain's order. */
    static <V extends Term> List<V> of(Choice<V> topic, List<Stated> stated) {
        List<V> allowed = new ArrayList<>(topic.domain());
        for (Stated each : stated) {
            allowed.removeIf(value -> !permits(each, value));
        }
        return allowed;
    }

    private static boolean permits(Stated stated, Term value) {
        boolean named = stated.contribution().values().contains(value);
        return switch (stated.kind()) {
            case NEED -> named;
            case VETO -> !named;
            case WISH -> true;
        };
    }

    static List<Reason> reasons(List<Stated> stated, ContributionKind kind) {
        return stated.stream()
                .filter(each -> each.kind() == kind)
                .map(Stated::reason)
                .toList();
    }

    static <V extends Term> Impasse<V> impasse(Choice<V> topic, Subject subject, List<Stated> stated) {
        List<Stated> certain =
                stated.stream().filter(each -> each.reason().certain()).toList();
        return new Impasse<>(
                topic,
                subject,
                reasons(stated, ContributionKind.NEED),
                reasons(stated, ContributionKind.VETO),
                !of(topic, certain).isEmpty(),
                lacking(topic, stated));
    }

    /** What would be allowed if it were on hand; any one of these would do. */
    private static <V extends Term> List<V> lacking(Choice<V> topic, List<Stated> stated) {
        List<Stated> besides = stated.stream().filter(each -> !isAbsence(each)).toList();
        return besides.size() == stated.size() ? List.of() : of(topic, besides);
    }

    /** An exclusion for no other reason than that a machine is not on hand. */
    private static boolean isAbsence(Stated stated) {
        return stated.kind() == ContributionKind.VETO && stated.reason().restsOnlyOn(SurveyField.MACHINES);
    }
}
