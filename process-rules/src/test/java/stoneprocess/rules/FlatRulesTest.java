package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Stage;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.run.Program;
import stoneprocess.rules.internal.run.Runner;
import stoneprocess.rules.space.SurveyGenerator;

/** The rules without an engine say what the engine says. */
class FlatRulesTest {
    private static final Rulebase RULEBASE = Rulebase.standard();
    private static final FlatRules FLAT = FlatRules.of(RULEBASE.rules());

    @Test
    void outcomes_and_reasons_are_those_of_the_engine() {
        SplittableRandom random = new SplittableRandom(1955);
        for (int i = 0; i < 300; i++) {
            FloorSurvey survey = SurveyGenerator.of(new Share(50 + i % 6 * 10)).draw(random);
            List<Outcome> engine = Runner.run(
                            RULEBASE.engine()::start,
                            Program.RECOMMEND,
                            situation(survey),
                            List.of(),
                            UnaryOperator.identity())
                    .outcomes();
            Situation again = situation(survey);
            List<Object> facts = Facts.after(Optional.empty(), again);
            assertThat(Runner.runTo(Stage.SAFETY, FLAT, again, facts).outcomes())
                    .isEqualTo(engine);
        }
    }

    private static Situation situation(FloorSurvey survey) {
        return new Situation(survey, RULEBASE.parameters(), GritSequence.standard());
    }
}
