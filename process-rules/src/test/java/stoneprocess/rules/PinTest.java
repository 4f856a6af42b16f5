package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;

class PinTest {
    @Test
    void a_pinned_topic_keeps_its_value_and_later_stages_see_it() {
        Advisor advisor = Advisor.standard();
        Decision<Cut> pin = new Decision<>(
                Topics.FIRST_CUT, Subject.OPEN_FIELD, List.of(Cut.HONE), List.of(), List.of(), List.of(), List.of());
        Recommendation pinned = advisor.recommend(Floors.unremarkable().build(), List.of(pin));
        assertThat(pinned.decision(Topics.FIRST_CUT, Subject.OPEN_FIELD)).contains(pin);
        assertThat(pinned.plan().orElseThrow().tracks().get(0).steps())
                .extracting(step -> step.grade().key())
                .containsExactly("resin-200", "resin-400", "resin-800", "resin-1500", "resin-3000");
    }
}
