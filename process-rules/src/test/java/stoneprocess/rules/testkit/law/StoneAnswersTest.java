package stoneprocess.rules.testkit.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Face;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.IdentifiedBy;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.StoneColour;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.space.Forgetting;
import stoneprocess.rules.space.Unremarkable;

/**
 * Unknown is never bolder over all that a survey can say of the stone, on a floor of every family. With
 * {@code -Daudit.whole=true}, as in the profile of that name, all surveys are asked, else one in {@value #STRIDE}.
 */
class StoneAnswersTest {
    private static final int STRIDE = 67;

    /** More answers than one family has combinations of either list. */
    private static final int REMEMBERED = 2000;

    private static final Respondent RESPONDENT = Respondent.remembering(Respondent.of(Advisor.standard()), REMEMBERED);

    /** What tells the family and its fibres: every combination, unknown included. */
    private static final List<SurveyField<?>> TELLING = List.of(
            SurveyField.STONE_NAME,
            SurveyField.IDENTIFIED_BY,
            SurveyField.ACID_DROP,
            SurveyField.SCRIBER,
            SurveyField.LABORATORY,
            SurveyField.COLOUR);

    /** What is seen of the stone beside that, and what keeps the acid from telling: likewise. */
    private static final List<SurveyField<?>> SEEN = List.of(
            SurveyField.WATER_DROP, SurveyField.SOLVENT_RAG, SurveyField.FACE, SurveyField.MIX, SurveyField.COLOUR);

    @Test
    void a_floor_of_which_less_is_known_about_the_stone_is_never_planned_more_boldly() {
        int stride = Boolean.getBoolean("audit.whole") ? 1 : STRIDE;
        Map<Status, Integer> statuses = new EnumMap<>(Status.class);
        List<String> bolder = new ArrayList<>();
        int combinations = 0;
        int pairs = 0;
        int heldForGreen = 0;
        for (Family family : Family.values()) {
            for (List<SurveyField<?>> fields : List.of(TELLING, SEEN)) {
                for (FloorSurvey survey : combined(scratched(family), fields)) {
                    if (combinations++ % stride != 0) {
                        continue;
                    }
                    Recommendation known = RESPONDENT.recommend(survey);
                    statuses.merge(known.status(), 1, Integer::sum);
                    heldForGreen += isHeldForGreen(survey, known) ? 1 : 0;
                    for (SurveyField<?> field : fields) {
                        if (survey.answer(field).isKnown()) {
                            Recommendation unknown = RESPONDENT.recommend(Forgetting.without(survey, field.name()));
                            UnknownLaw.bolder(known, unknown, field.name()).forEach(found -> bolder.add(told(found)));
                            pairs++;
                        }
                    }
                }
            }
        }
        System.out.printf(
                "one in %d of %,d surveys of the stone: %s, %,d held for nothing but green; %,d pairs with one answer less%n",
                stride, combinations, statuses, heldForGreen, pairs);
        assertThat(combinations).isGreaterThan(60_000);
        assertThat(heldForGreen).isPositive();
        assertThat(bolder.stream().limit(10)).as("%d are bolder", bolder.size()).isEmpty();
    }

    private static String told(Violation violation) {
        List<String> answers = Stream.concat(TELLING.stream(), SEEN.stream())
                .distinct()
                .map(field -> field.name() + "="
                        + violation
                                .survey()
                                .answer(field)
                                .value()
                                .map(Object::toString)
                                .orElse("unknown"))
                .toList();
        return "%s: expected %s, found %s on %s"
                .formatted(violation.topic(), violation.expected(), violation.found(), answers);
    }

    /** True where the same floor is planned with a mixed ground. */
    private static boolean isHeldForGreen(FloorSurvey survey, Recommendation known) {
        return survey.answer(SurveyField.COLOUR).value().equals(Optional.of(StoneColour.GREEN))
                && !isPlanned(known)
                && isPlanned(RESPONDENT.recommend(survey.toBuilder()
                        .set(SurveyField.COLOUR, StoneColour.MIXED)
                        .build()));
    }

    private static boolean isPlanned(Recommendation recommendation) {
        return recommendation.status() == Status.PLANNED || recommendation.status() == Status.PROVISIONAL;
    }

    /** A floor that is to shine over scratches, so that a bolder answer has something to be bold in. */
    private static FloorSurvey scratched(Family family) {
        return Unremarkable.floor(family)
                .set(SurveyField.GOAL, Goal.POLISH)
                .zones(List.of(Floors.zone(
                        "whole", 100, Map.of(DamageKind.SCRATCHES, Floors.scratched(ScratchClass.FELT_BY_NAIL, 60)))))
                .build();
    }

    /** The floor with every combination of answers to some fields. */
    private static List<FloorSurvey> combined(FloorSurvey floor, List<SurveyField<?>> fields) {
        List<FloorSurvey> surveys = List.of(floor);
        for (SurveyField<?> field : fields) {
            List<Optional<?>> answers = answers(floor, field);
            surveys = surveys.stream()
                    .flatMap(survey -> answers.stream()
                            .filter(answer -> canBe(survey, answer))
                            .map(answer -> answered(survey, field, answer)))
                    .toList();
        }
        return surveys;
    }

    /** The classes of a choice, or the floor's own name, and unknown. An invoice tells the rules what a look tells. */
    private static List<Optional<?>> answers(FloorSurvey floor, SurveyField<?> field) {
        Stream<?> known = field.kind() instanceof FieldKind.Choice choice
                ? Stream.of(choice.type().getEnumConstants())
                : floor.answer(field).value().stream();
        List<Optional<?>> answers = new ArrayList<>(List.of(Optional.empty()));
        known.filter(value -> value != IdentifiedBy.INVOICE).map(Optional::of).forEach(answers::add);
        return answers;
    }

    /** A glazed face that a scriber scratches and acid attacks is not accepted. */
    private static boolean canBe(FloorSurvey survey, Optional<?> answer) {
        return !answer.equals(Optional.of(Face.GLAZED))
                || !survey.answer(SurveyField.SCRIBER).value().equals(Optional.of(ScriberTest.SCRATCHED))
                || !survey.answer(SurveyField.ACID_DROP).value().equals(Optional.of(AcidDrop.FIZZ_ON_SOLID));
    }

    private static FloorSurvey answered(FloorSurvey survey, SurveyField<?> field, Optional<?> answer) {
        FloorSurvey.Builder builder = survey.toBuilder().unknown(field);
        answer.ifPresent(value -> builder.put(field, value));
        return builder.build();
    }
}
