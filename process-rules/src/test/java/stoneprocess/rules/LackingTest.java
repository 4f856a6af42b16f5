package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.rules.decide.Topics;

/** An impasse names what would have to be got, and whoever gets it has a plan. */
class LackingTest {
    @Test
    void an_impasse_for_want_of_a_machine_names_the_machines_any_of_which_would_do() {
        Recommendation without = withMachines(EnumSet.of(MachineClass.EDGE_TOOL));
        assertThat(without.status()).isEqualTo(Status.IMPASSE);
        assertThat(without.impasses()).isNotEmpty().allSatisfy(impasse -> {
            assertThat(impasse.topic()).isEqualTo(Topics.MACHINE.id());
            assertThat(impasse.lacking()).isNotEmpty();
        });
        for (String key : without.impasses().get(0).lacking()) {
            MachineClass got = Term.parse(MachineClass.class, key, "lacking");
            boolean everywhere =
                    without.impasses().stream().map(Impasse::lacking).allMatch(one -> one.contains(key));
            if (everywhere) {
                assertThat(withMachines(EnumSet.of(MachineClass.EDGE_TOOL, got)).status())
                        .as(key)
                        .isEqualTo(Status.PLANNED);
            }
        }
        assertThat(without.impasses().get(0).lacking()).contains(MachineClass.SINGLE_DISC.key());
        assertThat(withMachines(EnumSet.of(MachineClass.EDGE_TOOL, MachineClass.SINGLE_DISC))
                        .status())
                .isEqualTo(Status.PLANNED);
    }

    private static Recommendation withMachines(Set<MachineClass> machines) {
        return Advisor.standard()
                .recommend(Floors.damaged(Floors.scratched(ScratchClass.SEEN, 80))
                        .set(SurveyField.MACHINES, machines)
                        .build());
    }
}
