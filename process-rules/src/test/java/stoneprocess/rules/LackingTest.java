package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Topics;

/** An impasse names what would have to be got, and whoever gets it has a plan. */
class LackingTest {
    @Test
    void an_impasse_for_want_of_a_machine_names_the_machines_any_of_which_would_do() {
        Recommendation without = withMachines(EnumSet.of(MachineClass.EDGE_TOOL));
        assertThat(without.status()).isEqualTo(Status.IMPASSE);
        assertThat(without.impasses()).isNotEmpty().allSatisfy(impasse -> {
            assertThat(impasse.topic()).isEqualTo(Topics.MACHINE);
            assertThat(impasse.lacking()).isNotEmpty();
        });
        for (String key : without.impasses().get(0).lackingKeys()) {
            MachineClass got = Term.parse(MachineClass.class, key, "lacking");
            boolean everywhere =
                    without.impasses().stream().map(Impasse::lackingKeys).allMatch(keys -> keys.contains(key));
            if (everywhere) {
                assertThat(withMachines(EnumSet.of(MachineClass.EDGE_TOOL, got)).status())
                        .as(key)
                        .isEqualTo(Status.PLANNED);
            }
        }
        assertThat(without.impasses().get(0).lackingKeys()).contains(MachineClass.SINGLE_DISC.key());
        assertThat(withMachines(EnumSet.of(MachineClass.EDGE_TOOL, MachineClass.SINGLE_DISC))
                        .status())
                .isEqualTo(Status.PLANNED);
    }

    @Test
    void what_an_offer_names_are_keys_that_can_be_entered_again() {
        Recommendation without = withMachines(EnumSet.of(MachineClass.EDGE_TOOL));
        assertThat(without.counterOffers())
                .filteredOn(offer -> offer.kind() == OfferKind.OTHER_MACHINE)
                .isNotEmpty()
                .allSatisfy(offer -> assertThat(offer.keys())
                        .isNotEmpty()
                        .allSatisfy(key -> Term.parse(MachineClass.class, key, "offer")));
        GritSequence all = GritSequence.standard();
        Recommendation gap = Advisor.standard()
                .recommend(Floors.damaged(Floors.scratched(ScratchClass.SEEN, 80))
                        .set(SurveyField.GRADES, List.of(all.get("metal-16", ""), all.get("resin-3000", "")))
                        .build());
        List<String> missing = gap.counterOffers().stream()
                .filter(offer -> offer.kind() == OfferKind.GET_GRADES)
                .findFirst()
                .orElseThrow()
                .keys();
        assertThat(missing).hasSizeGreaterThan(1);
        List<AbrasiveGrade> onHand = new ArrayList<>(List.of(all.get("metal-16", ""), all.get("resin-3000", "")));
        missing.forEach(key -> onHand.add(all.get(key, "offer")));
        assertThat(Advisor.standard()
                        .recommend(Floors.damaged(Floors.scratched(ScratchClass.SEEN, 80))
                                .set(SurveyField.GRADES, onHand)
                                .build())
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
