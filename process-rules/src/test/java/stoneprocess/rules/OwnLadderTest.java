package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.json.Json;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;

/**
 * Crews plan with the grits that they own. Common practice, no source: metal 40, 60, 80, 120 and resin 60, 120, 220 are as
 * usual as metal 30, 50, 100, 200 and resin 50, 100, 200, and a job is planned alike with either.
 */
class OwnLadderTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final Map<String, String> OTHER = Map.of(
            "metal-30", "metal-40",
            "metal-50", "metal-60",
            "metal-100", "metal-120",
            "metal-200", "metal-150",
            "resin-50", "resin-60",
            "resin-100", "resin-120",
            "resin-200", "resin-220");
    private static final JobLog NOTHING_LOGGED = new JobLog("nothing yet", List.of());
    private static final Subject FIELD = new Subject.OfTrack(TrackKind.OPEN_FIELD);

    private static AbrasiveGrade grade(String key) {
        return GritSequence.standard().get(key, "grades");
    }

    private static List<AbrasiveGrade> ofOtherLadder(List<AbrasiveGrade> grades) {
        return grades.stream()
                .map(owned -> grade(OTHER.getOrDefault(owned.key(), owned.key())))
                .toList();
    }

    private static Set<Grit> planned(Recommendation recommendation) {
        return Stream.of(TrackKind.values())
                .flatMap(track -> recommendation.values(Topics.GRIT_PATH, new Subject.OfTrack(track)).stream())
                .collect(Collectors.toSet());
    }

    private static Recommendation marble(String... owned) {
        return ADVISOR.recommend(Floors.calciteMarble(Floors.scratched(ScratchClass.FELT_BY_NAIL, 60))
                .set(
                        SurveyField.GRADES,
                        Stream.of(owned).map(OwnLadderTest::grade).toList())
                .build());
    }

    @Test
    void a_path_is_planned_with_the_grits_on_the_van() {
        Recommendation usual = marble("resin-50", "resin-100", "resin-200", "resin-400", "resin-800");
        Recommendation other = marble("resin-60", "resin-120", "resin-220", "resin-400", "resin-800");
        assertThat(usual.values(Topics.GRIT_PATH, FIELD)).isNotEmpty();
        assertThat(other.values(Topics.GRIT_PATH, FIELD).stream().map(Grit::key))
                .containsExactlyElementsOf(usual.values(Topics.GRIT_PATH, FIELD).stream()
                        .map(grit -> OTHER.getOrDefault(grit.key(), grit.key()))
                        .toList());
    }

    /** Granite and marble with every scratch, few and many, for every goal. */
    static Stream<FloorSurvey> floors() {
        return EnumSet.complementOf(EnumSet.of(ScratchClass.NONE)).stream()
                .flatMap(look -> Stream.of(5, 60)
                        .flatMap(share -> Stream.of(
                                Floors.damaged(Floors.scratched(look, share)),
                                Floors.calciteMarble(Floors.scratched(look, share)))))
                .flatMap(floor -> Stream.of(Goal.HONE, Goal.SATIN, Goal.POLISH, Goal.HIGH_GLOSS)
                        .map(goal -> floor.set(SurveyField.GOAL, goal).build()));
    }

    @Test
    void floors_are_judged_alike_with_either_ladder_and_worked_with_what_is_owned() {
        List<AbrasiveGrade> owned = ofOtherLadder(GritSequence.standard().grades());
        Set<Grit> onHand = owned.stream().map(AbrasiveGrade::grit).collect(Collectors.toSet());
        int worked = 0;
        for (FloorSurvey usual : floors().toList()) {
            FloorSurvey other = usual.toBuilder().set(SurveyField.GRADES, owned).build();
            Recommendation recommendation = ADVISOR.recommend(other);
            assertThat(recommendation.values(Topics.VERDICT, Subject.FLOOR))
                    .as(other.toString())
                    .isEqualTo(ADVISOR.recommend(usual).values(Topics.VERDICT, Subject.FLOOR));
            assertThat(onHand).as(other.toString()).containsAll(planned(recommendation));
            assertThat(Json.RECOMMENDATION.read(Json.RECOMMENDATION.print(recommendation)))
                    .isEqualTo(recommendation);
            worked += planned(recommendation).stream().anyMatch(grit -> OTHER.containsValue(grit.key())) ? 1 : 0;
        }
        System.out.printf("Floors worked with a grit of another ladder: %d%n", worked);
        assertThat(worked).isGreaterThan(30);
    }

    @Test
    void what_is_to_be_got_fits_the_ladder_on_the_van() {
        Recommendation unfinished = marble("resin-60", "resin-120", "resin-220");
        List<String> missing = unfinished.counterOffers().stream()
                .filter(offer -> offer.kind() == OfferKind.GET_GRADES)
                .flatMap(offer -> offer.values().stream())
                .map(Object::toString)
                .toList();
        assertThat(unfinished.counterOffers()).isNotEmpty();
        assertThat(missing).noneMatch(key -> key.contains("resin-100") || key.contains("resin-200"));
    }

    @Test
    void a_job_with_another_ladder_is_followed_and_explained() {
        Recommendation plan = marble("resin-60", "resin-120", "resin-220", "resin-400", "resin-800");
        Recommendation stored = Json.RECOMMENDATION.read(Json.RECOMMENDATION.print(plan));
        assertThat(ADVISOR.followUp(stored, NOTHING_LOGGED)).isEqualTo(ADVISOR.followUp(plan, NOTHING_LOGGED));
        assertThat(ADVISOR.why(plan, Topics.GRIT_PATH, FIELD)).isNotNull();
        assertThat(ADVISOR.howTo(plan.survey(), Topics.GRIT_PATH, FIELD, "resin-120")
                        .ways())
                .isNotEmpty();
        assertThat(ADVISOR.whatElse(plan.survey())).isNotNull();
    }

    @Test
    void a_grade_of_another_grain_is_refused_with_all_that_are_known() {
        AbrasiveGrade foreign = new AbrasiveGrade(Bond.RESIN, 120, Range.of(new Length(0.5), new Length(0.6)));
        FloorSurvey survey =
                Floors.unremarkable().set(SurveyField.GRADES, List.of(foreign)).build();
        assertThatThrownBy(() -> ADVISOR.recommend(survey))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("equipment.grades: 'resin-120' is not accepted")
                .hasMessageContaining("of other ladders metal-40");
    }
}
