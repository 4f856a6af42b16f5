package stoneprocess.rules.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.space.Forgetting;
import stoneprocess.rules.verify.Laws;

/** Answers left out of the floors of the expert cases: one at a time and all together. */
class LeftOutTest {
    private static final Advisor ADVISOR = Advisor.standard();

    /** An answer that matters to the floor is asked for; one that is not asked for changes no decision. */
    @Test
    void an_answer_left_out_is_asked_for_or_changes_nothing() {
        List<String> silent = new ArrayList<>();
        int tried = 0;
        for (ExpertCase expert : ExpertCase.all()) {
            FloorSurvey survey = expert.survey();
            Recommendation known = ADVISOR.recommend(survey);
            for (String name : Forgetting.known(survey)) {
                Recommendation less = ADVISOR.recommend(Forgetting.without(survey, name));
                tried++;
                boolean asked = less.questions().stream().map(Question::field).anyMatch(name::equals);
                boolean same = less.status() == known.status() && less.plan().equals(known.plan());
                if (!asked && !same) {
                    silent.add(expert.name() + " without " + name);
                }
            }
        }
        System.out.printf("Answers left out one at a time: %d, none silently%n", tried);
        assertThat(silent).isEmpty();
    }

    @Test
    void an_answer_left_out_never_leads_to_bolder_advice() {
        ExpertCase.all()
                .forEach(expert -> assertThat(
                                Laws.unknownIsNeverBolder(Integer.MAX_VALUE).violations(ADVISOR, expert.survey(), 1))
                        .as(expert.name())
                        .isEmpty());
    }

    @Test
    void with_nothing_known_nothing_is_cut_and_the_stone_is_asked_for_first() {
        Recommendation nothing =
                ADVISOR.recommend(FloorSurvey.builder("nothing known").build());
        assertThat(nothing.status()).isEqualTo(Status.PROVISIONAL);
        assertThat(nothing.plan().orElseThrow().tracks()).isEmpty();
        assertThat(nothing.questions()).extracting(Question::field).startsWith("stone.name");
    }
}
