package stoneprocess.rules.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.space.Forgetting;
import stoneprocess.rules.testkit.law.Law;
import stoneprocess.rules.testkit.law.Laws;
import stoneprocess.rules.testkit.law.Respondent;
import stoneprocess.rules.testkit.law.Violation;

/**
 * Answers left out of the floors of the expert cases: one at a time and all together. Every fifth case is tried; with
 * {@code -Daudit.whole=true}, as in the profile of that name, all are.
 */
class LeftOutTest {
    private static final Advisor ADVISOR = Advisor.standard();

    private static final int STRIDE = Boolean.getBoolean("audit.whole") ? 1 : 5;

    private static int tried;
    private static final List<String> SILENT = new ArrayList<>();
    private static final List<Violation> BOLDER = new ArrayList<>();

    /** Both judge the same answers, which are asked for once. */
    private static final Set<String> ANSWERED_BY_AGE =
            Set.of(SurveyField.HISTORIC.name(), SurveyField.HAZARDOUS_LAYER.name());

    /** What is asked for once another answer, which is asked for first, has not made it needless. */
    private static final Map<String, String> ASKED_AFTER = Map.of(
            SurveyField.FROST.name(),
            SurveyField.SETTING.name(),
            SurveyField.STRIP_LEVEL.name(),
            SurveyField.STRIPS.name());

    @BeforeAll
    static void leave_answers_out() {
        Law never = Laws.unknownIsNeverBolder(Integer.MAX_VALUE);
        List<ExpertCase> cases = ExpertCase.all();
        for (int i = 0; i < cases.size(); i += STRIDE) {
            ExpertCase expert = cases.get(i);
            FloorSurvey survey = expert.survey();
            Respondent remembering = Respondent.remembering(Respondent.of(ADVISOR), 300);
            Recommendation known = remembering.recommend(survey);
            boolean contradicted =
                    known.counterOffers().stream().anyMatch(offer -> offer.kind() == OfferKind.LOOK_AGAIN);
            for (String name : Forgetting.known(survey)) {
                Recommendation less = remembering.recommend(Forgetting.without(survey, name));
                tried++;
                boolean asked = less.questions().stream().map(Question::field).anyMatch(name::equals);
                boolean same = less.status() == known.status() && less.plan().equals(known.plan());
                boolean refused = less.status() == Status.REFUSED;
                boolean answeredByAge = ANSWERED_BY_AGE.contains(name)
                        && less.questions().stream().map(Question::field).noneMatch(SurveyField.LAID_AGO.name()::equals)
                        && survey.answer(SurveyField.LAID_AGO).isKnown();
                boolean putOff = less.questions().stream()
                        .map(Question::field)
                        .anyMatch(field -> field.equals(ASKED_AFTER.get(name)));
                if (!asked && !same && !contradicted && !refused && !answeredByAge && !putOff) {
                    SILENT.add(expert.name() + " without " + name);
                }
            }
            BOLDER.addAll(never.violations(remembering, survey, 1));
        }
        System.out.printf("Answers left out one at a time: %d, %d silently%n", tried, SILENT.size());
    }

    /**
     * An answer that matters to the floor is asked for; one that is not asked for changes no decision. Where two answers
     * contradict each other, one of them left out settles the matter. The age of a young floor answers whether it is
     * historic and whether a layer below may hold asbestos. Frost is asked for once it is known that the floor lies outdoors,
     * and whether strips stand proud once it is known that there are any; these are asked first. A floor that is refused for what is not known is asked only
     * what could lift the refusal safely: nobody scratches a stone that may hold fibres.
     */
    @Test
    void an_answer_left_out_is_asked_for_or_changes_nothing() {
        assertThat(tried).isGreaterThan(15_000 / STRIDE);
        assertThat(SILENT).isEmpty();
    }

    @Test
    void an_answer_left_out_never_leads_to_bolder_advice() {
        assertThat(BOLDER).isEmpty();
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
