package stoneprocess.rules.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static stoneprocess.rules.decide.Statements.certain;
import static stoneprocess.rules.decide.Statements.from;
import static stoneprocess.rules.decide.Statements.rules;
import static stoneprocess.rules.decide.Statements.uncertain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.stone.Families;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Verdict;

class PoliciesTest {
    private static final Subject STEP = new Subject.OfStep(TrackKind.OPEN_FIELD, "resin-400");

    @Test
    void one_without_any_contribution_is_the_most_cautious_value() {
        assertThat(decision(Topics.FIRST_CUT, List.of()).key()).isEqualTo(Cut.NONE.key());
        assertThat(decision(Topics.SEALER, List.of()).key()).isEqualTo(Sealer.NONE.key());
    }

    @Test
    void one_takes_the_boldest_wish_and_keeps_the_outweighed_one() {
        Decision<?> decision = decision(
                Topics.FIRST_CUT,
                List.of(
                        certain("A", Topics.FIRST_CUT.wish(Cut.REFRESH)),
                        certain("B", Topics.FIRST_CUT.wish(Cut.COARSE_HONE))));

        assertThat(decision.key()).isEqualTo(Cut.COARSE_HONE.key());
        assertThat(rules(decision.won())).containsExactly("B");
        assertThat(rules(decision.outweighed())).containsExactly("A");
        assertThat(decision.vetoed()).isEmpty();
    }

    @Test
    void needs_alone_give_the_finest_cut_that_meets_them_all() {
        Decision<?> decision = decision(
                Topics.FIRST_CUT,
                List.of(
                        certain("A", Topics.FIRST_CUT.needAtLeast(Cut.HONE)),
                        certain("B", Topics.FIRST_CUT.needAtLeast(Cut.FINE_GRIND))));

        assertThat(decision.key()).isEqualTo(Cut.FINE_GRIND.key());
        assertThat(rules(decision.won())).containsExactly("A", "B");
    }

    @Test
    void a_veto_reins_a_wish_in_and_the_wish_falls_to_its_next_value() {
        Decision<?> decision = decision(
                Topics.FIRST_CUT,
                List.of(
                        certain("A", Topics.FIRST_CUT.wish(Cut.HEAVY_GRIND, Cut.COARSE_HONE)),
                        certain("B", Topics.FIRST_CUT.wish(Cut.GRIND)),
                        certain("V", Topics.FIRST_CUT.vetoAbove(Cut.FINE_GRIND))));

        assertThat(decision.key()).isEqualTo(Cut.COARSE_HONE.key());
        assertThat(rules(decision.won())).containsExactly("A", "V");
        assertThat(rules(decision.vetoed())).containsExactly("B");
    }

    @Test
    void a_need_reins_a_wish_in() {
        Decision<?> decision = decision(
                Topics.FIRST_CUT,
                List.of(
                        certain("W", Topics.FIRST_CUT.wish(Cut.HEAVY_GRIND)),
                        certain("N", Topics.FIRST_CUT.needAtMost(Cut.HONE))));

        assertThat(decision.key()).isEqualTo(Cut.NONE.key());
        assertThat(rules(decision.vetoed())).containsExactly("W");
    }

    @Test
    void one_with_nothing_left_is_an_impasse_with_both_sides() {
        Impasse<?> impasse = impasse(
                Topics.FIRST_CUT,
                List.of(
                        certain("N", Topics.FIRST_CUT.needAtLeast(Cut.GRIND)),
                        certain("V", Topics.FIRST_CUT.vetoAbove(Cut.FINE_GRIND)),
                        uncertain("W", Topics.FIRST_CUT.wish(Cut.HONE))));

        assertThat(rules(impasse.needs())).containsExactly("N");
        assertThat(rules(impasse.vetoes())).containsExactly("V");
        assertThat(impasse.untilKnown())
                .as("an uncertain wish causes no impasse")
                .isFalse();
    }

    @Test
    void an_impasse_that_rests_on_something_unknown_holds_until_it_is_known() {
        Impasse<?> impasse = impasse(
                Topics.FIRST_CUT,
                List.of(
                        certain("N", Topics.FIRST_CUT.needAtLeast(Cut.GRIND)),
                        uncertain("V", Topics.FIRST_CUT.vetoAbove(Cut.FINE_GRIND))));

        assertThat(impasse.untilKnown()).isTrue();
    }

