package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;

/** What can be asked of a recommendation topic by topic, and what is said of a question that cannot be answered. */
class AskedTopicsTest {
    private final Recommendation answer = Advisor.standard().recommend(Floors.wornGranite());

    @Test
    void what_is_derived_has_values_of_its_own_type() {
        List<Grit> path = answer.values(Topics.GRIT_PATH, Subject.OPEN_FIELD);
        assertThat(path)
                .isNotEmpty()
                .allMatch(grit -> answer.sequence().get(grit, "key").grit().equals(grit));
        assertThat(answer.values(Topics.TEST_CUTS, Subject.FLOOR)).containsExactly(path.get(1), path.get(0));
        Subject first = new Subject.OfStep(TrackKind.OPEN_FIELD, path.get(0).key());
        PlannedStep step = answer.plan().orElseThrow().tracks().get(0).steps().get(0);
        assertThat(answer.values(Topics.PASSES, first)).containsExactly(step.passes());
        assertThat(answer.values(Topics.LITRES, first))
                .isEqualTo(step.litresPerPass().stream().toList());
    }

    @Test
    void a_subject_of_another_scope_is_refused_with_those_that_are_accepted() {
        assertThatThrownBy(() -> answer.decision(Topics.GRIT_PATH, Subject.FLOOR))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage(
                        "grit-path.subject: 'floor' is not accepted; accepted: one of open-field, edge, local-repair");
        assertThatThrownBy(() -> answer.values(Topics.VERDICT, Subject.EDGE))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("verdict.subject: 'edge' is not accepted; accepted: floor");
        assertThatThrownBy(() -> answer.values(Topics.MACHINE, Subject.EDGE))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageEndingWith("with / and a grade");
        assertThat(answer.values(Topics.MACHINE, new Subject.OfStep(TrackKind.OPEN_FIELD, "resin-50")))
                .isEmpty();
    }
}
