package stoneprocess.rules.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stoneprocess.rules.PlanningRules;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.RuleMutant;

/** Every rule that plans a floor against what was written of it by another hand. */
class RuleCasesTest {
    private static final Map<String, LoadedRule> RULES =
            PlanningRules.all().stream().collect(Collectors.toMap(LoadedRule::id, Function.identity()));

    @Test
    void every_rule_reads_and_says_what_its_case_wants() {
        List<String> misses = new ArrayList<>();
        for (RuleCase expected : RuleCase.all()) {
            LoadedRule rule = RULES.get(expected.rule());
            assertThat(rule).as(expected.rule()).isNotNull();
            expected.misses(rule.conditions(), facts -> RuleMutant.said(rule, facts))
                    .forEach(miss -> misses.add(rule.id() + " " + miss));
        }
        assertThat(misses).isEmpty();
    }

    /** These say what a fact holds: the families sold under a name, the finish asked for, the machine that is not there. */
    @Test
    void every_rule_has_one_case_but_those_that_copy_a_fact() {
        List<String> without = new ArrayList<>(RULES.keySet());
        RuleCase.all()
                .forEach(expected -> assertThat(without.remove(expected.rule()))
                        .as("second case of " + expected.rule())
                        .isTrue());
        assertThat(without).containsExactlyInAnyOrder("SUR-001", "FIN-001", "MAC-006");
    }
}
