package stoneprocess.core.plan;

import java.util.List;

/**
 * A hazard that the plan or the site calls for. It advises; local codes and the named licensed role decide.
 *
 * @param hazard the hazard; who is exposed, the controls and the role that decides are told by its text
 * @param rules ids of the rules that raise it
 * @param sources ids of the sources that those rules cite
 * @param certain false when it is raised because a fact is not known
 */
public record SafetyWarning(Hazard hazard, List<String> rules, List<String> sources, boolean certain) {
    public SafetyWarning {
        rules = List.copyOf(rules);
        sources = List.copyOf(sources);
    }
}
