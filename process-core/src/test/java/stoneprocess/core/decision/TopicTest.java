package stoneprocess.core.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.Finish;

class TopicTest {
    private static final Topic<Finish> FLOOR =
            Topic.of("finish", Stage.GO_NO_GO, Scope.FLOOR, PolicyKind.ONE, Finish.class);
    private static final Topic<Finish> STEP =
            Topic.of("sheen", Stage.EQUIPMENT, Scope.STEP, PolicyKind.ONE, Finish.class);

    @Test
    void contributions_are_sets_in_the_order_of_the_domain() {
        assertThat(values(FLOOR.need(Finish.POLISH, Finish.HONE))).isEqualTo(List.of(Finish.HONE, Finish.POLISH));
        assertThat(values(FLOOR.needAtLeast(Finish.POLISH))).isEqualTo(List.of(Finish.POLISH, Finish.HIGH_GLOSS));
        assertThat(values(FLOOR.needAtMost(Finish.SATIN))).isEqualTo(List.of(Finish.HONE, Finish.SATIN));
        assertThat(values(FLOOR.vetoAbove(Finish.POLISH))).isEqualTo(List.of(Finish.HIGH_GLOSS));
        assertThat(values(FLOOR.wish(Finish.POLISH, Finish.HONE))).isEqualTo(List.of(Finish.POLISH, Finish.HONE));
    }

    private static List<?> values(Contribution contribution) {
        return contribution.values();
    }

    @Test
    void a_subject_that_does_not_fit_the_topic_is_refused() {
        Subject step = new Subject.OfStep(TrackKind.EDGE, "resin-800");
        assertThat(STEP.on(step).need(Finish.HONE).subject()).isEqualTo(step);
        assertThatThrownBy(() -> STEP.need(Finish.HONE))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("sheen.subject");
        assertThatThrownBy(() -> FLOOR.on(step).need(Finish.HONE)).isInstanceOf(InvalidInputException.class);
    }

    @Test
    void an_unknown_value_is_refused_with_the_domain() {
        assertThat(FLOOR.value("semi-gloss")).isEqualTo(Finish.SEMI_GLOSS);
        assertThatThrownBy(() -> FLOOR.value("shiny"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("hone, satin, semi-gloss, polish, high-gloss");
    }

    @ParameterizedTest
    @ValueSource(strings = {"floor", "open-field", "edge/resin-800", "zone:lane by the door"})
    void a_subject_is_found_again_by_its_key(String key) {
        assertThat(Subject.parse(key, "subject").key()).isEqualTo(key);
    }

    @Test
    void a_key_of_no_subject_is_refused() {
        assertThatThrownBy(() -> Subject.parse("roof", "subject"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("subject: 'roof'");
    }
}
