package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.answer.Explanation;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.text.AnswerText;
import stoneprocess.rules.text.document.Texts;

/** Every why and every why-not that can be asked about the plan of a sample has a text, long and short. */
class EveryTextTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final AnswerText ANSWERS = new AnswerText(ADVISOR.rulebase().parameters());
    private static final List<Texts> TEXTS =
            Stream.of(UnitSystem.values()).map(Texts.english()::in).toList();
    private static final List<String> FIGURES = List.of("0", "7", "1000000");

    static Stream<Path> samples() throws IOException {
        return Files.list(Path.of("surveys")).sorted();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_question_about_a_sample_has_a_text(Path sample) throws IOException {
        Recommendation plan = ADVISOR.recommend(Json.SURVEY.read(Files.readString(sample)));
        Explanation explanation = ADVISOR.explain(plan);
        int texts = 0;
        for (Matter matter : explanation.matters()) {
            Topic<?> topic = matter.topic();
            Why why = explanation.why(topic, matter.subject());
            for (Texts text : TEXTS) {
                assertIsText(text.page(ANSWERS.document(why)), text.line(ANSWERS.document(why)));
                texts += 2;
            }
            List<String> others = explanation.alternatives(topic, matter.subject());
            for (String value : values(topic, plan)) {
                boolean isFigure = topic == Topics.PASSES || topic == Topics.LITRES;
                if (!isFigure && !others.contains(value)) {
                    InvalidInputException refused = catchThrowableOfType(
                            InvalidInputException.class, () -> explanation.whyNot(topic, matter.subject(), value));
                    assertThat(refused.accepted()).as("%s %s", matter, value).matches("nothing; .+|.+ one of .+");
                    continue;
                }
                WhyNot whyNot = explanation.whyNot(topic, matter.subject(), value);
                for (Texts text : TEXTS) {
                    assertIsText(text.page(ANSWERS.document(whyNot)), text.line(ANSWERS.document(whyNot)));
                    texts += 2;
                }
            }
        }
        System.out.printf("%,d texts about %s%n", texts, sample.getFileName());
        assertThat(texts).isGreaterThan(100);
    }

    /** Keys of the values of a topic: of its domain, of the grades, or some figures. */
    private static List<String> values(Topic<?> topic, Recommendation plan) {
        if (topic == Topics.GRIT_PATH || topic == Topics.TEST_CUTS) {
            return plan.sequence().grades().stream().map(AbrasiveGrade::key).toList();
        }
        return topic == Topics.PASSES || topic == Topics.LITRES ? FIGURES : Term.keys(topic.domain());
    }

    private static void assertIsText(String page, String line) {
        assertThat(page).isNotBlank().endsWith("\n").doesNotContain("null", "%s", "%d");
        assertThat(line).isNotBlank().hasSizeLessThan(140).doesNotContain("\n", "null", "%s", "%d");
    }
}
