package stoneprocess.rules.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static stoneprocess.rules.decide.Statements.certain;
import static stoneprocess.rules.decide.Statements.rules;
import static stoneprocess.rules.decide.Statements.uncertain;

import java.util.List;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;

class FewestChangesTest {
    private static final Subject COARSE = step("resin-100");
    private static final Subject MIDDLE = step("resin-200");
    private static final Subject FINE = step("resin-400");
    private static final List<Subject> STEPS = List.of(COARSE, MIDDLE, FINE);

    @Test
    void fewer_changes_come_before_more_wishes() {
        List<Outcome> outcomes = close(List.of(
                certain("W1", wish(COARSE, MachineClass.PLANETARY)),
                certain("N", need(MIDDLE, MachineClass.SINGLE_DISC)),
                certain("W2", wish(FINE, MachineClass.PLANETARY))));

        assertThat(values(outcomes)).containsExactly("single-disc", "single-disc", "single-disc");
        assertThat(rules(((Decision<?>) outcomes.get(0)).outweighed())).containsExactly("W1");
        assertThat(rules(((Decision<?>) outcomes.get(1)).won())).containsExactly("N");
    }

    @Test
    void among_equally_few_changes_more_wishes_win() {
        List<Outcome> outcomes = close(List.of(certain("W", wish(FINE, MachineClass.PLANETARY))));

        assertThat(values(outcomes)).containsExactly("planetary", "planetary", "planetary");
        assertThat(rules(((Decision<?>) outcomes.get(2)).won())).containsExactly("W");
    }

    @Test
    void without_wishes_the_earliest_allowed_value_of_the_domain_wins() {
        assertThat(values(close(List.of()))).containsOnly("edge-tool");
        List<Stated> noHandTool = STEPS.stream()
                .map(on -> certain("V", veto(on, MachineClass.EDGE_TOOL)))
                .toList();
        assertThat(values(close(noHandTool))).containsOnly("single-disc");
    }

    @Test
    void a_change_that_cannot_be_avoided_happens_once() {
        List<Outcome> outcomes = close(List.of(
                certain("N1", need(COARSE, MachineClass.PLANETARY)),
                certain("N2", need(FINE, MachineClass.SINGLE_DISC)),
                certain("W", wish(MIDDLE, MachineClass.SINGLE_DISC))));

        assertThat(values(outcomes)).containsExactly("planetary", "single-disc", "single-disc");
    }

    @Test
    void a_vetoed_wish_is_kept_as_vetoed() {
        List<Outcome> outcomes = close(List.of(
                certain("W", wish(COARSE, MachineClass.PLANETARY)),
                certain("V", veto(COARSE, MachineClass.PLANETARY))));

        Decision<?> first = (Decision<?>) outcomes.get(0);
        assertThat(rules(first.vetoed())).containsExactly("W");
        assertThat(rules(first.won())).containsExactly("V");
    }

    @Test
    void a_step_that_allows_nothing_is_an_impasse_and_the_others_stay_open() {
        List<Outcome> outcomes = close(List.of(
                certain("N", need(MIDDLE, MachineClass.PLANETARY)),
                uncertain("V", veto(MIDDLE, MachineClass.PLANETARY))));

        assertThat(outcomes).hasSize(1);
        Impasse<?> impasse = (Impasse<?>) outcomes.get(0);
        assertThat(impasse.subject()).isEqualTo(MIDDLE);
        assertThat(rules(impasse.needs())).containsExactly("N");
        assertThat(rules(impasse.vetoes())).containsExactly("V");
        assertThat(impasse.untilKnown()).isTrue();
    }

    @Test
    void a_track_without_steps_has_no_outcome() {
        assertThat(new FewestChanges().closeTrack(Topics.MACHINE, List.of(), step -> List.of()))
                .isEmpty();
    }

    private static List<Outcome> close(List<Stated> said) {
        return new FewestChanges()
                .closeTrack(
                        Topics.MACHINE,
                        STEPS,
                        step -> said.stream()
                                .filter(each -> each.contribution().subject().equals(step))
                                .toList());
    }

    private static List<String> values(List<Outcome> outcomes) {
        return outcomes.stream().map(outcome -> ((Decision<?>) outcome).key()).toList();
    }

    private static Subject step(String grade) {
        return new Subject.OfStep(TrackKind.OPEN_FIELD, grade);
    }

    private static Contribution need(Subject on, MachineClass machine) {
        return Topics.MACHINE.on(on).need(machine);
    }

    private static Contribution wish(Subject on, MachineClass machine) {
        return Topics.MACHINE.on(on).wish(machine);
    }

    private static Contribution veto(Subject on, MachineClass machine) {
        return Topics.MACHINE.on(on).veto(machine);
    }
}
