package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;

/** What can be asked of a recommendation topic by topic, and what is said of a question that cannot be answered. */
class AskedTopicsTest {
    private final Recommendation answer = Advisor.standard().recommend(Floors.wornGranite());

    @Test
    void the_values_of_a_computed_topic_are_refused_with_the_way_to_read_them() {
        assertThatThrownBy(() -> answer.values(Topics.GRIT_PATH, Subject.OPEN_FIELD))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage(
                        "topic: 'grit-path of open-field' is not accepted; accepted: a topic whose values are words; "
                                + "the keys of this one are the values of its decision for one of open-field, edge, "
                                + "local-repair");
        assertThatThrownBy(() -> answer.values(Topics.TEST_CUTS, Subject.FLOOR))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("topic: 'test-cuts of floor' is not accepted")
                .hasMessageEndingWith("its decision for floor");
        assertThat(answer.decision(Topics.GRIT_PATH, Subject.OPEN_FIELD)
                        .orElseThrow()
                        .values())
                .isNotEmpty()
                .allMatch(key -> answer.sequence().get(key, "key") != null);
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
