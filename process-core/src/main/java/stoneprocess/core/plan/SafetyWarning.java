package stoneprocess.core.plan;

import java.util.List;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.topic.Hazard;

/**
 * A hazard that the plan or the site calls for. It advises; local codes and the named licensed role decide.
 *
 * @param hazard the hazard; who is exposed and the limit are told by its text
 * @param precautions what is done against it, the first first
 * @param decides who decides
 * @param rules ids of the rules that raise it, ordered
 * @param sources ids of the sources that those rules cite and of those that its limit comes from, ordered
 * @param certain false when it is raised because a fact is not known
 */
public record SafetyWarning(
        Hazard hazard,
        List<Precaution> precautions,
        List<Role> decides,
        List<String> rules,
        List<String> sources,
        boolean certain) {
    public SafetyWarning {
        Refuse.nulls(SafetyWarning.class, hazard, precautions, decides, rules, sources);
        precautions = List.copyOf(precautions);
        decides = List.copyOf(decides);
        rules = List.copyOf(rules);
        sources = List.copyOf(sources);
    }
}
