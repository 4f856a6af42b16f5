package stoneprocess.rules.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Card;
import stoneprocess.rules.Advisor;

/** No rule without a floor, a job log or a fault on which it speaks. */
class CoverageTest {
    private static final Advisor ADVISOR = Advisor.standard();

    @Test
    void every_rule_speaks_on_an_expert_case_or_on_a_floor_of_the_outcome_table() throws Exception {
        Set<String> silent = new TreeSet<>();
        ADVISOR.rulebase().cards().stream().map(Card::id).forEach(silent::add);
        int rules = silent.size();
        ExpertCase.all().forEach(expert -> silent.removeAll(spoke(plan(expert.survey()))));
        TreatmentTableTest.cells().forEach(cell -> silent.removeAll(spoke(plan(cell.survey()))));
        Stream.of("follow", "diagnose")
                .flatMap(folder -> FollowCase.all(folder).stream())
                .forEach(expert -> silent.removeAll(spoke(expert.answer(ADVISOR).outcomes())));
        int byCases = rules - silent.size();
        Iterator<FloorSurvey> table = FloorTableTest.surveys().iterator();
        while (!silent.isEmpty() && table.hasNext()) {
            silent.removeAll(spoke(plan(table.next())));
        }
        System.out.printf(
                "Of %d rules %d speak on the expert cases, %d with the outcome table%n",
                rules, byCases, rules - silent.size());
        assertThat(silent).isEmpty();
    }

    private static List<Outcome> plan(FloorSurvey survey) {
        return ADVISOR.recommend(survey).outcomes();
    }

    private static Set<String> spoke(List<Outcome> outcomes) {
        Set<String> ids = new TreeSet<>();
        outcomes.stream()
                .map(Outcome::reasons)
                .flatMap(List::stream)
                .map(Reason::rule)
                .forEach(ids::add);
        return ids;
    }
}