    @Test
    void all_keeps_everything_that_is_asked_for_and_not_vetoed_in_the_order_of_the_domain() {
        Decision<?> decision = decision(
                Topics.PREPARATION,
                List.of(
                        certain("A", Topics.PREPARATION.need(Task.REGROUT, Task.FILL_CRACKS)),
                        certain("B", Topics.PREPARATION.need(Task.MASK)),
                        certain("V", Topics.PREPARATION.veto(Task.MASK))));

        assertThat(decision.keys()).containsExactly(Task.FILL_CRACKS.key(), Task.REGROUT.key());
        assertThat(rules(decision.won())).containsExactly("A", "V");
        assertThat(rules(decision.vetoed())).containsExactly("B");
    }

    @Test
    void all_without_any_contribution_is_decided_and_empty() {
        assertThat(decision(Topics.PREPARATION, List.of()).keys()).isEmpty();
    }

    @Test
    void precedence_without_any_contribution_is_the_last_value() {
        assertThat(decision(Topics.VERDICT, List.of()).key()).isEqualTo(Verdict.GO.key());
    }

    @Test
    void precedence_takes_the_first_value_of_the_domain_that_is_asked_for() {
        Decision<?> decision = decision(
                Topics.VERDICT,
                List.of(
                        certain("C", Topics.VERDICT.need(Verdict.CLEAN_ONLY)),
                        certain("R", Topics.VERDICT.need(Verdict.REFUSE))));

        assertThat(decision.key()).isEqualTo(Verdict.REFUSE.key());
        assertThat(rules(decision.won())).containsExactly("R");
        assertThat(rules(decision.outweighed())).containsExactly("C");
    }

    @Test
    void a_refusal_that_rests_on_something_unknown_counts_as_a_hold() {
        Decision<?> decision = decision(
                Topics.VERDICT,
                List.of(
                        uncertain("R", Topics.VERDICT.need(Verdict.REFUSE)),
                        uncertain("C", Topics.VERDICT.need(Verdict.CLEAN_ONLY))));

        assertThat(decision.key()).isEqualTo(Verdict.HOLD.key());
        assertThat(rules(decision.won())).containsExactly("R", "C");
    }

    @Test
    void a_certain_refusal_outweighs_every_hold() {
        Decision<?> decision = decision(
                Topics.VERDICT,
                List.of(
                        uncertain("H", Topics.VERDICT.need(Verdict.REFUSE)),
                        certain("R", Topics.VERDICT.need(Verdict.REFUSE))));

        assertThat(decision.key()).isEqualTo(Verdict.REFUSE.key());
        assertThat(rules(decision.outweighed())).containsExactly("H");
    }

    @Test
    void remains_is_what_all_needs_allow_and_no_veto_excludes() {
        Decision<?> decision = decision(
                Topics.STONE,
                List.of(
                        certain("A", Topics.STONE.need(Family.CALCITE_MARBLE, Family.LIMESTONE, Family.GRANITE)),
                        certain("B", Topics.STONE.need(Families.fizzingOnSolid())),
                        certain("V", Topics.STONE.veto(Family.LIMESTONE))));

        assertThat(decision.keys()).containsExactly(Family.CALCITE_MARBLE.key());
    }

    @Test
    void remains_with_nothing_left_is_an_impasse() {
        Impasse<?> impasse = impasse(
                Topics.STONE,
                List.of(
                        certain("A", Topics.STONE.need(Family.GRANITE)),
                        certain("B", Topics.STONE.need(Families.fizzingOnSolid()))));

        assertThat(rules(impasse.needs())).containsExactly("A", "B");
    }

    @Test
    void remains_keeps_the_whole_domain_when_nobody_speaks_and_lets_no_wish_shape_it() {
        assertThat(decision(Topics.BONDS, List.of()).keys())
                .containsExactly(Bond.METAL.key(), Bond.TRANSITION.key(), Bond.RESIN.key());
        Decision<?> wished = decision(Topics.BONDS, List.of(certain("W", Topics.BONDS.wish(Bond.RESIN))));
        assertThat(wished.keys()).hasSize(3);
        assertThat(rules(wished.outweighed())).containsExactly("W");
    }

