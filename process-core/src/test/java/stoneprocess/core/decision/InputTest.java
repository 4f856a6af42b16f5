package stoneprocess.core.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.Topics;

class InputTest {
    /** JSON prints the name alone. */
    @Test
    void no_two_topics_fields_and_parameters_have_one_name_and_each_is_found_by_its_own() {
        List<Input> all = new ArrayList<>();
        Topics.all().forEach(topic -> all.add(new Input.OfTopic(topic)));
        SurveyField.all().forEach(field -> all.add(new Input.OfField(field)));
        Parameters.standard().all().forEach(parameter -> all.add(new Input.OfParameter(parameter.name())));
        assertThat(all).extracting(Input::name).doesNotHaveDuplicates();
        assertThat(all)
                .allSatisfy(input -> assertThat(Input.named(input.name())).isEqualTo(input));
    }
}
