package stoneprocess.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

class AnswersTest {
    private static final FloorSurvey SURVEY = FloorSurvey.builder("ferry hall")
            .set(SurveyField.THICKNESS, new Length(20))
            .set(SurveyField.COATING, Coating.NONE)
            .set(SurveyField.MACHINES, EnumSet.noneOf(MachineClass.class))
            .set(SurveyField.GRADES, List.of())
            .set(SurveyField.STONE_NAME, "grey-granite")
            .zone(new Zone(
                    "lane",
                    ZoneKind.LANE,
                    new Share(40),
                    Map.of(
                            DamageKind.LIPPAGE,
                            Damage.measured(DamageKind.LIPPAGE, new Length(1.5), new Share(10)),
                            DamageKind.CRACKS,
                            Damage.none(DamageKind.CRACKS))))
            .zone(new Zone("rest", ZoneKind.FIELD, new Share(60), Map.of()))
            .readings(List.of(new GlossReading("lane", Geometry.DEG_60, new Gloss(12.5), SurfaceState.CLEAN_DRY)))
            .build();

    @Test
    void a_measured_answer_carries_its_unit_and_a_word_its_key() {
        assertThat(FieldAnswer.of(SURVEY, "build-up.thickness").given())
                .containsExactly(new Given(Optional.empty(), List.of(), List.of(new Length(20))));
        assertThat(FieldAnswer.of(SURVEY, "condition.coating").given())
                .containsExactly(new Given(Optional.empty(), List.of("none"), List.of()));
        assertThat(FieldAnswer.of(SURVEY, "stone.name").given())
                .containsExactly(new Given(Optional.empty(), List.of("grey-granite"), List.of()));
    }

    @Test
    void nothing_on_hand_is_known_and_what_nobody_asked_is_not() {
        assertThat(FieldAnswer.of(SURVEY, "equipment.machines"))
                .isEqualTo(new FieldAnswer("equipment.machines", true, List.of()));
        assertThat(FieldAnswer.of(SURVEY, "site.area")).isEqualTo(new FieldAnswer("site.area", false, List.of()));
    }

    @Test
    void damages_and_readings_are_told_zone_by_zone() {
        assertThat(FieldAnswer.of(SURVEY, "damages.lippage").given())
                .containsExactly(new Given(Optional.of("lane"), List.of(), List.of(new Length(1.5), new Share(10))));
        assertThat(FieldAnswer.of(SURVEY, "damages.cracks").given())
                .containsExactly(new Given(Optional.of("lane"), List.of("none"), List.of()));
        assertThat(FieldAnswer.of(SURVEY, "readings").given())
                .containsExactly(new Given(Optional.of("lane"), List.of("60", "clean-dry"), List.of(new Gloss(12.5))));
        assertThat(FieldAnswer.of(SURVEY, "damages.wear").known()).isFalse();
    }

    @Test
    void every_known_answer_is_listed_in_the_order_of_the_form() {
        assertThat(FieldAnswer.known(SURVEY))
                .extracting(FieldAnswer::field)
                .containsExactly(
                        "stone.name",
                        "build-up.thickness",
                        "condition.coating",
                        "equipment.machines",
                        "equipment.grades",
                        "damages.lippage",
                        "damages.cracks",
                        "readings");
    }

    @Test
    void an_unknown_question_is_refused_by_name() {
        assertThatThrownBy(() -> FieldAnswer.of(SURVEY, "site.mood"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("field: 'site.mood' is not accepted");
        assertThatThrownBy(() -> FieldAnswer.of(SURVEY, "damages.envy"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("field: 'envy' is not accepted");
    }

    @Test
    void a_derivation_that_turns_in_a_circle_is_refused() {
        Ground sealer = ground(Topics.SEALER, Sealer.NONE, List.of(new Matter(Topics.FINISH, Subject.FLOOR)));
        Ground finish = ground(Topics.FINISH, Finish.HONE, List.of(new Matter(Topics.SEALER, Subject.FLOOR)));

        assertThatThrownBy(() -> new Why(List.of(sealer, finish), List.of(), List.of(), Map.of()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("grounds.rests-on: 'sealer of floor' is not accepted; accepted: matters that follow the"
                        + " one that rests on them");
        assertThatThrownBy(() -> new Why(List.of(), List.of(), List.of(), Map.of()))
                .isInstanceOf(InvalidInputException.class);
    }

    private static <V> Ground ground(Topic<V> topic, V value, List<Matter> restsOn) {
        return new Ground(
                new Decision<>(topic, Subject.FLOOR, List.of(value), List.of(), List.of(), List.of(), List.of()),
                PolicyKind.ONE,
                restsOn);
    }
}