    @Test
    void ranked_puts_first_what_most_speaks_for_and_counts_what_two_facts_bear_out_twice() {
        Decision<?> decision = decision(
                Topics.CAUSES,
                List.of(
                        from(
                                "A",
                                Topics.CAUSES.wish(Fault.FILM, Fault.GLAZED_PAD, Fault.RESIDUE, Fault.FLOODED_PAD),
                                "x"),
                        from("B", Topics.CAUSES.wish(Fault.RESIDUE), "x", "y"),
                        from("C", Topics.CAUSES.wish(Fault.CARRIED_GRIT), "x"),
                        from("V", Topics.CAUSES.veto(Fault.CARRIED_GRIT), "x")));

        assertThat(Ranked.weights(decision.won()))
                .isEqualTo(Map.of(Fault.FILM, 3, Fault.GLAZED_PAD, 2, Fault.RESIDUE, 1 + 2 * 3, Fault.FLOODED_PAD, 1));
        assertThat(decision.keys()).containsExactly("residue", "film", "glazed-pad", "flooded-pad");
        assertThat(rules(decision.won())).containsExactly("A", "B", "V");
        assertThat(rules(decision.vetoed())).containsExactly("C");
        assertThat(decision.outweighed()).isEmpty();
    }

    @Test
    void an_impasse_for_want_of_a_machine_names_those_of_which_any_one_would_do() {
        String machines = SurveyField.MACHINES.name();
        Stated noPlanetary = from("P", Topics.MACHINE.on(STEP).veto(MachineClass.PLANETARY), machines);
        Stated noSingleDisc = from("S", Topics.MACHINE.on(STEP).veto(MachineClass.SINGLE_DISC), machines, "");
        Stated need = certain("N", Topics.MACHINE.on(STEP).need(MachineClass.PLANETARY, MachineClass.SINGLE_DISC));

        assertThat(Allowed.impasse(Topics.MACHINE, STEP, List.of(need, noPlanetary, noSingleDisc))
                        .lackingKeys())
                .containsExactlyInAnyOrder("planetary", "single-disc");
    }

    @Test
    void a_machine_that_is_excluded_for_another_reason_is_not_lacking() {
        String machines = SurveyField.MACHINES.name();
        Stated need =
                from("N", Topics.MACHINE.on(STEP).need(MachineClass.PLANETARY, MachineClass.SINGLE_DISC), machines);
        Stated absent = from("P", Topics.MACHINE.on(STEP).veto(MachineClass.PLANETARY), machines);
        Stated tooHeavy = from("H", Topics.MACHINE.on(STEP).veto(MachineClass.SINGLE_DISC), "build-up.bed");
        Stated absentOnTimber =
                from("T", Topics.MACHINE.on(STEP).veto(MachineClass.SINGLE_DISC), machines, "build-up.bed");

        assertThat(Allowed.impasse(Topics.MACHINE, STEP, List.of(need, absent, tooHeavy))
                        .lackingKeys())
                .containsExactly("planetary");
        assertThat(Allowed.impasse(Topics.MACHINE, STEP, List.of(need, absent, absentOnTimber))
                        .lackingKeys())
                .containsExactly("planetary");
        assertThat(Allowed.impasse(
                                Topics.MACHINE,
                                STEP,
                                List.of(
                                        need,
                                        certain("V", Topics.MACHINE.on(STEP).veto(MachineClass.PLANETARY)),
                                        tooHeavy))
                        .lackingKeys())
                .isEmpty();
    }

    @Test
    void the_order_of_contributions_changes_no_value() {
        List<Stated> said = new ArrayList<>(List.of(
                certain("A", Topics.FIRST_CUT.wish(Cut.HEAVY_GRIND, Cut.COARSE_HONE)),
                certain("B", Topics.FIRST_CUT.needAtLeast(Cut.HONE)),
                uncertain("C", Topics.FIRST_CUT.vetoAbove(Cut.FINE_GRIND)),
                certain("D", Topics.FIRST_CUT.wish(Cut.REFRESH))));
        Random random = new Random(7);
        for (int i = 0; i < 24; i++) {
            Collections.shuffle(said, random);
            Decision<?> decision = decision(Topics.FIRST_CUT, said);
            assertThat(decision.key()).isEqualTo(Cut.COARSE_HONE.key());
            assertThat(rules(decision.won())).containsExactlyInAnyOrder("A", "B", "C");
        }
    }

    private static Decision<?> decision(Choice<?> topic, List<Stated> said) {
        Outcome outcome = Policy.of(topic).close(topic, Subject.FLOOR, said);
        assertThat(outcome).isInstanceOf(Decision.class);
        return (Decision<?>) outcome;
    }

    private static Impasse<?> impasse(Choice<?> topic, List<Stated> said) {
        Outcome outcome = Policy.of(topic).close(topic, Subject.FLOOR, said);
        assertThat(outcome).isInstanceOf(Impasse.class);
        return (Impasse<?>) outcome;
    }
}
