package stoneprocess.rules;

import java.util.List;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.run.Program;

/** The shipped rules that plan a floor; the others follow its work. */
public final class PlanningRules {
    private PlanningRules() {}

    public static List<LoadedRule> all() {
        return ShippedRules.load().stream()
                .filter(rule ->
                        Program.RECOMMEND.stages().contains(rule.card().topic().stage()))
                .toList();
    }
}
